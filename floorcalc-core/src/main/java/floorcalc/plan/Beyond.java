package floorcalc.plan;

import floorcalc.measure.Length;
import floorcalc.transitions.EdgeType;
import java.io.Serializable;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * The floor on the other side of a door.
 *
 * @param finish its finish: {@link #SAME_FLOOR}, {@link #STEP}, {@link #FIXED_EDGE}, or what it is, such as {@code "tile"}; not
 *     null, empty if not known
 * @param higherBy how much higher it is than this floor, negative if lower; 0 mm where {@code aboveSubfloor} says it; not null
 * @param aboveSubfloor how high it is above the bare subfloor on this side, from which the difference follows once the layers of
 *     this floor are known; empty if {@code higherBy} says it; not null
 * @since 0.1
 */
public record Beyond(String finish, Length higherBy, Optional<Length> aboveSubfloor) implements Serializable {
  /** The finish of a floor that goes on beyond the door with the same boards. */
  public static final String SAME_FLOOR = "same floor";
  /** The finish of a step: stairs, or a step down to another room. */
  public static final String STEP = "step";
  /** The finish of something fixed that the floor ends at: a sill, the track of a window. */
  public static final String FIXED_EDGE = "fixed edge";

  /** Checks that no part is null and that one height alone is given. */
  public Beyond {
    Objects.requireNonNull(finish, "finish");
    Objects.requireNonNull(higherBy, "higherBy");
    Objects.requireNonNull(aboveSubfloor, "aboveSubfloor");
    if (aboveSubfloor.isPresent() && !higherBy.isZero()) {
      throw new IllegalArgumentException("the floor beyond a door is given twice, as " + higherBy + " higher than this floor and as "
          + aboveSubfloor.get() + " above the subfloor; give one of them");
    }
  }

  /** Nothing is known about the floor beyond: taken as level. */
  public static final Beyond UNKNOWN = new Beyond("", Length.ZERO);

  /**
   * Makes a floor whose height is given against this floor.
   *
   * @param finish its finish, not null, empty if not known
   * @param higherBy how much higher it is than this floor, negative if lower; not null
   */
  public Beyond(String finish, Length higherBy) {
    this(finish, higherBy, Optional.empty());
  }

  /**
   * Returns a floor whose height was measured from the bare subfloor.
   *
   * @param finish its finish, not null, empty if not known
   * @param height how high it is above the bare subfloor on this side, negative if below it; not null
   * @return the floor beyond, not null
   */
  public static Beyond aboveSubfloor(String finish, Length height) {
    Objects.requireNonNull(height, "height");
    return new Beyond(finish, Length.ZERO, Optional.of(height));
  }

  /**
   * Returns what kind of edge the finish makes.
   *
   * @return the edge, by the finish in small or capital letters; not null
   */
  public EdgeType edge() {
    return switch (finish.strip().toLowerCase(Locale.ROOT)) {
      case "" -> EdgeType.NOT_STATED;
      case SAME_FLOOR -> EdgeType.SAME_FLOOR;
      case STEP -> EdgeType.STEP;
      case FIXED_EDGE -> EdgeType.FIXED_EDGE;
      default -> EdgeType.OTHER_FINISH;
    };
  }

  private Object writeReplace() {
    return new Form(finish, higherBy, aboveSubfloor.orElse(null));
  }

  /** What is written: an optional part by itself, or null. Reading goes through the constructor and its checks. */
  private record Form(String finish, Length higherBy, Length aboveSubfloor) implements Serializable {

    private Object readResolve() {
      return new Beyond(finish, higherBy, Optional.ofNullable(aboveSubfloor));
    }
  }
}
