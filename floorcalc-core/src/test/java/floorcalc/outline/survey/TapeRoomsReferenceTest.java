package floorcalc.outline.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.network.Adjustment;
import floorcalc.outline.network.Network;
import floorcalc.outline.network.NetworkPoint;
import floorcalc.outline.network.Observation;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Rooms measured by tape, made up with errors of 1.5 mm and adjusted apart from this library; and a published braced
 * quadrilateral, adjusted apart as well. The sources stand at the heads of the files.
 */
@Tag("reference")
class TapeRoomsReferenceTest {
  /** Adjusted places are printed to a thousandth of a millimetre. */
  private static final double PLACE = 0.0005;

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/reference/survey_tape_rooms_constructed_results.csv", useHeadersInDisplayName = true)
  void rooms(String id, String note, int corners, int observations, int redundancy, String truth, String adjusted,
      double factor, double area, double areaInTruth) throws IOException {
    SurveyReport report = SurveyReport.of(survey(id, corners)).value();
    SurveyedRoom room = report.room().orElseThrow();
    assertThat(room.measurements()).hasSize(observations);
    assertThat(room.redundancy()).isEqualTo(redundancy);
    assertThat(room.factor()).isCloseTo(factor, within(0.00005));
    assertThat(room.area().toSquareMillimetres()).isCloseTo(area, within(0.05 + room.corners().size() * 0.01));
    // The areas of the made-up rooms: within three standard deviations.
    assertThat(room.area().toSquareMillimetres() - areaInTruth).isBetween(-3e6 * room.areaDeviation(), 3e6 * room.areaDeviation());
    String[] places = adjusted.split(";");
    String[] first = places[0].split(" ");
    for (int i = 0; i < corners; i++) {
      String[] place = places[i].split(" ");
      Point corner = room.corners().get(i);
      assertThat(corner.x().toMillimetres())
          .isCloseTo(Double.parseDouble(place[0]) - Double.parseDouble(first[0]), within(PLACE));
      assertThat(corner.y().toMillimetres())
          .isCloseTo(Double.parseDouble(place[1]) - Double.parseDouble(first[1]), within(PLACE));
    }
    assertThat(report.misfits()).isEmpty();
  }

  private static Survey survey(String id, int corners) throws IOException {
    List<SurveyWall> walls = new ArrayList<>();
    List<Tie> ties = new ArrayList<>();
    for (String[] row : rows("survey_tape_rooms_constructed_obs.csv")) {
      if (row[0].equals(id)) {
        int from = Integer.parseInt(row[1].substring(1)) + 1;
        int to = Integer.parseInt(row[2].substring(1)) + 1;
        Length read = Length.ofMillimetres(row[4]);
        if (walls.size() < corners) {
          assertThat(to).isEqualTo(from % corners + 1);
          walls.add(SurveyWall.of(read));
        } else {
          ties.add(new Tie(from, to, read));
        }
      }
    }
    return Survey.of(walls).withTies(ties)
        .withUncertainty(new SurveyUncertainty(Length.ofMillimetres("1.5"), Length.ZERO, 0.5));
  }

  /** All six lengths of four points, of equal weight: adjusted lengths to 0.01 mm, residuals to 0.01 mm. */
  @Test
  void bracedQuadrilateral() throws IOException {
    List<Observation> observations = new ArrayList<>();
    Map<String, String[]> published = new LinkedHashMap<>();
    for (String[] row : rows("survey_braced_quadrilateral.csv")) {
      if (row[0].length() == 2) {
        published.put(row[0], row);
        observations.add(Observation.distance(row[0].substring(0, 1), row[0].substring(1), Double.parseDouble(row[1]), 0.01));
      }
    }
    assertThat(published).hasSize(6);
    // About where they are, from the lengths: A and B on a line, C and D on either side of it or not.
    Adjustment adjusted = best(observations);
    assertThat(adjusted.redundancy()).isEqualTo(1);
    adjusted.observations().forEach(one -> {
      String[] row = published.get(one.observation().from() + one.observation().to());
      assertThat(one.adjusted()).as(row[0]).isCloseTo(Double.parseDouble(row[2]), within(0.000005));
      assertThat(1000 * one.residual()).as(row[0]).isCloseTo(Double.parseDouble(row[3]), within(0.005));
    });
  }

  /** C and D may lie on one side of AB or on both: the one that fits. */
  private static Adjustment best(List<Observation> observations) {
    Adjustment best = null;
    for (int side : new int[] {1, -1}) {
      Adjustment one = Network.of(List.of(NetworkPoint.about("A", 0, 0), NetworkPoint.about("B", 1341.8, 0), place("C", 2775.4, 1937.9, 1),
          place("D", 2167.4, 2173.7, side)), observations).adjust();
      best = best == null || one.squares() < best.squares() ? one : best;
    }
    return best;
  }

  private static NetworkPoint place(String name, double fromA, double fromB, int side) {
    double x = (fromA * fromA - fromB * fromB + 1341.8 * 1341.8) / (2 * 1341.8);
    return NetworkPoint.about(name, x, side * Math.sqrt(fromA * fromA - x * x));
  }

  private static List<String[]> rows(String file) throws IOException {
    try (InputStream in = TapeRoomsReferenceTest.class.getResourceAsStream("/reference/" + file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().filter(line -> !line.startsWith("#")).skip(1)
          .map(line -> line.split(",", -1)).toList();
    }
  }
}
