package floorcalc.audit;

import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorPlan;
import floorcalc.rules.LayingRules;

/**
 * Checks that no bay bends round an inner corner deeper than the rules let pass, unless a finding of the plan says so: a corner is as
 * deep as it is far from the rubber band round the bay, measured to the stretch of it that spans its recess.
 */
final class FreedomCheck {
  /** The finding that names a bay that is not free. */
  private static final String NAMED = "bay-must-be-split";
  /**
   * A depth is held against its limit to within so many nanometres beside two gaps: the rule is about walls and breaks, and the
   * corners of the floor keep a gap from them.
   */
  private static final double ROUNDED = 2000;

  private FreedomCheck() {
  }

  static void check(FloorPlan plan, LayingRules rules, Breaches breaches) {
    double limit = CutList.clamped(rules.value(LayingRules.DEEPEST_RECESS).toNanometres());
    double slack = 2 * Math.max(CutList.clamped(rules.value(LayingRules.EXPANSION_GAP).toNanometres()),
        CutList.clamped(rules.value(LayingRules.BREAK_GAP).toNanometres())) + ROUNDED;
    for (Bay bay : plan.bays()) {
      Ring shell = bay.laid().shell();
      boolean named = plan.findings().stream()
          .anyMatch(finding -> finding.code().equals(NAMED) && finding.where().equals(bay.bay()));
      if (!named && shell.size() >= 3 && BayFrame.inRange(shell)) {
        double depth = deepest(shell);
        if (depth > limit + slack) {
          breaches.add(Code.BAY_NOT_FREE, bay.bay(), "bay " + bay.bay() + " bends round a corner " + Words.mm(depth)
              + " inside the line across its recess; at most " + Words.mm(limit) + " is let pass, and no finding '" + NAMED
              + "' names it");
        }
      }
    }
  }

  /** The greatest distance of a corner from the side of the rubber band that spans its stretch of the ring. */
  private static double deepest(Ring ring) {
    int n = ring.size();
    int start = 0;
    for (int i = 1; i < n; i++) {
      if (ring.x(i) < ring.x(start) || ring.x(i) == ring.x(start) && ring.y(i) < ring.y(start)) {
        start = i;
      }
    }
    double deepest = 0;
    int at = start;
    int steps = 0;
    while (steps < n) {
      int reach = 1;
      for (int k = 2; k <= n - steps; k++) {
        // A corner to the right of the line so far lies outside the band: the band goes there instead.
        if (side(ring, at, (at + reach) % n, (at + k) % n) <= 0) {
          reach = k;
        }
      }
      for (int k = 1; k < reach; k++) {
        deepest = Math.max(deepest, distance(ring, at, (at + reach) % n, (at + k) % n));
      }
      at = (at + reach) % n;
      steps += reach;
    }
    return deepest;
  }

  private static double side(Ring ring, int a, int b, int c) {
    double bx = (double) ring.x(b) - ring.x(a);
    double by = (double) ring.y(b) - ring.y(a);
    double cx = (double) ring.x(c) - ring.x(a);
    double cy = (double) ring.y(c) - ring.y(a);
    double product = bx * cy - by * cx;
    // Straight on and farther is a longer side of the band, straight back is not.
    return product != 0 ? product : bx * cx + by * cy >= bx * bx + by * by ? 0 : 1;
  }

  private static double distance(Ring ring, int a, int b, int c) {
    double bx = (double) ring.x(b) - ring.x(a);
    double by = (double) ring.y(b) - ring.y(a);
    double length = Math.sqrt(bx * bx + by * by);
    return length == 0 ? 0
        : Math.abs(bx * ((double) ring.y(c) - ring.y(a)) - by * ((double) ring.x(c) - ring.x(a))) / length;
  }
}
