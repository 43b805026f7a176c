package floorcalc.outline.survey;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * How far a corner is from square.
 * <p>
 * Erect a line square to the wall that comes into the corner: the wall that leaves it ends {@code out} off that line.
 *
 * @param corner the corner, from 1
 * @param degrees its angle on the floor's side less 90 degrees, or less 270 at a reflex corner; positive if it is opened
 * @param out how far the end of the leaving wall lies off the square line, with the sign of the degrees, not null
 * @param over how long that wall is, not null
 * @since 0.1
 */
public record CornerSquareness(int corner, double degrees, Length out, Length over) implements Serializable {

  /** Checks that no part is null. */
  public CornerSquareness {
    Objects.requireNonNull(out, "out");
    Objects.requireNonNull(over, "over");
  }

  /**
   * Returns how far the leaving wall is out over one metre.
   *
   * @return with the sign of the degrees, to the nearest nanometre, not null
   */
  public Length outPerMetre() {
    return Length.ofMillimetres(1000).times(out).dividedBy(over, RoundingMode.HALF_EVEN);
  }

  /**
   * Returns the corner as text.
   *
   * @return for example {@code "corner 2: 0.474 degrees less than square, 33.07 mm over 3997.3 mm"}, not null
   */
  @Override
  public String toString() {
    String size = Sides.rounded(StrictMath.abs(degrees), 3);
    return "corner " + corner + ": " + (Double.parseDouble(size) == 0 ? "square"
        : size + " degrees " + (degrees < 0 ? "less" : "more") + " than square, "
            + Sides.rounded(out.abs().toMillimetres(), 1) + " mm over " + Sides.rounded(over.toMillimetres(), 1) + " mm");
  }
}
