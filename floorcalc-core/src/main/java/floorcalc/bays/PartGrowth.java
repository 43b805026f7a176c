package floorcalc.bays;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;

/**
 * Grows a set of cells cell by cell. Breaks may meet and cross on the open floor but not bend there, so a cell that would be left as a
 * notch of less than a straight angle is taken in as well.
 */
final class PartGrowth {
  private static final double STRAIGHT = StrictMath.PI - 1e-6;

  private final Mesh mesh;
  private final double[][] sector;

  PartGrowth(Mesh mesh) {
    this.mesh = mesh;
    sector = new double[mesh.around.length][];
    for (int n = 0; n < sector.length; n++) {
      int[] sides = mesh.around[n];
      sector[n] = new double[sides.length];
      for (int k = 0; k < sides.length; k++) {
        double turn = MeshCells.angle(mesh, sides[(k + 1) % sides.length]) - MeshCells.angle(mesh, sides[k]);
        sector[n][k] = turn <= 0 ? turn + 2 * StrictMath.PI : turn;
      }
    }
  }

  /** Returns the set with a cell and all notches, or null if one of them may not be taken: only cells of the region may. */
  BitSet with(BitSet part, int cell, BitSet region, BitSet barred) {
    BitSet grown = (BitSet) part.clone();
    Deque<Integer> added = new ArrayDeque<>();
    grown.set(cell);
    added.add(cell);
    while (!added.isEmpty()) {
      for (int side : mesh.sidesOf[added.poll()]) {
        if (!fill(mesh.from[side], grown, added, region, barred)) {
          return null;
        }
      }
    }
    return grown;
  }

  /** Takes in the notches round a node. */
  private boolean fill(int node, BitSet grown, Deque<Integer> added, BitSet region, BitSet barred) {
    int[] sides = mesh.around[node];
    int n = sides.length;
    for (int k = 0; k < n; k++) {
      int here = mesh.cell[sides[k]];
      int after = mesh.cell[sides[(k + 1) % n]];
      if (here < 0 || !grown.get(here) || after < 0 || grown.get(after)) {
        continue;
      }
      double angle = 0;
      int m = (k + 1) % n;
      while (mesh.cell[sides[m]] >= 0 && !grown.get(mesh.cell[sides[m]])) {
        angle += sector[node][m];
        m = (m + 1) % n;
      }
      if (mesh.cell[sides[m]] < 0 || angle >= STRAIGHT) {
        continue;
      }
      for (int j = (k + 1) % n; j != m; j = (j + 1) % n) {
        int notch = mesh.cell[sides[j]];
        if (!region.get(notch) || barred.get(notch)) {
          return false;
        }
        if (!grown.get(notch)) {
          grown.set(notch);
          added.add(notch);
        }
      }
    }
    return true;
  }
}
