package floorcalc.examples;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The pages point to what is there: files, headings, packages, types, tests, sources; and the index names each page. */
class DocsTest {
  private static final Path HOME = Path.of("..").toAbsolutePath().normalize();
  private static final Path DOCS = HOME.resolve("docs");
  private static final Pattern FENCED = Pattern.compile("(?ms)^```.*?^```\\s*$");
  private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)|(?m)^\\[[^\\]]+\\]: (\\S+)$");
  private static final Pattern QUOTED = Pattern.compile("`([^`\\n]+)`");
  private static final Pattern TYPE = Pattern.compile("(floorcalc(?:\\.[a-z]+)*\\.[A-Z]\\w*)\\b.*");
  private static final Pattern NAMED = Pattern.compile("\\bdocs/[\\w/-]+\\.(?:md|svg|json)(?:#[\\w-]+)?");
  private static final Pattern SOURCE = Pattern.compile("(?:new Source|Source\\.[a-z]\\w*)\\(\\s*\"([^\"]+)\"");
  /** Names in the same form that are no packages. */
  private static final Set<String> OTHER_NAMES = Set.of("floorcalc.core", "floorcalc.jar");

  @Test
  void linksLeadSomewhere() throws IOException {
    List<String> broken = new ArrayList<>();
    for (Path page : pages()) {
      for (MatchResult link : LINK.matcher(prose(page)).results().toList()) {
        String target = link.group(1) != null ? link.group(1) : link.group(2);
        if (!target.contains("://") && !leads(page, target)) {
          broken.add(HOME.relativize(page) + " -> " + target);
        }
      }
    }
    assertThat(broken).isEmpty();
  }

  /** A page that a source file, a schema or a build file names is there, with the heading if one is named. */
  @Test
  void pagesThatTheCodeNamesExist() throws IOException {
    List<String> broken = new ArrayList<>();
    int named = 0;
    for (String file : sources()) {
      for (String module : List.of("floorcalc-core", "floorcalc-examples", "reference-checks")) {
        Path path = HOME.resolve(module).resolve("src").resolve(file);
        if (Files.exists(path)) {
          for (MatchResult page : NAMED.matcher(Files.readString(path, UTF_8)).results().toList()) {
            named++;
            if (!leads(HOME.resolve("README.md"), page.group())) {
              broken.add(file + " -> " + page.group());
            }
          }
        }
      }
    }
    assertThat(broken).isEmpty();
    assertThat(named).isGreaterThan(20);
  }

  private static boolean leads(Path page, String target) throws IOException {
    int hash = target.indexOf('#');
    Path file = hash == 0 ? page : page.resolveSibling(hash < 0 ? target : target.substring(0, hash)).normalize();
    return file.startsWith(HOME) && Files.exists(file)
        && (hash < 0 || headings(file).contains(target.substring(hash + 1)));
  }

  /** The headings of a page as links name them: small letters, hyphens for blanks, nothing else but letters and digits. */
  private static Set<String> headings(Path page) throws IOException {
    return prose(page).lines().filter(line -> line.matches("#+ .*"))
        .map(line -> line.replaceFirst("#+ ", "").toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N} _-]", "")
            .replace(' ', '-'))
        .collect(Collectors.toSet());
  }

  @Test
  void packagesTypesAndTestsThatPagesNameExist() throws IOException {
    Set<String> sources = sources();
    List<String> missing = new ArrayList<>();
    for (Path page : pages()) {
      for (MatchResult quoted : QUOTED.matcher(prose(page)).results().toList()) {
        String name = quoted.group(1);
        var type = TYPE.matcher(name);
        boolean there = true;
        if (type.matches()) {
          String file = "java/" + type.group(1).replace('.', '/') + ".java";
          there = sources.contains("main/" + file) || sources.contains("test/" + file);
        } else if (name.matches("floorcalc(\\.[a-z]+)*") && !OTHER_NAMES.contains(name)) {
          there = sources.contains("main/java/" + name.replace('.', '/') + "/package-info.java");
        } else if (name.matches("[A-Z]\\w+Test")) {
          there = sources.stream().anyMatch(file -> file.startsWith("test/") && file.endsWith("/" + name + ".java"));
        }
        if (!there) {
          missing.add(HOME.relativize(page) + ": " + name);
        }
      }
    }
    assertThat(missing).isEmpty();
  }

  /** Every source file of the three modules, as {@code main/java/...} or {@code test/java/...}. */
  private static Set<String> sources() throws IOException {
    Set<String> names = new TreeSet<>();
    for (String module : List.of("floorcalc-core", "floorcalc-examples", "reference-checks")) {
      Path source = HOME.resolve(module).resolve("src");
      try (Stream<Path> files = Files.walk(source)) {
        files.filter(file -> file.toString().endsWith(".java"))
            .forEach(file -> names.add(source.relativize(file).toString().replace('\\', '/')));
      }
    }
    return names;
  }

  @Test
  void theIndexNamesEachPage() throws IOException {
    String index = Files.readString(DOCS.resolve("README.md"), UTF_8);
    try (Stream<Path> files = Files.list(DOCS)) {
      assertThat(files.map(file -> file.getFileName().toString())
          .filter(name -> !name.equals("README.md") && (name.endsWith(".md") || name.endsWith(".json"))).sorted())
          .allSatisfy(name -> assertThat(index).contains("(" + name + ")"));
    }
  }

  @Test
  void thePageOfSourcesNamesEachSource() throws IOException {
    String page = Files.readString(DOCS.resolve("sources.md"), UTF_8);
    Set<String> titles = new TreeSet<>();
    for (String file : sources()) {
      for (String module : List.of("floorcalc-core", "floorcalc-examples")) {
        Path path = HOME.resolve(module).resolve("src").resolve(file);
        if (file.startsWith("main/") && Files.exists(path)) {
          SOURCE.matcher(Files.readString(path, UTF_8)).results().forEach(found -> titles.add(found.group(1)));
        }
      }
    }
    titles.removeIf(title -> title.endsWith("(invented)"));
    assertThat(titles).hasSizeGreaterThan(3).allSatisfy(title -> assertThat(page).contains(title));
  }

  private static List<Path> pages() throws IOException {
    List<Path> pages = Docs.pages();
    assertThat(pages).contains(HOME.resolve("README.md"), HOME.resolve("DEVELOPERS.md"), HOME.resolve("CHANGELOG.md"), DOCS.resolve("README.md"),
        DOCS.resolve("examples/README.md"));
    return pages;
  }

  /** A page without its fenced blocks. */
  private static String prose(Path page) throws IOException {
    return FENCED.matcher(Files.readString(page, UTF_8).replace("\r\n", "\n")).replaceAll("");
  }
}
