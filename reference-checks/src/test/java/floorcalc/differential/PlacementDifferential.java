package floorcalc.differential;

import floorcalc.flatness.EdgePlacement;
import floorcalc.flatness.GreatestGap;
import floorcalc.flatness.HeightProfile;
import floorcalc.flatness.RestRule;
import floorcalc.flatness.Straightedge;
import floorcalc.measure.Length;
import java.util.SplittableRandom;

/**
 * Straight edges on floors of real size: the gap at single placements, and that none of many placements shows a greater one than
 * the greatest.
 */
final class PlacementDifferential extends Comparison {
  private static final long MILLIMETRE = 1_000_000;
  private static final int PLACEMENTS = 20;

  PlacementDifferential(int cases) {
    super("gaps under a straightedge laid at a place", Library.ALL_WAYS, cases, Straightedge.class, EdgePlacement.class);
  }

  @Override
  public String unit() {
    return "nm";
  }

  @Override
  public double tolerance() {
    return 0;
  }

  @Override
  public String argument() {
    return "both sides round a fraction once, a half to the even nanometre";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    SplittableRandom random = new SplittableRandom(245);
    for (int k = 0; k < upTo; k++) {
      int n = random.nextInt(5, 40);
      long[] places = new long[n];
      long[] heights = new long[n];
      for (int i = 0; i < n; i++) {
        places[i] = i == 0 ? 0 : places[i - 1] + random.nextLong(50, 310) * MILLIMETRE;
        heights[i] = random.nextLong(-3 * MILLIMETRE, 3 * MILLIMETRE);
      }
      long length = places[n - 1];
      long span = random.nextLong(200 * MILLIMETRE, Math.min(length, 3000 * MILLIMETRE) + 1);
      HeightProfile profile = StraightedgeDifferential.profile(places, heights);
      Straightedge edge = Straightedge.of(Length.ofNanometres(span));
      PlainStraightedge plain = new PlainStraightedge(places, heights, span);
      worst.nextCase();
      for (RestRule rule : RestRule.values()) {
        GreatestGap greatest = edge.greatest(profile, rule);
        worst.see(greatest.gap().toNanometres() - plain.gapAt(greatest.start().toNanometres(), rule),
            () -> rule + " greatest of " + span + " nm on " + profile.readings());
        for (int i = 0; i < PLACEMENTS; i++) {
          long start = i % 2 == 0 ? random.nextLong(length - span + 1)
              : Math.min(length - span, Math.max(0, places[random.nextInt(n)] - (i % 4 == 1 ? span : 0)));
          EdgePlacement placement = edge.at(profile, Length.ofNanometres(start));
          long mine = (answers == Answers.AS_GIVEN ? placement.rest(rule) : placement.rests().get(0)).gap().toNanometres();
          long theirs = plain.gapAt(start, rule);
          worst.see(mine - theirs, () -> rule + " " + span + " nm at " + start + " on " + profile.readings());
          worst.see(Math.max(0, theirs - greatest.gap().toNanometres()), () -> rule + " above the greatest, at " + start);
        }
      }
    }
  }
}
