package floorcalc.bays;

import floorcalc.bays.ExpansionBreak.Reason;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleKey;
import java.util.BitSet;
import java.util.List;

/** Says what asks for a break: what would be wrong with the floor on both sides of it taken together. */
final class BreakReasons {
  /** What asks for a break, and the sentence. */
  record Because(Reason reason, String text) {
  }

  private final Mesh mesh;
  private final PartCheck check;
  private final SplitLimits limits;
  private final LayingRules rules;

  BreakReasons(Mesh mesh, PartCheck check, SplitLimits limits, LayingRules rules) {
    this.mesh = mesh;
    this.check = check;
    this.limits = limits;
    this.rules = rules;
  }

  Because of(int[] run, List<BitSet> bays) {
    BitSet joined = new BitSet(mesh.cells);
    for (BitSet bay : bays) {
      boolean touches = false;
      for (int side : run) {
        touches |= bay.get(mesh.cell[side]) || bay.get(mesh.cell[side ^ 1]);
      }
      if (touches) {
        joined.or(bay);
      }
    }
    int[] ends = {mesh.from[run[0]], mesh.to(run[run.length - 1])};
    double[] box = check.box(joined);
    if (box[1] - box[0] > limits.along()) {
      return run(Reason.RUN_ALONG, "long along", box[1] - box[0], LayingRules.MAXIMUM_RUN_ALONG, joined, ends);
    }
    if (box[3] - box[2] > limits.across()) {
      return run(Reason.RUN_ACROSS, "wide across", box[3] - box[2], LayingRules.MAXIMUM_RUN_ACROSS, joined, ends);
    }
    return shape(joined, ends);
  }

  /** A corner at an end of the break is the nearer reason, if it asks for one too. */
  private Because run(Reason reason, String way, double extent, RuleKey<Length> limit, BitSet joined, int[] ends) {
    Corner corner = worst(joined, ends);
    if (corner.atEnd && corner.node >= 0) {
      return corner(corner);
    }
    Length laid = Length.ofNanometres((long) extent).minus(SplitLimits.gapAtEnds(rules).multipliedBy(2));
    return new Because(reason, "without it the floor would be " + Obstacles.millimetres(laid) + " " + way
        + " the boards; a bay may be up to " + rules.value(limit));
  }

  private Because shape(BitSet joined, int[] ends) {
    Corner corner = worst(joined, ends);
    if (corner.node >= 0) {
      return corner(corner);
    }
    for (int[] loop : mesh.loops(joined)) {
      double width = check.ring(loop).leastWidth();
      if (MeshCells.twiceArea(mesh, loop) < 0 && width > limits.widestVoid()) {
        return new Because(Reason.VOID, "without it the floor would lie round a void that is "
            + Obstacles.millimetres(Length.ofNanometres((long) width)) + " wide by its smaller width; up to "
            + rules.value(LayingRules.WIDEST_VOID) + " needs no break");
      }
    }
    return new Because(Reason.INNER_CORNER, "without it the floor would lie round another bay");
  }

  private Because corner(Corner corner) {
    boolean ofVoid = mesh.shape.ring[corner.node] > 0;
    return new Because(ofVoid ? Reason.VOID : Reason.INNER_CORNER, "without it the corner " + (ofVoid ? "of the void " : "")
        + "at " + mesh.shape.corner(corner.node) + " would lie "
        + Obstacles.millimetres(Length.ofNanometres((long) corner.depth)) + " inside the line across its recess; up to "
        + rules.value(LayingRules.DEEPEST_RECESS) + " needs no break");
  }

  private record Corner(int node, double depth, boolean atEnd) {
  }

  /** The deepest inner corner beyond the limit, one at an end of the break before all others; node -1 if there is none. */
  private Corner worst(BitSet joined, int[] ends) {
    Corner worst = new Corner(-1, 0, false);
    for (int[] loop : mesh.loops(joined)) {
      if (MeshCells.twiceArea(mesh, loop) < 0) {
        continue;
      }
      Recesses ring = check.ring(loop);
      for (int k = 0; k < loop.length; k++) {
        int node = mesh.from[loop[k]];
        if (node >= mesh.shape.size() || !check.isInner(ring, loop, k) || ring.depth(k) <= limits.deepest()) {
          continue;
        }
        Corner found = new Corner(node, ring.depth(k), node == ends[0] || node == ends[1]);
        if (worst.node < 0 || found.atEnd && !worst.atEnd || found.atEnd == worst.atEnd && found.depth > worst.depth) {
          worst = found;
        }
      }
    }
    return worst;
  }
}
