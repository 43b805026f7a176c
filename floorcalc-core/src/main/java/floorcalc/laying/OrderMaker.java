package floorcalc.laying;

import floorcalc.boards.BoardGoods;
import floorcalc.materials.WasteLedger;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.plan.MaterialLine;
import floorcalc.plan.Order;
import floorcalc.rules.LayingRules;
import floorcalc.working.Worked;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** The order, the order list and the waste ledger of a laid job. */
record OrderMaker(Order order, WasteLedger ledger, List<MaterialLine> materials, List<Worked> working) {

  static OrderMaker of(JobLaying laying, int atLeast) {
    BoardGoods goods = laying.job().board();
    LayingRules rules = laying.job().rules();
    int used = laying.cutting().boardCount();
    BigDecimal share = rules.value(LayingRules.SPARE_SHARE);
    int spare = share.multiply(BigDecimal.valueOf(used)).setScale(0, RoundingMode.CEILING).intValueExact();
    int packs = (used + spare + goods.boardsPerPack() - 1) / goods.boardsPerPack();
    int inPacks = packs * goods.boardsPerPack();
    Length width = goods.laidPitch();
    Area each = goods.longest().times(width);
    Waste waste = Waste.of(laying, rules.value(LayingRules.MINIMUM_END_PIECE),
        rules.value(LayingRules.MINIMUM_ROW_WIDTH));
    WasteLedger ledger = new WasteLedger(each.multipliedBy(inPacks), waste.laid(), waste.trimmed(),
        laying.cutting().sawKerf(), waste.usable(), waste.tooShort(), each.multipliedBy(spare),
        each.multipliedBy(inPacks - used - spare));
    MaterialLine line = new MaterialLine("boards", used + " boards", BigDecimal.valueOf(packs), "pack", List.of());
    return new OrderMaker(new Order(used, atLeast, spare, packs, inPacks), ledger, List.of(line), List.of());
  }
}
