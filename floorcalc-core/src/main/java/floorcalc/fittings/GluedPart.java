package floorcalc.fittings;

import floorcalc.measure.Length;
import java.util.Objects;
import java.util.function.Function;

/**
 * The part of a board that is sawn off through the middle of a hole, and glued back behind the pipe once the board lies.
 * <p>
 * Towards an end the board is sawn square through the middle of the hole over its whole width. Towards an edge two cuts go from the
 * two sides of the hole square to the edge, and the block between them is glued back.
 *
 * @param piece the name of the piece, not null
 * @param side the side of the board that the part has, not null
 * @param from where the cut is, or the first of two, from the start end; not null
 * @param to where the second of two cuts is; the same as {@code from} towards an end; not null
 * @param depth how long the part is: from the middle of the hole to that side; not null
 * @since 0.1
 */
public record GluedPart(String piece, BoardSide side, Length from, Length to, Length depth) {
  /** Checks that no part is null. */
  public GluedPart {
    Objects.requireNonNull(piece, "piece");
    Objects.requireNonNull(side, "side");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(depth, "depth");
  }

  /**
   * Describes the cut and the part.
   *
   * @param lengths how a length is written, not null
   * @return one clause, not null
   */
  public String inWords(Function<Length, String> lengths) {
    return side.isEnd()
        ? "saw square across through the middle of the hole, " + lengths.apply(from) + " from the start end; glue the part at the "
            + side.words() + ", " + lengths.apply(depth) + " long, back behind the pipe"
        : "saw from both sides of the hole square to the " + side.words() + ", at " + lengths.apply(from) + " and " + lengths.apply(to)
            + " from the start end; glue the block, " + lengths.apply(to.minus(from)) + " long and " + lengths.apply(depth)
            + " deep to the middle of the hole, back behind the pipe";
  }
}
