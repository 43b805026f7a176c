package floorcalc.drawing;

/**
 * How many times larger than to scale something small is drawn: 1, 2 or 5 with noughts, so that the largest of its kind just keeps to a
 * length on paper.
 *
 * @param times how many times, at least 1
 * @param scale how many times smaller the plan is than the floor
 */
record Exaggeration(long times, long scale) {
  /** So many times larger nothing is ever drawn. */
  private static final long MOST = 1_000_000;

  /**
   * Returns the factor.
   *
   * @param largest the largest of its kind on the floor, millimetres
   * @param onPaper how long it may be on paper, millimetres
   */
  static Exaggeration of(double largest, double onPaper, Paper paper) {
    long times = 1;
    for (long ten = 1; ten <= MOST; ten *= 10) {
      for (long round : new long[] {ten, 2 * ten, 5 * ten}) {
        if (round <= MOST && round * largest / paper.scale() <= onPaper) {
          times = round;
        }
      }
    }
    return new Exaggeration(times, paper.scale());
  }

  /** Returns how long so many millimetres of floor are drawn. */
  double of(double floor) {
    return floor * times / scale;
  }

  /** For example "drawn 200 times". */
  String words() {
    return times == 1 ? "to scale" : "drawn " + Words.grouped(times) + " times";
  }
}
