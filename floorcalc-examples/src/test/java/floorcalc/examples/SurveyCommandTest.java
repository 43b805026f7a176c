package floorcalc.examples;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.examples.job.JobReader;
import floorcalc.outline.survey.SurveyReport;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a job file to a report on its surveys. */
class SurveyCommandTest {
  private static final Path JOBS = Path.of("src", "test", "resources", "jobs");
  private static final Path BROKEN = Path.of("src", "test", "resources", "broken-jobs");
  private static final String STUDY = JOBS.resolve("surveyed-study.json").toString();
  private static final String PARLOUR = Demo.FOLDER.resolve(Demo.PARLOUR + ".json").toString();

  @TempDir
  private Path folder;

  private static Ran studyWith(String from, String to) throws IOException {
    String job = Files.readString(Path.of(STUDY), StandardCharsets.UTF_8);
    assertThat(job).contains(from);
    return Ran.reading(job.replace(from, to).getBytes(StandardCharsets.UTF_8), "survey", "-");
  }

  private static String broken(String name) {
    return BROKEN.resolve(name + ".json").toString();
  }

  /** The room on the page, whose numbers are a regression value: the core's tests hold them against other sums. */
  @Test
  void thePageShowsWhatIsPrinted() throws IOException {
    String page = Docs.page("command-line.md");
    int start = page.indexOf("Study: one shape");
    assertThat(studyWith("\"length\": 5541}", "\"length\": 5541}, {\"from\": 1, \"to\": 2, \"length\": 4110}").out())
        .contains(page.substring(start, page.indexOf("```", start)));
  }

  @Test
  void aSoundSurvey() {
    Ran ran = Ran.with("survey", STUDY);
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).startsWith("Gullhaven study, measured with a tape (invented)\n\nStudy: one shape, 15.183 m² ± 0.006 m²;"
        + " 6 measurements, 1 more than it needs\n").doesNotContain("DOES NOT FIT", "MEASURE");
    // corners 1 and 2 are the datum: corner 1 is held, corner 2 only along the wall
    assertThat(ran.out().lines().filter(line -> line.matches("  1 .*"))).singleElement().asString().contains("held");
    assertThat(ran.out()).contains("  tie 2-4   5541       5541.3       +0.3 ");
  }

  @Test
  void againstTheMiddleOfAllCornersNoneIsHeld() {
    Ran ran = Ran.with("survey", STUDY, "--datum", "free");
    assertThat(ran.out()).doesNotContain("held").contains("against the middle of all corners");
    assertThat(Ran.with("survey", STUDY, "--datum", "first-wall").out()).isEqualTo(Ran.with("survey", STUDY).out());
    assertThat(Ran.with("survey", STUDY, "--datum", "none").exit()).isEqualTo(2);
  }

  @Test
  void feetAndInchesWithMillimetresBesideThem() {
    String out = Ran.with("survey", PARLOUR).out();
    // 12' 6" = 150 x 25.4 = 3810 mm
    assertThat(out).contains("  wall 1            12' 6\" (3810) ").contains(" ft² ± ");
    assertThat(out).contains("measure corner\n                5 to corner 7, about 19' 8 15/16\" (6018 mm)");
    assertThat(out.lines()).allMatch(line -> line.length() <= 110);
  }

  /** 100 mm too little read on a diagonal of a room with one check: it is said that something is wrong, and that it may be any. */
  @Test
  void oneCheckTellsThatSomethingIsWrongButNotWhat() throws IOException {
    Ran ran = studyWith("5542", "5442");
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).contains("1 more than it needs; 1 does not fit\n  DOES NOT FIT  tie 1-3 or tie 2-4 or wall 1 or wall 2 or"
        + " wall 3 or wall 4: the others do not tell which");
    assertThat(ran.out().replaceAll("\\s+", " ")).contains("measure tie 1-3 again: read 5442 mm, the others say 5543.1 mm ± 3.8 mm;"
        + " likely read 100 mm too short").contains("then if that was right, wall 1, wall 2, wall 3, wall 4");
    assertThat(ran.out().lines().filter(line -> line.matches("  tie \\S+ \\* .*"))).hasSize(2);
  }

  /** With both diagonals and a wall read twice the slip is found, and it stands first in the table. */
  @Test
  void whatDoesNotFitStandsFirst() throws IOException {
    String out = studyWith("\"length\": 5541}", "\"length\": 5541}, {\"from\": 1, \"to\": 2, \"length\": 4110}").out();
    List<String> table = out.lines().dropWhile(line -> !line.startsWith("  measured ")).skip(1).toList();
    assertThat(table.get(0)).startsWith("  tie 1-2 * ");
    assertThat(table.get(1)).startsWith("  wall 1   ");
    assertThat(out).contains("do not lay by them before it is mended");
  }

  @Test
  void shapesThatAreNotFixedAreReportedAndNotRefused() throws IOException {
    Ran open = Ran.with("survey", broken("survey-without-a-diagonal"));
    assertThat(open.exit()).isZero();
    // four sides have the greatest area on a circle: s = 9011, sqrt(3981 · 5014 · 4006 · 5021) mm² = 20.0366 m²
    assertThat(open.out().replaceAll("\\s+", " ")).contains("Study: the shape is not fixed MEASURE the measurements do not fix the"
        + " shape of the room, its area may be anywhere from ").contains(" to 20.04 m²").contains("measure corner 2 to corner 4");
    Ran two = Ran.with("survey", broken("survey-of-two-shapes"));
    assertThat(two.out()).contains("Study: 2 shapes fit\n  MEASURE       2 shapes fit the measurements equally well, of 7.50 m² and");
    Ran none = Ran.with("survey", broken("survey-turns-do-not-go-round"));
    assertThat(none.out()).contains("Study: no shape fits\n  DOUBT         no room has these walls and turns");
    assertThat(Ran.with("survey", broken("survey-wall-longer-than-the-rest")).out()).contains("Study: no shape fits\n  DOUBT         wall 1, ");
    assertThat(List.of(open.exit(), two.exit(), none.exit())).containsOnly(0);
  }

  /** Every finding of the library is there in one form or another. */
  @Test
  void nothingThatTheLibraryNoticedIsLeftOut() throws IOException {
    for (String job : List.of(PARLOUR, broken("survey-of-two-shapes"), broken("survey-without-a-diagonal"))) {
      String out = Ran.with("survey", job).out().replaceAll("\\s+", " ");
      for (var room : JobReader.surveys(Files.readAllBytes(Path.of(job))).rooms()) {
        for (var one : SurveyReport.of(room.survey()).value().toMeasure()) {
          assertThat(out).contains("measure corner " + one.from() + " to corner " + one.to());
        }
      }
    }
  }

  /** Walls of 20, 10, 20 and 10 ft are at most 200 ft² large. */
  @Test
  void areasInBothSystems() throws IOException {
    String walls = "[{\"length\": \"20 ft\"}, {\"length\": \"10 ft\"}, {\"length\": \"20 ft\"}, {\"length\": \"10 ft\"}], \"rightAngles\": false";
    String job = Files.readString(Path.of(broken("survey-without-a-diagonal")), StandardCharsets.UTF_8)
        .replaceFirst("(?s)\"walls\": .*\"rightAngles\": false", "\"walls\": " + walls);
    assertThat(Ran.reading(job.getBytes(StandardCharsets.UTF_8), "survey", "-").out().replaceAll("\\s+", " "))
        .contains("18.58 m² (200.0 ft²)");
  }

  /**
   * Of the parlour not every turn is known. By hand, with every turn read as a right angle: walls of 4000, 3000,
   * 3990 and 3000 mm leave 10 mm: 1 in 13 990 / 10 = 1399.
   */
  @Test
  void closingError() {
    assertThat(Ran.with("survey", PARLOUR).out()).doesNotContain("Walked");
    String job = """
        {"format": "floorcalc-job/1", "title": "Invented",
         "board": {"length": 2200, "coverWidth": 185, "thickness": 14, "perPack": 6, "construction": "engineered"},
         "rooms": [{"name": "Hall", "survey": {"walls": [{"length": 4000, "turn": 90}, {"length": 3000, "turn": 90},
           {"length": 3990, "turn": 90}, {"length": 3000, "turn": 90}]}}]}
        """;
    assertThat(Ran.reading(job.getBytes(StandardCharsets.UTF_8), "survey", "-").out())
        .contains("Walked round by its walls as read, it does not close by 10.0 mm, 1 in 1399 of the way");
  }

  @Test
  void facesThatMeetAreNamedByTheirWalls() {
    Ran ran = Ran.with("survey", broken("survey-offsets-across-the-room"));
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).contains("  DOUBT         the faces of walls 1 and 3 meet at (1000 mm, 3000 mm); look at lengths");
  }

  @Test
  void howSureTheNarrowestStripIs() {
    Ran ran = Ran.with("survey", STUDY, "--rows");
    assertThat(ran.out()).startsWith(Ran.with("survey", STUDY).out());
    assertThat(ran.out().replaceAll("\\s+", " ")).contains("rows study-1, side 3: the strip there is 130 mm with a standard deviation of"
        + " 2 mm by the survey; the chance that it comes out under 70 mm is less than 0.1 %");
    Ran open = Ran.with("survey", broken("survey-without-a-diagonal"), "--rows");
    assertThat(open.exit()).isEqualTo(2);
    assertThat(open.out()).isEmpty();
    assertThat(open.err()).contains(": --rows needs a plan, and the job cannot be planned\n/rooms/0/survey: the measurements do not fix");
  }

  @Test
  void drawing() throws IOException {
    Path file = folder.resolve("parlour.svg");
    assertThat(Ran.with("survey", PARLOUR, "--svg", file.toString())).isEqualTo(Ran.with("survey", PARLOUR));
    assertThat(Files.readString(file)).startsWith("<svg ").contains("Parlour");
    assertThat(Ran.with("survey", broken("survey-of-two-shapes"), "--svg", file.toString()).exit()).isZero();
    assertThat(Files.readString(file)).contains("Study");
    assertThat(Ran.with("survey", PARLOUR, "--svg", "parlour.png").err()).isEqualTo("--svg parlour.png: the name must end in .svg\n");
    assertThat(Ran.with("survey", PARLOUR, "--svg", folder.resolve("none/parlour.svg").toString()).exit()).isEqualTo(2);
  }

  @Test
  void oneDrawingIsOfOneRoom() throws IOException {
    String job = Files.readString(Path.of(STUDY), StandardCharsets.UTF_8);
    String room = job.substring(job.indexOf("\"rooms\": [") + 10, job.lastIndexOf(']'));
    byte[] two = job.replace(room, room + "," + room.replace("\"name\": \"Study\"", "\"name\": \"Den\"")).getBytes(StandardCharsets.UTF_8);
    Path file = folder.resolve("den.svg");
    assertThat(Ran.reading(two, "survey", "-", "--svg", file.toString()).err())
        .contains("draws one room, but 2 have a survey; name one with --room");
    assertThat(Ran.reading(two, "survey", "-", "--room", "Den", "--svg", file.toString()).exit()).isZero();
    assertThat(file).exists();
    assertThat(Ran.reading(two, "survey", "-").out()).contains("\nStudy: one shape").contains("\nDen: one shape");
  }

  @Test
  void whatCannotBeReportedIsRefused() {
    assertThat(Ran.with("survey", STUDY, "--room", "Study").out()).isEqualTo(Ran.with("survey", STUDY).out());
    assertThat(Ran.with("survey", STUDY, "--room", "Attic")).isEqualTo(new Ran(2, "",
        "--room Attic: there is no such room; those with a survey are: Study\n"));
    String drawn = JOBS.resolve("everything.json").toString();
    assertThat(Ran.with("survey", drawn)).isEqualTo(new Ran(2, "", drawn + ": no room has a survey; give one in place of its"
        + " outline\n"));
    Ran sides = Ran.with("survey", broken("survey-right-angles-without-sides"));
    assertThat(sides.exit()).isEqualTo(2);
    assertThat(sides.err()).startsWith("Study: the survey leaves open at 40 corners");
    Ran mistakes = Ran.with("survey", broken("survey-many-mistakes"));
    assertThat(mistakes.exit()).isEqualTo(2);
    assertThat(mistakes.err()).contains("/rooms/0/survey/walls/0/length: ").contains("/rooms/0/doors/0/to/at: ");
    assertThat(Ran.with("survey", "no-such-file.json").err()).contains("there is no such file");
  }
}
