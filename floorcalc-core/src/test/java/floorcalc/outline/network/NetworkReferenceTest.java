package floorcalc.outline.network;

import static floorcalc.outline.network.PublishedNetwork.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Networks from F. Krumm, Geodetic Network Adjustment Examples, Geodaetisches Institut, Universitaet Stuttgart, Rev. 3.5
 * (2020), after the textbooks named in the files: every published coordinate to its four decimals, every published
 * standard deviation to its two. Published deviations are scaled by the factor of the adjustment.
 * {@link PublishedNetwork} reads what was measured from {@code survey_distance_networks_points.csv} and
 * {@code survey_distance_networks_obs.csv}, {@code survey_mixed_networks_points.csv} and
 * {@code survey_mixed_networks_obs.csv}.
 */
@Tag("reference")
class NetworkReferenceTest {

  @ParameterizedTest
  @ValueSource(strings = {"D1", "D2", "D3", "D4", "D5", "D6", "D7"})
  void distances(String id) {
    PublishedNetwork published = PublishedNetwork.distances(id);
    Adjustment adjusted = Network.of(published.points(), published.observations()).adjust();
    assertThat(adjusted.isAtRest()).isTrue();
    assertThat(adjusted.looseness()).isZero();
    for (Map<String, String> row : PublishedNetwork.rows("survey_distance_networks_results.csv", id)) {
      AdjustedPoint point = adjusted.point(row.get("point"));
      assertThat(point.x()).as(point.name()).isCloseTo(number(row, "x_recomputed"), within(0.00005));
      assertThat(point.y()).as(point.name()).isCloseTo(number(row, "y_recomputed"), within(0.00005));
      if (!row.get("x_published").isEmpty()) {
        assertThat(point.x()).as(point.name()).isCloseTo(number(row, "x_published"), within(0.00005));
        assertThat(point.y()).as(point.name()).isCloseTo(number(row, "y_published"), within(0.00005));
        double milli = 1000 * adjusted.factor();
        assertThat(point.deviationX() * milli).as(point.name()).isCloseTo(number(row, "sx_published_milli"), within(0.005));
        assertThat(point.deviationY() * milli).as(point.name()).isCloseTo(number(row, "sy_published_milli"), within(0.005));
      }
    }
    Map<String, String> summary = PublishedNetwork.rows("survey_distance_networks_summary.csv", id).get(0);
    assertThat(adjusted.redundancy()).isEqualTo(Integer.parseInt(summary.get("redundancy")));
    assertThat(adjusted.factor()).isCloseTo(number(summary, "s0"), within(0.000005));
    List<Map<String, String>> observed = PublishedNetwork.rows("survey_distance_networks_obs.csv", id);
    for (int i = 0; i < observed.size(); i++) {
      assertThat(adjusted.observations().get(i).residual())
          .isCloseTo(number(observed.get(i), "residual_recomputed"), within(0.000005));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"M1", "M2", "M3", "M4"})
  void distancesAndAngles(String id) {
    PublishedNetwork published = PublishedNetwork.mixed(id);
    Adjustment adjusted = Network.of(published.points(), published.observations()).adjust();
    assertThat(adjusted.isAtRest()).isTrue();
    for (Map<String, String> row : PublishedNetwork.rows("survey_mixed_networks_points.csv", id)) {
      AdjustedPoint point = adjusted.point(row.get("point"));
      assertThat(point.x()).as(point.name()).isCloseTo(number(row, "x_recomputed"), within(0.00005));
      assertThat(point.y()).as(point.name()).isCloseTo(number(row, "y_recomputed"), within(0.00005));
      if (!row.get("x_published").isEmpty()) {
        assertThat(point.x()).as(point.name()).isCloseTo(number(row, "x_published"), within(0.00005));
        assertThat(point.y()).as(point.name()).isCloseTo(number(row, "y_published"), within(0.00005));
      }
      double milli = 1000 * adjusted.factor();
      assertThat(point.deviationX() * milli).as(point.name()).isCloseTo(number(row, "sx_mm"), within(0.005));
      assertThat(point.deviationY() * milli).as(point.name()).isCloseTo(number(row, "sy_mm"), within(0.005));
    }
    Map<String, String> summary = PublishedNetwork.rows("survey_mixed_networks_summary.csv", id).get(0);
    assertThat(adjusted.redundancy()).isEqualTo(Integer.parseInt(summary.get("redundancy")));
    assertThat(adjusted.factor()).isCloseTo(number(summary, "s0"), within(0.00005));
  }
}
