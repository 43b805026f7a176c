package floorcalc.examples.sheet;

import floorcalc.examples.job.Tape;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.measure.TapeNotation;
import java.util.Locale;

/** Figures as they are read on site: millimetres to a tenth, and inches to a sixteenth beside them where a job has inches. */
final class Figures {
  private static final TapeNotation TENTHS = TapeNotation.millimetres(1);
  private static final TapeNotation INCHES = TapeNotation.feetAndInches(16);
  /** 1 ft² = 0.3048² m², exact. */
  private static final double SQUARE_METRES_PER_SQUARE_FOOT = 0.09290304;

  private final Tape tape;

  Figures(Tape tape) {
    this.tape = tape;
  }

  boolean inches() {
    return tape == Tape.FEET_AND_INCHES;
  }

  /** For example {@code 141.5} or {@code 141.5 (5 9/16")}. */
  String bare(Length length) {
    String millimetres = TENTHS.format(length).replace(" mm", "");
    String plain = millimetres.endsWith(".0") ? millimetres.substring(0, millimetres.length() - 2) : millimetres;
    return inches() ? plain + " (" + INCHES.format(length) + ")" : plain;
  }

  /** For example {@code 141.5 mm} or {@code 141.5 mm (5 9/16")}. */
  String withUnit(Length length) {
    String bare = bare(length);
    int bracket = bare.indexOf(" (");
    return bracket < 0 ? bare + " mm" : bare.substring(0, bracket) + " mm" + bare.substring(bracket);
  }

  /** For example {@code 14.89 m²}. */
  String area(Area area) {
    String metric = area.toSquareMetreString(2) + " m²";
    return inches()
        ? metric + String.format(Locale.ROOT, " (%.1f ft²)", area.toSquareMetres() / SQUARE_METRES_PER_SQUARE_FOOT)
        : metric;
  }
}
