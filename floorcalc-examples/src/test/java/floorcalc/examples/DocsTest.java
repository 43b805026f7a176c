package floorcalc.examples;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.boards.BoardGoods;
import floorcalc.drawing.FloorDrawing;
import floorcalc.drawing.LevelsDrawing;
import floorcalc.drawing.Measures;
import floorcalc.drawing.SurveyDrawing;
import floorcalc.examples.readings.ReadingFile;
import floorcalc.flatness.ToleranceSet;
import floorcalc.joints.JointPattern;
import floorcalc.levels.Levels;
import floorcalc.levels.PreparationOptions;
import floorcalc.levels.SubfloorPreparation;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Wkt;
import floorcalc.outline.survey.Survey;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyWall;
import floorcalc.outline.survey.Tie;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import java.io.IOException;
import java.math.BigDecimal;
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
          there = sources.contains("main/java/" + type.group(1).replace('.', '/') + ".java");
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

  /** The picture on the pages is what the library draws of that room; {@code -Ddocs.draw} draws it anew. */
  @Test
  void thePictureIsWhatTheLibraryDraws() throws IOException {
    BoardGoods goods = BoardGoods.of(Length.parse("1.2 m"), Length.parse("250 mm"), Length.parse("14 mm"), 5);
    Room porch = Room.of("Porch", Wkt.parse("POLYGON ((0 0, 3020 0, 3020 770, 0 770, 0 0),"
        + " (1510 250, 1790 250, 1790 520, 1510 520, 1510 250))"));
    FloorJob job = FloorJob.of("A column", goods).pattern(JointPattern.ofFraction(1, 3)).room(porch).build();
    FloorPlan plan = FloorPlanner.plan(job);
    String drawn = FloorDrawing.of(job, plan, plan.bays().get(0)).toSvg();
    Path picture = DOCS.resolve("porch.svg");
    if (System.getProperty("docs.draw") != null) {
      Files.writeString(picture, drawn, UTF_8);
    }
    assertThat(Files.readString(picture, UTF_8)).as("docs/porch.svg; run this test with -Ddocs.draw to draw it anew")
        .isEqualTo(drawn);
  }

  /** So is that of a room with a wall that runs off. */
  @Test
  void thePictureOfATaperIsWhatTheLibraryDraws() throws IOException {
    BoardGoods goods = BoardGoods.of(Length.parse("1.2 m"), Length.parse("185 mm"), Length.parse("14 mm"), 5);
    Room passage = Room.of("Passage", Wkt.parse("POLYGON ((0 0, 3020 0, 3020 750, 0 860, 0 0))"));
    FloorJob job = FloorJob.of("A wall that runs off (invented)", goods).pattern(JointPattern.ofFraction(1, 3))
        .direction(DirectionChoice.of(Direction.ALONG_X)).room(passage).build();
    FloorPlan plan = FloorPlanner.plan(job);
    String drawn = FloorDrawing.of(job, plan, plan.bays().get(0)).toSvg();
    Path picture = DOCS.resolve("taper.svg");
    if (System.getProperty("docs.draw") != null) {
      Files.writeString(picture, drawn, UTF_8);
    }
    assertThat(Files.readString(picture, UTF_8)).as("docs/taper.svg; run this test with -Ddocs.draw to draw it anew")
        .isEqualTo(drawn);
  }

  /** And the flat of the demo, all rooms on one sheet. */
  @Test
  void thePictureOfTheFlatIsWhatTheLibraryDraws() throws IOException {
    String drawn = FloorDrawing.ofAllRooms(Demo.job(Demo.FLAT).job(), Demo.plan(Demo.FLAT), Measures.MILLIMETRES).orElseThrow().toSvg();
    Path picture = DOCS.resolve("gullhaven-flat.svg");
    if (System.getProperty("docs.draw") != null) {
      Files.writeString(picture, drawn, UTF_8);
    }
    assertThat(Files.readString(picture, UTF_8)).as("docs/gullhaven-flat.svg; run this test with -Ddocs.draw to draw it anew")
        .isEqualTo(drawn);
  }

  /** So is that of the levels of a room. */
  @Test
  void thePictureOfLevelsIsWhatTheLibraryDraws() throws IOException {
    Levels study = ReadingFile.room(Files.readAllBytes(Demo.FOLDER.resolve("gullhaven-study.csv"))).levels();
    SubfloorPreparation work = SubfloorPreparation.of(study, ToleranceSet.named("BS 8204 SR1"),
        PreparationOptions.grindingUpTo(Length.parse("3 mm")).leastWork(BigDecimal.valueOf(2), BigDecimal.ONE)).value();
    String drawn = LevelsDrawing.of(study).titled("Study of an invented house").with(work).toSvg();
    Path picture = DOCS.resolve("levels.svg");
    if (System.getProperty("docs.draw") != null) {
      Files.writeString(picture, drawn, UTF_8);
    }
    assertThat(Files.readString(picture, UTF_8)).as("docs/levels.svg; run this test with -Ddocs.draw to draw it anew")
        .isEqualTo(drawn);
  }

  /** And that of a room as it was measured: the L of the constructed tape rooms. */
  @Test
  void thePictureOfASurveyIsWhatTheLibraryDraws() throws IOException {
    Survey letter = Survey.of(Stream.of("6202", "2610", "2787", "2209", "3411", "4800")
        .map(mm -> SurveyWall.of(Length.ofMillimetres(mm))).toList())
        .withTies(List.of(tie(1, 3, 6717), tie(1, 4, 4284), tie(2, 4, 3815), tie(4, 6, 4062), tie(1, 5, 5891), tie(3, 6, 6576)));
    String drawn = SurveyDrawing.of(SurveyReport.of(letter).value()).titled("Hall of an invented house").toSvg();
    Path picture = DOCS.resolve("survey.svg");
    if (System.getProperty("docs.draw") != null) {
      Files.writeString(picture, drawn, UTF_8);
    }
    assertThat(Files.readString(picture, UTF_8)).as("docs/survey.svg; run this test with -Ddocs.draw to draw it anew")
        .isEqualTo(drawn);
  }

  private static Tie tie(int from, int to, long mm) {
    return new Tie(from, to, Length.ofMillimetres(mm));
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
