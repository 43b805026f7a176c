package floorcalc.examples;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every file of published figures has a row on the page, and the test named there reads it. */
class ReferenceFilesTest {
  private static final Path HOME = Path.of("..").toAbsolutePath().normalize();
  private static final Path TESTS = HOME.resolve("floorcalc-core/src/test");
  private static final Pattern ROW = Pattern.compile("(?m)^\\| (`[^|]*\\.(?:csv|txt)`[^|]*) \\|.*\\| `(\\w+Test)`(?:, `\\w+Test`)* \\|$");
  private static final Pattern FILE = Pattern.compile("`([^`]+)`");

  @Test
  void eachFileIsCheckedByTheTestOfItsRow() throws IOException {
    Map<String, String> rows = new TreeMap<>();
    for (MatchResult row : ROW.matcher(Files.readString(HOME.resolve("docs/reference-data.md"), UTF_8)).results().toList()) {
      FILE.matcher(row.group(1)).results().forEach(file -> rows.put(file.group(1), row.group(2)));
    }
    List<String> files;
    try (Stream<Path> all = Files.list(TESTS.resolve("resources/reference"))) {
      files = all.map(file -> file.getFileName().toString()).sorted().toList();
    }
    assertThat(new ArrayList<>(rows.keySet())).isEqualTo(files);
    List<String> unread = new ArrayList<>();
    for (Map.Entry<String, String> row : rows.entrySet()) {
      // Names that are put together, such as those of numbered instances, are looked for without what is numbered.
      String name = row.getKey().replaceFirst("^(bpp_instances_)\\w+\\.txt$", "$1");
      if (!source(row.getValue()).contains(name)) {
        unread.add(row.getKey() + " by " + row.getValue());
      }
    }
    assertThat(unread).isEmpty();
  }

  /** A file without lines on top that say where its figures come from proves nothing. */
  @Test
  void eachTableNamesItsSource() throws IOException {
    List<String> nameless = new ArrayList<>();
    try (Stream<Path> all = Files.list(TESTS.resolve("resources/reference"))) {
      for (Path file : all.sorted().toList()) {
        if (!Files.readString(file, UTF_8).startsWith("#")) {
          nameless.add(file.getFileName().toString());
        }
      }
    }
    assertThat(nameless).isEmpty();
  }

  private static String source(String test) throws IOException {
    try (Stream<Path> all = Files.walk(TESTS)) {
      Path file = all.filter(path -> path.getFileName().toString().equals(test + ".java")).findFirst().orElseThrow();
      return Files.readString(file, UTF_8);
    }
  }
}
