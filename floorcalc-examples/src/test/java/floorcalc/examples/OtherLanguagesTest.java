package floorcalc.examples;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The page on other languages shows the files that are run. */
class OtherLanguagesTest {
  private static final Path CALLERS = Path.of("callers");

  @ParameterizedTest
  @CsvSource({"python,floors.py", "js,floors.js", "sh,floors.sh", "json,study.json", "text,expected.txt"})
  void thePageShowsEachFileToTheLetter(String language, String file) throws IOException {
    assertThat(Docs.page("other-languages.md"))
        .contains("```" + language + "\n" + Files.readString(CALLERS.resolve(file), UTF_8) + "```\n");
  }

  @Test
  void theJobOfTheCallersIsSound() throws IOException {
    byte[] job = Files.readAllBytes(CALLERS.resolve("study.json"));
    assertThat(Docs.faultsOfJob(job)).isEmpty();
    Ran ran = Ran.reading(job, "plan", "-", "--json");
    // What all three print first of it.
    assertThat(Files.readString(CALLERS.resolve("expected.txt"), UTF_8))
        .startsWith("Study (invented): 40 boards, at least 40; 7 packs\n");
    assertThat(ran.out()).contains("\"order\": {\"boardsUsed\": 40, \"boardsAtLeast\": 40, ", "\"packs\": 7, ");
  }
}
