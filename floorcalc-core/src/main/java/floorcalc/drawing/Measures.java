package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.measure.TapeNotation;

/** How a drawing writes lengths. */
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
    String words() {
      return "in feet and inches to 1/16";
    }
  };

  private static final TapeNotation INCHES = TapeNotation.feetAndInches(16);

  /** A wall: the figure alone. */
  abstract String wall(Length length);

  /** The whole room: the figure alone. */
  abstract String overall(Length length);

  /** The width of a row: the figure alone. */
  abstract String row(Length length);

  /** A figure in a sentence. */
  abstract String withUnit(Length length);

  /** For example "in mm". */
  abstract String words();
}
