package floorcalc.laying;

import floorcalc.boards.BoardGoods;
import floorcalc.materials.OrderLine;
import floorcalc.materials.PackOrder;
import floorcalc.materials.WasteLedger;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.plan.Order;
import floorcalc.rules.LayingRules;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Worked;
import java.math.BigDecimal;
import java.util.List;

/** The order, the order list and the waste ledger of a laid job, with their working. */
record OrderMaker(Order order, WasteLedger ledger, List<OrderLine> materials, List<Finding> findings,
    List<Worked> working) {

  static OrderMaker of(JobLaying laying, int atLeast, Calculated<Integer> packsAtLeast) {
    Calculated<PackOrder> packs = laying.order();
    WasteLedger ledger = ledger(laying, packs.value());
    PackOrder order = packs.value();
    OrderLine boards = OrderLine.of("boards", order.boardsUsed() + " boards cut or laid whole, "
        + ledger.laid().toSquareMetreString(2) + " m² of floor", BigDecimal.valueOf(order.packs()), "pack",
        packs.steps());
    return new OrderMaker(
        new Order(order.boardsUsed(), atLeast, order.spare(), order.packs(), order.boardsInPacks(),
            packsAtLeast.value()), ledger,
        List.of(boards), packs.findings(),
        List.of(new Worked("packs", packs.steps()), new Worked("least packs", packsAtLeast.steps()),
            new Worked("waste", ledger.explained().steps())));
  }

  private static WasteLedger ledger(JobLaying laying, PackOrder order) {
    BoardGoods goods = laying.job().board();
    LayingRules rules = laying.job().rules();
    Waste waste = Waste.of(laying, rules.value(LayingRules.MINIMUM_END_PIECE),
        rules.value(LayingRules.MINIMUM_ROW_WIDTH));
    Area spare = Area.ZERO;
    Area over = Area.ZERO;
    Area bought = Area.ZERO;
    for (Length length : goods.lengths()) {
      Area each = length.times(goods.laidPitch());
      int kept = order.spareByLength().get(length);
      int left = order.leftOver().get(length);
      spare = spare.plus(each.multipliedBy(kept));
      over = over.plus(each.multipliedBy(left - kept));
      bought = bought.plus(each.multipliedBy(left + order.usedByLength().get(length)));
    }
    return new WasteLedger(bought, waste.laid(), waste.trimmed(), laying.cutting().sawKerf(), waste.usable(),
        waste.tooShort(), spare, over);
  }
}
