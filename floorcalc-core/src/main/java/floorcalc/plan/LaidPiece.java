package floorcalc.plan;

import floorcalc.outline.Ring;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * A piece of board as it lies on the floor.
 *
 * @param piece its name: bay, row and number in the row, such as {@code "study-1.1.1"}; not null
 * @param run the run of the row that it belongs to, from 1
 * @param kind what it is in its run, not null
 * @param outline its outline in room coordinates, not null
 * @param holes holes in it, in room coordinates; not null
 * @param from the part of the board that it is cut from, not null
 * @since 0.1
 */
public record LaidPiece(String piece, int run, PieceKind kind, Ring outline, List<Ring> holes, Cut from)
    implements Serializable {
  /** Checks that no part is null and copies the lists given. */
  public LaidPiece {
    Objects.requireNonNull(holes, "holes");
    Objects.requireNonNull(piece, "piece");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(outline, "outline");
    holes = List.copyOf(holes);
    Objects.requireNonNull(from, "from");
  }
}
