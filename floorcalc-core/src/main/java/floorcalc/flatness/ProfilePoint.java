package floorcalc.flatness;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * A point of a floor along a line: a reading, or a place between two readings where an edge ends.
 *
 * @param place the distance along the line from where it starts, level; not null
 * @param height the height over any datum, up positive; not null
 * @since 0.1
 */
public record ProfilePoint(Length place, Length height) implements Serializable {
  /** Checks that no part is null. */
  public ProfilePoint {
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(height, "height");
  }
}
