package floorcalc.plan;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.transitions.Casing;
import floorcalc.transitions.FireRating;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * A door opening in a wall of a room.
 *
 * @param name its name, not null
 * @param from one side of the opening, not null
 * @param to the other side of the opening, not null
 * @param leadsTo the name of the room beyond, not null, empty if not known
 * @param beyond the floor beyond, not null
 * @param casing whether its casings can be cut, not null
 * @param leaf how high the bottom of its leaf is above the bare subfloor, at the lowest point of its swing; empty if it was not
 *     measured or there is no leaf; not null, not negative
 * @param fire whether it is a fire door, not null
 * @since 0.1
 */
public record Door(String name, Point from, Point to, String leadsTo, Beyond beyond, Casing casing, Optional<Length> leaf,
    FireRating fire) implements Serializable {
  /** Checks that no part is null and that the leaf is not below the subfloor. */
  public Door {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(leadsTo, "leadsTo");
    Objects.requireNonNull(beyond, "beyond");
    Objects.requireNonNull(casing, "casing");
    Objects.requireNonNull(fire, "fire");
    if (Objects.requireNonNull(leaf, "leaf").filter(Length::isNegative).isPresent()) {
      throw new IllegalArgumentException("the leaf of door '" + name + "' must be 0 mm or more above the bare subfloor, but is "
          + leaf.get() + "; measure from the subfloor up");
    }
  }

  /**
   * Makes a door opening of whose casings and leaf nothing is known.
   *
   * @param name its name, not null
   * @param from one side of the opening, not null
   * @param to the other side of the opening, not null
   * @param leadsTo the name of the room beyond, not null, empty if not known
   * @param beyond the floor beyond, not null
   */
  public Door(String name, Point from, Point to, String leadsTo, Beyond beyond) {
    this(name, from, to, leadsTo, beyond, Casing.NOT_STATED, Optional.empty(), FireRating.NOT_STATED);
  }

  /**
   * Returns the same door with casings that can or cannot be cut.
   *
   * @param frame whether they can, not null
   * @return the door, not null
   */
  public Door withCasing(Casing frame) {
    Objects.requireNonNull(frame, "frame");
    return new Door(name, from, to, leadsTo, beyond, frame, leaf, fire);
  }

  /**
   * Returns the same door with a leaf.
   *
   * @param aboveSubfloor how high its bottom is above the bare subfloor, not null, not negative
   * @return the door, not null
   */
  public Door withLeaf(Length aboveSubfloor) {
    Objects.requireNonNull(aboveSubfloor, "aboveSubfloor");
    return new Door(name, from, to, leadsTo, beyond, casing, Optional.of(aboveSubfloor), fire);
  }

  /**
   * Returns the same door, known to be a fire door or none.
   *
   * @param rating whether it is, not null
   * @return the door, not null
   */
  public Door withFire(FireRating rating) {
    Objects.requireNonNull(rating, "rating");
    return new Door(name, from, to, leadsTo, beyond, casing, leaf, rating);
  }

  /**
   * Returns the width of the opening.
   *
   * @return from side to side, to the nearest nanometre, not null
   */
  public Length width() {
    return from.distanceTo(to);
  }

  private Object writeReplace() {
    return new Form(name, from, to, leadsTo, beyond, casing, leaf.orElse(null), fire);
  }

  /** What is written: an optional part by itself, or null. Reading goes through the constructor and its checks. */
  private record Form(String name, Point from, Point to, String leadsTo, Beyond beyond, Casing casing, Length leaf,
      FireRating fire) implements Serializable {

    private Object readResolve() {
      return new Door(name, from, to, leadsTo, beyond, casing, Optional.ofNullable(leaf), fire);
    }
  }
}
