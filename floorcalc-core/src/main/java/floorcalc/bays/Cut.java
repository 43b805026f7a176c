package floorcalc.bays;

/**
 * A line along which a room might be broken, from wall to wall, in the coordinates of its {@link RoomShape}.
 *
 * @param ax where it begins
 * @param ay where it begins
 * @param bx where it ends
 * @param by where it ends
 * @param kind where it comes from
 */
record Cut(double ax, double ay, double bx, double by, Kind kind) {
  /** Where a line comes from; of equal lengths the earlier kind is taken. */
  enum Kind { OPENING, CORNER, EQUAL_RUN, OTHER_RUN, ASLANT }

  double length() {
    return StrictMath.sqrt((bx - ax) * (bx - ax) + (by - ay) * (by - ay));
  }
}
