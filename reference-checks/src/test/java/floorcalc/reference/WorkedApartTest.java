package floorcalc.reference;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Tables that programs in another language print: they are what the programs print; skipped where there is no Python 3. */
class WorkedApartTest {
  private static final Path TABLES = Path.of("src", "main", "resources", "reference");
  private static final Path PROGRAMS = Path.of("src", "apart");
  private static final Pattern KNOWN = Pattern.compile("# known: .*src/apart/(\\w+\\.py)");

  @Test
  void eachTableIsWhatItsProgramPrints() throws IOException, InterruptedException {
    assumeTrue(isThere(), "no python3 here: the programs are not run");
    int compared = 0;
    for (Path table : tables()) {
      Matcher program = KNOWN.matcher(Files.readString(table, UTF_8));
      if (program.find()) {
        assertThat(printed(program.group(1), table.getFileName().toString())).as(table.toString()).isEqualTo(Files.readString(table, UTF_8));
        compared++;
      }
    }
    assertThat(compared).isGreaterThanOrEqualTo(40);
  }

  private static List<Path> tables() throws IOException {
    try (Stream<Path> files = Files.list(TABLES)) {
      return files.filter(file -> file.toString().endsWith(".csv")).sorted().toList();
    }
  }

  private static String printed(String program, String table) throws IOException, InterruptedException {
    Process process = new ProcessBuilder("python3", "-B", PROGRAMS.resolve(program).toString(), table).redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
    String text = new String(process.getInputStream().readAllBytes(), UTF_8);
    assertThat(process.waitFor()).as(program + " " + table).isZero();
    return text.replace("\r\n", "\n");
  }

  private static boolean isThere() throws InterruptedException {
    try {
      return new ProcessBuilder("python3", "--version").redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectError(ProcessBuilder.Redirect.DISCARD)
          .start().waitFor() == 0;
    } catch (IOException notThere) {
      return false;
    }
  }
}
