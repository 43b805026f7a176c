package floorcalc.drawing;

import floorcalc.boards.BoardGoods;
import floorcalc.materials.WasteLedger;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.Beyond;
import floorcalc.plan.Cut;
import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.OpenedBoard;
import floorcalc.plan.Order;
import floorcalc.plan.PieceKind;
import floorcalc.plan.Pipe;
import floorcalc.plan.Room;
import floorcalc.plan.Row;
import java.util.ArrayList;
import java.util.List;

/** Invented rooms to draw. */
final class Rooms {
  private Rooms() {
  }

  static FloorJob job(Room room) {
    return job(room, 2200, 185);
  }

  static FloorJob job(Room room, long length, long width) {
    return FloorJob.of("Invented house, first floor", BoardGoods.of(mm(length), mm(width), mm(14), 6)).room(room)
        .build();
  }

  static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  static Ring ring(long... xy) {
    Point[] corners = new Point[xy.length / 2];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = Point.ofMillimetres(xy[2 * i], xy[2 * i + 1]);
    }
    return Ring.of(corners);
  }

  static Room outOfSquare() {
    return Room.of("Study", Outline.of(ring(0, 0, 4210, 0, 4195, 3620, 0, 3605)))
        .withDoors(List.of(new Door("D1", Point.ofMillimetres(1200, 0), Point.ofMillimetres(2026, 0), "Hall",
            new Beyond("same floor", mm(-4)))))
        .withPipes(List.of(new Pipe(Point.ofMillimetres(310, 140), mm(22)),
            new Pipe(Point.ofMillimetres(410, 140), mm(22))));
  }

  static Room bathroom() {
    return Room.of("Bathroom", Outline.of(ring(0, 0, 2171, 0, 2171, 1456, 0, 1456)))
        .withDoors(List.of(new Door("Bath door", Point.ofMillimetres(2171, 300), Point.ofMillimetres(2171, 1060),
            "Landing", new Beyond("carpet", mm(6)))))
        .withPipes(List.of(new Pipe(Point.ofMillimetres(200, 1300), mm(110))));
  }

  static Room lWithColumn() {
    return Room.of("Living & dining", Outline.of(
        ring(0, 0, 6400, 0, 6400, 3100, 3900, 3100, 3900, 5600, 0, 5600),
        List.of(ring(2600, 2700, 3000, 2700, 3000, 3100, 2600, 3100))))
        .withDoors(List.of(
            new Door("D1", Point.ofMillimetres(0, 4000), Point.ofMillimetres(0, 4900), "Hall", Beyond.UNKNOWN),
            new Door("D2", Point.ofMillimetres(4500, 0), Point.ofMillimetres(6000, 0), "Terrace",
                new Beyond("tile", mm(-12)))));
  }

  static Room corridor() {
    return Room.of("Long corridor", Outline.of(ring(0, 0, 200_000, 0, 200_000, 1500, 0, 1500)));
  }

  /** Two rooms joined by a passage 15 mm wide, which the gap closes: two bays. */
  static Room hourglass() {
    return Room.of("Hourglass", Outline.of(ring(0, 0, 3000, 0, 3000, 1500, 3200, 1500, 3200, 0, 6200, 0, 6200, 2600,
        3200, 2600, 3200, 1515, 3000, 1515, 3000, 2600, 0, 2600)));
  }

  /** A rectangle of whole boards without any gap, built piece by piece: as many rows and boards as asked. */
  static FloorPlan wholeBoards(FloorJob job, int rows, int perRow) {
    Room room = job.rooms().get(0);
    long length = job.board().longest().toNanometres();
    long width = job.board().coverWidth().toNanometres();
    List<OpenedBoard> boards = new ArrayList<>();
    List<Row> laid = new ArrayList<>();
    for (int r = 0; r < rows; r++) {
      List<LaidPiece> pieces = new ArrayList<>();
      for (int i = 0; i < perRow; i++) {
        long x = i * length;
        long y = r * width;
        boards.add(new OpenedBoard(boards.size() + 1, job.board().longest(), "floor-1." + (r + 1)));
        Ring outline = Ring.ofNanometres(new long[] {x, x + length, x + length, x},
            new long[] {y, y, y + width, y + width});
        pieces.add(new LaidPiece("floor-1." + (r + 1) + "." + (i + 1), 1, PieceKind.FULL, outline, List.of(),
            new Cut(boards.size(), Length.ZERO, job.board().longest(), Length.ZERO, job.board().coverWidth())));
      }
      laid.add(new Row(r + 1, job.board().coverWidth(), pieces));
    }
    return plan(job, List.of(new Bay("floor-1", room.name(), Direction.ALONG_X, room.outline(), laid)), boards);
  }

  /** The room that {@link #wholeBoards} fills. */
  static Room floor(long width, long height) {
    return Room.of("Floor", Outline.of(ring(0, 0, width, 0, width, height, 0, height)));
  }

  static FloorPlan plan(FloorJob job, List<Bay> bays, List<OpenedBoard> boards) {
    WasteLedger ledger = new WasteLedger(Area.ZERO, Area.ZERO, Area.ZERO, Area.ZERO, Area.ZERO, Area.ZERO, Area.ZERO,
        Area.ZERO);
    return new FloorPlan(job.title(), bays, boards, new Order(boards.size(), boards.size(), 0, 0, 0), ledger, List.of(),
        List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
  }
}
