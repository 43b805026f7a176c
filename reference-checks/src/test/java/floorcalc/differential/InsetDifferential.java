package floorcalc.differential;

import floorcalc.differential.RandomOutlines.Place;
import floorcalc.measure.Length;
import floorcalc.outline.ExpansionGap;
import floorcalc.outline.Outline;
import floorcalc.outline.Wkt;
import java.util.SplittableRandom;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * What a gap leaves of a room: the core's exact corners, rounded to whole nanometres, against offsets in floating point. Each
 * corner of either floor is measured to the nearest wall of the other; a floor that one side alone has is as far off as it is wide.
 */
final class InsetDifferential extends Comparison {
  private static final long MILLIMETRE = 1_000_000;

  private final Inset inset;

  InsetDifferential(Inset inset, int cases) {
    super("what a gap leaves of " + inset.rooms(), inset.library(), cases, ExpansionGap.class);
    this.inset = inset;
  }

  @Override
  public String unit() {
    return "nm between the two floors";
  }

  /** Half a nanometre along x and along y, and a hundredth for the library's own rounding. */
  @Override
  public double tolerance() {
    return 0.72;
  }

  @Override
  public String argument() {
    return "the core rounds x and y of a corner to the nearest nanometre: it may be half a nanometre off along both; "
        + inset.remark();
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    RandomOutlines outlines = new RandomOutlines(211);
    SplittableRandom random = new SplittableRandom(212);
    int several = 0;
    int none = 0;
    int leftOut = 0;
    for (int k = 0; k < upTo; k++) {
      Outline room = inset.isForConvexRooms() ? outlines.nextConvex() : outlines.next(Place.NEAR);
      long gap = random.nextInt(4) == 0 ? random.nextLong(1, 1500 * MILLIMETRE) : random.nextLong(1, 25) * MILLIMETRE;
      if (!inset.can(room)) {
        leftOut++;
        continue;
      }
      long asked = answers == Answers.AS_GIVEN ? gap : gap + 2;
      ExpansionGap laid = ExpansionGap.inset(room, Length.ofNanometres(asked)).value();
      worst.nextCase();
      several += laid.laid().size() > 1 ? 1 : 0;
      none += laid.laid().isEmpty() ? 1 : 0;
      worst.see(apart(JtsPlane.walls(laid.laid()), inset.walls(room, gap)),
          () -> "a gap of " + gap + " nm in " + Wkt.write(room));
    }
    worst.note(several + " floors in several pieces, " + none + " swallowed"
        + (leftOut == 0 ? "" : ", " + leftOut + " left out (" + inset.leftOut() + ")"));
  }

  private static double apart(Geometry mine, Geometry theirs) {
    if (mine.isEmpty() || theirs.isEmpty()) {
      return mine.isEmpty() && theirs.isEmpty() ? 0 : Math.max(width(mine), width(theirs));
    }
    return Math.max(0, DiscreteHausdorffDistance.distance(mine, theirs) - tinyWall(theirs));
  }

  /** The longest wall of less than 3 nm: rounded to whole nanometres its two corners may become one, which is so much farther from the other. */
  private static double tinyWall(Geometry walls) {
    double tiny = 0;
    Coordinate[] corners = walls.getCoordinates();
    for (int i = 0; i + 1 < corners.length; i++) {
      double length = corners[i].distance(corners[i + 1]);
      tiny = length < 3 ? Math.max(tiny, length) : tiny;
    }
    return tiny;
  }

  private static double width(Geometry walls) {
    return Math.max(walls.getEnvelopeInternal().getWidth(), walls.getEnvelopeInternal().getHeight());
  }
}
