package floorcalc.deviations;

import floorcalc.measure.Area;
import java.io.Serializable;
import java.math.BigInteger;
import java.util.Objects;

/**
 * How many readings a source asks for: so many for each area begun.
 *
 * @param readings how many for each area, at least 1
 * @param area the area, more than zero, not null
 * @since 0.1
 */
public record ReadingNumber(int readings, Area area) implements Serializable {
  /**
   * Checks both parts.
   *
   * @throws IllegalArgumentException if one of them is not more than zero
   */
  public ReadingNumber {
    if (readings < 1 || !Objects.requireNonNull(area, "area").isPositive()) {
      throw new IllegalArgumentException("a number of readings must be at least 1 for more than 0 m², but was " + readings + " for " + area);
    }
  }

  /**
   * Returns how many readings a floor needs: {@code k * ceil(A / area)}.
   *
   * @param floor the area of the floor, more than zero, not null
   * @return the number, at least {@link #readings()}
   */
  public long neededFor(Area floor) {
    BigInteger[] parts = floor.toHalfSquareNanometres().divideAndRemainder(area.toHalfSquareNanometres());
    return readings * (parts[0].longValueExact() + (parts[1].signum() > 0 ? 1 : 0));
  }

  /**
   * Returns the rule as text.
   *
   * @return for example {@code "5 for each 70 m²"}, not null
   */
  @Override
  public String toString() {
    return readings + " for each " + area.toSquareMetreString(0) + " m²";
  }
}
