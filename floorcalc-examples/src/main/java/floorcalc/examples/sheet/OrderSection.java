package floorcalc.examples.sheet;

import floorcalc.boards.BoardGoods;
import floorcalc.materials.WasteLedger;
import floorcalc.measure.Area;
import floorcalc.measure.Price;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.MaterialLine;
import floorcalc.plan.Profile;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

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
        .line("<caption>What to order</caption>").heads(List.of("Item", "Floor takes", "Order"));
    html.line("<tbody>");
    for (MaterialLine line : plan.materials()) {
      html.raw("<tr>").element("th scope=\"row\"", line.item()).element("td", line.net())
          .element("td", line.quantity().toPlainString() + " × " + line.unit()).line("</tr>");
    }
    html.line("</tbody>").line("</table>");
    packs();
    if (!plan.profiles().isEmpty()) {
      html.line("<table>").line("<caption>Transition profiles</caption>")
          .heads(List.of("Kind", "Length", "From", "To", "Because"));
      html.line("<tbody>");
      for (Profile profile : plan.profiles()) {
        html.raw("<tr>").element("th scope=\"row\"", profile.kind()).element("td", figures.bare(profile.length()))
            .element("td", profile.from().toString()).element("td", profile.to().toString())
            .element("td", profile.because()).line("</tr>");
      }
      html.line("</tbody>").line("</table>");
    }
    html.line("</section>");
  }

  private void packs() {
    BigDecimal packs = BigDecimal.valueOf(plan.order().packs());
    board.packPrice().ifPresent(price -> html.raw("<p>Price: ").text(plan.order().packs() + " packs × " + price + " = "
        + new Price(price.amount().multiply(packs), price.currency())).line("</p>"));
    board.packMass().ifPresent(mass -> html.raw("<p>Weight: ").text(plan.order().packs() + " packs × " + mass + " = "
        + mass.kilograms().multiply(packs).setScale(1, RoundingMode.HALF_UP).toPlainString() + " kg").line("</p>"));
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
