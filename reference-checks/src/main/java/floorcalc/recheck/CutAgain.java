package floorcalc.recheck;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Rule 6, the bound: cuts the plan's own pieces once more by a simple rule. What comes of it is a plan of the job with the same rows and the
 * same joints, so a true lower bound is not above its boards. And it works out a lower bound of its own, from the laid area.
 * <p>
 * An end piece is the first part of a board and a start piece its last part, so one of each share a board if both and a kerf fit. As many
 * such pairs as can be are found by taking start pieces from the shortest on and end pieces from the longest on. Pieces without a factory
 * end go into what is left, wherever they fit first.
 */
final class CutAgain {
  private final long longest;
  private final long kerf;
  private final List<Long> left = new ArrayList<>();
  private int boards;

  private CutAgain(long longest, long kerf) {
    this.longest = longest;
    this.kerf = kerf;
  }

  static void check(AskedJob job, ToldPlan plan, List<SeenPiece> pieces, Faults faults) {
    double floor = plan.bays().stream().mapToDouble(bay -> bay.laid().getArea()).sum();
    double board = job.longest() / Lengths.PER_MILLIMETRE * (job.pitch() / Lengths.PER_MILLIMETRE);
    int byArea = (int) Math.ceil((floor - PlanRecheck.NO_AREA * plan.bays().size()) / board);
    int again = new CutAgain(job.longest(), job.kerf()).boards(pieces);
    faults.tally.boardsByArea = byArea;
    faults.tally.boardsCutAgain = again;
    Cursor at = plan.order().at();
    if (plan.boards().size() < byArea) {
      at.get("boardsUsed").fault(Rule.COUNTS, plan.boards().size() + " boards", "the laid area alone fills " + byArea);
    }
    if (plan.order().boardsAtLeast() > again) {
      at.get("boardsAtLeast").fault(Rule.COUNTS, String.valueOf(plan.order().boardsAtLeast()),
          "the same pieces can be cut from " + again + " boards");
    }
  }

  private int boards(List<SeenPiece> pieces) {
    List<Long> starts = new ArrayList<>();
    List<Long> ends = new ArrayList<>();
    List<Long> singles = new ArrayList<>();
    for (SeenPiece piece : pieces) {
      if (piece.isWhole() || piece.meetsLow && piece.meetsHigh) {
        boards++;
      } else {
        (piece.meetsHigh ? starts : piece.meetsLow ? ends : singles).add(piece.cut().length());
      }
    }
    Collections.sort(starts);
    ends.sort(Collections.reverseOrder());
    singles.sort(Collections.reverseOrder());
    int next = 0;
    for (long end : ends) {
      if (next < starts.size() && starts.get(next) + end + kerf <= longest) {
        open(starts.get(next) + end + kerf);
        next++;
      } else {
        open(end);
      }
    }
    starts.subList(next, starts.size()).forEach(this::open);
    singles.forEach(this::single);
    return boards;
  }

  private void open(long used) {
    boards++;
    left.add(longest - used - kerf);
  }

  private void single(long length) {
    for (int i = 0; i < left.size(); i++) {
      if (left.get(i) >= length) {
        left.set(i, left.get(i) - length - kerf);
        return;
      }
    }
    open(length);
  }
}
