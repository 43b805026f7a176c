package floorcalc.drawing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A sheet while it is being drawn: layers from the walls up to the texts, and the boxes that are taken, so that no text
 * is set where another one or a line that matters already is. Not thread-safe.
 */
final class Sheet {
  /** The smallest digits, 5.4 point, where a place has no room for larger ones: smaller ones are left out. */
  static final double SMALLEST = 1.9;
  /** Everyday text, 8.1 point. */
  static final double TEXT = 2.85;
  /** Text that finds no room otherwise, 6.8 point. */
  static final double LESS = 2.4;

  final Paper paper;
  final Frame frame;
  final Measures measures;
  /** What every identifier begins with. */
  final String id;
  final Svg floor = new Svg();
  final Svg lines = new Svg();
  /** White grounds and frames of texts that stand on lines. */
  final Svg grounds = new Svg();
  final Svg texts = new Svg();
  final Svg boardNumbers = new Svg();
  /** What is shown of the room; all of it unless only the surroundings of a bay are. */
  final Window window;
  private final Taken taken = new Taken();
  private final List<String> notes = new ArrayList<>();
  private final Set<Mark> marks = EnumSet.noneOf(Mark.class);

  Sheet(Paper paper, Frame frame, Measures measures, String id) {
    this(paper, frame, measures, id, Window.ALL);
  }

  Sheet(Paper paper, Frame frame, Measures measures, String id, Window window) {
    this.paper = paper;
    this.window = window;
    this.measures = measures;
    this.frame = frame;
    this.id = id;
  }

  /** Tells whether nothing is in the box yet. */
  boolean free(Box box) {
    return taken.free(box);
  }

  /** Keeps texts out of the box from now on. */
  void take(Box box) {
    taken.add(box);
  }

  /** Lets the key explain a mark. */
  void explain(Mark mark) {
    marks.add(mark);
  }

  Set<Mark> marks() {
    return marks;
  }

  /** Says below the drawing what it leaves out or changes. */
  void note(String sentence) {
    notes.add(sentence);
  }

  /** Says, before the lesser notes, what the drawing leaves out. */
  void noteEarly(String sentence) {
    notes.add(Math.min(1, notes.size()), sentence);
  }

  List<String> notes() {
    return notes;
  }

  /** Puts a white ground under a text that stands on lines. */
  void ground(Box box) {
    grounds.line("<path fill=\"#fff\" stroke=\"none\" d=\"" + box.path() + "\"/>");
  }

  /** Writes a text into the middle of its box, readable from below or from the right, and takes the box. */
  void write(String text, double size, Box box) {
    write(texts, text, size, box);
  }

  /** Writes a text likewise, white on what is drawn below it. */
  void writeReversed(String text, double size, Box box) {
    texts.line("<g fill=\"#fff\">");
    write(texts, text, size, box);
    texts.line("</g>");
  }

  /** Writes a board's number, likewise, among the board numbers. */
  void writeBoardNumber(String number, double size, Box box) {
    write(boardNumbers, number, size, box);
  }

  private void write(Svg layer, String text, double size, Box box) {
    take(box);
    double turn = turn(box.ux(), box.uy());
    double radians = StrictMath.toRadians(turn);
    double drop = TextSize.BASELINE * size;
    double x = turn == 0 ? box.x() : box.x() - drop * StrictMath.sin(radians);
    double y = turn == 0 ? box.y() + drop : box.y() + drop * StrictMath.cos(radians);
    StringBuilder attributes = new StringBuilder("x=\"");
    Svg.appendNumber(attributes, x);
    attributes.append("\" y=\"");
    Svg.appendNumber(attributes, y);
    attributes.append("\" font-size=\"");
    Svg.appendNumber(attributes, size);
    attributes.append('"');
    if (turn != 0) {
      attributes.append(" transform=\"rotate(");
      Svg.appendNumber(attributes, turn);
      attributes.append(' ');
      Svg.appendNumber(attributes, x);
      attributes.append(' ');
      Svg.appendNumber(attributes, y);
      attributes.append(")\"");
    }
    layer.element("text", attributes.toString(), text);
  }

  /** Writes a line of text that begins at a place; y is its baseline. */
  void writeFrom(String text, double size, double x, double y) {
    texts.element("text", Svg.attribute("x", x) + ' ' + Svg.attribute("y", y) + ' ' + Svg.attribute("font-size", size)
        + " text-anchor=\"start\"", text);
  }

  /** Writes a line of text likewise, at most so wide: a little smaller if need be, and then cut. */
  void writeFitting(String text, double width, double x, double y) {
    double size = Math.max(LESS, Math.min(TEXT, width / TextSize.width(text)));
    writeFrom(TextSize.cut(text, size, width), size, x, y);
  }

  /** Writes a line of text that ends at a place; y is its baseline. */
  void writeUpTo(String text, double size, double x, double y) {
    texts.element("text", Svg.attribute("x", x) + ' ' + Svg.attribute("y", y) + ' ' + Svg.attribute("font-size", size)
        + " text-anchor=\"end\"", text);
  }

  /**
   * Returns the degrees, clockwise on the sheet, that set text along a vector: from -95 up to but not including 85, so
   * that text is read from below or from the right, and from the right too where a wall is a little out of plumb.
   */
  static double turn(double dx, double dy) {
    double degrees = StrictMath.rint(StrictMath.toDegrees(StrictMath.atan2(dy, dx)) * 100) / 100;
    if (degrees >= 85) {
      degrees -= 180;
    } else if (degrees < -95) {
      degrees += 180;
    }
    return degrees + 0.0;
  }

  /** Draws a line and keeps texts off it. */
  void stroke(double x1, double y1, double x2, double y2, double thickness) {
    lines.line("<path stroke-width=\"" + Svg.number(thickness) + "\" d=\"" + segment(x1, y1, x2, y2) + "\"/>");
    take(Box.along(x1, y1, x2, y2, thickness + 0.2));
  }

  /** Returns path data for one line. */
  static String segment(double x1, double y1, double x2, double y2) {
    StringBuilder d = new StringBuilder(32);
    appendSegment(d, x1, y1, x2, y2);
    return d.toString();
  }

  static void appendSegment(StringBuilder d, double x1, double y1, double x2, double y2) {
    d.append('M');
    Svg.appendNumber(d, x1);
    d.append(' ');
    Svg.appendNumber(d, y1);
    d.append('L');
    Svg.appendNumber(d, x2);
    d.append(' ');
    Svg.appendNumber(d, y2);
  }

  /** Returns all layers as one SVG element, so high, with a title and a description for those who do not see it. */
  String svg(double end, String title, String description) {
    String width = Svg.number(paper.width());
    String height = Svg.number(end);
    Svg svg = new Svg();
    svg.line("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"" + id + "-title "
        + id + "-desc\" width=\"" + width + "mm\" height=\"" + height + "mm\" viewBox=\"0 0 " + width + ' '
        + height + "\" font-family=\"sans-serif\" fill=\"none\" stroke=\"#000\">");
    svg.element("title", "id=\"" + id + "-title\"", title);
    svg.element("desc", "id=\"" + id + "-desc\"", description);
    svg.line("<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"#fff\" stroke=\"none\"/>");
    svg.line("<g>").add(floor).line("</g>");
    svg.line("<g>").add(lines).line("</g>");
    svg.line("<g>").add(grounds).line("</g>");
    svg.line("<g fill=\"#000\" stroke=\"none\" text-anchor=\"middle\">").add(texts).line("</g>");
    svg.line("</svg>");
    return svg.toString();
  }
}
