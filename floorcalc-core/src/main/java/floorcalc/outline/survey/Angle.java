package floorcalc.outline.survey;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An angle in degrees, minutes and seconds, held as whole millionths of a second: sums and differences are exact. May be
 * negative or more than a full turn. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Angle implements Comparable<Angle>, Serializable {
  /** No angle. */
  public static final Angle ZERO = new Angle(0);
  /** Half a turn, 180 degrees. */
  public static final Angle HALF = ofDegrees(180);

  private static final long serialVersionUID = 1L;
  private static final long SECOND = 1_000_000L;
  private static final long MINUTE = 60 * SECOND;
  private static final long DEGREE = 60 * MINUTE;
  private static final long FULL = 360 * DEGREE;
  private static final int MOST_DEGREES = 1_000_000;
  private static final Pattern SEXAGESIMAL = Pattern.compile(
      "(-?)([0-9]{1,7})\\s*[-°]\\s*([0-9]{1,2})\\s*(?:[-'′]\\s*(?:([0-9]{1,2}(?:\\.[0-9]{1,6})?)\\s*[\"″]?)?)?");
  private static final Pattern DECIMAL = Pattern.compile("(-?[0-9]{1,7}(?:\\.[0-9]{1,12})?)\\s*°?");

  private final long millionths;

  private Angle(long millionths) {
    this.millionths = millionths;
  }

  /**
   * Returns an angle of whole degrees.
   *
   * @param degrees the degrees, at most a million either way
   * @return the angle, not null
   * @throws IllegalArgumentException if it is out of range
   */
  public static Angle ofDegrees(int degrees) {
    return fromDegrees(new BigDecimal(degrees));
  }

  /**
   * Returns the angle nearest to a number of degrees, in millionths of a second.
   *
   * @param degrees the degrees, not null, at most a million either way
   * @return the angle, exact up to eight decimals, not null
   * @throws IllegalArgumentException if it is out of range
   */
  public static Angle fromDegrees(BigDecimal degrees) {
    if (degrees.abs().compareTo(BigDecimal.valueOf(MOST_DEGREES)) > 0) {
      throw new IllegalArgumentException("an angle must be within " + MOST_DEGREES + " degrees either way, but was " + degrees);
    }
    return new Angle(degrees.multiply(BigDecimal.valueOf(DEGREE)).setScale(0, RoundingMode.HALF_EVEN).longValueExact());
  }

  /**
   * Reads an angle: degrees, minutes and seconds such as {@code 129-05-37}, {@code 129° 5' 37.5"} or {@code 129-05}, or decimal
   * degrees such as {@code 129.0936}.
   *
   * @param text the text, not null
   * @return the angle, not null
   * @throws IllegalArgumentException if it is no angle, or minutes or seconds are 60 or more
   */
  public static Angle parse(String text) {
    String plain = text.strip();
    Matcher decimal = DECIMAL.matcher(plain);
    if (decimal.matches()) {
      return fromDegrees(new BigDecimal(decimal.group(1)));
    }
    Matcher parts = SEXAGESIMAL.matcher(plain);
    if (!parts.matches()) {
      throw new IllegalArgumentException("cannot read [" + text + "] as an angle; write 129-05-37, 129° 5' 37\" or decimal degrees"
          + " such as 129.0936");
    }
    BigDecimal seconds = parts.group(4) == null ? BigDecimal.ZERO : new BigDecimal(parts.group(4));
    long minutes = Long.parseLong(parts.group(3));
    if (minutes >= 60 || seconds.compareTo(BigDecimal.valueOf(60)) >= 0) {
      throw new IllegalArgumentException("minutes and seconds of [" + text + "] must be less than 60");
    }
    Angle degrees = fromDegrees(new BigDecimal(parts.group(2)));
    long size = degrees.millionths + minutes * MINUTE + seconds.movePointRight(6).longValueExact();
    return new Angle(parts.group(1).isEmpty() ? size : -size);
  }

  /**
   * Returns this angle and another.
   *
   * @param other the other angle, not null
   * @return the sum, not null
   */
  public Angle plus(Angle other) {
    return new Angle(Math.addExact(millionths, other.millionths));
  }

  /**
   * Returns this angle less another.
   *
   * @param other the other angle, not null
   * @return the difference, not null
   */
  public Angle minus(Angle other) {
    return new Angle(Math.subtractExact(millionths, other.millionths));
  }

  /**
   * Returns a part of this angle.
   *
   * @param numerator how many parts
   * @param denominator parts of what number, more than zero
   * @return to the nearest millionth of a second, a half to the even one; not null
   */
  Angle part(int numerator, int denominator) {
    return new Angle(BigDecimal.valueOf(millionths).multiply(BigDecimal.valueOf(numerator))
        .divide(BigDecimal.valueOf(denominator), 0, RoundingMode.HALF_EVEN).longValueExact());
  }

  /**
   * Returns this angle less whole turns.
   *
   * @return from 0 up to, but not including, 360 degrees; not null
   */
  public Angle withinATurn() {
    return new Angle(Math.floorMod(millionths, FULL));
  }

  /**
   * Returns the angle in degrees.
   *
   * @return the nearest number
   */
  public double degrees() {
    return seconds().doubleValue() / 3600;
  }

  /**
   * Returns the angle in seconds, exactly.
   *
   * @return a decimal with at most six places, not null
   */
  public BigDecimal seconds() {
    return BigDecimal.valueOf(millionths, 6);
  }

  @Override
  public int compareTo(Angle other) {
    return Long.compare(millionths, other.millionths);
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Angle other && millionths == other.millionths;
  }

  @Override
  public int hashCode() {
    return Long.hashCode(millionths);
  }

  /**
   * Returns degrees, minutes and seconds.
   *
   * @return for example {@code 129-05-37} or {@code -0-00-18.25}; {@link #parse(String)} reads it back; not null
   */
  @Override
  public String toString() {
    long size = Math.abs(millionths);
    BigDecimal seconds = BigDecimal.valueOf(size % MINUTE, 6).stripTrailingZeros();
    String text = seconds.signum() == 0 ? "0" : seconds.toPlainString();
    return (millionths < 0 ? "-" : "") + size / DEGREE + "-" + twoDigits(Long.toString(size % DEGREE / MINUTE)) + "-"
        + (text.indexOf('.') == 1 ? "0" + text : twoDigits(text));
  }

  private static String twoDigits(String text) {
    return text.length() == 1 ? "0" + text : text;
  }
}
