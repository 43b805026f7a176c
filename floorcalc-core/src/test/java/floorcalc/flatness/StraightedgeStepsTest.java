package floorcalc.flatness;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Counts the steps of the search: they grow like n log n though the edge always covers the same share of the line. */
class StraightedgeStepsTest {
  /** Floors that are hard in different ways. */
  enum Shape {
    NOISE, PLATEAUS, BOWL, ARCH, ZIGZAG, WAVES, ARCH_BETWEEN_ZIGZAGS;

    double height(Random random, double share, int i) {
      double middle = share - 0.5;
      return switch (this) {
        case NOISE -> random.nextInt(5_000_000);
        case PLATEAUS -> i / 50 % 3 * 1e6;
        case BOWL -> 4e8 * middle * middle;
        case ARCH -> -4e8 * middle * middle;
        case ZIGZAG -> i % 2 * 1e6 + random.nextInt(1000);
        case WAVES -> 5e6 * StrictMath.sin(60 * share) + 1e6 * StrictMath.sin(700 * share);
        case ARCH_BETWEEN_ZIGZAGS -> share * 4 % 1 < 0.5 ? i % 2 * 2e7 : -4e9 * (share * 4 % 1 - 0.75) * (share * 4 % 1 - 0.75);
      };
    }
  }

  private static HeightProfile floor(Shape shape, int n) {
    Random random = new Random(n);
    List<Length> heights = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      heights.add(Length.ofNanometres(Math.round(shape.height(random, (double) i / n, i))));
    }
    return HeightProfile.ofEqualSpacing(Length.ofNanometres(10_000_001), heights);
  }

  /**
   * With k steps for n readings, k / (n log n) at 30 000 readings is no more than half as much again as at 1000, for an
   * edge over a fifth of the line. A search that grows with n · m would take 20 times as much.
   */
  @ParameterizedTest
  @EnumSource(Shape.class)
  void stepsGrowLikeNLogN(Shape shape) {
    for (RestRule rule : RestRule.values()) {
      double few = perNLogN(1000, n -> steps(shape, rule, n));
      assertThat(perNLogN(10_000, n -> steps(shape, rule, n))).as("%s", rule).isLessThan(1.5 * few);
      assertThat(perNLogN(30_000, n -> steps(shape, rule, n))).as("%s", rule).isLessThan(1.5 * few);
    }
  }

  @ParameterizedTest
  @EnumSource(Shape.class)
  void soDoThoseOfAnEdgeOnEqualBlocks(Shape shape) {
    double few = perNLogN(1000, n -> offsetSteps(shape, n));
    assertThat(perNLogN(10_000, n -> offsetSteps(shape, n))).isLessThan(1.5 * few);
    assertThat(perNLogN(30_000, n -> offsetSteps(shape, n))).isLessThan(1.5 * few);
  }

  private static double offsetSteps(Shape shape, int n) {
    HeightProfile profile = floor(shape, n);
    StepCount tally = new StepCount();
    new OffsetSearch(profile, profile.length().toNanometres() / 5, tally).find();
    return tally.steps();
  }

  private static double steps(Shape shape, RestRule rule, int n) {
    HeightProfile profile = floor(shape, n);
    StepCount tally = new StepCount();
    new EdgeSearch(profile, profile.length().toNanometres() / 5, distance -> 0, tally).find(rule);
    return tally.steps();
  }

  private static double perNLogN(int n, IntToDoubleFunction steps) {
    return steps.applyAsDouble(n) / (n * StrictMath.log(n) / StrictMath.log(2));
  }
}
