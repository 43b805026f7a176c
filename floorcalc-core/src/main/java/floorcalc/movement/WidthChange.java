package floorcalc.movement;

import floorcalc.measure.Length;
import floorcalc.moisture.Percent;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;

/**
 * By how much a width changes when the moisture content of the wood does: more when it swells, less than zero when it
 * shrinks.
 * <pre>{@code
 * dD = D C (MF - MI)                           Wood Handbook, equation 13-2; the form of DIN 68100 and NF DTU too
 * dD = D (MF - MI) / (100 F / S - F + MI)      equation 13-3, for changes beyond 6 % to 14 %
 * }</pre>
 * D is the width, C the {@link Coefficient}, MI and MF the moisture content before and after, S the shrinkage from green
 * to oven-dry and F where it starts. Exact but for the last step, which rounds to the nearest nanometre, half to even.
 *
 * @since 0.1
 */
public final class WidthChange {
  private static final Source LINEAR = new Source("Wood Handbook, FPL-GTR-282", "USDA Forest Products Laboratory", 2021,
      "equation 13-2", Standing.QUOTED);
  private static final Source WIDE = new Source("Wood Handbook, FPL-GTR-282", "USDA Forest Products Laboratory", 2021,
      "equation 13-3", Standing.FROM_MEMORY);

  private WidthChange() {
  }

  /**
   * Returns the change of a width by its coefficient.
   *
   * @param width the width before, not negative, not null
   * @param coefficient how much the boards move, not null
   * @param from the moisture content before, from 0 % to 30 %, not null
   * @param to the moisture content after, from 0 % to 30 %, not null
   * @return the change, negative if it shrinks, with the step {@code width-change}, and the finding
   *     {@code moisture-beyond-coefficient} where a moisture content is beyond what the source states the coefficient for;
   *     not null
   * @throws IllegalArgumentException if a value is out of bounds
   */
  public static Calculated<Length> of(Length width, Coefficient coefficient, Percent from, Percent to) {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    return change("width-change", "By how much does the width change?", width, coefficient, from, to);
  }

  static Calculated<Length> change(String id, String question, Length width, Coefficient coefficient, Percent from,
      Percent to) {
    Objects.requireNonNull(coefficient, "coefficient");
    requireWidth(width);
    requireMoisture(from);
    requireMoisture(to);
    Length change = rounded(BigDecimal.valueOf(width.toNanometres()).multiply(coefficient.share())
        .multiply(to.minus(from).number()));
    Step step = new Step(id, question, "dD = D * C * (MF - MI), rounded to the nearest nanometre",
        List.of(Term.of("D", "width before", width),
            new Term("C", "change for each 1 % of moisture, " + coefficient.about(), coefficient.share().toPlainString(),
                coefficient.source()),
            Term.of("MF", "moisture content after", to), Term.of("MI", "moisture content before", from)), change, LINEAR);
    return Calculated.of(change, List.of(step), beyond(coefficient, from, to));
  }

  private static List<Finding> beyond(Coefficient coefficient, Percent from, Percent to) {
    if (coefficient.driest().isEmpty() || coefficient.dampest().isEmpty()) {
      return List.of();
    }
    Percent low = coefficient.driest().get();
    Percent high = coefficient.dampest().get();
    Percent least = from.compareTo(to) < 0 ? from : to;
    Percent most = from.compareTo(to) < 0 ? to : from;
    return least.compareTo(low) >= 0 && most.compareTo(high) <= 0 ? List.of() : List.of(new Finding(
        "moisture-beyond-coefficient", Severity.NOTE, "", "the coefficient is stated for " + low + " to " + high
            + ", but the change is from " + from + " to " + to
            + "; take the figure as a rough one, or use the total shrinkage and equation 13-3", coefficient.source()));
  }

  /**
   * Returns the change of a width by the total shrinkage of the wood, for any moisture content up to where it starts.
   * Equation 13-3, from memory; it follows exactly from equation 4-9.
   *
   * @param width the width before, not negative, not null
   * @param shrinkage from green to oven-dry, from 0.1 % to 25 %, not null
   * @param start where shrinkage starts, {@link Shrinkage#FIBRE_SATURATION} if not known, from 15 % to 40 %, not null
   * @param from the moisture content before, from 0 % to the start, not null
   * @param to the moisture content after, from 0 % to the start, not null
   * @return the change, negative if it shrinks, with the step {@code width-change-by-shrinkage}; not null
   * @throws IllegalArgumentException if a value is out of bounds
   */
  public static Calculated<Length> byShrinkage(Length width, Percent shrinkage, Percent start, Percent from, Percent to) {
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    requireWidth(width);
    Shrinkage.require(shrinkage, Percent.of("0.1"), Percent.of("25"), "shrinkage from green to oven-dry");
    Shrinkage.require(start, Percent.of("15"), Percent.of("40"), "the moisture content that shrinkage starts at");
    Shrinkage.require(from, Percent.ZERO, start, "moisture content");
    Shrinkage.require(to, Percent.ZERO, start, "moisture content");
    // Multiplied by S above and below, so that there is one division: D S (MF - MI) / (100 F - F S + MI S).
    BigDecimal s = shrinkage.number();
    BigDecimal f = start.number();
    BigDecimal below = f.multiply(BigDecimal.valueOf(100)).subtract(f.multiply(s)).add(from.number().multiply(s));
    BigDecimal above = BigDecimal.valueOf(width.toNanometres()).multiply(s).multiply(to.minus(from).number());
    Length change = Length.ofNanometres(above.divide(below, 0, RoundingMode.HALF_EVEN).longValueExact());
    return Calculated.of(change, List.of(new Step("width-change-by-shrinkage", "By how much does the width change?",
        "dD = D * (MF - MI) / (F * 100 / S - F + MI), rounded to the nearest nanometre",
        List.of(Term.of("D", "width before", width), Term.of("MF", "moisture content after", to),
            Term.of("MI", "moisture content before", from), Term.of("F", "moisture content that shrinkage starts at", start),
            Term.of("S", "shrinkage from green to oven-dry", shrinkage)), change, WIDE)));
  }

  static void requireWidth(Length width) {
    if (Objects.requireNonNull(width, "width").isNegative()) {
      throw new IllegalArgumentException("width must not be negative, but was " + width);
    }
  }

  static void requireMoisture(Percent moisture) {
    Objects.requireNonNull(moisture, "moisture");
    if (moisture.compareTo(Percent.ZERO) < 0 || moisture.compareTo(Percent.of("30")) > 0) {
      throw new IllegalArgumentException("the moisture content of boards must be from 0 % to 30 %, above which wood swells"
          + " no more, but was " + moisture);
    }
  }

  private static Length rounded(BigDecimal nanometres) {
    return Length.ofNanometres(nanometres.setScale(0, RoundingMode.HALF_EVEN).longValueExact());
  }
}
