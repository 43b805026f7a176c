package floorcalc.laying;

import floorcalc.bench.PlanningBenchmark;
import floorcalc.boards.Run;
import floorcalc.boards.SearchEffort;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
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
 * The library's part of {@link PlanningBenchmark} that makes what {@code GridClipBenchmark} makes, the shapes of the pieces: the gap,
 * the rows and runs, and each piece's outline in the room, for joints and boards found beforehand.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@State(Scope.Benchmark)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(2)
public class PiecesBenchmark {
  /** About so many boards are needed. */
  @Param({"12", "120", "1200", "12000", "120000"})
  public int boards;

  private FloorJob job;
  private List<RoomRows> rows;
  private JobLaying laid;

  /** Makes the room and finds the joints. */
  @Setup
  public void room() {
    job = PlanningBenchmark.job(boards).withEffort(SearchEffort.QUICK);
    laid = JobLaying.of(job);
    rows = job.rooms().stream().map(room -> RoomRows.byWay(job, room, Directions.ofLongestWall(room.outline().shell()))).toList();
  }

  /** Shapes all pieces. */
  @Benchmark
  public List<Bay> pieces() {
    PieceMaker maker = new PieceMaker(laid.cutting());
    List<Run> runs = new ArrayList<>();
    List<Bay> bays = new ArrayList<>();
    Room room = job.rooms().get(0);
    for (BayPlan plan : RoomLaying.of(job, room, "hall", rows.get(0), 0, runs).bays()) {
      bays.add(maker.bay(plan.bay(), plan.bay().pieces(laid.joints()::jointsOf)));
    }
    return bays;
  }
}
