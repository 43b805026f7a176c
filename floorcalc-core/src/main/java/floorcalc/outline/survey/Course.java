package floorcalc.outline.survey;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * One leg of a walk round a room: which way, and how far.
 *
 * @param azimuth the direction clockwise from up (north), not null
 * @param length how far, not null, more than zero
 * @since 0.1
 */
public record Course(Angle azimuth, Length length) implements Serializable {
  private static final int DECIMALS = 15;

  /**
   * Checks that no part is null and that the course has a length.
   *
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public Course {
    Objects.requireNonNull(azimuth, "azimuth");
    if (!Objects.requireNonNull(length, "length").isPositive()) {
      throw new IllegalArgumentException("a course must be longer than 0 mm, but was " + length);
    }
  }

  /** The cosine of the azimuth to 15 decimals: how much of the course goes up. */
  BigDecimal cosine() {
    return rounded(StrictMath.cos(StrictMath.toRadians(azimuth.withinATurn().degrees())));
  }

  /** The sine of the azimuth to 15 decimals: how much of the course goes to the right. */
  BigDecimal sine() {
    return rounded(StrictMath.sin(StrictMath.toRadians(azimuth.withinATurn().degrees())));
  }

  private static BigDecimal rounded(double share) {
    return new BigDecimal(share).setScale(DECIMALS, RoundingMode.HALF_EVEN);
  }
}
