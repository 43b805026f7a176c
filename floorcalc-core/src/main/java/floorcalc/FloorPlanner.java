package floorcalc;

import floorcalc.laying.FloorLaying;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;

/** The front door: a job in, an audited plan out. */
public final class FloorPlanner {
  private FloorPlanner() {}

  /**
   * Plans a floor.
   *
   * @param job what is known about the floor, not null
   * @return the plan, audited; not null
   */
  public static FloorPlan plan(FloorJob job) {
    return FloorLaying.of(job);
  }
}
