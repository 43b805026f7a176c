package floorcalc.drawing;

import java.util.Set;

/** What the marks of a drawing of a survey mean, and how many times larger than to scale they are. */
final class SurveyKey {
  private final Foot foot;
  private final Sheet sheet;

  SurveyKey(Foot foot, Sheet sheet) {
    this.foot = foot;
    this.sheet = sheet;
  }

  /** Writes the entries that every shape has. */
  void write() {
    Set<Mark> marks = sheet.marks();
    if (marks.contains(Mark.CORNER_NUMBER)) {
      double left = foot.next("corner");
      sheet.grounds.line("<rect " + Svg.attribute("x", left + 1.5) + ' ' + Svg.attribute("y", foot.middle() - 1.5)
          + " width=\"3\" height=\"3\" fill=\"#000\" stroke=\"none\"/>");
      sheet.writeReversed("3", 2.2, new Box(left + 3, foot.middle(), 1, 1, 1, 0));
    }
    if (marks.contains(Mark.WALL_NUMBER)) {
      double left = foot.next("wall, its length as read, " + sheet.measures.words());
      sheet.lines.line("<circle " + Svg.attribute("cx", left + 3) + ' ' + Svg.attribute("cy", foot.middle())
          + " r=\"1.9\" stroke-width=\"0.18\"/>");
      foot.number("1", left + 3, 2.2);
    }
    if (marks.contains(Mark.TIE)) {
      dashes(foot.next("tie, its length as read"), "stroke-width=\"0.18\" stroke-dasharray=\"1.6 0.8\"");
    }
    if (marks.contains(Mark.PROPOSED_TIE)) {
      dashes(foot.next("to be measured"), "stroke-width=\"0.4\" stroke-dasharray=\"2.4 1.2\"");
    }
    if (marks.contains(Mark.MISFIT)) {
      double left = foot.next("may be wrong: measure again");
      sheet.lines.line("<rect " + foot.rectangle(left) + " stroke-width=\"0.35\"/>");
    }
    if (marks.contains(Mark.SQUARE)) {
      double left = foot.next("square, as far as the readings tell");
      double y = foot.middle();
      sheet.lines.line("<path stroke-width=\"0.6\" d=\"" + Sheet.segment(left + 2, y - 1.6, left + 2, y + 1.4) + "L"
          + Svg.number(left + 5) + ' ' + Svg.number(y + 1.4) + "\"/>");
      sheet.lines.line("<path stroke-width=\"0.18\" d=\"" + Sheet.segment(left + 2, y - 0.3, left + 3.7, y - 0.3) + "L"
          + Svg.number(left + 3.7) + ' ' + Svg.number(y + 1.4) + "\"/>");
    }
  }

  /** Writes the entries of a room that is fixed. */
  void write(SurveyErrors errors) {
    Set<Mark> marks = sheet.marks();
    if (marks.contains(Mark.ANGLE)) {
      double left = foot.next("inner angle; how far the end of the shorter wall is out of square");
      foot.number("91.0\u00b0", left + 3, Sheet.SMALLEST);
    }
    if (marks.contains(Mark.ELLIPSE)) {
      double left = foot.next("how sure a corner is, one standard deviation, " + errors.ellipses().words() + "; at most "
          + sheet.measures.withUnit(Words.fromMillimetres(errors.leastSure().greatestDeviation())) + ", corner "
          + errors.leastSure().name());
      sheet.lines.line("<ellipse " + Svg.attribute("cx", left + 3) + ' ' + Svg.attribute("cy", foot.middle())
          + " rx=\"2.4\" ry=\"1.3\" stroke-width=\"0.2\"/>");
      sheet.lines.line("<circle " + Svg.attribute("cx", left + 3) + ' ' + Svg.attribute("cy", foot.middle())
          + " r=\"0.35\" fill=\"#000\" stroke=\"none\"/>");
    }
    if (marks.contains(Mark.RESIDUAL_BAR)) {
      double black = foot.next("read too short, the bar " + errors.bars().words());
      SurveyErrors.draw(sheet.lines, new Box(black + 3, foot.middle(), 3, 0.5, 1, 0), 1);
      double white = foot.next("read too long");
      SurveyErrors.draw(sheet.lines, new Box(white + 3, foot.middle(), 3, 0.5, 1, 0), -1);
    }
    if (marks.contains(Mark.RESIDUAL)) {
      double left = foot.next("what the adjustment adds, where it is more than usual");
      foot.number("+6", left + 3, Sheet.TEXT);
    }
    if (marks.contains(Mark.WALK)) {
      double left = foot.next("the walls as read, walked from corner 1, what they are off " + errors.walk().words()
          + "; the heavy line is what does not close");
      dashes(left, "stroke-width=\"0.2\" stroke-dasharray=\"0.7 0.6\"");
    }
  }

  private void dashes(double left, String style) {
    sheet.lines.line("<path " + style + " d=\"" + Sheet.segment(left, foot.middle(), left + 6, foot.middle()) + "\"/>");
  }
}
