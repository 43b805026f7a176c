package floorcalc.examples.sheet;

import floorcalc.measure.Area;
import floorcalc.outline.Direction;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Order;
import floorcalc.rules.LayingRules;
import floorcalc.working.Outcome;
import java.util.List;

/** The first part of the sheet: what to bring and how to start. */
final class Glance {
  private final Html html;
  private final Figures figures;
  private final FloorJob job;
  private final FloorPlan plan;

  Glance(Html html, Figures figures, FloorJob job, FloorPlan plan) {
    this.html = html;
    this.figures = figures;
    this.job = job;
    this.plan = plan;
  }

  void write() {
    Order order = plan.order();
    html.line("<section aria-labelledby=\"s-glance\">").line("<h2 id=\"s-glance\">Bring and begin</h2>");
    html.line("<div class=\"bring\">");
    figure(Integer.toString(order.packs()), order.packs() == 1 ? "pack to bring" : "packs to bring",
        order.boardsInPacks() + " boards: " + order.boardsUsed() + " for the floor, " + order.spare() + " to keep, "
            + (order.boardsInPacks() - order.boardsUsed() - order.spare()) + " over");
    figure(Integer.toString(order.boardsUsed()), "boards for the floor", order.provenFewest()
        ? "proven: no plan with these rows and rules takes fewer"
        : "no plan with these rows and rules takes fewer than " + order.boardsAtLeast());
    figure(figures.withUnit(job.rules().value(LayingRules.EXPANSION_GAP)), "gap at everything fixed",
        "walls, frames, columns, pipes; on each side");
    figure(Integer.toString(plan.compromises().size()), plan.compromises().size() == 1 ? "compromise" : "compromises",
        verdicts());
    html.line("</div>");
    html.raw("<p>").text("Boards: " + lengths() + " long, " + figures.withUnit(job.board().coverWidth()) + " cover width, "
        + figures.withUnit(job.board().thickness()) + " thick; " + job.board().boardsPerPack() + " in a pack. Saw kerf "
        + figures.withUnit(job.rules().value(LayingRules.SAW_KERF)) + "." + sawing()).line("</p>");
    html.line("<table>").line("<caption>How each bay starts</caption>")
        .heads(List.of("Room", "Bay", "Floor", "Boards run", "Rows", "First row", "Last row"));
    html.line("<tbody>");
    for (Bay bay : plan.bays()) {
      bay(bay);
    }
    html.line("</tbody>").line("</table>").line("</section>");
  }

  private String sawing() {
    return plan.figures().map(found -> " " + found.cuts() + (found.cuts() == 1 ? " cut" : " cuts") + "; "
        + (found.longestLeftover().isZero() ? "no piece of full width is left over."
            : "the longest piece of full width left over is " + figures.withUnit(found.longestLeftover()) + " long.")).orElse("");
  }

  private void figure(String number, String what, String more) {
    html.raw("<div><strong>").text(number).raw("</strong> <b>").text(what).raw("</b> <small>").text(more)
        .line("</small></div>");
  }

  private String lengths() {
    return String.join(", ", job.board().lengths().stream().map(figures::withUnit).toList());
  }

  private String verdicts() {
    long failed = plan.checks().stream().filter(check -> check.outcome() == Outcome.NOT_MET).count();
    long warnings = plan.findings().stream().filter(Verdicts::isFailure).count();
    if (failed == 0 && warnings == 0) {
      return "all checks met; what is open stands below";
    }
    String checks = failed == 0 ? "" : failed + (failed == 1 ? " check" : " checks") + " not met";
    String more = warnings == 0 ? "" : warnings + (warnings == 1 ? " warning" : " warnings");
    return checks + (failed == 0 || warnings == 0 ? "" : ", ") + more + "; see below";
  }

  private void bay(Bay bay) {
    int last = bay.rows().size() - 1;
    html.raw("<tr><th scope=\"row\">").name(bay.room()).raw("</th>");
    cell(bay.bay());
    cell(figures.area(area(bay)));
    html.raw("<td class=\"run\">").raw(arrow(bay.direction())).text(" " + bay.direction()).raw("</td>");
    cell(Integer.toString(bay.rows().size()));
    cell(last < 0 ? "" : figures.bare(bay.rows().get(0).coverWidth()));
    cell(last < 0 ? "" : figures.bare(bay.rows().get(last).coverWidth()));
    html.line("</tr>");
  }

  private static Area area(Bay bay) {
    return bay.laid().area();
  }

  private void cell(String text) {
    html.element("td", text);
  }

  /** A small arrow that points the way the boards run on the drawing. */
  private static String arrow(Direction direction) {
    return "<svg class=\"arrow\" viewBox=\"-8 -8 16 16\" aria-hidden=\"true\"><path transform=\"rotate("
        + direction.toDecimal().negate().toPlainString()
        + ")\" d=\"M-7 0H6M2 -3L6 0L2 3\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.4\"/></svg>";
  }
}
