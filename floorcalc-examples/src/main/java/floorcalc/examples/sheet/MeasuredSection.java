package floorcalc.examples.sheet;

import floorcalc.drawing.SurveyDrawing;
import floorcalc.examples.job.JobFile;
import floorcalc.examples.job.Tape;
import floorcalc.outline.survey.Misfit;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyedRoom;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The part of the sheet that says how far the measurements of rooms can be trusted: what is to be measured again first. */
final class MeasuredSection {
  private static final String OF_SURVEYS = "survey-";
  private static final String STRIP = "strip-within-survey";
  private static final String MISFIT = "survey-misfit";

  private final Html html;
  private final JobFile file;
  private final FloorJob job;
  private final FloorPlan plan;
  /** Of the room that is being written. */
  private SurveyFigures figures;

  MeasuredSection(Html html, JobFile file, FloorPlan plan) {
    this.html = html;
    this.file = file;
    this.job = file.job();
    this.plan = plan;
    this.figures = new SurveyFigures(file.tape());
  }

  /** Whether a check or a finding stands in this section, and so in no other. */
  static boolean isHere(String code) {
    return code.startsWith(OF_SURVEYS) || code.equals(STRIP);
  }

  void write() {
    List<Room> rooms = job.rooms().stream().filter(room -> measured(room).isPresent()).toList();
    if (rooms.isEmpty()) {
      return;
    }
    html.line("<section aria-labelledby=\"s-measured\">").line("<h2 id=\"s-measured\">Measured</h2>")
        .line("<p>± is one standard deviation: two figures of three are nearer than that, one of twenty is off by more than twice as"
            + " much. Walls are numbered as they were walked, with the room on the left; wall 1 begins at corner 1. A tie is a length"
            + " between two corners.</p>");
    rooms.forEach(room -> room(room, room.survey().orElseThrow(), measured(room).orElseThrow()));
    html.line("</section>");
  }

  private static Optional<SurveyedRoom> measured(Room room) {
    return room.survey().flatMap(survey -> survey.value().room());
  }

  private void room(Room room, Calculated<SurveyReport> survey, SurveyedRoom measured) {
    Tape tape = file.tapeOf(room.name());
    figures = new SurveyFigures(tape);
    html.raw("<h3>").name(room.name()).raw(": ").text(figures.area(measured)).line("</h3>");
    List<Finding> findings = new ArrayList<>(survey.findings());
    findings.addAll(strips(room));
    findings.stream().filter(Verdicts::isFailure).forEach(this::warning);
    html.raw("<p>").text(fit(survey.value(), measured)).line("</p>");
    notes(findings.stream().filter(finding -> !Verdicts.isFailure(finding)).toList());
    html.line("<figure>").raw(SurveyDrawing.of(survey.value()).titled(room.name()).in(tape.measures()).toSvg()).line("</figure>");
    if (survey.value().misfits().isEmpty()) {
      squareness(measured);
    }
  }

  /** What the plan says of strips whose width hangs on the survey of a room. */
  private List<Finding> strips(Room room) {
    List<String> bays = plan.bays().stream().filter(bay -> bay.room().equals(room.name())).map(bay -> bay.bay() + ", ").toList();
    return plan.findings().stream().filter(finding -> finding.code().equals(STRIP))
        .filter(finding -> bays.stream().anyMatch(finding.where()::startsWith)).toList();
  }

  private void warning(Finding finding) {
    html.raw("<p class=\"stop\"><b>" + (finding.code().equals(MISFIT) ? "Measure again before the first cut" : "Look here") + ".</b> ")
        .text(words(finding)).line("</p>");
  }

  private String words(Finding finding) {
    return figures.text(finding.where().isEmpty() ? finding.message() : finding.where() + ": " + finding.message());
  }

  private static String fit(SurveyReport report, SurveyedRoom room) {
    String count = room.measurements().size() + " measurements, ";
    if (room.redundancy() == 0) {
      return count + "just as many as the shape needs: a slip in any of them shows nowhere.";
    }
    double worst = room.measurements().stream()
        .mapToDouble(one -> StrictMath.abs(one.result().normalisedResidual().orElse(0))).max().orElse(0);
    return count + room.redundancy() + " more than the shape needs. " + (report.misfits().isEmpty() ? "They fit each other: the worst"
        : "They do not all fit, and the shape is drawn with all of them: the worst") + " is off by " + SurveyFigures.decimal(worst, 1)
        + " times its ±, up to " + Misfit.LIMIT + " is let pass.";
  }

  private void notes(List<Finding> notes) {
    if (!notes.isEmpty()) {
      html.raw("<div class=\"open\"><ul>");
      notes.forEach(note -> html.element("li", words(note)));
      html.line("</ul></div>");
    }
  }

  private void squareness(SurveyedRoom room) {
    html.line("<table>").line("<caption>Corners: how square they are</caption>").columns("22 34 34 52 48")
        .heads(List.of("Corner", "Of walls", "Inside angle", "Wider than square", "Over 1 m of wall, mm")).line("<tbody>");
    int walls = room.corners().size();
    for (int i = 1; i <= walls; i++) {
      html.raw("<tr>").element("th scope=\"row\"", Integer.toString(i)).element("td", (i == 1 ? walls : i - 1) + " and " + i)
          .element("td", figures.degrees(180 - room.turn(i))).element("td", figures.fromSquare(room, i))
          .element("td", figures.overAMetre(room, i)).line("</tr>");
    }
    html.line("</tbody>").line("</table>");
  }
}
