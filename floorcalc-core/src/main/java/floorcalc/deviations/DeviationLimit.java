package floorcalc.deviations;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.Optional;

/**
 * What one source permits of one deviation. Made by {@link #atMost} or {@link #ofWidth} and narrowed by the other methods.
 *
 * @param deviation what may deviate, not null
 * @param widths the widths of board that it is for, not null
 * @param least the smallest allowed, as of a play that must be there; empty if there is none; not null
 * @param most the greatest allowed, empty if only a share of the width is given; not null
 * @param percentOfWidth the greatest allowed in per cent of the width of the board, of a panel joint of the size of the panel; where {@code most}
 *     is there too the lesser of both holds; empty if there is none; not null
 * @param meanOf how many readings in a row are taken together as their mean; 1 for each alone
 * @param beyondPercent how many of a hundred readings may be beyond, 0 for none; a fraction of a reading is none
 * @param utmostTimes how many times the limit no reading at all may exceed, 0 if nothing is said
 * @param condition what else it depends on, in words; not null, may be empty
 * @param source whose limit it is, not null
 * @since 0.1
 */
public record DeviationLimit(Deviation deviation, BoardWidths widths, Optional<Length> least, Optional<Length> most,
    Optional<BigDecimal> percentOfWidth, int meanOf, int beyondPercent, int utmostTimes, String condition, Source source)
    implements Serializable {

  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  /**
   * Checks every part.
   *
   * @throws IllegalArgumentException if nothing is limited or a number is out of range
   */
  public DeviationLimit {
    Objects.requireNonNull(deviation, "deviation");
    Objects.requireNonNull(widths, "widths");
    Objects.requireNonNull(condition, "condition");
    Objects.requireNonNull(source, "source");
    if (most.isEmpty() && percentOfWidth.isEmpty()) {
      throw new IllegalArgumentException("a limit of the " + deviation.words() + " must say how much is allowed");
    }
    if (most.filter(Length::isNegative).isPresent() || percentOfWidth.filter(percent -> percent.signum() < 0).isPresent()
        || least.filter(Length::isNegative).isPresent()) {
      throw new IllegalArgumentException("what is allowed of the " + deviation.words() + " must not be negative");
    }
    if (least.isPresent() && most.isPresent() && least.get().compareTo(most.get()) > 0) {
      throw new IllegalArgumentException("the least allowed of the " + deviation.words() + ", " + least.get() + ", is above the greatest, "
          + most.get());
    }
    if (meanOf < 1 || beyondPercent < 0 || beyondPercent > 99 || utmostTimes < 0) {
      throw new IllegalArgumentException("a limit takes the mean of at least 1 reading, and 0 % to 99 % beyond it, but was given "
          + meanOf + " readings, " + beyondPercent + " % and " + utmostTimes + " times");
    }
  }

  /**
   * Returns a greatest deviation for boards of any width.
   *
   * @param deviation what may deviate, not null
   * @param most the greatest allowed, not negative, not null
   * @param source whose limit it is, not null
   * @return the limit, not null
   */
  public static DeviationLimit atMost(Deviation deviation, Length most, Source source) {
    Objects.requireNonNull(most, "most");
    return new DeviationLimit(deviation, BoardWidths.ANY, Optional.empty(), Optional.of(most), Optional.empty(), 1, 0, 0, "", source);
  }

  /**
   * Returns a greatest deviation that grows with the width of the board.
   *
   * @param deviation what may deviate, not null
   * @param percent the greatest allowed in per cent of the width, not negative, not null
   * @param source whose limit it is, not null
   * @return the limit, not null
   */
  public static DeviationLimit ofWidth(Deviation deviation, BigDecimal percent, Source source) {
    Objects.requireNonNull(percent, "percent");
    return new DeviationLimit(deviation, BoardWidths.ANY, Optional.empty(), Optional.empty(), Optional.of(percent), 1, 0, 0, "", source);
  }

  /**
   * Returns the same limit, and nothing beyond a length either.
   *
   * @param length the greatest allowed, not null
   * @return the limit, not null
   */
  public DeviationLimit andAtMost(Length length) {
    Objects.requireNonNull(length, "length");
    return new DeviationLimit(deviation, widths, least, Optional.of(length), percentOfWidth, meanOf, beyondPercent, utmostTimes, condition,
        source);
  }

  /**
   * Returns the same limit, and nothing below a length either.
   *
   * @param length the least allowed, not null
   * @return the limit, not null
   */
  public DeviationLimit andAtLeast(Length length) {
    Objects.requireNonNull(length, "length");
    return new DeviationLimit(deviation, widths, Optional.of(length), most, percentOfWidth, meanOf, beyondPercent, utmostTimes, condition,
        source);
  }

  /**
   * Returns the same limit for boards of some widths.
   *
   * @param boards the widths, not null
   * @return the limit, not null
   */
  public DeviationLimit forWidths(BoardWidths boards) {
    Objects.requireNonNull(boards, "boards");
    return new DeviationLimit(deviation, boards, least, most, percentOfWidth, meanOf, beyondPercent, utmostTimes, condition, source);
  }

  /**
   * Returns the same limit for the mean of readings in a row.
   *
   * @param number how many, at least 1
   * @return the limit, not null
   */
  public DeviationLimit asMeanOf(int number) {
    return new DeviationLimit(deviation, widths, least, most, percentOfWidth, number, beyondPercent, utmostTimes, condition, source);
  }

  /**
   * Returns the same limit with some readings allowed beyond it.
   *
   * @param percent how many of a hundred, 0 to 99
   * @return the limit, not null
   */
  public DeviationLimit withBeyond(int percent) {
    return new DeviationLimit(deviation, widths, least, most, percentOfWidth, meanOf, percent, utmostTimes, condition, source);
  }

  /**
   * Returns the same limit with no reading allowed beyond a multiple of it.
   *
   * @param times how many times the limit, 0 if nothing is said
   * @return the limit, not null
   */
  public DeviationLimit withNoneBeyond(int times) {
    return new DeviationLimit(deviation, widths, least, most, percentOfWidth, meanOf, beyondPercent, times, condition, source);
  }

  /**
   * Returns the same limit under a condition.
   *
   * @param words what else it depends on, not null
   * @return the limit, not null
   */
  public DeviationLimit on(String words) {
    Objects.requireNonNull(words, "words");
    return new DeviationLimit(deviation, widths, least, most, percentOfWidth, meanOf, beyondPercent, utmostTimes, words, source);
  }

  /**
   * Returns how much is allowed for a size: {@code min(p * w / 100, m)}.
   *
   * @param width the width of the board, of a panel joint the size of the panel; not null
   * @return the greatest deviation allowed, rounded down to a whole nanometre, not null
   */
  public Length allowed(Length width) {
    if (percentOfWidth.isEmpty()) {
      return most.orElseThrow();
    }
    Length share = Length.ofNanometres(percentOfWidth.get().multiply(BigDecimal.valueOf(width.toNanometres()))
        .divide(HUNDRED, 0, RoundingMode.FLOOR).longValueExact());
    return most.map(share::min).orElse(share);
  }

  /**
   * Returns the limit as text, with what a share of the width comes to.
   *
   * @param width the width of the board, of a panel joint the size of the panel; not null
   * @return for example {@code "2 % of the width, at most 2 mm (1.8 mm at 90 mm)"}, not null
   */
  public String at(Length width) {
    return this + (percentOfWidth.isPresent() ? " (" + allowed(width) + " at " + width + ")" : "");
  }

  /**
   * Returns the limit as text.
   *
   * @return for example {@code "0.5 % of the width, at most 0.5 mm"}, not null
   */
  @Override
  public String toString() {
    String size = deviation.isSize() ? "plus or minus " : "at most ";
    StringBuilder text = new StringBuilder();
    if (least.isPresent() && most.isPresent() && percentOfWidth.isEmpty()) {
      text.append(least.get()).append(" to ").append(most.get());
    } else {
      text.append(percentOfWidth.map(percent -> percent.stripTrailingZeros().toPlainString() + " % of the "
          + (deviation == Deviation.PANEL_JOINT ? "panel" : "width")).orElse(""));
      text.append(percentOfWidth.isPresent() && most.isPresent() ? ", " : "").append(most.map(length -> size + length).orElse(""));
      text.append(least.map(length -> ", at least " + length).orElse(""));
    }
    text.append(meanOf == 1 ? "" : ", as the mean of " + meanOf + " in a row");
    text.append(beyondPercent == 0 ? "" : ", for all but " + beyondPercent + " % of readings");
    text.append(utmostTimes == 0 ? "" : ", none beyond " + utmostTimes + " times that");
    text.append(widths.equals(BoardWidths.ANY) ? "" : ", boards " + widths);
    return text.append(condition.isEmpty() ? "" : ", " + condition).toString();
  }

  private Object writeReplace() {
    return new Form(deviation, widths, least.orElse(null), most.orElse(null), percentOfWidth.orElse(null), meanOf,
        beyondPercent, utmostTimes, condition, source);
  }

  /** What is written: an optional part by itself, or null. Reading goes through the constructor and its checks. */
  private record Form(Deviation deviation, BoardWidths widths, Length least, Length most, BigDecimal percentOfWidth,
      int meanOf, int beyondPercent, int utmostTimes, String condition, Source source) implements Serializable {

    private Object readResolve() {
      return new DeviationLimit(deviation, widths, Optional.ofNullable(least), Optional.ofNullable(most),
          Optional.ofNullable(percentOfWidth), meanOf, beyondPercent, utmostTimes, condition, source);
    }
  }
}
