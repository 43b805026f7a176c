package floorcalc.outline;

/**
 * What a mitred offset needs of each wall and corner of a ring whose floor lies on its left.
 * <p>
 * Wall i runs from corner i to corner i + 1. At corner i the ring turns to the left by an angle f, the angle of the
 * floor is 180° − f, and t = tan(f/2) = cot((180° − f)/2). The walls moved by d meet at distance d·t before the corner,
 * counted along either wall: before it if the corner juts out of the floor (t more than 0), beyond it at a reflex
 * corner (t less than 0). Nothing here divides by the angle, so walls in one line, or nearly so, are no special case.
 */
final class Mitres {
  /**
   * How far the mitre at a reflex corner may reach from the corner, in gaps. Past that, which is at corners of the floor
   * of more than 348.5 degrees (the tip of a needle of less than 11.5 degrees), it is cut off square.
   */
  static final double LIMIT = 10;

  final Ring ring;
  /** The unit vector along each wall. */
  final double[] ux;
  final double[] uy;
  /** The length of each wall in nanometres. */
  final double[] length;
  /** The tangent of half the turn at each corner. */
  final double[] tangent;

  Mitres(Ring ring) {
    this.ring = ring;
    int n = ring.size();
    ux = new double[n];
    uy = new double[n];
    length = new double[n];
    tangent = new double[n];
    for (int i = 0; i < n; i++) {
      double dx = dx(i);
      double dy = dy(i);
      length[i] = Math.sqrt(dx * dx + dy * dy);
      ux[i] = dx / length[i];
      uy[i] = dy / length[i];
    }
    for (int i = 0; i < n; i++) {
      int before = before(i);
      double cross = Exact.differenceOfProducts(dx(before), dy(i), dy(before), dx(i));
      double dot = Exact.differenceOfProducts(dx(before), dx(i), -dy(before), dy(i));
      double lengths = length[before] * length[i];
      tangent[i] = dot >= 0 ? cross / (lengths + dot) : (lengths - dot) / cross; // the form that does not cancel
    }
  }

  int size() {
    return ring.size();
  }

  int before(int index) {
    return index == 0 ? ring.size() - 1 : index - 1;
  }

  int after(int index) {
    return index + 1 == ring.size() ? 0 : index + 1;
  }

  private long dx(int wall) {
    return ring.x(after(wall)) - ring.x(wall);
  }

  private long dy(int wall) {
    return ring.y(after(wall)) - ring.y(wall);
  }

  boolean isReflex(int corner) {
    return tangent[corner] < 0;
  }

  /** Tells whether the mitre at a corner is so long that it is cut off. */
  boolean isCutOff(int corner) {
    return isReflex(corner) && tangent[corner] * tangent[corner] > LIMIT * LIMIT - 1;
  }

  /** Returns how far beyond the corner the moved walls end, in gaps; negative where they end before it. */
  double reach(int corner) {
    double t = tangent[corner];
    if (!isCutOff(corner)) {
      return -t;
    }
    double cosine = 1 / Math.sqrt(1 + t * t);
    return (LIMIT - cosine) / (-t * cosine);
  }

  /** Returns what the corner adds to the floor, in squares of the gap, beyond the strips along its two walls. */
  double term(int corner) {
    double t = tangent[corner];
    if (!isCutOff(corner)) {
      return t;
    }
    double cutOff = Math.sqrt(1 + t * t) - LIMIT; // the height of the tip that is cut off, in gaps
    return t + cutOff * cutOff / -t;
  }

  /** Returns the x of the vector from the corner to where the moved walls meet, in gaps. */
  double mitreX(int corner) {
    int before = before(corner);
    return ((-uy[before] - uy[corner]) + tangent[corner] * (ux[corner] - ux[before])) / 2;
  }

  /** Returns the y of the vector from the corner to where the moved walls meet, in gaps. */
  double mitreY(int corner) {
    int before = before(corner);
    return ((ux[before] + ux[corner]) + tangent[corner] * (uy[corner] - uy[before])) / 2;
  }
}
