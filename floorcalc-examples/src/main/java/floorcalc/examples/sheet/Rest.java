package floorcalc.examples.sheet;

import floorcalc.measure.Length;
import java.util.Objects;

/**
 * A rectangle of a board that is not cut yet.
 *
 * @param length its length along the board, not null
 * @param width its width, not null
 */
public record Rest(Length length, Length width) {
  /** Checks that no part is null. */
  public Rest {
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(width, "width");
  }
}
