package floorcalc.plan;

import floorcalc.outline.Direction;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * How the direction of the boards is chosen. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class DirectionChoice implements Serializable {
  /** Along the longest wall of each room, from 0 up to 180 degrees; of equally long walls the first. */
  public static final DirectionChoice LONGEST_WALL = new DirectionChoice("longest-wall", null);
  /**
   * Of the directions along and square to the longest walls, for each room alone, the one that needs the fewest boards. With
   * rows as needed, the first row is chosen for fewest boards too, as with {@link floorcalc.rows.RowWay#FEWEST_BOARDS}.
   */
  public static final DirectionChoice FEWEST_BOARDS = new DirectionChoice("fewest-boards", null);

  private static final long serialVersionUID = 1L;

  private final String name;
  private final Direction direction;

  private DirectionChoice(String name, Direction direction) {
    this.name = name;
    this.direction = direction;
  }

  /**
   * Returns the choice of a fixed direction.
   *
   * @param direction the way the boards run, not null
   * @return the choice, not null
   */
  public static DirectionChoice of(Direction direction) {
    return new DirectionChoice("fixed", Objects.requireNonNull(direction, "direction"));
  }

  /**
   * Returns the fixed direction, if there is one.
   *
   * @return the direction, not null, may be empty
   */
  public Optional<Direction> fixed() {
    return Optional.ofNullable(direction);
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof DirectionChoice other && name.equals(other.name)
        && Objects.equals(direction, other.direction);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, direction);
  }

  /**
   * Returns the choice in words.
   *
   * @return {@code "longest-wall"}, {@code "fewest-boards"} or the angle, not null
   */
  @Override
  public String toString() {
    return direction == null ? name : direction.toString();
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return direction != null ? of(direction) : name.equals(FEWEST_BOARDS.name) ? FEWEST_BOARDS : LONGEST_WALL;
  }
}
