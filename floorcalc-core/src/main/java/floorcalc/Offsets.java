package floorcalc;

import floorcalc.measure.Length;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.rules.LayingRules;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;

/** Plans one floor with several joint offsets. */
final class Offsets {
  private static final int MOST = 7;
  private static final long STEP = Length.ofMillimetres(50).toNanometres();

  private Offsets() {}

  static List<Alternative> alternatives(FloorJob job) {
    Length least = job.rules().value(LayingRules.MINIMUM_JOINT_OFFSET);
    FloorPlan plan = FloorPlanner.plan(job);
    List<Alternative> found = new ArrayList<>();
    found.add(Alternative.of(least, plan));
    for (Length offset : wider(least, job.board().longest())) {
      FloorPlan other = FloorPlanner.plan(job.withRules(
          job.rules().with(LayingRules.MINIMUM_JOINT_OFFSET, offset, Source.GIVEN)));
      if (other.compromises().size() <= plan.compromises().size()) {
        found.add(Alternative.of(offset, other));
      }
    }
    List<Alternative> kept = new ArrayList<>();
    for (int i = 0; i < found.size(); i++) {
      Alternative here = found.get(i);
      if (found.stream().noneMatch(here::isBeatenBy)) {
        kept.add(here);
      }
    }
    return List.copyOf(kept);
  }

  /** Wider offsets in equal steps of whole 50 mm, to half a board at most. */
  static List<Length> wider(Length least, Length board) {
    long low = least.toNanometres();
    long high = board.toNanometres() / 2;
    long room = Math.max(0, high - low);
    long step = (room / MOST / STEP + 1) * STEP;
    List<Length> offsets = new ArrayList<>();
    for (long offset = (low / STEP + 1) * STEP; offset <= high && offsets.size() < MOST; offset += step) {
      offsets.add(Length.ofNanometres(offset));
    }
    return offsets;
  }
}
