package floorcalc.fittings;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Extent;
import floorcalc.outline.Ring;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * One part that is sawn off the rectangle of a piece, or out of it. All places are measured on the board face up, along from its start
 * end and across from its start edge.
 *
 * @param kind what it is, not null
 * @param open the sides of the rectangle that it takes a part of, none for a hole, two next to each other for a corner; not null
 * @param removed the part that falls off, counter-clockwise; not null
 * @param sawn the saw lines in order, with the board on their left, an arc as its chords; not null, not empty
 * @since 0.1
 */
public record Notch(Kind kind, Set<BoardSide> open, Ring removed, List<SawLine> sawn) {
  /**
   * What a part that falls off is.
   *
   * @since 0.1
   */
  public enum Kind {
    /** Open to an edge alone. */
    EDGE_NOTCH,
    /** Open to an end alone. */
    END_NOTCH,
    /** A corner of the board that is cut out: neither over its whole width nor over its whole length. */
    CORNER,
    /** One straight line from edge to edge: an end sawn at a slant. */
    SLANT,
    /** One straight line from end to end: a taper. */
    TAPER,
    /** Several lines over the whole length and the whole width: an end and an edge sawn to shape, as at a corner of the room. */
    END_AND_EDGE,
    /** Several lines from edge to edge: an end sawn to shape. */
    SHAPED_END,
    /** Several lines from end to end: an edge sawn to shape. */
    SHAPED_EDGE,
    /** A hole, open to no side. */
    HOLE
  }

  private static final int CURVE = 5;
  /** What saw lines turn inwards in all, in degrees, from which on they are a notch and not a bent taper. */
  private static final double NOTCH_TURN = 45;

  /** Checks that no part is null and copies set and list. */
  public Notch {
    Objects.requireNonNull(kind, "kind");
    open = java.util.Collections.unmodifiableSet(new TreeSet<>(open));
    Objects.requireNonNull(removed, "removed");
    sawn = List.copyOf(sawn);
  }

  /**
   * Returns where it begins along the board.
   *
   * @return from the start end to its nearest place, not negative
   */
  public Length fromStartEnd() {
    return extent().low().x();
  }

  /**
   * Returns where it begins across the board.
   *
   * @return from the start edge to its nearest place, not negative
   */
  public Length fromStartEdge() {
    return extent().low().y();
  }

  /**
   * Returns how far it reaches along the board.
   *
   * @return the length, not null
   */
  public Length along() {
    return extent().width();
  }

  /**
   * Returns how far it reaches across the board.
   *
   * @return the length, not null
   */
  public Length across() {
    return extent().height();
  }

  /**
   * Returns the area of what falls off.
   *
   * @return the area, exact
   */
  public Area area() {
    return removed.area();
  }

  /**
   * Tells whether all its saw lines run along the board or square to it.
   *
   * @return true if it is a rectangle or made of rectangles
   */
  public boolean isSquare() {
    return sawn.stream().allMatch(SawLine::isSquare);
  }

  /**
   * Tells whether it has so many saw lines at a slant that it is a curve, given by chords.
   *
   * @return true for five slanting lines and more
   */
  public boolean isCurve() {
    return sawn.stream().filter(line -> !line.isSquare()).count() >= CURVE;
  }

  /**
   * Tells whether the board reaches round it: it is a notch or a hole, not a taper, a slant, or both at a corner of the room.
   *
   * @return true for a hole, and for a cut whose saw lines turn inwards, towards the board, by 45 degrees and more in all
   */
  public boolean turnsInwards() {
    double turn = kind == Kind.HOLE ? NOTCH_TURN : 0;
    for (int i = 0; i + 1 < sawn.size(); i++) {
      turn += Math.max(0, -turn(sawn.get(i), sawn.get(i + 1)));
    }
    return turn >= NOTCH_TURN;
  }

  /** By how much a saw line turns to the left of the one before, in degrees. */
  private static double turn(SawLine before, SawLine after) {
    double ax = before.to().xNanometres() - before.from().xNanometres();
    double ay = before.to().yNanometres() - before.from().yNanometres();
    double bx = after.to().xNanometres() - after.from().xNanometres();
    double by = after.to().yNanometres() - after.from().yNanometres();
    return StrictMath.toDegrees(StrictMath.atan2(ax * by - ay * bx, ax * bx + ay * by));
  }

  private Extent extent() {
    return removed.extent();
  }

  /** Tells whether its removed part is its whole rectangle. */
  private boolean isRectangle() {
    return isSquare() && along().times(across()).equals(area());
  }

  /**
   * Describes it for the saw.
   *
   * @param lengths how a length is written, not null
   * @return for example {@code "notch in the far edge, 210 to 390 from the start end, 45 deep"}, not null
   */
  public String inWords(Function<Length, String> lengths) {
    Length x0 = fromStartEnd();
    Length x1 = x0.plus(along());
    Length y0 = fromStartEdge();
    Length y1 = y0.plus(across());
    String alongRange = lengths.apply(x0) + " to " + lengths.apply(x1) + " from the start end";
    String acrossRange = lengths.apply(y0) + " to " + lengths.apply(y1) + " from the start edge";
    String text = switch (kind) {
      case EDGE_NOTCH -> "notch in the " + sides() + ", " + alongRange + ", " + lengths.apply(across()) + " deep";
      case END_NOTCH -> "notch in the " + sides() + ", " + acrossRange + ", " + lengths.apply(along()) + " deep";
      case CORNER -> "corner out at " + sides() + ", " + lengths.apply(along()) + " along, " + lengths.apply(across()) + " across";
      case END_AND_EDGE -> sides() + " sawn to shape";
      case SHAPED_END -> sides(true) + " sawn to shape over the whole width, " + lengths.apply(along()) + " at the most";
      case SHAPED_EDGE -> sides(false) + " sawn to shape over the whole length, " + lengths.apply(across()) + " at the most";
      case SLANT -> sides(true) + " sawn at a slant, " + slant();
      case TAPER -> "tapered at the " + sides(false) + ", " + slant();
      case HOLE -> "cut-out, " + alongRange + ", " + acrossRange;
    };
    return isRectangle() ? text : text + "; saw " + (isCurve() ? "the curve " : "") + "through " + points(lengths)
        + (kind == Kind.SLANT || kind == Kind.TAPER || isSquare() ? "" : slants());
  }

  private String sides() {
    return open.stream().map(BoardSide::words).collect(Collectors.joining(" and "));
  }

  private String sides(boolean ends) {
    return open.stream().filter(side -> side.isEnd() == ends).map(BoardSide::words).collect(Collectors.joining());
  }

  private String slant() {
    return sawn.get(0).degreesToEdge().toPlainString() + " degrees to the edge";
  }

  /** The angles of the slanting lines, each once, unless it is a curve. */
  private String slants() {
    return isCurve() ? "" : sawn.stream().filter(line -> !line.isSquare()).map(line -> line.degreesToEdge().toPlainString()).distinct()
        .collect(Collectors.joining(" and ", ", slants at ", " degrees to the edge"));
  }

  private String points(Function<Length, String> lengths) {
    String points = sawn.stream().map(line -> point(line.from().x(), line.from().y(), lengths)).collect(Collectors.joining(" "));
    SawLine last = sawn.get(sawn.size() - 1);
    return kind == Kind.HOLE ? points : points + " " + point(last.to().x(), last.to().y(), lengths);
  }

  private static String point(Length x, Length y, Function<Length, String> lengths) {
    return "(" + lengths.apply(x) + ", " + lengths.apply(y) + ")";
  }
}
