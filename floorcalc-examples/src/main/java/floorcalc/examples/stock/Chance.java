package floorcalc.examples.stock;

import java.util.List;
import java.util.Random;

/** Numbers that follow from the number of a room. What {@link Random} gives is laid down bit by bit, the same on every Java. */
final class Chance {
  /** Odd, with its ones spread out, so that neighbours begin far apart. */
  private static final long SPREAD = 0x9E3779B97F4A7C15L;

  private final Random random;

  private Chance(Random random) {
    this.random = random;
  }

  static Chance of(int number) {
    return new Chance(new Random((number + 1L) * SPREAD));
  }

  /** {@return a whole number from the least to the most, both among them} */
  int between(int least, int most) {
    return least + random.nextInt(most - least + 1);
  }

  boolean oneIn(int many) {
    return random.nextInt(many) == 0;
  }

  <T> T of(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }
}
