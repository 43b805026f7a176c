package floorcalc.examples;

import floorcalc.boards.BoardGoods;
import floorcalc.examples.job.JobFile;
import floorcalc.examples.job.Tape;
import floorcalc.materials.OrderLine;
import floorcalc.materials.WasteLedger;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.Check;
import floorcalc.plan.Compromise;
import floorcalc.plan.Cut;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.OpenedBoard;
import floorcalc.plan.Order;
import floorcalc.plan.PieceKind;
import floorcalc.plan.Profile;
import floorcalc.plan.Room;
import floorcalc.plan.Row;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import floorcalc.working.Worked;
import java.math.BigDecimal;
import java.util.List;

/**
 * A plan drawn by hand that has one of everything, for writers. It is no floor that anybody could lay: of two rows, the
 * first has a start, a whole board and an end, the second a taper and a piece with a notch.
 */
public final class HandMade {
  /** A source to print. */
  public static final Source BOOK = new Source("Laying floors", "an invented publisher", 2031, "page 7", Standing.QUOTED);

  private static final Length WIDTH = mm("185");

  private HandMade() {
  }

  public static Length mm(String decimal) {
    return Length.ofMillimetres(decimal);
  }

  public static JobFile job(String title, String room) {
    return new JobFile(FloorJob.of(title, BoardGoods.of(mm("2200"), WIDTH, mm("14"), 6))
        .room(Room.of(room, Outline.of(ring(0, 0, 5020, 0, 5020, 300, 0, 300)))).build(), Tape.METRIC);
  }

  public static FloorPlan plan(String title, String room) {
    Bay bay = new Bay("hall-1", room, Direction.ALONG_X, Outline.of(ring(10, 10, 5010, 10, 5010, 290, 10, 290),
        List.of(ring(100, 100, 100, 110, 110, 110))), List.of(
            new Row(1, WIDTH, List.of(
                piece("hall-1.1.1", 1, PieceKind.START, ring(10, 10, 1010, 10, 1010, 195, 10, 195), cut(1, 1200, 2200, 0, 185)),
                piece("hall-1.1.2", 1, PieceKind.FULL, ring(1010, 10, 3210, 10, 3210, 195, 1010, 195), cut(2, 0, 2200, 0, 185)),
                piece("hall-1.1.3", 1, PieceKind.END, ring(3210, 10, 5010, 10, 5000, 195, 3210, 195), cut(3, 0, 1800, 0, 185)))),
            new Row(2, mm("95.000001"), List.of(
                piece("hall-1.2.1", 1, PieceKind.SINGLE, ring(10, 195, 1010, 195, 1010, 285, 10, 290), cut(1, 0, 1000, 0, 95)),
                piece("hall-1.2.2", 2, PieceKind.SINGLE, ring(2010, 195, 2110, 195, 2110, 290, 2060, 290, 2060, 250, 2010, 250),
                    cut(1, 100, 200, 98, 185))))));
    Step step = new Step("packs", "How many packs?", "ceil(b / k)", List.of(
        Term.of("b", "boards", 3), new Term("k", "boards in a pack", new BigDecimal("6E+0"), BOOK)), 1, Source.DEFINITION);
    Area board = mm("2200").times(WIDTH);
    return new FloorPlan(title, List.of(bay),
        List.of(new OpenedBoard(1, mm("2200"), "hall-1.1"), new OpenedBoard(2, mm("2200"), "hall-1.1"),
            new OpenedBoard(3, mm("2200"), "hall-1.1")),
        new Order(3, 2, 1, 1, 6),
        new WasteLedger(board.multipliedBy(6), board.multipliedBy(2), Area.ZERO, Area.ZERO, board, Area.ZERO, board,
            board.multipliedBy(2)),
        List.of(OrderLine.of("boards", "3 boards", new BigDecimal("1E+1"), "pack", List.of(step))),
        List.of(new Profile("T", Point.ofMillimetres(0, 0), Point.ofMillimetres(826, 0), mm("826"), "door D1")),
        List.of(Check.of("narrowest-row", "narrowest row", "95 mm", "at least 70 mm", Outcome.MET, BOOK),
            Check.of("shortest-piece", "end piece", "100 mm", "at least 300 mm", Outcome.NOT_MET, Source.COMMON_PRACTICE),
            new Check(room, new Judgement("subfloor-moisture", "moisture", "door", "", "at most 4 %",
                Outcome.NOT_MEASURED, Source.COMMON_PRACTICE, "measure it"))),
        List.of(new Compromise("minimumEndPiece", "hall-1 row 2 run 2", mm("300"), mm("100"), "the run is short"),
            new Compromise("minimumEndPiece", "hall-1 row 4 run 2", mm("300"), mm("100"), "the run is short"),
            new Compromise("minimumRowWidth", "hall-1 row 2", mm("70"), mm("0.000001"), "a taper")),
        List.of(new Finding("bends", Severity.SERIOUS, "hall-1", "The bay bends round a corner.", BOOK),
            new Finding("drift", Severity.NOTE, "", "The last row drifts.", Source.DEFINITION)),
        List.of("Wear eye protection."), List.of(new Worked("boards", List.of(step)),
            new Worked("rows", List.of(new Step("rows", "How many rows?", "n", List.of(), 2, Source.DEFINITION)))));
  }

  public static Cut cut(int board, long from, long to, long near, long far) {
    return new Cut(board, Length.ofMillimetres(from), Length.ofMillimetres(to), Length.ofMillimetres(near),
        Length.ofMillimetres(far));
  }

  public static LaidPiece piece(String name, int run, PieceKind kind, Ring outline, Cut cut) {
    return new LaidPiece(name, run, kind, outline, List.of(), cut);
  }

  public static Ring ring(long... xy) {
    Point[] corners = new Point[xy.length / 2];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = Point.ofMillimetres(xy[2 * i], xy[2 * i + 1]);
    }
    return Ring.of(corners);
  }
}
