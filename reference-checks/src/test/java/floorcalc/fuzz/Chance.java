package floorcalc.fuzz;

import java.util.SplittableRandom;

/** Chance from a seed: the same on every machine. Each case has its own, so that it can be made again without those before it. */
final class Chance {
  private static final long MIX = 0x9E3779B97F4A7C15L;

  private final SplittableRandom random;

  private Chance(long seed) {
    this.random = new SplittableRandom(seed);
  }

  /** The chance of one case. */
  static Chance of(long seed, Object kind, long number) {
    long start = new SplittableRandom(seed ^ kind.toString().hashCode() * MIX).nextLong();
    // Mixed once more: else the chances of one case are those of the case before it, from the second one on.
    return new Chance(new SplittableRandom(start + number * MIX).nextLong());
  }

  /** A whole number from 0 to below the bound. */
  int below(int bound) {
    return random.nextInt(bound);
  }

  /** A whole number from the least to the most, both included. */
  long between(long least, long most) {
    return random.nextLong(least, most + 1);
  }

  boolean oneIn(int times) {
    return random.nextInt(times) == 0;
  }

  double share() {
    return random.nextDouble();
  }

  @SafeVarargs
  final <T> T any(T... choices) {
    return choices[random.nextInt(choices.length)];
  }
}
