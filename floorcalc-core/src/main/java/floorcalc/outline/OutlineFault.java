package floorcalc.outline;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What is wrong with an outline, and where. Walls and corners are counted from 1, in the order in which they were given.
 *
 * @param kind what is wrong, not null
 * @param ring the ring: 0 for the walls of the room, otherwise the number of the void; a fault between two rings names
 *     the one with the higher number
 * @param walls the walls of that ring concerned, by number; for corners without a wall of their own, their number; may
 *     be empty, not null
 * @param place where, not null, empty if the fault has no one place
 * @param message one sentence for people: what, where, the value, the bound and what to do; not null
 * @since 0.1
 */
public record OutlineFault(Kind kind, int ring, List<Integer> walls, Optional<Point> place, String message) {

  /** Checks that no part is null and copies the list. */
  public OutlineFault {
    Objects.requireNonNull(walls, "walls");
    Objects.requireNonNull(kind, "kind");
    walls = List.copyOf(walls);
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(message, "message");
  }

  /**
   * What can be wrong with an outline.
   *
   * @since 0.1
   */
  public enum Kind {
    /** A ring has fewer than three corners. */
    TOO_FEW_CORNERS("too-few-corners"),
    /** The rings together have more corners than {@link OutlineCheck#MOST_CORNERS}. */
    TOO_MANY_CORNERS("too-many-corners"),
    /** A coordinate is further from zero than {@link OutlineCheck#FURTHEST}. */
    CORNER_BEYOND_LIMIT("corner-beyond-limit"),
    /** Two corners that follow each other are the same. */
    WALL_WITHOUT_LENGTH("wall-without-length"),
    /** All corners of a ring lie on one line. */
    NO_AREA("no-area"),
    /** Two walls of a ring cross. */
    WALLS_CROSS("walls-cross"),
    /** Walls of a ring that are not neighbours meet at one place. */
    WALLS_TOUCH("walls-touch"),
    /** Two walls of a ring that are not neighbours run along each other. */
    WALLS_OVERLAP("walls-overlap"),
    /** A wall runs straight back along the one before it. */
    WALL_FOLDS_BACK("wall-folds-back"),
    /** A void lies beyond the walls of the room. */
    VOID_OUTSIDE("void-outside"),
    /** A wall of a void crosses a wall of the room. */
    VOID_CROSSES_OUTLINE("void-crosses-outline"),
    /** A void meets a wall of the room. */
    VOID_TOUCHES_OUTLINE("void-touches-outline"),
    /** Walls of two voids cross. */
    VOIDS_CROSS("voids-cross"),
    /** Two voids meet. */
    VOIDS_TOUCH("voids-touch"),
    /** A void lies within another. */
    VOID_WITHIN_VOID("void-within-void"),
    /** There are more faults than are listed. */
    MORE_FAULTS("more-faults");

    private final String code;

    Kind(String code) {
      this.code = code;
    }

    /**
     * Returns the stable name, for programs.
     *
     * @return lower case with hyphens, not null
     */
    public String code() {
      return code;
    }
  }
}
