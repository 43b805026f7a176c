package floorcalc;

import floorcalc.laying.FloorLaying;
import floorcalc.laying.JobCheck;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.JobFault;
import floorcalc.plan.UnsoundJobException;
import java.util.List;

/**
 * The front door: a job in, an audited plan out.
 * <pre>{@code
 * BoardGoods boards = BoardGoods.of(Length.parse("2.2 m"), Length.parse("185 mm"), Length.parse("14 mm"), 6);
 * Room study = Room.of("Study", Wkt.parse("POLYGON ((0 0, 4210 0, 4195 3620, 0 3605, 0 0))"));
 * FloorPlan plan = FloorPlanner.plan(FloorJob.of("Study floor", boards).room(study).build());
 * }</pre>
 * Stateless and thread-safe. The same job gives the same plan on every machine.
 */
public final class FloorPlanner {
  private FloorPlanner() {}

  /**
   * Plans a floor.
   *
   * @param job what is known about the floor, not null
   * @return the plan, audited; not null
   * @throws UnsoundJobException if the job cannot be planned, with all its faults
   */
  public static FloorPlan plan(FloorJob job) {
    List<JobFault> faults = JobCheck.faultsOf(job);
    if (!faults.isEmpty()) {
      throw new UnsoundJobException(faults);
    }
    return FloorLaying.of(job);
  }

  /**
   * Returns what keeps a job from being planned.
   *
   * @param job the job, not null
   * @return all faults; empty if {@link #plan} will plan it
   */
  public static List<JobFault> faultsOf(FloorJob job) {
    return JobCheck.faultsOf(job);
  }
}
