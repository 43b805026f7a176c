package floorcalc.drawing;

import floorcalc.levels.LevelPlane;
import floorcalc.levels.Levels;
import floorcalc.levels.SpotLevel;
import floorcalc.levels.SpotWork;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The readings and their figures, the most important first: lines of the grid, marked heights, depths, all other heights, heights of lines. */
final class LevelLabels {
  /** Readings that are marked one by one. */
  static final int MOST_READINGS = 2000;
  private static final int MOST_LISTED = 12;
  /** Lines of equal height shorter than this on paper have no figure. */
  private static final double SHORTEST_LINE = 22;
  private static final double ROOM_FOR_HEIGHT = 5.5;
  /** Where readings have heights, those of lines beside them would be taken for more readings. */
  private static final double ROOM_FOR_LINE_HEIGHT = 9;

  private final Sheet sheet;
  private final LevelsDrawing drawing;
  private final Levels levels;
  private final Relief relief;
  private final LevelPlane plane;
  /** The room, if its walls are known. */
  private final List<Shape> walls;
  private final SpotFigures figures;

  LevelLabels(Sheet sheet, LevelsDrawing drawing, Relief relief, LevelPlane plane) {
    this.sheet = sheet;
    this.drawing = drawing;
    this.levels = drawing.levels();
    this.relief = relief;
    this.plane = plane;
    this.figures = new SpotFigures(sheet);
    this.walls = drawing.room().map(room -> Shape.of(sheet.paper, room.shell(), room.voids())).stream().toList();
  }

  void write(HeightBands bands) {
    if (relief.isGrid()) {
      new GridMarks(sheet, relief.grid()).draw();
    }
    Map<Point, String> marked = marked();
    for (SpotLevel spot : levels.spots()) {
      String height = marked.get(spot.place());
      if (height != null && !figures.beside(spot.place(), height, Sheet.TEXT, SpotFigures.MARK, SpotFigures.PLAIN)) {
        sheet.note("The reading at " + at(spot.place()) + " is " + height + ".");
      }
    }
    if (levels.spots().size() <= MOST_READINGS) {
      for (int i = 0; i < levels.spots().size(); i++) {
        if (!marked.containsKey(levels.spots().get(i).place())) {
          SpotFigures.cross(sheet.lines, relief.x(i), relief.y(i));
          sheet.take(SpotFigures.around(relief.x(i), relief.y(i), SpotFigures.CROSS));
        }
      }
    } else {
      sheet.note("There are more readings than can be marked one by one.");
    }
    depths(marked);
    double room = roomOfReading();
    if (room >= ROOM_FOR_HEIGHT) {
      heights(marked);
    } else {
      sheet.note("The readings are too near to each other on the sheet for their heights.");
    }
    if (room < ROOM_FOR_HEIGHT || room >= ROOM_FOR_LINE_HEIGHT) {
      lineHeights(bands);
    }
    figures.close();
  }

  /** The readings that stand out, each with its figure; all others have a cross. */
  private Map<Point, String> marked() {
    Map<Point, String> marked = new LinkedHashMap<>();
    if (levels.highest().height().equals(levels.lowest().height())) {
      return marked;
    }
    sheet.explain(Mark.HIGHEST_AND_LOWEST);
    mark(marked, levels.highest(), -1, "#000");
    mark(marked, levels.lowest(), 1, "#000");
    if (plane.residualRange().isPositive()) {
      boolean more = mark(marked, plane.highestAbove(), -1, "#fff");
      more |= mark(marked, plane.deepestBelow(), 1, "#fff");
      if (more) {
        sheet.explain(Mark.FAR_FROM_PLANE);
      }
    }
    return marked;
  }

  private boolean mark(Map<Point, String> marked, SpotLevel spot, int down, String fill) {
    if (marked.containsKey(spot.place())) {
      return false;
    }
    double x = sheet.paper.x(spot.place().xNanometres());
    double y = sheet.paper.y(spot.place().yNanometres());
    figures.triangle(x, y, down, fill);
    sheet.take(SpotFigures.around(x, y, SpotFigures.MARK));
    marked.put(spot.place(), sheet.measures.markedHeight(spot.height()));
    return true;
  }

  private void depths(Map<Point, String> marked) {
    List<String> left = new ArrayList<>();
    if (drawing.preparation().isPresent()) {
      for (SpotWork spot : drawing.preparation().get().spots()) {
        boolean grind = spot.grind().isPositive();
        if (!grind && !spot.fill().isPositive()) {
          continue;
        }
        Length depth = grind ? spot.grind() : spot.fill();
        String text = (grind ? "-" : "+") + sheet.measures.markedHeight(depth);
        String brief = (grind ? "-" : "+") + sheet.measures.height(depth);
        double mark = marked.containsKey(spot.place()) ? SpotFigures.MARK : SpotFigures.CROSS;
        if (!figures.beside(spot.place(), text, Sheet.TEXT, mark, "#000") && !figures.beside(spot.place(), brief, Sheet.SMALLEST, mark, "#000")) {
          left.add(at(spot.place()) + ": " + (grind ? "grind " : "fill ") + sheet.measures.markedHeight(depth));
        }
      }
    }
    if (!left.isEmpty()) {
      sheet.note("Spots without room for their depth: " + Words.list(left, MOST_LISTED) + ".");
    }
  }

  /** The side of the square of paper that there is for each reading. */
  private double roomOfReading() {
    Paper paper = sheet.paper;
    return Math.sqrt((paper.planRight() - paper.planLeft()) * (paper.planBottom() - paper.planTop()) / levels.spots().size());
  }

  private void heights(Map<Point, String> marked) {
    sheet.explain(Mark.READING_HEIGHT);
    int left = 0;
    for (int i = 0; i < levels.spots().size(); i++) {
      SpotLevel spot = levels.spots().get(i);
      boolean isWorked = drawing.preparation().isPresent() && !drawing.preparation().get().spots().get(i).made().equals(spot.height());
      if (!isWorked && !marked.containsKey(spot.place())
          && !figures.beside(spot.place(), sheet.measures.height(spot.height()), Sheet.SMALLEST, SpotFigures.CROSS, SpotFigures.PLAIN)) {
        left++;
      }
    }
    if (left > 0) {
      sheet.note("The heights of " + Words.count(left, "other reading have", "other readings have") + " no room.");
    }
  }

  /** Writes the height of a line on it, in the longest clear stretch. */
  private void lineHeights(HeightBands bands) {
    for (int i = 0; i < bands.heights().size(); i++) {
      String text = sheet.measures.height(bands.heights().get(i));
      for (List<double[]> line : bands.lines(i).lines()) {
        double length = 0;
        for (int k = 1; k < line.size(); k++) {
          length += distance(line.get(k - 1), line.get(k));
        }
        if (length >= SHORTEST_LINE) {
          onLine(line, length, text);
        }
      }
    }
  }

  private void onLine(List<double[]> line, double length, String text) {
    for (double share : new double[] {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8}) {
      double left = share * length;
      int k = 1;
      while (k + 1 < line.size() && left > distance(line.get(k - 1), line.get(k))) {
        left -= distance(line.get(k - 1), line.get(k));
        k++;
      }
      double part = Math.min(1, left / Math.max(1e-9, distance(line.get(k - 1), line.get(k))));
      double x = line.get(k - 1)[0] + part * (line.get(k)[0] - line.get(k - 1)[0]);
      double y = line.get(k - 1)[1] + part * (line.get(k)[1] - line.get(k - 1)[1]);
      Box box = new Box(x, y, TextSize.width(text) * Sheet.SMALLEST / 2, TextSize.halfHeight(text) * Sheet.SMALLEST, 1, 0);
      if (walls.stream().allMatch(wall -> wall.holds(box)) && figures.set(x, y, text, Sheet.SMALLEST, SpotFigures.PLAIN)) {
        sheet.explain(Mark.HEIGHT_LINE);
        return;
      }
    }
  }

  private static double distance(double[] a, double[] b) {
    return Math.sqrt((b[0] - a[0]) * (b[0] - a[0]) + (b[1] - a[1]) * (b[1] - a[1]));
  }

  private String at(Point place) {
    return "x = " + sheet.measures.wall(place.x()) + ", y = " + sheet.measures.wall(place.y());
  }
}
