package floorcalc.flatness;

import floorcalc.measure.Length;
import java.util.Objects;

/**
 * An edge lying on two points of the floor, and the greatest gap beneath it between these two.
 *
 * @param left the contact on the left, not null
 * @param right the contact on the right, not null
 * @param gap the greatest gap between the contacts, to the nearest nanometre (a half to the even one); not null, not
 *     negative
 * @param lowSpot the point of the floor with the greatest gap above it, always a reading; the left contact if there is
 *     no gap; not null
 * @since 0.1
 */
public record EdgeRest(ProfilePoint left, ProfilePoint right, Length gap, ProfilePoint lowSpot) {
  /** Checks that no part is null. */
  public EdgeRest {
    Objects.requireNonNull(left, "left");
    Objects.requireNonNull(right, "right");
    Objects.requireNonNull(gap, "gap");
    Objects.requireNonNull(lowSpot, "lowSpot");
  }

  /**
   * Returns the distance between the two contacts.
   *
   * @return the distance, not null, more than zero
   */
  public Length contactDistance() {
    return right.place().minus(left.place());
  }

  @Override
  public String toString() {
    return gap + " at " + lowSpot.place() + ", resting at " + left.place() + " and " + right.place();
  }
}
