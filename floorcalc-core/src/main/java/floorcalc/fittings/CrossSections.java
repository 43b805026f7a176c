package floorcalc.fittings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.LongStream;

/**
 * A piece cut into trapezoids by lines square to the scan, one through each corner: what is thin is found trapezoid by trapezoid. Used
 * along the board, and across it with x and y exchanged.
 */
final class CrossSections {
  /** Overlaps and heights up to this, in nanometres, come of rounding. */
  private static final double CRUMB = 1000;

  /**
   * A straight saw line or side of the piece.
   *
   * @param x0 lower end along the scan, nm
   * @param y0 the same
   * @param x1 upper end along the scan, nm
   * @param y1 the same
   * @param notch whether it belongs to a notch or a hole, not to a side or a slant
   */
  record Edge(long x0, long y0, long x1, long y1, boolean notch) {
    double at(double x) {
      return y0 + (y1 - y0) * ((x - x0) / (x1 - x0));
    }
  }

  /** A trapezoid, or the part of it that is thin. */
  private static final class Cell {
    final double from;
    final double to;
    final Edge low;
    final Edge high;
    int group = -1;

    Cell(double from, double to, Edge low, Edge high) {
      this.from = from;
      this.to = to;
      this.low = low;
      this.high = high;
    }

    double height(double x) {
      return high.at(x) - low.at(x);
    }
  }

  /**
   * A part that is thin from one place of the scan to another.
   *
   * @param from where it begins, nm
   * @param to where it ends, nm
   * @param low its lowest place across the scan, nm
   * @param high its highest, nm
   * @param width its least width, nm
   * @param wideBefore whether it hangs on a wider part where it begins
   * @param wideAfter whether it does where it ends
   * @param notch whether a notch or a hole lies beside it
   */
  record Thin(double from, double to, double low, double high, double width, boolean wideBefore, boolean wideAfter, boolean notch) {}

  private final double limit;
  private final List<List<Cell>> slabs = new ArrayList<>();

  private CrossSections(List<Edge> edges, double limit) {
    this.limit = limit;
    long[] places = edges.stream().flatMapToLong(edge -> LongStream.of(edge.x0, edge.x1)).sorted().distinct().toArray();
    for (int i = 0; i + 1 < places.length; i++) {
      long from = places[i];
      long to = places[i + 1];
      double middle = from + (to - from) / 2.0;
      List<Edge> here = edges.stream().filter(edge -> edge.x0 <= from && edge.x1 >= to)
          .sorted(Comparator.comparingDouble(edge -> edge.at(middle))).toList();
      List<Cell> cells = new ArrayList<>();
      for (int k = 0; k + 1 < here.size(); k += 2) {
        cells.add(new Cell(from, to, here.get(k), here.get(k + 1)));
      }
      slabs.add(parted(cells));
    }
  }

  /** Returns the thin parts of a piece, from low to high places. */
  static List<Thin> thin(List<Edge> edges, double limit) {
    return new CrossSections(edges, limit).thin();
  }

  /** Parts each cell where it gets thinner than the limit, so that a cell is thin all along or nowhere. */
  private List<Cell> parted(List<Cell> cells) {
    List<Cell> parted = new ArrayList<>();
    for (Cell cell : cells) {
      double left = cell.height(cell.from);
      double right = cell.height(cell.to);
      double at = cell.from + (cell.to - cell.from) * ((limit - left) / (right - left));
      if (left < limit != right < limit && at > cell.from && at < cell.to) {
        parted.add(new Cell(cell.from, at, cell.low, cell.high));
        parted.add(new Cell(at, cell.to, cell.low, cell.high));
      } else {
        parted.add(cell);
      }
    }
    return parted;
  }

  private boolean isThin(Cell cell) {
    return cell.height((cell.from + cell.to) / 2) < limit;
  }

  private static boolean meet(Cell before, Cell after) {
    double x = before.to;
    return after.from == x && Math.min(before.high.at(x), after.high.at(x)) - Math.max(before.low.at(x), after.low.at(x)) > CRUMB;
  }

  private List<Thin> thin() {
    List<Cell> all = slabs.stream().flatMap(List::stream).toList();
    List<List<Cell>> groups = new ArrayList<>();
    for (Cell cell : all) {
      if (isThin(cell) && cell.group < 0) {
        cell.group = groups.size();
        List<Cell> group = new ArrayList<>(List.of(cell));
        groups.add(group);
        for (int i = 0; i < group.size(); i++) {
          for (Cell other : all) {
            if (other.group < 0 && isThin(other) && (meet(group.get(i), other) || meet(other, group.get(i)))) {
              other.group = cell.group;
              group.add(other);
            }
          }
        }
      }
    }
    return groups.stream().map(group -> measured(group, all)).toList();
  }

  private Thin measured(List<Cell> group, List<Cell> all) {
    double from = Double.MAX_VALUE;
    double to = -Double.MAX_VALUE;
    double low = Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    double width = Double.MAX_VALUE;
    boolean before = false;
    boolean after = false;
    boolean notch = false;
    for (Cell cell : group) {
      from = Math.min(from, cell.from);
      to = Math.max(to, cell.to);
      low = Math.min(low, Math.min(cell.low.at(cell.from), cell.low.at(cell.to)));
      high = Math.max(high, Math.max(cell.high.at(cell.from), cell.high.at(cell.to)));
      width = Math.min(width, Math.min(cell.height(cell.from), cell.height(cell.to)));
      notch |= cell.low.notch || cell.high.notch;
      for (Cell other : all) {
        if (!isThin(other)) {
          before |= meet(other, cell);
          after |= meet(cell, other);
        }
      }
    }
    return new Thin(from, to, low, high, width, before, after, notch);
  }
}
