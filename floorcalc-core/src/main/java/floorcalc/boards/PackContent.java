package floorcalc.boards;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * How many boards of one length a pack holds.
 *
 * @param length the length of these boards, not null, more than zero
 * @param perPack how many of them a pack holds, more than zero
 * @since 0.1
 */
public record PackContent(Length length, int perPack) implements Serializable {
  /** Checks that both parts are more than zero. */
  public PackContent {
    Objects.requireNonNull(length, "length");
    if (!length.isPositive()) {
      throw new IllegalArgumentException("board length must be more than 0 mm, but was " + length);
    }
    if (perPack < 1) {
      throw new IllegalArgumentException("boards per pack must be at least 1, but was " + perPack);
    }
  }
}
