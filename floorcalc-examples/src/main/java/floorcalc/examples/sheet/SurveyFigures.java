package floorcalc.examples.sheet;

import floorcalc.examples.job.Tape;
import floorcalc.measure.Length;
import floorcalc.outline.survey.Measured;
import floorcalc.outline.survey.SurveyedRoom;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Pattern;

/**
 * Figures of a survey as people read them: places and lengths to a tenth of a millimetre, angles to a hundredth of a degree,
 * and inches beside them where the job has inches.
 */
public final class SurveyFigures {
  private static final double MILLIMETRES_PER_INCH = 25.4;
  private static final double MILLIMETRES_PER_METRE = 1000;
  private static final double SQUARE_METRES_PER_SQUARE_FOOT = 0.09290304;
  private static final Pattern AREA = Pattern.compile("([0-9]{1,12}(?:\\.[0-9]{1,6})?) m²");

  private final Figures figures;

  /**
   * Figures of a job.
   *
   * @param tape in which units the job was measured, not null
   */
  public SurveyFigures(Tape tape) {
    this.figures = new Figures(tape);
  }

  /**
   * Returns what was read, or what became of it.
   *
   * @param kind what was measured, not null
   * @param value millimetres, of a turn degrees
   * @return for example {@code 4210 mm}, {@code 12' 6" (3810 mm)} or {@code 90.21°}, not null
   */
  public String of(Measured.Kind kind, double value) {
    return kind == Measured.Kind.TURN ? degrees(value) : figures.withUnit(length(value));
  }

  /**
   * Returns the same for a column of millimetres.
   *
   * @param kind what was measured, not null
   * @param value millimetres, of a turn degrees
   * @return for example {@code 4210}, {@code 12' 6" (3810)} or {@code 90.21°}, not null
   */
  public String column(Measured.Kind kind, double value) {
    return kind == Measured.Kind.TURN ? degrees(value) : figures.bare(length(value));
  }

  private static Length length(double millimetres) {
    return Length.fromMillimetres(millimetres, RoundingMode.HALF_EVEN);
  }

  /**
   * Returns a standard deviation.
   *
   * @param kind what was measured, not null
   * @param value millimetres, of a turn degrees
   * @return for example {@code 2.0 mm}, {@code 2.0 mm (0.08")} or {@code 0.50°}, not null
   */
  public String deviation(Measured.Kind kind, double value) {
    return kind == Measured.Kind.TURN ? degrees(value) : decimal(value, 1) + " mm" + inches(value);
  }

  /**
   * Returns a small figure for a column of millimetres.
   *
   * @param kind what was measured, not null
   * @param value millimetres, of a turn degrees
   * @return for example {@code 2.0}, {@code 2.0 (0.08")} or {@code 0.50°}, not null
   */
  public String small(Measured.Kind kind, double value) {
    return kind == Measured.Kind.TURN ? degrees(value) : decimal(value, 1) + inches(value);
  }

  /**
   * Returns a difference for a column of millimetres.
   *
   * @param kind what was measured, not null
   * @param value millimetres, of a turn degrees
   * @return the same as a small figure, with a sign unless it rounds to zero; not null
   */
  public String difference(Measured.Kind kind, double value) {
    return kind == Measured.Kind.TURN ? signed(value, 2) + "°" : signed(value, 1) + inches(value);
  }

  private String inches(double millimetres) {
    return figures.inches() ? " (" + decimal(millimetres / MILLIMETRES_PER_INCH, 2) + "\")" : "";
  }

  /**
   * Returns an angle.
   *
   * @param degrees the angle
   * @return for example {@code 90.21°}, not null
   */
  public String degrees(double degrees) {
    return decimal(degrees, 2) + "°";
  }

  /**
   * Returns how far a corner that is meant to be square is from it.
   *
   * @param room the room, not null
   * @param corner the corner, from 1
   * @return for example {@code +0.21° ± 0.20°}; {@code -} for a corner that is not meant to be square; not null
   */
  public String fromSquare(SurveyedRoom room, int corner) {
    return room.offSquare(corner).isEmpty() ? "-"
        : signed(room.offSquare(corner).getAsDouble(), 2) + "° ± " + degrees(room.turnDeviation(corner));
  }

  /**
   * Returns what that is over a metre of wall, for a column of millimetres.
   *
   * @param room the room, not null
   * @param corner the corner, from 1
   * @return for example {@code 3.6} or {@code 3.6 (0.14")}; {@code -} for a corner that is not meant to be square; not null
   */
  public String overAMetre(SurveyedRoom room, int corner) {
    return room.offSquare(corner).isEmpty() ? "-" : small(Measured.Kind.WALL,
        StrictMath.tan(StrictMath.toRadians(StrictMath.abs(room.offSquare(corner).getAsDouble()))) * MILLIMETRES_PER_METRE);
  }

  /**
   * Returns the area of a room with its standard deviation.
   *
   * @param room the room, not null
   * @return for example {@code 15.183 m² ± 0.006 m²}, not null
   */
  public String area(SurveyedRoom room) {
    double area = room.area().toSquareMetres();
    double deviation = room.areaDeviation();
    String metric = decimal(area, 3) + " m² ± " + decimal(deviation, 3) + " m²";
    return figures.inches() ? metric + " (" + decimal(area / SQUARE_METRES_PER_SQUARE_FOOT, 1) + " ft² ± "
        + decimal(deviation / SQUARE_METRES_PER_SQUARE_FOOT, 1) + " ft²)" : metric;
  }

  /**
   * Returns a sentence of the library with its lengths and areas as the job has them.
   *
   * @param sentence the sentence, not null
   * @return the same for people, not null
   */
  public String text(String sentence) {
    String lengths = figures.inWords(sentence);
    return figures.inches() ? AREA.matcher(lengths).replaceAll(found -> found.group() + " ("
        + decimal(Double.parseDouble(found.group(1)) / SQUARE_METRES_PER_SQUARE_FOOT, 1) + " ft²)") : lengths;
  }

  private static String signed(double value, int decimals) {
    String text = decimal(value, decimals);
    return text.startsWith("-") || new BigDecimal(text).signum() == 0 ? text : "+" + text;
  }

  /**
   * Returns a number with a few decimals.
   *
   * @param value the number, finite
   * @param decimals how many, not negative
   * @return the number, never a negative zero; not null
   */
  public static String decimal(double value, int decimals) {
    BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
    return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString();
  }
}
