package floorcalc.outline.survey;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A typical mistake that would explain why a reading is not what it should be: a metre or a foot left out, digits
 * exchanged, a 6 taken for a 9.
 * <p>
 * That it would explain it does not prove it: measure again. Which mistakes are looked for is common practice, no source.
 *
 * @param text what may have happened, for example {@code "read 100 mm too long"}; not null
 * @param corrected what was meant if so, not null
 * @since 0.1
 */
public record Slip(String text, Length corrected) implements Serializable {
  private static final int DEVIATIONS_OFF = 3;
  private static final int DEVIATIONS_NEAR = 2;
  private static final int DEVIATIONS_TOLD = 4;
  private static final Length INCH = Length.ofInches(1, 0, 1);
  private static final Length FOOT = Length.ofInches(12, 0, 1);
  private static final Length TENTH_OF_FOOT = Length.ofNanometres(30_480_000);

  /**
   * What a tape is marked with, and so which mistakes it invites.
   *
   * @since 0.1
   */
  public enum Marks {
    /** Metres, centimetres and millimetres. */
    METRIC,
    /** Feet, inches and fractions of an inch. */
    FEET_AND_INCHES
  }

  /** Checks that no part is null. */
  public Slip {
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(corrected, "corrected");
  }

  /**
   * Returns the mistakes that would explain a reading.
   * <p>
   * A reading within 3 standard deviations of what it should be needs no explanation. A mistake explains another one if
   * what was meant is within 2 standard deviations of what it should be, and if it moves the reading by at least 4, so that
   * it can be told from no mistake.
   *
   * @param read what was read, not null, more than zero
   * @param marks what the tape is marked with, not null
   * @param expected what it should be, not null
   * @param deviation one standard deviation of the difference of the two, not null, more than zero
   * @return the mistakes, that which comes nearest first; empty if none explains it or there is nothing to explain; not null
   * @throws IllegalArgumentException if reading or deviation is not more than zero
   */
  public static List<Slip> of(Length read, Marks marks, Length expected, Length deviation) {
    Objects.requireNonNull(marks, "marks");
    Objects.requireNonNull(expected, "expected");
    if (!read.isPositive()) {
      throw new IllegalArgumentException("a reading must be more than 0 mm, but was " + read);
    }
    if (!deviation.isPositive()) {
      throw new IllegalArgumentException("the standard deviation of a reading must be more than 0 mm, but was " + deviation);
    }
    if (off(read, expected, deviation, DEVIATIONS_OFF)) {
      return of(read, marks).stream()
          .filter(slip -> !off(slip.corrected, expected, deviation, DEVIATIONS_NEAR)
              && !slip.corrected.minus(read).abs().minus(deviation.multipliedBy(DEVIATIONS_TOLD)).isNegative())
          .sorted(Comparator.comparing(slip -> slip.corrected.minus(expected).abs())).toList();
    }
    return List.of();
  }

  /** Tells whether two lengths are further apart than some standard deviations. */
  private static boolean off(Length one, Length other, Length deviation, int deviations) {
    return one.minus(other).abs().compareTo(deviation.multipliedBy(deviations)) > 0;
  }

  /** Returns what could have been meant: one slip to a length, its ways joined. */
  static List<Slip> of(Length read, Marks marks) {
    Map<Length, List<String>> found = new LinkedHashMap<>();
    Found add = (text, corrected) -> {
      if (corrected.isPositive() && !corrected.equals(read)) {
        found.computeIfAbsent(corrected, key -> new ArrayList<>()).add(text);
      }
    };
    if (marks == Marks.METRIC) {
      metric(read, add);
    } else {
      feet(read, add);
    }
    return found.entrySet().stream()
        .map(entry -> new Slip(entry.getValue().stream().distinct().collect(Collectors.joining(", or ")), entry.getKey())).toList();
  }

  private interface Found {
    void add(String text, Length corrected);
  }

  private static void metric(Length read, Found found) {
    for (long step : new long[] {10, 100, 1000}) {
      found.add("read " + step + " mm too long", read.minus(Length.ofMillimetres(step)));
      found.add("read " + step + " mm too short", read.plus(Length.ofMillimetres(step)));
    }
    Length millimetre = Length.ofMillimetres(1);
    Length part = read.remainder(millimetre);
    digits(read.dividedBy(millimetre), "", (text, number) -> found.add(text, Length.ofMillimetres(number).plus(part)));
    found.add("centimetres taken for millimetres", read.multipliedBy(10));
    if (read.remainder(Length.ofNanometres(10)).isZero()) {
      found.add("millimetres taken for centimetres", Length.ofNanometres(read.toNanometres() / 10));
    }
  }

  private static void feet(Length read, Found found) {
    for (int inches : new int[] {1, 6, 12}) {
      String step = inches == 12 ? "1 ft" : inches + " in";
      found.add("read " + step + " too long", read.minus(INCH.multipliedBy(inches)));
      found.add("read " + step + " too short", read.plus(INCH.multipliedBy(inches)));
    }
    Length part = read.remainder(INCH);
    digits(read.dividedBy(INCH), " of the inches", (text, number) -> found.add(text, INCH.multipliedBy(number).plus(part)));
    Length beside = read.remainder(FOOT);
    long feet = read.dividedBy(FOOT);
    digits(feet, " of the feet", (text, number) -> found.add(text, FOOT.multipliedBy(number).plus(beside)));
    if (part.isZero() && beside.dividedBy(INCH) < 10) {
      found.add("decimal feet taken for feet and inches",
          FOOT.multipliedBy(feet).plus(TENTH_OF_FOOT.multipliedBy(beside.dividedBy(INCH))));
    }
    if (beside.isPositive() && beside.remainder(TENTH_OF_FOOT).isZero()) {
      found.add("feet and inches taken for decimal feet",
          FOOT.multipliedBy(feet).plus(INCH.multipliedBy(beside.dividedBy(TENTH_OF_FOOT))));
    }
  }

  private interface Digits {
    void add(String text, long number);
  }

  /** Two neighbours exchanged; a 6 for a 9 or a 9 for a 6, as on a tape read upside down. */
  private static void digits(long number, String what, Digits found) {
    String text = Long.toString(number);
    for (int i = 0; i < text.length(); i++) {
      char digit = text.charAt(i);
      if (i + 1 < text.length() && text.charAt(i + 1) != digit && !(i == 0 && text.charAt(1) == '0')) {
        found.add("digits " + digit + " and " + text.charAt(i + 1) + what + " exchanged",
            Long.parseLong(text.substring(0, i) + text.charAt(i + 1) + digit + text.substring(i + 2)));
      }
      if (digit == '6' || digit == '9') {
        char other = digit == '6' ? '9' : '6';
        found.add("a " + other + what + " taken for a " + digit, Long.parseLong(text.substring(0, i) + other + text.substring(i + 1)));
      }
    }
  }

  /**
   * Returns what may have happened and what was meant.
   *
   * @return for example {@code "read 100 mm too long: meant 5321 mm"}, not null
   */
  @Override
  public String toString() {
    return text + ": meant " + corrected;
  }
}
