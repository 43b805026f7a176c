package floorcalc.joints;

import floorcalc.measure.Length;
import java.util.Objects;

/**
 * Two end joints of different rows.
 *
 * @param row the lower row, counted from 1
 * @param at where its joint lies along the rows, not null
 * @param otherRow the upper row, counted from 1
 * @param otherAt where its joint lies along the rows, not null
 * @since 0.1
 */
public record JointPair(int row, Length at, int otherRow, Length otherAt) {
  /** Checks that no part is null. */
  public JointPair {
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(otherAt, "otherAt");
  }

  /**
   * Returns the distance between the two joints along the rows.
   *
   * @return the offset, not negative, not null
   */
  public Length offset() {
    return otherAt.minus(at).abs();
  }
}
