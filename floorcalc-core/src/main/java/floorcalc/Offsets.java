package floorcalc;

import floorcalc.measure.Length;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.rules.LayingRules;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Plans one floor with several joint offsets. */
final class Offsets {
  private static final int MOST = 7;
  private static final long STEP = Length.ofMillimetres(50).toNanometres();

  private Offsets() {}

  static List<Alternative> alternatives(FloorJob job, Function<FloorJob, FloorPlan> planner) {
    Length least = job.rules().value(LayingRules.MINIMUM_JOINT_OFFSET);
    Map<Length, FloorPlan> plans = new LinkedHashMap<>();
    FloorPlan plan = planner.apply(job);
    plans.put(least, plan);
    for (Length offset : wider(least, job.board().longest())) {
      FloorPlan other = planner.apply(job.withRules(
          job.rules().with(LayingRules.MINIMUM_JOINT_OFFSET, offset, Source.GIVEN)));
      if (other.compromises().size() <= plan.compromises().size()) {
        plans.put(offset, other);
      }
    }
    int packs = plans.values().stream().mapToInt(one -> one.order().packs()).min().orElseThrow();
    List<Alternative> found = new ArrayList<>();
    plans.forEach((offset, one) -> found.add(new Alternative(offset, one.order().packs() - packs, one)));
    return unbeaten(found);
  }

  /** Those that no other beats; of equal ones the first. */
  static List<Alternative> unbeaten(List<Alternative> found) {
    List<Alternative> kept = new ArrayList<>();
    for (Alternative here : found) {
      if (found.stream().noneMatch(here::isBeatenBy) && kept.stream().noneMatch(here::isMatchedBy)) {
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
