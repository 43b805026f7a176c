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
 * The Java in README.md and under docs/ compiles, runs and prints what the page says. A fenced {@code java} block is
 * followed by a fenced {@code text} block with its output; a page under docs/ may also show Java without output, which
 * is then left alone.
 */
class ReadmeTest {

  private static final Path HOME = Path.of("..").toAbsolutePath().normalize();
  private static final Pattern FENCE = Pattern.compile("(?ms)^```(\\w*)\\R(.*?)^```\\s*$");

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
  }

  @TestFactory
  List<DynamicTest> printsWhatThePageSays() throws IOException {
    List<Path> pages = new ArrayList<>(List.of(HOME.resolve("README.md")));
    Path docs = HOME.resolve("docs");
    if (Files.isDirectory(docs)) {
      try (Stream<Path> files = Files.walk(docs)) {
        files.filter(file -> file.toString().endsWith(".md")).sorted().forEach(pages::add);
      }
    }
    List<DynamicTest> tests = new ArrayList<>();
    for (Path page : pages) {
      for (Example example : examples(page)) {
        if (example.output() != null) {
          tests.add(DynamicTest.dynamicTest(HOME.relativize(page) + " line " + example.line(),
              () -> assertThat(run(example)).isEqualTo(example.output())));
        }
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
    Path source = directory.resolve("Shown.java");
    Files.writeString(source, asClass(example.java()), UTF_8);
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    StringWriter messages = new StringWriter();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, UTF_8)) {
      boolean compiled = compiler.getTask(messages, files, null,
          List.of("-Xlint:all", "-Werror", "-proc:none", "-d", directory.toString(),
              "-classpath", System.getProperty("java.class.path")),
          null, files.getJavaFileObjects(source)).call();
      assertThat(compiled).as("%s line %d compiles:%n%s", example.page(), example.line(), messages).isTrue();
    }
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

  private static String asClass(String block) {
    String imports = block.lines().filter(line -> line.startsWith("import ")).collect(Collectors.joining("\n"));
    String body = block.lines().filter(line -> !line.startsWith("import ")).collect(Collectors.joining("\n"));
    return imports + "\npublic final class Shown {\n  private Shown() { }\n"
        + "  public static void main() throws Exception {\n" + body + "\n  }\n}\n";
  }
}
