package floorcalc.drawing;

import floorcalc.levels.LevelPlane;
import floorcalc.levels.SubfloorPreparation;
import floorcalc.measure.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/** What the tones, marks and hatchings of a drawing of levels mean. */
final class LevelsKey {
  private final Foot foot;
  private final Sheet sheet;
  private final LevelsDrawing drawing;
  private final LevelPlane plane;

  LevelsKey(Foot foot, Sheet sheet, LevelsDrawing drawing, LevelPlane plane) {
    this.foot = foot;
    this.sheet = sheet;
    this.drawing = drawing;
    this.plane = plane;
  }

  void write(HeightBands bands) {
    tones(bands);
    marks();
    work();
    fall();
    foot.endKey();
  }

  private void tones(HeightBands bands) {
    List<Length> heights = bands.heights();
    for (int band = heights.size(); band >= 0; band--) {
      String words = heights.isEmpty() ? "all readings"
          : band == heights.size() ? "above " + sheet.measures.markedHeight(heights.get(band - 1))
          : band == 0 ? "below " + sheet.measures.markedHeight(heights.get(0))
          : sheet.measures.height(heights.get(band - 1)) + " to " + sheet.measures.height(heights.get(band));
      double left = foot.next(words);
      sheet.lines.line("<rect " + foot.rectangle(left) + " fill=\"" + bands.tone(band) + "\" stroke-width=\"0.18\"/>");
    }
  }

  private void marks() {
    if (sheet.marks().contains(Mark.HIGHEST_AND_LOWEST)) {
      double high = foot.next("highest reading");
      SpotFigures.triangle(sheet.lines, high + 3, foot.middle(), -1, "#000");
      double low = foot.next("lowest reading");
      SpotFigures.triangle(sheet.lines, low + 3, foot.middle(), 1, "#000");
    }
    if (sheet.marks().contains(Mark.FAR_FROM_PLANE)) {
      double above = foot.next("farthest above the plane of best fit");
      SpotFigures.triangle(sheet.lines, above + 3, foot.middle(), -1, "#fff");
      double below = foot.next("farthest below it");
      SpotFigures.triangle(sheet.lines, below + 3, foot.middle(), 1, "#fff");
    }
    double reading = foot.next(sheet.marks().contains(Mark.READING_HEIGHT) ? "a reading, its height" : "a reading");
    SpotFigures.cross(sheet.lines, reading + 3, foot.middle());
    if (sheet.marks().contains(Mark.HEIGHT_LINE)) {
      double line = foot.next("a line of equal height, its height on it");
      sheet.lines.line("<path stroke-width=\"0.18\" d=\"" + Sheet.segment(line, foot.middle(), line + 6, foot.middle()) + "\"/>");
    }
  }

  private void work() {
    Optional<SubfloorPreparation> work = drawing.preparation();
    if (work.isEmpty()) {
      return;
    }
    if (!work.get().toGrind().isEmpty()) {
      double left = foot.next("to grind, how deep at the reading");
      sheet.lines.line("<rect " + foot.rectangle(left) + " fill=\"url(#" + sheet.id + "-grind)\" stroke-width=\"0.18\"/>");
    }
    if (!work.get().toFill().isEmpty()) {
      double left = foot.next("to fill, how thick at the reading");
      sheet.lines.line("<rect " + foot.rectangle(left) + " fill=\"url(#" + sheet.id + "-fill)\" stroke-width=\"0.18\"/>");
    }
    if (work.get().toGrind().isEmpty() && work.get().toFill().isEmpty()) {
      sheet.note("Nothing is to be ground or filled.");
    } else {
      sheet.note("Hatched is the floor that a reading stands for. A depth holds at its reading and falls off evenly to the next ones.");
    }
  }

  private void fall() {
    BigDecimal slope = plane.slope().setScale(1, RoundingMode.HALF_UP);
    if (slope.signum() == 0) {
      return;
    }
    plane.directionOfFall().ifPresent(direction -> {
      double left = foot.next("the way the plane of best fit falls, " + slope.toPlainString() + " mm per m, " + sheet.measures.withUnit(plane.fall()) + " over the readings");
      Frame frame = Frame.of(direction);
      double x = left + 3;
      double y = foot.middle();
      double ux = frame.ux();
      double uy = frame.uy();
      sheet.lines.line("<path stroke-width=\"0.25\" d=\"" + Sheet.segment(x - 2.2 * ux, y - 2.2 * uy, x + 1.4 * ux, y + 1.4 * uy) + "\"/>");
      StringBuilder tip = new StringBuilder("M");
      double[][] corners = {{2.4, 0}, {0.9, 0.7}, {0.9, -0.7}};
      for (int i = 0; i < corners.length; i++) {
        tip.append(i == 0 ? "" : "L");
        Svg.appendNumber(tip, x + corners[i][0] * ux - corners[i][1] * uy);
        tip.append(' ');
        Svg.appendNumber(tip, y + corners[i][0] * uy + corners[i][1] * ux);
      }
      sheet.lines.line("<path fill=\"#000\" stroke=\"none\" d=\"" + tip + "Z\"/>");
    });
  }
}
