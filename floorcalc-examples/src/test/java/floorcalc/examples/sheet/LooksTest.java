package floorcalc.examples.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.FloorPlanner;
import floorcalc.examples.Demo;
import floorcalc.examples.job.JobFile;
import floorcalc.examples.job.JobReader;
import floorcalc.plan.FloorPlan;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;

/** Sheets of the demo and of jobs made to be awkward, held to what the page about them promises. */
class LooksTest {
  /** Jobs that strain a page: names in other scripts, long or like a formula, twenty doors, forty pipes and so on. */
  private static final Path AWKWARD = Path.of("looks", "jobs");
  private static final Pattern VARIABLES = Pattern.compile("html \\{ (--ink: [^}]*?)(?:color-scheme|\\n|})");
  private static final Pattern VARIABLE = Pattern.compile("--([a-z]+): (#[0-9a-f]+)");

  private static Stream<String> jobs() throws Exception {
    return Stream.concat(Demo.names().stream(), Stream.of("names", "doors", "pipes", "cupboard", "passage"));
  }

  private static Document sheet(String name) throws Exception {
    if (Demo.names().contains(name)) {
      return Looks.parse(new String(JobSheet.of(Demo.job(name), Demo.plan(name)), StandardCharsets.UTF_8));
    }
    JobFile file = JobReader.read(Files.readAllBytes(AWKWARD.resolve(name + ".json")));
    FloorPlan plan = FloorPlanner.plan(file.job());
    return Looks.parse(new String(JobSheet.of(file, plan), StandardCharsets.UTF_8));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void sheetCanBeHeardAndLedThrough(String name) throws Exception {
    Document document = sheet(name);
    Looks.idsHold(document);
    Looks.pageHolds(document);
    Looks.tablesHold(document);
    Looks.drawingsHold(document);
    Looks.boxesHold(document);
    assertThat(Looks.all(document, "nav")).hasSize(1);
    assertThat(Looks.all(Looks.all(document, "nav").get(0), "a").stream().map(link -> link.getAttribute("href").substring(1)))
        .containsExactlyElementsOf(Looks.all(document, "h2").stream().map(heading -> heading.getAttribute("id")).toList());
  }

  /** A picture of the docs has a name of its own, and says on each page that shows it what is seen there. */
  @Test
  void picturesOfTheDocsAreNamed() throws Exception {
    Path docs = Path.of("..", "docs");
    try (Stream<Path> files = Files.list(docs)) {
      for (Path file : files.filter(file -> file.toString().endsWith(".svg")).sorted().toList()) {
        Document picture = Looks.parse(Files.readString(file));
        Looks.idsHold(picture);
        assertThat(picture.getDocumentElement().getAttribute("role")).as(file.toString()).isEqualTo("img");
        assertThat(Looks.all(picture, "*").get(1).getTagName()).as("%s: title comes first", file).isEqualTo("title");
      }
    }
    try (Stream<Path> files = Files.list(docs)) {
      for (Path file : files.filter(file -> file.toString().endsWith(".md")).sorted().toList()) {
        Matcher shown = Pattern.compile("!\\[([^\\]]*)]\\(").matcher(Files.readString(file));
        while (shown.find()) {
          assertThat(shown.group(1)).as(file.toString()).hasSizeGreaterThan(20);
        }
      }
    }
  }

  /** Text on paper colour at least 7:1 (level AAA), lines at least 3:1 (success criterion 1.4.11), light and dark. */
  @Test
  void coloursOfTheSheetStandOut() {
    Matcher schemes = VARIABLES.matcher(SheetStyle.CSS);
    int found = 0;
    while (schemes.find()) {
      Map<String, String> colours = new HashMap<>();
      Matcher variable = VARIABLE.matcher(schemes.group(1));
      while (variable.find()) {
        colours.put(variable.group(1), variable.group(2));
      }
      assertThat(colours).containsOnlyKeys("ink", "paper", "thin");
      assertThat(Looks.contrast(colours.get("ink"), colours.get("paper"))).isGreaterThanOrEqualTo(7);
      assertThat(Looks.contrast(colours.get("thin"), colours.get("paper"))).isGreaterThanOrEqualTo(3);
      found++;
    }
    assertThat(found).isEqualTo(2);
    String rest = SheetStyle.CSS.replaceAll("--[a-z]+: #[0-9a-f]+", "");
    assertThat(rest.replace("background: #fff", "")).as("every other colour is one of these").doesNotContainPattern("#[0-9a-f]{3,6}\\b(?=[;. ])");
  }

  /** #777777 on white is 4.48:1, #767676 4.54:1: the two greys round the bound of 4.5:1, as the guidelines' own pages have them. */
  @Test
  void contrastIsThatOfTheGuidelines() {
    assertThat(Looks.contrast("#000", "#fff")).isCloseTo(21, within(1e-9));
    assertThat(Looks.contrast("#777777", "#ffffff")).isCloseTo(4.48, within(0.005));
    assertThat(Looks.contrast("#767676", "#ffffff")).isCloseTo(4.54, within(0.005));
  }

  /** No print smaller than 8 point, and the figures that are read from the floor larger than all round them. */
  @Test
  void printIsLargeEnough() {
    Matcher sizes = Pattern.compile("font(?:-size)?: ([0-9.]+)pt").matcher(SheetStyle.CSS + PageHeads.string(""));
    while (sizes.find()) {
      assertThat(Double.parseDouble(sizes.group(1))).isGreaterThanOrEqualTo(8);
    }
  }

  /** Text of a job in a style sheet ends neither its string nor the element. */
  @Test
  void pageHeadsHoldAnyText() {
    assertThat(PageHeads.string("a\"}</style>\n\\ \u00e9")).isEqualTo("\"a\\22 \\7d \\3c \\2f style\\3e \\20 \\5c  \\e9 \"");
    assertThat(PageHeads.string("x".repeat(200))).isEqualTo("\"" + "x".repeat(60) + "\\2026 \"");
  }
}
