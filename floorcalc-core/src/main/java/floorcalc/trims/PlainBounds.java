package floorcalc.trims;

/** Bounds that need no search, for bars of one size. */
final class PlainBounds {
  private PlainBounds() {}

  /** What a bar's size, filled with nothing lost, asks for. */
  static long bySum(Problem problem, int[] demand) {
    return Whole.ceiling(problem.total(demand), problem.room(0));
  }

  /**
   * The bound of large pieces at its best limit. A piece of more than half a bar has a bar of its own; small pieces of at
   * least a limit find room only beside those that leave as much.
   *
   * @param apart pieces that no piece of the limit fits beside
   * @param large pieces of more than half a bar that leave the limit or more
   * @param largeSum their sizes
   * @param smallSum sizes of the pieces from the limit to half a bar
   */
  record LargePieces(long limit, long apart, long large, long largeSum, long smallSum, long bars) {

    static LargePieces of(Problem problem, int[] demand) {
      LargePieces best = with(problem, demand, 0);
      for (int i = 0; i < problem.sizes(); i++) {
        if (demand[i] > 0 && 2 * problem.size(i) <= problem.room(0)) {
          LargePieces other = with(problem, demand, problem.size(i));
          best = other.bars > best.bars ? other : best;
        }
      }
      return best;
    }

    private static LargePieces with(Problem problem, int[] demand, long limit) {
      long room = problem.room(0);
      long apart = 0;
      long large = 0;
      long largeSum = 0;
      long smallSum = 0;
      for (int i = 0; i < problem.sizes(); i++) {
        long size = problem.size(i);
        if (size > room - limit) {
          apart += demand[i];
        } else if (2 * size > room) {
          large += demand[i];
          largeSum += demand[i] * size;
        } else if (size >= limit) {
          smallSum += demand[i] * size;
        }
      }
      long more = Math.max(0, Whole.ceiling(smallSum - (large * room - largeSum), room));
      return new LargePieces(limit, apart, large, largeSum, smallSum, apart + large + more);
    }
  }
}
