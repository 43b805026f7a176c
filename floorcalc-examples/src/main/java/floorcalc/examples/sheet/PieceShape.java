package floorcalc.examples.sheet;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.LaidPiece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The shape of a piece that is not a rectangle, as it lies with the starting wall behind whoever lays it. Immutable. */
public final class PieceShape {
  /** Corners this near to a side are on it: turning a bay rounds to the nanometre. */
  private static final long ON_SIDE = 1000;

  private final List<Point> corners;
  private final Length length;
  private final Length width;

  private PieceShape(List<Point> corners, Length length, Length width) {
    this.corners = corners;
    this.length = length;
    this.width = width;
  }

  static Optional<PieceShape> of(Bay bay, LaidPiece piece) {
    Ring ring = bay.direction().toFrame(piece.outline());
    long minX = Long.MAX_VALUE;
    long minY = Long.MAX_VALUE;
    long maxX = Long.MIN_VALUE;
    long maxY = Long.MIN_VALUE;
    for (int i = 0; i < ring.size(); i++) {
      minX = Math.min(minX, ring.x(i));
      minY = Math.min(minY, ring.y(i));
      maxX = Math.max(maxX, ring.x(i));
      maxY = Math.max(maxY, ring.y(i));
    }
    List<Point> corners = new ArrayList<>();
    int atCorner = 0;
    for (int i = 0; i < ring.size(); i++) {
      long x = onSide(ring.x(i), minX, maxX);
      long y = onSide(ring.y(i), minY, maxY);
      atCorner += (x == minX || x == maxX) && (y == minY || y == maxY) ? 1 : 0;
      corners.add(Point.ofNanometres(x - minX, y - minY));
    }
    return atCorner == 4 && ring.size() == 4 ? Optional.empty()
        : Optional.of(new PieceShape(List.copyOf(corners), Length.ofNanometres(maxX - minX),
            Length.ofNanometres(maxY - minY)));
  }

  private static long onSide(long value, long least, long most) {
    return value - least <= ON_SIDE ? least : most - value <= ON_SIDE ? most : value;
  }

  /**
   * Returns the corners, measured from the near left corner of the enclosing rectangle: x along the board, y across.
   *
   * @return an unmodifiable list, not null
   */
  public List<Point> corners() {
    return corners;
  }

  /**
   * Returns the width at the left end and at the right end, if the piece is a taper between two square ends.
   *
   * @return two lengths, or nothing
   */
  public Optional<List<Length>> taper() {
    Optional<Length> left = side(Length.ZERO, true);
    Optional<Length> right = side(length, true);
    return corners.size() == 4 && left.isPresent() && right.isPresent()
        ? Optional.of(List.of(left.get(), right.get())) : Optional.empty();
  }

  /**
   * Returns the length along the near edge and along the far edge, if the piece is sawn at a slant between two straight
   * edges.
   *
   * @return two lengths, or nothing
   */
  public Optional<List<Length>> slant() {
    Optional<Length> near = side(Length.ZERO, false);
    Optional<Length> far = side(width, false);
    return corners.size() == 4 && near.isPresent() && far.isPresent()
        ? Optional.of(List.of(near.get(), far.get())) : Optional.empty();
  }

  /** How far the piece reaches along one side of its rectangle; nothing if it has no two corners there. */
  private Optional<Length> side(Length level, boolean upright) {
    List<Length> on = corners.stream().filter(p -> (upright ? p.x() : p.y()).equals(level))
        .map(p -> upright ? p.y() : p.x()).sorted().toList();
    return on.size() == 2 ? Optional.of(on.get(1).minus(on.get(0))) : Optional.empty();
  }
}
