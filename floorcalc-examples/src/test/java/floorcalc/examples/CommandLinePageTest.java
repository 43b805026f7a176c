package floorcalc.examples;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.examples.job.BrokenJobs;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the documentation says that the runner prints is what it prints. */
class CommandLinePageTest {
  private static final Pattern EXAMPLE =
      Pattern.compile("```sh\njava -jar floorcalc.jar (explain .*)\n```\n```text\n((?:.*\n)*?)```\n");
  private static final Pattern WORD = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"|(\\S+)");

  @TempDir
  private Path folder;

  @Test
  void examplesOfExplainPrintWhatThePageShows() throws IOException {
    assertThat(examplesThatPrintWhatIsShown("command-line.md")).isEqualTo(6);
    assertThat(examplesThatPrintWhatIsShown("irregular-walls.md")).isEqualTo(3);
    assertThat(examplesThatPrintWhatIsShown("start-line.md")).isEqualTo(5);
    assertThat(examplesThatPrintWhatIsShown("fittings.md")).isEqualTo(2);
  }

  private static int examplesThatPrintWhatIsShown(String page) throws IOException {
    Matcher examples = EXAMPLE.matcher(Docs.page(page));
    int count = 0;
    while (examples.find()) {
      Ran ran = Ran.with(words(examples.group(1)));
      assertThat(ran).as(examples.group(1)).isEqualTo(new Ran(0, examples.group(2), ""));
      count++;
    }
    return count;
  }

  @Test
  void eachCalculationThatCanBeExplainedIsOnThePage() throws IOException {
    String page = Docs.page("command-line.md");
    String known = Ran.with("explain").err().lines().findFirst().orElseThrow().replace("say what to explain: ", "");
    for (String calculation : known.split(", ")) {
      assertThat(page).contains("| `explain " + calculation + " ");
    }
  }

  @Test
  void mistakesOnThePagesAreRealOnes() throws IOException {
    List<String> real = new ArrayList<>();
    BrokenJobs.messages().values().forEach(real::addAll);
    for (String name : List.of("command-line.md", "json-files.md")) {
      List<String> shown = Docs.page(name).lines()
          .filter(line -> line.matches("(/[a-z]+/\\S+|line [0-9]+, column [0-9]+): .*"))
          .toList();
      assertThat(shown).isNotEmpty();
      assertThat(real).as(name).containsAll(shown);
    }
  }

  @Test
  void mistakesInReadingsOnThePageAreRealOnes() throws IOException {
    String shown = Docs.page("command-line.md").lines().filter(line -> line.matches("passage\\.csv: .*|line [0-9]+, [a-z]+.*: .*"))
        .collect(Collectors.joining("\n"));
    assertThat(shown.lines()).hasSize(3);
    Path file = Files.writeString(folder.resolve("passage.csv"), "distance (m),height (mm)\n0,12\n0.3,12\n0.3,11.5\n0.6,11\n0.9,9 mm\n");
    assertThat(Ran.with("explain", "flatness", file.toString()).err().replace(file.toString(), "passage.csv")).startsWith(shown);
  }

  /** Splits a command line as a shell does, double quotes only. */
  private static String[] words(String line) {
    List<String> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(line);
    while (matcher.find()) {
      // The page names files from the top of the project, where a reader is; tests run in the module.
      words.add(matcher.group(2) != null ? matcher.group(2).replaceFirst("^floorcalc-examples/", "") : matcher.group(1).replace("\\\"", "\""));
    }
    return words.toArray(String[]::new);
  }
}
