package floorcalc.drawing;

import floorcalc.fittings.BoardPiece;
import floorcalc.fittings.HoleCut;
import floorcalc.measure.Length;
import java.util.List;
import java.util.Objects;

/**
 * A piece of a board face up, as it lies with the starting wall behind you: what is notched out of it, the holes for pipes, the saw cuts through
 * them and the parts glued back, each with its place from the start end and the start edge. To one scale. Immutable and thread-safe.
 * <p>
 * The sheet is black and grey on white and keeps to A4 and US Letter; every length of the SVG is a millimetre on paper. Texts never overlap; what
 * has no room is said in a note, and so is every cut in words. The same piece gives the same bytes everywhere.
 * <pre>{@code
 * String svg = PieceDrawing.of(piece).with(PipeHoles.of(pipes, List.of(piece), allowance, limits).value()).toSvg();
 * }</pre>
 *
 * @since 0.1
 */
public final class PieceDrawing {
  private final BoardPiece piece;
  private final List<HoleCut> holes;
  private final String title;
  private final Measures measures;

  private PieceDrawing(BoardPiece piece, List<HoleCut> holes, String title, Measures measures) {
    this.piece = piece;
    this.holes = holes;
    this.title = title;
    this.measures = measures;
  }

  /**
   * Returns a drawing of a piece, in millimetres.
   *
   * @param piece the piece, not null
   * @return the drawing, not null
   */
  public static PieceDrawing of(BoardPiece piece) {
    return new PieceDrawing(Objects.requireNonNull(piece, "piece"), List.of(), piece.name(), Measures.MILLIMETRES);
  }

  /**
   * Returns the same drawing with holes for pipes.
   *
   * @param cuts how boards are cut for the pipes, not null; what is cut out of other pieces is left out
   * @return the drawing, not null
   */
  public PieceDrawing with(List<HoleCut> cuts) {
    return new PieceDrawing(piece, List.copyOf(Objects.requireNonNull(cuts, "cuts")), title, measures);
  }

  /**
   * Returns the same drawing with a title other than the name of the piece.
   *
   * @param words the title, not null
   * @return the drawing, not null
   */
  public PieceDrawing titled(String words) {
    return new PieceDrawing(piece, holes, Objects.requireNonNull(words, "words"), measures);
  }

  /**
   * Returns the same drawing in other units.
   *
   * @param units how lengths are written, not null
   * @return the drawing, not null
   */
  public PieceDrawing in(Measures units) {
    return new PieceDrawing(piece, holes, title, Objects.requireNonNull(units, "units"));
  }

  /**
   * Draws.
   *
   * @return an SVG element that needs nothing from outside, to be kept as a file or put into a page; its identifiers begin with
   *     {@code piece}; it ends in a line feed; not null
   */
  public String toSvg() {
    return new PieceComposition(this).draw();
  }

  BoardPiece piece() {
    return piece;
  }

  List<HoleCut> holes() {
    return holes;
  }

  String title() {
    return title;
  }

  Measures measures() {
    return measures;
  }

  /** How a length is written in a sentence. */
  String words(Length length) {
    return measures.withUnit(length);
  }
}
