package floorcalc.plan;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * A row of a bay: all pieces between two neighbouring row lines.
 *
 * @param row its number, from 1 at the starting wall
 * @param coverWidth what the row shows: the width of its widest piece, not null
 * @param pieces its pieces from low x to high x in the frame of the bay, run by run; not null
 * @since 0.1
 */
public record Row(int row, Length coverWidth, List<LaidPiece> pieces) implements Serializable {
  /** Checks that no part is null and copies the lists given. */
  public Row {
    Objects.requireNonNull(pieces, "pieces");
    Objects.requireNonNull(coverWidth, "coverWidth");
    pieces = List.copyOf(pieces);
  }
}
