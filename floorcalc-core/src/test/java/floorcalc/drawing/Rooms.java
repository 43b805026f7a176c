package floorcalc.drawing;

import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.Beyond;
import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Pipe;
import floorcalc.plan.Room;
import java.util.List;

/** Invented rooms to draw. */
final class Rooms {
  private Rooms() {
  }

  static FloorJob job(Room room) {
    return job(room, 2200, 185);
  }

  static FloorJob job(Room room, long length, long width) {
    return FloorJob.of("Invented house, first floor", BoardGoods.of(mm(length), mm(width), mm(14), 6)).room(room).build();
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

  static Room cupboard() {
    return Room.of("Cupboard", Outline.of(ring(0, 0, 450, 0, 450, 320, 0, 320)));
  }

  static Room corridor() {
    return Room.of("Long corridor", Outline.of(ring(0, 0, 200_000, 0, 200_000, 1500, 0, 1500)));
  }

  static Room hall() {
    return Room.of("Hall", Outline.of(ring(0, 0, 10_400, 0, 10_400, 11_600, 0, 11_600)));
  }
}
