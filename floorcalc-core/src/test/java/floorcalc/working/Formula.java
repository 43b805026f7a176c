package floorcalc.working;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Map;

/**
 * Plain arithmetic over decimals: + - * / brackets, ceil, floor, abs, sqrt, min, max, atan2 in degrees, sin and arctan in radians,
 * the normal distribution, lengths in mm and in, angles in deg.
 */
final class Formula {
  private static final MathContext EXACT_ENOUGH = new MathContext(80);

  private final String text;
  private final Map<String, BigDecimal> values;
  private int at;

  Formula(String text, Map<String, BigDecimal> values) {
    this.text = text.replace(" ", "");
    this.values = values;
  }

  BigDecimal value() {
    BigDecimal value = sum();
    if (at != text.length()) {
      throw new IllegalArgumentException("cannot read '" + text.substring(at) + "' in '" + text + "'");
    }
    return value;
  }

  private BigDecimal sum() {
    BigDecimal value = product();
    while (true) {
      if (take("+")) {
        value = value.add(product());
      } else if (take("-")) {
        value = value.subtract(product());
      } else {
        return value;
      }
    }
  }

  private BigDecimal product() {
    BigDecimal value = factor();
    while (true) {
      if (take("*")) {
        value = value.multiply(factor());
      } else if (take("/")) {
        value = value.divide(factor(), EXACT_ENOUGH);
      } else {
        return value;
      }
    }
  }

  private BigDecimal factor() {
    if (take("(")) {
      BigDecimal value = sum();
      require(")");
      return value;
    }
    String word = word();
    if (take("(")) {
      BigDecimal value = sum();
      while (take(",")) {
        BigDecimal next = sum();
        value = switch (word) {
          case "min" -> value.min(next);
          case "max" -> value.max(next);
          default -> new BigDecimal(StrictMath.toDegrees(StrictMath.atan2(value.doubleValue(), next.doubleValue())));
        };
      }
      require(")");
      return switch (word) {
        case "ceil" -> value.setScale(0, RoundingMode.CEILING);
        case "floor" -> value.setScale(0, RoundingMode.FLOOR);
        case "abs" -> value.abs();
        case "sqrt" -> value.sqrt(EXACT_ENOUGH);
        case "Phi" -> BigDecimal.valueOf(normal(value.doubleValue()));
        case "sin" -> sine(value);
        case "arctan" -> new BigDecimal(StrictMath.atan(value.doubleValue()));
        case "min", "max", "atan2" -> value;
        default -> throw new IllegalArgumentException("unknown function " + word + " in '" + text + "'");
      };
    }
    if (values.containsKey(word)) {
      return values.get(word);
    }
    if (word.endsWith("deg")) {
      return new BigDecimal(word.substring(0, word.length() - 3)).multiply(BigDecimal.valueOf(3600));
    }
    if (word.endsWith("mm")) {
      return new BigDecimal(word.substring(0, word.length() - 2)).movePointRight(6);
    }
    if (word.endsWith("in")) {
      return new BigDecimal(word.substring(0, word.length() - 2)).multiply(BigDecimal.valueOf(25_400_000));
    }
    return new BigDecimal(word);
  }

  /** The share of the normal distribution below x: half, and the density times the series x + x^3/3 + x^5/(3*5) + ... */
  private static double normal(double x) {
    if (StrictMath.abs(x) > 8) {
      return x < 0 ? 0 : 1;
    }
    double sum = x;
    double term = x;
    for (int odd = 3; StrictMath.abs(term) > 1e-18 * StrictMath.abs(sum); odd += 2) {
      term *= x * x / odd;
      sum += term;
    }
    return 0.5 + sum * StrictMath.exp(-x * x / 2) / StrictMath.sqrt(2 * StrictMath.PI);
  }

  /** The sine of an angle in radians, by its series. */
  private static BigDecimal sine(BigDecimal angle) {
    BigDecimal sum = BigDecimal.ZERO;
    BigDecimal term = angle;
    for (int i = 1; i < 200; i += 2) {
      sum = sum.add(term, EXACT_ENOUGH);
      term = term.multiply(angle).multiply(angle).negate().divide(BigDecimal.valueOf((i + 1L) * (i + 2)), EXACT_ENOUGH);
    }
    return sum;
  }

  private String word() {
    int from = at;
    while (at < text.length() && (Character.isLetterOrDigit(text.charAt(at)) || "'.".indexOf(text.charAt(at)) >= 0)) {
      at++;
    }
    return text.substring(from, at);
  }

  private boolean take(String sign) {
    boolean here = text.startsWith(sign, at);
    at += here ? sign.length() : 0;
    return here;
  }

  private void require(String sign) {
    if (!take(sign)) {
      throw new IllegalArgumentException("'" + sign + "' is missing in '" + text + "'");
    }
  }
}
