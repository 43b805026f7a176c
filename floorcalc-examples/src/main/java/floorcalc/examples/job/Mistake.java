package floorcalc.examples.job;

import java.util.Objects;

/**
 * One thing that is wrong with a job file or a file of readings.
 *
 * @param place where: a JSON Pointer such as {@code /rooms/0/outline}, a line and column where the text is not JSON, or a line
 *   and the name of a column of readings; not null
 * @param message what was found and what is allowed, on one line; not null
 */
public record Mistake(String place, String message) {
  /** Checks that no part is null. */
  public Mistake {
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(message, "message");
  }

  /**
   * Returns the mistake as one line.
   *
   * @return for example {@code "/board/perPack: found 0; must be a whole number from 1 to 10000"}, not null
   */
  @Override
  public String toString() {
    return place + ": " + message;
  }
}
