package floorcalc.finishing;

import floorcalc.materials.BoardMoney;
import floorcalc.materials.OrderLine;
import floorcalc.materials.PackOrder;
import floorcalc.measure.Length;
import floorcalc.measure.Price;
import floorcalc.measure.UnitPrice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.OpenedBoard;
import floorcalc.rules.LayingRules;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The lines of an order list on boards. */
final class BoardLines {
  /** The item of the line that a plan starts with; others are made anew. */
  private static final String BOARDS = "boards";

  private final FloorJob job;
  private final FloorPlan plan;
  private final Gathered gathered;

  BoardLines(FloorJob job, FloorPlan plan, Gathered gathered) {
    this.job = job;
    this.plan = plan;
    this.gathered = gathered;
  }

  void write() {
    Optional<UnitPrice> price = job.board().packPrice().map(UnitPrice::each);
    for (OrderLine line : plan.materials()) {
      if (line.item().equals(BOARDS)) {
        OrderLine boards = OrderLine.of(line.item(), line.net(), line.quantity(), line.unit(),
            line.working().stream().filter(step -> !step.id().equals("line-price")).toList());
        gathered.lines.add(price.map(each -> boards.at(each, line.quantity())).orElse(boards));
      }
    }
    int kept = job.goods().keepBack();
    if (kept > 0) {
      OrderLine line = OrderLine.of("boards, kept back", "for repairs, of the same batch", BigDecimal.valueOf(kept), "pack",
          List.of(new Step("packs-kept-back", "How many packs are kept back for repairs?", "value as stated", List.of(), kept,
              Source.GIVEN)));
      gathered.lines.add(price.map(each -> line.at(each, BigDecimal.valueOf(kept))).orElse(line));
    }
  }

  Optional<Calculated<BoardMoney>> money() {
    return job.board().packPrice().map(this::money);
  }

  private Calculated<BoardMoney> money(Price pack) {
    Map<Length, Integer> used = new LinkedHashMap<>();
    for (OpenedBoard board : plan.boards()) {
      used.merge(board.length(), 1, Integer::sum);
    }
    PackOrder order = PackOrder.of(job.board(), used, job.rules().get(LayingRules.SPARE_SHARE)).value();
    return BoardMoney.of(order, job.board().pack(), pack, plan.ledger(), job.goods().keepBack(), job.goods().returnShare());
  }
}
