package floorcalc.reference.architecture;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import floorcalc.FloorPlanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The picture and the table on the page of the architecture are what the compiled classes say; {@code -Ddocs.draw} writes both anew. */
class ArchitecturePageTest {
  private static final Path HOME = Path.of("..").toAbsolutePath().normalize();
  private static final Path PAGE = HOME.resolve("docs/architecture.md");
  private static final Path PICTURE = HOME.resolve("docs/architecture.svg");
  private static final String BEGIN = "<!-- packages: written by ArchitecturePageTest -->\n";
  private static final String END = "<!-- end of packages -->\n";
  private static final String EXAMPLES = "floorcalc-examples";
  private static final String CHECKS = "reference-checks";
  /** Libraries by the start of their packages. */
  private static final Map<String, String> LIBRARIES = new TreeMap<>(Map.of("org.locationtech.jts.", "JTS",
      "org.apache.commons.math3.", "Commons Math"));

  private static final Map<String, Set<String>> known = new TreeMap<>();
  private static final Map<String, Set<String>> libraries = new TreeMap<>();

  @BeforeAll
  static void readTheClasses() {
    JavaClasses classes = new ClassFileImporter().importPackages("floorcalc");
    String core = place(classes.get(FloorPlanner.class));
    String examples = place(classes.get("floorcalc.examples.Main"));
    for (JavaClass from : classes) {
      String name = node(from, core, examples);
      known.computeIfAbsent(name, key -> new TreeSet<>());
      for (Dependency arrow : from.getDirectDependenciesFromSelf()) {
        JavaClass to = arrow.getTargetClass().getBaseComponentType();
        if (to.getPackageName().matches("floorcalc(\\..*)?")) {
          String other = node(to, core, examples);
          if (!other.equals(name)) {
            known.get(name).add(other);
          }
        }
        LIBRARIES.forEach((start, library) -> {
          if (to.getName().startsWith(start) && place(from).equals(core)) {
            libraries.computeIfAbsent(name, key -> new TreeSet<>()).add(library);
          }
        });
      }
    }
  }

  /** The package without the root's name in the core, else the module. */
  private static String node(JavaClass type, String core, String examples) {
    String place = place(type);
    return place.equals(core) ? type.getPackageName().replaceFirst("^floorcalc\\.", "") : place.equals(examples) ? EXAMPLES : CHECKS;
  }

  private static String place(JavaClass type) {
    String source = type.getSource().orElseThrow().getUri().toString();
    return source.substring(0, source.length() - (type.getName().replaceFirst("\\$.*", "").length()))
        .replaceFirst("(target/classes|target/test-classes|\\.jar!).*", "$1");
  }

  @Test
  void thePictureIsWhatTheClassesSay() throws IOException {
    String drawn = LayeredDrawing.svg(new PackageGraph(known).reduced(),
        name -> String.join(", ", libraries.getOrDefault(name, Set.of())),
        "The packages of the core and the two modules above it, each joined to those that it knows");
    if (System.getProperty("docs.draw") != null) {
      Files.writeString(PICTURE, drawn, UTF_8);
    }
    assertThat(Files.readString(PICTURE, UTF_8)).as("docs/architecture.svg; run this test with -Ddocs.draw to draw it anew").isEqualTo(drawn);
  }

  @Test
  void theTableIsWhatTheClassesSay() throws IOException {
    String page = Files.readString(PAGE, UTF_8);
    int begin = page.indexOf(BEGIN) + BEGIN.length();
    String written = page.substring(0, begin) + table() + page.substring(page.indexOf(END));
    if (System.getProperty("docs.draw") != null) {
      Files.writeString(PAGE, written, UTF_8);
    }
    assertThat(Files.readString(PAGE, UTF_8)).as("docs/architecture.md; run this test with -Ddocs.draw to write its table anew")
        .isEqualTo(written);
  }

  private static String table() throws IOException {
    PackageGraph graph = new PackageGraph(known);
    List<String> upwards = graph.names().stream().filter(name -> !name.equals(EXAMPLES) && !name.equals(CHECKS))
        .sorted(Comparator.comparingInt(graph::height).thenComparing(Comparator.naturalOrder())).toList();
    StringBuilder table = new StringBuilder("| Package | Idea | Knows |\n| --- | --- | --- |\n");
    for (String name : upwards) {
      String knows = graph.knownBy(name).stream().sorted(Comparator.comparingInt(upwards::indexOf)).collect(Collectors.joining(", "));
      String inside = libraries.getOrDefault(name, Set.of()).stream().map(library -> "*" + library + "*").collect(Collectors.joining(", "));
      table.append("| `").append(name).append("` | ").append(idea(name)).append(" | ").append(knows.isEmpty() ? "nothing" : knows)
          .append(inside.isEmpty() ? "" : "; " + inside).append(" |\n");
    }
    return table.toString();
  }

  /** The first sentence of a package's description. */
  private static String idea(String name) throws IOException {
    String folder = name.equals("floorcalc") ? "floorcalc" : "floorcalc/" + name.replace('.', '/');
    String text = Files.readString(HOME.resolve("floorcalc-core/src/main/java/" + folder + "/package-info.java"), UTF_8)
        .replaceAll("\\s*\\n \\* ?", " ");
    Matcher first = Pattern.compile("(?s)/\\*\\*\\s*(.*?)(?:\\.|(?<=\\?))(?=\\s|$)").matcher(text);
    assertThat(first.find()).as("a first sentence of %s", name).isTrue();
    String sentence = first.group(1).replaceAll("\\{@link (?:\\w+\\.)*(\\w+)}", "`$1`").strip();
    return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
  }

  @Test
  void theModulesStandOnTheCore() {
    assertThat(known.get(CHECKS)).contains(EXAMPLES, "floorcalc");
    assertThat(known.get(EXAMPLES)).contains("floorcalc").doesNotContain(CHECKS);
    known.forEach((name, others) -> {
      if (!name.equals(CHECKS) && !name.equals(EXAMPLES)) {
        assertThat(others).as(name).doesNotContain(CHECKS, EXAMPLES);
      }
    });
  }

  @Test
  void arrowsThatALongerWayStandsForAreLeftOut() {
    PackageGraph graph = new PackageGraph(Map.of("roof", Set.of("wall", "ground"), "wall", Set.of("ground")));
    assertThat(graph.reduced().knownBy("roof")).containsExactly("wall");
    assertThat(graph.reduced().knownBy("wall")).containsExactly("ground");
    assertThat(graph.height("roof")).isEqualTo(2);
    assertThatThrownBy(() -> new PackageGraph(Map.of("a", Set.of("b"), "b", Set.of("a"))).height("a"))
        .isInstanceOf(IllegalStateException.class).hasMessageContaining("knows itself");
  }
}
