package floorcalc.examples;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import javax.tools.ToolProvider;
import org.apache.commons.math3.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Geometry;

/**
 * The two projects to copy, on the class path and on the module path, compile and run against the core. The script
 * {@code consumers/run} does the same with any JDK.
 */
class ConsumersTest {

  private static final Path CONSUMERS = Path.of("consumers").toAbsolutePath();
  private static final String PLANNED = "40 boards in 7 packs, from ";

  @TempDir
  Path directory;

  @Test
  void onTheClassPath() throws Exception {
    String jars = jars();
    Path classes = compiled("class-path", "-classpath", jars);
    assertThat(run("-classpath", classes + File.pathSeparator + jars, "example.floor.PlanARoom"))
        .startsWith(PLANNED + "unnamed module");
  }

  @Test
  void onTheModulePath() throws Exception {
    String jars = jars();
    Path classes = compiled("module-path", "--module-path", jars);
    assertThat(run("--module-path", classes + File.pathSeparator + jars, "--module", "example.floor/example.floor.PlanARoom"))
        .startsWith(PLANNED + "module floorcalc.core");
  }

  @Test
  void theirProjectsNameTheLibraryAsItIs() throws IOException {
    String own = Files.readString(Path.of("..", "pom.xml"));
    String version = own.substring(own.indexOf("<version>") + "<version>".length(), own.indexOf("</version>"));
    for (String consumer : List.of("class-path", "module-path")) {
      assertThat(Files.readString(CONSUMERS.resolve(consumer).resolve("pom.xml"))).containsIgnoringWhitespaces("<groupId>floorcalc</groupId>"
          + "<artifactId>floorcalc-core</artifactId><version>" + version + "</version>");
    }
  }

  private Path compiled(String consumer, String path, String jars) throws IOException {
    Path classes = directory.resolve(consumer);
    List<String> arguments = new ArrayList<>(List.of("-encoding", "UTF-8", "--release", "17", "-d", classes.toString(), path, jars));
    try (Stream<Path> files = Files.walk(CONSUMERS.resolve(consumer).resolve("src/main/java"))) {
      files.filter(file -> file.toString().endsWith(".java")).sorted().map(Path::toString).forEach(arguments::add);
    }
    assertThat(ToolProvider.getSystemJavaCompiler().run(null, null, null, arguments.toArray(String[]::new))).isZero();
    return classes;
  }

  private static String run(String... arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
    command.addAll(Arrays.asList(arguments));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String printed = new String(process.getInputStream().readAllBytes(), UTF_8);
    assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
    assertThat(process.exitValue()).as(printed).isZero();
    return printed;
  }

  /** The core's jar and the two libraries; where the core is still a folder of classes, a jar is made of it. */
  private String jars() throws IOException, URISyntaxException {
    return Stream.of(asJar(home(FloorPlanner.class)), home(Geometry.class), home(FastMath.class)).map(Path::toString)
        .collect(Collectors.joining(File.pathSeparator));
  }

  private static Path home(Class<?> type) throws URISyntaxException {
    return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
  }

  private Path asJar(Path home) throws IOException {
    if (Files.isRegularFile(home)) {
      return home;
    }
    Manifest manifest = new Manifest();
    manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
    manifest.getMainAttributes().putValue("Automatic-Module-Name", "floorcalc.core");
    Path jar = directory.resolve("floorcalc-core.jar");
    try (OutputStream out = Files.newOutputStream(jar); JarOutputStream entries = new JarOutputStream(out, manifest);
        Stream<Path> files = Files.walk(home)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        String name = home.relativize(file).toString().replace(File.separatorChar, '/');
        if (!name.equals("META-INF/MANIFEST.MF")) {
          entries.putNextEntry(new ZipEntry(name));
          Files.copy(file, entries);
          entries.closeEntry();
        }
      }
    }
    return jar;
  }
}
