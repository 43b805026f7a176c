package floorcalc.recheck;

import floorcalc.recheck.ToldPlan.Board;
import floorcalc.recheck.ToldPlan.Material;
import floorcalc.recheck.ToldPlan.Order;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;

/** Rule 6: boards, spare boards and packs are counted right, and the lines of the materials on boards say the same. */
final class OrderCheck {
  private OrderCheck() {}

  static void check(AskedJob job, ToldPlan plan, Faults faults) {
    Order order = plan.order();
    Cursor at = order.at();
    int listed = plan.boards().size();
    if (order.boardsUsed() != listed) {
      at.get("boardsUsed").fault(Rule.COUNTS, String.valueOf(order.boardsUsed()), "the plan lists " + listed + " boards");
    }
    if (order.boardsAtLeast() > listed) {
      at.get("boardsAtLeast").fault(Rule.COUNTS, String.valueOf(order.boardsAtLeast()), "this plan does with " + listed);
    }
    if (order.provenFewest() != (order.boardsAtLeast() == order.boardsUsed())) {
      at.get("provenFewest").fault(Rule.COUNTS, String.valueOf(order.provenFewest()), "it says whether boardsAtLeast, "
          + order.boardsAtLeast() + ", is boardsUsed, " + order.boardsUsed());
    }
    BigDecimal spare = job.spareShare().multiply(BigDecimal.valueOf(listed)).setScale(0, RoundingMode.CEILING);
    if (spare.compareTo(BigDecimal.valueOf(order.spare())) != 0) {
      at.get("spare").fault(Rule.COUNTS, String.valueOf(order.spare()), job.spareShare() + " of " + listed
          + " boards, rounded up, is " + spare);
    }
    packs(job, plan.boards(), order);
    materials(job, plan);
  }

  private static void packs(AskedJob job, List<Board> boards, Order order) {
    long inOne = job.pack().values().stream().mapToLong(Integer::longValue).sum();
    if (order.boardsInPacks() != order.packs() * inOne) {
      order.at().get("boardsInPacks").fault(Rule.COUNTS, String.valueOf(order.boardsInPacks()),
          order.packs() + " packs of " + inOne + " hold " + order.packs() * inOne);
    }
    if (!isEnough(job, boards, order.spare(), order.packs())) {
      order.at().get("packs").fault(Rule.COUNTS, order.packs() + " packs", "they do not hold " + boards.size()
          + " boards by their lengths and " + order.spare() + " spare");
    } else if (order.packs() > 0 && isEnough(job, boards, order.spare(), order.packs() - 1L)) {
      order.at().get("packs").fault(Rule.COUNTS, order.packs() + " packs", "one pack less holds all boards and the spare ones");
    }
  }

  /** Whether packs hold the boards of each length, and the spare boards of any length beside them. */
  private static boolean isEnough(AskedJob job, List<Board> boards, int spare, long packs) {
    long held = 0;
    for (Map.Entry<Long, Integer> kind : job.pack().entrySet()) {
      long used = boards.stream().filter(board -> board.length() == kind.getKey()).count();
      held += packs * kind.getValue();
      if (packs * kind.getValue() < used) {
        return false;
      }
    }
    return held >= (long) boards.size() + spare;
  }

  private static void materials(AskedJob job, ToldPlan plan) {
    line(plan, "boards", plan.order().packs());
    if (job.keptBack() > 0) {
      line(plan, "boards, kept back", job.keptBack());
    }
  }

  private static void line(ToldPlan plan, String item, int packs) {
    List<Material> lines = plan.materials().stream().filter(line -> line.item().equals(item)).toList();
    if (lines.size() != 1) {
      plan.file().get("materials").fault(Rule.COUNTS, lines.size() + " lines on '" + item + "'", "there is one");
    }
    for (Material line : lines) {
      if (line.quantity().compareTo(BigDecimal.valueOf(packs)) != 0 || !line.unit().equals("pack")) {
        line.at().fault(Rule.COUNTS, line.quantity() + " " + line.unit() + " of '" + item + "'", "it is " + packs + " pack");
      }
    }
  }
}
