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
 * @param beyond the piece that lies beyond, if one does
 */
record BoardReach(BoardSide side, double distance, Optional<BoardPiece> beyond) {
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
      sides.add(new BoardReach(side, distance, all.stream().filter(other -> other != piece && isOn(next, other)).findFirst()));
    }
    return sides;
  }

  static boolean isOn(Point point, BoardPiece piece) {
    return piece.outline().locate(point) != Containment.OUTSIDE
        && piece.holes().stream().noneMatch(hole -> hole.locate(point) == Containment.INSIDE);
  }

  boolean isJoint() {
    return beyond.isPresent();
  }

  /** The nearest of the sides that face the gap, or nothing if none does. */
  static Optional<BoardReach> nearestGap(List<BoardReach> sides) {
    return sides.stream().filter(side -> !side.isJoint()).min(Comparator.comparingDouble(BoardReach::distance));
  }

  /** The nearest of the sides beyond which one of some pieces lies. */
  static Optional<BoardReach> nearestTo(List<BoardReach> sides, List<BoardPiece> pieces) {
    return sides.stream().filter(side -> side.beyond.filter(pieces::contains).isPresent())
        .min(Comparator.comparingDouble(BoardReach::distance));
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
