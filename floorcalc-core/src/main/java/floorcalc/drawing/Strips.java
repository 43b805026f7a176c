package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.plan.Bay;
import floorcalc.plan.Row;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a drawing that is larger than a sheet into strips, in the order of reading, and puts as many of them on a sheet as
 * have room. Each strip repeats the end of the one before, so that a text that is cut in one is whole in the other.
 */
final class Strips {
  /** What a strip repeats of the one before. */
  static final double OVERLAP = 14;
  private static final double HEAD = 13;
  private static final double LABEL = 4.5;
  private static final double EDGE = 4;
  private static final double FOOT = 7;
  /** A bay that takes more sheets than this is not drawn in strips. */
  private static final int MOST_SHEETS = 30;

  private final Sheet roll;
  private final String title;
  private final String description;
  private final double rollTop;
  private final double rollHeight;
  private final boolean lying;

  /** A window onto the roll. */
  private record Window(double x, double y, double width, double height) {}

  Strips(Sheet roll, String title, String description) {
    this.roll = roll;
    this.title = title;
    this.description = description;
    this.rollTop = Paper.CAPTION;
    this.rollHeight = roll.paper.highest() - Paper.CAPTION;
    this.lying = roll.paper.width() >= rollHeight;
  }

  private double sheetWidth() {
    return lying ? Paper.LONG_SIDE : Paper.SHORT_SIDE;
  }

  private double sheetHeight() {
    return lying ? Paper.SHORT_SIDE : Paper.LONG_SIDE;
  }

  List<FloorDrawing> draw(Bay bay) {
    List<Window> windows = windows();
    double width = windows.get(0).width();
    double height = windows.get(0).height() + LABEL;
    int across = (int) Math.max(1, Math.floor((sheetWidth() - 2 * EDGE + EDGE) / (width + EDGE)));
    int down = (int) Math.max(1, Math.floor((sheetHeight() - HEAD - FOOT) / height));
    int sheets = (windows.size() + across * down - 1) / (across * down);
    List<FloorDrawing> drawn = new ArrayList<>();
    for (int sheet = 0; sheet < sheets && sheets <= MOST_SHEETS; sheet++) {
      drawn.add(sheet(bay, windows, across, down, sheet, sheets));
    }
    return drawn;
  }

  /** The windows along the rows of strips: from the left, or from the bottom where strips stand; then the next line of them. */
  private List<Window> windows() {
    double width = Math.min(roll.paper.width(), sheetWidth() - 2 * EDGE);
    double height = Math.min(rollHeight, sheetHeight() - HEAD - FOOT - LABEL);
    double[] xs = places(roll.paper.width(), width);
    double[] ys = places(rollHeight, height);
    List<Window> windows = new ArrayList<>();
    for (int i = 0; i < (lying ? ys.length : xs.length); i++) {
      for (int j = 0; j < (lying ? xs.length : ys.length); j++) {
        double x = xs[lying ? j : i];
        // Lines of strips are read from above; strips that stand one on the other from below, as the rows of a floor.
        double y = ys[lying ? i : ys.length - 1 - j];
        windows.add(new Window(x, rollTop + y, width, height));
      }
    }
    return windows;
  }

  /** Where windows begin so that they cover a length with even overlaps. */
  private static double[] places(double length, double window) {
    int count = length <= window ? 1 : (int) StrictMath.ceil((length - OVERLAP) / (window - OVERLAP));
    double[] places = new double[count];
    for (int i = 1; i < count; i++) {
      places[i] = (length - window) * i / (count - 1);
    }
    return places;
  }

  private FloorDrawing sheet(Bay bay, List<Window> windows, int across, int down, int number, int sheets) {
    String id = roll.id + '-' + (number + 1);
    int first = number * across * down;
    int last = Math.min(windows.size(), first + across * down);
    Svg texts = new Svg();
    text(texts, TextSize.cut(bay.room() + ", bay " + bay.bay(), 4.2, sheetWidth() / 2), 4.2, EDGE, 5.4);
    text(texts, TextSize.cut("Part " + (number + 1) + " of " + sheets + " \u00b7 scale 1:"
        + Words.grouped(roll.paper.scale()) + " when printed in full size \u00b7 each strip repeats the end of the one before \u00b7 lengths "
        + roll.measures.words(), Sheet.TEXT, sheetWidth() - 2 * EDGE), Sheet.TEXT, EDGE, 10.4);
    Svg uses = new Svg();
    double lowest = 0;
    for (int k = first; k < last; k++) {
      Window window = windows.get(k);
      double x = EDGE + (k - first) % across * (window.width() + EDGE);
      double y = HEAD + (k - first) / across * (window.height() + LABEL);
      text(texts, "Strip " + (k + 1) + " of " + windows.size(), Sheet.TEXT, x, y + 3);
      uses.line("<svg aria-hidden=\"true\" " + Svg.attribute("x", x) + ' ' + Svg.attribute("y", y + LABEL) + " width=\""
          + Svg.number(window.width()) + "\" height=\"" + Svg.number(window.height()) + "\" viewBox=\""
          + Svg.number(window.x()) + ' ' + Svg.number(window.y()) + ' ' + Svg.number(window.width()) + ' '
          + Svg.number(window.height()) + "\"><use href=\"#" + id + "-whole\"/></svg>");
      rowNumbers(texts, bay, window, x, y + LABEL);
      lowest = Math.max(lowest, y + LABEL + window.height());
    }
    if (number == sheets - 1) {
      lowest = notes(texts, lowest);
    }
    String width = Svg.number(sheetWidth());
    double end = StrictMath.ceil(lowest + 1);
    String height = Svg.number(end);
    Svg svg = new Svg();
    svg.line("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"" + id + "-title " + id
        + "-desc\" width=\"" + width + "mm\" height=\"" + height + "mm\" viewBox=\"0 0 " + width + ' ' + height
        + "\" font-family=\"sans-serif\" fill=\"none\" stroke=\"#000\">");
    svg.element("title", "id=\"" + id + "-title\"", title + ", part " + (number + 1) + " of " + sheets);
    svg.element("desc", "id=\"" + id + "-desc\"", description);
    svg.line("<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"#fff\" stroke=\"none\"/>");
    svg.line("<defs>").line("<g id=\"" + id + "-whole\">");
    svg.line("<g>").add(roll.floor).line("</g>");
    svg.line("<g>").add(roll.lines).line("</g>");
    svg.line("<g fill=\"#000\" stroke=\"none\" text-anchor=\"middle\">").add(roll.texts).add(roll.boardNumbers).line("</g>");
    svg.line("</g>").line("</defs>").add(uses);
    svg.line("<g fill=\"#000\" stroke=\"none\">").add(texts).line("</g>").line("</svg>");
    return new FloorDrawing(svg.toString().replace("id=\"" + roll.id + "-piece", "id=\"" + id + "-piece")
        .replace("id=\"" + roll.id + "-walls", "id=\"" + id + "-walls"), Length.ofMillimetres((long) sheetWidth()),
        Length.ofMillimetres((long) end));
  }

  /** Numbers the rows at the left of a strip that they run along. */
  private void rowNumbers(Svg texts, Bay bay, Window window, double x, double y) {
    Frame frame = roll.frame;
    if (!lying || Math.abs(frame.uy()) > 1e-9) {
      return;
    }
    double along = frame.along(window.x() + 1, 0);
    for (Row row : bay.rows()) {
      for (PieceShape piece : PieceShape.of(roll, row)) {
        if (piece.a0() <= along && along <= piece.a1()) {
          double middle = frame.y(along, (piece.c0() + piece.c1()) / 2) - window.y();
          texts.element("text", Svg.attribute("x", x - 0.6) + ' ' + Svg.attribute("y", y + middle
              + TextSize.BASELINE * Sheet.SMALLEST) + ' ' + Svg.attribute("font-size", Sheet.SMALLEST)
              + " text-anchor=\"end\"", Integer.toString(row.row()));
          break;
        }
      }
    }
  }

  /** Says which pieces have no number all the same, as far as there is room. */
  private double notes(Svg texts, double from) {
    double y = from;
    for (String note : roll.notes()) {
      if (note.startsWith(Boards.TOO_SMALL)) {
        for (String line : Words.wrap(note, Sheet.TEXT, sheetWidth() - 2 * EDGE)) {
          if (y + 3.5 < sheetHeight()) {
            y += 3.4;
            text(texts, line, Sheet.TEXT, EDGE, y);
          }
        }
      }
    }
    return y;
  }

  private static void text(Svg svg, String text, double size, double x, double y) {
    svg.element("text", Svg.attribute("x", x) + ' ' + Svg.attribute("y", y) + ' ' + Svg.attribute("font-size", size), text);
  }
}
