package floorcalc.examples.sheet;

import floorcalc.plan.Check;
import floorcalc.plan.FloorPlan;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The readings of the rooms held against their limits, for the record: limit by limit, with what each room came to. */
final class ReadingsTable {
  private final Html html;
  private final Figures figures;
  private final FloorPlan plan;

  ReadingsTable(Html html, Figures figures, FloorPlan plan) {
    this.html = html;
    this.figures = figures;
    this.plan = plan;
  }

  /** What is judged by which limit. */
  private record Limit(String check, String season, String limit, String source) {}

  /** What was found, and what it came to. */
  private record Found(String found, Outcome outcome) {}

  /** Writes the table; nothing if the plan judges no room. */
  void write(String caption) {
    Map<Limit, Map<Found, Set<String>>> limits = new LinkedHashMap<>();
    for (Check check : plan.checks()) {
      Judgement one = check.judgement();
      if (!check.room().isEmpty() && !MeasuredSection.isHere(one.code())) {
        Limit limit = new Limit(one.check(), one.where().endsWith("season") ? one.where() : "", one.limit(), one.source().toString());
        limits.computeIfAbsent(limit, none -> new LinkedHashMap<>())
            .computeIfAbsent(new Found(one.found(), one.outcome()), none -> new LinkedHashSet<>()).add(check.room());
      }
    }
    if (limits.isEmpty()) {
      return;
    }
    html.line("<table class=\"fill site read\">").element("caption", caption).line("").columns("58 56 72")
        .heads(List.of("What", "Limit", "Read, and what it came to")).line("<tbody>");
    limits.forEach(this::row);
    html.line("</tbody>").line("</table>");
  }

  private void row(Limit limit, Map<Found, Set<String>> found) {
    html.raw("<tr><th scope=\"row\">").text(figures.inWords(limit.check()));
    if (!limit.season().isEmpty()) {
      html.raw(" <small>").text(limit.season()).raw("</small>");
    }
    html.raw("</th><td>").text(figures.inWords(limit.limit())).raw(" <small>").text(limit.source()).raw("</small></td><td>");
    boolean first = true;
    for (Map.Entry<Found, Set<String>> one : found.entrySet()) {
      html.raw(first ? "" : "<br/>");
      first = false;
      String between = "";
      for (String room : one.getValue()) {
        html.raw(between).name(room);
        between = ", ";
      }
      String read = one.getKey().found();
      html.text(": " + (read.isEmpty() ? "not measured" : figures.inWords(read)) + ", ")
          .raw(one.getKey().outcome() == Outcome.NOT_MET ? "<b>" : "<span>").text(result(one.getKey().outcome()))
          .raw(one.getKey().outcome() == Outcome.NOT_MET ? "</b>" : "</span>");
    }
    html.line("</td></tr>");
  }

  private static String result(Outcome outcome) {
    return switch (outcome) {
      case MET -> "met";
      case NOT_MET -> "NOT MET";
      case NOT_MEASURED -> "open";
    };
  }
}
