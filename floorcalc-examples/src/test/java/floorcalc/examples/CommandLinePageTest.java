package floorcalc.examples;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.examples.job.BrokenJobs;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the documentation says that the runner prints is what it prints. */
class CommandLinePageTest {
  private static final Pattern EXAMPLE =
      Pattern.compile("```sh\njava -jar (?:floorcalc-examples/target/)?floorcalc.jar (explain .*)\n```\n```text\n((?:.*\n)*?)```\n");
  private static final Pattern SHOWN = Pattern.compile("(?m)^java -jar (?:floorcalc-examples/target/)?floorcalc\\.jar (explain .*)$");
  private static final Pattern WORD = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"|(\\S+)");

  @TempDir
  private Path folder;

  @Test
  void examplesOfExplainPrintWhatThePagesShow() throws IOException {
    int examples = 0;
    for (Path page : Docs.pages()) {
      examples += examplesThatPrintWhatIsShown(page);
    }
    assertThat(examples).isGreaterThanOrEqualTo(16);
  }

  private static int examplesThatPrintWhatIsShown(Path page) throws IOException {
    Matcher examples = EXAMPLE.matcher(Docs.text(page));
    int count = 0;
    while (examples.find()) {
      Ran ran = Ran.with(words(examples.group(1)));
      assertThat(ran).as("%s: %s", page.getFileName(), examples.group(1)).isEqualTo(new Ran(0, examples.group(2), ""));
      count++;
    }
    return count;
  }

  /** What is shown without its output runs too; what reads or writes a file of the reader's, or goes on in a pipe, is left out. */
  @Test
  void everyExplainOnAPageRuns() throws IOException {
    List<String> faults = new ArrayList<>();
    int commands = 0;
    for (Path page : Docs.pages()) {
      for (MatchResult line : SHOWN.matcher(EXAMPLE.matcher(Docs.text(page)).replaceAll("")).results().toList()) {
        if (line.group(1).matches("[^<>|]*") && !line.group(1).matches(".*\\bmy-\\S+.*")) {
          Ran ran = Ran.with(words(line.group(1)));
          commands++;
          if (ran.exit() != 0) {
            faults.add(page.getFileName() + ": " + line.group(1) + ": " + ran.err());
          }
        }
      }
    }
    assertThat(faults).isEmpty();
    assertThat(commands).isGreaterThanOrEqualTo(9);
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
