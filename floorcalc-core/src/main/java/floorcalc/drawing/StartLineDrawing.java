package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.rows.StartLine;
import floorcalc.rows.Stop;
import floorcalc.rows.Strip;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The rows of a floor from the side, with a lane for each stop: on which side of it the floor lies, and how wide the strip there comes out.
 * Widths across the rows are to scale, heights are not. Immutable and thread-safe.
 * <p>
 * The sheet is black and grey on white and keeps to A4 and US Letter; every length of the SVG is a millimetre on paper. Texts never overlap;
 * what has no room is said in a note. At most 16 stops are drawn. The same line gives the same bytes everywhere.
 * <pre>{@code
 * String svg = StartLineDrawing.of(StartLine.choose(stops, low, pitch, minimum, RowWay.WIDEST_STRIP).value()).toSvg();
 * }</pre>
 *
 * @since 0.1
 */
public final class StartLineDrawing {
  private static final int MOST = 16;
  private static final double LEFT = 46;
  private static final double LANE = 10.5;
  private static final double HEIGHT = 6;
  private static final double NUMBERED = 3.4;

  private final StartLine line;
  private final String title;
  private final Measures measures;

  private StartLineDrawing(StartLine line, String title, Measures measures) {
    this.line = line;
    this.title = title;
    this.measures = measures;
  }

  /**
   * Returns a drawing of a start line, in millimetres.
   *
   * @param line the line, not null, with at least one stop
   * @return the drawing, not null
   * @throws IllegalArgumentException if it has no stop
   */
  public static StartLineDrawing of(StartLine line) {
    if (Objects.requireNonNull(line, "line").strips().isEmpty()) {
      throw new IllegalArgumentException("a start line to draw needs at least one stop");
    }
    return new StartLineDrawing(line, "", Measures.MILLIMETRES);
  }

  /**
   * Returns the same drawing with a title.
   *
   * @param words the title, not null
   * @return the drawing, not null
   */
  public StartLineDrawing titled(String words) {
    return new StartLineDrawing(line, Objects.requireNonNull(words, "words"), measures);
  }

  /**
   * Returns the same drawing in other units.
   *
   * @param units how lengths are written, not null
   * @return the drawing, not null
   */
  public StartLineDrawing in(Measures units) {
    return new StartLineDrawing(line, title, Objects.requireNonNull(units, "units"));
  }

  /**
   * Draws.
   *
   * @return an SVG element that needs nothing from outside, to be kept as a file or put into a page; its identifiers begin with
   *     {@code start-line}; it ends in a line feed; not null
   */
  public String toSvg() {
    return new Lanes().draw();
  }

  /** A lane for each stop, in the order given. */
  private final class Lanes {
    private final List<Strip> strips = line.strips().subList(0, Math.min(MOST, line.strips().size()));
    private final Length low = strips.stream().map(strip -> strip.stop().low()).reduce(line.bayLow(), Length::min);
    private final Length high = strips.stream().map(strip -> strip.stop().high()).reduce(line.bayLow().plus(line.pitch()), Length::max);
    private final double bottom = Figure.TOP + 8 + strips.size() * LANE;
    private final Figure figure =
        new Figure("start-line", title, measures, Paper.scaleFor(high.minus(low).toMillimetres() / (Figure.RIGHT - LEFT)), bottom + 10);
    private final Sheet sheet = figure.sheet;

    private double x(Length level) {
      return LEFT + sheet.paper.of(level.minus(low));
    }

    String draw() {
      figure.caption(title.isBlank() ? "Strips at every stop" : title, "Scale 1:" + Words.grouped(sheet.paper.scale()) + " across the rows, from the"
          + " first row on the left; heights not to scale \u00b7 first row " + measures.withUnit(line.firstRowWidth()) + " \u00b7 lengths "
          + measures.words());
      rows();
      double y = Figure.TOP + 8;
      for (Strip strip : strips) {
        lane(strip, y);
        y += LANE;
      }
      if (line.strips().size() > strips.size()) {
        sheet.note(Words.count(line.strips().size() - strips.size(), "more stop is", "more stops are") + " not drawn.");
      }
      figure.foot.scaleBar();
      key();
      return figure.svg(title.isBlank() ? "A start line and its strips" : "A start line and its strips: " + title, description());
    }

    /** The lines between rows over all lanes, the rows numbered on top. */
    private void rows() {
      StringBuilder lines = new StringBuilder();
      Length from = low;
      Length to = line.bayLow().plus(line.firstRowWidth());
      int row = 1;
      while (from.compareTo(high) < 0 && row < 2000) {
        double x1 = x(from.max(low));
        double x2 = x(to.min(high));
        if (x2 - x1 >= NUMBERED || row % 10 == 0) {
          figure.write(Integer.toString(row), (x1 + x2) / 2, Figure.TOP + 3);
        }
        if (to.compareTo(high) <= 0) {
          Sheet.appendSegment(lines, x2, Figure.TOP + 5.5, x2, bottom);
        }
        from = to;
        to = to.plus(line.pitch());
        row++;
      }
      figure.path(lines.toString(), "", Figure.THIN);
      figure.writeUpTo(LEFT - 3, Figure.TOP + 3, "row");
    }

    private void lane(Strip strip, double top) {
      Stop stop = strip.stop();
      boolean above = stop.side() == Stop.Side.FLOOR_ABOVE;
      double y2 = top + HEIGHT;
      String name = TextSize.cut(stop.name(), Sheet.TEXT, LEFT - 8);
      figure.writeUpTo(LEFT - 5, top + HEIGHT / 2, name);
      // The side of the stop that lies nearer to the starting wall is drawn in front.
      double front = x(above ? stop.high() : stop.low());
      double back = x(above ? stop.low() : stop.high());
      double wall = above ? -2.5 : 2.5;
      figure.path("M" + Svg.number(front) + ' ' + Svg.number(y2) + 'L' + Svg.number(back) + ' ' + Svg.number(top) + 'L' + Svg.number(back + wall)
          + ' ' + Svg.number(top) + 'L' + Svg.number(back + wall) + ' ' + Svg.number(y2) + 'Z', Figure.WALL, 0);
      double edge = x(above ? stop.high().plus(strip.width()) : stop.low().minus(strip.width()));
      boolean narrow = strip.width().compareTo(line.minimum()) < 0;
      if (!strip.width().isZero()) {
        figure.rectangle(Math.min(front, edge), top, Math.max(front, edge), y2, narrow ? "#fff" : "#dadada", narrow ? 0.6 : Figure.FIRM);
      }
      figure.line(front, y2, back, top, 0.5);
      String text = measures.row(strip.width());
      if (!figure.writeWithin(text, Math.min(front, edge), Math.max(front, edge), top + HEIGHT / 2)) {
        double half = TextSize.width(text) * Sheet.TEXT / 2 + 1;
        double y = top + HEIGHT / 2;
        if (!beside(text, above ? edge + half : edge - half, y) && !beside(text, above ? back - 3 - half : back + 3 + half, y)) {
          sheet.note(stop.name() + ": " + measures.withUnit(strip.width()) + ".");
        }
      }
    }

    /** Writes a figure beside its strip, on a white ground, as it stands on the lines between rows. */
    private boolean beside(String text, double x, double y) {
      Box box = Figure.box(text, Sheet.TEXT, x, y);
      if (!figure.free(box)) {
        return false;
      }
      sheet.ground(box);
      sheet.write(text, Sheet.TEXT, box);
      return true;
    }

    private void key() {
      double strip = figure.foot.next("strip at the stop, at its narrowest");
      sheet.lines.line("<rect " + figure.foot.rectangle(strip) + " fill=\"#dadada\" stroke-width=\"0.3\"/>");
      if (strips.stream().anyMatch(one -> one.width().compareTo(line.minimum()) < 0)) {
        double narrow = figure.foot.next("narrower than " + measures.withUnit(line.minimum()));
        sheet.lines.line("<rect " + figure.foot.rectangle(narrow) + " fill=\"#fff\" stroke-width=\"0.6\"/>");
      }
      double stop = figure.foot.next("stop: no floor on this side");
      sheet.lines.line("<rect " + figure.foot.rectangle(stop) + " fill=\"" + Figure.WALL + "\" stroke=\"none\"/>");
    }

    private String description() {
      List<String> words = new ArrayList<>();
      strips.forEach(strip -> words.add(strip.stop().name() + " " + strip.width()));
      return "The rows of a floor, to scale across them, with a first row of " + line.firstRowWidth() + ". Strips at the stops: "
          + Words.list(words, MOST) + ".";
    }
  }
}
