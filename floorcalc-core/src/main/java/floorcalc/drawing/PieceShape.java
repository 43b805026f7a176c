package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.plan.Bay;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.Row;
import java.util.ArrayList;
import java.util.List;

/** A laid piece on the sheet: the box that encloses it in the frame of its bay, and whether one follows in its run. */
record PieceShape(Row row, int number, LaidPiece piece, Shape shape, double a0, double a1, double c0, double c1,
    boolean meetsNext) {
  /** Places this near to each other, in millimetres on paper, are the same. */
  private static final double NEAR = 2e-4;

  static List<PieceShape> of(Sheet sheet, Row row) {
    List<PieceShape> shapes = new ArrayList<>(row.pieces().size());
    Frame f = sheet.frame;
    for (LaidPiece piece : row.pieces()) {
      Shape shape = Shape.of(sheet.paper, piece.outline(), piece.holes());
      shapes.add(new PieceShape(row, shapes.size() + 1, piece, shape, shape.low(f.ux(), f.uy()),
          shape.high(f.ux(), f.uy()), shape.low(f.vx(), f.vy()), shape.high(f.vx(), f.vy()), false));
    }
    for (int i = 0; i + 1 < shapes.size(); i++) {
      PieceShape next = shapes.get(i + 1);
      if (shapes.get(i).piece.run() == next.piece.run() && Math.abs(next.a0 - shapes.get(i).a1) < NEAR) {
        shapes.set(i, shapes.get(i).meeting());
      }
    }
    return shapes;
  }

  /** Returns the same piece with another one at its end. */
  private PieceShape meeting() {
    return new PieceShape(row, number, piece, shape, a0, a1, c0, c1, true);
  }

  static long count(Bay bay) {
    return bay.rows().stream().mapToLong(r -> r.pieces().size()).sum();
  }

  /**
   * Tells whether a side of the outline is sawn: it is not on the rectangle cut from the board, or it is on a side of
   * that rectangle that is not a factory end or edge of the board.
   *
   * @param boardLength the length of the board that the piece comes from
   * @param fullWidth the width that a board shows between its factory edges
   */
  boolean sawn(Frame frame, int ring, int corner, Length boardLength, Length fullWidth) {
    if (ring > 0) {
      return true;
    }
    double x1 = shape.x(ring, corner);
    double y1 = shape.y(ring, corner);
    double x2 = shape.x(ring, corner + 1);
    double y2 = shape.y(ring, corner + 1);
    double along1 = frame.along(x1, y1);
    double along2 = frame.along(x2, y2);
    double across1 = frame.across(x1, y1);
    double across2 = frame.across(x2, y2);
    if (both(along1, along2, a0)) {
      return piece.from().alongFrom().isPositive();
    }
    if (both(along1, along2, a1)) {
      return piece.from().alongTo().compareTo(boardLength) < 0;
    }
    if (both(across1, across2, c0)) {
      return piece.from().acrossFrom().isPositive();
    }
    if (both(across1, across2, c1)) {
      return piece.from().acrossTo().compareTo(fullWidth) < 0;
    }
    return true;
  }

  private static boolean both(double first, double second, double line) {
    return Math.abs(first - line) < NEAR && Math.abs(second - line) < NEAR;
  }
}
