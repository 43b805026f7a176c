package floorcalc.drawing;

import floorcalc.outline.Outline;
import floorcalc.plan.Bay;
import floorcalc.plan.Row;
import java.util.List;

/**
 * A floor of too many or too small pieces to tell apart: the laid area, the lines between the rows and the end joints,
 * each as one path, so that the drawing stays small. Lines that would run into each other on paper are left out.
 */
final class Overview {
  /** Row lines and end joints drawn at most, each. */
  static final int MOST_LINES = 12_000;
  /** Lines nearer to each other on paper become a grey area. */
  private static final double NEAREST = 0.5;

  private final Sheet sheet;
  private final Bay bay;
  private final double pitch;
  private final StringBuilder rowLines = new StringBuilder();
  private final StringBuilder joints = new StringBuilder();
  private int rowLineCount;
  private int jointCount;

  Overview(Sheet sheet, Bay bay, double pitch) {
    this.sheet = sheet;
    this.bay = bay;
    this.pitch = pitch;
  }

  void draw() {
    Outline laid = bay.laid();
    sheet.floor.line("<path fill=\"#fff\" fill-rule=\"evenodd\" stroke-width=\"0.25\" d=\""
        + Shape.of(sheet.paper, laid.shell(), laid.voids()).thinned(Walls.MOST_CORNERS).path() + "\"/>");
    int every = (int) Math.max(1, StrictMath.ceil(NEAREST / pitch));
    boolean showJoints = every == 1;
    for (Row row : bay.rows()) {
      boolean line = row.row() % every == 0 && row.row() < bay.rows().size();
      if (line || showJoints) {
        lines(PieceShape.of(sheet, row), line, showJoints);
      }
    }
    path(rowLines, rowLineCount, "0.1");
    path(joints, jointCount, "0.18");
    say(every, showJoints);
    if (showJoints && jointCount > 0 && jointCount <= MOST_LINES) {
      sheet.explain(Mark.JOINT);
    }
  }

  private void path(StringBuilder d, int count, String width) {
    if (count > 0 && count <= MOST_LINES) {
      sheet.floor.line("<path stroke-width=\"" + width + "\" d=\"" + d + "\"/>");
    }
  }

  private void say(int every, boolean showJoints) {
    String rows = rowLineCount > MOST_LINES ? "the lines between rows are left out"
        : every == 1 ? "" : "only every " + every + RowMarks.ending(every) + " line between rows is drawn";
    String ends = showJoints && jointCount <= MOST_LINES ? "" : "end joints are left out";
    String left = rows + (rows.isEmpty() || ends.isEmpty() ? "" : " and ") + ends;
    sheet.noteEarly(Words.count(PieceShape.count(bay), "piece", "pieces")
        + " at this scale: drawn without board numbers" + (left.isEmpty() ? "." : "; " + left + ".")
        + " The cut card lists every piece.");
  }

  private void lines(List<PieceShape> pieces, boolean line, boolean showJoints) {
    double top = pieces.stream().mapToDouble(PieceShape::c1).max().orElse(0);
    double from = Double.NaN;
    double to = Double.NaN;
    for (PieceShape piece : pieces) {
      if (showJoints && piece.meetsNext()) {
        jointCount++;
        append(joints, jointCount, piece.a1(), piece.c0(), piece.a1(), piece.c1());
      }
      if (line && top - piece.c1() < 2e-4) {
        double[] span = top(piece, top);
        if (span[0] - to < 2e-4) {
          to = Math.max(to, span[1]);
        } else {
          rowLine(from, to, top);
          from = span[0];
          to = span[1];
        }
      }
    }
    rowLine(from, to, top);
  }

  /** Returns from where to where a piece reaches the upper line of its row. */
  private double[] top(PieceShape piece, double top) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < piece.shape().size(0); i++) {
      double x = piece.shape().x(0, i);
      double y = piece.shape().y(0, i);
      if (top - sheet.frame.across(x, y) < 2e-4) {
        low = Math.min(low, sheet.frame.along(x, y));
        high = Math.max(high, sheet.frame.along(x, y));
      }
    }
    return new double[] {low, high};
  }

  private void rowLine(double from, double to, double across) {
    if (to - from > 0.05) {
      rowLineCount++;
      append(rowLines, rowLineCount, from, across, to, across);
    }
  }

  private void append(StringBuilder d, int count, double a1, double c1, double a2, double c2) {
    if (count <= MOST_LINES) {
      Frame f = sheet.frame;
      Sheet.appendSegment(d, f.x(a1, c1), f.y(a1, c1), f.x(a2, c2), f.y(a2, c2));
    }
  }
}
