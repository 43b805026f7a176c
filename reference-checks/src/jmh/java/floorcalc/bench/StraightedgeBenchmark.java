package floorcalc.bench;

import floorcalc.flatness.GreatestGap;
import floorcalc.flatness.HeightProfile;
import floorcalc.flatness.RestRule;
import floorcalc.flatness.Straightedge;
import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
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

/** The greatest gap under a straightedge over all placements, the edge over a fifth of the line. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@State(Scope.Benchmark)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(2)
public class StraightedgeBenchmark {
  private static final int SHARE = 5;
  private static final int SPACING = 300;
  private static final int FIRST_WITH_A_DIP = 100;

  /** The number of readings. */
  @Param({"1000", "10000", "100000"})
  public int readings;

  /** Which two points the edge rests on. */
  @Param({"WORST", "GRAVITY"})
  public RestRule rest;

  private HeightProfile floor;
  private Straightedge edge;

  /** Makes a floor, level within a millimetre but for one dip of 20 mm at its hundredth reading, and the edge. */
  @Setup
  public void floor() {
    Random random = new Random(readings);
    List<Length> heights = new ArrayList<>(readings);
    for (int i = 0; i < readings; i++) {
      long nanometres = random.nextInt(1_000_000) - (i == FIRST_WITH_A_DIP ? 20_000_000L : 0);
      heights.add(Length.ofNanometres(nanometres));
    }
    // A line of 100 000 readings 0.3 mm apart is 30 m long: spans end at 100 m.
    floor = HeightProfile.ofEqualSpacing(Length.ofNanometres(SPACING * 1000L), heights);
    edge = Straightedge.of(Length.ofNanometres(floor.length().toNanometres() / SHARE));
  }

  /** Finds the greatest gap. */
  @Benchmark
  public GreatestGap greatestGap() {
    return edge.greatest(floor, rest);
  }
}
