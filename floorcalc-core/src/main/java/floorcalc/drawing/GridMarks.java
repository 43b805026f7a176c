package floorcalc.drawing;

import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.List;

/** Where the lines of a grid of readings stand: x above the floor, y to the right of it, at every line or every few. */
final class GridMarks {
  private static final int[] EVERY = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000};

  private final Sheet sheet;
  private final ReadingGrid grid;

  /** A figure and where its line meets the floor. */
  private record Figure(String text, double at, Box box) {}

  GridMarks(Sheet sheet, ReadingGrid grid) {
    this.sheet = sheet;
    this.grid = grid;
  }

  void draw() {
    Paper paper = sheet.paper;
    for (Figure figure : chosen(grid.xs, true)) {
      sheet.stroke(figure.at(), paper.planTop() - 2.6, figure.at(), paper.planTop() - 1.5, 0.13);
      sheet.write(figure.text(), Sheet.SMALLEST, figure.box());
    }
    for (Figure figure : chosen(grid.ys, false)) {
      sheet.stroke(paper.planRight() + 1.5, figure.at(), paper.planRight() + 2.6, figure.at(), 0.13);
      sheet.write(figure.text(), Sheet.SMALLEST, figure.box());
    }
  }

  private List<Figure> chosen(long[] places, boolean across) {
    for (int every : EVERY) {
      List<Figure> figures = new ArrayList<>();
      for (int i = 0; i < places.length; i += every) {
        figures.add(figure(places[i], across));
      }
      if (fit(figures)) {
        return figures;
      }
    }
    return List.of();
  }

  private Figure figure(long place, boolean across) {
    Paper paper = sheet.paper;
    String text = sheet.measures.wall(Length.ofNanometres(place));
    double half = TextSize.width(text) * Sheet.SMALLEST / 2;
    double down = TextSize.halfHeight(text) * Sheet.SMALLEST;
    return across ? new Figure(text, paper.x(place), new Box(paper.x(place), paper.planTop() - 4.2, half, down, 1, 0))
        : new Figure(text, paper.y(place), new Box(paper.planRight() + 3.2 + half, paper.y(place), half, down, 1, 0));
  }

  private boolean fit(List<Figure> figures) {
    for (int i = 0; i < figures.size(); i++) {
      Box box = figures.get(i).box();
      if (!sheet.paper.shows(box) || !sheet.free(box) || i > 0 && box.grown(0.3).overlaps(figures.get(i - 1).box())) {
        return false;
      }
    }
    return true;
  }
}
