package floorcalc.moisture;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A temperature on the scale that it was read on, degrees Celsius or degrees Fahrenheit, as an exact decimal number.
 * Immutable and thread-safe.
 * <p>
 * It is not converted: formulas that exist for both scales use the one given. Two are compared exactly, as
 * {@code 9 * C / 5 + 32}; 20 °C and 68 °F compare as equal, but are not {@link #equals(Object) equal}, since they print
 * differently. From -50 °C to 150 °C.
 *
 * @since 0.1
 */
public final class Temperature implements Comparable<Temperature>, Serializable {
  private static final long serialVersionUID = 1L;
  private static final Pattern TEXT = Pattern.compile("([-+\u2212]?[0-9]{1,3}(?:\\.[0-9]{1,6})?) ?°?([CF])");
  private static final BigDecimal LEAST = BigDecimal.valueOf(-58);
  private static final BigDecimal MOST = BigDecimal.valueOf(302);
  private static final int DECIMALS = 6;

  private final BigDecimal degrees;
  private final Scale scale;

  /**
   * The two scales in use on site.
   *
   * @since 0.1
   */
  public enum Scale {
    /** Degrees Celsius. */
    CELSIUS("°C"),
    /** Degrees Fahrenheit. */
    FAHRENHEIT("°F");

    private final String sign;

    Scale(String sign) {
      this.sign = sign;
    }

    /**
     * Returns the sign of the unit.
     *
     * @return {@code "°C"} or {@code "°F"}, not null
     */
    public String sign() {
      return sign;
    }
  }

  private Temperature(BigDecimal degrees, Scale scale) {
    this.degrees = degrees;
    this.scale = scale;
  }

  /**
   * Returns a temperature.
   *
   * @param degrees the degrees, at most 6 decimals, not null
   * @param scale the scale, not null
   * @return the temperature, not null
   * @throws IllegalArgumentException if it is below -50 °C or above 150 °C, or has more than 6 decimals
   */
  public static Temperature of(BigDecimal degrees, Scale scale) {
    Objects.requireNonNull(degrees, "degrees");
    Objects.requireNonNull(scale, "scale");
    if (degrees.precision() - (long) degrees.scale() > 4 || degrees.scale() > 1000) {
      throw outOfBounds(degrees + " " + scale.sign);
    }
    BigDecimal plain = Decimals.plain(degrees);
    if (plain.scale() > DECIMALS) {
      throw new IllegalArgumentException("a temperature has at most 6 decimals, but was " + plain.toPlainString());
    }
    Temperature temperature = new Temperature(plain, scale);
    BigDecimal fahrenheit = temperature.inFahrenheit();
    if (fahrenheit.compareTo(LEAST) < 0 || fahrenheit.compareTo(MOST) > 0) {
      throw outOfBounds(temperature.toString());
    }
    return temperature;
  }

  private static IllegalArgumentException outOfBounds(String found) {
    return new IllegalArgumentException(
        "a temperature must be from -50 °C to 150 °C (-58 °F to 302 °F), but was " + found + "; check the scale");
  }

  /**
   * Returns a temperature in degrees Celsius.
   *
   * @param decimal the degrees as a decimal number, such as {@code "21.5"}; not null
   * @return the temperature, not null
   * @throws IllegalArgumentException if it is no number or out of bounds
   */
  public static Temperature celsius(String decimal) {
    Objects.requireNonNull(decimal, "decimal");
    return of(Decimals.read(decimal, "temperature", "21.5"), Scale.CELSIUS);
  }

  /**
   * Returns a temperature in degrees Fahrenheit.
   *
   * @param decimal the degrees as a decimal number, such as {@code "70"}; not null
   * @return the temperature, not null
   * @throws IllegalArgumentException if it is no number or out of bounds
   */
  public static Temperature fahrenheit(String decimal) {
    Objects.requireNonNull(decimal, "decimal");
    return of(Decimals.read(decimal, "temperature", "70"), Scale.FAHRENHEIT);
  }

  /**
   * Reads a temperature with its unit.
   *
   * @param text a number and a unit, such as {@code "21 °C"}, {@code "70 °F"} or {@code "21 C"}; not null
   * @return the temperature, not null
   * @throws IllegalArgumentException if the text is none, or it is out of bounds
   */
  public static Temperature parse(CharSequence text) {
    Objects.requireNonNull(text, "text");
    Matcher matcher = TEXT.matcher(text.toString().strip().toUpperCase(Locale.ROOT));
    if (!matcher.matches()) {
      throw new IllegalArgumentException("found [" + text + "] as a temperature; write it as 21 °C or 70 °F");
    }
    return of(new BigDecimal(matcher.group(1).replace('\u2212', '-')),
        matcher.group(2).equals("C") ? Scale.CELSIUS : Scale.FAHRENHEIT);
  }

  /**
   * Returns the degrees on the scale given.
   *
   * @return the number without trailing zeros, not null
   */
  public BigDecimal degrees() {
    return degrees;
  }

  /**
   * Returns the scale that the temperature was given on.
   *
   * @return the scale, not null
   */
  public Scale scale() {
    return scale;
  }

  /**
   * Returns the degrees Celsius, rounded half even to six decimals where they come from degrees Fahrenheit.
   *
   * @return the number, not null
   */
  public BigDecimal toCelsius() {
    return scale == Scale.CELSIUS ? degrees : Decimals.plain(degrees.subtract(BigDecimal.valueOf(32))
        .multiply(BigDecimal.valueOf(5)).divide(BigDecimal.valueOf(9), DECIMALS, RoundingMode.HALF_EVEN));
  }

  /** The degrees Fahrenheit, exact: 9/5 is a whole number of tenths. */
  BigDecimal inFahrenheit() {
    return scale == Scale.FAHRENHEIT ? degrees
        : degrees.multiply(new BigDecimal("1.8")).add(BigDecimal.valueOf(32));
  }

  /** Orders by warmth, whatever the scales. */
  @Override
  public int compareTo(Temperature other) {
    return inFahrenheit().compareTo(other.inFahrenheit());
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Temperature other && scale == other.scale && degrees.equals(other.degrees);
  }

  @Override
  public int hashCode() {
    return degrees.hashCode() * 31 + scale.sign.hashCode();
  }

  /**
   * Returns the temperature as text; {@link #parse(CharSequence)} reads it back.
   *
   * @return for example {@code "21 °C"}, not null
   */
  @Override
  public String toString() {
    return degrees.toPlainString() + " " + scale.sign;
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return of(degrees, scale);
  }
}
