package floorcalc.examples;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Each page of a calculation has one form: question, drawing or rule, formula or rule, a worked example that is run, limits, and what it
 * was checked against. They are the pages that the table of the index names beside a package of the core.
 */
class PageFormTest {
  private static final Path DOCS = Path.of("..", "docs");
  private static final Pattern ROW = Pattern.compile("(?m)^\\| [^|]*\\| \\[[^\\]]+\\]\\(([a-z-]+\\.md)\\)[^|]*\\| `floorcalc\\.(?!recheck)[^|]*\\|$");
  private static final Pattern HEADING = Pattern.compile("(?m)^## (.*)$");
  private static final Pattern FENCED = Pattern.compile("(?ms)^```.*?^```\\s*$");
  private static final Pattern RUN = Pattern.compile("(?ms)^```java\\R.*?^```\\s*?\\R```text\\R");
  private static final Set<String> RULES = Set.of("Rule", "Rules");
  /** Pages whose drawing is a sketch in text: figures along a tape, names of distances. */
  private static final Set<String> SKETCHED = Set.of("running-dimensions.md", "deviations.md");

  @Test
  void theTableNamesThePages() throws IOException {
    assertThat(pages()).hasSizeGreaterThan(25).contains("row-division.md", "measure.md", "drawing.md", "flatness.md");
  }

  @TestFactory
  Stream<DynamicTest> eachPageHasTheForm() throws IOException {
    return pages().stream().map(page -> DynamicTest.dynamicTest(page, () -> holds(page)));
  }

  private static void holds(String page) throws IOException {
    String text = Files.readString(DOCS.resolve(page), UTF_8).replace("\r\n", "\n");
    List<String> headings = HEADING.matcher(FENCED.matcher(text).replaceAll("")).results().map(found -> found.group(1)).toList();
    assertThat(headings.get(0)).as("first heading").isEqualTo("Question");
    assertThat(headings).as("what it looks like, or what the rule is").containsAnyOf("Drawing", "Rule", "Rules");
    assertThat(headings).as("how it is worked out").containsAnyOf("Formula", "Rule", "Rules");
    assertThat(headings).as("the rest of the form, in order").containsSubsequence("Question", "Worked example", "Limits", "Checked against");
    assertThat(headings.get(headings.size() - 1)).as("last heading").isEqualTo("Checked against");
    assertThat(headings).as("each heading once").doesNotHaveDuplicates();
    assertThat(RUN.matcher(section(text, "Worked example")).find()).as("Java with what it prints under 'Worked example'").isTrue();
    if (headings.contains("Drawing") && !SKETCHED.contains(page)) {
      assertThat(section(text, "Drawing")).as("a picture made by the library under 'Drawing'").containsPattern("!\\[[^\\]]+\\]\\([a-z-]+\\.svg\\)");
    } else {
      assertThat(headings.stream().anyMatch(RULES::contains) || SKETCHED.contains(page)).as("a drawing or a rule").isTrue();
    }
    for (String heading : headings) {
      assertThat(section(text, heading)).as("something stands under '%s'", heading).isNotBlank();
    }
  }

  private static String section(String text, String heading) {
    Matcher section = Pattern.compile("(?ms)^## " + Pattern.quote(heading) + "$(.*?)(?=^## |\\z)").matcher(text);
    return section.find() ? section.group(1) : "";
  }

  private static List<String> pages() throws IOException {
    List<String> pages = new ArrayList<>();
    ROW.matcher(Files.readString(DOCS.resolve("README.md"), UTF_8).replace("\r\n", "\n")).results().forEach(row -> pages.add(row.group(1)));
    return pages.stream().distinct().toList();
  }
}
