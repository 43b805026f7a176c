package floorcalc.differential;

import floorcalc.flatness.GreatestGap;
import floorcalc.flatness.HeightProfile;
import floorcalc.flatness.ProfilePoint;
import floorcalc.flatness.RestRule;
import floorcalc.flatness.Straightedge;
import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * The greatest gap under a straight edge, against every placement and every pair of rests tried. Profiles are a few hundred
 * nanometres long, so that every placement there is can be tried; a line of readings knows no scale.
 */
final class StraightedgeDifferential extends Comparison {
  StraightedgeDifferential(int cases) {
    super("greatest gap under a straightedge, all placements", Library.ALL_WAYS, cases, Straightedge.class, GreatestGap.class);
  }

  @Override
  public String unit() {
    return "nm";
  }

  @Override
  public double tolerance() {
    return 1;
  }

  @Override
  public String argument() {
    return "the height under an end between two readings is rounded to the nanometre, up at one placement and down at the next; the core's search"
        + " tries those that exact heights ask for";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    SplittableRandom random = new SplittableRandom(241);
    for (int k = 0; k < upTo; k++) {
      int n = random.nextInt(3, 11);
      int bumps = random.nextInt(3) == 0 ? 4 : 400;
      int spacing = random.nextInt(2, 30);
      boolean even = random.nextBoolean();
      long[] places = new long[n];
      long[] heights = new long[n];
      for (int i = 0; i < n; i++) {
        places[i] = i == 0 ? 0 : places[i - 1] + (even ? spacing : random.nextLong(1, spacing + 1));
        heights[i] = random.nextLong(bumps);
      }
      long span = random.nextLong(1, places[n - 1] + 1);
      for (RestRule rule : RestRule.values()) {
        GreatestGap greatest = Straightedge.of(Length.ofNanometres(span)).greatest(profile(places, heights), rule);
        long mine = answers == Answers.AS_GIVEN ? greatest.gap().toNanometres() : chords(places, heights, span);
        long theirs = new PlainStraightedge(places, heights, span).greatest(rule);
        worst.see(mine - theirs, () -> rule + " " + span + " nm on " + profile(places, heights).readings() + ": " + mine + ", " + theirs);
      }
      worst.nextCase();
    }
  }

  static HeightProfile profile(long[] places, long[] heights) {
    List<ProfilePoint> readings = new ArrayList<>();
    for (int i = 0; i < places.length; i++) {
      readings.add(new ProfilePoint(Length.ofNanometres(places[i]), Length.ofNanometres(heights[i])));
    }
    return HeightProfile.of(readings);
  }

  /** A fault that is often made: the edge is only laid from reading to reading. */
  private static long chords(long[] places, long[] heights, long span) {
    PlainStraightedge edge = new PlainStraightedge(places, heights, span);
    long greatest = 0;
    for (long start : places) {
      if (start + span <= places[places.length - 1]) {
        greatest = Math.max(greatest, edge.gapAt(start, RestRule.WORST));
      }
    }
    return greatest;
  }
}
