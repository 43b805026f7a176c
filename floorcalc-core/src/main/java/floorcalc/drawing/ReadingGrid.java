package floorcalc.drawing;

import floorcalc.levels.SpotLevel;
import java.util.Arrays;
import java.util.List;

/** Readings in rows and columns. A cell is drawn where at least three of its corners were read. */
final class ReadingGrid {
  final long[] xs;
  final long[] ys;
  private final int[][] nodes;

  ReadingGrid(List<SpotLevel> spots) {
    xs = spots.stream().mapToLong(spot -> spot.place().xNanometres()).sorted().distinct().toArray();
    ys = spots.stream().mapToLong(spot -> spot.place().yNanometres()).sorted().distinct().toArray();
    nodes = new int[xs.length][ys.length];
    for (int[] column : nodes) {
      Arrays.fill(column, -1);
    }
    for (int i = 0; i < spots.size(); i++) {
      nodes[Arrays.binarySearch(xs, spots.get(i).place().xNanometres())]
          [Arrays.binarySearch(ys, spots.get(i).place().yNanometres())] = i;
    }
  }

  /** The number of the reading at a column and a row, or -1. */
  int node(int column, int row) {
    return nodes[column][row];
  }

  /** The corners of a cell that were read, anticlockwise from its left lower one; fewer than three are none. */
  int[] corners(int column, int row) {
    int[] all = {nodes[column][row], nodes[column + 1][row], nodes[column + 1][row + 1], nodes[column][row + 1]};
    int[] read = Arrays.stream(all).filter(node -> node >= 0).toArray();
    return read.length < 3 ? new int[0] : read;
  }
}
