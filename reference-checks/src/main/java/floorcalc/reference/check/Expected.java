package floorcalc.reference.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.Optional;

/**
 * A figure that a source prints, and how near an answer must come to it. A printed number asks for half a unit of its last digit; a wider margin
 * needs a reason, which stands in the report.
 */
public final class Expected {
  private final String figure;
  private final String printed;
  private final BigDecimal low;
  private final BigDecimal high;
  private final BigDecimal unit;
  private final String reason;

  private Expected(String figure, String printed, BigDecimal low, BigDecimal high, BigDecimal unit, String reason) {
    this.figure = Objects.requireNonNull(figure, "figure");
    this.printed = Objects.requireNonNull(printed, "printed");
    this.low = low;
    this.high = high;
    this.unit = unit;
    this.reason = Objects.requireNonNull(reason, "reason");
  }

  /**
   * A number rounded in print: the answer is within half a unit of its last digit.
   *
   * @param figure the figure's name in the answer, not null
   * @param printed the number as printed, a plain decimal, not null
   * @return what is expected, not null
   */
  public static Expected printed(String figure, String printed) {
    BigDecimal value = new BigDecimal(printed);
    return near(figure, printed, value, value.ulp().divide(BigDecimal.valueOf(2)), "");
  }

  /**
   * A number that is exact as printed: the answer is the same number.
   *
   * @param figure the figure's name in the answer, not null
   * @param printed the number as printed, a plain decimal, not null
   * @return what is expected, not null
   */
  public static Expected exactly(String figure, String printed) {
    return near(figure, printed, new BigDecimal(printed), BigDecimal.ZERO, "");
  }

  /**
   * A number with a margin of its own, for a reason: a source that rounds on the way, or more digits than are sure.
   *
   * @param figure the figure's name in the answer, not null
   * @param printed the number as printed, a plain decimal, not null
   * @param margin how far the answer may be off, a plain decimal, not negative, not null
   * @param reason why it is not half a unit of the last digit, not empty, not null
   * @return what is expected, not null
   */
  public static Expected within(String figure, String printed, String margin, String reason) {
    if (reason.isBlank()) {
      throw new IllegalArgumentException("a margin of its own needs a reason: " + figure + " " + printed);
    }
    return near(figure, printed, new BigDecimal(printed), new BigDecimal(margin), reason);
  }

  /**
   * A range: the answer is in it or at one of its ends.
   *
   * @param figure the figure's name in the answer, not null
   * @param low the lower end, a plain decimal, not null
   * @param high the upper end, a plain decimal, not less, not null
   * @param reason what the range is, not null
   * @return what is expected, not null
   */
  public static Expected between(String figure, String low, String high, String reason) {
    BigDecimal from = new BigDecimal(low);
    BigDecimal to = new BigDecimal(high);
    if (from.compareTo(to) > 0) {
      throw new IllegalArgumentException("a range must not end below its start, but " + figure + " goes from " + low + " to " + high);
    }
    return new Expected(figure, low + " to " + high, from, to, null, reason);
  }

  /**
   * A word or another text: the answer is the same text.
   *
   * @param figure the figure's name in the answer, not null
   * @param printed the text, not null
   * @return what is expected, not null
   */
  public static Expected text(String figure, String printed) {
    return new Expected(figure, printed, null, null, null, "");
  }

  private static Expected near(String figure, String printed, BigDecimal value, BigDecimal margin, String reason) {
    if (margin.signum() < 0) {
      throw new IllegalArgumentException("a margin must not be negative, but was " + margin + " for " + figure);
    }
    return new Expected(figure, printed, value.subtract(margin), value.add(margin), value.ulp(), reason);
  }

  /**
   * Returns the figure's name in the answer.
   *
   * @return the name, not null
   */
  public String figure() {
    return figure;
  }

  /**
   * Returns the figure as it is printed.
   *
   * @return the text, not null
   */
  public String printed() {
    return printed;
  }

  /**
   * Returns half of the width of the range that is accepted.
   *
   * @return the tolerance in the figure's unit; empty for texts
   */
  public Optional<BigDecimal> tolerance() {
    return Optional.ofNullable(low).map(from -> high.subtract(from).divide(BigDecimal.valueOf(2)));
  }

  /**
   * Returns why the margin is not half a unit of the last digit.
   *
   * @return the reason, empty where none is needed, not null
   */
  public String reason() {
    return reason;
  }

  /**
   * Returns whether an answer agrees.
   *
   * @param answer the answer's text for this figure, not null
   * @return true if it is the same text, or a number in the range that is accepted, its ends among it
   */
  public boolean agrees(String answer) {
    if (low == null) {
      return printed.equals(answer);
    }
    return number(answer).map(value -> low.compareTo(value) <= 0 && value.compareTo(high) <= 0).orElse(false);
  }

  /**
   * Returns how far an answer is from the printed number, in units of its last printed digit.
   *
   * @param answer the answer's text for this figure, not null
   * @return the distance, not negative, to three decimals; empty for texts and ranges, and where the answer is no number
   */
  public Optional<BigDecimal> lastDigitsOff(String answer) {
    if (unit == null) {
      return Optional.empty();
    }
    return number(answer).map(value -> value.subtract(new BigDecimal(printed)).abs().divide(unit, 3, RoundingMode.HALF_EVEN));
  }

  private static Optional<BigDecimal> number(String text) {
    try {
      return Optional.of(new BigDecimal(text));
    } catch (NumberFormatException noNumber) {
      return Optional.empty();
    }
  }

  /** Returns the figure's name, what is printed and the tolerance. */
  @Override
  public String toString() {
    return figure + " = " + printed + tolerance().map(margin -> margin.signum() == 0 ? " exactly" : " within " + margin.toPlainString()).orElse("");
  }
}
