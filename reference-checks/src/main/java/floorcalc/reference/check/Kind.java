package floorcalc.reference.check;

import java.util.Objects;
import java.util.Optional;

/** What stands behind a figure. */
public enum Kind {
  /** Read in the work itself, or in a text of the body that issues it. */
  READ("published, read in the source"),
  /** Read in another text that quotes the work. */
  QUOTED("published, quoted by another"),
  /** Done by many in the trade; no published source was found. */
  COMMON_PRACTICE("common practice, no source"),
  /** Recalled, not seen in any text. Proves little, and is counted apart. */
  FROM_MEMORY("from memory"),
  /** Follows from the way the case was made up. */
  CONSTRUCTED("constructed"),
  /** Worked out by other code, apart from this library, from figures that are published or made up. */
  WORKED_APART("worked out apart from this library"),
  /** The answer of a general-purpose library to the same question. */
  DIFFERENTIAL("against a general-purpose library");

  private final String words;

  Kind(String words) {
    this.words = words;
  }

  /**
   * Returns the kind in plain words.
   *
   * @return the words, not null
   */
  public String words() {
    return words;
  }

  /**
   * Returns whether a figure of this kind was printed by a source that was seen.
   *
   * @return true for figures read in the source or quoted by another
   */
  public boolean isPublished() {
    return this == READ || this == QUOTED;
  }

  /**
   * Turns the word by which a table says how sure a row is into a kind.
   *
   * @param status the word as it stands in the table, not null
   * @return the kind; empty for rows too doubtful to be checked against
   * @throws IllegalArgumentException if no table uses the word
   */
  public static Optional<Kind> ofStatus(String status) {
    Objects.requireNonNull(status, "status");
    return switch (status) {
      case "verified", "read" -> Optional.of(READ);
      case "verified-secondary", "seen", "seen-corrected", "quoted" -> Optional.of(QUOTED);
      case "common practice" -> Optional.of(COMMON_PRACTICE);
      case "memory" -> Optional.of(FROM_MEMORY);
      case "constructed" -> Optional.of(CONSTRUCTED);
      case "computed" -> Optional.of(WORKED_APART);
      case "memory-uncertain" -> Optional.empty();
      default -> throw new IllegalArgumentException("no kind of figure is called " + status);
    };
  }
}
