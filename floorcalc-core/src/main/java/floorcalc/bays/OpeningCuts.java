package floorcalc.bays;

import floorcalc.outline.Point;
import java.util.ArrayList;
import java.util.List;

/** Checks the openings of a room and makes cuts of them. */
final class OpeningCuts {
  private final RoomShape shape;

  OpeningCuts(RoomShape shape) {
    this.shape = shape;
  }

  List<Cut> of(List<Opening> openings) {
    List<Cut> cuts = new ArrayList<>();
    Point origin = shape.room.shell().corners().get(0);
    for (Opening opening : openings) {
      double ax = Math.subtractExact(opening.from().xNanometres(), origin.xNanometres());
      double ay = Math.subtractExact(opening.from().yNanometres(), origin.yNanometres());
      double bx = Math.subtractExact(opening.to().xNanometres(), origin.xNanometres());
      double by = Math.subtractExact(opening.to().yNanometres(), origin.yNanometres());
      Cut cut = new Cut(ax, ay, bx, by, Cut.Kind.OPENING);
      double dx = (bx - ax) / cut.length();
      double dy = (by - ay) / cut.length();
      requireOnWall(opening, opening.from(), ax, ay);
      requireOnWall(opening, opening.to(), bx, by);
      if (shape.reach(ax, ay, dx, dy) < cut.length() - RoomShape.TOUCH || !shape.isFloor((ax + bx) / 2, (ay + by) / 2)
          || shape.runsAlongWall(ax, ay, bx, by)) {
        throw new IllegalArgumentException("opening '" + opening.name() + "' from " + opening.from() + " to " + opening.to()
            + " must lie across the floor, but leaves it or runs along a wall; give its two jambs");
      }
      cuts.add(cut);
    }
    return cuts;
  }

  private void requireOnWall(Opening opening, Point end, double x, double y) {
    if (shape.ringAt(x, y) < 0) {
      throw new IllegalArgumentException("opening '" + opening.name() + "' must end on walls, but " + end
          + " lies on none; give its two jambs");
    }
  }
}
