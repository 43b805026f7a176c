package floorcalc.flatness;

import floorcalc.measure.Length;
import java.util.Objects;

/**
 * How far a reading lies above the middle of a chord of the floor, below it if negative.
 *
 * @param reading the reading at the middle of the chord, not null
 * @param deviation its height less the mean height of the floor at the two ends of the chord, not null
 * @since 0.1
 */
public record ChordDeviation(ProfilePoint reading, Length deviation) {
  /** Checks that no part is null. */
  public ChordDeviation {
    Objects.requireNonNull(reading, "reading");
    Objects.requireNonNull(deviation, "deviation");
  }
}
