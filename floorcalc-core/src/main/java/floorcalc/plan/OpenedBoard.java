package floorcalc.plan;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * A board taken from a pack.
 *
 * @param board its number, from 1 in the order of opening
 * @param length its length, not null
 * @param openedInRow the bay and row in which it is first cut or laid, such as {@code "study-1.1"}; not null
 * @since 0.1
 */
public record OpenedBoard(int board, Length length, String openedInRow) implements Serializable {
  /** Checks that no part is null. */
  public OpenedBoard {
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(openedInRow, "openedInRow");
  }
}
