package floorcalc.compare;

import floorcalc.boards.BoardBound;
import floorcalc.boards.CuttingPlan;
import floorcalc.boards.Ends;
import floorcalc.boards.PieceWanted;
import floorcalc.boards.Run;
import floorcalc.boards.RunLayout;
import floorcalc.boards.SearchEffort;
import floorcalc.boards.Stretch;
import floorcalc.joints.JointLayout;
import floorcalc.measure.Area;
import java.util.ArrayList;
import java.util.List;

/**
 * A case laid and cut by the library.
 *
 * @param given the case
 * @param layout its joints
 * @param boards boards opened
 * @param breaches joints too near to each other and pieces too short
 * @param patterns rows in line and stairs of joints
 */
record LaidCase(BoardCase given, RunLayout layout, int boards, int breaches, int patterns) {

  static LaidCase bySearch(BoardCase given) {
    return of(given, RunLayout.search(given.runs(), given.goods(), given.rules()));
  }

  static LaidCase byQuickSearch(BoardCase given) {
    return of(given, RunLayout.search(given.runs(), given.goods(), given.rules(), SearchEffort.QUICK));
  }

  static LaidCase byHabit(BoardCase given) {
    return of(given, RunLayout.habit(given.runs(), given.goods(), given.rules()));
  }

  private static LaidCase of(BoardCase given, RunLayout layout) {
    List<Run> runs = given.runs();
    long width = given.goods().laidPitch().toNanometres();
    List<PieceWanted> pieces = new ArrayList<>();
    long[][] joints = new long[runs.size()][];
    for (int k = 0; k < joints.length; k++) {
      joints[k] = layout.jointsOf(k);
      long low = runs.get(k).from();
      for (int i = 0; i <= joints[k].length; i++) {
        boolean last = i == joints[k].length;
        long high = last ? runs.get(k).to() : joints[k][i];
        pieces.add(PieceWanted.ofNanometres(k, high - low, 0, width, ends(i == 0, last)));
        low = high;
      }
    }
    JointLayout seen = JointLayout.ofNanometres(joints);
    return new LaidCase(given, layout, CuttingPlan.of(pieces, given.goods(), given.rules()).boardCount(), layout.breaches(),
        seen.inLine().size() + seen.stairs().size());
  }

  private static Ends ends(boolean first, boolean last) {
    if (first) {
      return last ? Ends.NONE : Ends.HIGH;
    }
    return last ? Ends.LOW : Ends.BOTH;
  }

  /** The library's bound, which it stops to raise when it reaches the boards found. */
  int bound() {
    List<Run> runs = given.runs();
    List<List<Stretch>> stretches =
        runs.stream().map(run -> List.of(Stretch.full(run.length(), given.goods().laidPitch()))).toList();
    return BoardBound.of(runs, stretches, Area.ZERO, Area.ZERO, given.goods(), given.rules(), layout, boards).value();
  }

  /** Packs that hold the boards, nothing to spare. */
  int packs() {
    return (boards - 1) / BoardCase.PER_PACK + 1;
  }

  /** Whether it breaks fewer rules than another, or as many with no more boards. */
  boolean isNoWorseThan(LaidCase other) {
    return breaches < other.breaches || breaches == other.breaches && boards <= other.boards;
  }
}
