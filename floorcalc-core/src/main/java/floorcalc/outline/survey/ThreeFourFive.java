package floorcalc.outline.survey;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;

/**
 * The check of a corner with sides of 3, 4 and 5: marks on both walls, and what the tape must show between them.
 *
 * @param onFirst where to mark the first wall, from the corner, not null
 * @param onSecond where to mark the second wall, from the corner, not null
 * @param diagonal what is between the marks if the corner is square, not null
 * @since 0.1
 */
public record ThreeFourFive(Length onFirst, Length onSecond, Length diagonal) implements Serializable {

  /** Checks that no part is null. */
  public ThreeFourFive {
    Objects.requireNonNull(onFirst, "onFirst");
    Objects.requireNonNull(onSecond, "onSecond");
    Objects.requireNonNull(diagonal, "diagonal");
  }

  /**
   * Returns the largest such triangle that two walls hold, in whole multiples of a unit; the 4 on the longer wall.
   *
   * @param first the wall on one side of the corner, not null
   * @param second the wall on the other side, not null
   * @param unit what is multiplied by 3, 4 and 5, for example 100 mm or 1 ft; not null, more than zero
   * @return the marks with the step {@code multiple}, not null
   * @throws IllegalArgumentException if not even one triangle fits
   */
  public static Calculated<ThreeFourFive> of(Length first, Length second, Length unit) {
    Objects.requireNonNull(second, "second");
    if (!unit.isPositive()) {
      throw new IllegalArgumentException("the unit of a 3-4-5 check must be more than 0 mm, but was " + unit);
    }
    Length shorter = first.min(second);
    Length longer = first.max(second);
    long k = Math.min(shorter.dividedBy(unit.multipliedBy(3)), longer.dividedBy(unit.multipliedBy(4)));
    if (k < 1) {
      throw new IllegalArgumentException("walls of " + first + " and " + second + " hold no triangle of 3, 4 and 5 times " + unit
          + "; take a smaller unit");
    }
    Step step = new Step("multiple", "How many times does 3-4-5 fit the two walls?", "k = min(floor(a / (3 * u)), floor(b / (4 * u)))",
        List.of(Term.of("a", "shorter wall", shorter), Term.of("u", "unit", unit), Term.of("b", "longer wall", longer)), k,
        Source.DEFINITION);
    Length three = unit.multipliedBy(3 * k);
    Length four = unit.multipliedBy(4 * k);
    boolean firstIsLonger = first.compareTo(second) > 0;
    return Calculated.of(new ThreeFourFive(firstIsLonger ? four : three, firstIsLonger ? three : four, unit.multipliedBy(5 * k)),
        List.of(step));
  }

  /**
   * Returns how far the corner is from square when the tape shows something else between the marks.
   *
   * @param measured what the tape shows, not null
   * @return the corner, numbered 1, its second wall reckoned up to the mark; with the steps {@code out-of-square} and
   *     {@code degrees-off}; not null
   * @throws IllegalArgumentException if no corner has that between the marks
   */
  public Calculated<CornerSquareness> measured(Length measured) {
    Length least = onFirst.minus(onSecond).abs();
    Length most = onFirst.plus(onSecond);
    if (measured.compareTo(least) <= 0 || measured.compareTo(most) >= 0) {
      throw new IllegalArgumentException("between marks at " + onFirst + " and " + onSecond + " there can be more than " + least
          + " and less than " + most + ", but measured was " + measured);
    }
    BigDecimal a = Sides.decimal(onFirst);
    BigDecimal b = Sides.decimal(onSecond);
    Length out = Sides.length(Sides.decimal(measured).pow(2).subtract(a.pow(2)).subtract(b.pow(2))
        .divide(a.multiply(BigDecimal.valueOf(2)), Sides.DIGITS), RoundingMode.HALF_EVEN);
    double rest = b.pow(2).subtract(Sides.decimal(out).pow(2)).max(BigDecimal.ZERO).sqrt(Sides.DIGITS).doubleValue();
    BigDecimal degrees = new BigDecimal(StrictMath.toDegrees(StrictMath.atan2(out.toNanometres(), rest)))
        .setScale(6, RoundingMode.HALF_UP);
    return Calculated.of(new CornerSquareness(1, degrees.doubleValue(), out, onSecond), List.of(
        new Step("out-of-square", "How far is the mark on the second wall off the line square to the first?",
            "o = (e * e - a * a - b * b) / (2 * a), rounded to the nearest nanometre",
            List.of(Term.of("e", "measured between the marks", measured), Term.of("a", "mark on the first wall", onFirst),
                Term.of("b", "mark on the second wall", onSecond)), out, Source.DEFINITION),
        new Step("degrees-off", "By how many degrees is the corner more than 90?",
            "g = atan2(o, sqrt(max(b * b - o * o, 0))), rounded to six decimals",
            List.of(Term.of("o", "how far the mark is off the square line", out), Term.of("b", "mark on the second wall", onSecond)),
            degrees, Source.DEFINITION)));
  }
}
