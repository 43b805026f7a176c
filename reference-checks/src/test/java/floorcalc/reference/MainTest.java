package floorcalc.reference;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The suite from the command line. */
class MainTest {
  @TempDir
  private Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String in, String... args) {
    return Main.run(args, new ByteArrayInputStream(in.getBytes(UTF_8)), new PrintStream(out, true, UTF_8), new PrintStream(err, true, UTF_8));
  }

  @Test
  void allFiguresAgreeAndTheReportIsWritten() throws Exception {
    assertThat(run("", "check", "--out", folder.toString())).isZero();
    int figures = Suite.cases().stream().mapToInt(one -> one.expected().size()).sum();
    assertThat(out.toString(UTF_8)).isEqualTo(figures + " of " + figures + " figures agree, 0 differ, 0 were not answered: "
        + folder.resolve("reference-report.html") + System.lineSeparator());
    assertThat(folder.resolve("reference-report.md")).content(UTF_8).startsWith("# Reference report\n");
    String page = Files.readString(folder.resolve("reference-report.html"), UTF_8);
    assertThat(page.split("<tr>", -1)).hasSizeGreaterThan(figures);
    // Table 4-2 of the Wood Handbook, 70 °F and 40 %: 7.7.
    assertThat(page).contains("<th scope=\"row\">70 °F, 40 %</th>").contains("<td>7.7</td><td>0.07: ");
  }

  /** A program that knows nothing, or answers wrongly, does not pass; its report names no class of ours. */
  @Test
  void anotherProgramIsHeldToTheSameFigures() throws Exception {
    Path program = Files.writeString(folder.resolve("Wrong.java"), """
        import java.io.BufferedReader;
        import java.io.InputStreamReader;
        public class Wrong {
          public static void main(String[] args) throws Exception {
            BufferedReader in = new BufferedReader(new InputStreamReader(System.in));
            for (String line = in.readLine(); line != null; line = in.readLine()) {
              System.out.println(line.contains("length-in-millimetres") ? "{\\"figures\\": {\\"millimetres\\": 1}}" : "{\\"unknown\\": true}");
            }
          }
        }
        """, UTF_8);
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    assertThat(run("", "check", "--out", folder.toString(), "--program", java + " " + program)).isEqualTo(2);
    assertThat(out.toString(UTF_8)).contains("unit_conversions.csv inch: length-in-millimetres {length=1 in}: millimetres = 25.4 exactly; answer 1: differs")
        .contains("0 of ");
    assertThat(folder.resolve("reference-report.md")).content(UTF_8).contains("## Figures that differ").doesNotContain("## Public calculations");
  }

  @Test
  void answersQuestions() {
    assertThat(run("{\"calculation\": \"length-in-millimetres\", \"inputs\": {\"length\": \"1 ft\"}}\n", "answer")).isZero();
    assertThat(out.toString(UTF_8)).isEqualTo("{\"figures\":{\"millimetres\":\"304.8\"}}\n");
  }

  @Test
  void withoutACommandItSaysWhatThereIs() {
    assertThat(run("")).isZero();
    assertThat(out.toString(UTF_8)).contains("check").contains("answer").contains("recheck");
    assertThat(run("", "chek")).isEqualTo(2);
    assertThat(err.toString(UTF_8)).contains("chek");
  }

  @Test
  void aProgramThatIsNotThereIsAFault() {
    assertThat(run("", "check", "--out", folder.toString(), "--program", "no-such-program-here")).isEqualTo(1);
    assertThat(err.toString(UTF_8)).contains("no-such-program-here");
  }
}
