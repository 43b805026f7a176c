package floorcalc.outline.survey;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Ring;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * How square a room is: corner by corner, from its outline or from four walls and two diagonals; and how a rectangle of
 * string is squared.
 * <p>
 * Equal diagonals alone do not prove a rectangle: those of a trapezium with two equal sides are equal too. They do
 * together with equal opposite walls.
 * <pre>{@code
 * Squareness.of(outline.shell()).value();   // [corner 1: 0.116 degrees more than square, 10.2 mm over 5030.0 mm, ...
 * }</pre>
 *
 * @since 0.1
 */
public final class Squareness {
  /** Corners further than this from square are not meant to be square: nearer to 45 or 135 degrees than to 90. */
  public static final double MEANT_SQUARE_DEGREES = 22.5;

  private Squareness() {}

  /**
   * Returns how far each corner of a ring is from square. Corners further off than {@value #MEANT_SQUARE_DEGREES} degrees
   * are left out.
   *
   * @param ring the ring of walls, not null, counter-clockwise as the shell of an outline is, no wall without a length
   * @return the corners that are meant to be square, in order, with two steps for each; not null, may be empty
   */
  public static Calculated<List<CornerSquareness>> of(Ring ring) {
    List<CornerSquareness> corners = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    int n = ring.size();
    for (int i = 0; i < n; i++) {
      double angle = ring.angleDegrees(i);
      boolean reflex = angle > 180;
      if (StrictMath.abs(angle - (reflex ? 270 : 90)) <= MEANT_SQUARE_DEGREES) {
        corners.add(corner(ring, i, reflex, steps));
      }
    }
    return Calculated.of(List.copyOf(corners), steps);
  }

  private static CornerSquareness corner(Ring ring, int i, boolean reflex, List<Step> steps) {
    int before = Math.floorMod(i - 1, ring.size());
    int next = (i + 1) % ring.size();
    Length ux = Length.ofNanometres(ring.x(i) - ring.x(before));
    Length uy = Length.ofNanometres(ring.y(i) - ring.y(before));
    Length vx = Length.ofNanometres(ring.x(next) - ring.x(i));
    Length vy = Length.ofNanometres(ring.y(next) - ring.y(i));
    List<Term> terms = List.of(Term.of("ux", "wall " + (before + 1) + " along x", ux), Term.of("uy", "the same along y", uy),
        Term.of("vx", "wall " + (i + 1) + " along x", vx), Term.of("vy", "the same along y", vy));
    BigDecimal along = Sides.decimal(ux).multiply(Sides.decimal(vx)).add(Sides.decimal(uy).multiply(Sides.decimal(vy)));
    BigDecimal across = Sides.decimal(ux).multiply(Sides.decimal(vy)).subtract(Sides.decimal(uy).multiply(Sides.decimal(vx)));
    BigDecimal sign = reflex ? BigDecimal.ONE.negate() : BigDecimal.ONE;
    BigDecimal length = Sides.root(Sides.whole(ux).pow(2).add(Sides.whole(uy).pow(2)));
    Length out = Sides.length(along.multiply(sign).divide(length, Sides.DIGITS), RoundingMode.HALF_EVEN);
    BigDecimal degrees = sixDecimals(StrictMath.toDegrees(
        StrictMath.atan2(along.multiply(sign).doubleValue(), across.multiply(sign).doubleValue())));
    String minus = reflex ? "0 - " : "";
    steps.add(new Step("out-of-square-" + (i + 1), "How far does wall " + (i + 1) + " end off the line square to wall "
        + (before + 1) + "?", "o = (" + minus + "(ux * vx + uy * vy)) / sqrt(ux * ux + uy * uy), rounded to the nearest nanometre",
        terms, out, Source.DEFINITION));
    steps.add(new Step("degrees-off-" + (i + 1), "By how many degrees is corner " + (i + 1) + " more than "
        + (reflex ? "270" : "90") + "?", "g = atan2(" + minus + "(ux * vx + uy * vy), " + minus
        + "(ux * vy - uy * vx)), rounded to six decimals", terms, degrees, Source.DEFINITION));
    return new CornerSquareness(i + 1, degrees.doubleValue(), out, ring.wallLength(i));
  }

  private static BigDecimal sixDecimals(double degrees) {
    return new BigDecimal(degrees).setScale(6, RoundingMode.HALF_UP);
  }

  /**
   * Returns how far each corner of a room of four walls is from square, by its walls and both diagonals.
   * <p>
   * Each corner is worked out from its two walls and the diagonal that cuts it off. Five of the six lengths fix the room, so
   * the sixth is a check.
   *
   * @param walls the four walls in order, not null, each more than zero
   * @param diagonal13 from corner 1 to corner 3, not null
   * @param diagonal24 from corner 2 to corner 4, not null
   * @param tolerance how far two lengths that are called equal may differ, not null, not negative
   * @return the four corners with their working and findings: {@code rectangle}, {@code equal-diagonals-no-rectangle},
   *     {@code parallelogram}, {@code lengths-disagree}; not null
   * @throws IllegalArgumentException if the walls do not close or a diagonal cannot be so long or so short
   */
  public static Calculated<List<CornerSquareness>> ofWallsAndDiagonals(List<Length> walls, Length diagonal13,
      Length diagonal24, Length tolerance) {
    Objects.requireNonNull(walls, "walls");
    Objects.requireNonNull(diagonal13, "diagonal13");
    Objects.requireNonNull(diagonal24, "diagonal24");
    Objects.requireNonNull(tolerance, "tolerance");
    Sides sides = Sides.ofFour(walls);
    requireTolerance(tolerance);
    DiagonalRange.of(walls, 1, 3).require(diagonal13);
    DiagonalRange.of(walls, 2, 4).require(diagonal24);
    List<CornerSquareness> corners = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    for (int corner = 0; corner < 4; corner++) {
      corners.add(corner(sides, corner, corner % 2 == 0 ? diagonal24 : diagonal13, steps));
    }
    FourWalls four = new FourWalls(sides, diagonal13);
    steps.addAll(four.steps());
    return Calculated.of(List.copyOf(corners), steps, four.findings(diagonal24, tolerance));
  }

  private static CornerSquareness corner(Sides sides, int corner, Length diagonal, List<Step> steps) {
    String u = sides.symbol(corner - 1);
    String v = sides.symbol(corner);
    String e = corner % 2 == 0 ? "q" : "p";
    BigDecimal before = Sides.decimal(sides.get(corner - 1));
    BigDecimal after = Sides.decimal(sides.get(corner));
    Length out = Sides.length(Sides.decimal(diagonal).pow(2).subtract(before.pow(2)).subtract(after.pow(2))
        .divide(before.multiply(BigDecimal.valueOf(2)), Sides.DIGITS), RoundingMode.HALF_EVEN);
    BigDecimal rest = after.pow(2).subtract(Sides.decimal(out).pow(2)).max(BigDecimal.ZERO).sqrt(Sides.DIGITS);
    BigDecimal degrees = sixDecimals(StrictMath.toDegrees(StrictMath.atan2(out.toNanometres(), rest.doubleValue())));
    steps.add(new Step("out-of-square-" + (corner + 1), "How far does wall " + (corner + 1) + " end off the line square to wall "
        + (Math.floorMod(corner - 1, 4) + 1) + "?", "o = (" + e + " * " + e + " - " + u + " * " + u + " - " + v + " * " + v
        + ") / (2 * " + u + "), rounded to the nearest nanometre", List.of(Term.of(e, "diagonal that cuts the corner off", diagonal),
        sides.term(corner - 1), sides.term(corner)), out, Source.DEFINITION));
    steps.add(new Step("degrees-off-" + (corner + 1), "By how many degrees is corner " + (corner + 1) + " more than 90?",
        "g = atan2(o, sqrt(max(" + v + " * " + v + " - o * o, 0))), rounded to six decimals",
        List.of(Term.of("o", "how far the wall ends off the square line", out), sides.term(corner)), degrees, Source.DEFINITION));
    return new CornerSquareness(corner + 1, degrees.doubleValue(), out, sides.get(corner));
  }

  /**
   * Returns how far to move one side of a rectangle of string along itself to make it square.
   * <p>
   * Opposite sides are equal, so the shape is a parallelogram: {@code p^2 - q^2 = 4 a b cos A}. Corners 3 and 4 lean by
   * {@code b cos A} along side 1 and are moved back by as much together, the cross sides kept taut.
   *
   * @param side the first side and the third, from corner 1 to 2, not null, more than zero
   * @param across the second side and the fourth, not null, more than zero
   * @param diagonal13 from corner 1 to corner 3, not null
   * @param diagonal24 from corner 2 to corner 4, not null
   * @param tolerance how far a length may be off without a finding, not null, not negative
   * @return how far to move corners 3 and 4 from corner 2 towards corner 1, negative the other way; with the step
   *     {@code move} and the finding {@code lengths-disagree} if no such parallelogram has these diagonals; not null
   * @throws IllegalArgumentException if a diagonal cannot be so long or so short
   */
  public static Calculated<Length> moveToSquare(Length side, Length across, Length diagonal13, Length diagonal24,
      Length tolerance) {
    Objects.requireNonNull(side, "side");
    Objects.requireNonNull(across, "across");
    Objects.requireNonNull(diagonal13, "diagonal13");
    Objects.requireNonNull(diagonal24, "diagonal24");
    List<Length> walls = List.of(side, across, side, across);
    Sides.ofFour(walls);
    requireTolerance(tolerance);
    DiagonalRange.of(walls, 1, 3).require(diagonal13);
    DiagonalRange.of(walls, 2, 4).require(diagonal24);
    BigDecimal p = Sides.decimal(diagonal13);
    BigDecimal q = Sides.decimal(diagonal24);
    Length move = Sides.length(p.pow(2).subtract(q.pow(2))
        .divide(Sides.decimal(side).multiply(BigDecimal.valueOf(4)), Sides.DIGITS), RoundingMode.HALF_EVEN);
    Step step = new Step("move", "How far do corners 3 and 4 lean along side 1?",
        "m = (p * p - q * q) / (4 * a), rounded to the nearest nanometre",
        List.of(Term.of("p", "diagonal from corner 1 to 3", diagonal13), Term.of("q", "diagonal from corner 2 to 4", diagonal24),
            Term.of("a", "side 1", side)), move, Source.DEFINITION);
    Area squares = side.times(side).plus(across.times(across)).multipliedBy(2).minus(diagonal13.times(diagonal13));
    Length should = Sides.length(Sides.root(squares.toHalfSquareNanometres().shiftRight(1)), RoundingMode.HALF_EVEN);
    return Calculated.of(move, List.of(step), FourWalls.disagree(should, diagonal24, tolerance));
  }

  /**
   * Returns the length of the diagonal of a rectangle: what to check two legs with that stand square.
   *
   * @param first one leg, not null, more than zero
   * @param second the other leg, not null, more than zero
   * @return to the nearest nanometre with the step {@code square-diagonal}, not null
   * @throws IllegalArgumentException if a leg is not more than zero
   */
  public static Calculated<Length> squareDiagonal(Length first, Length second) {
    if (!first.isPositive() || !second.isPositive()) {
      throw new IllegalArgumentException("both legs must be longer than 0 mm, but were " + first + " and " + second);
    }
    Length diagonal = Sides.length(Sides.root(Sides.whole(first).pow(2).add(Sides.whole(second).pow(2))), RoundingMode.HALF_EVEN);
    return Calculated.of(diagonal, List.of(new Step("square-diagonal", "How long is the diagonal if the legs stand square?",
        "e = sqrt(a * a + b * b), rounded to the nearest nanometre",
        List.of(Term.of("a", "one leg", first), Term.of("b", "the other leg", second)), diagonal, Source.DEFINITION)));
  }

  static void requireTolerance(Length tolerance) {
    if (tolerance.isNegative()) {
      throw new IllegalArgumentException("a tolerance must not be negative, but was " + tolerance);
    }
  }

  static Finding finding(String code, Severity severity, String message) {
    return new Finding(code, severity, "", message, Source.DEFINITION);
  }
}
