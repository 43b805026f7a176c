package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A right angle set out with a tape: three parts along the line, four square to it, and five between the two marks.
 * <p>
 * Large is sure: of the whole multiples of a unit that fit the floor the greatest is taken. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class RightAngle {
  private final Length along;
  private final Length square;
  private final Length diagonal;

  private RightAngle(Length along, Length square, Length diagonal) {
    this.along = along;
    this.square = square;
    this.diagonal = diagonal;
  }

  /**
   * Returns the largest 3-4-5 triangle that fits.
   *
   * @param roomAlong how far the line goes on from the corner of the angle, not null, more than zero
   * @param roomSquare how far there is room square to it, not null, more than zero
   * @param unit what the sides are to be multiples of, 100 mm or 1 ft for example, not null, more than zero
   * @return the triangle with the steps {@code multiple}, {@code leg-along}, {@code leg-square} and {@code diagonal}, the leg along
   *     the line three or four parts, whichever makes the larger triangle; not null
   * @throws IllegalArgumentException if a length is not more than zero, or not even one unit fits
   */
  public static Calculated<RightAngle> largest(Length roomAlong, Length roomSquare, Length unit) {
    Objects.requireNonNull(roomAlong, "roomAlong");
    Objects.requireNonNull(roomSquare, "roomSquare");
    Widths.requirePositive(roomAlong, "room along the line", "give how far the line goes on");
    Widths.requirePositive(roomSquare, "room square to the line", "give how far the floor goes on");
    Widths.requirePositive(unit, "unit", "give for example 100 mm or 1 ft");
    long threeAlong = multiple(roomAlong, 3, roomSquare, 4, unit);
    long fourAlong = multiple(roomAlong, 4, roomSquare, 3, unit);
    int partsAlong = threeAlong >= fourAlong ? 3 : 4;
    int partsSquare = 7 - partsAlong;
    long k = Math.max(threeAlong, fourAlong);
    if (k == 0) {
      throw new IllegalArgumentException("not even 3, 4 and 5 times " + unit + " fit into " + roomAlong + " by " + roomSquare
          + "; take a smaller unit");
    }
    Term times = Term.of("k", "multiple", k);
    Term u = Term.of("u", "unit", unit);
    RightAngle angle = new RightAngle(unit.multipliedBy(k * partsAlong), unit.multipliedBy(k * partsSquare),
        unit.multipliedBy(k * 5));
    List<Step> steps = new ArrayList<>();
    steps.add(new Step("multiple", "What is the greatest whole multiple of 3, 4 and 5 units that fits?",
        "k = min(floor(A / (" + partsAlong + " * u)), floor(B / (" + partsSquare + " * u)))",
        List.of(Term.of("A", "room along the line", roomAlong), Term.of("B", "room square to it", roomSquare), u), k,
        Source.DEFINITION));
    steps.add(new Step("leg-along", "Where is the mark along the line?", "a = " + partsAlong + " * k * u", List.of(times, u),
        angle.along, Source.DEFINITION));
    steps.add(new Step("leg-square", "How far off is the other mark?", "b = " + partsSquare + " * k * u", List.of(times, u),
        angle.square, Source.DEFINITION));
    steps.add(new Step("diagonal", "What must the tape read from mark to mark?", "c = 5 * k * u", List.of(times, u),
        angle.diagonal, Source.DEFINITION));
    return Calculated.of(angle, steps);
  }

  private static long multiple(Length along, int partsAlong, Length square, int partsSquare, Length unit) {
    return Math.min(along.dividedBy(unit.multipliedBy(partsAlong)), square.dividedBy(unit.multipliedBy(partsSquare)));
  }

  /**
   * Returns what the diagonal of a rectangle, or between the marks of a right angle with any two legs, must measure.
   *
   * @param one one leg, not null, more than zero
   * @param other the other, not null, more than zero
   * @return {@code sqrt(a^2 + b^2)}, rounded to the nearest nanometre, with the step {@code diagonal}; not null
   * @throws IllegalArgumentException if a leg is not more than zero
   */
  public static Calculated<Length> diagonalOf(Length one, Length other) {
    Objects.requireNonNull(one, "one");
    Objects.requireNonNull(other, "other");
    Widths.requirePositive(one, "leg", "give its length");
    Widths.requirePositive(other, "leg", "give its length");
    Length diagonal = ControlLine.nearest(squared(one).add(squared(other)).sqrt(ControlLine.ENOUGH));
    return Calculated.of(diagonal, List.of(new Step("diagonal", "What must the tape read from mark to mark?",
        "c = sqrt(a * a + b * b), rounded to the nearest nanometre",
        List.of(Term.of("a", "one leg", one), Term.of("b", "other leg", other)), diagonal, Source.DEFINITION)));
  }

  /**
   * Returns by how much the end of a leg is off square when the diagonal reads otherwise than it must.
   *
   * @param leg the leg along the line, not null, more than zero
   * @param other the leg that should be square to it, not null, more than zero
   * @param diagonal the diagonal as measured, not null, more than their difference and less than their sum
   * @return how far the end of the other leg leans away from the line's mark, negative if towards it; rounded to the nearest
   *     nanometre, with the step {@code off-square}; not null
   * @throws IllegalArgumentException if a leg is not more than zero, or there is no such triangle
   */
  public static Calculated<Length> offSquare(Length leg, Length other, Length diagonal) {
    Objects.requireNonNull(other, "other");
    Widths.requirePositive(leg, "leg", "give its length");
    Widths.requirePositive(other, "leg", "give its length");
    if (diagonal.compareTo(leg.plus(other)) >= 0 || diagonal.compareTo(leg.minus(other).abs()) <= 0) {
      throw new IllegalArgumentException("legs of " + leg + " and " + other + " cannot have a diagonal of " + diagonal
          + "; measure again");
    }
    BigDecimal more = squared(diagonal).subtract(squared(leg)).subtract(squared(other));
    Length off = ControlLine.nearest(more.divide(BigDecimal.valueOf(leg.toNanometres()).multiply(BigDecimal.valueOf(2)),
        ControlLine.ENOUGH));
    return Calculated.of(off, List.of(new Step("off-square", "How far does the end of the other leg lean, along the line?",
        "e = (c * c - a * a - b * b) / (2 * a), rounded to the nearest nanometre",
        List.of(Term.of("c", "diagonal as measured", diagonal), Term.of("a", "leg along the line", leg),
            Term.of("b", "other leg", other)), off, Source.DEFINITION)));
  }

  private static BigDecimal squared(Length length) {
    return BigDecimal.valueOf(length.toNanometres()).pow(2);
  }

  /**
   * Returns the leg along the line.
   *
   * @return three or four parts, not null
   */
  public Length along() {
    return along;
  }

  /**
   * Returns the leg square to the line.
   *
   * @return four or three parts, not null
   */
  public Length square() {
    return square;
  }

  /**
   * Returns what the tape must read from mark to mark.
   *
   * @return five parts, not null
   */
  public Length diagonal() {
    return diagonal;
  }
}
