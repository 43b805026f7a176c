package floorcalc.examples;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.examples.planfile.PlanWriter;
import floorcalc.flatness.ToleranceSet;
import floorcalc.site.Readiness;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** From a job file to a report on its sites. */
class SiteCommandTest {
  private static String house() {
    return Demo.FOLDER.resolve(Demo.HOUSE + ".json").toString();
  }

  private static Ran reading(String job) {
    return Ran.reading(new ByteArrayInputStream(job.getBytes(StandardCharsets.UTF_8)), "site", "-");
  }

  private static String job(String site) {
    return """
        {"format": "floorcalc-job/1", "title": "Invented",
         "board": {"length": 2200, "coverWidth": 185, "thickness": 14, "perPack": 6, "construction": "engineered"},
         "rooms": [{"name": "Hall", "outline": [[0, 0], [3000, 0], [3000, 1500], [0, 1500]], "subfloor": "concrete", "site": %s}]}
        """.formatted(site);
  }

  @Test
  void whatFailsComesFirstThenWhatIsOpenThenWhatPasses() throws IOException {
    Ran ran = Ran.with("site", house());
    assertThat(ran.exit()).isZero();
    List<String> verdicts = ran.out().lines().filter(line -> line.matches("  \\S.*")).toList();
    assertThat(verdicts.get(0)).startsWith("  FAIL          moisture of the subfloor by CM");
    assertThat(verdicts.get(1)).startsWith("  not measured  ");
    assertThat(ran.out()).contains("\nStudy: not ready (1 fail, 2 not measured, 10 pass)\n")
        .contains("\nLiving room: not ready (2 fail, 5 not measured, 0 pass)\n");
    assertThat(ran.out().lines()).allMatch(line -> line.length() <= 110);
  }

  @Test
  void thePageShowsWhatIsPrinted() throws IOException {
    String page = Docs.page("command-line.md");
    int start = page.indexOf("Study: not ready");
    assertThat(Ran.with("site", house()).out()).contains(page.substring(start, page.indexOf("```", start)));
  }

  @Test
  void theReportCountsWhatThePlanHolds() throws IOException {
    var job = Demo.job(Demo.HOUSE).job();
    String out = Ran.with("site", house()).out();
    for (Readiness room : FloorPlanner.readiness(job, Demo.plan(Demo.HOUSE))) {
      room.judgements().forEach(one -> assertThat(out.replaceAll("\\s+", " ")).contains(one.check()));
      assertThat(Demo.plan(Demo.HOUSE).checks().stream().filter(check -> check.room().equals(room.room())))
          .hasSameSizeAs(room.judgements());
    }
    assertThat(new String(PlanWriter.write(Demo.plan(Demo.HOUSE)), StandardCharsets.UTF_8)).contains("\"met\": null");
  }

  /** 100 mm too much at one of 30 places: named before anything that is only open, and it passes nothing. */
  @Test
  void aSlipOfTheStaffIsNamed() {
    String heights = "0, ".repeat(14) + "100, " + "0, ".repeat(14) + "0";
    Ran ran = reading(job("{\"lines\": [{\"name\": \"A\", \"spacing\": 100, \"heights\": [" + heights + "]}]}"));
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).contains("  DOUBT         line A, reading 15 at 1400 mm: the height of reading 15, 100 mm, is 100 mm too high")
        .contains("read again before anything is ground").contains("by readings that are doubted");
    assertThat(ran.out().indexOf("DOUBT")).isLessThan(ran.out().indexOf("not measured  "));
  }

  @Test
  void placesReadTwiceAreNamed() {
    Ran ran = reading(job("{\"heights\": [[0, 0, 0], [0, 0, 3], [500, 0, 0], [0, 500, 0]],"
        + " \"lines\": [{\"name\": \"A\", \"at\": [0, 300, 300], \"heights\": [0, 0, 1]}]}"));
    assertThat(ran.exit()).isZero();
    assertThat(ran.out().replaceAll("\\s+", " ")).contains("readings 1 and 2 are both at x = 0 mm, y = 0 mm")
        .contains("reading 3 at 300 mm has the place of reading 2");
  }

  @Test
  void mistakesAreRefusedTogether() {
    Ran ran = reading(job("{\"flatness\": \"flat\", \"daysInRoom\": -1}"));
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("/rooms/0/site/flatness: ").contains("/rooms/0/site/daysInRoom: ");
  }

  /** The study on its grid of 500 mm, read apart from the job. */
  @Test
  void heightsFromATable() {
    String table = Demo.FOLDER.resolve("gullhaven-study.csv").toString();
    Ran ran = Ran.with("site", house(), "--heights", "Study=" + table);
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).contains("grid of heights").contains("heights: the floor falls by ");
    Ran twice = Ran.with("site", house(), "--heights", "Study=" + table, "--heights", "Study=" + table);
    assertThat(twice.exit()).isEqualTo(2);
    assertThat(twice.err()).contains("room 'Study' has heights already; give one of the two");
  }

  @Test
  void tablesThatCannotBeUsedAreRefusedTogether() {
    Ran ran = Ran.with("site", house(), "--heights", "Attic=a.csv", "--heights", "Study=no-such-file.csv",
        "--heights", "Living room=" + house());
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("--heights Attic=a.csv: must be a room of the job, an equals sign and a file; the rooms are:"
        + " Study, Living room").contains("no-such-file.csv: cannot be read: there is no such file").contains("gullhaven-house.json: ");
    assertThat(Ran.with("site", "--sets", "--heights", "Study=a.csv").exit()).isEqualTo(2);
    Ran both = Ran.reading(new ByteArrayInputStream(job("{\"heights\": [[0, 0, 0]]}").getBytes(StandardCharsets.UTF_8)),
        "site", "-", "--heights", "Hall=a.csv");
    assertThat(both.err()).contains("room 'Hall' has heights already in the job");
  }

  @Test
  void setsAreListedWithWhatTheyAreFor() {
    Ran ran = Ran.with("site", "--sets");
    assertThat(ran.exit()).isZero();
    assertThat(ran.out().lines().filter(line -> !line.startsWith(" ")))
        .isEqualTo(ToleranceSet.all().stream().map(ToleranceSet::name).toList());
    assertThat(ran.out()).contains("common practice\n                for    subfloor under wood boards\n");
  }

  @Test
  void oneOfTheTwoMustBeAskedFor() {
    assertThat(Ran.with("site").exit()).isEqualTo(2);
    assertThat(Ran.with("site", house(), "--sets").exit()).isEqualTo(2);
    assertThat(Ran.with("site", "no-such-file.json").err()).contains("there is no such file");
  }
}
