package floorcalc.fittings;

import floorcalc.measure.Length;
import java.math.BigDecimal;
import java.util.Objects;

/**
 * One board of a mitred border.
 *
 * @param row its row, from 1 at the line that the border follows
 * @param side the side of that line that it lies along, from 1
 * @param atLine the length of its edge towards that line, from mitre to mitre; not null
 * @param atField the length of its other edge, not null
 * @param stock what it takes of a board: from its farthest point to its farthest point, along it; not null
 * @param startMitre what the saw is set to from a square cut at its first end, in degrees, more than zero where the edge at the line is
 *     the longer one there; four decimals; not null
 * @param endMitre the same at its other end, not null
 * @since 0.1
 */
public record BorderBoard(int row, int side, Length atLine, Length atField, Length stock, BigDecimal startMitre, BigDecimal endMitre) {
  /** Checks that no part is null. */
  public BorderBoard {
    Objects.requireNonNull(atLine, "atLine");
    Objects.requireNonNull(atField, "atField");
    Objects.requireNonNull(stock, "stock");
    Objects.requireNonNull(startMitre, "startMitre");
    Objects.requireNonNull(endMitre, "endMitre");
  }

  /**
   * Returns the length from long point to long point, where both mitres lean the same way.
   *
   * @return the longer of its two edges, not null
   */
  public Length longPoint() {
    return atLine.max(atField);
  }

  /**
   * Returns the length from short point to short point, where both mitres lean the same way.
   *
   * @return the shorter of its two edges, not null
   */
  public Length shortPoint() {
    return atLine.min(atField);
  }
}
