package floorcalc.examples.readings;

import floorcalc.measure.Length;
import floorcalc.measure.TapeNotationException;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** In what the values of a column are written. */
enum ColumnUnit {
  MILLIMETRE("mm", "12.5"),
  CENTIMETRE("cm", "1.25"),
  METRE("m", "0.5"),
  INCH("in", "5 3/8"),
  FOOT("ft", "12.5"),
  /** Each value has its own unit. */
  TAPE("tape", "5 3/8 in");

  private static final Pattern DECIMAL = Pattern.compile("[-\u2212]?(?:[0-9]+(?:\\.[0-9]+)?|\\.[0-9]+)");
  private static final Pattern WITH_UNIT = Pattern.compile(".*[a-zA-Z'\"\u2032\u2033\u2018\u2019\u201c\u201d].*");

  private final String word;
  private final String example;

  ColumnUnit(String word, String example) {
    this.word = word;
    this.example = example;
  }

  String word() {
    return word;
  }

  static Optional<ColumnUnit> of(String word) {
    return Arrays.stream(values()).filter(unit -> unit.word.equals(word)).findFirst();
  }

  /** The words, as a sentence lists them. */
  static String words() {
    return Arrays.stream(values()).map(ColumnUnit::word).collect(Collectors.joining(", "));
  }

  /** What a value must be. */
  String wanted() {
    return this == TAPE ? "a length with its unit, such as 12.5 mm, 3.2 m, 5 3/8 in or 12 ft 7 5/8 in"
        : "a number of " + word + " such as " + example;
  }

  /**
   * Reads a value.
   *
   * @throws IllegalArgumentException if it is none; the message says what is wrong with it
   */
  Length read(String text) {
    if (this == TAPE) {
      return parse(text);
    }
    if (WITH_UNIT.matcher(text).matches()) {
      throw new IllegalArgumentException("the header names the unit; write the number alone, or name the unit of the column as (tape)");
    }
    boolean decimal = DECIMAL.matcher(text).matches();
    if (!decimal && this != INCH && this != FOOT) {
      throw new IllegalArgumentException("write it with the digits 0 to 9, a minus sign in front and a decimal point if needed");
    }
    return parse(text + " " + word);
  }

  private static Length parse(String text) {
    try {
      return Length.parse(text);
    } catch (TapeNotationException fault) {
      throw new IllegalArgumentException(fault.reason(), fault);
    }
  }

  /** Whether a value of this column was measured in feet or inches. */
  boolean isImperial(String text) {
    return this == INCH || this == FOOT || this == TAPE && !text.endsWith("m") && !text.equals("0");
  }
}
