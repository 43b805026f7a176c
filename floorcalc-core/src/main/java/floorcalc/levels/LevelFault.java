package floorcalc.levels;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * What is wrong with readings of a floor, and with which. Readings are counted from 1, in the order in which they were given.
 *
 * @param kind what is wrong, not null
 * @param readings the numbers of the readings concerned, may be empty; not null
 * @param message one sentence for people: what, where, the value, the bound and what to do; not null
 * @since 0.1
 */
public record LevelFault(Kind kind, List<Integer> readings, String message) implements Serializable {
  /** Checks that no part is null and copies the list. */
  public LevelFault {
    Objects.requireNonNull(readings, "readings");
    Objects.requireNonNull(kind, "kind");
    readings = List.copyOf(readings);
    Objects.requireNonNull(message, "message");
  }

  /**
   * What can be wrong with readings.
   *
   * @since 0.1
   */
  public enum Kind {
    /** Fewer than three readings. */
    TOO_FEW("too-few-readings"),
    /** More than {@link Levels#MOST} readings. */
    TOO_MANY("too-many-readings"),
    /** Two readings of one place. */
    READ_TWICE("place-read-twice"),
    /** All readings lie on one line, or so nearly that no plane can be laid through them. */
    IN_LINE("readings-in-line"),
    /** A place or a height is further from zero than {@link Levels#FURTHEST}. */
    BEYOND_LIMIT("reading-beyond-limit");

    private final String code;

    Kind(String code) {
      this.code = code;
    }

    /**
     * Returns the stable name for programs.
     *
     * @return small letters and hyphens, not null
     */
    public String code() {
      return code;
    }
  }
}
