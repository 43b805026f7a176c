package floorcalc.reference.port;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import floorcalc.reference.Suite;
import floorcalc.reference.answers.Library;
import floorcalc.reference.check.Check;
import floorcalc.reference.check.Checks;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.ReferenceCase;
import floorcalc.reference.check.Verdict;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A program that is asked through its standard input and output. */
class OtherProgramTest {

  /** The first case of each calculation; the suite itself, started again as a program, gives the same answers as in this one. */
  @Test
  void theLibraryAsAProgramOfItsOwn() throws IOException {
    Map<String, ReferenceCase> first = new LinkedHashMap<>();
    Suite.cases().forEach(one -> first.putIfAbsent(one.question().calculation(), one));
    List<ReferenceCase> cases = new ArrayList<>(first.values());
    try (OtherProgram program = OtherProgram.start(List.of(System.getProperty("java.home") + "/bin/java", "-cp", System.getProperty("java.class.path"),
        "floorcalc.reference.Main", "answer"))) {
      List<Check> apart = Checks.run(cases, program);
      assertThat(apart).hasSameElementsAs(Checks.run(cases, new Library()));
      assertThat(apart).allMatch(check -> check.verdict() == Verdict.AGREES);
    }
  }

  /** The example of a port, in another language: what it answers agrees, what it does not know it says; skipped where there is no Python 3. */
  @Test
  void aPortInAnotherLanguage() throws IOException {
    assumeTrue(isThere("python3"), "no python3 here: the example of a port is not run");
    List<Check> checks;
    try (OtherProgram port = OtherProgram.start(List.of("python3", "src/test/resources/port/port.py"))) {
      checks = Checks.run(Suite.cases(), port);
    }
    assertThat(checks).noneMatch(check -> check.verdict() == Verdict.DIFFERS);
    assertThat(checks.stream().filter(check -> check.verdict() == Verdict.AGREES).map(check -> check.of().question().calculation()).distinct())
        .containsExactlyInAnyOrder("length-in-millimetres", "area-of-rectangle", "equilibrium-moisture-content");
    assertThat(checks.stream().filter(check -> check.of().question().calculation().equals("equilibrium-moisture-content"))).hasSizeGreaterThan(400)
        .allMatch(check -> check.verdict() == Verdict.AGREES);
  }

  private static boolean isThere(String program) {
    try {
      return new ProcessBuilder(program, "--version").redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD).start().waitFor() == 0;
    } catch (IOException notThere) {
      return false;
    } catch (InterruptedException stop) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  @Test
  void aProgramThatEndsIsNamed() throws IOException {
    try (OtherProgram program = OtherProgram.start(List.of(System.getProperty("java.home") + "/bin/java", "-version"))) {
      assertThatThrownBy(() -> {
        program.answer(Question.of("a"));
        program.answer(Question.of("b"));
      }).isInstanceOf(UncheckedIOException.class);
    }
  }

  @Test
  void linesInAndOut() throws IOException {
    StringWriter out = new StringWriter();
    AnswerLines.serve(new Library(), new StringReader("""
        {"calculation": "length-in-millimetres", "inputs": {"length": "1 ft 2 in"}}

        {"calculation": "no-such", "inputs": {}}
        {"calculation": "length-in-millimetres", "inputs": {"length": ["1", "2"]}}
        {"calculation": "length-in-millimetres", "inputs": {"length": "two feet"}}
        {"calculation": 3}
        ]
        """), out);
    // 14 in x 25.4 mm = 355.6 mm.
    assertThat(out.toString().lines().toList()).hasSize(6).satisfies(lines -> {
      assertThat(lines.get(0)).isEqualTo("{\"figures\":{\"millimetres\":\"355.6\"}}");
      assertThat(lines.get(1)).isEqualTo("{\"unknown\":true}");
      assertThat(lines.subList(2, 6)).allMatch(line -> line.startsWith("{\"refused\":\""));
    });
  }

  @Test
  void listsAndTablesComeBack() {
    Question question = Question.of("q").with("text", "a \"b\"").withList("list", List.of("1", "2")).withTable("table",
        List.of(List.of("1", "2"), List.of("3"))).withList("none", List.of());
    assertThat(JsonForm.question(JsonForm.line(question)).inputs()).isEqualTo(question.inputs());
  }

  @Test
  void numbersOfAPortAreTakenAsTheyAre() {
    assertThat(JsonForm.answer("{\"figures\": {\"a\": 0.10, \"b\": \"x\"}}").orElseThrow().figures()).isEqualTo(Map.of("a", "0.10", "b", "x"));
    assertThat(JsonForm.answer("{\"refused\": \"no\"}").orElseThrow().figures()).isEmpty();
    assertThatThrownBy(() -> JsonForm.answer("{}")).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("figures");
  }
}
