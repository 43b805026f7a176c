package floorcalc.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Cuts off spurs: places where a floor's edge runs out to a tip and straight back, no more than two nanometres wide. They
 * are left where a neck is as wide as both its gaps and its corners were rounded.
 */
final class Spurs {
  private static final double WIDEST = 2;

  private Spurs() {}

  static List<Outline> cutOff(List<Outline> pieces) {
    return pieces.stream().map(Spurs::cutOff).filter(Objects::nonNull).toList();
  }

  private static Outline cutOff(Outline piece) {
    Ring shell = cutOff(piece.shell());
    return shell == null ? null
        : Outline.of(shell, piece.voids().stream().map(Spurs::cutOff).filter(Objects::nonNull).toList());
  }

  /** The ring without its spurs; null if nothing is left. */
  private static Ring cutOff(Ring ring) {
    List<Point> corners = new ArrayList<>(ring.corners());
    boolean changed = false;
    for (int i = 0, kept = 0; kept < corners.size() && corners.size() >= 3;) {
      int size = corners.size();
      int at = i % size;
      if (isTip(corners.get((at + size - 1) % size), corners.get(at), corners.get((at + 1) % size))) {
        corners.remove(at);
        changed = true;
        kept = 0;
        i = Math.max(0, at - 1);
      } else {
        kept++;
        i = at + 1;
      }
    }
    return corners.size() < 3 ? null : changed ? Ring.of(corners) : ring;
  }

  private static boolean isTip(Point before, Point tip, Point after) {
    double ax = (double) before.xNanometres() - tip.xNanometres();
    double ay = (double) before.yNanometres() - tip.yNanometres();
    double bx = (double) after.xNanometres() - tip.xNanometres();
    double by = (double) after.yNanometres() - tip.yNanometres();
    double longer = StrictMath.sqrt(Math.max(ax * ax + ay * ay, bx * bx + by * by));
    return ax * bx + ay * by >= 0 && StrictMath.abs(ax * by - ay * bx) <= WIDEST * longer;
  }
}
