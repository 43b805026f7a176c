package floorcalc.flatness;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

class StraightedgePropertyTest {
  /** An end that falls between readings is rounded to a nanometre, and so is the gap. */
  private static final long ROUNDING = 2;

  @Provide
  Arbitrary<HeightProfile> floors() {
    return Arbitraries.randomValue(StraightedgePropertyTest::floor);
  }

  /** Bowls, humps, steps, waves and noise, at equal and unequal spacing, in whole millimetres or in nanometres. */
  private static HeightProfile floor(Random random) {
    int n = 2 + random.nextInt(16);
    long unit = random.nextBoolean() ? 1_000_000 : 1;
    double bowl = (random.nextDouble() - 0.5) * (random.nextInt(3) - 1) * 1e-5;
    int noise = 1 + random.nextInt(12);
    List<ProfilePoint> readings = new ArrayList<>();
    long place = random.nextInt(1000) * 1_000_000L;
    for (int i = 0; i < n; i++) {
      double middle = place / 1e6 - 1500;
      double height = bowl * middle * middle + random.nextInt(noise) + random.nextDouble();
      readings.add(new ProfilePoint(Length.ofNanometres(place), Length.ofNanometres(Math.round(height * 1e6) / unit * unit)));
      place += (random.nextBoolean() ? 300 : 20 + random.nextInt(600)) * 1_000_000L + (unit == 1 ? random.nextInt(1000) : 0);
    }
    return HeightProfile.of(readings);
  }

  private static Length span(HeightProfile profile, int share) {
    return Length.ofNanometres(Math.max(1, profile.length().toNanometres() / 100 * share));
  }

  /** Every pair of points, every point between: the rests of one placement, without a hull. */
  @Property(tries = 300)
  void onePlacementAgreesWithTryingAllPairs(@ForAll("floors") HeightProfile profile, @ForAll @IntRange(min = 5, max = 100) int share,
      @ForAll @IntRange(max = 100) int along) {
    Length span = span(profile, share);
    long room = profile.length().minus(span).toNanometres();
    Length start = profile.first().plus(Length.ofNanometres(room / 100 * along));
    EdgePlacement placement = Straightedge.of(span).at(profile, start);
    Naive naive = new Naive(profile, start.toNanometres(), span.toNanometres());

    assertThat(placement.worst().gap().toNanometres()).isEqualTo(naive.worst);
    assertThat(placement.gravity().gap().toNanometres()).isEqualTo(naive.gravity);
    for (EdgeRest rest : placement.rests()) {
      assertThat(rest.gap().isNegative()).isFalse();
      assertThat(rest.lowSpot().place()).isBetween(rest.left().place(), rest.right().place());
    }
  }

  /** Laid at 400 places: none beyond the greatest; and at the greatest found, laid there, it is there. */
  @Property(tries = 300)
  void noPlacementGoesBeyondTheGreatest(@ForAll("floors") HeightProfile profile, @ForAll @IntRange(min = 5, max = 100) int share) {
    Straightedge edge = Straightedge.of(span(profile, share));
    long room = profile.length().minus(edge.span()).toNanometres();
    Length worst = edge.greatest(profile, RestRule.WORST).gap();
    Length gravity = edge.greatest(profile, RestRule.GRAVITY).gap();
    Length seenWorst = Length.ZERO;
    Length seenGravity = Length.ZERO;
    for (int i = 0; i <= 400; i++) {
      EdgePlacement placement = edge.at(profile, profile.first().plus(Length.ofNanometres(room / 400 * i)));
      seenWorst = seenWorst.max(placement.worst().gap());
      seenGravity = seenGravity.max(placement.gravity().gap());
    }
    for (EdgePlacement placement : edge.atReadings(profile)) {
      seenWorst = seenWorst.max(placement.worst().gap());
      seenGravity = seenGravity.max(placement.gravity().gap());
    }

    assertThat(worst).isGreaterThanOrEqualTo(seenWorst.minus(Length.ofNanometres(ROUNDING)));
    assertThat(gravity).isGreaterThanOrEqualTo(seenGravity.minus(Length.ofNanometres(ROUNDING)));
    assertThat(gravity).isLessThanOrEqualTo(worst.plus(Length.ofNanometres(ROUNDING)));
  }

  /** The greatest gap is there: laid where it says, or a few nanometres to a side, the edge shows it. */
  @Property(tries = 300)
  void theGreatestIsReached(@ForAll("floors") HeightProfile profile, @ForAll @IntRange(min = 5, max = 100) int share) {
    Straightedge edge = Straightedge.of(span(profile, share));
    for (RestRule rule : RestRule.values()) {
      GreatestGap greatest = edge.greatest(profile, rule);
      Length seen = Length.ZERO;
      for (long aside : new long[] {-20_000, -2000, -200, -20, 0, 20, 200, 2000, 20_000}) {
        Length start = greatest.start().plus(Length.ofNanometres(aside));
        if (start.compareTo(profile.first()) >= 0 && start.plus(edge.span()).compareTo(profile.last()) <= 0) {
          seen = seen.max(edge.at(profile, start).rest(rule).gap());
        }
      }
      // Slopes are below 12 mm in 20 mm: 20 micrometres aside change a gap by less than 12.
      assertThat(seen).isGreaterThanOrEqualTo(greatest.gap().minus(Length.ofNanometres(24_000)));
    }
  }

  @Property(tries = 200)
  void everyStepHolds(@ForAll("floors") HeightProfile profile, @ForAll @IntRange(min = 5, max = 100) int share) {
    for (RestRule rule : RestRule.values()) {
      assertStepsHold(Straightedge.of(span(profile, share)).calculate(profile, rule));
    }
  }

  /** A whole number of nanometres of rise for each millimetre, so that tilted heights stay whole at whole millimetres. */
  @Property(tries = 200)
  void tiltIsNoMatter(@ForAll("floors") HeightProfile profile, @ForAll @LongRange(min = -50_000, max = 50_000) long rise,
      @ForAll @LongRange(min = -1_000_000_000, max = 1_000_000_000) long lift, @ForAll @IntRange(min = 5, max = 100) int share) {
    List<ProfilePoint> tilted = profile.readings().stream().map(reading -> new ProfilePoint(reading.place(),
        Length.ofNanometres(reading.height().toNanometres() + lift
            + reading.place().toNanometres() / 1_000_000 * rise))).toList();
    Assume.that(profile.readings().stream().allMatch(reading -> reading.place().toNanometres() % 1_000_000 == 0));
    Straightedge edge = Straightedge.of(span(profile, share));
    for (RestRule rule : RestRule.values()) {
      assertClose(edge.greatest(HeightProfile.of(tilted), rule).gap(), edge.greatest(profile, rule).gap());
    }
  }

  @Property(tries = 200)
  void mirroredFloorIsAsFlat(@ForAll("floors") HeightProfile profile, @ForAll @IntRange(min = 5, max = 100) int share) {
    Straightedge edge = Straightedge.of(span(profile, share));
    assertThat(profile.mirrored().mirrored()).isEqualTo(profile);
    for (RestRule rule : RestRule.values()) {
      assertClose(edge.greatest(profile.mirrored(), rule).gap(), edge.greatest(profile, rule).gap());
    }
  }

  /**
   * Of the worst rest over all placements a longer edge never shows less: each chord of the floor that a shorter one rests
   * on is within reach of the longer one, and what then rests higher only widens the gap. Of gravity's rest this is not so,
   * see {@code StraightedgeTest}.
   */
  @Property(tries = 300)
  void longerEdgeNeverShowsASmallerWorstGap(@ForAll("floors") HeightProfile profile,
      @ForAll @IntRange(min = 5, max = 100) int one, @ForAll @IntRange(min = 5, max = 100) int other) {
    Length shorter = Straightedge.of(span(profile, Math.min(one, other))).greatest(profile, RestRule.WORST).gap();
    Length longer = Straightedge.of(span(profile, Math.max(one, other))).greatest(profile, RestRule.WORST).gap();
    assertThat(longer).isGreaterThanOrEqualTo(shorter.minus(Length.ofNanometres(ROUNDING)));
  }

  private static void assertClose(Length one, Length other) {
    assertThat(one.minus(other).abs()).isLessThanOrEqualTo(Length.ofNanometres(ROUNDING));
  }

  /** Rests by their meaning alone: a line through two points of the floor with no point of the covered part above it. */
  private static final class Naive {
    private long worst;
    private long gravity;

    Naive(HeightProfile profile, long start, long span) {
      List<long[]> points = new ArrayList<>();
      points.add(point(profile, start));
      profile.readings().stream().mapToLong(reading -> reading.place().toNanometres())
          .filter(place -> place > start && place < start + span).forEach(place -> points.add(point(profile, place)));
      points.add(point(profile, start + span));
      for (int i = 0; i < points.size(); i++) {
        for (int j = i + 1; j < points.size(); j++) {
          long[] left = points.get(i);
          long[] right = points.get(j);
          if (points.stream().allMatch(point -> below(left, right, point).signum() >= 0)) {
            long gap = 0;
            for (int k = i + 1; k < j; k++) {
              gap = Math.max(gap, Cross.nearest(below(left, right, points.get(k)), BigInteger.valueOf(right[0] - left[0])));
            }
            worst = Math.max(worst, gap);
            boolean middle = 2 * left[0] <= 2 * start + span && 2 * start + span <= 2 * right[0];
            gravity = middle ? Math.max(gravity, gap) : gravity;
          }
        }
      }
    }

    private static long[] point(HeightProfile profile, long place) {
      return new long[] {place, profile.heightAt(Length.ofNanometres(place)).toNanometres()};
    }

    private static BigInteger below(long[] left, long[] right, long[] point) {
      BigInteger rise = BigInteger.valueOf(right[1] - left[1]).multiply(BigInteger.valueOf(point[0] - left[0]));
      return rise.subtract(BigInteger.valueOf(point[1] - left[1]).multiply(BigInteger.valueOf(right[0] - left[0])));
    }
  }
}
