package floorcalc.fittings;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import java.util.Objects;

/**
 * How little wood may be left beside what is cut out. No published figure was found for either limit; both can be replaced.
 *
 * @param leastWood the least wood between two pipe holes, or between a hole and a side of its board; with less, both are one slot, or
 *     the hole is opened to the side; 20 mm by common practice; not null, 0 to 500 mm
 * @param leastWoodSource where it comes from, not null
 * @param leastTongue a part beside a notch that is narrower than this and longer than it is wide is thin: it may break when the board
 *     is handled or laid; 50 mm by common practice; not null, 0 to 500 mm
 * @param leastTongueSource where it comes from, not null
 * @since 0.1
 */
public record CutOutLimits(Length leastWood, Source leastWoodSource, Length leastTongue, Source leastTongueSource) {
  private static final Length MOST = Length.ofMillimetres(500);

  /** 20 mm of wood beside a hole, tongues and bridges of 50 mm: what many layers take; no published source was found. */
  public static final CutOutLimits COMMON_PRACTICE = new CutOutLimits(Length.ofMillimetres(20), Source.COMMON_PRACTICE,
      Length.ofMillimetres(50), Source.COMMON_PRACTICE);

  /**
   * Checks that no part is null and that both lengths are in range.
   *
   * @throws IllegalArgumentException if a length is out of range
   */
  public CutOutLimits {
    Objects.requireNonNull(leastWood, "leastWood");
    Objects.requireNonNull(leastTongue, "leastTongue");
    require(leastWood, "least wood beside a hole");
    Objects.requireNonNull(leastWoodSource, "leastWoodSource");
    require(leastTongue, "narrowest tongue");
    Objects.requireNonNull(leastTongueSource, "leastTongueSource");
  }

  private static void require(Length length, String what) {
    if (length.isNegative() || length.compareTo(MOST) > 0) {
      throw new IllegalArgumentException(what + " must be from 0 mm to " + MOST + ", but was " + length + "; give 0 mm for no limit");
    }
  }

  /**
   * Returns the same limits with another least wood beside a hole.
   *
   * @param wood the least wood, not null, 0 to 500 mm
   * @param source where it comes from, not null
   * @return the limits, not null
   * @throws IllegalArgumentException if the length is out of range
   */
  public CutOutLimits withLeastWood(Length wood, Source source) {
    Objects.requireNonNull(wood, "wood");
    Objects.requireNonNull(source, "source");
    return new CutOutLimits(wood, source, leastTongue, leastTongueSource);
  }

  /**
   * Returns the same limits with another narrowest tongue.
   *
   * @param tongue the narrowest tongue or bridge, not null, 0 to 500 mm
   * @param source where it comes from, not null
   * @return the limits, not null
   * @throws IllegalArgumentException if the length is out of range
   */
  public CutOutLimits withLeastTongue(Length tongue, Source source) {
    Objects.requireNonNull(tongue, "tongue");
    Objects.requireNonNull(source, "source");
    return new CutOutLimits(leastWood, leastWoodSource, tongue, source);
  }
}
