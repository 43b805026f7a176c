package floorcalc.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A sheet for what is no plan: a section, bars, heights along a line. It is as wide as an upright sheet and as high as it must be, and
 * has the caption, the key, the notes and the way of writing of the plans. Millimetres on paper, y downwards. Not thread-safe.
 */
final class Figure {
  /** Where drawings begin and end from left to right. */
  static final double LEFT = 16;
  static final double RIGHT = 168;
  /** Where they begin below the caption. */
  static final double TOP = 20;
  static final double THIN = 0.18;
  static final double FIRM = 0.3;
  static final String WALL = "#a8a8a8";
  private static final double HEADING = 4.2;
  private static final double EDGE = 4;
  private static final double OVER_LINE = 2;

  final Sheet sheet;
  final Foot foot;

  Figure(String kind, String title, Measures measures, long scale, double footTop) {
    this.sheet = new Sheet(Paper.figure(scale, footTop), new Frame(1, 0, 0, -1), measures,
        title.isBlank() ? kind : Svg.identifier(kind + '-', title));
    this.foot = new Foot(sheet);
  }

  /** Returns the smallest round scale at which a length keeps between the two sides. */
  static long scale(double millimetres) {
    return Paper.scaleFor(millimetres / (RIGHT - LEFT));
  }

  /** Writes the heading and below it the facts, on as many lines as they need. */
  void caption(String heading, String facts) {
    double width = sheet.paper.width() - 2 * EDGE;
    sheet.writeFrom(TextSize.cut(heading, HEADING, width), HEADING, EDGE, 5.4);
    if (TextSize.width(facts) * Sheet.LESS <= width) {
      sheet.writeFitting(facts, width, EDGE, 10.4);
      return;
    }
    List<String> lines = Words.wrap(facts, Sheet.LESS, width);
    sheet.writeFrom(lines.get(0), Sheet.LESS, EDGE, 9.9);
    String rest = String.join(" ", lines.subList(1, lines.size()));
    sheet.writeFrom(TextSize.cut(rest, Sheet.LESS, width), Sheet.LESS, EDGE, 13.1);
  }

  /** Draws a box. */
  void rectangle(double x1, double y1, double x2, double y2, String fill, double thickness) {
    sheet.floor.line("<rect " + Svg.attribute("x", x1) + ' ' + Svg.attribute("y", y1) + ' ' + Svg.attribute("width", x2 - x1) + ' '
        + Svg.attribute("height", y2 - y1) + " fill=\"" + fill + '"' + (thickness == 0 ? " stroke=\"none\"" : stroke(thickness)) + "/>");
  }

  /** Draws an area or a line from path data. */
  void path(String data, String fill, double thickness) {
    sheet.floor.line("<path" + (fill.isEmpty() ? "" : " fill=\"" + fill + '"')
        + (thickness == 0 ? " stroke=\"none\"" : stroke(thickness)) + " d=\"" + data + "\"/>");
  }

  /** Draws a line that keeps texts off. */
  void line(double x1, double y1, double x2, double y2, double thickness) {
    sheet.stroke(x1, y1, x2, y2, thickness);
  }

  /** Draws a dashed line that keeps texts off. */
  void dashed(double x1, double y1, double x2, double y2) {
    sheet.lines.line("<path" + stroke(0.2) + " stroke-dasharray=\"1.2 0.8\" d=\"" + Sheet.segment(x1, y1, x2, y2) + "\"/>");
    sheet.take(Box.along(x1, y1, x2, y2, 0.4));
  }

  /** Draws a dot. */
  void dot(double x, double y, double radius, String fill) {
    sheet.lines.line("<circle " + Svg.attribute("cx", x) + ' ' + Svg.attribute("cy", y) + ' ' + Svg.attribute("r", radius)
        + " fill=\"" + fill + '"' + stroke(0.2) + "/>");
    sheet.take(Box.upright(x - radius, y - radius, x + radius, y + radius));
  }

  static String stroke(double thickness) {
    return " stroke-width=\"" + Svg.number(thickness) + '"';
  }

  /** Returns the box of a text round its middle. */
  static Box box(String text, double size, double x, double y) {
    return new Box(x, y, TextSize.width(text) * size / 2, TextSize.halfHeight(text) * size, 1, 0);
  }

  /** Tells whether a text has room on the sheet there. */
  boolean free(Box box) {
    return box.within(1, Paper.CAPTION, sheet.paper.width() - 1, sheet.paper.footTop()) && sheet.free(box);
  }

  /** Writes a text round its middle if it has room. */
  boolean write(String text, double x, double y) {
    for (double size : new double[] {Sheet.TEXT, Sheet.LESS}) {
      Box box = box(text, size, x, y);
      if (free(box)) {
        sheet.write(text, size, box);
        return true;
      }
    }
    return false;
  }

  /** Writes a text inside a box if it fits there with a little room, else smaller, else not. */
  boolean writeWithin(String text, double x1, double x2, double y) {
    for (double size : new double[] {Sheet.TEXT, Sheet.LESS, Sheet.SMALLEST}) {
      Box box = box(text, size, (x1 + x2) / 2, y);
      if (2 * box.halfWidth() + 0.6 <= x2 - x1 && free(box)) {
        sheet.write(text, size, box);
        return true;
      }
    }
    return false;
  }

  /** Writes the first of several texts that has room on the left of a place, ending there. */
  boolean writeUpTo(double x, double y, String... texts) {
    for (String text : texts) {
      if (write(text, x - TextSize.width(text) * Sheet.TEXT / 2, y)) {
        return true;
      }
    }
    return false;
  }

  /** Writes the first of several texts that has room on the right of a place. */
  boolean writeFrom(double x, double y, String... texts) {
    for (String text : texts) {
      if (write(text, x + TextSize.width(text) * Sheet.TEXT / 2, y)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Draws a dimension line from left to right with its figure over the middle or, where that has no room, further up with a leader, or
   * beside the line; else says it in a note.
   */
  void dimension(double x1, double x2, double y, String text, String note) {
    line(x1, y, x2, y, THIN);
    OverallDimensions.tick(sheet, x1, y, 1, 0);
    OverallDimensions.tick(sheet, x2, y, 1, 0);
    double half = TextSize.width(text) * Sheet.TEXT / 2;
    double middle = (x1 + x2) / 2;
    if (2 * half + 1 <= x2 - x1 && write(text, middle, y - OVER_LINE)) {
      return;
    }
    for (double up = 3; up < 10; up += 3) {
      for (double aside : new double[] {0, half + 1, -half - 1, 2 * half + 2, -2 * half - 2}) {
        Box box = box(text, Sheet.TEXT, middle + aside, y - OVER_LINE - up);
        Box leader = Box.along(middle, y - 0.4, middle + aside, y - up - 0.4, 0.2);
        if (free(box) && sheet.free(leader)) {
          sheet.write(text, Sheet.TEXT, box);
          line(middle, y - 0.2, middle + aside, y - up - 0.2, THIN);
          return;
        }
      }
    }
    if (!write(text, x2 + half + 1.5, y) && !write(text, x1 - half - 1.5, y)) {
      sheet.note(note);
    }
  }

  /** Draws a dimension line from top to bottom with its figure beside the middle, or beyond its ends; else says it in a note. */
  void upright(double x, double y1, double y2, String text, String note) {
    line(x, y1, x, y2, THIN);
    OverallDimensions.tick(sheet, x, y1, 0, -1);
    OverallDimensions.tick(sheet, x, y2, 0, -1);
    double half = TextSize.width(text) * Sheet.TEXT / 2;
    double middle = (y1 + y2) / 2;
    boolean written = false;
    for (double y : new double[] {middle, y1 - 2, y2 + 2, y1 - 4.5, y2 + 4.5}) {
      boolean beyond = y < y1 || y > y2;
      written = written || write(text, x + half + 1, y) || write(text, x - half - 1, y) || beyond && write(text, x, y);
    }
    if (!written) {
      sheet.note(note);
    }
  }

  /** A figure at a place of a row of figures. */
  record Tag(double at, String text) {
  }

  /**
   * Writes figures under places of a line, in order, each with a tick; where they would collide they are spread and led back to their
   * places. What has no room goes into a note.
   */
  void ordinates(List<Tag> tags, double y, String what) {
    List<Tag> shown = new ArrayList<>(tags);
    List<String> left = new ArrayList<>();
    double room = sheet.paper.width() - 4;
    while (shown.size() > 2 && shown.stream().mapToDouble(Figure::reach).sum() > room) {
      left.add(shown.remove(shown.size() / 2).text());
    }
    double[] places = Spread.of(shown.stream().mapToDouble(Tag::at).toArray(), shown.stream().mapToDouble(Figure::reach).toArray(), 2,
        2 + room);
    for (Tag tag : tags) {
      line(tag.at(), y - 1, tag.at(), y + 1, THIN);
    }
    for (int i = 0; i < shown.size(); i++) {
      Tag tag = shown.get(i);
      if (!write(tag.text(), places[i], y + 4.2)) {
        left.add(tag.text());
      } else {
        sheet.lines.line("<path" + stroke(THIN) + " d=\"" + Sheet.segment(tag.at(), y + 1, places[i], y + 2.7) + "\"/>");
      }
    }
    if (!left.isEmpty()) {
      sheet.note(what + " without room: " + Words.list(left, 30) + ".");
    }
  }

  private static double reach(Tag tag) {
    return TextSize.width(tag.text()) * Sheet.TEXT + 0.8;
  }

  /** Puts the layers together. */
  String svg(String title, String description) {
    foot.endKey();
    foot.notes();
    return sheet.svg(foot.end(), title, description);
  }
}
