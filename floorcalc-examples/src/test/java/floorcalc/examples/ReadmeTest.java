package floorcalc.examples;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringWriter;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The Java at the top of the project and under docs/ compiles, runs and prints what the page says. A fenced {@code java} block is
 * followed by a fenced {@code text} block with its output. A page under docs/ may also show a few lines without output: these are
 * compiled, with what they need from around them given, or stand like that in a source behind a profile.
 */
class ReadmeTest {

  private static final Path HOME = Path.of("..").toAbsolutePath().normalize();
  private static final Pattern FENCE = Pattern.compile("(?ms)^```(\\w*)\\R(.*?)^```\\s*$");

  /** What lines without a program around them may take from it. */
  private static final Map<String, String> AROUND = new TreeMap<>(Map.of("job", "FloorJob", "plan", "FloorPlan", "bay", "Bay",
      "room", "Outline", "levels", "Levels", "work", "SubfloorPreparation"));

  /** A block of Java on a page, the line where it starts, and the output printed below it, or null. */
  private record Example(Path page, int line, String java, String output) {
  }

  @TempDir
  Path directory;

  @Test
  void readmeShowsJavaWithItsOutput() throws IOException {
    List<Example> examples = examples(HOME.resolve("README.md"));
    assertThat(examples).isNotEmpty().allSatisfy(example -> assertThat(example.output())
        .as("the ```text block after the ```java block in line %d", example.line()).isNotNull());
    // Pasted into jshell a line that could end there ends there: the next must not begin with a dot.
    assertThat(examples.get(0).java().lines()).noneMatch(line -> line.strip().startsWith("."));
  }

  @TestFactory
  List<DynamicTest> printsWhatThePageSays() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (Path page : Docs.pages()) {
      for (Example example : examples(page)) {
        tests.add(DynamicTest.dynamicTest(HOME.relativize(page) + " line " + example.line(), () -> {
          if (example.output() == null && !isPartOfASource(example.java())) {
            compile(example, asFragment(example.java()));
          } else if (example.output() != null) {
            assertThat(run(example)).isEqualTo(example.output());
          }
        }));
      }
    }
    return tests;
  }

  @Test
  void eachOfTheTasksTakesTenLinesAtMost() throws IOException {
    assertThat(examples(HOME.resolve("docs/five-tasks.md"))).hasSizeGreaterThan(4).allSatisfy(task -> assertThat(
        task.java().lines().filter(line -> !line.isBlank() && !line.startsWith("import "))).as("line %d", task.line())
        .hasSizeBetween(1, 10));
  }

  private static List<Example> examples(Path page) throws IOException {
    String text = Files.readString(page, UTF_8).replace("\r\n", "\n");
    List<Example> examples = new ArrayList<>();
    Matcher fence = FENCE.matcher(text);
    String java = null;
    int line = 0;
    while (fence.find()) {
      if (java != null) {
        examples.add(new Example(page, line, java, fence.group(1).equals("text") ? fence.group(2) : null));
        java = null;
      }
      if (fence.group(1).equals("java")) {
        java = fence.group(2);
        line = (int) text.substring(0, fence.start()).lines().count() + 1;
      }
    }
    if (java != null) {
      examples.add(new Example(page, line, java, null));
    }
    return examples;
  }

  /** Compiles the block as the body of a main method, runs it and returns what it printed. */
  private String run(Example example) throws Exception {
    compile(example, asClass(example.java()));
    return printed();
  }

  private void compile(Example example, String text) throws IOException {
    Path source = directory.resolve("Shown.java");
    Files.writeString(source, text, UTF_8);
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    StringWriter messages = new StringWriter();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, UTF_8)) {
      boolean compiled = compiler.getTask(messages, files, null,
          List.of("-Xlint:all", "-Werror", "-proc:none", "-d", directory.toString(),
              "-classpath", System.getProperty("java.class.path")),
          null, files.getJavaFileObjects(source)).call();
      assertThat(compiled).as("%s line %d compiles:%n%s", example.page(), example.line(), messages).isTrue();
    }
  }

  /** Runs what was compiled last and returns what it printed. */
  private String printed() throws Exception {
    PrintStream console = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    try (URLClassLoader loader = new URLClassLoader(new URL[] {directory.toUri().toURL()}, getClass().getClassLoader());
        PrintStream page = new PrintStream(printed, true, UTF_8)) {
      System.setOut(page);
      loader.loadClass("Shown").getMethod("main").invoke(null);
    } finally {
      System.setOut(console);
    }
    return printed.toString(UTF_8).replace("\r\n", "\n");
  }

  /** Whether the lines stand like this in a source behind a profile, which is compiled there with a library that is not here. */
  private static boolean isPartOfASource(String block) throws IOException {
    try (Stream<Path> files = Files.walk(HOME.resolve("floorcalc-examples/src/stock"))) {
      for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
        if (Files.readString(file, UTF_8).replaceAll("\\s+", " ").contains(block.strip().replaceAll("\\s+", " "))) {
          return true;
        }
      }
    }
    return false;
  }

  /** Lines without a program around them: all of the core is imported, and a value stands for each name that is used but not made. */
  private static String asFragment(String block) throws IOException {
    return asFragment("Shown", block, AROUND);
  }

  /** The same as a class of some name, with names that may be taken from around the lines. */
  static String asFragment(String type, String block, Map<String, String> around) throws IOException {
    StringBuilder text = new StringBuilder("import java.math.*;\nimport java.util.*;\n");
    Path core = HOME.resolve("floorcalc-core/src/main/java");
    try (Stream<Path> files = Files.walk(core)) {
      files.filter(file -> file.endsWith("package-info.java")).sorted().forEach(file ->
          text.append("import ").append(core.relativize(file.getParent()).toString().replaceAll("[/\\\\]", ".")).append(".*;\n"));
    }
    String given = around.entrySet().stream().filter(name -> block.matches("(?s).*\\b" + name.getKey() + "\\b.*")
            && !block.matches("(?s).*[\\w>(] ?\\b" + name.getKey() + " (=|->).*"))
        .map(name -> name.getValue() + " " + name.getKey()).collect(Collectors.joining(", "));
    return text + "public final class " + type + " {\n  private " + type + "() { }\n  public static void shown(" + given + ") {\n" + block + "\n  }\n}\n";
  }

  private static String asClass(String block) {
    String imports = block.lines().filter(line -> line.startsWith("import ")).collect(Collectors.joining("\n"));
    String body = block.lines().filter(line -> !line.startsWith("import ")).collect(Collectors.joining("\n"));
    return imports + "\npublic final class Shown {\n  private Shown() { }\n"
        + "  public static void main() throws Exception {\n" + body + "\n  }\n}\n";
  }
}
