package floorcalc.fittings;

import floorcalc.outline.Containment;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How far the piece around a point reaches from it, along the board and across it, and what lies beyond.
 *
 * @param side the way looked
 * @param distance from the point to the end of the piece, nm
 * @param joint whether another piece lies beyond
 */
record BoardReach(BoardSide side, double distance, boolean joint) {
  /** Pieces this far apart, in nanometres, still meet. */
  private static final long MEET = 5000;

  /** Looks from a point in a piece to all four sides. */
  static List<BoardReach> of(Point at, BoardPiece piece, List<BoardPiece> all) {
    List<BoardReach> sides = new ArrayList<>();
    for (BoardSide side : BoardSide.values()) {
      int sign = side == BoardSide.START_END || side == BoardSide.START_EDGE ? -1 : 1;
      double distance = distance(at, piece, side.isEnd(), sign);
      long beyond = sign * ((long) StrictMath.rint(distance) + MEET);
      Point next = Point.ofNanometres(at.xNanometres() + (side.isEnd() ? beyond : 0), at.yNanometres() + (side.isEnd() ? 0 : beyond));
      boolean joint = all.stream().anyMatch(other -> other != piece && isOn(next, other));
      sides.add(new BoardReach(side, distance, joint));
    }
    return sides;
  }

  static boolean isOn(Point point, BoardPiece piece) {
    return piece.outline().locate(point) != Containment.OUTSIDE
        && piece.holes().stream().noneMatch(hole -> hole.locate(point) == Containment.INSIDE);
  }

  /** The nearest side, or nothing if there is none of that kind. */
  static Optional<BoardReach> nearest(List<BoardReach> sides, boolean joint) {
    return sides.stream().filter(side -> side.joint == joint).min(Comparator.comparingDouble(BoardReach::distance));
  }

  private static double distance(Point at, BoardPiece piece, boolean along, int sign) {
    double nearest = Double.MAX_VALUE;
    List<Ring> rings = new ArrayList<>(List.of(piece.outline()));
    rings.addAll(piece.holes());
    for (Ring ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        int j = (i + 1) % ring.size();
        double a0 = along ? ring.x(i) - at.xNanometres() : ring.y(i) - at.yNanometres();
        double a1 = along ? ring.x(j) - at.xNanometres() : ring.y(j) - at.yNanometres();
        double b0 = along ? ring.y(i) - at.yNanometres() : ring.x(i) - at.xNanometres();
        double b1 = along ? ring.y(j) - at.yNanometres() : ring.x(j) - at.xNanometres();
        if (b0 <= 0 != b1 <= 0) {
          double hit = sign * (a0 + (a1 - a0) * (-b0 / (b1 - b0)));
          nearest = hit >= 0 ? Math.min(nearest, hit) : nearest;
        }
      }
    }
    return nearest == Double.MAX_VALUE ? 0 : nearest;
  }
}
