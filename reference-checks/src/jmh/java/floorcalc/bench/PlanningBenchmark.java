package floorcalc.bench;

import floorcalc.FloorPlanner;
import floorcalc.audit.AuditReport;
import floorcalc.audit.PlanAudit;
import floorcalc.boards.BoardGoods;
import floorcalc.boards.SearchEffort;
import floorcalc.laying.FloorLaying;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import java.util.concurrent.TimeUnit;
import java.util.List;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What it costs to plan a floor, from a cupboard to a sports hall: one room out of square, laid along its longest wall with
 * boards of 2200 by 185 by common practice.
 */
@BenchmarkMode({Mode.AverageTime, Mode.SampleTime})
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@State(Scope.Benchmark)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(2)
public class PlanningBenchmark {
  /** Length and laid width of a board in millimetres. */
  static final long BOARD = 2200;
  static final long WIDTH = 185;

  /** About so many boards are needed. */
  @Param({"12", "120", "1200", "12000", "120000"})
  public int boards;

  private FloorJob job;
  private FloorJob quickJob;
  private FloorPlan plan;

  /** Makes the room, and its plan for the audit. */
  @Setup
  public void room() {
    job = job(boards);
    quickJob = job.withEffort(SearchEffort.QUICK);
    plan = FloorLaying.of(job);
  }

  /**
   * Makes the job of laying a room.
   *
   * @param boards how many boards it needs, about
   * @return the job, not null
   */
  public static FloorJob job(int boards) {
    long rows = Math.round(Math.sqrt(0.75 * boards * BOARD / WIDTH));
    long length = Math.round(0.97 * boards * BOARD / rows);
    long depth = rows * WIDTH - 40;
    Ring walls = Ring.of(Point.ofMillimetres(0, 0), Point.ofMillimetres(length, 0),
        Point.ofMillimetres(length - 12, depth + 9), Point.ofMillimetres(5, depth));
    return FloorJob.of("Benchmark", BoardGoods.of(Length.ofMillimetres(BOARD), Length.ofMillimetres(WIDTH),
        Length.ofMillimetres(14), 6)).room(Room.of("Hall", Outline.of(walls)).withBreaks(List.of())).build();
  }

  /** Plans the floor as callers do: the plan is audited before it is handed out. */
  @Benchmark
  public FloorPlan plan() {
    return FloorPlanner.plan(job);
  }

  /** Plans the floor with the effort that suits a slider, audited likewise. */
  @Benchmark
  public FloorPlan quick() {
    return FloorPlanner.plan(quickJob);
  }

  /** Audits the plan alone. */
  @Benchmark
  public AuditReport audit() {
    return PlanAudit.of(job, plan);
  }
}
