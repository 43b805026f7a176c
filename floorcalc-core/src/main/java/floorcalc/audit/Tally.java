package floorcalc.audit;

/** Counts of what was looked at. Not thread-safe; filled by one audit and then only read. */
final class Tally {
  int bays;
  int rows;
  int pieces;
  int boards;
  int joints;
  long visits;
  /** Whether the geometry of every bay and every piece could be used. */
  boolean comparable = true;
  /** How much the rounding of corners may change the area of all pieces together, in square nanometres. */
  double areaRounding;
  final WideSum pieceArea = new WideSum();
  final WideSum laidArea = new WideSum();
}
