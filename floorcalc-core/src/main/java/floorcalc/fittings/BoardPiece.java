package floorcalc.fittings;

import floorcalc.measure.Length;
import floorcalc.outline.Extent;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A piece of board as it lies, in the frame of its bay: x along the boards, the starting wall at low y.
 *
 * @param name its name, not null
 * @param outline its outline, not null, of at least three corners; which way round does not matter
 * @param holes holes right through it, not null
 * @since 0.1
 */
public record BoardPiece(String name, Ring outline, List<Ring> holes) {
  /** Corners this near to a side of the rectangle, in nanometres, are on it: turning a bay rounds. */
  private static final long ON_SIDE = 1000;

  /**
   * Checks that no part is null and copies the list.
   *
   * @throws IllegalArgumentException if the outline has fewer than three corners or no area
   */
  public BoardPiece {
    Objects.requireNonNull(holes, "holes");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(outline, "outline");
    holes = List.copyOf(holes);
    if (outline.size() < 3 || outline.area().isZero()) {
      throw new IllegalArgumentException(name + ": a piece needs an outline of at least three corners with an area, but was " + outline);
    }
  }

  /**
   * Returns a piece without holes.
   *
   * @param name its name, not null
   * @param outline its outline, not null, of at least three corners
   * @return the piece, not null
   * @throws IllegalArgumentException if the outline has fewer than three corners or no area
   */
  public static BoardPiece of(String name, Ring outline) {
    return new BoardPiece(name, outline, List.of());
  }

  /**
   * Returns the corner of its rectangle where start end and start edge meet.
   *
   * @return the place in the frame, not null
   */
  public Point origin() {
    return outline.extent().low();
  }

  /**
   * Returns the length of the rectangle that encloses the piece.
   *
   * @return along the board, more than zero
   */
  public Length length() {
    return outline.extent().width();
  }

  /**
   * Returns the width of the rectangle that encloses the piece.
   *
   * @return across the board, more than zero
   */
  public Length width() {
    return outline.extent().height();
  }

  /** The outline counter-clockwise, measured from start end and start edge, corners next to a side put on it. */
  Ring placed() {
    return placed(outline.signedArea().isNegative() ? outline.reversed() : outline);
  }

  /** The holes clockwise, measured likewise. */
  List<Ring> placedHoles() {
    return holes.stream().map(hole -> placed(hole.signedArea().isNegative() ? hole : hole.reversed())).toList();
  }

  private Ring placed(Ring ring) {
    Extent extent = outline.extent();
    long lowX = extent.low().xNanometres();
    long lowY = extent.low().yNanometres();
    long length = extent.width().toNanometres();
    long width = extent.height().toNanometres();
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      Point corner = Point.ofNanometres(onSide(ring.x(i) - lowX, length), onSide(ring.y(i) - lowY, width));
      if (corners.isEmpty() || !corners.get(corners.size() - 1).equals(corner)) {
        corners.add(corner);
      }
    }
    if (corners.size() > 1 && corners.get(0).equals(corners.get(corners.size() - 1))) {
      corners.remove(corners.size() - 1);
    }
    return Ring.of(corners);
  }

  private static long onSide(long value, long most) {
    return Math.abs(value) <= ON_SIDE ? 0 : Math.abs(most - value) <= ON_SIDE ? most : value;
  }
}
