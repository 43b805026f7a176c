package floorcalc.examples;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The pictures on the pages are what the library draws; {@code -Ddocs.draw} draws them anew. */
class PagePicturesTest {
  private static final Path DOCS = Path.of("..", "docs");
  private static final Pattern SHOWN = Pattern.compile("!\\[([^\\]]*)\\]\\((?:docs/)?([a-z-]+)\\.svg\\)");

  /** Drawn from the compiled classes by {@code ArchitecturePageTest} of the reference checks. */
  private static final String PACKAGES = "architecture";

  @TestFactory
  List<DynamicTest> eachPictureIsWhatTheLibraryDraws() {
    return PagePictures.all().entrySet().stream().map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> {
      String drawn = entry.getValue().call();
      Path picture = DOCS.resolve(entry.getKey() + ".svg");
      if (System.getProperty("docs.draw") != null) {
        Files.writeString(picture, drawn, UTF_8);
      }
      assertThat(Files.readString(picture, UTF_8)).as("docs/%s.svg; run this test with -Ddocs.draw to draw it anew", entry.getKey())
          .isEqualTo(drawn);
    })).toList();
  }

  /** No picture is left over, none is missing, and each has words for those who do not see it. */
  @Test
  void pagesShowEachPicture() throws IOException {
    Set<String> files;
    try (Stream<Path> there = Files.list(DOCS)) {
      files = there.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".svg"))
          .map(name -> name.substring(0, name.length() - 4)).collect(Collectors.toCollection(TreeSet::new));
    }
    Set<String> shown = new TreeSet<>();
    try (Stream<Path> pages = Stream.concat(Files.list(DOCS), Files.list(DOCS.resolve("..")))) {
      for (Path page : pages.filter(file -> file.toString().endsWith(".md")).sorted().toList()) {
        SHOWN.matcher(Files.readString(page, UTF_8)).results().forEach(picture -> {
          shown.add(picture.group(2));
          assertThat(picture.group(1)).as("words for %s.svg on %s", picture.group(2), page.getFileName()).isNotBlank();
        });
      }
    }
    files.remove(PACKAGES);
    shown.remove(PACKAGES);
    assertThat(files).isEqualTo(PagePictures.all().keySet());
    assertThat(shown).isEqualTo(files);
  }
}
