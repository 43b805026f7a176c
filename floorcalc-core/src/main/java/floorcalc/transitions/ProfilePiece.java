package floorcalc.transitions;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import java.math.BigDecimal;
import java.util.Objects;

/**
 * One straight piece of a profile and how its ends are sawn.
 *
 * @param from one end of its middle line, not null
 * @param to the other end of its middle line, not null
 * @param length along its middle line, to the nearest nanometre, not null
 * @param longPoint what is cut off the bar: from the far point of one mitre to that of the other; not null
 * @param shortPoint over what length the piece has its full width, negative if its mitres cross; not null
 * @param cutAtFrom the angle that the saw is turned from a square cut at the one end, in degrees from -90 to 90, positive if the
 *     profile turns to the left there; 0 for a square cut; not null
 * @param cutAtTo the same at the other end, not null
 * @since 0.1
 */
public record ProfilePiece(Point from, Point to, Length length, Length longPoint, Length shortPoint, BigDecimal cutAtFrom,
    BigDecimal cutAtTo) {
  /** Checks that no part is null. */
  public ProfilePiece {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(longPoint, "longPoint");
    Objects.requireNonNull(shortPoint, "shortPoint");
    Objects.requireNonNull(cutAtFrom, "cutAtFrom");
    Objects.requireNonNull(cutAtTo, "cutAtTo");
  }

  /**
   * Returns what the mitres of both ends take beyond the middle line.
   *
   * @return what is cut off the bar less the length, not null
   */
  public Length allowance() {
    return longPoint.minus(length);
  }
}
