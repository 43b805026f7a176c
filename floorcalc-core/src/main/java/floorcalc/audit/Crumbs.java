package floorcalc.audit;

/**
 * Tells holes from crumbs. Where a row line cuts a tip off the laid area, what is left may be smaller than anything that
 * can be sawn; a plan need not have a piece for it, nor for what a joint cuts off at a wall. Two pieces that do not quite meet are never a
 * crumb.
 */
final class Crumbs {
  /** The box around a crumb is at most so large, in square nanometres: 0.002 mm². */
  private static final double LARGEST = 2e9;
  /** Or at most so thin, in nanometres. */
  private static final double THICKEST = 10;

  private Crumbs() {
  }

  static boolean isOne(Defect hole, RowSketch row, double slack) {
    double width = hole.right - hole.left;
    double height = hole.high - hole.low;
    if (!hole.bare || width * height > LARGEST && Math.min(width, height) > THICKEST) {
      return false;
    }
    boolean after = touches(hole, hole.left, row.rightEnds, slack);
    boolean before = touches(hole, hole.right, row.leftEnds, slack);
    return !after || !before;
  }

  /** Whether an end of a piece lies beside the hole, over more than what pieces may fail to meet along. */
  private static boolean touches(Defect hole, double x, Segments ends, double slack) {
    for (int i = 0; i < ends.size; i++) {
      if (Math.abs(ends.x0[i] - x) <= 2 * slack
          && Math.min(ends.y1[i], hole.high) - Math.max(ends.y0[i], hole.low) > RowSketch.MEET) {
        return true;
      }
    }
    return false;
  }
}
