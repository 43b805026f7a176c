package floorcalc.examples.sheet;

import floorcalc.measure.Length;
import java.util.List;
import java.util.Objects;

/**
 * What is left of a board beside a piece: a rectangle.
 *
 * @param length its length along the board, not null
 * @param width its width, not null
 * @param keptFor the pieces that are cut from it later, in laying order; empty if it is over; not null
 */
public record Rest(Length length, Length width, List<String> keptFor) {
  /** Checks that no part is null and copies the list. */
  public Rest {
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(width, "width");
    keptFor = List.copyOf(keptFor);
  }
}
