package floorcalc.bays;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** Joins the edges between bays to straight breaks, each from a wall, a void or another break to the next it does not cross. */
final class BreakRuns {
  private static final double STRAIGHT = 1e-6;

  private final Mesh mesh;
  private final boolean[] isBreak;

  BreakRuns(Mesh mesh, boolean[] isBreak) {
    this.mesh = mesh;
    this.isBreak = isBreak;
  }

  /** The breaks as chains of sides, each from its lower end, the leftmost of equally low ones, in the order of these ends. */
  List<int[]> all() {
    List<int[]> runs = new ArrayList<>();
    BitSet done = new BitSet(isBreak.length);
    for (int e = 0; e < isBreak.length; e++) {
      if (isBreak[e] && !done.get(e)) {
        int[] forward = chain(2 * e);
        int[] whole = chain(forward[forward.length - 1] ^ 1);
        Arrays.stream(whole).forEach(side -> done.set(side / 2));
        int[] back = chain(whole[whole.length - 1] ^ 1);
        runs.add(compare(mesh.from[whole[0]], mesh.from[back[0]]) < 0 ? whole : back);
      }
    }
    runs.sort((a, b) -> {
      int byStart = compare(mesh.from[a[0]], mesh.from[b[0]]);
      return byStart != 0 ? byStart : compare(end(a), end(b));
    });
    return runs;
  }

  int end(int[] run) {
    return mesh.to(run[run.length - 1]);
  }

  private int compare(int a, int b) {
    return mesh.ys[a] != mesh.ys[b] ? Double.compare(mesh.ys[a], mesh.ys[b]) : Double.compare(mesh.xs[a], mesh.xs[b]);
  }

  private int[] chain(int start) {
    List<Integer> sides = new ArrayList<>();
    for (int side = start; side >= 0; side = straightOn(side)) {
      sides.add(side);
    }
    return sides.stream().mapToInt(Integer::intValue).toArray();
  }

  /** The break that goes straight on from the end of a side, -1 at a wall and where there is none. */
  private int straightOn(int side) {
    int node = mesh.to(side);
    for (int other : mesh.around[node]) {
      if (mesh.isWall(other) || mesh.cell[other] < 0 || mesh.cell[other ^ 1] < 0) {
        return -1;
      }
    }
    double ahead = MeshCells.angle(mesh, side);
    for (int other : mesh.around[node]) {
      double turn = StrictMath.abs(MeshCells.angle(mesh, other) - ahead);
      if (isBreak[other / 2] && Math.min(turn, 2 * StrictMath.PI - turn) < STRAIGHT) {
        return other;
      }
    }
    return -1;
  }
}
