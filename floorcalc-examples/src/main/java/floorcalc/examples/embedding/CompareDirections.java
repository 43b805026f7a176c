package floorcalc.examples.embedding;

import floorcalc.FloorPlanner;
import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Wkt;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.plan.Row;
import java.io.PrintStream;
import java.util.List;

/** Lays the same room in four directions and compares what each one takes and what it cannot keep. */
public final class CompareDirections {
  private CompareDirections() {
  }

  /**
   * Prints one line for each direction.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    run(System.out);
  }

  /**
   * Prints one line for each direction.
   *
   * @param out where to, not null
   */
  public static void run(PrintStream out) {
    BoardGoods boards = BoardGoods.of(Length.parse("2.2 m"), Length.parse("185 mm"), Length.parse("14 mm"), 6);
    Room study = Room.of("Study", Wkt.parse("POLYGON ((0 0, 4210 0, 4195 3620, 0 3605, 0 0))"));
    for (double degrees : new double[] {0, 45, 90, 135}) {
      FloorPlan plan = FloorPlanner.plan(FloorJob.of("Study floor", boards).room(study)
          .direction(DirectionChoice.of(Direction.fromDegrees(degrees))).build());
      List<Row> rows = plan.bays().get(0).rows();
      out.print(plan.bays().get(0).direction() + ": " + rows.size() + " rows, the first " + rows.get(0).coverWidth()
          + ", the last " + rows.get(rows.size() - 1).coverWidth() + "; " + plan.order().boardsUsed() + " boards, "
          + plan.order().packs() + " packs, " + plan.compromises().size() + " compromises\n");
    }
  }
}
