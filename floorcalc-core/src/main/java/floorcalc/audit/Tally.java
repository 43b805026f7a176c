package floorcalc.audit;

/** Counts of what was looked at. Not thread-safe; filled by one audit and then only read. */
final class Tally {
  int bays;
  int rows;
  int pieces;
  int boards;
  int joints;
  long visits;
  final WideSum pieceArea = new WideSum();
  final WideSum laidArea = new WideSum();
}
