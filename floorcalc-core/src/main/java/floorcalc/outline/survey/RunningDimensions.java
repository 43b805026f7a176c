package floorcalc.outline.survey;

import floorcalc.measure.Length;
import floorcalc.measure.TapeNotation;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Running dimensions: readings off one tape that lies along a wall from corner to corner.
 * <p>
 * The lengths between marks are differences of readings, exact. They add up to the last reading, whatever it is, and one
 * bad reading spoils two of them and no more; lengths measured one by one add their errors up. To round, round the
 * readings, never the lengths: then the rounded lengths still add up to the rounded whole.
 * <pre>{@code
 * RunningDimensions.of(List.of(Length.parse("4' 7 5/8\""), Length.parse("7' 8 1/4\"")), Slip.Marks.FEET_AND_INCHES).value().lengths();
 * // 1412.875 mm, 930.275 mm
 * }</pre>
 * Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class RunningDimensions {
  /** The most readings along one wall. */
  public static final int MOST_READINGS = 1000;

  private final List<Length> readings;
  private final List<Length> lengths;

  private RunningDimensions(List<Length> readings, List<Length> lengths) {
    this.readings = readings;
    this.lengths = lengths;
  }

  /**
   * Returns the lengths between the marks, the first from the zero of the tape.
   *
   * @param readings the readings in order, not null, 1 to {@value #MOST_READINGS}, each more than the one before
   * @param marks what the tape is marked with, not null; tells which mistakes a reading that goes back may be
   * @return the lengths with a step {@code length-1}, {@code length-2} and so on for each, not null
   * @throws IllegalArgumentException if there are too few or too many readings, or one is not more than the one before; the
   *     message names typical slips that would put it right
   */
  public static Calculated<RunningDimensions> of(List<Length> readings, Slip.Marks marks) {
    Objects.requireNonNull(marks, "marks");
    if (readings.isEmpty() || readings.size() > MOST_READINGS) {
      throw new IllegalArgumentException("a wall has from 1 to " + MOST_READINGS + " readings, but " + readings.size() + " were given");
    }
    List<Length> lengths = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    Length before = Length.ZERO;
    for (int i = 0; i < readings.size(); i++) {
      Length reading = readings.get(i);
      if (reading.compareTo(before) <= 0) {
        throw goesBack(readings, i, marks);
      }
      Length length = reading.minus(before);
      lengths.add(length);
      steps.add(new Step("length-" + (i + 1), "How long is part " + (i + 1) + "?", "l = r2 - r1", List.of(
          Term.of("r2", "reading " + (i + 1), reading),
          Term.of("r1", i == 0 ? "zero of the tape" : "reading " + i, before)), length, Source.DEFINITION));
      before = reading;
    }
    return Calculated.of(new RunningDimensions(List.copyOf(readings), List.copyOf(lengths)), steps);
  }

  private static IllegalArgumentException goesBack(List<Length> readings, int place, Slip.Marks marks) {
    Length before = place == 0 ? Length.ZERO : readings.get(place - 1);
    Length reading = readings.get(place);
    String message = "reading " + (place + 1) + ", " + reading + ", is not more than "
        + (place == 0 ? "the zero of the tape" : "reading " + place + ", " + before) + "; readings off one tape only grow";
    if (place == 0 || !reading.isPositive()) {
      return new IllegalArgumentException(message + "; read it again");
    }
    Length earlier = place == 1 ? Length.ZERO : readings.get(place - 2);
    List<String> slips = new ArrayList<>();
    Slip.of(reading, marks).stream().filter(slip -> slip.corrected().compareTo(before) > 0
        && (place + 1 == readings.size() || slip.corrected().compareTo(readings.get(place + 1)) < 0))
        .forEach(slip -> slips.add(told("reading " + (place + 1), slip)));
    Slip.of(before, marks).stream().filter(slip -> slip.corrected().compareTo(earlier) > 0
        && slip.corrected().compareTo(reading) < 0).forEach(slip -> slips.add(told("reading " + place, slip)));
    return new IllegalArgumentException(message + (slips.isEmpty() ? "" : "; it may be " + String.join("; or ", slips))
        + "; read both again");
  }

  private static String told(String what, Slip slip) {
    return what + ": " + slip.text() + ", meant " + slip.corrected();
  }

  /**
   * Holds the last reading against the whole wall measured another time.
   *
   * @param overall the whole wall, not null, more than zero
   * @param marks what the tape is marked with, not null
   * @param uncertainty how far a length is off as a rule, not null
   * @return the finding {@code overall-differs} with the slips that would explain it if the two differ by more than three
   *     standard deviations of their difference, else nothing
   */
  public Optional<Finding> against(Length overall, Slip.Marks marks, SurveyUncertainty uncertainty) {
    Objects.requireNonNull(overall, "overall");
    Objects.requireNonNull(marks, "marks");
    return differing("overall-differs", "the last reading", readings.get(readings.size() - 1), "the whole wall measured at once",
        overall, marks, uncertainty);
  }

  /**
   * Holds two measurements of the same length against each other.
   *
   * @param first the first, not null, more than zero
   * @param second the second, not null, more than zero
   * @param marks what the tape is marked with, not null
   * @param uncertainty how far a length is off as a rule, not null
   * @return the finding {@code measurements-differ} with the slips that would explain it if the two differ by more than
   *     three standard deviations of their difference, else nothing
   */
  public static Optional<Finding> twice(Length first, Length second, Slip.Marks marks, SurveyUncertainty uncertainty) {
    Objects.requireNonNull(first, "first");
    Objects.requireNonNull(second, "second");
    Objects.requireNonNull(marks, "marks");
    return differing("measurements-differ", "the first measurement", first, "the second", second, marks, uncertainty);
  }

  private static Optional<Finding> differing(String code, String one, Length first, String other, Length second,
      Slip.Marks marks, SurveyUncertainty uncertainty) {
    double millimetres = StrictMath.sqrt(StrictMath.pow(uncertainty.ofLength(first), 2) + StrictMath.pow(uncertainty.ofLength(second), 2));
    Length deviation = Length.fromMillimetres(millimetres, RoundingMode.HALF_EVEN);
    Length difference = first.minus(second).abs();
    if (difference.compareTo(deviation.multipliedBy(3)) <= 0) {
      return Optional.empty();
    }
    List<String> slips = new ArrayList<>();
    Slip.of(first, marks, second, deviation).forEach(slip -> slips.add(told(one, slip)));
    Slip.of(second, marks, first, deviation).forEach(slip -> slips.add(told(other, slip)));
    String sure = new BigDecimal(3 * millimetres).setScale(1, RoundingMode.HALF_UP).toPlainString();
    return Optional.of(new Finding(code, Severity.WARNING, "", one + ", " + first + ", and " + other + ", " + second
        + ", differ by " + difference + ", more than the " + sure + " mm that measuring so can explain"
        + (slips.isEmpty() ? "" : "; it may be " + String.join("; or ", slips)) + "; measure again", Source.COMMON_PRACTICE));
  }

  /**
   * Returns the readings.
   *
   * @return an unmodifiable list, not null
   */
  public List<Length> readings() {
    return readings;
  }

  /**
   * Returns the lengths between the marks.
   *
   * @return an unmodifiable list, as long as that of the readings, not null
   */
  public List<Length> lengths() {
    return lengths;
  }

  /**
   * Returns running dimensions whose readings are rounded to whole steps, so that their lengths still add up.
   *
   * @param step for example 1 mm or 1/16 in, not null, more than zero
   * @return the rounded readings and their lengths, not null; a half is rounded to the even step
   * @throws IllegalArgumentException if the step is not more than zero or makes two readings one
   */
  public RunningDimensions roundedTo(Length step) {
    if (!step.isPositive()) {
      throw new IllegalArgumentException("the step to round to must be more than 0 mm, but was " + step);
    }
    List<Length> rounded = readings.stream().map(reading -> step.multipliedBy(Sides.decimal(reading)
        .divide(Sides.decimal(step), 0, RoundingMode.HALF_EVEN).longValueExact())).toList();
    List<Length> parts = new ArrayList<>();
    for (int i = 0; i < rounded.size(); i++) {
      parts.add(i == 0 ? rounded.get(0) : rounded.get(i).minus(rounded.get(i - 1)));
      if (!parts.get(i).isPositive()) {
        throw new IllegalArgumentException((i == 0 ? "reading 1 is nothing" : "readings " + i + " and " + (i + 1) + " are one")
            + " when rounded to " + step + "; round to a smaller step");
      }
    }
    return new RunningDimensions(rounded, List.copyOf(parts));
  }

  /**
   * Returns readings and lengths in millimetres and in feet and inches side by side, to be read back to who measured.
   *
   * @return a line for each reading, such as {@code 2: 2343.15 mm = 7' 8 1/4", part 930.275 mm = 3' 0 5/8"}, separated by
   *     {@code \n}; feet and inches to 1/64 in, marked {@code ~} where rounded; not null
   */
  public String echo() {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      lines.add((i + 1) + ": " + both(readings.get(i)) + ", part " + both(lengths.get(i)));
    }
    return lines.stream().collect(Collectors.joining("\n"));
  }

  private static String both(Length length) {
    String feet = TapeNotation.feetAndInches(64).format(length);
    return length + (Length.parse(feet).equals(length) ? " = " : " ~ ") + feet;
  }
}
