package floorcalc.audit;

import floorcalc.outline.Ring;
import floorcalc.plan.LaidPiece;
import java.util.List;

/**
 * The pieces of one row in the frame of their bay: how far each reaches, and its edges sorted into those that stand
 * upright (ends), those that lie on the two row lines (edges of boards), and all that are not upright, for the sweep.
 * Each row of a bay is read into the same object again.
 */
final class RowSketch {
  /** How long a common boundary must be before two pieces count as meeting, in nanometres: more than roundings leave. */
  static final double MEET = 10;
  /** How long a common boundary that is not square across the boards must be, and a spur, in nanometres. */
  static final double MEET_ASLANT = 1000;

  List<LaidPiece> pieces = List.of();
  int count;
  double low;
  double high;
  double[] xMin = new double[0];
  double[] xMax = new double[0];
  double[] yMin = new double[0];
  double[] yMax = new double[0];
  /** Whether the outline of a piece can be used at all. */
  boolean[] sound = new boolean[0];
  boolean[] meetsLeft = new boolean[0];
  boolean[] meetsRight = new boolean[0];
  /** Twice the area of all pieces. */
  final WideSum twiceArea = new WideSum();
  /** The length of all outlines. */
  double perimeter;
  /** Edges that are not upright, from left to right; sign +1 if the piece lies above, -1 if it lies below. */
  final Segments slopes = new Segments();
  /** Upright edges at the right-hand side of their piece, from low y to high y. */
  final Segments rightEnds = new Segments();
  /** Upright edges at the left-hand side of their piece, from low y to high y. */
  final Segments leftEnds = new Segments();
  /** Edges on the row line above, from left to right. */
  final Segments tops = new Segments();
  /** Edges on the row line below, from left to right. */
  final Segments bottoms = new Segments();
  /** End joints: x0 is the place, y0 to y1 the common boundary, owner the piece on the left, sign the one on the right. */
  final Segments joints = new Segments();

  private final WideSum ringArea = new WideSum();

  void read(List<LaidPiece> row, BayFrame frame, double lowLine, double highLine) {
    pieces = row;
    count = row.size();
    low = lowLine;
    high = highLine;
    if (xMin.length < count) {
      xMin = new double[count];
      xMax = new double[count];
      yMin = new double[count];
      yMax = new double[count];
      sound = new boolean[count];
      meetsLeft = new boolean[count];
      meetsRight = new boolean[count];
    }
    twiceArea.clear();
    perimeter = 0;
    slopes.clear();
    rightEnds.clear();
    leftEnds.clear();
    tops.clear();
    bottoms.clear();
    joints.clear();
    for (int i = 0; i < count; i++) {
      meetsLeft[i] = false;
      meetsRight[i] = false;
      sound[i] = isSound(row.get(i));
      if (sound[i]) {
        read(i, frame);
      }
    }
  }

  /** Whether each ring of a piece has an area and lies within range. */
  private boolean isSound(LaidPiece piece) {
    boolean usable = isSound(piece.outline());
    for (Ring hole : piece.holes()) {
      usable = usable && isSound(hole);
    }
    return usable;
  }

  private boolean isSound(Ring ring) {
    if (ring.size() < 3 || !BayFrame.inRange(ring)) {
      return false;
    }
    ringArea.clear();
    BayFrame.addTwiceArea(ring, ringArea);
    return ringArea.signum() != 0;
  }

  private void read(int piece, BayFrame frame) {
    xMin[piece] = Double.POSITIVE_INFINITY;
    yMin[piece] = Double.POSITIVE_INFINITY;
    xMax[piece] = Double.NEGATIVE_INFINITY;
    yMax[piece] = Double.NEGATIVE_INFINITY;
    read(pieces.get(piece).outline(), 1, piece, frame);
    for (Ring hole : pieces.get(piece).holes()) {
      read(hole, -1, piece, frame);
    }
  }

  /** Reads a ring so that the piece lies on the left of each edge: outlines anticlockwise, holes clockwise. */
  private void read(Ring ring, int turn, int piece, BayFrame frame) {
    ringArea.clear();
    BayFrame.addTwiceArea(ring, ringArea);
    boolean forwards = ringArea.signum() == turn;
    if (!forwards) {
      ringArea.negate();
    }
    twiceArea.add(ringArea);
    int n = ring.size();
    double ax = frame.x(ring.x(n - 1), ring.y(n - 1));
    double ay = frame.y(ring.x(n - 1), ring.y(n - 1));
    for (int i = 0; i < n; i++) {
      double bx = frame.x(ring.x(i), ring.y(i));
      double by = frame.y(ring.x(i), ring.y(i));
      if (forwards) {
        edge(ax, ay, bx, by, piece, frame.slack());
      } else {
        edge(bx, by, ax, ay, piece, frame.slack());
      }
      if (turn > 0) {
        xMin[piece] = Math.min(xMin[piece], bx);
        xMax[piece] = Math.max(xMax[piece], bx);
        yMin[piece] = Math.min(yMin[piece], by);
        yMax[piece] = Math.max(yMax[piece], by);
      }
      ax = bx;
      ay = by;
    }
  }

  private void edge(double ax, double ay, double bx, double by, int piece, double slack) {
    double dx = bx - ax;
    double dy = by - ay;
    perimeter += Math.sqrt(dx * dx + dy * dy);
    if (Math.abs(dx) <= slack) {
      if (dy > slack) {
        rightEnds.add((ax + bx) / 2, ay, (ax + bx) / 2, by, 1, piece);
      } else if (dy < -slack) {
        leftEnds.add((ax + bx) / 2, by, (ax + bx) / 2, ay, -1, piece);
      }
    }
    if (dx > 0) {
      slopes.add(ax, ay, bx, by, 1, piece);
      if (Math.abs(ay - low) <= slack && Math.abs(by - low) <= slack) {
        bottoms.add(ax, ay, bx, by, 1, piece);
      }
    } else if (dx < 0) {
      slopes.add(bx, by, ax, ay, -1, piece);
      if (Math.abs(ay - high) <= slack && Math.abs(by - high) <= slack) {
        tops.add(bx, by, ax, ay, -1, piece);
      }
    }
  }

  /** Finds the end joints: where the right-hand end of one piece and the left-hand end of another have a common part. */
  void findJoints(double slack) {
    int[] right = rightEnds.orderedByX();
    int[] left = leftEnds.orderedByX();
    // In a row without overlaps an end has one or two others beside it; the bound only stops a row that is a heap.
    long patience = 100L * count + 1000;
    int first = 0;
    for (int r : right) {
      double x = rightEnds.x0[r];
      while (first < left.length && leftEnds.x0[left[first]] < x - slack) {
        first++;
      }
      for (int k = first; k < left.length && leftEnds.x0[left[k]] <= x + slack && patience > 0; k++) {
        patience--;
        int l = left[k];
        double from = Math.max(rightEnds.y0[r], leftEnds.y0[l]);
        double to = Math.min(rightEnds.y1[r], leftEnds.y1[l]);
        int a = rightEnds.owner[r];
        int b = leftEnds.owner[l];
        if (to - from > MEET && a != b) {
          joints.add(x, from, x, to, b, a);
          meetsRight[a] = true;
          meetsLeft[b] = true;
        }
      }
    }
  }
}
