package floorcalc.bench;

import floorcalc.measure.Length;
import floorcalc.trims.TrimCutting;
import floorcalc.trims.TrimPiece;
import floorcalc.trims.TrimStock;
import floorcalc.working.Calculated;
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

/** What it costs to cut skirtings from bars of 2400 mm, from a room to a block of flats. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@State(Scope.Benchmark)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(2)
public class TrimsBenchmark {
  /** So many lengths, spread over those that a bar gives. */
  @Param({"6", "20", "60"})
  public int lengths;

  /** So many pieces of each. */
  @Param({"2", "50"})
  public int each;

  private List<TrimPiece> pieces;

  /** Makes the pieces, from 317 mm up in odd steps. */
  @Setup
  public void pieces() {
    pieces = new ArrayList<>();
    for (int i = 0; i < lengths; i++) {
      pieces.add(TrimPiece.of("wall", Length.ofMillimetres(317 + 1931L * i / lengths)).times(each));
    }
  }

  /**
   * Cuts them.
   *
   * @return the cutting, not null
   */
  @Benchmark
  public Calculated<TrimCutting> cutting() {
    return TrimCutting.of(pieces, List.of(TrimStock.sold(Length.ofMillimetres(2400))), Length.ofMillimetres(3));
  }
}
