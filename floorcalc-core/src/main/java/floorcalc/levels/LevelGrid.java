package floorcalc.levels;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Readings in rows and columns, and the lines along which a straightedge can lie: rows, columns and both diagonals.
 * A line ends where nothing was read. A diagonal runs from node to node while it stays straight and the two nodes beside each step
 * were read too, so it never crosses a corner that is no floor.
 */
final class LevelGrid {
  final long[] xs;
  final long[] ys;
  /** Number of the reading at column and row, or -1. */
  private final int[][] nodes;
  final List<GridLine> lines = new ArrayList<>();
  /** For each reading the lines through it, and its place on them. */
  final List<List<Seat>> seats = new ArrayList<>();
  /** Four times the area that each reading stands for, in square nanometres. */
  final BigInteger[] quarters;

  /** A reading's place on a line. */
  record Seat(GridLine line, int at) {}

  private LevelGrid(long[] xs, long[] ys, int[][] nodes, BigInteger[] quarters) {
    this.xs = xs;
    this.ys = ys;
    this.nodes = nodes;
    this.quarters = quarters;
    for (int i = 0; i < quarters.length; i++) {
      seats.add(new ArrayList<>());
    }
    for (int row = 0; row < ys.length; row++) {
      run(LineWay.ROW, row + 1, 0, row, 1, 0);
    }
    for (int column = 0; column < xs.length; column++) {
      run(LineWay.COLUMN, column + 1, column, 0, 0, 1);
    }
    for (int start = 0; start < xs.length + ys.length - 1; start++) {
      int column = Math.max(0, start - ys.length + 1);
      int row = Math.max(0, ys.length - 1 - start);
      run(LineWay.RISING_DIAGONAL, start + 1, column, row, 1, 1);
      run(LineWay.FALLING_DIAGONAL, start + 1, column, ys.length - 1 - row, 1, -1);
    }
  }

  static Optional<LevelGrid> find(List<SpotLevel> spots) {
    long[] xs = spots.stream().mapToLong(spot -> spot.place().xNanometres()).sorted().distinct().toArray();
    long[] ys = spots.stream().mapToLong(spot -> spot.place().yNanometres()).sorted().distinct().toArray();
    if (xs.length < 2 || ys.length < 2 || (long) xs.length * ys.length > 4L * spots.size()) {
      return Optional.empty();
    }
    int[][] nodes = new int[xs.length][ys.length];
    for (int[] column : nodes) {
      Arrays.fill(column, -1);
    }
    for (int i = 0; i < spots.size(); i++) {
      nodes[Arrays.binarySearch(xs, spots.get(i).place().xNanometres())]
          [Arrays.binarySearch(ys, spots.get(i).place().yNanometres())] = i;
    }
    BigInteger[] quarters = new BigInteger[spots.size()];
    for (int c = 0; c < xs.length; c++) {
      for (int r = 0; r < ys.length; r++) {
        if (nodes[c][r] >= 0) {
          BigInteger area = quarters(xs, ys, nodes, c, r);
          if (area.signum() == 0) {
            return Optional.empty();
          }
          quarters[nodes[c][r]] = area;
        }
      }
    }
    return Optional.of(new LevelGrid(xs, ys, nodes, quarters));
  }

  /** A quarter of each cell of which at least three corners were read. */
  private static BigInteger quarters(long[] xs, long[] ys, int[][] nodes, int c, int r) {
    BigInteger area = BigInteger.ZERO;
    for (int dc = -1; dc <= 1; dc += 2) {
      for (int dr = -1; dr <= 1; dr += 2) {
        if (c + dc >= 0 && c + dc < xs.length && r + dr >= 0 && r + dr < ys.length
            && (nodes[c + dc][r] < 0 ? 1 : 0) + (nodes[c][r + dr] < 0 ? 1 : 0) + (nodes[c + dc][r + dr] < 0 ? 1 : 0) < 2) {
          area = area.add(BigInteger.valueOf(Math.abs(xs[c + dc] - xs[c]))
              .multiply(BigInteger.valueOf(Math.abs(ys[r + dr] - ys[r]))));
        }
      }
    }
    return area;
  }

  /** Number of the reading at a column and a row, or -1 where there is none. */
  int node(int column, int row) {
    return column < 0 || row < 0 || column >= xs.length || row >= ys.length ? -1 : nodes[column][row];
  }

  /** Places of the grid where nothing was read. */
  int gaps() {
    return xs.length * ys.length - quarters.length;
  }

  private void run(LineWay way, int number, int column, int row, int dc, int dr) {
    List<Integer> on = new ArrayList<>();
    List<Double> positions = new ArrayList<>();
    double position = 0;
    int c = column;
    int r = row;
    while (c < xs.length && r >= 0 && r < ys.length) {
      int node = nodes[c][r];
      if (node >= 0 && !on.isEmpty()) {
        boolean goesOn = nodes[c - dc][r - dr] >= 0 && (dc == 0 || dr == 0
            || node(c - dc, r) >= 0 && node(c, r - dr) >= 0 && (on.size() < 2 || isStraight(c, r, dc, dr)));
        if (goesOn) {
          double dx = dc == 0 ? 0 : xs[c] - xs[c - dc];
          double dy = dr == 0 ? 0 : ys[r] - ys[r - dr];
          position += dx == 0 ? Math.abs(dy) : dy == 0 ? dx : Math.sqrt(dx * dx + dy * dy);
        } else {
          boolean turns = nodes[c - dc][r - dr] >= 0 && dc != 0 && dr != 0 && node(c - dc, r) >= 0
              && node(c, r - dr) >= 0;
          add(way, number, on, positions);
          on.clear();
          positions.clear();
          position = 0;
          if (turns) {
            on.add(nodes[c - dc][r - dr]);
            positions.add(0.0);
            double dx = xs[c] - xs[c - dc];
            double dy = ys[r] - ys[r - dr];
            position = Math.sqrt(dx * dx + dy * dy);
          }
        }
      }
      if (node >= 0) {
        on.add(node);
        positions.add(position);
      }
      c += dc;
      r += dr;
    }
    add(way, number, on, positions);
  }

  /** Whether the step to a node goes the same way as the one before it. */
  private boolean isStraight(int c, int r, int dc, int dr) {
    BigInteger dx = BigInteger.valueOf(xs[c] - xs[c - dc]);
    BigInteger dy = BigInteger.valueOf(ys[r] - ys[r - dr]);
    BigInteger dxBefore = BigInteger.valueOf(xs[c - dc] - xs[c - 2 * dc]);
    BigInteger dyBefore = BigInteger.valueOf(ys[r - dr] - ys[r - 2 * dr]);
    return dx.multiply(dyBefore).equals(dy.multiply(dxBefore));
  }

  private void add(LineWay way, int number, List<Integer> on, List<Double> positions) {
    if (on.size() < 3) {
      return;
    }
    GridLine line = new GridLine(way, number, on.stream().mapToInt(Integer::intValue).toArray(),
        positions.stream().mapToDouble(Double::doubleValue).toArray());
    lines.add(line);
    for (int at = 0; at < on.size(); at++) {
      seats.get(on.get(at)).add(new Seat(line, at));
    }
  }
}
