package floorcalc.audit;

/** A place of a row where too many or too few pieces lie, found by the sweep. Grows while the sweep goes over it. */
final class Defect {
  final Code code;
  /** The pieces concerned, by their places in the row; -1 for none. */
  final int first;
  final int second;
  /** A point within it. */
  final double x;
  final double y;
  double area;
  /** The box around it. */
  final double left;
  double right;
  double low = Double.POSITIVE_INFINITY;
  double high = Double.NEGATIVE_INFINITY;
  /** Whether no piece lies right above or below it. */
  boolean bare = true;

  Defect(Code code, int first, int second, double x, double y, double left) {
    this.code = code;
    this.first = first;
    this.second = second;
    this.x = x;
    this.y = y;
    this.left = left;
  }

  void add(double itsArea, double upTo, double lowest, double highest, boolean itIsBare) {
    area += itsArea;
    right = upTo;
    low = Math.min(low, lowest);
    high = Math.max(high, highest);
    bare &= itIsBare;
  }
}
