package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.rows.RowDivision;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A section across the rows of a plain room: the walls, the gap, the first row, the full rows and the last row, with their widths. Widths are
 * to scale, heights are not. Below it, if the last row would then be another, the rows as they fall when the first one is left full. Immutable
 * and thread-safe.
 * <p>
 * The sheet is black and grey on white and keeps to A4 and US Letter; every length of the SVG is a millimetre on paper. Texts never overlap;
 * what has no room is said in a note. The same rows give the same bytes everywhere.
 * <pre>{@code
 * String svg = RowsDrawing.of(division).withGap(Length.parse("10 mm")).toSvg();
 * }</pre>
 *
 * @since 0.1
 */
public final class RowsDrawing {
  private static final double BOARD = 6;
  private static final double WALL_WIDTH = 5;
  private static final double NUMBERED = 3.2;
  private static final long MOST_ROWS = 2000;

  private final RowDivision rows;
  private final String title;
  private final Measures measures;
  private final Length gap;

  private RowsDrawing(RowDivision rows, String title, Measures measures, Length gap) {
    this.rows = rows;
    this.title = title;
    this.measures = measures;
    this.gap = gap;
  }

  /**
   * Returns a drawing of rows, in millimetres, without a gap at the walls.
   *
   * @param rows the rows, not null
   * @return the drawing, not null
   */
  public static RowsDrawing of(RowDivision rows) {
    return new RowsDrawing(Objects.requireNonNull(rows, "rows"), "", Measures.MILLIMETRES, Length.ZERO);
  }

  /**
   * Returns the same drawing with a title.
   *
   * @param words the title, not null
   * @return the drawing, not null
   */
  public RowsDrawing titled(String words) {
    return new RowsDrawing(rows, Objects.requireNonNull(words, "words"), measures, gap);
  }

  /**
   * Returns the same drawing in other units.
   *
   * @param units how lengths are written, not null
   * @return the drawing, not null
   */
  public RowsDrawing in(Measures units) {
    return new RowsDrawing(rows, title, Objects.requireNonNull(units, "units"), gap);
  }

  /**
   * Returns the same drawing with a gap at either wall, beside the laid width.
   *
   * @param width how wide the gap is on each side, not null, not negative
   * @return the drawing, not null
   * @throws IllegalArgumentException if the gap is negative
   */
  public RowsDrawing withGap(Length width) {
    if (Objects.requireNonNull(width, "width").isNegative()) {
      throw new IllegalArgumentException("the gap at the walls must not be negative, but was " + width);
    }
    return new RowsDrawing(rows, title, measures, width);
  }

  /**
   * Draws.
   *
   * @return an SVG element that needs nothing from outside, to be kept as a file or put into a page; its identifiers begin with
   *     {@code rows}; it ends in a line feed; not null
   */
  public String toSvg() {
    Length room = rows.laidWidth().plus(gap).plus(gap);
    double floor = 36;
    Length rest = rows.laidWidth().minus(rows.pitch().multipliedBy(rows.rows() - 1));
    boolean other = rows.rows() > 1 && !rest.equals(rows.lastRow());
    Figure figure = new Figure("rows", title, measures, Figure.scale(room.toMillimetres()), other ? 74 : 60);
    Section section = new Section(figure, Figure.LEFT);
    figure.caption(title.isBlank() ? "Rows" : title, "Scale 1:" + Words.grouped(figure.sheet.paper.scale()) + " across the rows, heights not"
        + " to scale \u00b7 " + Words.count(rows.rows(), "row", "rows") + " over " + measures.withUnit(rows.laidWidth()) + " \u00b7 lengths "
        + measures.words());
    section.walls(floor);
    section.rows(widths(rows.firstRow(), rows.lastRow()), floor);
    if (rows.rows() > 1) {
      section.narrowest(floor);
    }
    section.dimensions(floor);
    if (other) {
      section.otherwise(rest, floor + 33);
    }
    figure.foot.scaleBar();
    section.key();
    return figure.svg(title.isBlank() ? "Rows across a floor" : "Rows across a floor: " + title, description(rest, other));
  }

  private List<Length> widths(Length first, Length last) {
    List<Length> widths = new ArrayList<>();
    widths.add(first);
    if (rows.rows() > 1) {
      for (long i = 0; i < Math.min(rows.rows() - 2, MOST_ROWS); i++) {
        widths.add(rows.pitch());
      }
      widths.add(last);
    }
    return widths;
  }

  private String description(Length rest, boolean other) {
    return "A section across " + Words.count(rows.rows(), "row", "rows") + " of a floor " + rows.laidWidth() + " wide, to scale. "
        + (rows.rows() == 1 ? "The only row is " + rows.firstRow() + " wide." : "The first row is " + rows.firstRow() + ", the last "
            + rows.lastRow() + "; between them lie " + Words.count(Math.max(0, rows.rows() - 2), "row", "rows") + " of " + rows.pitch() + ".")
        + (gap.isZero() ? "" : " At each wall a gap of " + gap + " is left.")
        + (other ? " With a full first row the last would be " + rest + "." : "");
  }

  /** Draws on one sheet, from one place on. */
  private final class Section {
    private final Figure figure;
    private final Sheet sheet;
    private final double left;
    private final double start;

    Section(Figure figure, double left) {
      this.figure = figure;
      this.sheet = figure.sheet;
      this.left = left;
      this.start = left + sheet.paper.of(gap);
    }

    private double end() {
      return start + sheet.paper.of(rows.laidWidth());
    }

    private double right() {
      return end() + sheet.paper.of(gap);
    }

    void walls(double floor) {
      figure.rectangle(left - WALL_WIDTH, floor - BOARD - 8, left, floor, Figure.WALL, 0);
      figure.rectangle(right(), floor - BOARD - 8, right() + WALL_WIDTH, floor, Figure.WALL, 0);
      figure.line(left, floor - BOARD - 8, left, floor, Figure.FIRM);
      figure.line(right(), floor - BOARD - 8, right(), floor, Figure.FIRM);
      figure.rectangle(left - WALL_WIDTH, floor, right() + WALL_WIDTH, floor + 1.6, Figure.WALL, 0);
      figure.line(left - WALL_WIDTH, floor, right() + WALL_WIDTH, floor, Figure.FIRM);
      figure.writeFrom(left + 1, floor - BOARD - 5, "starting wall");
      figure.writeUpTo(right() - 1, floor - BOARD - 5, "finishing wall");
    }

    void rows(List<Length> widths, double floor) {
      double from = start;
      for (int i = 0; i < widths.size(); i++) {
        double to = from + sheet.paper.of(widths.get(i));
        boolean sawn = !widths.get(i).equals(RowsDrawing.this.rows.pitch());
        figure.rectangle(from, floor - BOARD, to, floor, sawn ? "#dadada" : "#fff", 0.2);
        boolean outer = i == 0 || i == widths.size() - 1 || (i + 1) % 10 == 0;
        if (to - from >= NUMBERED || outer) {
          figure.writeWithin(Integer.toString(i + 1), from, to, floor - BOARD / 2);
        }
        from = to;
      }
    }

    /** How narrow the outer rows may be. */
    void narrowest(double floor) {
      double least = sheet.paper.of(RowsDrawing.this.rows.minimum());
      figure.dashed(start + least, floor - BOARD - 2, start + least, floor - BOARD);
      figure.dashed(end() - least, floor - BOARD - 2, end() - least, floor - BOARD);
    }

    void dimensions(double floor) {
      RowDivision r = RowsDrawing.this.rows;
      double y = floor + 11;
      double first = start + sheet.paper.of(r.firstRow());
      double last = end() - sheet.paper.of(r.lastRow());
      figure.dimension(start, r.rows() == 1 ? end() : first, y, measures.row(r.firstRow()),
          "The first row is " + measures.withUnit(r.firstRow()) + " wide.");
      if (r.rows() > 1) {
        figure.dimension(last, end(), y, measures.row(r.lastRow()), "The last row is " + measures.withUnit(r.lastRow()) + " wide.");
      }
      if (r.rows() > 2) {
        String between = Words.grouped(r.rows() - 2) + " x " + measures.row(r.pitch());
        figure.dimension(first, last, y, between + " = " + measures.row(r.pitch().multipliedBy(r.rows() - 2)),
            "Between them lie " + between + ".");
      }
      for (double at : new double[] {start, end()}) {
        figure.line(at, floor + 2, at, y + 9, Figure.THIN);
      }
      figure.dimension(start, end(), y + 8, measures.overall(r.laidWidth()), "All rows are " + measures.withUnit(r.laidWidth()) + " wide.");
      if (!gap.isZero()) {
        sheet.note("At each wall a gap of " + measures.withUnit(gap) + " is left; the room is "
            + measures.withUnit(r.laidWidth().plus(gap).plus(gap)) + " wide there.");
      }
    }

    /** The rows when the first one is left full. */
    void otherwise(Length rest, double floor) {
      List<Length> widths = widths(RowsDrawing.this.rows.pitch(), rest);
      double from = start;
      figure.writeFrom(start, floor - 8, "with a full first row:");
      for (int i = 0; i < widths.size(); i++) {
        double to = from + sheet.paper.of(widths.get(i));
        figure.rectangle(from, floor - 4, to, floor, i == widths.size() - 1 ? "#dadada" : "#fff", Figure.THIN);
        from = to;
      }
      double last = end() - sheet.paper.of(rest);
      figure.dimension(last, end(), floor - 6, measures.row(rest), "With a full first row the last is " + measures.withUnit(rest) + " wide.");
    }

    void key() {
      double ripped = figure.foot.next("ripped row");
      sheet.lines.line("<rect " + figure.foot.rectangle(ripped) + " fill=\"#dadada\" stroke-width=\"0.2\"/>");
      double full = figure.foot.next("full row");
      sheet.lines.line("<rect " + figure.foot.rectangle(full) + " fill=\"#fff\" stroke-width=\"0.2\"/>");
      if (RowsDrawing.this.rows.rows() > 1) {
        double x = figure.foot.next("narrowest row asked for, " + measures.withUnit(RowsDrawing.this.rows.minimum()) + ", from either side");
        double y = figure.foot.middle();
        sheet.lines.line("<path" + Figure.stroke(0.2) + " stroke-dasharray=\"1.2 0.8\" d=\"" + Sheet.segment(x + 3, y - 1.5, x + 3, y + 1.5)
            + "\"/>");
      }
    }
  }
}
