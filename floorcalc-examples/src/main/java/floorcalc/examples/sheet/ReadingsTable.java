package floorcalc.examples.sheet;

import floorcalc.plan.Check;
import floorcalc.plan.FloorPlan;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The readings of each room with their limits, as the job has them; rooms alike share a part. */
final class ReadingsTable {
  /** What else the table has columns for. */
  enum Blanks {
    /** What is read on the day, and who read it. */
    FOR_THE_DAY,
    /** Nothing: what the table says is the record. */
    NONE
  }

  private final Html html;
  private final Figures figures;
  private final FloorPlan plan;

  ReadingsTable(Html html, Figures figures, FloorPlan plan) {
    this.html = html;
    this.figures = figures;
    this.plan = plan;
  }

  /** Writes the table; nothing if the plan judges no room. */
  void write(String caption, Blanks blanks) {
    Map<String, List<Judgement>> rooms = new LinkedHashMap<>();
    for (Check check : plan.checks()) {
      if (!check.room().isEmpty() && !MeasuredSection.isHere(check.judgement().code())) {
        rooms.computeIfAbsent(check.room(), none -> new ArrayList<>()).add(check.judgement());
      }
    }
    if (rooms.isEmpty()) {
      return;
    }
    Map<List<Judgement>, List<String>> alike = new LinkedHashMap<>();
    rooms.forEach((room, judgements) -> alike.computeIfAbsent(judgements, none -> new ArrayList<>()).add(room));
    boolean day = blanks == Blanks.FOR_THE_DAY;
    html.line("<table class=\"fill site\">").element("caption", caption).line("").columns(day ? "52 36 40 34 24" : "60 50 52 24")
        .heads(day ? List.of("What", "In the job", "Limit", "On the day", "By, date") : List.of("What", "Read", "Limit", "Result"));
    alike.forEach((judgements, names) -> {
      html.raw("<tbody><tr><th scope=\"rowgroup\" class=\"of\" colspan=\"" + (day ? 5 : 4) + "\">");
      for (int i = 0; i < names.size(); i++) {
        html.raw(i == 0 ? "" : ", ").name(names.get(i));
      }
      html.line("</th></tr>");
      judgements.stream().filter(one -> !day || isRead(one)).forEach(one -> row(one, day));
      html.line("</tbody>");
    });
    html.line("</table>");
  }

  /** What can be read again on the day: not the seasons, and not what follows from other readings. */
  private static boolean isRead(Judgement one) {
    return !one.code().startsWith("gap-") && !one.where().endsWith("season");
  }

  private void row(Judgement one, boolean day) {
    html.raw("<tr><th scope=\"row\">").text(figures.inWords(one.check()));
    if (!day && !one.where().isEmpty()) {
      html.raw(" <small>").text(figures.inWords(one.where())).raw("</small>");
    }
    html.raw("</th>").element("td", one.found().isEmpty() ? "not measured" : figures.inWords(one.found()))
        .raw("<td>").text(figures.inWords(one.limit()));
    if (day) {
      html.raw("</td><td class=\"blank\"></td><td class=\"blank\"></td>");
    } else {
      html.raw(" <small>").text(one.source().toString()).raw("</small></td>")
          .element(one.outcome() == Outcome.NOT_MET ? "td class=\"no\"" : "td", result(one.outcome()));
    }
    html.line("</tr>");
  }

  static String result(Outcome outcome) {
    return switch (outcome) {
      case MET -> "met";
      case NOT_MET -> "NOT MET";
      case NOT_MEASURED -> "open";
    };
  }
}
