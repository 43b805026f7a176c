package floorcalc.flatness;

/** Counts what a search does, so that a test can hold its growth against a bound. Used by one thread. */
final class StepCount {
  private long steps;

  void step() {
    steps++;
  }

  long steps() {
    return steps;
  }
}
