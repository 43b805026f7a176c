package floorcalc.movement;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;

/**
 * The places round a pipe where its hole has to be judged: its four sides, across the boards and along them.
 * <p>
 * Like a column, a pipe stands still while the floor moves past it: on one side swelling closes the gap, on the other shrinking does. The
 * bay is taken to stay put in the middle of its extent, as by {@link WallPoints}.
 *
 * @since 0.1
 */
public final class PipePoints {
  private static final WallAngle SQUARE = WallAngle.of(BigDecimal.valueOf(90));

  private PipePoints() {}

  /**
   * Returns the four sides of a pipe.
   *
   * @param bay the walls of the bay that the pipe comes through, in room coordinates, without faults, not null
   * @param boards the way the boards run, not null
   * @param name what the pipe is called, not null
   * @param at its middle, in room coordinates, not null
   * @param diameter its outer diameter, not null, not negative
   * @param gap the clear space on each side of it, not negative, not null
   * @return the places {@code "pipe 1, near side"} (towards the starting wall), {@code "far side"}, {@code "left side"} and
   *     {@code "right side"}; not null
   * @throws IllegalArgumentException if a length is negative
   */
  public static List<GapPoint> of(Outline bay, Direction boards, String name, Point at, Length diameter, Length gap) {
    Objects.requireNonNull(bay, "bay");
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(name, "name");
    if (diameter.isNegative()) {
      throw new IllegalArgumentException("diameter of " + name + " must not be negative, but was " + diameter);
    }
    Point middle = WallPoints.middle(boards.toFrame(bay).shell());
    Ring turned = boards.toFrame(Ring.of(at));
    Length x = Length.ofNanometres(turned.x(0)).minus(middle.x());
    Length y = Length.ofNanometres(turned.y(0)).minus(middle.y());
    Length half = diameter.dividedBy(2, RoundingMode.CEILING);
    return List.of(GapPoint.of(name + ", near side", y.minus(half), gap), GapPoint.of(name + ", far side", y.plus(half).negated(), gap),
        GapPoint.of(name + ", left side", Length.ZERO, gap).along(x.minus(half)).angle(SQUARE),
        GapPoint.of(name + ", right side", Length.ZERO, gap).along(x.plus(half).negated()).angle(SQUARE));
  }
}
