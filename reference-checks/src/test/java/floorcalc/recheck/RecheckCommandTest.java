package floorcalc.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command for other programs: exit codes, lines and JSON. */
class RecheckCommandTest {
  @TempDir
  private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path job;
  private Path plan;
  private Path spoilt;

  @BeforeEach
  void files() throws IOException {
    job = write("job.json", SoundPlans.WITH_BREAK.jobText());
    plan = write("plan.json", SoundPlans.WITH_BREAK.planText());
    TwoFiles files = new TwoFiles(SoundPlans.WITH_BREAK);
    TwoFiles.add(files.order(), "spare", 1);
    spoilt = write("spoilt.json", JobText.text(files.plan));
  }

  private Path write(String name, String text) throws IOException {
    return Files.write(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8));
  }

  private int run(Object... args) {
    String[] words = new String[args.length];
    for (int i = 0; i < args.length; i++) {
      words[i] = args[i].toString();
    }
    return RecheckCommand.run(new PrintWriter(out, true), new PrintWriter(err, true), words);
  }

  @Test
  void aSoundPlanEndsWithNought() {
    assertThat(run(job, plan)).isZero();
    assertThat(out.toString().lines()).first().isEqualTo("sound: nothing found");
    assertThat(out.toString()).contains("checked: 2 rooms (2 against the walls), 3 bays, ").contains("left out: rule 7");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void aSpoiltPlanEndsWithTwoAndSaysWhatIsWrong() {
    assertThat(run(job, spoilt)).isEqualTo(2);
    assertThat(out.toString().lines()).first().asString()
        .startsWith("rule 6 (counts), plan /order/spare: found ").contains("rounded up, is ");
  }

  /** The suite's own program has the command too. */
  @Test
  void asACommandOfTheSuite() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    String[] args = {"recheck", job.toString(), spoilt.toString()};
    assertThat(floorcalc.reference.Main.run(args, InputStream.nullInputStream(), stream, stream)).isEqualTo(2);
    assertThat(run(job, spoilt)).isEqualTo(2);
    assertThat(bytes.toString(StandardCharsets.UTF_8)).isEqualTo(out.toString());
  }

  @Test
  void theSamePlanAgain() {
    assertThat(run(job, plan, plan)).isZero();
    assertThat(out.toString()).contains(", 2 plans byte for byte").doesNotContain("left out: rule 7");
    assertThat(run(job, plan, spoilt)).isEqualTo(2);
    assertThat(out.toString()).contains("rule 7 (same bytes), plan line 2: found another text");
  }

  /** The example of the page is what the command prints of this plan when a piece is cut 1 mm short. */
  @Test
  void thePageShowsWhatIsPrinted() throws IOException {
    TwoFiles files = new TwoFiles(SoundPlans.WITH_BREAK);
    TwoFiles.along(files.piece("start"), 1, 0);
    assertThat(run(job, write("short.json", JobText.text(files.plan)))).isEqualTo(2);
    Path page = Path.of(System.getProperty("basedir", "")).toAbsolutePath().resolveSibling("docs").resolve("second-check.md");
    String printed = out.toString().replace(System.lineSeparator(), "\n");
    assertThat(Files.readString(page, StandardCharsets.UTF_8)).contains("```\n" + printed + "```\n");
  }

  @Test
  void json() throws IOException {
    assertThat(run(job, spoilt, "--json")).isEqualTo(2);
    JsonNode report = new ObjectMapper().readTree(out.toString());
    assertThat(report.get("format").textValue()).isEqualTo("floorcalc-recheck/1");
    assertThat(report.get("sound").booleanValue()).isFalse();
    assertThat(report.at("/faults/0/rule").intValue()).isEqualTo(6);
    assertThat(report.at("/faults/0/place").textValue()).isEqualTo("plan /order/spare");
    assertThat(report.at("/checked/pieces").intValue()).isEqualTo(SoundPlans.WITH_BREAK.pieces());
    assertThat(report.at("/checked/plans").intValue()).isEqualTo(1);
    assertThat(report.at("/leftOut/0/what").textValue()).startsWith("the bound");
  }

  @Test
  void whatCannotBeReadIsRefused() throws IOException {
    assertThat(run(job, folder.resolve("none.json"))).isEqualTo(2);
    assertThat(err.toString()).contains("none.json: there is no such file");
    Path latin = Files.write(folder.resolve("latin.json"), new byte[] {'"', (byte) 0xe4, '"'});
    assertThat(run(latin, plan)).isEqualTo(2);
    assertThat(err.toString()).contains("latin.json: is not UTF-8");
    assertThat(run(job)).isEqualTo(2);
    assertThat(run(plan, job)).isEqualTo(2);
    assertThat(out.toString()).contains("format, job /format: found floorcalc-plan/1; must be floorcalc-job/1");
  }
}
