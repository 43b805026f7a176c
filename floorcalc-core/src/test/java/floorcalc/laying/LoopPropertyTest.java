package floorcalc.laying;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;

/** Areas of loops against whole numbers of any size. */
class LoopPropertyTest {
  /** Ten thousand kilometres in nanometres: far beyond any floor. */
  private static final long FAR = 10_000_000_000_000_000L;

  /** The shoelace formula as textbooks have it. */
  private static BigInteger shoelace(Loop loop) {
    BigInteger sum = BigInteger.ZERO;
    for (int i = 0; i < loop.size(); i++) {
      int j = (i + 1) % loop.size();
      sum = sum.add(BigInteger.valueOf(loop.x[i]).multiply(BigInteger.valueOf(loop.y[j])))
          .subtract(BigInteger.valueOf(loop.x[j]).multiply(BigInteger.valueOf(loop.y[i])));
    }
    return sum;
  }

  @Property
  void theAreaIsExact(@ForAll @Size(min = 3, max = 9) List<@LongRange(min = -FAR, max = FAR) Long> across, @ForAll long seed) {
    long[] x = across.stream().mapToLong(Long::longValue).toArray();
    long[] y = new long[x.length];
    Random random = new Random(seed);
    for (int i = 0; i < y.length; i++) {
      y[i] = (long) ((random.nextDouble() - 0.5) * 2 * FAR) >> random.nextInt(50);
    }
    Loop loop = Loop.of(x, y);
    assertThat(loop.twiceArea()).isEqualTo(shoelace(loop));
  }
}
