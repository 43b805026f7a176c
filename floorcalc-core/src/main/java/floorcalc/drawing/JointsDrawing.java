package floorcalc.drawing;

import floorcalc.joints.JointLayout;
import floorcalc.joints.JointPair;
import floorcalc.joints.JointStair;
import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The end joints of the lowest rows of a floor: the nearest two of each pair of neighbouring rows with their offset, offsets below a minimum in
 * heavy lines, H patterns and stair patterns. Lengths along the rows are to scale, the width of the rows is not. Immutable and thread-safe.
 * <p>
 * The sheet is black and grey on white and keeps to A4 and US Letter; every length of the SVG is a millimetre on paper. Texts never overlap;
 * what has no room is said in a note. At most 16 rows are drawn. The same joints give the same bytes everywhere.
 * <pre>{@code
 * String svg = JointsDrawing.of(joints, Length.parse("4.2 m")).least(Length.parse("300 mm")).toSvg();
 * }</pre>
 *
 * @since 0.1
 */
public final class JointsDrawing {
  /** So many rows have room on a sheet. */
  static final int MOST_ROWS = 16;
  private static final double ROW = 8.5;

  private final JointLayout joints;
  private final Length length;
  private final String title;
  private final Measures measures;
  private final Length least;

  private JointsDrawing(JointLayout joints, Length length, String title, Measures measures, Length least) {
    this.joints = joints;
    this.length = length;
    this.title = title;
    this.measures = measures;
    this.least = least;
  }

  /**
   * Returns a drawing of joints, in millimetres.
   *
   * @param joints the joints, not null, of at least one row
   * @param length where the rows end, counted from where joints are; not null, beyond the last joint and more than zero
   * @return the drawing, not null
   * @throws IllegalArgumentException if there is no row, a joint lies before 0, or one lies beyond the length
   */
  public static JointsDrawing of(JointLayout joints, Length length) {
    Objects.requireNonNull(length, "length");
    if (Objects.requireNonNull(joints, "joints").rows() == 0) {
      throw new IllegalArgumentException("joints to draw need at least one row");
    }
    if (length.compareTo(Length.ZERO) <= 0) {
      throw new IllegalArgumentException("the rows must be longer than 0 mm, but were " + length);
    }
    for (int row = 1; row <= joints.rows(); row++) {
      for (Length joint : joints.joints(row)) {
        if (joint.isNegative() || joint.compareTo(length) > 0) {
          throw new IllegalArgumentException("row " + row + " has an end joint at " + joint + ", but the rows run from 0 mm to " + length
              + "; give joints from where the rows begin");
        }
      }
    }
    return new JointsDrawing(joints, length, "", Measures.MILLIMETRES, Length.ZERO);
  }

  /**
   * Returns the same drawing with a title.
   *
   * @param words the title, not null
   * @return the drawing, not null
   */
  public JointsDrawing titled(String words) {
    return new JointsDrawing(joints, length, Objects.requireNonNull(words, "words"), measures, least);
  }

  /**
   * Returns the same drawing in other units.
   *
   * @param units how lengths are written, not null
   * @return the drawing, not null
   */
  public JointsDrawing in(Measures units) {
    return new JointsDrawing(joints, length, title, Objects.requireNonNull(units, "units"), least);
  }

  /**
   * Returns the same drawing with offsets below a minimum in heavy lines.
   *
   * @param offset the least offset asked for, not null
   * @return the drawing, not null
   */
  public JointsDrawing least(Length offset) {
    return new JointsDrawing(joints, length, title, measures, Objects.requireNonNull(offset, "offset"));
  }

  /**
   * Draws.
   *
   * @return an SVG element that needs nothing from outside, to be kept as a file or put into a page; its identifiers begin with
   *     {@code joints}; it ends in a line feed; not null
   */
  public String toSvg() {
    return new Rows().draw();
  }

  /** The rows on a sheet, the first one at the bottom. */
  private final class Rows {
    private final int count = Math.min(MOST_ROWS, joints.rows());
    private final double bottom = Figure.TOP + 2 + count * ROW;
    private final Figure figure = new Figure("joints", title, measures, Figure.scale(length.toMillimetres()), bottom + 8);
    private final Sheet sheet = figure.sheet;
    private final List<JointPair> close = joints.closerThan(least);
    private final List<JointPair> inLine = joints.inLine().stream().filter(pair -> pair.otherRow() <= count).toList();
    private final List<JointStair> stairs = joints.stairs().stream().filter(stair -> stair.firstRow() < count).toList();

    private double x(Length place) {
      return Figure.LEFT + sheet.paper.of(place);
    }

    /** The middle of a row. */
    private double y(int row) {
      return bottom - (row - 0.5) * ROW;
    }

    String draw() {
      figure.caption(title.isBlank() ? "End joints" : title, "Scale 1:" + Words.grouped(sheet.paper.scale()) + " along the rows, their width"
          + " not to scale \u00b7 " + Words.count(joints.rows(), "row", "rows") + ", the first at the bottom \u00b7 lengths " + measures.words());
      double right = x(length);
      for (int row = 1; row <= count; row++) {
        figure.rectangle(Figure.LEFT, y(row) - ROW / 2, right, y(row) + ROW / 2, "#fff", 0.2);
        String number = Integer.toString(row);
        figure.writeUpTo(Figure.LEFT - 1.5, y(row), "row " + number, number);
      }
      stairs.forEach(this::stair);
      inLine.forEach(this::joinInLine);
      for (int row = 1; row <= count; row++) {
        for (Length joint : joints.joints(row)) {
          figure.line(x(joint), y(row) - ROW / 2, x(joint), y(row) + ROW / 2, 0.6);
        }
      }
      offsets();
      notes();
      figure.foot.scaleBar();
      key();
      return figure.svg(title.isBlank() ? "End joints of rows" : "End joints of rows: " + title, description());
    }

    private void stair(JointStair stair) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < stair.joints().size() && stair.firstRow() + i <= count; i++) {
        double x = x(stair.joints().get(i));
        double y = y(stair.firstRow() + i);
        line.append(i == 0 ? 'M' : 'L').append(Svg.number(x)).append(' ').append(Svg.number(y));
        if (i > 0) {
          sheet.take(Box.along(x(stair.joints().get(i - 1)), y + ROW, x, y, 0.6));
        }
      }
      figure.path(line.toString(), "", 0.45);
      for (int i = 0; i < stair.joints().size() && stair.firstRow() + i <= count; i++) {
        figure.dot(x(stair.joints().get(i)), y(stair.firstRow() + i), 0.9, "#000");
      }
    }

    private void joinInLine(JointPair pair) {
      for (int row : new int[] {pair.row(), pair.otherRow()}) {
        double at = x(row == pair.row() ? pair.at() : pair.otherAt());
        square(at, y(row));
      }
      figure.dashed(x(pair.at()), y(pair.row()) - ROW / 2, x(pair.otherAt()), y(pair.otherRow()) + ROW / 2);
    }

    private void square(double x, double y) {
      sheet.lines.line("<rect " + Svg.attribute("x", x - 1.3) + ' ' + Svg.attribute("y", y - 1.3) + " width=\"2.6\" height=\"2.6\" fill=\"#fff\""
          + Figure.stroke(0.35) + "/>");
      sheet.take(Box.upright(x - 1.4, y - 1.4, x + 1.4, y + 1.4));
    }

    /** The nearest two joints of neighbouring rows, along the line between the rows. */
    private void offsets() {
      List<JointPair> shown = new ArrayList<>();
      for (int row = 1; row < count; row++) {
        Optional<JointPair> nearest = joints.smallestOffset(row);
        int lower = row;
        List<JointPair> tooClose = close.stream().filter(pair -> pair.row() == lower).toList();
        shown.addAll(tooClose);
        nearest.filter(pair -> !tooClose.contains(pair)).ifPresent(shown::add);
      }
      for (JointPair pair : shown) {
        boolean heavy = close.contains(pair);
        double y = bottom - pair.row() * ROW;
        double x1 = x(pair.at().min(pair.otherAt()));
        double x2 = x(pair.at().max(pair.otherAt()));
        figure.line(x1, y, x2, y, heavy ? 1.2 : 0.5);
        String text = measures.row(pair.offset());
        double half = TextSize.width(text) * Sheet.TEXT / 2 + 1;
        boolean written = false;
        for (double at : new double[] {(x1 + x2) / 2, x2 + half, x1 - half}) {
          written = written || figure.write(text, at, y - 2.2) || figure.write(text, at, y + 2.4);
        }
        if (!written) {
          sheet.note("The offset of rows " + pair.row() + " and " + pair.otherRow() + " is " + measures.withUnit(pair.offset()) + ".");
        }
      }
    }

    private void notes() {
      if (joints.rows() > count) {
        sheet.note(Words.count(joints.rows() - count, "more row is", "more rows are") + " not drawn.");
      }
      stairs.forEach(stair -> sheet.note("Rows " + stair.firstRow() + " to " + stair.lastRow() + ": equal steps of "
          + measures.withUnit(stair.step().abs()) + "."));
    }

    private void key() {
      double joint = figure.foot.next("end joint");
      line(joint + 3, -1.6, joint + 3, 1.6, 0.6);
      double offset = figure.foot.next("offset of the nearest joints of two rows");
      line(offset, 0, offset + 6, 0, 0.5);
      if (!close.isEmpty()) {
        double small = figure.foot.next("less than " + measures.withUnit(least));
        line(small, 0, small + 6, 0, 1.2);
      }
      if (!inLine.isEmpty()) {
        double x = figure.foot.next("in line with one row between (H pattern)");
        square(x + 3, figure.foot.middle());
      }
      if (!stairs.isEmpty()) {
        double x = figure.foot.next("equal steps (stair pattern)");
        line(x, 0, x + 6, 0, 0.45);
        figure.dot(x + 1, figure.foot.middle(), 0.9, "#000");
        figure.dot(x + 5, figure.foot.middle(), 0.9, "#000");
      }
    }

    private void line(double x1, double up, double x2, double down, double thickness) {
      double y = figure.foot.middle();
      sheet.lines.line("<path" + Figure.stroke(thickness) + " d=\"" + Sheet.segment(x1, y + up, x2, y + down) + "\"/>");
    }

    private String description() {
      return "The end joints of " + Words.count(joints.rows(), "row", "rows") + ", to scale along the rows." + joints.smallestOffset()
          .map(pair -> " The smallest offset is " + pair.offset() + ", in rows " + pair.row() + " and " + pair.otherRow() + ".").orElse("")
          + (least.isZero() ? "" : " " + Words.count(close.size(), "offset is", "offsets are") + " less than " + least + ".")
          + (inLine.isEmpty() ? "" : " " + Words.count(inLine.size(), "H pattern.", "H patterns."))
          + (stairs.isEmpty() ? "" : " " + Words.count(stairs.size(), "stair pattern.", "stair patterns."));
    }
  }
}
