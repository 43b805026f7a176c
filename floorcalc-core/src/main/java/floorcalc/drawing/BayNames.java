package floorcalc.drawing;

import floorcalc.outline.Extent;
import floorcalc.plan.Bay;
import java.util.List;

/** What stands in the bays of an overview: name, how long it runs along and across its boards, area, and the way the boards run. */
final class BayNames {
  private static final double LINE = 3;
  private static final double NAME = 2.8;
  private static final double ARROW = 5.5;
  private static final double[] PLACES = {0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82, 0.1, 0.9};

  private final Sheet sheet;

  BayNames(Sheet sheet) {
    this.sheet = sheet;
  }

  /** For example "4190 mm along the boards, 3600 mm across them". */
  static String runs(Bay bay, Measures measures) {
    Extent extent = extent(bay);
    return measures.withUnit(extent.width()) + " along the boards, " + measures.withUnit(extent.height()) + " across them";
  }

  private static Extent extent(Bay bay) {
    return bay.direction().toFrame(bay.laid()).extent();
  }

  /** Writes all of it, or less where the bay is small; what has no room stands below the drawing. */
  void write(Bay bay) {
    Shape shape = Shape.of(sheet.paper, bay.laid().shell(), bay.laid().voids()).thinned(Walls.MOST_CORNERS);
    Extent extent = extent(bay);
    String name = TextSize.cut(bay.bay(), NAME, 60);
    String along = "along " + sheet.measures.wall(extent.width());
    String across = "across " + sheet.measures.wall(extent.height());
    String area = bay.laid().area().toSquareMetreString(1) + " m\u00b2";
    boolean written = false;
    for (List<String> lines : List.of(List.of(name, along, across, area), List.of(name, along + ", " + across, area),
        List.of(name, along, across), List.of(name, along + ", " + across))) {
      written = written || set(shape, lines);
    }
    boolean named = written || set(shape, List.of(name));
    if (!written) {
      sheet.note("Bay " + name + (named ? "" : ", without room for its name") + ": " + runs(bay, sheet.measures) + ", " + area + ".");
    }
    arrow(shape, Frame.of(bay.direction()));
  }

  private boolean set(Shape shape, List<String> lines) {
    double width = TextSize.width(lines.get(0)) * NAME;
    for (String line : lines.subList(1, lines.size())) {
      width = Math.max(width, TextSize.width(line) * Sheet.TEXT);
    }
    for (int turned = 0; turned < 2; turned++) {
      for (double down : PLACES) {
        for (double over : PLACES) {
          Box box = new Box(place(shape, 1, 0, over), place(shape, 0, 1, down), width / 2 + 0.4, lines.size() * LINE / 2 + 0.3,
              1 - turned, -turned);
          if (shape.holds(box) && sheet.free(box)) {
            write(lines, box);
            return true;
          }
        }
      }
    }
    return false;
  }

  private static double place(Shape shape, double ax, double ay, double share) {
    return shape.low(ax, ay) + share * (shape.high(ax, ay) - shape.low(ax, ay));
  }

  private void write(List<String> lines, Box box) {
    sheet.ground(box);
    for (int i = 0; i < lines.size(); i++) {
      double size = i == 0 ? NAME : Sheet.TEXT;
      double down = (i - (lines.size() - 1) / 2.0) * LINE;
      sheet.write(lines.get(i), size, new Box(box.x() - box.uy() * down, box.y() + box.ux() * down,
          TextSize.width(lines.get(i)) * size / 2, TextSize.halfHeight("0") * size, box.ux(), box.uy()));
    }
    sheet.take(box);
  }

  /** Draws an arrow the way the boards run, if there is a place for it. */
  private void arrow(Shape shape, Frame frame) {
    for (double down : new double[] {0.75, 0.25, 0.85, 0.15, 0.6, 0.4, 0.5}) {
      for (double over : new double[] {0.5, 0.25, 0.75, 0.15, 0.85}) {
        double x = place(shape, 1, 0, over);
        double y = place(shape, 0, 1, down);
        Box box = new Box(x, y, ARROW / 2 + 0.6, 1.2, frame.ux(), frame.uy());
        if (shape.holds(box) && sheet.free(box)) {
          sheet.ground(box);
          RowMarks.rowArrow(sheet.grounds, frame, frame.along(x, y) - ARROW / 2, frame.across(x, y));
          sheet.take(box);
          sheet.explain(Mark.ROW_ARROW);
          return;
        }
      }
    }
  }
}
