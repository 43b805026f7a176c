package floorcalc.drawing;

import floorcalc.plan.PieceKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What stands below the drawing: scale bar, key to the marks, and notes. */
final class Foot {
  private static final double EDGE = 4;
  private static final double KEY = 2.6;
  private static final double KEY_LINE = 4.8;
  private static final double NOTE_LINE = 3.2;
  private static final double NOTE = 2.5;
  private static final double GLYPH = 8.5;
  private static final double LONGEST_BAR = 60;
  private static final double MILLIMETRES_PER_FOOT = 304.8;
  private static final Frame UPRIGHT = new Frame(1, 0, 0, -1);
  private static final Frame TO_THE_RIGHT = new Frame(0, 1, 1, 0);

  private final Sheet sheet;
  private double x = EDGE;
  private double y;
  private boolean hasRoom = true;

  Foot(Sheet sheet) {
    this.sheet = sheet;
    this.y = sheet.paper.footTop();
  }

  /** Draws a bar of a round length, with its half. */
  void scaleBar() {
    boolean feet = sheet.measures == Measures.FEET_AND_INCHES;
    long length = feet ? 1 : 10;
    double unit = (feet ? MILLIMETRES_PER_FOOT : 1.0) / sheet.paper.scale();
    for (long ten = length; ten * unit <= LONGEST_BAR; ten *= 10) {
      for (int times : new int[] {1, 2, 5}) {
        if (ten * times * unit <= LONGEST_BAR) {
          length = ten * times;
        }
      }
    }
    double width = length * unit;
    double base = y + 4.5;
    sheet.lines.line("<path stroke-width=\"0.25\" d=\"" + Sheet.segment(EDGE, base, EDGE + width, base)
        + Sheet.segment(EDGE, base, EDGE, base - 1.6)
        + Sheet.segment(EDGE + width / 2, base, EDGE + width / 2, base - 1.1)
        + Sheet.segment(EDGE + width, base, EDGE + width, base - 1.6) + "\"/>");
    sheet.lines.line("<path stroke-width=\"0.8\" d=\"" + Sheet.segment(EDGE, base + 0.4, EDGE + width / 2, base + 0.4)
        + "\"/>");
    number("0", EDGE + 0.7, base - 3, Sheet.TEXT);
    String text = feet ? length + " ft" : length >= 1000 ? Words.grouped(length / 1000) + " m" : length + " mm";
    number(text, EDGE + width, base - 3, Sheet.TEXT);
    String scale = "scale 1:" + Words.grouped(sheet.paper.scale()) + " when printed in full size";
    double beside = EDGE + width + Math.max(2, TextSize.width(text) * Sheet.TEXT / 2 + 1);
    sheet.writeFrom(scale, Sheet.TEXT, beside, base + 0.8);
    // The key goes on beside the bar.
    x = beside + TextSize.width(scale) * Sheet.TEXT + 4;
    y = base;
  }

  /** Explains the marks that the drawing uses. */
  void key(Set<PieceKind> kinds, double tick) {
    Set<Mark> marks = sheet.marks();
    for (PieceKind kind : kinds) {
      double left = next(Words.kind(kind));
      sheet.lines.line("<rect " + rectangle(left) + " fill=\"" + Boards.tone(kind) + "\" stroke-width=\"0.18\"/>");
    }
    if (marks.contains(Mark.SAWN)) {
      double left = next("sawn side");
      sheet.lines.line("<path stroke-width=\"0.18\" d=\"" + Sheet.segment(left, y + 0.5, left + 6, y + 0.5) + "\"/>");
      sheet.lines.line("<path stroke-width=\"" + Svg.number(tick) + "\" stroke-dasharray=\"0.12 0.55\" d=\""
          + Sheet.segment(left, y + 0.5 - tick / 2, left + 6, y + 0.5 - tick / 2) + "\"/>");
    }
    if (marks.contains(Mark.JOINT)) {
      double left = next("factory ends meet");
      sheet.lines.line("<path stroke-width=\"0.32\" d=\"" + Sheet.segment(left + 3, y - 1.6, left + 3, y + 1.6)
          + "\"/>");
    }
    if (marks.contains(Mark.BOARD_NUMBER)) {
      double left = next("number of the board that the piece is cut from");
      sheet.lines.line("<rect " + rectangle(left) + " stroke-width=\"0.18\"/>");
      number("12", left + 3, Sheet.SMALLEST);
    }
    double row = next("row");
    number("7", row + 3, Sheet.TEXT);
    if (marks.contains(Mark.WALL_NUMBER)) {
      double left = next("wall, its length " + sheet.measures.words());
      sheet.lines.line("<circle " + Svg.attribute("cx", left + 3) + ' ' + Svg.attribute("cy", y)
          + " r=\"1.9\" stroke-width=\"0.18\"/>");
      number("1", left + 3, 2.2);
    }
    if (marks.contains(Mark.START_ARROW)) {
      double left = next("from the starting wall on, the way the rows follow");
      RowMarks.startArrow(sheet.lines, TO_THE_RIGHT, y, left);
    }
    if (marks.contains(Mark.ROW_ARROW)) {
      double left = next("the way each row is laid");
      RowMarks.rowArrow(sheet.lines, UPRIGHT, left, -y);
    }
    pipesAndProfiles();
    endKey();
  }

  /** Explains pipes, breaks and profiles. */
  void pipesAndProfiles() {
    Set<Mark> marks = sheet.marks();
    if (marks.contains(Mark.PIPE)) {
      boolean hole = marks.contains(Mark.PIPE_HOLE);
      double left = next(hole ? "pipe and its hole" : "pipe");
      if (hole) {
        Openings.hole(sheet.lines, left + 3, y, 1.5);
      }
      Openings.pipe(sheet.lines, left + 3, y, 0.9);
    }
    if (marks.contains(Mark.BREAK)) {
      double left = next("expansion break or edge under a profile");
      ProfileMarks.chain(sheet.lines, left, y, left + 6, y);
    }
    profile(Mark.T_PROFILE, "T", "T profile, with its number in the list");
    profile(Mark.REDUCER, "R", marks.contains(Mark.FALL) ? "reducer; the triangle points down the fall" : "reducer");
    profile(Mark.END_PROFILE, "E", "end profile");
    profile(Mark.NOSING, "N", "nosing at a step edge");
  }

  private void profile(Mark mark, String letter, String words) {
    if (!sheet.marks().contains(mark)) {
      return;
    }
    double left = next(words);
    boolean falls = mark == Mark.REDUCER && sheet.marks().contains(Mark.FALL);
    double middle = left + (falls ? 2 : 3);
    ProfileMarks.frame(sheet, letter, new Box(middle, y, TextSize.width(letter) * Sheet.TEXT / 2 + ProfileMarks.MARGIN,
        ProfileMarks.HALF_HEIGHT, 1, 0));
    if (falls) {
      ProfileMarks.triangle(sheet.lines, left + 4.2, y, 1, 0);
    }
  }

  /** Goes on below the last line of the key. */
  void endKey() {
    y += KEY_LINE - 0.5;
  }

  /** Returns the height of the middle of the entry that was begun last. */
  double middle() {
    return y;
  }

  /** Returns the place and size of a box as the sign of an entry. */
  String rectangle(double left) {
    return Svg.attribute("x", left) + ' ' + Svg.attribute("y", y - 1.5) + " width=\"6\" height=\"3\"";
  }

  /** Writes digits as the sign of an entry. */
  void number(String digits, double middle, double size) {
    number(digits, middle, y, size);
  }

  private void number(String digits, double middle, double height, double size) {
    sheet.write(digits, size, new Box(middle, height, TextSize.width(digits) * size / 2, 0.39 * size, 1, 0));
  }

  /** Writes the words of the next entry and returns where its sign begins, on the next line when this one is full. */
  double next(String words) {
    double width = GLYPH + TextSize.width(words) * KEY;
    if (x > EDGE && x + width > sheet.paper.width() - EDGE) {
      x = EDGE;
      y += KEY_LINE;
    }
    double left = x;
    sheet.writeFrom(words, KEY, left + GLYPH, y + TextSize.BASELINE * KEY);
    x += width + 4;
    return left;
  }

  /** Writes the notes, as many lines as the sheet has room for. */
  void notes() {
    double width = sheet.paper.width() - 2 * EDGE;
    List<String> lines = new ArrayList<>();
    for (String note : sheet.notes()) {
      lines.addAll(Words.wrap(note, NOTE, width));
    }
    int room = (int) Math.floor((sheet.paper.highest() - y - 1) / NOTE_LINE);
    hasRoom = lines.size() <= room;
    if (!hasRoom) {
      lines = new ArrayList<>(lines.subList(0, Math.max(0, room - 1)));
      lines.add("More notes than the sheet has room for; the plan itself has every figure.");
    }
    for (String line : lines) {
      sheet.writeFrom(line, NOTE, EDGE, y + 1);
      y += NOTE_LINE;
    }
  }

  /** Tells whether every note had room. */
  boolean hasRoom() {
    return hasRoom;
  }

  /** Returns the y where the sheet may end, a whole millimetre. */
  double end() {
    return Math.min(sheet.paper.highest(), StrictMath.ceil(y + 1));
  }
}
