package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.measure.TapeNotation;

/**
 * How a drawing writes lengths.
 *
 * @since 0.1
 */
public enum Measures {
  /** Millimetres. */
  MILLIMETRES {
    @Override
    String wall(Length length) {
      return Words.whole(length);
    }

    @Override
    String overall(Length length) {
      return Words.whole(length);
    }

    @Override
    String row(Length length) {
      return Words.tenths(length);
    }

    @Override
    String withUnit(Length length) {
      return Words.tenths(length) + " mm";
    }

    @Override
    String height(Length length) {
      return Words.tenths(length);
    }

    @Override
    String markedHeight(Length length) {
      return Words.tenths(length);
    }

    @Override
    String heightWords() {
      return "in mm";
    }

    @Override
    String words() {
      return "in mm";
    }
  },

  /** Feet and inches to a sixteenth, beside them millimetres where there is room. */
  FEET_AND_INCHES {
    @Override
    String wall(Length length) {
      return INCHES.format(length);
    }

    @Override
    String overall(Length length) {
      return INCHES.format(length) + " (" + Words.whole(length) + ")";
    }

    @Override
    String row(Length length) {
      return INCHES.format(length);
    }

    @Override
    String withUnit(Length length) {
      return INCHES.format(length) + " (" + Words.tenths(length) + " mm)";
    }

    @Override
    String height(Length length) {
      String inches = FINE_INCHES.format(length);
      return inches.equals("0\"") && !length.isZero() ? (length.isNegative() ? ">-" : "<") + FINEST : inches;
    }

    @Override
    String markedHeight(Length length) {
      return height(length) + " (" + Words.tenths(length) + ")";
    }

    @Override
    String heightWords() {
      return "in inches to 1/64 (in mm)";
    }

    @Override
    String words() {
      return "in feet and inches to 1/16";
    }
  };

  private static final TapeNotation INCHES = TapeNotation.feetAndInches(16);
  private static final TapeNotation FINE_INCHES = TapeNotation.inches(64);
  private static final String FINEST = "1/64\"";

  /** A wall: the figure alone. */
  abstract String wall(Length length);

  /** The whole room: the figure alone. */
  abstract String overall(Length length);

  /** The width of a row: the figure alone. */
  abstract String row(Length length);

  /** A figure in a sentence. */
  abstract String withUnit(Length length);

  /** A height or a depth of a floor: the figure alone. */
  abstract String height(Length length);

  /** The same where it is marked: in both units, if there are two. */
  abstract String markedHeight(Length length);

  /** For example "in mm", of heights. */
  abstract String heightWords();

  /** For example "in mm". */
  abstract String words();
}
