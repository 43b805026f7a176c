package floorcalc.bays;

import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes breaks meet to the nanometre. Where lines are neither along x nor along y, the place where one ends on another is rounded, and so
 * are the ends of the other; the first is made to end on the other as it came out.
 */
final class BreakEnds {
  private static final double NEAR = 60;
  private static final int ROUNDS = 4;

  private BreakEnds() {}

  static BayParts parts(Outline room, List<ExpansionBreak> breaks) {
    List<ExpansionBreak> list = new ArrayList<>(breaks);
    for (int round = 0; round < ROUNDS; round++) {
      for (int i = 0; i < list.size(); i++) {
        ExpansionBreak line = list.get(i);
        for (ExpansionBreak other : list) {
          if (other != line) {
            Point from = meet(line, line.from(), other);
            Point to = meet(line, line.to(), other);
            line = from.equals(to) ? line : new ExpansionBreak(from, to, line.reason(), line.because());
          }
        }
        list.set(i, line);
      }
    }
    return BayParts.of(room, list);
  }

  /** The end of a line, moved onto another line if it lies beside it, between the other's ends. */
  private static Point meet(ExpansionBreak line, Point end, ExpansionBreak other) {
    Point origin = other.from();
    double ox = other.to().xNanometres() - origin.xNanometres();
    double oy = other.to().yNanometres() - origin.yNanometres();
    double px = end.xNanometres() - origin.xNanometres();
    double py = end.yNanometres() - origin.yNanometres();
    double length = StrictMath.sqrt(ox * ox + oy * oy);
    double ahead = (px * ox + py * oy) / length;
    double aside = (px * oy - py * ox) / length;
    if (aside == 0 || StrictMath.abs(aside) > NEAR || ahead < NEAR || ahead > length - NEAR) {
      return end;
    }
    double lx = line.to().xNanometres() - line.from().xNanometres();
    double ly = line.to().yNanometres() - line.from().yNanometres();
    double slope = ox * ly - oy * lx;
    if (StrictMath.abs(slope) < 1e-6 * length * line.length().toNanometres()) {
      return end;
    }
    double share = (px * ly - py * lx) / slope; // along the other line
    return Point.ofNanometres(origin.xNanometres() + (long) StrictMath.rint(share * ox),
        origin.yNanometres() + (long) StrictMath.rint(share * oy));
  }
}
