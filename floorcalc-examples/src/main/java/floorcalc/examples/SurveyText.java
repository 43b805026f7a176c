package floorcalc.examples;

import floorcalc.examples.job.MeasuredRoom;
import floorcalc.examples.job.SurveyFaces;
import floorcalc.examples.job.Tape;
import floorcalc.examples.sheet.SurveyFigures;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.network.AdjustedPoint;
import floorcalc.outline.network.Adjustment;
import floorcalc.outline.survey.ClosingLimit;
import floorcalc.outline.survey.Measured;
import floorcalc.outline.survey.Misfit;
import floorcalc.outline.survey.Suspect;
import floorcalc.outline.survey.Survey;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyedRoom;
import floorcalc.outline.survey.Traverse;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The report on the survey of a room: what does not fit and what is missing first, then corners and measurements. */
final class SurveyText {
  /** What is said measurement by measurement in more words. */
  private static final String MISFIT = "survey-misfit";
  /** What says that something is missing, and what. */
  private static final List<String> MISSING = List.of("survey-shape-not-fixed", "survey-several-shapes");

  private final ReportLines lines;
  private final SurveyFigures figures;
  private final SurveyDatum datum;

  SurveyText(Console console, Tape tape, SurveyDatum datum) {
    this.lines = new ReportLines(console);
    this.figures = new SurveyFigures(tape);
    this.datum = datum;
  }

  void room(MeasuredRoom measured, Calculated<SurveyReport> worked) {
    SurveyReport report = worked.value();
    lines.say("");
    lines.wrapped("", "  ", measured.name() + ": " + verdict(report));
    report.misfits().forEach(misfit -> misfit(misfit, measured.survey().corners()));
    worked.findings().stream().filter(finding -> !finding.code().equals(MISFIT)).forEach(this::finding);
    report.room().ifPresent(room -> {
      SurveyFaces.faultsOf(room).forEach(fault -> lines.head("DOUBT", figures.text(fault)));
      fixed(report, room);
    });
  }

  /** How sure the narrowest strips of a room are. */
  void rows(List<Finding> strips) {
    strips.forEach(strip -> lines.head(strip.severity() == Severity.NOTE ? "rows" : "DOUBT",
        figures.text(strip.where() + ": " + strip.message())));
  }

  private void finding(Finding finding) {
    String verdict = MISSING.contains(finding.code()) ? "MEASURE" : finding.severity() == Severity.NOTE ? "note" : "DOUBT";
    lines.head(verdict,
        figures.text(finding.where().isEmpty() ? finding.message() : finding.where() + ": " + finding.message()));
  }

  private String verdict(SurveyReport report) {
    if (report.room().isPresent()) {
      SurveyedRoom room = report.room().get();
      int measured = room.measurements().size();
      int misfits = report.misfits().size();
      return "one shape, " + figures.area(room) + "; " + measured
          + " measurements, " + room.redundancy() + " more than it needs"
          + (misfits == 0 ? "" : "; " + misfits + (misfits == 1 ? " does not fit" : " do not fit"));
    }
    if (!report.possible().isEmpty()) {
      return report.possible().size() + " shapes fit";
    }
    return report.areas().isPresent() ? "the shape is not fixed" : "no shape fits";
  }

  private void misfit(Misfit misfit, Survey.Corners corners) {
    List<Suspect> suspects = misfit.oneOf();
    lines.head("DOES NOT FIT", names(suspects, " or ") + (suspects.size() == 1 ? "" : ": the others do not tell which of them"));
    int likely = (int) Math.max(1, suspects.stream().filter(suspect -> !suspect.slip().isEmpty()).count());
    suspects.subList(0, likely).forEach(this::again);
    if (likely < suspects.size()) {
      lines.part("then", "if that was right, " + names(suspects.subList(likely, suspects.size()), ", "));
    }
    if (corners == Survey.Corners.RIGHT_ANGLES) {
      lines.part("or", "a corner is not square: measure a diagonal");
    }
  }

  private static String names(List<Suspect> suspects, String between) {
    return suspects.stream().map(suspect -> suspect.measured().name()).collect(Collectors.joining(between));
  }

  private void again(Suspect suspect) {
    Measured measured = suspect.measured();
    lines.part("do", "measure " + measured.name() + " again: read " + figures.of(measured.kind(), measured.read())
        + (suspect.expectedDeviation() > StrictMath.abs(suspect.expected()) / 2 ? "; the others do not say what it should be"
        : ", the others say " + figures.of(measured.kind(), suspect.expected()) + " ± "
            + figures.deviation(measured.kind(), suspect.expectedDeviation()))
        + (suspect.slip().isEmpty() ? "" : "; likely " + figures.text(suspect.slip())));
  }

  private void fixed(SurveyReport report, SurveyedRoom room) {
    if (!report.misfits().isEmpty()) {
      lines.wrapped("  ", "  ", "What does not fit is still part of the figures below: do not lay by them before it is mended.");
    }
    lines.say("");
    lines.table(corners(room));
    lines.wrapped("  ", "  ", datum.words());
    lines.say("");
    Set<Measured> doubted = doubted(report, room);
    lines.table(measurements(doubted, room));
    if (!doubted.isEmpty()) {
      lines.say("  * does not fit");
    }
    if (room.redundancy() > 0) {
      lines.wrapped("  ", "  ", "Together they are off by " + SurveyFigures.decimal(room.factor(), 2)
          + " times what was said that they may be off; about 1 is as expected.");
    }
    report.walk().ifPresent(this::closing);
  }

  /** By how much the walls as they were read do not close, where it is known how each turns. */
  private void closing(Traverse walk) {
    if (walk.closingError().isPositive()) {
      lines.wrapped("  ", "  ", "Walked round by its walls as read, it does not close by "
          + figures.deviation(Measured.Kind.WALL, walk.closingError().toMillimetres()) + ", 1 in "
          + walk.ratio().orElseThrow() + " of the way; 1 in " + ClosingLimit.FLOOR.ratio() + " will do ("
          + ClosingLimit.FLOOR.source() + ").");
    }
  }

  private List<List<String>> corners(SurveyedRoom room) {
    Adjustment adjusted = datum == SurveyDatum.FREE ? room.free() : room.fixed();
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("corner", "x (mm)", "y (mm)", "± (mm)", "inside", "from square", "mm over 1 m"));
    for (int i = 1; i <= room.corners().size(); i++) {
      AdjustedPoint point = adjusted.points().get(i - 1);
      Point corner = room.corners().get(i - 1);
      double deviation = point.greatestDeviation();
      rows.add(List.of(Integer.toString(i), place(corner.x()), place(corner.y()),
          deviation > 0 ? figures.small(Measured.Kind.WALL, deviation) : "held", figures.degrees(180 - room.turn(i)), figures.fromSquare(room, i),
          figures.overAMetre(room, i)));
    }
    return rows;
  }

  private String place(Length coordinate) {
    return figures.column(Measured.Kind.WALL, coordinate.toMillimetres());
  }

  private static Set<Measured> doubted(SurveyReport report, SurveyedRoom room) {
    Set<Measured> doubted = new LinkedHashSet<>();
    report.misfits().forEach(misfit -> misfit.oneOf().forEach(suspect -> room.measurements().stream()
        .filter(one -> one.name().equals(suspect.measured().name()) && one.read() == suspect.measured().read())
        .forEach(doubted::add)));
    return doubted;
  }

  private List<List<String>> measurements(Set<Measured> doubted, SurveyedRoom room) {
    Set<Measured> all = new LinkedHashSet<>(doubted);
    all.addAll(room.measurements());
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("measured", "read (mm)", "fitted (mm)", "change (mm)", "times its ±", "slip seen from"));
    for (Measured one : all) {
      rows.add(List.of(one.name() + (doubted.contains(one) ? " *" : ""), figures.column(one.kind(), one.read()),
          figures.column(one.kind(), one.adjusted()), figures.difference(one.kind(), one.residual()), times(one), seen(one)));
    }
    return rows;
  }

  private static String times(Measured one) {
    return one.result().isControlled()
        ? SurveyFigures.decimal(StrictMath.abs(one.result().normalisedResidual().orElseThrow()), 1) : "-";
  }

  private String seen(Measured one) {
    return one.result().isControlled()
        ? figures.small(one.kind(), one.result().leastSlipSeen().orElseThrow()) : "not checked";
  }
}
