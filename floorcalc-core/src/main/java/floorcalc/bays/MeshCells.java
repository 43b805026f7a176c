package floorcalc.bays;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Finds the cells of a mesh. */
final class MeshCells {
  private MeshCells() {}

  /** The sides that start from each node, anticlockwise. */
  static int[][] around(Mesh mesh) {
    List<List<Integer>> lists = new ArrayList<>();
    for (int n = 0; n < mesh.xs.length; n++) {
      lists.add(new ArrayList<>());
    }
    double[] angle = new double[mesh.from.length];
    for (int side = 0; side < angle.length; side++) {
      angle[side] = angle(mesh, side);
      lists.get(mesh.from[side]).add(side);
    }
    int[][] around = new int[lists.size()][];
    for (int n = 0; n < around.length; n++) {
      lists.get(n).sort(Comparator.comparingDouble(side -> angle[side]));
      around[n] = lists.get(n).stream().mapToInt(Integer::intValue).toArray();
    }
    return around;
  }

  static double angle(Mesh mesh, int side) {
    return StrictMath.atan2(mesh.ys[mesh.to(side)] - mesh.ys[mesh.from[side]], mesh.xs[mesh.to(side)] - mesh.xs[mesh.from[side]]);
  }

  /** Of each side the next round the cell on its left: the first clockwise from its way back. */
  static int[] following(Mesh mesh) {
    int[] following = new int[mesh.from.length];
    for (int[] sides : mesh.around) {
      for (int k = 0; k < sides.length; k++) {
        following[sides[(k + 1) % sides.length] ^ 1] = sides[k];
      }
    }
    return following;
  }

  /** Numbers the cells into {@link Mesh#cell} and returns how many there are. */
  static int number(Mesh mesh, boolean[] isOff) {
    Arrays.fill(mesh.cell, Integer.MIN_VALUE);
    List<int[]> outer = new ArrayList<>();
    List<int[]> inner = new ArrayList<>();
    for (int start = 0; start < mesh.from.length; start++) {
      if (mesh.cell[start] == Integer.MIN_VALUE) {
        int[] loop = loop(mesh, start);
        boolean off = Arrays.stream(loop).anyMatch(side -> isOff[side]);
        for (int side : loop) {
          mesh.cell[side] = -1;
        }
        if (!off) {
          (twiceArea(mesh, loop) > 0 ? outer : inner).add(loop);
        }
      }
    }
    outer.sort(Comparator.comparing(loop -> lowest(mesh, loop), Arrays::compare));
    for (int c = 0; c < outer.size(); c++) {
      for (int side : outer.get(c)) {
        mesh.cell[side] = c;
      }
    }
    for (int[] loop : inner) {
      int within = holder(mesh, outer, loop);
      for (int side : loop) {
        mesh.cell[side] = within;
      }
    }
    return outer.size();
  }

  private static int[] loop(Mesh mesh, int start) {
    List<Integer> sides = new ArrayList<>();
    int side = start;
    do {
      sides.add(side);
      side = mesh.following[side];
    } while (side != start);
    return sides.stream().mapToInt(Integer::intValue).toArray();
  }

  static double twiceArea(Mesh mesh, int[] loop) {
    double twice = 0;
    int origin = mesh.from[loop[0]];
    for (int side : loop) {
      int a = mesh.from[side];
      int b = mesh.to(side);
      twice += (mesh.xs[a] - mesh.xs[origin]) * (mesh.ys[b] - mesh.ys[origin])
          - (mesh.ys[a] - mesh.ys[origin]) * (mesh.xs[b] - mesh.xs[origin]);
    }
    return twice;
  }

  /** The lowest place across the boards, the least along them there, then the middle of the loop. */
  private static double[] lowest(Mesh mesh, int[] loop) {
    double[] lowest = {Double.MAX_VALUE, Double.MAX_VALUE, 0, 0};
    double along = 0;
    double across = 0;
    for (int side : loop) {
      double x = mesh.xs[mesh.from[side]];
      double y = mesh.ys[mesh.from[side]];
      double u = StrictMath.rint(mesh.shape.along(x, y) / RoomShape.TOUCH);
      double w = StrictMath.rint(mesh.shape.across(x, y) / RoomShape.TOUCH);
      along += u;
      across += w;
      if (w < lowest[0] || w == lowest[0] && u < lowest[1]) {
        lowest[0] = w;
        lowest[1] = u;
      }
    }
    lowest[2] = across / loop.length;
    lowest[3] = along / loop.length;
    return lowest;
  }

  private static int holder(Mesh mesh, List<int[]> outer, int[] loop) {
    double x = mesh.xs[mesh.from[loop[0]]];
    double y = mesh.ys[mesh.from[loop[0]]];
    for (int c = 0; c < outer.size(); c++) {
      boolean inside = false;
      for (int side : outer.get(c)) {
        int a = mesh.from[side];
        int b = mesh.to(side);
        if (mesh.ys[a] > y != mesh.ys[b] > y
            && x < mesh.xs[a] + (y - mesh.ys[a]) * ((mesh.xs[b] - mesh.xs[a]) / (mesh.ys[b] - mesh.ys[a]))) {
          inside = !inside;
        }
      }
      if (inside) {
        return c;
      }
    }
    return -1;
  }
}
