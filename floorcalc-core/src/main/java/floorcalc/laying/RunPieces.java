package floorcalc.laying;

import floorcalc.boards.Ends;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A run cut at its joints. Where it is no more than a few nanometres high at a joint nothing meets there, and what lies on
 * either side is numbered as a run of its own.
 */
final class RunPieces {
  /** Pieces meet along more than this, in nanometres: less may come of rounding. */
  static final long MEET = 10;

  private final long[] joints;
  /** The pieces between two joints, from low to high. */
  private final List<Patch> patches = new ArrayList<>();
  private final List<Integer> slabs = new ArrayList<>();
  /** For each piece one before it, or itself, that it hangs together with. */
  private final int[] chain;
  private final boolean[] meetsLow;
  private final boolean[] meetsHigh;

  private RunPieces(FrameRun run, long[] joints) {
    this.joints = joints;
    List<List<Loop>> cut = joints.length == 0 ? List.of(run.floor().loops())
        : Strips.upright(run.floor().loops(), joints);
    for (int slab = 0; slab < cut.size(); slab++) {
      for (Patch patch : Patch.of(cut.get(slab))) {
        if (!FrameBay.isCrumb(patch.shell())) {
          patches.add(patch);
          slabs.add(slab);
        }
      }
    }
    chain = new int[patches.size()];
    meetsLow = new boolean[chain.length];
    meetsHigh = new boolean[chain.length];
    int before = 0;
    for (int i = 0; i < chain.length; i++) {
      chain[i] = i;
      while (slabs.get(before) < slabs.get(i) - 1) {
        before++;
      }
      for (int k = before; k < i && slabs.get(k) == slabs.get(i) - 1; k++) {
        meet(k, i);
      }
    }
  }

  private void meet(int left, int right) {
    long joint = joints[slabs.get(left)];
    long[] shared = Contacts.shared(patches.get(left).contacts(joint, true), patches.get(right).contacts(joint, true));
    if (Contacts.longest(shared) > MEET) {
      meetsHigh[left] = true;
      meetsLow[right] = true;
      int a = end(left);
      int b = end(right);
      chain[Math.max(a, b)] = Math.min(a, b);
    }
  }

  private int end(int from) {
    int at = from;
    while (chain[at] != at) {
      chain[at] = chain[chain[at]];
      at = chain[at];
    }
    return at;
  }

  /**
   * Cuts a run and adds its pieces, those that hang together one after the other.
   *
   * @param numbered how many runs of the row have been numbered so far
   * @return how many are numbered now
   */
  static int add(FrameRow row, FrameRun run, long[] joints, int numbered, List<ShapedPiece> pieces) {
    List<Patch> plain = PlainRun.cut(run.floor(), joints);
    for (int i = 0; i < plain.size(); i++) {
      Ends ends = i == 0 ? Ends.HIGH : i < joints.length ? Ends.BOTH : Ends.LOW;
      pieces.add(new ShapedPiece(row, run, numbered + 1, plain.get(i), ends));
    }
    if (!plain.isEmpty()) {
      return numbered + 1;
    }
    RunPieces cut = new RunPieces(run, joints);
    Map<Integer, List<Integer>> together = new TreeMap<>();
    for (int i = 0; i < cut.chain.length; i++) {
      together.computeIfAbsent(cut.end(i), first -> new ArrayList<>()).add(i);
    }
    int number = numbered;
    for (List<Integer> places : together.values()) {
      number++;
      for (int i : places) {
        Ends ends = cut.meetsLow[i] ? cut.meetsHigh[i] ? Ends.BOTH : Ends.LOW
            : cut.meetsHigh[i] ? Ends.HIGH : Ends.NONE;
        pieces.add(new ShapedPiece(row, run, number, cut.patches.get(i), ends));
      }
    }
    return number;
  }
}
