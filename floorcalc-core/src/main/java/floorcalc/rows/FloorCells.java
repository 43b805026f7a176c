package floorcalc.rows;

import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * A floor of several parts cut into cells: between two neighbouring levels at which any side begins or ends, each connected stretch
 * is one cell with a left and a right side. Levels closer than 1 mm are one. In the frame of a control line, nanometres.
 */
final class FloorCells {
  static final double NEAR = 1_000_000;

  /** A side of a part that is not parallel to the rows, from its lower to its upper end. */
  private record Side(double x0, double y0, double x1, double y1) {
    double at(double y) {
      return x0 + (x1 - x0) * (y - y0) / (y1 - y0);
    }
  }

  /** A cell: its level range, and its left and right ends at the bottom and at the top. */
  record Cell(double low, double high, double leftLow, double rightLow, double leftHigh, double rightHigh) {
    /** Whether this cell's top and another's bottom share more than 1 mm. */
    boolean isBelow(Cell above) {
      return high == above.low && Math.min(rightHigh, above.rightLow) - Math.max(leftHigh, above.leftLow) > NEAR;
    }
  }

  private final List<Cell> cells = new ArrayList<>();

  /**
   * @param level a level that no cell reaches across, such as that of the start line
   */
  FloorCells(List<FloorPart> parts, ControlLine line, double level) {
    TreeSet<Double> levels = new TreeSet<>(List.of(level));
    List<List<Side>> sides = new ArrayList<>();
    List<double[][]> rings = new ArrayList<>();
    for (FloorPart part : parts) {
      rings.add(frame(part.outline().shell(), line));
      part.outline().voids().forEach(ring -> rings.add(frame(ring, line)));
    }
    for (double[][] ring : rings) {
      for (int i = 0; i < ring[1].length; i++) {
        ring[1][i] = snap(ring[1][i], levels);
      }
    }
    int next = 0;
    for (FloorPart part : parts) {
      List<Side> ofPart = new ArrayList<>();
      for (int i = 0; i <= part.outline().voids().size(); i++) {
        addSides(rings.get(next++), ofPart);
      }
      sides.add(ofPart);
    }
    List<Double> ordered = List.copyOf(levels);
    for (int i = 1; i < ordered.size(); i++) {
      addCells(sides, ordered.get(i - 1), ordered.get(i));
    }
  }

  private static double[][] frame(Ring ring, ControlLine line) {
    double[][] corners = new double[2][ring.size()];
    for (int i = 0; i < ring.size(); i++) {
      Point there = FloorStops.inFrame(line, Point.ofNanometres(ring.x(i), ring.y(i)));
      corners[0][i] = there.xNanometres();
      corners[1][i] = there.yNanometres();
    }
    return corners;
  }

  /** The level within 1 mm that is known already, or this one from now on. */
  private static double snap(double y, TreeSet<Double> levels) {
    Double below = levels.floor(y);
    Double above = levels.ceiling(y);
    if (below != null && y - below <= NEAR && (above == null || y - below <= above - y)) {
      return below;
    }
    if (above != null && above - y <= NEAR) {
      return above;
    }
    levels.add(y);
    return y;
  }

  private static void addSides(double[][] ring, List<Side> sides) {
    int n = ring[0].length;
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      boolean up = ring[1][i] < ring[1][j];
      int from = up ? i : j;
      int to = up ? j : i;
      if (ring[1][i] != ring[1][j]) {
        sides.add(new Side(ring[0][from], ring[1][from], ring[0][to], ring[1][to]));
      }
    }
  }

  private void addCells(List<List<Side>> parts, double low, double high) {
    double middle = low / 2 + high / 2;
    List<Side[]> found = new ArrayList<>();
    for (List<Side> part : parts) {
      List<Side> across = part.stream().filter(side -> side.y0() <= low && side.y1() >= high)
          .sorted(Comparator.comparingDouble(side -> side.at(middle))).toList();
      for (int i = 0; i + 1 < across.size(); i += 2) {
        found.add(new Side[] {across.get(i), across.get(i + 1)});
      }
    }
    found.sort(Comparator.comparingDouble(pair -> pair[0].at(middle)));
    Side left = null;
    Side right = null;
    for (Side[] pair : found) {
      if (left != null && pair[0].at(middle) <= right.at(middle) + NEAR) {
        right = pair[1].at(middle) > right.at(middle) ? pair[1] : right;
        continue;
      }
      addCell(left, right, low, high);
      left = pair[0];
      right = pair[1];
    }
    addCell(left, right, low, high);
  }

  private void addCell(Side left, Side right, double low, double high) {
    if (left != null) {
      cells.add(new Cell(low, high, left.at(low), right.at(low), left.at(high), right.at(high)));
    }
  }

  List<Cell> cells() {
    return cells;
  }
}
