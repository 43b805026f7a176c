package floorcalc.transitions;

import floorcalc.measure.Length;
import java.util.Objects;

/**
 * One layer of a floor: what it is and how thick it is as it lies, with the floor walked on.
 *
 * @param name what it is, such as {@code "underlay"}; not null, not blank
 * @param thickness its thickness, not null, 0 mm to 1 m; 0 mm for a layer that is left out
 * @since 0.1
 */
public record Layer(String name, Length thickness) {
  private static final Length THICKEST = Length.ofMillimetres(1000);

  /** Checks that no part is null or out of range. */
  public Layer {
    if (Objects.requireNonNull(name, "name").isBlank()) {
      throw new IllegalArgumentException("a layer of a floor needs a name that is not blank");
    }
    if (Objects.requireNonNull(thickness, "thickness").isNegative() || thickness.compareTo(THICKEST) > 0) {
      throw new IllegalArgumentException("thickness of layer '" + name + "' must be from 0 mm to " + THICKEST + ", but was "
          + thickness + "; give one layer at a time, 0 mm for one that is left out");
    }
  }
}
