package floorcalc.examples.stock;

import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * Outlines of rooms in whole millimetres. The first wall runs from (0, 0) to the right and is straight, so that a door can stand in
 * it; every other corner is out of place by some millimetres, as walls are.
 */
final class StockShapes {
  private static final int OUT_OF_PLACE = 12;

  private final Chance chance;
  private final int width;
  private final int depth;

  StockShapes(Chance chance, int width, int depth) {
    this.chance = chance;
    this.width = width;
    this.depth = depth;
  }

  /** Half are rectangles; the others are bent, have a bay or a chimney breast, or a column. */
  Outline next() {
    return switch (chance.between(0, 9)) {
      case 0 -> outline(bent());
      case 1 -> outline(stem());
      case 2 -> outline(bay());
      case 3 -> outline(breast());
      case 4 -> column();
      default -> outline(rectangle());
    };
  }

  private int[][] rectangle() {
    return new int[][] {{0, 0}, {width, 0}, {width, depth}, {0, depth}};
  }

  /** An L: the far right corner is missing. */
  private int[][] bent() {
    int x = part(width, 35, 70);
    int y = part(depth, 40, 70);
    return new int[][] {{0, 0}, {width, 0}, {width, y}, {x, y}, {x, depth}, {0, depth}};
  }

  /** A T: both far corners are missing. */
  private int[][] stem() {
    int left = part(width, 15, 30);
    int right = width - part(width, 15, 30);
    int y = part(depth, 40, 65);
    return new int[][] {{0, 0}, {width, 0}, {width, y}, {right, y}, {right, depth}, {left, depth}, {left, y}, {0, y}};
  }

  /** A bay with slanted cheeks in the far wall. */
  private int[][] bay() {
    int left = part(width, 20, 30);
    int right = width - part(width, 20, 30);
    int deep = chance.between(350, 700);
    int cheek = part(right - left, 15, 30);
    return new int[][] {{0, 0}, {width, 0}, {width, depth}, {right, depth}, {right - cheek, depth + deep},
        {left + cheek, depth + deep}, {left, depth}, {0, depth}};
  }

  /** A chimney breast that stands out of the left wall. */
  private int[][] breast() {
    int low = part(depth, 25, 40);
    int high = low + part(depth, 20, 40);
    int out = chance.between(150, Math.min(450, width / 3));
    return new int[][] {{0, 0}, {width, 0}, {width, depth}, {0, depth}, {0, high}, {out, high}, {out, low}, {0, low}};
  }

  private Outline column() {
    int side = chance.between(120, 380);
    int x = part(width, 25, 60);
    int y = part(depth, 25, 60);
    Ring ring = ring(new int[][] {{x, y}, {x + side, y}, {x + side, y + side}, {x, y + side}});
    return Outline.of(ring(shaken(rectangle())), List.of(ring));
  }

  /** What nobody can lay: walls that cross, a room that its gap swallows, a column through a wall. */
  Outline unsound() {
    return switch (chance.between(0, 2)) {
      case 0 -> Outline.of(ring(new int[][] {{0, 0}, {width, 0}, {0, depth}, {width, depth}}));
      case 1 -> Outline.of(ring(new int[][] {{0, 0}, {width, 0}, {width, 15}, {0, 15}}));
      default -> Outline.of(ring(rectangle()), List.of(ring(new int[][] {{width - 100, 400}, {width + 100, 400}, {width + 100, 600},
          {width - 100, 600}})));
    };
  }

  private int part(int whole, int leastPerCent, int mostPerCent) {
    return whole * chance.between(leastPerCent, mostPerCent) / 100;
  }

  private Outline outline(int[][] corners) {
    return Outline.of(ring(shaken(corners)));
  }

  private int[][] shaken(int[][] corners) {
    for (int i = 2; i < corners.length; i++) {
      corners[i][0] += chance.between(-OUT_OF_PLACE, OUT_OF_PLACE);
      corners[i][1] += chance.between(-OUT_OF_PLACE, OUT_OF_PLACE);
    }
    return corners;
  }

  private static Ring ring(int[][] corners) {
    List<Point> points = new ArrayList<>();
    for (int[] corner : corners) {
      points.add(Point.ofMillimetres(corner[0], corner[1]));
    }
    return Ring.of(points);
  }
}
