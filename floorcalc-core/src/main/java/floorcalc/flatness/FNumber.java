package floorcalc.flatness;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.measure.PlainNumber;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * A number for flatness or levelness after ASTM E1155: the higher, the flatter; it has no unit.
 * <p>
 * The ways in which numbers of several lines or sections are joined are recalled from memory. Values are rounded to four
 * decimals, a half up; standards print one.
 *
 * @param value the number, more than zero; {@link Double#POSITIVE_INFINITY} for a line without any curvature or difference
 * @param readings how many curvatures or differences it was found from, at least 1
 * @since 0.1
 */
public record FNumber(double value, int readings) {
  private static final MathContext EXACT_ENOUGH = new MathContext(60);
  private static final int DECIMALS = 4;
  /** Beyond this many the terms of a sum are not listed in the working. */
  private static final int MOST_LISTED = 20;
  static final Source FROM_MEMORY = new Source("ASTM E1155", "ASTM", 1996, "equations not seen in a text",
      Standing.FROM_MEMORY);

  /** Checks the ranges. */
  public FNumber {
    if (!(value > 0)) {
      throw new IllegalArgumentException("an F-number must be more than 0, but was " + PlainNumber.text(value));
    }
    if (readings < 1) {
      throw new IllegalArgumentException("an F-number must come from at least 1 value, but has " + readings);
    }
  }

  /** The number from the mean and the standard deviation of values, both to the nanometre. */
  static FNumber of(Length constant, Statistics values) {
    Length spread = values.deviation().multipliedBy(3).plus(values.mean().abs());
    return new FNumber(spread.isZero() ? Double.POSITIVE_INFINITY : rounded(big(constant).divide(big(spread), EXACT_ENOUGH)),
        values.number());
  }

  /**
   * Joins the numbers of several lines of one section: {@code F = sqrt(sum(r) / sum(r / F^2))}, with {@code r} the number of
   * values behind each. Of two lines this is {@code Fj Fk sqrt((rj + rk) / (rk Fj^2 + rj Fk^2))} (from memory).
   *
   * @param lines the numbers of the lines, all FF or all FL; not null, at least one
   * @return the number of the section with its working, not null
   * @throws IllegalArgumentException if there is none
   */
  public static Calculated<FNumber> byReadings(List<FNumber> lines) {
    requireSome(lines.size());
    BigDecimal all = BigDecimal.ZERO;
    BigDecimal weighed = BigDecimal.ZERO;
    StringBuilder above = new StringBuilder();
    StringBuilder below = new StringBuilder();
    List<Term> terms = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      FNumber line = lines.get(i);
      all = all.add(BigDecimal.valueOf(line.readings));
      if (line.isFinite()) {
        BigDecimal square = line.decimal().multiply(line.decimal());
        weighed = weighed.add(BigDecimal.valueOf(line.readings).divide(square, EXACT_ENOUGH));
        String f = "F" + (i + 1);
        below.append(below.isEmpty() ? "" : " + ").append("r" + (i + 1)).append(" / (" + f + " * " + f + ")");
        terms.add(Term.of(f, "number of line " + (i + 1), line.decimal()));
      }
      above.append(i == 0 ? "" : " + ").append("r" + (i + 1));
      terms.add(Term.of("r" + (i + 1), "values of line " + (i + 1), line.readings));
    }
    double value = weighed.signum() == 0 ? Double.POSITIVE_INFINITY
        : rounded(all.divide(weighed, EXACT_ENOUGH).sqrt(EXACT_ENOUGH));
    FNumber joined = new FNumber(value, all.intValueExact());
    return Calculated.of(joined, List.of(joined.step("joined-by-readings", "What is the number of the lines together?",
        "F = sqrt((" + above + ") / (" + below + ")), rounded to four decimals", terms)));
  }

  /**
   * Joins the numbers of several sections of a floor: the mean, weighed by area, {@code F = sum(A F) / sum(A)} (from memory).
   *
   * @param sections the numbers of the sections, all FF or all FL; not null, at least one
   * @param areas the area of each, in the same order; not null, each more than zero
   * @return the number of the floor with its working, not null
   * @throws IllegalArgumentException if there is none, the lists differ in length, or an area is not more than zero
   */
  public static Calculated<FNumber> byArea(List<FNumber> sections, List<Area> areas) {
    requireSome(sections.size());
    if (sections.size() != areas.size()) {
      throw new IllegalArgumentException("each of " + sections.size() + " sections needs an area, but there are "
          + areas.size());
    }
    BigDecimal all = BigDecimal.ZERO;
    BigDecimal weighed = BigDecimal.ZERO;
    int readings = 0;
    boolean finite = true;
    StringBuilder above = new StringBuilder();
    StringBuilder below = new StringBuilder();
    List<Term> terms = new ArrayList<>();
    for (int i = 0; i < areas.size(); i++) {
      FNumber section = sections.get(i);
      if (!areas.get(i).isPositive()) {
        throw new IllegalArgumentException("area of section " + (i + 1) + " must be more than 0 m², but was " + areas.get(i));
      }
      BigDecimal area = new BigDecimal(areas.get(i).toHalfSquareNanometres());
      all = all.add(area);
      finite &= section.isFinite();
      weighed = section.isFinite() ? weighed.add(area.multiply(section.decimal())) : weighed;
      readings = Math.addExact(readings, section.readings);
      above.append(i == 0 ? "" : " + ").append("A" + (i + 1) + " * F" + (i + 1));
      below.append(i == 0 ? "" : " + ").append("A" + (i + 1));
      terms.add(Term.of("A" + (i + 1), "area of section " + (i + 1), areas.get(i)));
      terms.add(Term.of("F" + (i + 1), "number of section " + (i + 1), section.isFinite() ? section.decimal() : section));
    }
    FNumber joined = new FNumber(finite ? rounded(weighed.divide(all, EXACT_ENOUGH)) : Double.POSITIVE_INFINITY, readings);
    return Calculated.of(joined, List.of(joined.step("joined-by-area", "What is the number of the whole floor?",
        "F = (" + above + ") / (" + below + "), rounded to four decimals", terms)));
  }

  private static void requireSome(int number) {
    if (number == 0) {
      throw new IllegalArgumentException("there must be at least one F-number to join");
    }
  }

  Step step(String id, String question, String formula, List<Term> terms) {
    return isFinite() && terms.size() <= 2 * MOST_LISTED ? new Step(id, question, formula, terms, decimal(), FROM_MEMORY)
        : new Step(id, question, "value as stated", List.of(), this, FROM_MEMORY);
  }

  private boolean isFinite() {
    return !Double.isInfinite(value);
  }

  private BigDecimal decimal() {
    return PlainNumber.of(value);
  }

  private static BigDecimal big(Length length) {
    return BigDecimal.valueOf(length.toNanometres());
  }

  private static double rounded(BigDecimal value) {
    return value.setScale(DECIMALS, RoundingMode.HALF_UP).doubleValue();
  }

  /**
   * Returns the number to one decimal, as standards print it.
   *
   * @return such as {@code "24.5"}, or {@code "infinite"}; not null
   */
  @Override
  public String toString() {
    return isFinite() ? decimal().setScale(1, RoundingMode.HALF_UP).toPlainString() : "infinite";
  }
}
