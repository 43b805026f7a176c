package floorcalc.bays;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * A room cut along all lines at once: nodes where lines and walls meet, edges between them, and cells. Of each edge there are two
 * sides, numbered 2e and 2e + 1; a side runs with its cell on the left. Cells are numbered from the lowest of the room upwards, as seen
 * along the boards. The sides of all the loops of a cell, that of a column within it too, bear its number; sides off the floor bear -1.
 */
final class Mesh {
  final RoomShape shape;
  final double[] xs;
  final double[] ys;
  /** Of each side: the node it starts from, the cell on its left, and the side that follows it round the cell. */
  final int[] from;
  final int[] cell;
  final int[] following;
  /** Of each side: its unit vector. */
  final double[] dx;
  final double[] dy;
  /** Of each edge: its cut, -1 for a wall. */
  final int[] cutOf;
  /** Of each node: its sides, anticlockwise. */
  final int[][] around;
  final int cells;
  /** Of each cell: its sides on cuts that part it from another cell. */
  final int[][] open;
  final int[][] sidesOf;
  /** Of each cell: least and greatest along the boards, then across them. */
  final double[][] boxOf;

  Mesh(RoomShape shape, MeshNodes nodes) {
    this.shape = shape;
    xs = nodes.xs();
    ys = nodes.ys();
    from = nodes.sides();
    cutOf = nodes.cuts();
    dx = new double[from.length];
    dy = new double[from.length];
    for (int side = 0; side < from.length; side++) {
      dx[side] = (xs[to(side)] - xs[from[side]]) / length(side);
      dy[side] = (ys[to(side)] - ys[from[side]]) / length(side);
    }
    around = MeshCells.around(this);
    following = MeshCells.following(this);
    cell = new int[from.length];
    cells = MeshCells.number(this, nodes.isOff());
    open = new int[cells][];
    sidesOf = new int[cells][];
    boxOf = new double[cells][];
    collect();
  }

  private void collect() {
    List<List<Integer>> all = new ArrayList<>();
    List<List<Integer>> opening = new ArrayList<>();
    for (int c = 0; c < cells; c++) {
      all.add(new ArrayList<>());
      opening.add(new ArrayList<>());
    }
    for (int side = 0; side < from.length; side++) {
      if (cell[side] >= 0) {
        all.get(cell[side]).add(side);
        if (!isWall(side) && cell[side ^ 1] >= 0 && cell[side ^ 1] != cell[side]) {
          opening.get(cell[side]).add(side);
        }
      }
    }
    for (int c = 0; c < cells; c++) {
      sidesOf[c] = all.get(c).stream().mapToInt(Integer::intValue).toArray();
      open[c] = opening.get(c).stream().mapToInt(Integer::intValue).toArray();
      boxOf[c] = box(sidesOf[c]);
    }
  }

  private double[] box(int[] sides) {
    double[] box = {Double.MAX_VALUE, -Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE};
    for (int side : sides) {
      double u = shape.along(xs[from[side]], ys[from[side]]);
      double w = shape.across(xs[from[side]], ys[from[side]]);
      box[0] = Math.min(box[0], u);
      box[1] = Math.max(box[1], u);
      box[2] = Math.min(box[2], w);
      box[3] = Math.max(box[3], w);
    }
    return box;
  }

  /** Tells whether a side is one of a wall; where walls fold back on themselves there is floor on both sides of one. */
  boolean isWall(int side) {
    return cutOf[side / 2] < 0;
  }

  int to(int side) {
    return from[side ^ 1];
  }

  double length(int side) {
    double dx = xs[to(side)] - xs[from[side]];
    double dy = ys[to(side)] - ys[from[side]];
    return StrictMath.sqrt(dx * dx + dy * dy);
  }

  /** The closed ways round a set of cells, the set on the left: each as the sides in order. */
  List<int[]> loops(BitSet set) {
    List<int[]> loops = new ArrayList<>();
    BitSet done = new BitSet(from.length);
    for (int c = set.nextSetBit(0); c >= 0; c = set.nextSetBit(c + 1)) {
      for (int start : sidesOf[c]) {
        if (isEdge(start, set) && !done.get(start)) {
          loops.add(loop(start, set, done));
        }
      }
    }
    return loops;
  }

  private int[] loop(int start, BitSet set, BitSet done) {
    int[] sides = new int[16];
    int size = 0;
    int side = start;
    do {
      done.set(side);
      if (size == sides.length) {
        sides = Arrays.copyOf(sides, 2 * size);
      }
      sides[size++] = side;
      side = following[side];
      while (!isEdge(side, set)) {
        side = following[side ^ 1];
      }
    } while (side != start);
    return Arrays.copyOf(sides, size);
  }

  /** Tells whether the set ends at a side of one of its cells. */
  boolean isEdge(int side, BitSet set) {
    int other = cell[side ^ 1];
    return isWall(side) || other < 0 || !set.get(other);
  }
}
