package floorcalc.deviations;

import java.io.Serializable;
import java.math.BigDecimal;
import java.util.Objects;

/**
 * The moisture content that wood has when its sizes are measured. Wood swells and shrinks: a size means little without it.
 *
 * @param low the lowest in per cent, itself allowed, not null
 * @param high the highest in per cent, itself allowed, not less than the lowest, not null
 * @since 0.1
 */
public record WoodMoisture(BigDecimal low, BigDecimal high) implements Serializable {
  /**
   * Checks that the ends are the right way round.
   *
   * @throws IllegalArgumentException if they are not
   */
  public WoodMoisture {
    if (Objects.requireNonNull(low, "low").compareTo(Objects.requireNonNull(high, "high")) > 0) {
      throw new IllegalArgumentException("the lowest moisture content, " + low + " %, is above the highest, " + high + " %");
    }
  }

  /**
   * Tells whether a moisture content is in the range.
   *
   * @param percent the moisture content in per cent, not null
   * @return true if it is
   */
  public boolean contains(BigDecimal percent) {
    return percent.compareTo(low) >= 0 && percent.compareTo(high) <= 0;
  }

  /**
   * Returns the range as text.
   *
   * @return for example {@code "6 % to 10 %"}, or {@code "9 %"} if both ends are the same; not null
   */
  @Override
  public String toString() {
    return low.compareTo(high) == 0 ? low.toPlainString() + " %" : low.toPlainString() + " % to " + high.toPlainString() + " %";
  }
}
