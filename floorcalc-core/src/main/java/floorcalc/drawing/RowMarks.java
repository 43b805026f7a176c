package floorcalc.drawing;

import floorcalc.plan.Bay;
import floorcalc.plan.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Row numbers outside the walls, the starting wall, and the arrows that show which way rows are laid and follow. */
final class RowMarks {
  private static final int[] STEPS = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};
  /** A bay this long on paper has row numbers at both ends. */
  private static final double LONG_BAY = 100;
  private static final double ARROW = 7;
  private static final double ROW_ARROW = 5.5;

  private final Sheet sheet;
  private final Bay bay;
  private final Walls walls;
  private final double size;
  private final int every;

  RowMarks(Sheet sheet, Bay bay, Walls walls, double pitch) {
    this.sheet = sheet;
    this.bay = bay;
    this.walls = walls;
    this.size = Math.max(Sheet.SMALLEST, Math.min(Sheet.TEXT, pitch * 0.78));
    this.every = every(2 * 0.39 * size + 0.25, pitch);
  }

  private static int every(double needed, double pitch) {
    for (int step : STEPS) {
      if (step * pitch >= needed) {
        return step;
      }
    }
    return Integer.MAX_VALUE;
  }

  void draw() {
    numberStarts();
    startArrow();
    rowArrow();
    numberEnds();
  }

  /** Sets the row numbers at the end where each row starts, or where there is no room at the other end. */
  private void numberStarts() {
    List<String> left = new ArrayList<>();
    for (Row row : bay.rows()) {
      if (wanted(row) && !row.pieces().isEmpty() && !set(row, -1, 9) && !set(row, 1, 9)) {
        left.add(Integer.toString(row.row()));
      }
    }
    if (every > 1) {
      sheet.note(every == Integer.MAX_VALUE ? "Rows are too narrow at this scale to be numbered."
          : "Only row 1 and every " + every + ending(every) + " row are numbered.");
    }
    if (!left.isEmpty()) {
      sheet.note("Rows without room for their number: " + Words.list(left, 24) + ".");
    }
  }

  /** Sets the row numbers at the other end too if the bay is long. */
  private void numberEnds() {
    Frame f = sheet.frame;
    Shape laid = Shape.of(sheet.paper, bay.laid().shell(), List.of());
    if (laid.high(f.ux(), f.uy()) - laid.low(f.ux(), f.uy()) >= LONG_BAY) {
      bay.rows().stream().filter(row -> wanted(row) && !row.pieces().isEmpty()).forEach(row -> set(row, 1, 3.5));
    }
  }

  static String ending(int number) {
    return number == 2 ? "nd" : "th";
  }

  private boolean wanted(Row row) {
    return row.row() == 1 || row.row() % every == 0;
  }

  private boolean set(Row row, int side, double furthest) {
    List<PieceShape> pieces = PieceShape.of(sheet, row);
    String text = Integer.toString(row.row());
    double half = TextSize.width(text) * size / 2;
    PieceShape outer = side < 0 ? pieces.get(0) : pieces.get(pieces.size() - 1);
    double across = (outer.c0() + outer.c1()) / 2;
    double end = side < 0 ? outer.a0() : outer.a1();
    for (double away = walls.outerFace() + 0.5; away < furthest; away += 0.4) {
      Box box = sheet.frame.textAlong(text, size, end + side * (away + half), across);
      if (walls.clear(box)) {
        sheet.write(text, size, box);
        return true;
      }
    }
    return false;
  }

  /** Draws the arrow from the starting wall in the way the rows follow. */
  private void startArrow() {
    if (bay.rows().isEmpty() || bay.rows().get(0).pieces().isEmpty()) {
      return;
    }
    List<PieceShape> first = PieceShape.of(sheet, bay.rows().get(0));
    double wall = first.stream().mapToDouble(PieceShape::c0).min().orElse(0);
    double[] side = lowerSide(first, wall);
    String text = side[1] - side[0] > 3 ? "starting wall" : "starting corner";
    if (Stream.of(text, "start", "").noneMatch(t -> fromWall(side, wall, t, 1) || fromWall(side, wall, t, -1))) {
      sheet.note("No room for the arrow at the starting wall: rows are numbered from there.");
    }
  }

  /** Draws the arrow in which each row is laid, beside row 1 or the first row that has room. */
  private void rowArrow() {
    Frame f = sheet.frame;
    for (Row row : bay.rows().subList(0, Math.min(bay.rows().size(), 20))) {
      if (row.pieces().isEmpty()) {
        continue;
      }
      PieceShape first = PieceShape.of(sheet, row).get(0);
      double across = (first.c0() + first.c1()) / 2;
      for (double away = walls.outerFace() + 1; away < 12; away += 0.5) {
        double along = first.a0() - away - ROW_ARROW;
        Box box = new Box(f.x(along + ROW_ARROW / 2, across), f.y(along + ROW_ARROW / 2, across), ROW_ARROW / 2 + 0.6,
            0.9, f.ux(), f.uy());
        if (walls.clear(box)) {
          rowArrow(sheet.lines, f, along, across);
          sheet.take(box);
          sheet.explain(Mark.ROW_ARROW);
          return;
        }
      }
    }
  }

  /** Returns from where to where the row reaches its lowest line: a side at a wall, or a corner. */
  private double[] lowerSide(List<PieceShape> row, double wall) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (PieceShape piece : row) {
      for (int i = 0; i < piece.shape().size(0); i++) {
        double x = piece.shape().x(0, i);
        double y = piece.shape().y(0, i);
        // Half a millimetre on paper: a wall a little out of square is still the starting wall.
        if (sheet.frame.across(x, y) - wall < 0.5) {
          low = Math.min(low, sheet.frame.along(x, y));
          high = Math.max(high, sheet.frame.along(x, y));
        }
      }
    }
    return new double[] {low, high};
  }

  /** Tries to draw the arrow with its words after it along the boards, or before it if {@code hand} is -1. */
  private boolean fromWall(double[] side, double wall, String text, int hand) {
    double textWidth = text.isEmpty() ? 0 : TextSize.width(text) * Sheet.TEXT + 1;
    double half = (3 + textWidth) / 2;
    double middle = (side[0] + side[1]) / 2;
    double span = Math.max(side[1] - side[0], 24);
    for (double away = walls.outerFace() + 0.6; away < 8; away += 0.6) {
      for (double share : new double[] {0, -0.1, 0.1, -0.2, 0.2, -0.3, 0.3, -0.4, 0.4, -0.5, 0.5}) {
        double along = middle + share * span;
        double across = wall - away - ARROW / 2;
        Frame f = sheet.frame;
        if (walls.clear(new Box(f.x(along, across), f.y(along, across), half, ARROW / 2, f.ux(), f.uy()))) {
          double shaft = along - hand * (half - 1.5);
          startArrow(sheet.lines, f, shaft, wall - away - ARROW);
          sheet.explain(Mark.START_ARROW);
          sheet.take(new Box(f.x(shaft, across), f.y(shaft, across), 1.5, ARROW / 2, f.ux(), f.uy()));
          if (!text.isEmpty()) {
            sheet.write(text, Sheet.TEXT, f.textAlong(text, Sheet.TEXT, along + hand * 1.5, across - 1));
          }
          return true;
        }
      }
    }
    return false;
  }

  /** Draws the arrow that points from the starting wall across the rows, its foot at a place. */
  static void startArrow(Svg lines, Frame f, double along, double across) {
    lines.line("<path fill=\"#000\" stroke=\"none\" d=\"M" + at(f, along - 0.4, across) + 'L'
        + at(f, along - 0.4, across + ARROW - 3) + 'L' + at(f, along - 1.4, across + ARROW - 3) + 'L'
        + at(f, along, across + ARROW) + 'L' + at(f, along + 1.4, across + ARROW - 3) + 'L'
        + at(f, along + 0.4, across + ARROW - 3) + 'L' + at(f, along + 0.4, across) + "Z\"/>");
  }

  /** Draws the arrow that points along the rows, its foot at a place. */
  static void rowArrow(Svg lines, Frame f, double along, double across) {
    lines.line("<path stroke-width=\"0.3\" d=\"M" + at(f, along, across) + 'L' + at(f, along + ROW_ARROW, across) + 'M'
        + at(f, along + ROW_ARROW - 1.8, across - 0.8) + 'L' + at(f, along + ROW_ARROW, across) + 'L'
        + at(f, along + ROW_ARROW - 1.8, across + 0.8) + "\"/>");
  }

  private static String at(Frame f, double along, double across) {
    return Svg.number(f.x(along, across)) + ' ' + Svg.number(f.y(along, across));
  }
}
