package floorcalc.flatness;

import java.math.BigInteger;

/** A straight line between two points of a floor, and the reading that lies deepest beneath it. Used by one thread. */
final class Chord {
  private final HeightProfile profile;
  private final long start;
  private final long leftX;
  private final long leftY;
  private final long rightX;
  private final long rightY;
  /** The first and the last reading between its ends; none if the last is before the first. */
  final int first;
  final int last;
  /** The deepest reading of those looked at so far, the first of equals; −1 before any was looked at. */
  private int lowest = -1;
  private final boolean endToEnd;

  private Chord(HeightProfile profile, boolean endToEnd, long start, long leftX, long leftY, long rightX, long rightY, int first,
      int last) {
    this.endToEnd = endToEnd;
    this.profile = profile;
    this.start = start;
    this.leftX = leftX;
    this.leftY = leftY;
    this.rightX = rightX;
    this.rightY = rightY;
    this.first = first;
    this.last = last;
  }

  /** An edge of the hull of what an edge covers that lies from a start on. */
  static Chord ofHull(HeightProfile profile, long start, long leftX, long leftY, long rightX, long rightY, int first, int last) {
    return new Chord(profile, false, start, leftX, leftY, rightX, rightY, first, last);
  }

  /** An edge of the hull between two readings. */
  static Chord between(HeightProfile profile, long start, int left, int right) {
    return ofHull(profile, start, profile.place(left), profile.height(left), profile.place(right), profile.height(right),
        left + 1, right - 1);
  }

  /** The chord between an edge's own ends, which is a rest only if there is a gap. */
  static Chord endToEnd(HeightProfile profile, long start, long span, int first, int last) {
    return new Chord(profile, true, start, start, profile.heightOn(start), start + span, profile.heightOn(start + span),
        first, last);
  }

  /** Whether it is to be counted as a rest. */
  boolean isRest() {
    return !endToEnd || hasGap();
  }

  /** Orders by slope, the steepest fall first. */
  int compareSlope(Chord other) {
    return Cross.compareProducts(rightY - leftY, other.rightX - other.leftX, other.rightY - other.leftY, rightX - leftX);
  }

  /** Compares the rise from a reading to one further right with this chord: negative if it is less steep. */
  int compareRise(int one, int other) {
    return Cross.compareProducts(profile.height(other) - profile.height(one), rightX - leftX, rightY - leftY,
        profile.place(other) - profile.place(one));
  }

  void look(int reading) {
    if (lowest < 0) {
      lowest = reading;
      return;
    }
    int lower = reading > lowest ? compareRise(lowest, reading) : -compareRise(reading, lowest);
    if (lower < 0 || lower == 0 && reading < lowest) {
      lowest = reading;
    }
  }

  /** The deepest reading between its ends once it is answered, beneath it or not; −1 if there is none between. */
  int lowest() {
    return lowest;
  }

  private boolean hasGap() {
    return lowest >= 0 && depth() > 0;
  }

  private double depth() {
    return Cross.depth(leftX, leftY, profile.place(lowest), profile.height(lowest), rightX, rightY);
  }

  /** The greatest gap; without one its low spot is the left end. */
  LaidEdge.Found found() {
    boolean gap = hasGap();
    long lowX = gap ? profile.place(lowest) : leftX;
    long lowY = gap ? profile.height(lowest) : leftY;
    return new LaidEdge.Found(gap ? depth() / (rightX - leftX) : 0, start, leftX, leftY, lowX, lowY, rightX, rightY);
  }

  /** Compares two gaps less what is allowed of each, without rounding. */
  static int compareExactly(LaidEdge.Found one, double allowedOne, LaidEdge.Found other, double allowedOther) {
    BigInteger widthOne = BigInteger.valueOf(one.rightX() - one.leftX());
    BigInteger widthOther = BigInteger.valueOf(other.rightX() - other.leftX());
    return over(one, (long) allowedOne, widthOne).multiply(widthOther)
        .compareTo(over(other, (long) allowedOther, widthOther).multiply(widthOne));
  }

  private static BigInteger over(LaidEdge.Found found, long allowed, BigInteger width) {
    BigInteger rise = BigInteger.valueOf(found.rightY() - found.leftY())
        .multiply(BigInteger.valueOf(found.lowX() - found.leftX()));
    return rise.subtract(BigInteger.valueOf(found.lowY() - found.leftY() + allowed).multiply(width));
  }
}
