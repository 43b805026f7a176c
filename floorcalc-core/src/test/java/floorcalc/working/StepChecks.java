package floorcalc.working;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.measure.Mass;
import floorcalc.measure.Price;
import floorcalc.moisture.Percent;
import floorcalc.moisture.Temperature;
import floorcalc.outline.survey.Angle;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Redoes each step of a working from its formula and terms alone, as a student with paper would. */
public final class StepChecks {
  private static final String AS_STATED = "value as stated";
  private static final Pattern ROUNDED = Pattern.compile(", rounded (?:(up|down) )?to (?:(a whole|the nearest) "
      + "(nanometre|square nanometre|square micrometre|square millimetre)|(\\w+) decimals?)$");
  private static final List<String> NUMBERS = List.of("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine",
      "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen");

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
    Matcher rounding = ROUNDED.matcher(step.formula());
    boolean rounded = rounding.find();
    String formula = rounded ? step.formula().substring(0, rounding.start()) : step.formula();
    Map<String, BigDecimal> values = new LinkedHashMap<>();
    step.terms().forEach(term -> values.put(term.symbol(), number(term.value())));
    assertThat(formula).as(step.explain()).matches("[A-Za-z0-9']+ = .+");
    String right = formula.substring(formula.indexOf(" = ") + 3);
    BigDecimal value = right.contains(" if ") ? choice(right, values) : new Formula(right, values).value();
    if (rounded) {
      value = rounded(value, rounding);
    }
    assertThat(value).as(step.explain()).isEqualByComparingTo(number(step.result()));
    List<String> symbols = step.terms().stream().map(Term::symbol).toList();
    assertThat(symbols).as(step.explain()).doesNotHaveDuplicates()
        .allSatisfy(symbol -> assertThat(" " + right.replaceAll("[^A-Za-z0-9']", " ") + " ").contains(" " + symbol + " "));
  }

  private static BigDecimal rounded(BigDecimal value, Matcher rounding) {
    if (rounding.group(4) != null) {
      return value.setScale(NUMBERS.indexOf(rounding.group(4)), RoundingMode.HALF_UP);
    }
    RoundingMode mode = rounding.group(1) == null ? RoundingMode.HALF_EVEN
        : rounding.group(1).equals("up") ? RoundingMode.CEILING : RoundingMode.FLOOR;
    return value.setScale(switch (rounding.group(3)) {
      case "square micrometre" -> -6;
      case "square millimetre" -> -12;
      default -> 0;
    }, mode);
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
    if (value instanceof Angle angle) {
      return angle.seconds();
    }
    return new BigDecimal(value.toString());
  }
}
