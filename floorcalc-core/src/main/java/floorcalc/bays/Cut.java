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

  /** A break in a doorway is taken for this much shorter than it is. */
  private static final double DOORWAY_FIRST = 1e6;
  /** A break that lies neither along nor square to the boards is taken for this many times its length. */
  private static final double ASLANT_LAST = 1.5;
  /** So is a break for a longest run that does not divide it equally: rooms a hair narrower at one end would get slivers there. */
  private static final double UNEQUAL_LATER = 1.01;

  double length() {
    return StrictMath.sqrt((bx - ax) * (bx - ax) + (by - ay) * (by - ay));
  }

  /** Its length, or what it is taken for beside others. */
  double counted() {
    return switch (kind) {
      case OPENING -> Math.max(0, length() - DOORWAY_FIRST);
      case ASLANT -> length() * ASLANT_LAST;
      case OTHER_RUN -> length() * UNEQUAL_LATER;
      default -> length();
    };
  }
}
