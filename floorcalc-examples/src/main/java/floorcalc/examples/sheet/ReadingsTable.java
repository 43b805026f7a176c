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
  private final Html html;
  private final Figures figures;
  private final FloorPlan plan;

  ReadingsTable(Html html, Figures figures, FloorPlan plan) {
    this.html = html;
    this.figures = figures;
    this.plan = plan;
  }

  /** Writes the table; nothing if the plan judges no room. */
  void write(String caption) {
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
    html.line("<table class=\"fill site read\">").element("caption", caption).line("").columns("62 52 50 22")
        .heads(List.of("What", "Read", "Limit", "Result"));
    alike.forEach((judgements, names) -> {
      html.raw("<tbody><tr><th scope=\"rowgroup\" class=\"of\" colspan=\"4\">");
      for (int i = 0; i < names.size(); i++) {
        html.raw(i == 0 ? "" : ", ").name(names.get(i));
      }
      html.line("</th></tr>");
      judgements.forEach(this::row);
      html.line("</tbody>");
    });
    html.line("</table>");
  }

  private void row(Judgement one) {
    html.raw("<tr><th scope=\"row\">").text(figures.inWords(one.check()));
    if (one.outcome() == Outcome.NOT_MET && !one.where().isEmpty() || one.where().endsWith("season")) {
      html.raw(" <small>").text(figures.inWords(one.where())).raw("</small>");
    }
    html.raw("</th>").element("td", one.found().isEmpty() ? "not measured" : figures.inWords(one.found()))
        .raw("<td>").text(figures.inWords(one.limit())).raw(" <small>").text(one.source().toString()).raw("</small></td>")
        .element(one.outcome() == Outcome.NOT_MET ? "td class=\"no\"" : "td", result(one.outcome())).line("</tr>");
  }

  static String result(Outcome outcome) {
    return switch (outcome) {
      case MET -> "met";
      case NOT_MET -> "NOT MET";
      case NOT_MEASURED -> "open";
    };
  }
}
