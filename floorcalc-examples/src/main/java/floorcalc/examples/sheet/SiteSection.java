package floorcalc.examples.sheet;

import floorcalc.plan.Check;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The part of the sheet that says whether the rooms are fit: what is not kept first, then what nobody measured, then the rest. */
final class SiteSection {
  private final Html html;
  private final Figures figures;
  private final FloorJob job;
  private final FloorPlan plan;

  SiteSection(Html html, Figures figures, FloorJob job, FloorPlan plan) {
    this.html = html;
    this.figures = figures;
    this.job = job;
    this.plan = plan;
  }

  void write() {
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
    html.line("<section aria-labelledby=\"s-site\">").line("<h2 id=\"s-site\">Before a board is opened</h2>")
        .line("<p>What was not measured is no pass, and days in the room stand in for no reading. The makers' limits come"
            + " before these.</p>");
    alike.forEach((judgements, names) -> room(names, judgements));
    html.line("</section>");
  }

  private void room(List<String> names, List<Judgement> judgements) {
    List<Judgement> failed = of(judgements, Outcome.NOT_MET);
    List<Judgement> open = of(judgements, Outcome.NOT_MEASURED);
    List<Judgement> kept = of(judgements, Outcome.MET);
    html.raw("<h3>");
    for (int i = 0; i < names.size(); i++) {
      html.raw(i == 0 ? "" : ", ").name(names.get(i));
    }
    html.raw(": ").text(verdict(failed.size(), open.size(), kept.size())).line("</h3>");
    if (failed.size() + open.size() > 0) {
      html.line("<table class=\"site\">").raw("<caption>Not met, and open: ").text(String.join(", ", names)).line("</caption>").columns("17 41 31 43 58")
          .heads(List.of("Result", "What", "Found", "Limit", "To do")).line("<tbody>");
      failed.forEach(one -> row("<td class=\"no\">NOT MET</td>", one));
      open.forEach(one -> row("<td>open</td>", one));
      html.line("</tbody>").line("</table>");
    }
    if (!kept.isEmpty()) {
      html.line("<div class=\"open kept\"><p><b>Met:</b></p><ul>");
      kept.forEach(one -> html.raw("<li>").text(brief(one)).raw(" <small>").text(one.source().toString()).line("</small></li>"));
      html.line("</ul></div>");
    }
    LevelsFigure figure = new LevelsFigure(html, figures);
    job.rooms().stream().filter(room -> names.contains(room.name())).forEach(figure::write);
  }

  private static List<Judgement> of(List<Judgement> judgements, Outcome outcome) {
    return judgements.stream().filter(one -> one.outcome() == outcome).toList();
  }

  private static String verdict(int failed, int open, int kept) {
    if (failed + open == 0) {
      return "all " + kept + " limits met";
    }
    return kept + failed == 0 ? "not ready, nothing was measured"
        : "not ready; " + failed + " not met, " + open + " open, " + kept + " met";
  }

  private void row(String result, Judgement one) {
    html.raw("<tr>").raw(result).raw("<th scope=\"row\">").text(figures.inWords(one.check()));
    if (!one.where().isEmpty()) {
      html.raw(" <small>").text(figures.inWords(one.where())).raw("</small>");
    }
    html.raw("</th>").element("td", one.found().isEmpty() ? "not measured" : figures.inWords(one.found())).raw("<td>").text(figures.inWords(one.limit()))
        .raw(" <small>").text(one.source().toString()).raw("</small></td>")
        .element("td", figures.inWords(one.advice())).line("</tr>");
  }

  private String brief(Judgement one) {
    return figures.inWords(one.check() + (one.where().isEmpty() || one.code().equals("flatness") ? "" : ", " + one.where())
        + ": " + one.found() + " (" + one.limit() + ")");
  }
}
