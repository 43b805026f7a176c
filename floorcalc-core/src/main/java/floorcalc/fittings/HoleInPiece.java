package floorcalc.fittings;

import floorcalc.measure.Length;
import floorcalc.outline.Ring;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a hole for a pipe takes of one piece, measured on the board face up.
 *
 * @param piece the name of the piece, not null
 * @param fromStartEnd from its start end to the middle of the hole; negative or more than its length if that lies beyond an end; not null
 * @param fromStartEdge from its start edge to the middle of the hole, likewise; not null
 * @param width the width of the hole, not null
 * @param along by how much the middles of the two ends of a slot lie apart along the board, from the first to the second; 0 for a round
 *     hole; not null
 * @param across likewise across the board, negative if the second is nearer to the start edge; not null
 * @param open the side that the hole is opened to with straight sides; empty for a hole that is round, or that only bites into a side;
 *     not null
 * @param holdsMiddle whether the middle of the hole lies in this piece
 * @param sawn what is sawn out, measured from start end and start edge, arcs as chords; not null
 * @since 0.1
 */
public record HoleInPiece(String piece, Length fromStartEnd, Length fromStartEdge, Length width, Length along, Length across,
    Optional<BoardSide> open, boolean holdsMiddle, List<Ring> sawn) {
  /** Checks that no part is null and copies the list. */
  public HoleInPiece {
    Objects.requireNonNull(sawn, "sawn");
    Objects.requireNonNull(piece, "piece");
    Objects.requireNonNull(fromStartEnd, "fromStartEnd");
    Objects.requireNonNull(fromStartEdge, "fromStartEdge");
    Objects.requireNonNull(width, "width");
    Objects.requireNonNull(along, "along");
    Objects.requireNonNull(across, "across");
    Objects.requireNonNull(open, "open");
    sawn = List.copyOf(sawn);
  }

  /**
   * Tells whether it is a slot for several pipes.
   *
   * @return false for a round hole
   */
  public boolean isSlot() {
    return !along.isZero() || !across.isZero();
  }

  /**
   * Describes the hole for the drill.
   *
   * @param lengths how a length is written, not null
   * @return for example {@code "hole 42 wide, its middle 310 from the start end and 64 from the start edge"}, not null
   */
  public String inWords(Function<Length, String> lengths) {
    String name = (holdsMiddle ? "" : "part of a ") + (isSlot() ? "slot " : "hole ");
    String place = isSlot()
        ? ", from " + middle(fromStartEnd, fromStartEdge, lengths) + " to "
            + middle(fromStartEnd.plus(along), fromStartEdge.plus(across), lengths)
        : ", its middle " + place(fromStartEnd, "start end", lengths) + " and " + place(fromStartEdge, "start edge", lengths);
    return name + lengths.apply(width) + " wide" + place
        + open.map(side -> ", opened straight to the " + side.words()).orElse("");
  }

  private static String middle(Length along, Length across, Function<Length, String> lengths) {
    return "(" + lengths.apply(along) + ", " + lengths.apply(across) + ")";
  }

  private static String place(Length place, String side, Function<Length, String> lengths) {
    return place.isNegative() ? lengths.apply(place.negated()) + " outside the " + side : lengths.apply(place) + " from the " + side;
  }
}
