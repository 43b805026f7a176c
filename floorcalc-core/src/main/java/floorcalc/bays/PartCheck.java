package floorcalc.bays;

import java.util.Arrays;
import java.util.BitSet;

/** Judges a set of cells as one bay. */
final class PartCheck {
  /** What becomes of a set. */
  enum Verdict {
    /** It is a bay. */
    FREE,
    /** It is no bay, but may become one by taking in more cells. */
    NOT_YET,
    /** It is no bay, and no set that holds it is one. */
    NEVER
  }

  private static final double STRAIGHT_ON = 1e-12;
  /** A break across an end, at 45 degrees to it at most, is no longer than so many widths; one that cuts off a square corner is two or more. */
  private static final double ALONG = 1.5;

  private final Mesh mesh;
  private final SplitLimits limits;
  private final boolean[] fixed;

  /** Takes the mesh and, of each edge, whether a break lies there in any case. */
  PartCheck(Mesh mesh, SplitLimits limits, boolean[] fixed) {
    this.mesh = mesh;
    this.limits = limits;
    this.fixed = fixed;
  }

  Verdict judge(BitSet part) {
    if (isTooLong(part) || spansBreak(part)) {
      return Verdict.NEVER;
    }
    Verdict verdict = Verdict.FREE;
    for (int[] loop : mesh.loops(part)) {
      int[] bends = bends(loop);
      Verdict here = MeshCells.twiceArea(mesh, loop) > 0 ? shell(ring(bends), bends) : hole(ring(bends), loop);
      if (here == Verdict.NEVER) {
        return here;
      }
      verdict = here == Verdict.NOT_YET ? here : verdict;
    }
    return verdict;
  }

  private Verdict shell(Recesses ring, int[] loop) {
    Verdict verdict = Verdict.FREE;
    for (int k = 0; k < loop.length; k++) {
      if (!isInner(ring, loop, k)) {
        continue;
      }
      if (!isCorner(mesh.from[loop[k]]) || ring.depth(k) > limits.deepest()) {
        verdict = Verdict.NOT_YET;
        if (ring.toHull(k) > limits.deepest()) {
          return Verdict.NEVER;
        }
      }
    }
    return verdict == Verdict.FREE && isShaving(ring, loop) ? Verdict.NOT_YET : verdict;
  }

  /** A part so narrow that the gaps leave no floor in it, cut off along its length: it would leave floor on one side of its break only. */
  private boolean isShaving(Recesses ring, int[] loop) {
    double width = ring.leastWidth();
    if (width > limits.gaps()) {
      return false;
    }
    double breaks = 0;
    for (int k = 0; k < loop.length; k++) {
      if (!mesh.isWall(loop[k])) {
        breaks += ring.distance(k, (k + 1) % loop.length);
      }
    }
    return breaks > ALONG * width;
  }

  /** A bay may lie round a column, and round no other bay. */
  private Verdict hole(Recesses ring, int[] loop) {
    for (int side : loop) {
      if (!mesh.isWall(side) && mesh.cell[side ^ 1] >= 0) {
        return Verdict.NOT_YET;
      }
    }
    return ring.leastWidth() > limits.widestVoid() ? Verdict.NEVER : Verdict.FREE;
  }

  /** Breaks may not bend on the open floor: inner corners of bays are corners of the room. */
  private boolean isCorner(int node) {
    return node < mesh.shape.size();
  }

  /** Walks over the sides of a loop that go straight on. */
  private int[] bends(int[] loop) {
    int[] bends = new int[loop.length];
    int size = 0;
    int before = loop[loop.length - 1];
    for (int side : loop) {
      double turn = mesh.dx[before] * mesh.dy[side] - mesh.dy[before] * mesh.dx[side];
      if (StrictMath.abs(turn) > STRAIGHT_ON || turnsBack(before, side)) {
        bends[size++] = side;
      }
      before = side;
    }
    return size < 3 ? loop : Arrays.copyOf(bends, size);
  }

  /** Tells whether a loop that is the ring of a bay bends round a corner, the end of a wall without thickness among them. */
  boolean isInner(Recesses ring, int[] loop, int k) {
    return ring.isInner(k) || turnsBack(loop[(k + loop.length - 1) % loop.length], loop[k]);
  }

  private static boolean turnsBack(int before, int side) {
    return before == (side ^ 1);
  }

  Recesses ring(int[] loop) {
    double[] xs = new double[loop.length];
    double[] ys = new double[loop.length];
    for (int k = 0; k < loop.length; k++) {
      xs[k] = mesh.xs[mesh.from[loop[k]]];
      ys[k] = mesh.ys[mesh.from[loop[k]]];
    }
    return new Recesses(xs, ys);
  }

  boolean isTooLong(BitSet part) {
    double[] box = box(part);
    return box[1] - box[0] > limits.along() || box[3] - box[2] > limits.across();
  }

  /** Least and greatest along the boards, then across them. */
  double[] box(BitSet part) {
    double[] box = {Double.MAX_VALUE, -Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE};
    for (int c = part.nextSetBit(0); c >= 0; c = part.nextSetBit(c + 1)) {
      for (int k = 0; k < 4; k += 2) {
        box[k] = Math.min(box[k], mesh.boxOf[c][k]);
        box[k + 1] = Math.max(box[k + 1], mesh.boxOf[c][k + 1]);
      }
    }
    return box;
  }

  private boolean spansBreak(BitSet part) {
    for (int e = 0; e < fixed.length; e++) {
      if (fixed[e] && part.get(mesh.cell[2 * e]) && part.get(mesh.cell[2 * e + 1])) {
        return true;
      }
    }
    return false;
  }
}
