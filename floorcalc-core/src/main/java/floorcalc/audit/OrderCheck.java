package floorcalc.audit;

import floorcalc.boards.PackContent;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Order;
import floorcalc.rules.LayingRules;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Counts what is to be ordered once more: boards, spare boards and packs. */
final class OrderCheck {
  private static final String WHERE = "order";

  private OrderCheck() {
  }

  static void check(FloorJob job, FloorPlan plan, BoardBook book, long trivialBound, Breaches breaches) {
    Order order = plan.order();
    if (order.boardsUsed() != book.size()) {
      breaches.add(Code.BOARDS_USED, WHERE, "boardsUsed is " + order.boardsUsed() + ", but the plan lists "
          + Words.count(book.size(), "board"));
    }
    if (order.boardsAtLeast() > book.size()) {
      breaches.add(Code.BOUND_TOO_HIGH, WHERE, "boardsAtLeast is " + order.boardsAtLeast() + ", but this plan does with "
          + Words.count(book.size(), "board"));
    } else if (order.boardsAtLeast() < trivialBound) {
      breaches.note(Code.BOUND_WEAK, WHERE, "boardsAtLeast is " + order.boardsAtLeast() + ", but the laid area alone fills "
          + Words.count(trivialBound, "board"), Source.DEFINITION);
    }
    checkSpare(job, book, order, breaches);
    checkPacks(job, book, order, breaches);
  }

  private static void checkSpare(FloorJob job, BoardBook book, Order order, Breaches breaches) {
    BigDecimal share = job.rules().value(LayingRules.SPARE_SHARE);
    BigDecimal expected = share.multiply(BigDecimal.valueOf(book.size())).setScale(0, RoundingMode.CEILING);
    if (expected.compareTo(BigDecimal.valueOf(order.spare())) != 0) {
      breaches.add(Code.SPARE, WHERE, "spare is " + Words.count(order.spare(), "board") + "; " + share + " of "
          + Words.count(book.size(), "board") + ", rounded up to whole boards, is " + expected,
          job.rules().get(LayingRules.SPARE_SHARE).source());
    }
  }

  private static void checkPacks(FloorJob job, BoardBook book, Order order, Breaches breaches) {
    long perPack = 0;
    for (PackContent content : job.board().pack()) {
      perPack += content.perPack();
    }
    if (order.boardsInPacks() != order.packs() * perPack) {
      breaches.add(Code.BOARDS_IN_PACKS, WHERE, "boardsInPacks is " + order.boardsInPacks() + ", but "
          + Words.count(order.packs(), "pack") + " of " + Words.count(perPack, "board") + " hold "
          + order.packs() * perPack);
    }
    int[] used = usedByLength(job, book);
    if (!isEnough(job, book.size(), used, order, order.packs())) {
      breaches.add(Code.PACKS_TOO_FEW, WHERE, Words.count(order.packs(), "pack") + " of " + job.board().pack()
          + " do not hold " + Words.count(book.size(), "board") + " used and " + order.spare() + " spare");
    } else if (order.packs() > 0 && isEnough(job, book.size(), used, order, order.packs() - 1L)) {
      breaches.add(Code.PACKS_TOO_MANY, WHERE, Words.count(order.packs() - 1L, "pack") + " of " + job.board().pack()
          + " would hold " + Words.count(book.size(), "board") + " used and " + order.spare() + " spare; the order says "
          + order.packs());
    }
  }

  /** Whether packs hold the boards used, length by length, and the spare boards of any length. */
  private static boolean isEnough(FloorJob job, int boards, int[] used, Order order, long packs) {
    List<PackContent> pack = job.board().pack();
    long needed = order.spare() + (long) boards;
    long held = 0;
    for (int i = 0; i < used.length; i++) {
      held += packs * pack.get(i).perPack();
      if (packs * pack.get(i).perPack() < used[i]) {
        return false;
      }
    }
    return held >= needed;
  }

  private static int[] usedByLength(FloorJob job, BoardBook book) {
    int[] used = new int[job.board().pack().size()];
    for (int i = 0; i < book.size(); i++) {
      if (book.kind(i) >= 0) {
        used[book.kind(i)]++;
      }
    }
    return used;
  }
}
