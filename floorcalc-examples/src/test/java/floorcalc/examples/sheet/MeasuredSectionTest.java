package floorcalc.examples.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.examples.Demo;
import floorcalc.examples.job.JobFile;
import floorcalc.examples.job.JobReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What the sheet says of rooms that were measured. */
class MeasuredSectionTest {
  private static final Path STUDY = Path.of("src", "test", "resources", "jobs", "surveyed-study.json");

  private static String study(String from, String to) throws IOException {
    String job = Files.readString(STUDY, StandardCharsets.UTF_8);
    assertThat(job).contains(from);
    JobFile file = JobReader.read(job.replace(from, to).getBytes(StandardCharsets.UTF_8));
    return new String(JobSheet.of(file, FloorPlanner.plan(file.job())), StandardCharsets.UTF_8);
  }

  private static String section(String sheet) {
    int start = sheet.indexOf("<section aria-labelledby=\"s-measured\">");
    return sheet.substring(start, sheet.indexOf("</section>", start));
  }

  @Test
  void roomsThatWereNotMeasuredHaveNoSuchPart() throws IOException {
    assertThat(new String(JobSheet.of(Demo.job(Demo.HOUSE), Demo.plan(Demo.HOUSE)), StandardCharsets.UTF_8))
        .doesNotContain("s-measured");
  }

  @Test
  void aSoundSurveySaysHowSureItIs() throws IOException {
    String section = section(study("5542", "5542"));
    assertThat(section).contains("<bdi>Study</bdi>: 15.183 m² ± 0.006 m²")
        .contains("6 measurements, 1 more than the shape needs. They fit each other: the worst is off by 0.2 times its ±")
        .contains("<li>study-1, side 3: the strip there is 130 mm with a standard deviation of 2 mm by the survey")
        .contains("<figure>\n<svg ").doesNotContain("class=\"stop\"");
    // corner 4 lies between walls 3 and 4; 0.24° over a metre is 1000 tan 0.24° = 4.2 mm
    assertThat(section).contains("<tr><th scope=\"row\">4</th><td>3 and 4</td><td>90.24°</td><td>+0.24° ± 0.05°</td><td>4.2</td></tr>");
  }

  @Test
  void whatDoesNotFitStandsInAFrameAndNowhereElse() throws IOException {
    String sheet = study("5542", "5442");
    assertThat(section(sheet)).contains("<p class=\"stop\"><b>Measure again before the first cut.</b> tie 1-3 or tie 2-4 or wall 1")
        .contains("read 100 mm too short: meant 5542 mm").contains("They do not all fit, and the shape is drawn with all of them")
        .doesNotContain("Corners: how square they are");
    assertThat(sheet.split("Measure again before the first cut", -1)).hasSize(2);
    assertThat(sheet.replace(section(sheet), "")).doesNotContain("measure tie 1-3 again", "measurements fit each other");
  }

  @Test
  void whatNothingChecksIsNamed() throws IOException {
    String one = section(study(",\n          {\"from\": 2, \"to\": 4, \"length\": 5541}", ""));
    assertThat(one).contains("5 measurements, just as many as the shape needs: a slip in any of them shows nowhere.")
        .contains("measure corner 2 to corner 4");
  }

  @Test
  void jobInInchesShowsBothSystems() throws IOException {
    String section = section(new String(JobSheet.of(Demo.job(Demo.PARLOUR), Demo.plan(Demo.PARLOUR)), StandardCharsets.UTF_8));
    assertThat(section).contains(" ft² ± ").contains("measure corner 5 to corner 7, about 19&#39; 8 15/16&quot; (6018 mm)");
    assertThat(section).containsPattern("<td>8 and 1</td><td>90\\.21°</td><td>\\+0\\.21° ± 0\\.20°</td><td>3\\.6 \\(0\\.14&quot;\\)</td>");
  }
}
