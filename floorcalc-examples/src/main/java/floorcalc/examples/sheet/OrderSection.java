package floorcalc.examples.sheet;

import floorcalc.boards.BoardGoods;
import floorcalc.materials.CostSheet;
import floorcalc.materials.OrderLine;
import floorcalc.materials.WasteLedger;
import floorcalc.measure.Area;
import floorcalc.measure.Price;
import floorcalc.plan.FloorPlan;
import floorcalc.working.Step;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/** The parts of the sheet on what to order and where it goes. */
final class OrderSection {
  private final Html html;
  private final Figures figures;
  private final BoardGoods board;
  private final FloorPlan plan;

  OrderSection(Html html, Figures figures, BoardGoods board, FloorPlan plan) {
    this.board = board;
    this.html = html;
    this.figures = figures;
    this.plan = plan;
  }

  void orderList() {
    html.line("<section class=\"keep\" aria-labelledby=\"s-order\">").line("<h2 id=\"s-order\">Order</h2>").line("<table>")
        .line("<caption>What to order</caption>").heads(List.of("Item", "Floor takes", "Order", "Price"));
    html.line("<tbody>");
    for (OrderLine line : plan.materials()) {
      html.raw("<tr>").element("th scope=\"row\"", line.item()).element("td", line.net())
          .element("td", OrderWords.of(line))
          .element("td class=\"num\"", line.price().map(price -> CostSheet.rounded(price).toString()).orElse("")).line("</tr>");
    }
    html.line("</tbody>").line("</table>");
    results("total-price", "All that is priced: ");
    html.line("<p>How each line was worked out, and which piece is cut from which bar or roll, stands under Working,"
        + " and line by line in order.csv, where prices are not rounded. Yields are the makers'; what is given"
        + " in m or m² is what the floor takes, before laps, cuts and spare.</p>");
    packs();
    html.line("</section>");
  }

  private void packs() {
    BigDecimal packs = BigDecimal.valueOf(plan.order().packs());
    board.packPrice().ifPresent(price -> html.raw("<p>Price of the boards: ").text(plan.order().packs() + " packs × " + price + " = "
        + new Price(price.amount().multiply(packs), price.currency())).line("</p>"));
    results("waste-price", "Of that not on the floor, as cuts, offcuts, spare boards and packs sold whole: ");
    results("return-price", "Unopened packs, if no spare board is needed and the seller takes them back: ");
    board.packMass().ifPresent(mass -> html.raw("<p>Weight: ").text(plan.order().packs() + " packs × " + mass + " = "
        + mass.kilograms().multiply(packs).setScale(1, RoundingMode.HALF_UP).toPlainString() + " kg").line("</p>"));
    Optional<Step> volume = step("pack-volume");
    if (volume.isPresent()) {
      html.raw("<p>In the room to acclimatise: ").text(rounded(volume.get().result()) + " m³ of packs, "
          + step("stacks").map(step -> step.result() + (step.result().toString().equals("1") ? " stack" : " stacks")).orElse("") + " on "
          + step("floor-space").map(step -> figures.area((Area) step.result())).orElse("")
          + " of floor, wrapping not counted. Spread stacks over the floor.").line("</p>");
    }
  }

  private static String rounded(Object cubicMetres) {
    return new BigDecimal(cubicMetres.toString()).setScale(2, RoundingMode.HALF_UP).toPlainString();
  }

  /** The results of a step of the plan's working, with what they are in front; nothing if there is none or it is no money at all. */
  private void results(String id, String words) {
    plan.working().stream().flatMap(worked -> worked.steps().stream()).filter(step -> step.id().equals(id))
        .filter(step -> !(step.result() instanceof Price price) || price.amount().signum() > 0)
        .forEach(step -> html.raw("<p>").text(words + step.result()).line("</p>"));
  }

  private Optional<Step> step(String id) {
    return plan.working().stream().flatMap(worked -> worked.steps().stream()).filter(step -> step.id().equals(id)).findFirst();
  }

  void ledger() {
    WasteLedger ledger = plan.ledger();
    html.line("<section class=\"keep\" aria-labelledby=\"s-ledger\">").line("<h2 id=\"s-ledger\">Where the boards go</h2>")
        .line("<table class=\"ledger\">").line("<caption>Every board that is bought, by area</caption>")
        .columns("110 50 26").heads(List.of("Part", "Area", "Share"));
    html.line("<tbody>");
    part("laid on the floor", ledger.laid());
    part("trimmed to shape at walls and voids", ledger.trimmedToShape());
    part("saw dust", ledger.sawKerf());
    part("offcuts long and wide enough for another piece", ledger.usableOffcuts());
    part("offcuts too short or too narrow", ledger.shortOffcuts());
    part("whole boards kept for mistakes and repairs", ledger.spare());
    part("whole boards over, because packs are sold whole", ledger.packRounding());
    html.line("</tbody>").line("<tfoot>");
    part("bought", ledger.bought());
    html.line("</tfoot>").line("</table>").line("</section>");
  }

  private void part(String name, Area area) {
    html.raw("<tr>").element("th scope=\"row\"", name).element("td class=\"num\"", figures.area(area))
        .element("td class=\"num\"", plan.ledger().perCentOfBought(area, 1).toPlainString() + " %").line("</tr>");
  }
}
