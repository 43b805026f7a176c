package floorcalc.levels;

import static floorcalc.levels.Grids.set;
import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.flatness.EdgeMethod;
import floorcalc.flatness.HeightProfile;
import floorcalc.flatness.ProfilePoint;
import floorcalc.flatness.RestRule;
import floorcalc.flatness.SpanLimit;
import floorcalc.flatness.Straightedge;
import floorcalc.flatness.ToleranceSet;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Outcome;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;

class SubfloorPreparationPropertyTest {
  private static final ToleranceSet DIN = ToleranceSet.named("DIN 18202 line 4");

  /** Grids of unequal steps, some without a corner, heights within a few millimetres to a hundredth. */
  @Provide
  Arbitrary<Levels> floors() {
    return Combinators.combine(Arbitraries.integers().between(2, 8), Arbitraries.integers().between(2, 8),
        Arbitraries.longs().between(1, 1_000_000)).as(SubfloorPreparationPropertyTest::floor);
  }

  private static Levels floor(int columns, int rows, long seed) {
    Random random = new Random(seed);
    boolean isRegular = random.nextBoolean();
    long[] xs = steps(random, columns, isRegular);
    long[] ys = steps(random, rows, isRegular);
    int rough = 100 + random.nextInt(900);
    boolean lacksCorner = columns > 3 && rows > 3 && random.nextInt(3) == 0;
    List<SpotLevel> spots = new ArrayList<>();
    for (int c = 0; c < columns; c++) {
      for (int r = 0; r < rows; r++) {
        if (!lacksCorner || c < columns - 2 || r < rows - 2) {
          spots.add(SpotLevel.of(Length.ofMillimetres(xs[c]), Length.ofMillimetres(ys[r]),
              Length.ofNanometres(10_000L * (random.nextInt(rough) + random.nextInt(rough)))));
        }
      }
    }
    return Levels.of(spots);
  }

  private static long[] steps(Random random, int number, boolean isRegular) {
    long[] places = new long[number];
    for (int i = 1; i < number; i++) {
      places[i] = places[i - 1] + (isRegular ? 500 : 300 + random.nextInt(500));
    }
    return places;
  }

  @Provide
  Arbitrary<ToleranceSet> sets() {
    return Arbitraries.of(set("2", "2000"), set("3", "2438.4", "2", "1219.2"), set("1.5", "1600"), DIN);
  }

  private static boolean isPossible(Levels levels, ToleranceSet set) {
    return GridFlatness.of(levels, set).value().outcome() != Outcome.NOT_MEASURED
        || !GridFlatness.of(levels, set).value().gaps().isEmpty();
  }

  private static List<PreparationOptions> ways(long deepest) {
    PreparationOptions grinding = PreparationOptions.grindingUpTo(Length.ofNanometres(deepest * 100_000));
    return List.of(PreparationOptions.fillOnly(), grinding, grinding.leastWork(BigDecimal.valueOf(2), BigDecimal.ONE),
        grinding.leastWork(BigDecimal.ONE, BigDecimal.valueOf(2)), grinding.inStepsOf(Length.ofNanometres(1)));
  }

  @Property(tries = 60)
  void thePreparedFloorPassesUnderEveryEdge(@ForAll("floors") Levels levels, @ForAll("sets") ToleranceSet set,
      @ForAll @LongRange(min = 0, max = 40) long deepest) {
    if (!isPossible(levels, set)) {
      return;
    }
    BigDecimal fillOnly = null;
    for (PreparationOptions options : ways(deepest)) {
      Calculated<SubfloorPreparation> calculated = SubfloorPreparation.of(levels, set, options);
      SubfloorPreparation work = calculated.value();
      assertThat(work.flatnessAfter().outcome()).isNotEqualTo(Outcome.NOT_MET);
      assertThat(work.deepestGrinding()).isLessThanOrEqualTo(options.deepestGrinding());
      laidEdgesPass(work.levelsAfter(), set);
      // Neither usual figure is ever below the least; a step of depth may be added by rounding.
      BigDecimal rounding = new BigDecimal(work.area().toSquareMetres() * options.step().toMillimetres() + 1e-9);
      assertThat(work.leastFillerLitres()).isLessThanOrEqualTo(work.worstDepthTimesArea().add(rounding))
          .isLessThanOrEqualTo(work.meanDepthTimesArea().add(rounding)).isLessThanOrEqualTo(work.fillerLitres());
      fillOnly = fillOnly == null ? work.fillerLitres() : fillOnly;
      assertThat(work.leastFillerLitres()).isLessThanOrEqualTo(fillOnly);
      work.leastGroundLitres().ifPresent(bound -> {
        assertThat(bound).isLessThanOrEqualTo(work.groundLitres());
        assertThat(work.fillerLitres()).isEqualByComparingTo(work.leastFillerLitres());
      });
      work.leastWork().ifPresent(bound -> assertThat(bound).isLessThanOrEqualTo(work.work().orElseThrow()));
      assertStepsHold(calculated);
    }
  }

  /** Measures each line again as a profile, with an edge laid by other code, every place, the worst rest. */
  private static void laidEdgesPass(Levels levels, ToleranceSet set) {
    if (set.method() != EdgeMethod.SPAN) {
      return;
    }
    LevelGrid grid = levels.grid();
    for (GridLine line : grid.lines) {
      List<ProfilePoint> points = new ArrayList<>();
      for (int i = 0; i < line.size(); i++) {
        points.add(new ProfilePoint(Length.ofNanometres(Math.round(line.at()[i])), levels.spots().get(line.nodes()[i]).height()));
      }
      HeightProfile profile = HeightProfile.of(points);
      for (SpanLimit limit : set.limits()) {
        Straightedge edge = Straightedge.of(limit.span());
        if (line.isJudgedBy(limit.span().toNanometres()) && edge.fits(profile)) {
          assertThat(edge.greatest(profile, RestRule.WORST).gap())
              .isLessThanOrEqualTo(limit.gap().plus(Length.ofNanometres(1)));
        }
      }
    }
  }

  @Property(tries = 60)
  void anEdgeLaidByOtherCodeFindsTheSameGap(@ForAll("floors") Levels levels,
      @ForAll @LongRange(min = 700, max = 3000) long span) {
    ToleranceSet set = set("1", Long.toString(span));
    LevelGrid grid = levels.grid();
    GridFlatness flatness = GridFlatness.of(levels, set).value();
    for (LineWay way : LineWay.values()) {
      Length greatest = null;
      for (GridLine line : grid.lines) {
        if (line.way() == way && line.isJudgedBy(span * 1e6)) {
          List<ProfilePoint> points = new ArrayList<>();
          for (int i = 0; i < line.size(); i++) {
            points.add(new ProfilePoint(Length.ofNanometres(Math.round(line.at()[i])),
                levels.spots().get(line.nodes()[i]).height()));
          }
          HeightProfile profile = HeightProfile.of(points);
          Length edge = Length.ofMillimetres(span).min(profile.length());
          Length gap = Straightedge.of(edge).greatest(profile, RestRule.WORST).gap();
          greatest = greatest == null ? gap : greatest.max(gap);
        }
      }
      List<GridGap> found = flatness.gaps().stream().filter(gap -> gap.way() == way).toList();
      if (greatest == null) {
        assertThat(found).isEmpty();
      } else {
        // Where no reading lies below any chord the greatest gap is that at the contacts, 0.
        assertThat(found).hasSize(1);
        assertThat((double) found.get(0).gap().max(Length.ZERO).toNanometres())
            .isCloseTo(greatest.toNanometres(), within(1.0));
      }
    }
  }

  @Property(tries = 40)
  void noFilledSpotMayBeAStepLower(@ForAll("floors") Levels levels, @ForAll("sets") ToleranceSet set,
      @ForAll @LongRange(min = 0, max = 30) long deepest) {
    if (!isPossible(levels, set)) {
      return;
    }
    PreparationOptions options = PreparationOptions.grindingUpTo(Length.ofNanometres(deepest * 100_000));
    SubfloorPreparation work = SubfloorPreparation.of(levels, set, options).value();
    for (int i = 0; i < work.spots().size(); i++) {
      if (work.spots().get(i).fill().isPositive()) {
        List<SpotLevel> spots = new ArrayList<>(work.levelsAfter().spots());
        spots.set(i, new SpotLevel(spots.get(i).place(), spots.get(i).height().minus(options.step())));
        assertThat(GridFlatness.of(Levels.of(spots), set).value().outcome()).isEqualTo(Outcome.NOT_MET);
      }
      if (work.spots().get(i).grind().isPositive()) {
        List<SpotLevel> spots = new ArrayList<>(work.levelsAfter().spots());
        spots.set(i, new SpotLevel(spots.get(i).place(), spots.get(i).height().plus(options.step())));
        assertThat(GridFlatness.of(Levels.of(spots), set).value().outcome()).isEqualTo(Outcome.NOT_MET);
      }
    }
  }

  /** A case in which a ground spot can be raised only after one that comes behind it. */
  @Property(tries = 40, seed = "7156278948054090338")
  void noGroundSpotMayBeAStepHigher(@ForAll("floors") Levels levels, @ForAll("sets") ToleranceSet set,
      @ForAll @LongRange(min = 0, max = 30) long deepest) {
    noFilledSpotMayBeAStepLower(levels, set, deepest);
  }

  @Property(tries = 40)
  void slopeAndSideDoNotMatter(@ForAll("floors") Levels levels, @ForAll("sets") ToleranceSet set,
      @ForAll @IntRange(min = -20, max = 20) int right, @ForAll @IntRange(min = -20, max = 20) int up) {
    if (!isPossible(levels, set)) {
      return;
    }
    LevelGrid grid = levels.grid();
    Levels tilted = Grids.plus(levels,
        (c, r) -> right * (grid.xs[(int) c] / 1000) + up * (grid.ys[(int) r] / 1000) + 12_345_678);
    Levels mirrored = Levels.of(levels.spots().stream().map(spot -> SpotLevel.of(spot.place().x().negated(), spot.place().y(),
        spot.height())).toList());
    List<Length> gaps = GridFlatness.of(levels, set).value().gaps().stream().map(GridGap::gap).toList();
    assertThat(GridFlatness.of(tilted, set).value().gaps().stream().map(GridGap::gap)).isEqualTo(gaps);
    List<Length> seen = new ArrayList<>(GridFlatness.of(mirrored, set).value().gaps().stream().map(GridGap::gap).toList());
    assertThat(seen).containsExactlyInAnyOrderElementsOf(gaps);
    PreparationOptions options = PreparationOptions.fillOnly();
    List<Length> fills = SubfloorPreparation.of(levels, set, options).value().spots().stream().map(SpotWork::fill).toList();
    assertThat(SubfloorPreparation.of(tilted, set, options).value().spots().stream().map(SpotWork::fill)).isEqualTo(fills);
    assertThat(SubfloorPreparation.of(mirrored, set, options).value().spots().stream().map(SpotWork::fill)).isEqualTo(fills);
  }

  /**
   * The same problems by a general solver: every pair of readings as contacts is written down as a row. Limits by distance take readings
   * as contacts, so these rows are all there are.
   */
  @Property(tries = 25)
  void aGeneralSolverFindsTheSameBounds(@ForAll @IntRange(min = 3, max = 4) int columns,
      @ForAll @IntRange(min = 2, max = 4) int rows, @ForAll @LongRange(min = 1, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 0, max = 30) int deepest) {
    Levels levels = floor(columns, rows, seed);
    if (!isPossible(levels, DIN)) {
      return;
    }
    PreparationOptions options =
        PreparationOptions.grindingUpTo(Length.ofNanometres(deepest * 100_000L)).inStepsOf(Length.ofNanometres(1));
    SubfloorPreparation least = SubfloorPreparation.of(levels, DIN, options).value();
    double filler = solve(levels, deepest / 10.0, 0, 1);
    assertThat(least.fillerLitres().doubleValue()).isCloseTo(filler, within(1e-5));
    SubfloorPreparation work = SubfloorPreparation.of(levels, DIN, options.leastWork(BigDecimal.valueOf(2), BigDecimal.ONE)).value();
    double solved = solve(levels, deepest / 10.0, 2, 1);
    assertThat(work.work().orElseThrow().doubleValue()).isCloseTo(solved, within(1e-4));
    assertThat(work.leastWork().orElseThrow().doubleValue()).isCloseTo(solved, within(2e-4));
    // Least filler first: filler dear enough that no grinding is worth it, less the filler's own price.
    double both = solve(levels, deepest / 10.0, 1, 1e4);
    if (deepest > 0) {
      assertThat(least.groundLitres().doubleValue()).isCloseTo(both - 1e4 * filler, within(2e-3));
    }
  }

  private static double solve(Levels levels, double deepest, double grinding, double filling) {
    LevelGrid grid = levels.grid();
    Limit limit = Limits.of(DIN).limits().get(0);
    int n = levels.spots().size();
    double[] cost = new double[2 * n];
    List<LinearConstraint> rows = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double area = new BigDecimal(grid.quarters[i]).movePointLeft(18).doubleValue() / 4;
      cost[i] = grinding * area;
      cost[n + i] = filling * area;
      double[] row = new double[2 * n];
      row[i] = 1;
      rows.add(new LinearConstraint(row, Relationship.LEQ, deepest));
    }
    for (GridLine line : grid.lines) {
      for (int i = 0; i < line.size(); i++) {
        for (int k = i + 2; k < line.size(); k++) {
          for (int j = i + 1; j < k; j++) {
            double share = (line.at()[j] - line.at()[i]) / (line.at()[k] - line.at()[i]);
            double[] row = new double[2 * n];
            double deep = put(row, n, levels, line.nodes()[i], 1 - share) + put(row, n, levels, line.nodes()[k], share)
                + put(row, n, levels, line.nodes()[j], -1);
            rows.add(new LinearConstraint(row, Relationship.LEQ, limit.at(line.at()[k] - line.at()[i]) / 1e6 - deep));
          }
        }
      }
    }
    return new SimplexSolver(1e-9, 10, 1e-11).optimize(new MaxIter(20_000), new LinearObjectiveFunction(cost, 0),
        new LinearConstraintSet(rows), GoalType.MINIMIZE, new NonNegativeConstraint(true)).getValue();
  }

  private static double put(double[] row, int n, Levels levels, int node, double weight) {
    row[node] -= weight;
    row[n + node] += weight;
    return weight * levels.spots().get(node).height().toMillimetres();
  }
}
