package floorcalc.reference;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import floorcalc.reference.examples.ExamplePage;
import floorcalc.reference.examples.WorkedExample;
import floorcalc.reference.examples.WorkedExamples;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Each worked example gives the printed figures, and its page is what is worked out now; {@code -Ddocs.write} writes them anew. */
@Tag("reference")
class WorkedExamplesTest {
  private static final Path FOLDER = Path.of("..", "docs", "examples");
  private static final List<WorkedExample> EXAMPLES = WorkedExamples.all();

  @TestFactory
  Stream<DynamicTest> figuresAgree() {
    return EXAMPLES.stream().map(example -> dynamicTest(example.name(), () -> assertThat(example.figures()).allSatisfy(figure ->
        assertThat(figure.expected().agrees(figure.answer())).as(figure.expected() + ", worked out " + figure.answer()).isTrue())));
  }

  @Test
  void thereAreAtLeastTwenty() {
    assertThat(EXAMPLES).hasSizeGreaterThanOrEqualTo(20);
    assertThat(EXAMPLES).extracting(WorkedExample::name).doesNotHaveDuplicates();
  }

  @Test
  void thePagesAreUpToDate() throws IOException {
    if (System.getProperty("docs.write") != null) {
      Files.createDirectories(FOLDER);
      for (WorkedExample example : EXAMPLES) {
        Files.writeString(FOLDER.resolve(example.name() + ".md"), ExamplePage.of(example), UTF_8);
      }
      Files.writeString(FOLDER.resolve("README.md"), ExamplePage.list(EXAMPLES), UTF_8);
    }
    for (WorkedExample example : EXAMPLES) {
      assertThat(Files.readString(FOLDER.resolve(example.name() + ".md"), UTF_8)).isEqualTo(ExamplePage.of(example));
    }
    assertThat(Files.readString(FOLDER.resolve("README.md"), UTF_8)).isEqualTo(ExamplePage.list(EXAMPLES));
    try (Stream<Path> pages = Files.list(FOLDER)) {
      assertThat(pages.map(page -> page.getFileName().toString())).containsExactlyInAnyOrderElementsOf(
          Stream.concat(Stream.of("README.md"), EXAMPLES.stream().map(example -> example.name() + ".md")).toList());
    }
  }
}
