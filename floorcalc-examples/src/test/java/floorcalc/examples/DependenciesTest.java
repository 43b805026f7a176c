package floorcalc.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The page of libraries names what the modules bring along at run time, each with its version. */
class DependenciesTest {
  private static final Path HOME = Path.of("..").toAbsolutePath().normalize();
  private static final Pattern DEPENDENCY = Pattern.compile("(?s)<dependency>(.*?)</dependency>");
  private static final Pattern ROW = Pattern.compile("(?m)^\\| `([^:`]+):([^`]+)` \\| ([^|]+) \\| ([^|]+) \\|");

  @Test
  void thePageNamesEachLibraryAndItsVersion() throws IOException {
    Map<String, String> page = new TreeMap<>();
    ROW.matcher(read("docs/dependencies.md")).results()
        .forEach(row -> page.put(row.group(1) + ":" + row.group(2), row.group(3) + " in " + row.group(4)));
    Map<String, String> built = new TreeMap<>();
    built.putAll(libraries("floorcalc-core", "core"));
    built.putAll(libraries("floorcalc-examples", "runner"));
    assertThat(page).isEqualTo(built).isNotEmpty();
  }

  private static Map<String, String> libraries(String module, String name) throws IOException {
    String parent = read("pom.xml");
    return DEPENDENCY.matcher(read(module + "/pom.xml").replaceAll("(?s)<(build|profiles)>.*?</\\1>", "")).results()
        .map(MatchResult::group).filter(text -> !text.contains("<scope>") && !text.contains("<groupId>floorcalc<"))
        .collect(Collectors.toMap(text -> tag(text, "groupId") + ":" + tag(text, "artifactId"),
            text -> version(parent, tag(text, "groupId"), tag(text, "artifactId")) + " in " + name));
  }

  /** The version that the parent gives a library, by itself or by the list that its group publishes. */
  private static String version(String parent, String group, String artifact) {
    List<String> managed = DEPENDENCY.matcher(parent).results().map(MatchResult::group).toList();
    String holder = managed.stream().filter(text -> tag(text, "artifactId").equals(artifact)).findFirst()
        .or(() -> managed.stream()
            .filter(text -> text.contains("<scope>import<") && group.startsWith(tag(text, "groupId"))).findFirst())
        .orElseThrow(() -> new AssertionError("no version of " + artifact + " in the parent"));
    String version = tag(holder, "version");
    return version.startsWith("${") ? tag(parent, version.substring(2, version.length() - 1)) : version;
  }

  private static String tag(String text, String name) {
    MatchResult found = Pattern.compile("<" + Pattern.quote(name) + ">([^<]*)<").matcher(text).results().findFirst()
        .orElseThrow(() -> new AssertionError("no <" + name + "> in " + text));
    return found.group(1);
  }

  private static String read(String file) throws IOException {
    return Files.readString(HOME.resolve(file));
  }
}
