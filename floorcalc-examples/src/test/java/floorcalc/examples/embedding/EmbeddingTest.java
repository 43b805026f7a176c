package floorcalc.examples.embedding;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Runs the embedding examples; what they print is pinned in {@code embedding-output.txt}, a regression value. */
class EmbeddingTest {
  @Test
  void examplesPrintWhatIsPinned() throws IOException {
    String printed = "== PriceARoom\n" + printed(PriceARoom::run) + "== CompareDirections\n" + printed(CompareDirections::run)
        + "== AuditOfAHandMadePlan\n" + printed(AuditOfAHandMadePlan::run)
        + "== PlanAHousingStock\n" + printed(PlanAHousingStock::run)
        + "== MakersRules\n" + printed(MakersRules::run);
    assertThat(printed).isEqualTo(
        Files.readString(Path.of("src", "test", "resources", "embedding-output.txt"), StandardCharsets.UTF_8));
  }

  private static String printed(Consumer<PrintStream> example) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    example.accept(new PrintStream(bytes, true, StandardCharsets.UTF_8));
    return bytes.toString(StandardCharsets.UTF_8);
  }
}
