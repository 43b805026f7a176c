package floorcalc.finishing;

import floorcalc.fittings.GluedPart;
import floorcalc.fittings.HoleInPiece;
import floorcalc.fittings.PieceNotches;
import floorcalc.fittings.ThinPart;
import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/**
 * A laid piece out of which more is cut than its rectangle: notches, slants, holes.
 *
 * @param piece its name, not null
 * @param bay the name of its bay, not null
 * @param row its row, from 1
 * @param shape its rectangle and what is sawn off it, not null
 * @param thin what may break beside its notches, not null
 * @param holes its holes for pipes, not null
 * @param glued the parts that are glued back behind pipes, not null
 * @since 0.1
 */
public record PieceCut(String piece, String bay, int row, PieceNotches shape, List<ThinPart> thin, List<HoleInPiece> holes,
    List<GluedPart> glued) {
  /** Checks that no part is null and copies the lists. */
  public PieceCut {
    Objects.requireNonNull(thin, "thin");
    Objects.requireNonNull(holes, "holes");
    Objects.requireNonNull(glued, "glued");
    Objects.requireNonNull(piece, "piece");
    Objects.requireNonNull(bay, "bay");
    Objects.requireNonNull(shape, "shape");
    thin = List.copyOf(thin);
    holes = List.copyOf(holes);
    glued = List.copyOf(glued);
  }

  /**
   * Describes all that is cut, one text for each notch, hole and glued part.
   *
   * @param lengths how a length is written, not null
   * @return the texts, not null
   */
  public List<String> inWords(Function<Length, String> lengths) {
    List<String> words = new ArrayList<>();
    shape.notches().forEach(notch -> words.add(notch.inWords(lengths)));
    holes.forEach(hole -> words.add(hole.inWords(lengths)));
    glued.forEach(part -> words.add(part.inWords(lengths)));
    return List.copyOf(words);
  }
}
