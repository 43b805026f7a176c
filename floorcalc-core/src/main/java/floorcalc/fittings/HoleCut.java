package floorcalc.fittings;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * How the boards are cut for one pipe, or for several that share a slot.
 *
 * @param pipes the pipes, not null, not empty
 * @param from the middle of the hole, or of one round end of a slot; in the frame of the boards; not null
 * @param to the middle of the other round end, the same for a round hole; not null
 * @param width the diameter of the hole, or the width of the slot; not null
 * @param way how the boards are got round the pipe, not null
 * @param parts what is sawn out of each piece that the hole touches, not null
 * @param glued the part that is glued back, if there is one; not null
 * @param wood the least wood from the hole to a side of its board, empty if it reaches one; not null
 * @since 0.1
 */
public record HoleCut(List<PipeAt> pipes, Point from, Point to, Length width, Way way, List<HoleInPiece> parts,
    Optional<GluedPart> glued, Optional<Length> wood) {
  /**
   * How boards are got round a pipe.
   *
   * @since 0.1
   */
  public enum Way {
    /** The hole touches no laid board. */
    IN_THE_GAP,
    /** A hole within one board, which is sawn through the hole; a part is glued back. */
    HOLE,
    /** The hole passes the edge of the floor, or leaves too little wood to it: a notch open to that side, nothing glued. */
    OPEN_NOTCH,
    /** Too little wood would be left to a joint or to a row edge: opened to it, the board is slid on from there. */
    OPEN_TO_JOINT,
    /** A joint or a row edge runs through the hole: each board has its part, nothing is glued. */
    SHARED
  }

  /** Checks that no part is null and copies the lists. */
  public HoleCut {
    Objects.requireNonNull(pipes, "pipes");
    Objects.requireNonNull(parts, "parts");
    pipes = List.copyOf(pipes);
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(width, "width");
    Objects.requireNonNull(way, "way");
    parts = List.copyOf(parts);
    Objects.requireNonNull(glued, "glued");
    Objects.requireNonNull(wood, "wood");
  }

  /**
   * Returns the names of the pipes.
   *
   * @return for example {@code "pipe 1 and pipe 2"}, not null
   */
  public String name() {
    return pipes.stream().map(PipeAt::name).collect(Collectors.joining(" and "));
  }

  /**
   * Tells in a few sentences how the boards are cut.
   *
   * @return the text, each length with its unit; not null
   */
  public String inWords() {
    String where = parts.stream().map(part -> part.piece() + ": " + part.inWords(Length::toString)).collect(Collectors.joining("; "));
    return switch (way) {
      case IN_THE_GAP -> "it stands clear of the laid boards: nothing is cut";
      case HOLE -> where + "; " + glued.map(part -> part.inWords(Length::toString)).orElse("");
      case OPEN_NOTCH -> where + "; it is open to the edge of the floor, nothing is glued back";
      case OPEN_TO_JOINT -> where + "; too little wood is left there, slide the board on from that side, nothing is glued back";
      case SHARED -> where + "; the boards meet in the hole, nothing is glued back";
    };
  }
}
