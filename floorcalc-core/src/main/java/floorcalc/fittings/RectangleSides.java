package floorcalc.fittings;

import floorcalc.outline.Point;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;

/**
 * The sides of the rectangle that encloses a piece, walked against the clock from its start corner: along the start edge, up the far
 * end, back along the far edge, down the start end.
 *
 * @param length along the board, nm
 * @param width across it, nm
 */
record RectangleSides(long length, long width) {
  private static final List<BoardSide> ORDER =
      List.of(BoardSide.START_EDGE, BoardSide.FAR_END, BoardSide.FAR_EDGE, BoardSide.START_END);

  boolean isOn(Point p) {
    return p.xNanometres() == 0 || p.xNanometres() == length || p.yNanometres() == 0 || p.yNanometres() == width;
  }

  /** Whether two points on the rectangle are on one side of it. */
  boolean areOnOneSide(Point a, Point b) {
    return a.xNanometres() == b.xNanometres() && (a.xNanometres() == 0 || a.xNanometres() == length)
        || a.yNanometres() == b.yNanometres() && (a.yNanometres() == 0 || a.yNanometres() == width);
  }

  /** How far a point on the rectangle is from the start corner, walked round. */
  long walked(Point p) {
    if (p.yNanometres() == 0) {
      return p.xNanometres();
    }
    if (p.xNanometres() == length) {
      return length + p.yNanometres();
    }
    return p.yNanometres() == width ? 2 * length + width - p.xNanometres() : 2 * (length + width) - p.yNanometres();
  }

  /** The corners of the rectangle passed on the walk from one point to another, without the two. */
  List<Point> cornersBetween(Point from, Point to) {
    List<Point> corners = new ArrayList<>();
    long start = walked(from);
    long end = end(from, to);
    for (int i = 1; i <= 8; i++) {
      long at = cornerAt(i);
      if (at > start && at < end) {
        corners.add(corner(i % 4));
      }
    }
    return corners;
  }

  /** The sides of which the walk from one point to another takes a part. */
  EnumSet<BoardSide> between(Point from, Point to) {
    EnumSet<BoardSide> sides = EnumSet.noneOf(BoardSide.class);
    long start = walked(from);
    long end = end(from, to);
    for (int i = 0; i < 8; i++) {
      if (cornerAt(i) < end && cornerAt(i + 1) > start) {
        sides.add(ORDER.get(i % 4));
      }
    }
    return sides;
  }

  private long end(Point from, Point to) {
    long end = walked(to);
    return end < walked(from) ? end + 2 * (length + width) : end;
  }

  /** Where a corner comes on the walk; from the fourth on, on the second time round. */
  private long cornerAt(int corner) {
    long round = corner / 4 * 2 * (length + width);
    return round + switch (corner % 4) {
      case 0 -> 0;
      case 1 -> length;
      case 2 -> length + width;
      default -> 2 * length + width;
    };
  }

  private Point corner(int corner) {
    return Point.ofNanometres(corner == 1 || corner == 2 ? length : 0, corner >= 2 ? width : 0);
  }
}
