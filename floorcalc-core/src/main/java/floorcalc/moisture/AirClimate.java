package floorcalc.moisture;

import java.io.Serializable;
import java.util.Objects;

/**
 * The air of a room: its temperature and relative humidity, as measured or as expected in a season. Immutable and
 * thread-safe.
 *
 * @since 0.1
 */
public final class AirClimate implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final Percent ALL = Percent.of("100");

  private final Temperature temperature;
  private final Percent relativeHumidity;

  private AirClimate(Temperature temperature, Percent relativeHumidity) {
    this.temperature = temperature;
    this.relativeHumidity = relativeHumidity;
  }

  /**
   * Returns the climate of a temperature and a relative humidity.
   *
   * @param temperature the temperature of the air, not null
   * @param relativeHumidity the relative humidity, from 0 % to 100 %, not null
   * @return the climate, not null
   * @throws IllegalArgumentException if the humidity is out of bounds
   */
  public static AirClimate of(Temperature temperature, Percent relativeHumidity) {
    Objects.requireNonNull(temperature, "temperature");
    Objects.requireNonNull(relativeHumidity, "relativeHumidity");
    if (relativeHumidity.compareTo(Percent.ZERO) < 0 || relativeHumidity.compareTo(ALL) > 0) {
      throw new IllegalArgumentException("relative humidity must be from 0 % to 100 %, but was " + relativeHumidity
          + "; give 48 % as 48");
    }
    return new AirClimate(temperature, relativeHumidity);
  }

  /**
   * Returns the temperature.
   *
   * @return the temperature of the air, not null
   */
  public Temperature temperature() {
    return temperature;
  }

  /**
   * Returns the relative humidity.
   *
   * @return from 0 % to 100 %, not null
   */
  public Percent relativeHumidity() {
    return relativeHumidity;
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof AirClimate other && temperature.equals(other.temperature)
        && relativeHumidity.equals(other.relativeHumidity);
  }

  @Override
  public int hashCode() {
    return Objects.hash(temperature, relativeHumidity);
  }

  /**
   * Returns the climate as text.
   *
   * @return for example {@code "21 °C and 48 % relative humidity"}, not null
   */
  @Override
  public String toString() {
    return temperature + " and " + relativeHumidity + " relative humidity";
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return of(temperature, relativeHumidity);
  }
}
