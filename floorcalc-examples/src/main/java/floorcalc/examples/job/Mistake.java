package floorcalc.examples.job;

import java.util.Objects;

/**
 * One thing that is wrong with a job file or a file of readings. Its code is one of {@link Kind}, or that of the
 * {@linkplain floorcalc.outline.OutlineFault fault} of an outline or of the {@linkplain floorcalc.working.Finding finding} of
 * a survey that stands in the way.
 *
 * @param code a stable name in lower case with hyphens, for programs, explained in {@code docs/errors.md}; not null
 * @param place where: a JSON Pointer such as {@code /rooms/0/outline}, a line and column where the text is not JSON, or a line
 *   and the name of a column of readings; not null
 * @param message what was found and what is allowed, on one line; not null
 */
public record Mistake(String code, String place, String message) {
  /** Checks that no part is null. */
  public Mistake {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(message, "message");
  }

  /**
   * A mistake of a kind.
   *
   * @param kind what is wrong, not null
   * @param place where, not null
   * @param message what was found and what is allowed, on one line; not null
   */
  Mistake(Kind kind, String place, String message) {
    this(kind.code, place, message);
  }

  /**
   * Returns the mistake as one line, without its code.
   *
   * @return for example {@code "/board/perPack: found 0; must be a whole number from 1 to 10000"}, not null
   */
  @Override
  public String toString() {
    return place + ": " + message;
  }

  /** What can be wrong with a file, beside the outline or the survey of a room. */
  public enum Kind {
    /** The text is not JSON, or not UTF-8. */
    NOT_JSON("not-json"),
    /** The file, its nesting, or what it asks for is beyond a limit. */
    TOO_LARGE("too-large"),
    /** An object has a field that is not known there. */
    UNKNOWN_FIELD("unknown-field"),
    /** A field that must be there is not. */
    MISSING_FIELD("missing-field"),
    /** A name or a thing that may stand once stands twice. */
    GIVEN_TWICE("given-twice"),
    /** A value is of another type, form or size than is allowed. */
    NOT_ALLOWED("not-allowed"),
    /** A value is allowed as such, but not beside another one of the file. */
    DOES_NOT_FIT("does-not-fit"),
    /** The expansion gap leaves no floor to lay. */
    GAP_LEAVES_NO_FLOOR("gap-leaves-no-floor"),
    /** A line of a file of readings cannot be read. */
    UNREADABLE_READINGS("unreadable-readings"),
    /** There are more mistakes than are listed. */
    MORE_MISTAKES("more-mistakes");

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
