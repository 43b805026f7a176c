package floorcalc.examples;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every package shows how to start, and the lines of Java in the Javadoc of packages and types compile. */
class JavadocExamplesTest {
  private static final Path CORE = Path.of("..").toAbsolutePath().normalize().resolve("floorcalc-core/src/main/java");
  private static final Pattern BLOCK = Pattern.compile("(?s)<pre>\\{@code\\R(.*?)\\R *\\* *\\}</pre>");

  /** What the lines may take from around them. */
  private static final Map<String, String> AROUND = new TreeMap<>();

  static {
    for (String given : List.of("job FloorJob", "plan FloorPlan", "room Outline", "outline Outline", "levels Levels", "area Area", "goods BoardGoods", "boards BoardGoods",
        "preparation SubfloorPreparation", "cutting TrimCutting", "here HeightStack", "there HeightStack", "joints JointLayout", "survey Survey",
        "division RowDivision", "forecast MovementForecast", "profile HeightProfile", "air AirClimate", "readings List<Percent>",
        "lengths List<Length>", "turns List<Angle>", "piece BoardPiece", "ring Ring", "pipes List<PipeAt>", "allowance PipeAllowance", "limits CutOutLimits", "rules LayingRules",
        "stops List<Stop>", "low Length", "pitch Length", "minimum Length")) {
      AROUND.put(given.split(" ")[0], given.split(" ", 2)[1]);
    }
  }

  @TempDir
  Path directory;

  @Test
  void eachPackageShowsHowToStart() throws IOException {
    try (Stream<Path> files = Files.walk(CORE)) {
      assertThat(files.filter(file -> file.endsWith("package-info.java"))).hasSizeGreaterThan(20)
          .allSatisfy(file -> assertThat(blocks(file)).as(file.toString()).isNotEmpty());
    }
  }

  @Test
  void theJavaOfTheJavadocCompiles() throws IOException {
    List<Path> sources = new ArrayList<>();
    try (Stream<Path> files = Files.walk(CORE)) {
      for (Path file : files.filter(path -> path.toString().endsWith(".java")).sorted().toList()) {
        for (String block : blocks(file)) {
          Path source = directory.resolve("Shown" + sources.size() + ".java");
          Files.writeString(source, ReadmeTest.asFragment("Shown" + sources.size(), "// " + file.getFileName() + "\n" + block, AROUND), UTF_8);
          sources.add(source);
        }
      }
    }
    assertThat(sources).hasSizeGreaterThan(40);
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    StringWriter messages = new StringWriter();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, UTF_8)) {
      boolean compiled = compiler.getTask(messages, files, null, List.of("-proc:none", "-d", directory.toString(),
          "-classpath", System.getProperty("java.class.path")), null, files.getJavaFileObjectsFromPaths(sources)).call();
      assertThat(compiled).as("%s", messages).isTrue();
    }
  }

  /** The blocks of Java, which have a line that ends as a statement does; formulas and sketches have none. */
  private static List<String> blocks(Path file) throws IOException {
    List<String> blocks = new ArrayList<>();
    Matcher block = BLOCK.matcher(Files.readString(file, UTF_8));
    while (block.find()) {
      String lines = block.group(1).replaceAll("(?m)^ *\\* ?", "");
      if (Pattern.compile("(?m);( *//.*)?$").matcher(lines).find()) {
        blocks.add(lines);
      }
    }
    return blocks;
  }
}
