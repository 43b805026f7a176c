package floorcalc.examples.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import floorcalc.examples.Demo;
import floorcalc.examples.Docs;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.survey.Survey;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyUncertainty;
import floorcalc.outline.survey.SurveyWall;
import floorcalc.outline.survey.Tie;
import floorcalc.outline.survey.Turn;
import floorcalc.outline.survey.WallOffset;
import floorcalc.plan.Room;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SurveyReaderTest {
  private static byte[] bytes(String name) throws IOException {
    return Files.readAllBytes(Path.of("src", "test", "resources", "jobs", name + ".json"));
  }

  private static Length inches(int whole, int numerator, int denominator) {
    return Length.ofInches(whole, numerator, denominator);
  }

  /** Reads a survey of which only the fields behind its four walls of 4000 and 3000 mm are given. */
  private static Survey survey(String more) {
    return surveys("""
        "survey": {"walls": [{"length": 4000}, {"length": 3000}, {"length": 4000}, {"length": 3000}]%s}
        """.formatted(more)).rooms().get(0).survey();
  }

  private static SurveyFile surveys(String shape) {
    return JobReader.surveys("""
        {"format": "floorcalc-job/1", "title": "Invented",
         "board": {"length": 2200, "coverWidth": 185, "thickness": 14, "perPack": 6, "construction": "engineered"},
         "rooms": [{"name": "Hall", %s}]}
        """.formatted(shape).getBytes(StandardCharsets.UTF_8));
  }

  /** A right triangle of 3, 4 and 5 m has 3 x 4 / 2 = 6 m²; five walls, an odd number, cannot close at right angles, so two ties are missing. */
  @Test
  void anOddNumberOfWallsIsNotTakenForSquare() {
    Survey triangle = surveys("\"survey\": {\"walls\": [{\"length\": 3000}, {\"length\": 4000}, {\"length\": 5000}]}").rooms().get(0).survey();
    assertThat(triangle.corners()).isEqualTo(Survey.Corners.AS_MEASURED);
    assertThat(SurveyReport.of(triangle).value().room().orElseThrow().outline().area().toSquareMetres()).isCloseTo(6, within(1e-6));
    Survey five = surveys("\"survey\": {\"walls\": [{\"length\": 3000}, {\"length\": 4000}, {\"length\": 2000}, {\"length\": 2000}, {\"length\": 3000}]}")
        .rooms().get(0).survey();
    assertThat(SurveyReport.of(five).findings()).singleElement().satisfies(finding -> {
      assertThat(finding.code()).isEqualTo("survey-shape-not-fixed");
      assertThat(finding.message()).contains("2 more are needed");
    });
  }

  @Test
  void wallsAndTies() throws IOException {
    SurveyFile file = JobReader.surveys(bytes("surveyed-study"));
    assertThat(file.title()).isEqualTo("Gullhaven study, measured with a tape (invented)");
    assertThat(file.rooms()).containsExactly(new MeasuredRoom("Study", Survey.of(List.of(
            SurveyWall.of(Length.ofMillimetres(4210)), SurveyWall.of(Length.ofMillimetres(3621)),
            SurveyWall.of(Length.ofMillimetres(4194)), SurveyWall.of(Length.ofMillimetres(3606))))
        .withTies(List.of(new Tie(1, 3, Length.ofMillimetres(5542)), new Tie(2, 4, Length.ofMillimetres(5541))))));
    assertThat(file.tape()).isEqualTo(Tape.METRIC);
    assertThat(file.others()).isEmpty();
  }

  /** The outline of the room is the one that all its measurements make, and they stay with it. */
  @Test
  void roomToLay() throws IOException {
    Room room = JobReader.read(bytes("surveyed-study")).job().rooms().get(0);
    SurveyReport report = room.survey().orElseThrow().value();
    assertThat(report.survey()).isEqualTo(JobReader.surveys(bytes("surveyed-study")).rooms().get(0).survey());
    assertThat(room.outline()).isEqualTo(report.room().orElseThrow().outline());
    assertThat(room.doors().get(0).to()).isEqualTo(Point.ofMillimetres(2026, 0));
    assertThat(JobReader.read(bytes("everything")).job().rooms().get(0).survey()).isEmpty();
  }

  @Test
  void everyField() throws IOException {
    SurveyFile file = JobReader.surveys(Demo.bytes(Demo.PARLOUR));
    Survey survey = file.rooms().get(0).survey();
    // 7' 6 1/8" is 90 1/8 in
    assertThat(survey.walls()).startsWith(SurveyWall.of(inches(150, 0, 1)).then(Turn.LEFT),
        SurveyWall.of(inches(90, 1, 8)).then(Turn.RIGHT));
    assertThat(survey.walls()).endsWith(SurveyWall.of(inches(60, 0, 1)).then(Turn.ofDegrees(0)),
        SurveyWall.of(inches(100, 0, 1)).then(Turn.ofDegrees(0)).arched(inches(18, 0, 1)),
        SurveyWall.of(inches(60, 0, 1)).then(Turn.LEFT));
    assertThat(survey.walls()).hasSize(8);
    assertThat(survey.ties()).hasSize(8).contains(new Tie(1, 5, inches(318, 1, 8)));
    assertThat(survey.offsets()).containsExactly(
        new WallOffset(5, inches(80, 0, 1), Length.ZERO), new WallOffset(5, inches(80, 0, 1), inches(14, 0, 1)),
        new WallOffset(5, inches(134, 0, 1), inches(14, 0, 1)), new WallOffset(5, inches(134, 0, 1), Length.ZERO));
    // 1/8 in = 3.175 mm
    assertThat(survey.uncertainty()).isEqualTo(new SurveyUncertainty(Length.ofMillimetres("3.175"), Length.ofMillimetres("0.2"), 0.25));
    assertThat(survey.corners()).isEqualTo(Survey.Corners.AS_MEASURED);
    assertThat(file.tape()).isEqualTo(Tape.FEET_AND_INCHES);
  }

  @Test
  void turnsInDegreesAndWords() {
    List<SurveyWall> walls = surveys("""
        "survey": {"walls": [{"length": 4000, "turn": 90}, {"length": 3000, "turn": -89.5}, {"length": 4000, "turn": "right"},
                             {"length": 3000, "turn": "left"}, {"length": 3000}]}
        """).rooms().get(0).survey().walls();
    assertThat(walls.stream().map(SurveyWall::turn)).containsExactly(Turn.ofDegrees(90), Turn.ofDegrees(-89.5), Turn.RIGHT,
        Turn.LEFT, Turn.UNKNOWN);
  }

  /** Walls alone are taken as square; once a diagonal or an angle was measured, nothing is. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "''                                                                          | RIGHT_ANGLES",
      "'\"ties\": []'                                                              | RIGHT_ANGLES",
      "'\"arcs\": [{\"wall\": 2, \"rise\": 300}]'                                  | RIGHT_ANGLES",
      "'\"rightAngles\": false'                                                    | AS_MEASURED",
      "'\"ties\": [{\"from\": 1, \"to\": 3, \"length\": 5000}]'                    | AS_MEASURED",
      "'\"ties\": [{\"from\": 1, \"to\": 3, \"length\": 5000}], \"rightAngles\": true' | RIGHT_ANGLES"})
  void rightAnglesIfLeftOut(String more, Survey.Corners corners) {
    assertThat(survey(more.isEmpty() ? "" : ", " + more).corners()).isEqualTo(corners);
  }

  @Test
  void aMeasuredTurnLeavesTheOthersOpenToo() {
    assertThat(surveys("\"survey\": {\"walls\": [{\"length\": 4000, \"turn\": 90}, {\"length\": 3000}, {\"length\": 4000}, {\"length\": 3000}]}")
        .rooms().get(0).survey().corners()).isEqualTo(Survey.Corners.AS_MEASURED);
    assertThat(surveys("\"survey\": {\"walls\": [{\"length\": 4000, \"turn\": \"left\"}, {\"length\": 3000}, {\"length\": 4000}, {\"length\": 3000}]}")
        .rooms().get(0).survey().corners()).isEqualTo(Survey.Corners.RIGHT_ANGLES);
  }

  @Test
  void deviationsThatAreLeftOutAreThoseOfATape() {
    assertThat(survey(", \"uncertainty\": {}").uncertainty()).isEqualTo(SurveyUncertainty.TAPE);
    assertThat(survey(", \"uncertainty\": {\"length\": 1.5}").uncertainty())
        .isEqualTo(new SurveyUncertainty(Length.ofMillimetres("1.5"), Length.ofMillimetres("0.2"), 0.5));
  }

  @Test
  void roomsByTheirCornersAreNamed() {
    SurveyFile file = surveys("\"outline\": [[0, 0], [4000, 0], [4000, 3000], [0, 3000]]");
    assertThat(file.rooms()).isEmpty();
    assertThat(file.others()).containsExactly("Hall");
  }

  /** Whatever does not need the walls is refused as ever. */
  @Test
  void restOfAJobIsReadStrictly() throws IOException {
    byte[] job = new String(bytes("surveyed-study"), StandardCharsets.UTF_8).replace("\"perPack\": 6", "\"perPack\": 0")
        .replace("\"screed\"", "\"sand\"").replace("\"off\": 310", "\"off\": -310").getBytes(StandardCharsets.UTF_8);
    BadJobException bad = catchThrowableOfType(BadJobException.class, () -> JobReader.surveys(job));
    assertThat(bad.mistakes().stream().map(Mistake::place))
        .containsExactly("/board/perPack", "/rooms/0/pipes/0/at/off", "/rooms/0/subfloor");
  }

  @Test
  void theStudyKeepsToTheSchema() throws IOException {
    assertThat(Docs.faultsOfJob(bytes("surveyed-study"))).isEmpty();
  }
}
