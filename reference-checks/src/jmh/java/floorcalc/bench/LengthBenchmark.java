package floorcalc.bench;

import floorcalc.measure.Length;
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
 * What exact lengths cost: full rows and the rest of a run. A pattern for the other benchmarks: the input comes
 * from fields that the compiler cannot see through, the result is returned, and a test checks the answer.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@State(Scope.Benchmark)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(3)
public class LengthBenchmark {

  /** The clear width across the rows in millimetres. */
  @Param({"3480", "12605"})
  public long width;

  private Length clear;
  private Length cover;

  /** Makes the two lengths. */
  @Setup
  public void lengths() {
    clear = Length.ofMillimetres(width);
    cover = Length.ofMillimetres(185);
  }

  /** Returns the width that is left after the full rows. */
  @Benchmark
  public Length remainder() {
    return clear.remainder(cover);
  }
}
