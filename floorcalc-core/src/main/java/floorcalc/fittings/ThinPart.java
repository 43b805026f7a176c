package floorcalc.fittings;

import floorcalc.measure.Length;
import java.util.Objects;
import java.util.Optional;

/**
 * A part of a piece that is thin and long beside a notch or a hole, and may break when the board is handled.
 *
 * @param piece the name of the piece, not null
 * @param kind whether it is free at one end, not null
 * @param run which way it is long, not null
 * @param width its least width, not null
 * @param length how long it is, not null
 * @param fromStartEnd where it begins along the board, from the start end; not null
 * @param fromStartEdge where it begins across the board, from the start edge; not null
 * @param side the side of the board that it lies along, empty if notches lie on both sides of it; not null
 * @param beyond what lies beyond that side, not null
 * @since 0.1
 */
public record ThinPart(String piece, Kind kind, Run run, Length width, Length length, Length fromStartEnd, Length fromStartEdge,
    Optional<BoardSide> side, Beyond beyond) {
  /**
   * What lies beyond the side of the board that a thin part lies along.
   *
   * @since 0.1
   */
  public enum Beyond {
    /** Another board: the row line or the joint could lie elsewhere. */
    BOARD,
    /** The gap: the floor itself is as narrow there. */
    GAP
  }

  /**
   * How a thin part hangs on the board.
   *
   * @since 0.1
   */
  public enum Kind {
    /** Free at one end: it snaps off. */
    TONGUE,
    /** Held at both ends, between two notches, or between a notch or hole and a side. */
    BRIDGE
  }

  /**
   * Which way a thin part is long.
   *
   * @since 0.1
   */
  public enum Run {
    /** Along the board, with the grain. */
    ALONG,
    /** Across the board: the grain is short there, it breaks most easily. */
    ACROSS
  }

  /** Checks that no part is null. */
  public ThinPart {
    Objects.requireNonNull(piece, "piece");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(run, "run");
    Objects.requireNonNull(width, "width");
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(fromStartEnd, "fromStartEnd");
    Objects.requireNonNull(fromStartEdge, "fromStartEdge");
    Objects.requireNonNull(side, "side");
    Objects.requireNonNull(beyond, "beyond");
  }

  /**
   * Returns how the layout would have to move so that the part is gone or as wide as asked.
   *
   * @param leastTongue the width asked for, not null
   * @return what to do, not null
   */
  public String advice(Length leastTongue) {
    Length more = leastTongue.minus(width);
    if (beyond == Beyond.GAP) {
      return "the floor is no wider there, whatever the layout: lay the part as a piece of its own, or leave it out and cover the place";
    }
    if (run == Run.ALONG) {
      String to = side.map(s -> s == BoardSide.START_EDGE ? " away from the starting wall to put a row line on the notch, or by "
          + more + " towards it to leave " + leastTongue : " towards the starting wall to put a row line on the notch, or by " + more
          + " away from it to leave " + leastTongue).orElse(" to put a row line on the notch");
      return "move the start line by " + width + to + "; or lay a wider board there, or glue the part down on its own";
    }
    String place = side.map(s -> s == BoardSide.START_END ? fromStartEnd.plus(width) : fromStartEnd).orElse(fromStartEnd)
        + " from the start end of the piece";
    return "let two pieces meet at the notch: an end joint " + place + (side.isPresent() ? ", or one at least " + more
        + " farther from the notch" : "");
  }

  /**
   * Returns the part in words.
   *
   * @return for example {@code "a tongue 22 mm wide and 310 mm long at the far edge, from 0 mm to 310 mm from the start end"}, not null
   */
  public String inWords() {
    String name = kind == Kind.TONGUE ? "a tongue " : "a bridge ";
    Length begins = run == Run.ALONG ? fromStartEnd : fromStartEdge;
    return name + width + " wide and " + length + " long " + (run == Run.ALONG ? "along" : "across") + " the board, "
        + side.map(s -> "at the " + s.words()).orElse("between notches") + ", from " + begins + " to " + begins.plus(length)
        + " from the start " + (run == Run.ALONG ? "end" : "edge");
  }
}
