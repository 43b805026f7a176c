package floorcalc.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {
  @ParameterizedTest
  @ValueSource(strings = {"", "plan", "site", "schema", "explain", "explain length", "explain rows", "explain drift", "explain gap",
      "explain joints", "explain packs", "explain rules"})
  void helpOfEachCommandFitsAScreenOf100Columns(String command) {
    List<String> args = command.isEmpty() ? List.of("--help") : List.of((command + " --help").split(" "));
    Ran ran = Ran.with(args.toArray(String[]::new));
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).startsWith("Usage: floorcalc").matches("[\\n -~]+");
    assertThat(ran.out().lines()).allMatch(line -> line.length() <= 100);
    assertThat(ran.err()).isEmpty();
  }

  @Test
  void nothingToDo() {
    assertThat(Ran.with()).isEqualTo(new Ran(2, "", "say what to do: plan, site, survey, compare, schema or explain\nFor help: floorcalc --help\n"));
  }

  @Test
  void unknownCommandAndOption() {
    assertThat(Ran.with("plot").exit()).isEqualTo(2);
    assertThat(Ran.with("plan", "--colour", "x.json", "--json").exit()).isEqualTo(2);
    assertThat(Ran.with("plan", "--colour", "x.json", "--json").err()).contains("--colour").contains("For help: ");
  }

  @Test
  void version() {
    assertThat(Ran.with("--version")).isEqualTo(new Ran(0, "floorcalc (not packaged)\n"
        + "reads floorcalc-job/1; writes floorcalc-plan/1, floorcalc-refusal/1\n", ""));
  }

  @Test
  void faultOfTheProgramIsOneLineUnlessATraceIsAskedFor() {
    Ran ran = Ran.reading(failing(), "plan", "-", "--json");
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).isEqualTo("internal fault: IllegalStateException (a b). This is a mistake in the program, not in"
        + " your job: please report it with the job file, the version and what --trace prints.\n");
    assertThat(Ran.reading(failing(), "plan", "--trace", "-", "--json").err()).contains("\tat floorcalc.examples.");
    assertThat(Ran.reading(failing(), "--trace", "plan", "-", "--json").err()).contains("\tat floorcalc.examples.");
  }

  /** A stand-in for a mistake in the program: standard input that throws what no code expects. */
  private static InputStream failing() {
    return new InputStream() {
      @Override
      public int read() {
        throw new IllegalStateException("a\nb");
      }
    };
  }
}
