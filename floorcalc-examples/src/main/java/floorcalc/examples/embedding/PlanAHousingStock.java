package floorcalc.examples.embedding;

import floorcalc.examples.stock.StockRow;
import floorcalc.examples.stock.StockTotals;
import java.io.PrintStream;
import java.util.stream.IntStream;

/**
 * Plans many rooms on all cores of one machine: one word more than on one core. A plan depends on its job alone, and nothing in the
 * library is shared between plans, so a parallel stream needs no locks and gives the same totals.
 */
public final class PlanAHousingStock {
  private static final int FEW = 40;

  private PlanAHousingStock() {
  }

  /**
   * Prints the totals of the first rooms of an invented housing stock.
   *
   * @param args how many rooms, 40 if not given; then {@code loop} to plan them one after the other
   */
  public static void main(String[] args) {
    int rooms = args.length > 0 ? Integer.parseInt(args[0]) : FEW;
    long start = System.nanoTime();
    System.out.print((args.length > 1 && args[1].equals("loop") ? loop(rooms) : parallel(rooms)).toText());
    System.out.print("took " + (System.nanoTime() - start) / 1_000_000 + " ms\n");
  }

  /**
   * Prints the totals of a few rooms, planned both ways.
   *
   * @param out where to, not null
   */
  public static void run(PrintStream out) {
    StockTotals totals = parallel(FEW);
    out.print(totals.toText());
    out.print("one after the other: " + (totals.equals(loop(FEW)) ? "the same" : "not the same") + "\n");
  }

  /** {@return the totals of so many rooms, planned one after the other} */
  static StockTotals loop(int rooms) {
    StockTotals totals = StockTotals.NONE;
    for (int number = 0; number < rooms; number++) {
      totals = totals.plus(StockTotals.of(StockRow.of(number)));
    }
    return totals;
  }

  /** {@return the totals of so many rooms, planned on all cores} */
  static StockTotals parallel(int rooms) {
    return StockTotals.of(IntStream.range(0, rooms).parallel().mapToObj(StockRow::of));
  }
}
