package floorcalc.fittings;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What is sawn off the rectangle of a piece, and out of it: its notches, corners, slants and holes.
 * <p>
 * The outline of a piece touches each side of its rectangle. Between two places where it touches, what lies outside of it is one part
 * that falls off; so each part is open to one side or to two that meet at a corner of the board. Corners of the outline within a
 * micrometre of a side count as on it. Rectangle less all parts is the piece, exactly. Immutable.
 *
 * @since 0.1
 */
public final class PieceNotches {
  private final BoardPiece piece;
  private final List<Notch> notches;

  private PieceNotches(BoardPiece piece, List<Notch> notches) {
    this.piece = piece;
    this.notches = List.copyOf(notches);
  }

  /**
   * Compares a piece with its rectangle.
   *
   * @param piece the piece, not null
   * @return its notches, from the start corner round the board against the clock, then its holes; with the step
   *     {@code rectangle-less-notches}; not null
   */
  public static Calculated<PieceNotches> of(BoardPiece piece) {
    Ring ring = piece.placed();
    List<Notch> notches = new ArrayList<>();
    long length = piece.length().toNanometres();
    long width = piece.width().toNanometres();
    RectangleSides sides = new RectangleSides(length, width);
    int n = ring.size();
    int first = first(ring, sides);
    List<Point> chain = new ArrayList<>();
    for (int k = 0; k <= n; k++) {
      Point corner = ring.corners().get((first + k) % n);
      chain.add(corner);
      if (k > 0 && sides.isOn(corner)) {
        if (chain.size() > 2 || !sides.areOnOneSide(chain.get(0), corner)) {
          notches.add(notch(chain, sides));
        }
        chain.clear();
        chain.add(corner);
      }
    }
    for (Ring hole : piece.placedHoles()) {
      notches.add(new Notch(Notch.Kind.HOLE, Set.of(), hole.reversed(), lines(hole.corners(), true)));
    }
    Area off = notches.stream().map(Notch::area).reduce(Area.ZERO, Area::plus);
    Area left = piece.length().times(piece.width()).minus(off);
    Step step = new Step("rectangle-less-notches", "How large is the piece: its rectangle less all that is sawn off?",
        "A = l * b - n", List.of(Term.of("l", "length of the rectangle", piece.length()),
            Term.of("b", "its width", piece.width()), Term.of("n", "area of all notches and holes", off)), left, Source.DEFINITION);
    return Calculated.of(new PieceNotches(piece, notches), List.of(step));
  }

  /** The corner of the outline that comes first on a walk round the rectangle from its start corner. */
  private static int first(Ring ring, RectangleSides sides) {
    int first = -1;
    for (int i = 0; i < ring.size(); i++) {
      Point corner = ring.corners().get(i);
      if (sides.isOn(corner) && (first < 0 || sides.walked(corner) < sides.walked(ring.corners().get(first)))) {
        first = i;
      }
    }
    return first;
  }

  private static Notch notch(List<Point> chain, RectangleSides sides) {
    Point from = chain.get(0);
    Point to = chain.get(chain.size() - 1);
    List<Point> removed = new ArrayList<>();
    removed.add(from);
    removed.addAll(sides.cornersBetween(from, to));
    removed.add(to);
    for (int i = chain.size() - 2; i > 0; i--) {
      removed.add(chain.get(i));
    }
    EnumSet<BoardSide> open = sides.between(from, to);
    return new Notch(kind(open, chain, sides), open, Ring.of(removed), lines(chain, false));
  }

  private static Notch.Kind kind(EnumSet<BoardSide> open, List<Point> chain, RectangleSides sides) {
    if (open.size() == 1) {
      return open.iterator().next().isEnd() ? Notch.Kind.END_NOTCH : Notch.Kind.EDGE_NOTCH;
    }
    Point from = chain.get(0);
    Point to = chain.get(chain.size() - 1);
    boolean straight = chain.size() == 2;
    boolean across = Math.abs(from.yNanometres() - to.yNanometres()) == sides.width();
    boolean along = Math.abs(from.xNanometres() - to.xNanometres()) == sides.length();
    if (across && along && !straight) {
      return Notch.Kind.END_AND_EDGE;
    }
    return across ? straight ? Notch.Kind.SLANT : Notch.Kind.SHAPED_END
        : along ? straight ? Notch.Kind.TAPER : Notch.Kind.SHAPED_EDGE : Notch.Kind.CORNER;
  }

  private static List<SawLine> lines(List<Point> points, boolean closed) {
    List<SawLine> lines = new ArrayList<>();
    for (int i = 0; i + 1 < points.size(); i++) {
      lines.add(new SawLine(points.get(i), points.get(i + 1)));
    }
    if (closed) {
      lines.add(new SawLine(points.get(points.size() - 1), points.get(0)));
    }
    return lines;
  }

  /**
   * Returns the piece.
   *
   * @return the piece that was compared, not null
   */
  public BoardPiece piece() {
    return piece;
  }

  /**
   * Returns what is sawn off and out.
   *
   * @return an unmodifiable list, empty if the piece is a rectangle; not null
   */
  public List<Notch> notches() {
    return notches;
  }

  /**
   * Returns the area of the piece: that of its rectangle less all notches.
   *
   * @return the area, exact
   */
  public Area area() {
    return notches.stream().map(Notch::area).reduce(piece.length().times(piece.width()), Area::minus);
  }

  /**
   * Returns the outline of the piece, measured from start end and start edge.
   *
   * @return the ring, counter-clockwise; not null
   */
  public Ring outline() {
    return piece.placed();
  }

  /**
   * Returns the length of the rectangle.
   *
   * @return along the board, not null
   */
  public Length length() {
    return piece.length();
  }

  /**
   * Returns the width of the rectangle.
   *
   * @return across the board, not null
   */
  public Length width() {
    return piece.width();
  }
}
