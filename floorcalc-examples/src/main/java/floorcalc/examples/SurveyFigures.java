package floorcalc.examples;

import floorcalc.examples.job.Tape;
import floorcalc.examples.sheet.Figures;
import floorcalc.measure.Length;
import floorcalc.outline.survey.Measured;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Pattern;

/** Figures of a survey: places and lengths to a tenth of a millimetre, how far they are off with their sign. */
final class SurveyFigures {
  private static final double MILLIMETRES_PER_INCH = 25.4;
  private static final double SQUARE_METRES_PER_SQUARE_FOOT = 0.09290304;

  private static final Pattern AREA = Pattern.compile("([0-9]{1,12}(?:\\.[0-9]{1,6})?) m²");

  private final Figures figures;

  SurveyFigures(Tape tape) {
    this.figures = new Figures(tape);
  }

  /** A length that was worked out. */
  String length(double millimetres) {
    return figures.withUnit(Length.fromMillimetres(millimetres, RoundingMode.HALF_EVEN));
  }

  /** What was read, or what became of it: a length, or degrees of a turn. */
  String of(Measured.Kind kind, double value) {
    return kind == Measured.Kind.TURN ? degrees(value) : length(value);
  }

  /** A standard deviation of either. */
  String deviation(Measured.Kind kind, double value) {
    return kind == Measured.Kind.TURN ? degrees(value) : decimal(value, 1) + " mm" + inches(value);
  }

  /** Either in a column of millimetres. */
  String column(Measured.Kind kind, double value) {
    return kind == Measured.Kind.TURN ? degrees(value)
        : figures.bare(Length.fromMillimetres(value, RoundingMode.HALF_EVEN));
  }

  /** A small length in a column of millimetres, beside it inches to a hundredth where the job has inches. */
  String small(double millimetres) {
    return decimal(millimetres, 1) + inches(millimetres);
  }

  /** Either as a small difference with its sign. */
  String difference(Measured.Kind kind, double value) {
    return kind == Measured.Kind.TURN ? signed(value, 2) + "°" : signed(value, 1) + inches(value);
  }

  /** Either as a small figure without a sign. */
  String small(Measured.Kind kind, double value) {
    return kind == Measured.Kind.TURN ? degrees(value) : small(value);
  }

  private String inches(double millimetres) {
    return figures.inches() ? " (" + decimal(millimetres / MILLIMETRES_PER_INCH, 2) + "\")" : "";
  }

  String degrees(double degrees) {
    return decimal(degrees, 2) + "°";
  }

  String area(double squareMetres, double deviation) {
    String metric = decimal(squareMetres, 3) + " m² ± " + decimal(deviation, 3) + " m²";
    return figures.inches() ? metric + " (" + decimal(squareMetres / SQUARE_METRES_PER_SQUARE_FOOT, 1) + " ft² ± "
        + decimal(deviation / SQUARE_METRES_PER_SQUARE_FOOT, 1) + " ft²)" : metric;
  }

  /** A sentence of the library with its lengths and areas as the job has them. */
  String text(String sentence) {
    String lengths = figures.inWords(sentence);
    return figures.inches() ? AREA.matcher(lengths).replaceAll(found -> found.group() + " ("
        + decimal(Double.parseDouble(found.group(1)) / SQUARE_METRES_PER_SQUARE_FOOT, 1) + " ft²)") : lengths;
  }

  static String signed(double value, int decimals) {
    String text = decimal(value, decimals);
    return text.startsWith("-") || new BigDecimal(text).signum() == 0 ? text : "+" + text;
  }

  static String decimal(double value, int decimals) {
    BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
    return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString();
  }
}
