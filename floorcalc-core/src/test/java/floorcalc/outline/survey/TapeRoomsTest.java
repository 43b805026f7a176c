package floorcalc.outline.survey;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rooms made up and measured by a tape that errs by 1.5 mm; what their readings come to is held against in {@code reference-checks}. */
class TapeRoomsTest {

  /** The areas of the rooms as they were made up are within three standard deviations of the adjusted ones. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({"TS1, 4, 20037987.5", "TS2, 6, 23647550.0", "TS3, 8, 18532600.0"})
  void areasAreAsSureAsTheySay(String id, int corners, double areaInTruth) throws IOException {
    SurveyedRoom room = SurveyReport.of(survey(id, corners)).value().room().orElseThrow();
    assertThat(room.area().toSquareMillimetres() - areaInTruth).isBetween(-3e6 * room.areaDeviation(), 3e6 * room.areaDeviation());
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

  private static List<String[]> rows(String file) throws IOException {
    try (InputStream in = TapeRoomsTest.class.getResourceAsStream("/reference/" + file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().filter(line -> !line.startsWith("#")).skip(1)
          .map(line -> line.split(",", -1)).toList();
    }
  }
}
