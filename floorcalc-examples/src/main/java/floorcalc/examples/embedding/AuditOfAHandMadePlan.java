package floorcalc.examples.embedding;

import floorcalc.audit.PlanAudit;
import floorcalc.boards.BoardGoods;
import floorcalc.materials.OrderLine;
import floorcalc.materials.WasteLedger;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.Cut;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.OpenedBoard;
import floorcalc.plan.Order;
import floorcalc.plan.PieceKind;
import floorcalc.plan.Room;
import floorcalc.plan.Row;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.util.List;

/**
 * Audits a plan that was made elsewhere, here by hand: a cupboard of 1000 mm by 390 mm, two rows of one piece each, both
 * from one board. Then the second piece is moved by the width of a saw cut, and the audit finds it.
 */
public final class AuditOfAHandMadePlan {
  private static final Length PIECE = Length.ofMillimetres(980);
  private static final Length WIDTH = Length.ofMillimetres(185);

  private AuditOfAHandMadePlan() {
  }

  /**
   * Prints both audits.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    run(System.out);
  }

  /**
   * Prints both audits.
   *
   * @param out where to, not null
   */
  public static void run(PrintStream out) {
    Ring walls = rectangle(0, 0, 1000, 390);
    FloorJob job = FloorJob.of("Cupboard", BoardGoods.of(Length.ofMillimetres(2200), WIDTH, Length.ofMillimetres(14), 6))
        .room(Room.of("Cupboard", Outline.of(walls))).build();
    out.print("as drawn: " + PlanAudit.of(job, plan(Length.ofMillimetres(983))) + "\n");
    out.print("second piece without a saw kerf: " + PlanAudit.of(job, plan(PIECE)) + "\n");
  }

  /** The plan, with the second piece cut from a place on the board. */
  static FloorPlan plan(Length secondFrom) {
    Bay bay = new Bay("cupboard-1", "Cupboard", Direction.ALONG_X, Outline.of(rectangle(10, 10, 990, 380)),
        List.of(row(1, 10, Length.ZERO), row(2, 195, secondFrom)));
    Area board = Length.ofMillimetres(2200).times(WIDTH);
    Area laid = PIECE.times(WIDTH).multipliedBy(2);
    Area dust = Length.ofMillimetres(3).times(WIDTH).multipliedBy(2);
    WasteLedger ledger = new WasteLedger(board.multipliedBy(6), laid, Area.ZERO, dust, Area.ZERO,
        board.minus(laid).minus(dust), board, board.multipliedBy(4));
    return new FloorPlan("Cupboard", List.of(bay),
        List.of(new OpenedBoard(1, Length.ofMillimetres(2200), "cupboard-1.1")), new Order(1, 1, 1, 1, 6), ledger,
        List.of(OrderLine.of("boards", "1 board", BigDecimal.ONE, "pack", List.of())), List.of(), List.of(),
        List.of(), List.of(), List.of(), List.of());
  }

  private static Row row(int number, long low, Length from) {
    Cut cut = new Cut(1, from, from.plus(PIECE), Length.ZERO, WIDTH);
    return new Row(number, WIDTH, List.of(new LaidPiece("cupboard-1." + number + ".1", 1, PieceKind.SINGLE,
        rectangle(10, low, 990, low + 185), List.of(), cut)));
  }

  private static Ring rectangle(long left, long near, long right, long far) {
    return Ring.of(Point.ofMillimetres(left, near), Point.ofMillimetres(right, near), Point.ofMillimetres(right, far),
        Point.ofMillimetres(left, far));
  }
}
