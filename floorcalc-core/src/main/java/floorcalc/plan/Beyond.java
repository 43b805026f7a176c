package floorcalc.plan;

import floorcalc.measure.Length;
import java.util.Objects;

/**
 * The floor on the other side of a door.
 *
 * @param finish its finish, such as {@code "tile"} or {@code "same floor"}; not null, empty if not known
 * @param higherBy how much higher it is than this floor, negative if lower; not null
 */
public record Beyond(String finish, Length higherBy) {
  /** Checks that no part is null. */
  public Beyond {
    Objects.requireNonNull(finish, "finish");
    Objects.requireNonNull(higherBy, "higherBy");
  }

  /** Nothing is known about the floor beyond: taken as level. */
  public static final Beyond UNKNOWN = new Beyond("", Length.ZERO);
}
