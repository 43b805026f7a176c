package floorcalc.working;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.measure.Mass;
import floorcalc.measure.Price;
import floorcalc.moisture.Percent;
import floorcalc.moisture.Temperature;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Redoes each step of a working from its formula and terms alone, as a student with paper would. */
public final class StepChecks {
  private static final String AS_STATED = "value as stated";
  private static final String UP = ", rounded up to a whole nanometre";
  private static final String DOWN = ", rounded down to a whole nanometre";
  private static final String ONE_DECIMAL = ", rounded to one decimal";
  private static final String FOUR_DECIMALS = ", rounded to four decimals";
  private static final String FIVE_DECIMALS = ", rounded to five decimals";
  private static final String SIX_DECIMALS = ", rounded to six decimals";
  private static final String NEAREST = ", rounded to the nearest nanometre";
  private static final String SQUARE_MICROMETRE = ", rounded to a whole square micrometre";

  private static final String SQUARE_MILLIMETRE = " to a whole square millimetre";

  private StepChecks() {}

  /** Fails if a step's result does not follow from its formula and its terms, or a term is missing or idle. */
  public static void assertStepsHold(Calculated<?> calculated) {
    assertThat(calculated.steps()).isNotEmpty();
    calculated.steps().forEach(StepChecks::assertHolds);
  }

  /** Fails if the step's result does not follow from its formula and its terms. */
  public static void assertHolds(Step step) {
    if (step.formula().equals(AS_STATED)) {
      assertThat(step.terms()).as(step.explain()).isEmpty();
      return;
    }
    String formula = step.formula().replace("the nearest square nanometre", "the nearest nanometre");
    boolean up = formula.endsWith(UP);
    boolean down = formula.endsWith(DOWN);
    boolean decimal = formula.endsWith(ONE_DECIMAL);
    boolean micrometre = formula.endsWith(SQUARE_MICROMETRE);
    boolean four = formula.endsWith(FOUR_DECIMALS);
    boolean five = formula.endsWith(FIVE_DECIMALS);
    formula = formula.replace(FIVE_DECIMALS, "");
    boolean nearest = formula.endsWith(NEAREST);
    RoundingMode millimetre = !formula.endsWith(SQUARE_MILLIMETRE) ? null
        : formula.endsWith(", rounded down" + SQUARE_MILLIMETRE) ? RoundingMode.FLOOR
        : formula.endsWith(", rounded up" + SQUARE_MILLIMETRE) ? RoundingMode.CEILING : RoundingMode.HALF_EVEN;
    formula = formula.replaceFirst(", rounded( down| up|)" + SQUARE_MILLIMETRE, "");
    boolean six = formula.endsWith(SIX_DECIMALS);
    formula = formula.replace(SIX_DECIMALS, "").replace(FOUR_DECIMALS, "").replace(NEAREST, "");
    formula = formula.replace(UP, "").replace(DOWN, "").replace(ONE_DECIMAL, "").replace(SQUARE_MICROMETRE, "");
    Map<String, BigDecimal> values = new LinkedHashMap<>();
    step.terms().forEach(term -> values.put(term.symbol(), number(term.value())));
    assertThat(formula).as(step.explain()).matches("[A-Za-z0-9']+ = .+");
    String right = formula.substring(formula.indexOf(" = ") + 3);
    BigDecimal value = right.contains(" if ") ? choice(right, values) : new Formula(right, values).value();
    if (up) {
      value = value.setScale(0, RoundingMode.CEILING);
    }
    if (down) {
      value = value.setScale(0, RoundingMode.FLOOR);
    }
    if (decimal) {
      value = value.setScale(1, RoundingMode.HALF_UP);
    }
    if (four) {
      value = value.setScale(4, RoundingMode.HALF_UP);
    }
    if (five) {
      value = value.setScale(5, RoundingMode.HALF_UP);
    }
    if (six) {
      value = value.setScale(6, RoundingMode.HALF_UP);
    }
    if (nearest) {
      value = value.setScale(0, RoundingMode.HALF_EVEN);
    }
    if (micrometre) {
      value = value.setScale(-6, RoundingMode.HALF_EVEN);
    }
    if (millimetre != null) {
      value = value.setScale(-12, millimetre);
    }
    assertThat(value).as(step.explain()).isEqualByComparingTo(number(step.result()));
    List<String> symbols = step.terms().stream().map(Term::symbol).toList();
    assertThat(symbols).as(step.explain()).doesNotHaveDuplicates()
        .allSatisfy(symbol -> assertThat(" " + right.replaceAll("[^A-Za-z0-9']", " ") + " ").contains(" " + symbol + " "));
  }

  /** Reads "A if c, B if d, else C". */
  private static BigDecimal choice(String text, Map<String, BigDecimal> values) {
    for (String branch : text.split(", ")) {
      if (branch.startsWith("else ")) {
        return new Formula(branch.substring(5), values).value();
      }
      String[] parts = branch.split(" if ");
      String[] sides = parts[1].split(" (<=|>=|<|>) ");
      int compared = new Formula(sides[0], values).value().compareTo(new Formula(sides[1], values).value());
      String sign = parts[1].substring(sides[0].length()).trim().split(" ")[0];
      boolean holds = switch (sign) {
        case "<" -> compared < 0;
        case "<=" -> compared <= 0;
        case ">" -> compared > 0;
        default -> compared >= 0;
      };
      if (holds) {
        return new Formula(parts[0], values).value();
      }
    }
    throw new IllegalArgumentException("no branch holds: " + text);
  }

  private static BigDecimal number(Object value) {
    if (value instanceof Length length) {
      return BigDecimal.valueOf(length.toNanometres());
    }
    if (value instanceof Area area) {
      return new BigDecimal(area.toHalfSquareNanometres()).divide(BigDecimal.valueOf(2));
    }
    if (value instanceof Price price) {
      return price.amount();
    }
    if (value instanceof Mass mass) {
      return mass.kilograms();
    }
    if (value instanceof Percent percent) {
      return percent.number();
    }
    if (value instanceof Temperature temperature) {
      return temperature.degrees();
    }
    return new BigDecimal(value.toString());
  }
}
