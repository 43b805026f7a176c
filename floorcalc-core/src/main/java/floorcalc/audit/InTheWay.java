package floorcalc.audit;

/**
 * Finds where an edge at the gap from one wall is barred: where it would come nearer than the gap to another wall, or
 * into the mitre at another reflex corner.
 */
final class InTheWay {
  private final Fences fences;
  private final Bands bands;
  private final int wall;
  /** How much wider than its gap what is in the way is taken to be. */
  private final double wider;
  /** The edge starts here and runs as the wall does. */
  private final double x;
  private final double y;
  private final double ux;
  private final double uy;

  private InTheWay(Fences fences, Bands bands, int wall, double wider) {
    this.fences = fences;
    this.bands = bands;
    this.wall = wall;
    this.wider = wider;
    this.ux = fences.ux[wall];
    this.uy = fences.uy[wall];
    this.x = fences.ax[wall] - fences.distance[wall] * uy;
    this.y = fences.ay[wall] + fences.distance[wall] * ux;
  }

  static InTheWay of(Fences fences, Bands bands, int wall, double wider) {
    return new InTheWay(fences, bands, wall, wider);
  }

  private double reach(int other) {
    return fences.distance[other] + wider;
  }

  void addTo(Spans taken) {
    double length = fences.length[wall];
    double endY = y + length * uy;
    // A mitre reaches up to ten gaps from its corner.
    double far = Fences.MITRE * (fences.farthest + wider);
    for (int k = bands.first(Math.min(y, endY) - far); k < bands.last(Math.max(y, endY) + far); k++) {
      int other = bands.member(k);
      if (other >= fences.lines) {
        addTip(other, taken);
      } else if (other != wall && isNear(other) && !(fences.isBreak(wall) && other == fences.twin(wall))) {
        addWall(other, taken);
        addMitre(other, taken);
      }
      if (fences.isBreak(wall) && other < fences.walls) {
        addCrossing(other, taken);
      }
    }
  }

  /** Whether a wall and its mitres come near the edge at all, by the boxes around both. */
  private boolean isNear(int other) {
    double far = reach(other) + Math.max(fences.beyondStart[other], fences.beyondEnd[other]);
    double endX = x + fences.length[wall] * ux;
    double endY = y + fences.length[wall] * uy;
    return Math.min(fences.ax[other], fences.bx[other]) <= Math.max(x, endX) + far
        && Math.max(fences.ax[other], fences.bx[other]) >= Math.min(x, endX) - far
        && Math.min(fences.ay[other], fences.by[other]) <= Math.max(y, endY) + far
        && Math.max(fences.ay[other], fences.by[other]) >= Math.min(y, endY) - far;
  }

  /** Where the edge lies within reach of a wall: one stretch, for what lies within reach of a segment is convex. */
  private void addWall(int other, Spans taken) {
    double reach = reach(other);
    double[] span = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
    disc(fences.ax[other], fences.ay[other], reach, span);
    disc(fences.bx[other], fences.by[other], reach, span);
    // Between the square lines at both ends of the wall, and within reach to its left and right.
    double[] box = {Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY};
    double along = fences.along(other, x, y);
    double alongStep = ux * fences.ux[other] + uy * fences.uy[other];
    double left = fences.left(other, x, y);
    double leftStep = uy * fences.ux[other] - ux * fences.uy[other];
    clip(along, alongStep, box);
    clip(fences.length[other] - along, -alongStep, box);
    clip(left + reach, leftStep, box);
    clip(reach - left, -leftStep, box);
    if (box[0] < box[1]) {
      span[0] = Math.min(span[0], box[0]);
      span[1] = Math.max(span[1], box[1]);
    }
    taken.add(span[0], span[1]);
  }

  /** Where a wall lies between a break and the edge: there the edge would be off the floor. */
  private void addCrossing(int other, Spans taken) {
    double fromLeft = fences.left(wall, fences.ax[other], fences.ay[other]);
    double toLeft = fences.left(wall, fences.bx[other], fences.by[other]);
    double step = toLeft - fromLeft;
    double[] share = {0, 1};
    clip(fromLeft + wider, step, share);
    clip(reach(wall) - fromLeft, -step, share);
    if (share[0] < share[1]) {
      double from = fences.along(wall, fences.ax[other], fences.ay[other]);
      double to = fences.along(wall, fences.bx[other], fences.by[other]);
      double first = from + share[0] * (to - from);
      double last = from + share[1] * (to - from);
      taken.add(Math.min(first, last), Math.max(first, last));
    }
  }

  private void disc(double cx, double cy, double reach, double[] span) {
    double middle = (cx - x) * ux + (cy - y) * uy;
    double off = (cy - y) * ux - (cx - x) * uy;
    double square = reach * reach - off * off;
    if (square > 0) {
      span[0] = Math.min(span[0], middle - Math.sqrt(square));
      span[1] = Math.max(span[1], middle + Math.sqrt(square));
    }
  }

  /** Keeps of a span where value + t * step is more than zero. */
  private static void clip(double value, double step, double[] span) {
    if (step > 0) {
      span[0] = Math.max(span[0], -value / step);
    } else if (step < 0) {
      span[1] = Math.min(span[1], -value / step);
    } else if (value <= 0) {
      span[1] = Double.NEGATIVE_INFINITY;
    }
  }

  /**
   * Where the edge passes through the mitre beyond the end of a wall: within reach of the wall's line on its left, past
   * its end by no more than the mitre reaches. The half of a mitre that belongs to the wall before is found with that.
   */
  private void addMitre(int other, Spans taken) {
    addHalfMitre(other, fences.length[other], fences.length[other] + fences.beyondEnd[other], taken);
    addHalfMitre(other, -fences.beyondStart[other], 0, taken);
  }

  private void addHalfMitre(int other, double from, double to, Spans taken) {
    double[] span = {Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY};
    double along = fences.along(other, x, y);
    double alongStep = ux * fences.ux[other] + uy * fences.uy[other];
    double left = fences.left(other, x, y);
    double leftStep = uy * fences.ux[other] - ux * fences.uy[other];
    clip(along - from, alongStep, span);
    clip(to - along, -alongStep, span);
    double reach = reach(other);
    clip(left, leftStep, span);
    clip(reach - left, -leftStep, span);
    // The bisector bounds the mitre; beyond it lies the other wall's half or free floor.
    boolean end = to > fences.length[other];
    double corner = end ? fences.length[other] : 0;
    // The reach is wider than the gap, so that the mitre is measured at the gap itself.
    double ratio = (end ? to - corner : corner - from) / depth(other, reach);
    if (end) {
      clip(left * ratio - (along - corner), leftStep * ratio - alongStep, span);
    } else {
      clip(left * ratio + (along - corner), leftStep * ratio + alongStep, span);
    }
    taken.add(span[0], span[1]);
  }

  /** How far from a fence its laid area ends; without a gap the reach stands for it. */
  private double depth(int fence, double withoutGap) {
    return fences.distance[fence] > 0 ? fences.distance[fence] : withoutGap;
  }

  /** Where the edge passes through the part of a mitre between its corner and the square cut across its tip. */
  private void addTip(int tip, Spans taken) {
    double[] span = {Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY};
    double along = fences.along(tip, x, y);
    double alongStep = ux * fences.ux[tip] + uy * fences.uy[tip];
    double left = fences.left(tip, x, y);
    double leftStep = uy * fences.ux[tip] - ux * fences.uy[tip];
    double height = fences.distance[tip] + Fences.MITRE * wider;
    double ratio = fences.beyondEnd[tip] / depth(tip, height);
    clip(height - left, -leftStep, span);
    clip(left * ratio - along, leftStep * ratio - alongStep, span);
    clip(left * ratio + along, leftStep * ratio + alongStep, span);
    taken.add(span[0], span[1]);
  }
}
