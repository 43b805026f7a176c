package floorcalc.outline.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import floorcalc.rows.StripRisk;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * What is carried forward along straight lines, against measuring the same room again and again with errors by chance. A
 * standard deviation from {@code n} tries is itself sure to {@code 1 / sqrt(2 n)} of it, a share {@code p} to
 * {@code sqrt(p (1 - p) / n)}; four times that is allowed.
 */
class SurveyMonteCarloTest {
  private static final int TRIES = 4000;
  private static final double ALLOWED = 4 / Math.sqrt(2.0 * TRIES);

  /** An out-of-square L with a tie from each corner: invented. */
  private static final double[] PLACE = {0, 0, 6200, 0, 6190, 2610, 3405, 2600, 3400, 4810, -10, 4800};
  private static final int[][] TIES = {{1, 3}, {1, 4}, {2, 4}, {4, 6}, {1, 5}, {3, 6}};

  @Test
  void deviationsOfAreaLevelsAndStrip() {
    Random random = new Random(20);
    SurveyedRoom sound = SurveyReport.of(survey(null)).value().room().orElseThrow();
    double minimum = 70;
    // Rows run along wall 1, from it: the far wall at corner 5 lies about 4810 mm off.
    double level = fromLine(sound, 5);
    List<Double> areas = new ArrayList<>();
    List<Double> levels = new ArrayList<>();
    int narrow = 0;
    for (int i = 0; i < TRIES; i++) {
      SurveyedRoom room = SurveyReport.of(survey(random)).value().room().orElseThrow();
      areas.add(room.area().toSquareMillimetres());
      double again = fromLine(room, 5);
      levels.add(again);
      // A strip 4 mm over the minimum as measured: how often is it under it?
      narrow += again - level + minimum + 4 < minimum ? 1 : 0;
    }
    assertThat(deviation(areas) / (sound.areaDeviation() * 1e6)).isCloseTo(1, within(ALLOWED));
    double sigma = sound.deviationFromWall(1, 5);
    assertThat(deviation(levels) / sigma).isCloseTo(1, within(ALLOWED));
    double chance = StripRisk.of(Length.ofMillimetres(74), Length.ofMillimetres(185), Length.ofMillimetres(70),
        Length.fromMillimetres(sigma, RoundingMode.HALF_EVEN)).value().probability();
    assertThat(chance).isBetween(0.001, 0.5);
    assertThat((double) narrow / TRIES).isCloseTo(chance, within(4 * Math.sqrt(chance * (1 - chance) / TRIES)));
  }

  private static double fromLine(SurveyedRoom room, int corner) {
    return room.corners().get(corner - 1).y().toMillimetres();
  }

  private static double deviation(List<Double> values) {
    double mean = values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    return Math.sqrt(values.stream().mapToDouble(value -> (value - mean) * (value - mean)).sum() / (values.size() - 1));
  }

  /** The room measured by a tape; without errors if there is no chance. */
  private static Survey survey(Random random) {
    List<SurveyWall> walls = new ArrayList<>();
    for (int i = 1; i <= 6; i++) {
      walls.add(SurveyWall.of(read(i, i % 6 + 1, random)).then(i == 3 ? Turn.RIGHT : Turn.LEFT));
    }
    List<Tie> ties = new ArrayList<>();
    for (int[] tie : TIES) {
      ties.add(new Tie(tie[0], tie[1], read(tie[0], tie[1], random)));
    }
    return Survey.of(walls).withTies(ties);
  }

  private static Length read(int from, int to, Random random) {
    Length exact = Length.fromMillimetres(new Layout(PLACE, 0).distance(from - 1, to - 1), RoundingMode.HALF_EVEN);
    double error = random == null ? 0 : random.nextGaussian() * SurveyUncertainty.TAPE.ofLength(exact);
    return Length.fromMillimetres(exact.toMillimetres() + error, RoundingMode.HALF_EVEN);
  }
}
