package floorcalc.examples.embedding;

import floorcalc.FloorPlanner;
import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.measure.Price;
import floorcalc.outline.Wkt;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import java.io.PrintStream;
import java.math.BigDecimal;

/** Prices the boards of one room, in ten lines. */
public final class PriceARoom {
  private PriceARoom() {
  }

  /**
   * Prints the price.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    run(System.out);
  }

  /**
   * Prints the price.
   *
   * @param out where to, not null
   */
  public static void run(PrintStream out) {
    BoardGoods boards = BoardGoods.of(Length.parse("2.2 m"), Length.parse("185 mm"), Length.parse("14 mm"), 6)
        .withPackPrice(new Price(new BigDecimal("118.40"), "EUR"));
    Room study = Room.of("Study", Wkt.parse("POLYGON ((0 0, 4210 0, 4195 3620, 0 3605, 0 0))"));
    FloorPlan plan = FloorPlanner.plan(FloorJob.of("Study floor", boards).room(study).build());
    Price pack = boards.packPrice().orElseThrow();
    int packs = plan.order().packs();
    BigDecimal cost = pack.amount().multiply(BigDecimal.valueOf(packs));
    out.print(plan.order().boardsUsed() + " boards for the floor, " + plan.order().spare() + " to keep: " + packs
        + " packs at " + pack + ", together " + cost + " " + pack.currency() + "\n");
  }
}
