package floorcalc.movement;

import floorcalc.measure.Length;
import floorcalc.measure.PlainNumber;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.IntPredicate;

/**
 * The places where the gap of a bay of any shape has to be judged: both ends of each wall, of the outline and of what
 * stands in it.
 * <p>
 * The bay is taken to stay put in the middle of its extent, along and across the boards, and to move as one from there. How far a
 * wall moves the gap is then linear along it, so its two ends tell all. Distances are to the wall; the floor ends a gap
 * before it, so the movement comes out a hair too large.
 *
 * @since 0.1
 */
public final class WallPoints {
  private static final int DECIMALS = 9;

  private final List<GapPoint> points = new ArrayList<>();
  private final long middleX;
  private final long middleY;
  private final Length gap;

  private WallPoints(Point still, Length gap) {
    middleX = still.xNanometres();
    middleY = still.yNanometres();
    this.gap = gap;
  }

  /** In the frame of the boards. */
  static Point middle(Ring shell) {
    return Point.ofNanometres(Math.floorDiv(least(shell, true) + most(shell, true), 2),
        Math.floorDiv(least(shell, false) + most(shell, false), 2));
  }

  private static long least(Ring ring, boolean byX) {
    long least = Long.MAX_VALUE;
    for (int i = 0; i < ring.size(); i++) {
      least = Math.min(least, byX ? ring.x(i) : ring.y(i));
    }
    return least;
  }

  private static long most(Ring ring, boolean byX) {
    long most = Long.MIN_VALUE;
    for (int i = 0; i < ring.size(); i++) {
      most = Math.max(most, byX ? ring.x(i) : ring.y(i));
    }
    return most;
  }

  /**
   * Returns both ends of each wall.
   *
   * @param bay the walls of a bay and what stands in it, in room coordinates, without faults, not null
   * @param boards the way the boards run, not null
   * @param gap the gap at all of them, square to the wall, on each side, not negative, not null
   * @return two places for each wall, such as {@code "wall 3 at corner 4"} and {@code "wall 1 of void 2 at corner 1"}, in
   *     the order of the outline; not null
   * @throws IllegalArgumentException if the gap is negative
   */
  public static List<GapPoint> of(Outline bay, Direction boards, Length gap) {
    Objects.requireNonNull(bay, "bay");
    Objects.requireNonNull(gap, "gap");
    Outline turned = boards.toFrame(bay);
    return of(turned, middle(turned.shell()), gap, "", wall -> true);
  }

  /** Both ends of some walls of an outline in the frame of the boards, and of all that stands in it, by the point that stays put. */
  static List<GapPoint> of(Outline turned, Point still, Length gap, String prefix, IntPredicate walls) {
    WallPoints all = new WallPoints(still, gap);
    all.add(turned.shell(), prefix, "", walls);
    for (int i = 0; i < turned.voids().size(); i++) {
      all.add(turned.voids().get(i), prefix, " of void " + (i + 1), wall -> true);
    }
    return List.copyOf(all.points);
  }

  /** In the frame of the boards: x along them, y across. Rings have the floor on their left. */
  private void add(Ring ring, String prefix, String of, IntPredicate walls) {
    for (int i = 0; i < ring.size(); i++) {
      if (!walls.test(i)) {
        continue;
      }
      int next = (i + 1) % ring.size();
      double dx = ring.x(next) - ring.x(i);
      double dy = ring.y(next) - ring.y(i);
      WallAngle angle = WallAngle.of(PlainNumber.of(StrictMath.toDegrees(
          StrictMath.atan2(Math.abs(dy), Math.abs(dx)))).setScale(DECIMALS, RoundingMode.HALF_EVEN));
      // The floor's outward direction square to the wall is (dy, -dx).
      int outAlong = (int) Math.signum(dy);
      int outAcross = (int) -Math.signum(dx);
      for (int corner : new int[] {i, next}) {
        Length across = Length.ofNanometres((ring.y(corner) - middleY) * outAcross);
        Length along = Length.ofNanometres((ring.x(corner) - middleX) * outAlong);
        points.add(GapPoint.of(prefix + "wall " + (i + 1) + of + " at corner " + (corner + 1), across, gap).along(along)
            .angle(angle));
      }
    }
  }
}
