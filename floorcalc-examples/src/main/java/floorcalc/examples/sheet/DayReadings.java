package floorcalc.examples.sheet;

import floorcalc.plan.Check;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** A table to read the site again on the day: a line for each room, what the job has in small, and room to write below it. */
final class DayReadings {
  private final Html html;
  private final Figures figures;
  private final FloorJob job;
  private final FloorPlan plan;

  DayReadings(Html html, Figures figures, FloorJob job, FloorPlan plan) {
    this.html = html;
    this.figures = figures;
    this.job = job;
    this.plan = plan;
  }

  /** Writes the table; nothing if the plan judges no room. */
  void write() {
    if (plan.checks().stream().allMatch(check -> check.room().isEmpty())) {
      return;
    }
    html.line("<table class=\"fill day\">").line("<caption>Readings: again on the day (in small what the job has)</caption>")
        .columns("30 34 36 34 34 18").heads(List.of("Room", "Air, °C and %", "Subfloor moisture", "Boards", "Flatness", "By, date")).line("<tbody>");
    for (Room room : job.rooms()) {
      html.raw("<tr><th scope=\"row\">").name(room.name()).raw("</th>");
      cell(room, code -> code.startsWith("air-"));
      cell(room, code -> code.contains("subfloor"));
      cell(room, code -> code.startsWith("board"));
      cell(room, code -> code.equals("flatness"));
      html.line("<td class=\"blank\"></td></tr>");
    }
    html.line("</tbody>").line("</table>");
  }

  private void cell(Room room, Predicate<String> codes) {
    List<String> found = new ArrayList<>();
    for (Check check : plan.checks()) {
      Judgement one = check.judgement();
      // A season cannot be read on the day.
      if (check.room().equals(room.name()) && codes.test(one.code()) && !one.where().endsWith("season")
          && one.outcome() != Outcome.NOT_MEASURED) {
        found.add(figures.inWords(one.found()));
      }
    }
    html.raw("<td class=\"blank\"><small>").text(found.isEmpty() ? "not measured" : String.join("; ", found)).raw("</small></td>");
  }
}
