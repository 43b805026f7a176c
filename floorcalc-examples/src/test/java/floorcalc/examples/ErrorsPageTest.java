package floorcalc.examples;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.bays.ExpansionBreak;
import floorcalc.bays.Opening;
import floorcalc.boards.BoardGoods;
import floorcalc.examples.CodesInSource.Use;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorJobBuilder;
import floorcalc.plan.JobFault;
import floorcalc.plan.Pipe;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The page of errors has every code that there is, and no other; {@code -Ddocs.draw} writes anew which package each is in. */
class ErrorsPageTest {
  private static final Path HOME = Path.of("..").toAbsolutePath().normalize();
  private static final String CORE = "floorcalc-core/src/main/java/floorcalc/";
  private static final String EXAMPLES = "floorcalc-examples/src/main/java/floorcalc/examples/";
  private static final Pattern CONSTANT = Pattern.compile("(?m)^\\s+[A-Z][A-Z0-9_]*\\(\"([^\"]*)\"\\)[,;]");
  private static final String FORM = "[a-z0-9]+(-[a-z0-9]+)*";

  private static CodesInSource found;

  @BeforeAll
  static void readTheSources() throws IOException {
    found = new CodesInSource(List.of(HOME.resolve("floorcalc-core/src/main/java")));
    if (System.getProperty("docs.draw") != null) {
      writePackages("Findings", "finding", 3);
      writePackages("Checks", "check", 4);
    }
  }

  private static void writePackages(String heading, String kind, int cell) throws IOException {
    Path page = HOME.resolve("docs/errors.md");
    String before = section("errors.md", heading);
    String after = Pattern.compile("(?m)^\\| `([^`]+)` \\|.*$").matcher(before).replaceAll(row -> {
      String[] cells = row.group().split("(?<!\\\\)\\|");
      if (found.uses().containsKey(row.group(1))) {
        cells[cell] = " " + packages(uses(row.group(1), kind)) + " ";
      }
      return Matcher.quoteReplacement(String.join("|", cells) + "|");
    });
    Files.writeString(page, Files.readString(page, UTF_8).replace(before, after), UTF_8);
  }

  @Test
  void noCodeIsPutTogetherOutOfSight() {
    assertThat(found.unclear()).isEmpty();
    assertThat(found.uses()).hasSizeGreaterThan(150);
  }

  @Test
  void everyFindingIsListedWithItsSeverity() throws IOException {
    Map<String, List<String>> rows = rows("Findings");
    assertThat(rows.keySet()).isEqualTo(codes("finding"));
    Set<String> known = Arrays.stream(Severity.values()).map(severity -> severity.name().toLowerCase(Locale.ROOT)).collect(Collectors.toSet());
    rows.forEach((code, cells) -> {
      Set<Use> uses = uses(code, "finding");
      assertThat(List.of(cells.get(1).split(", "))).as(code).isSubsetOf(known)
          .containsAll(uses.stream().map(Use::severity).filter(severity -> !severity.isEmpty()).toList());
      assertThat(cells.get(2)).as(code).isEqualTo(packages(uses));
    });
  }

  @Test
  void examplesHaveTheWordsOfTheirMessages() throws IOException {
    rows("Findings").forEach((code, cells) -> {
      Set<String> words = uses(code, "finding").stream().flatMap(use -> use.words().stream()).map(text -> text.strip().replace("|", "\\|"))
          .filter(text -> text.length() > 8).collect(Collectors.toCollection(TreeSet::new));
      if (!words.isEmpty()) {
        assertThat(words).as("%s: %s", code, cells.get(3)).anyMatch(cells.get(3)::contains);
      }
    });
  }

  @Test
  void everyCheckIsListed() throws IOException {
    Map<String, List<String>> rows = rows("Checks");
    assertThat(rows.keySet()).isEqualTo(codes("check"));
    rows.forEach((code, cells) -> assertThat(cells.get(3)).as(code).isEqualTo(packages(uses(code, "check"))));
  }

  @Test
  void everyCodeOfAnEnumIsListed() throws IOException {
    assertThat(rows("Mistakes of a job file").keySet()).isEqualTo(with(constants(EXAMPLES + "job/Mistake.java"), "program-fault"));
    assertThat(rows("Faults of levels").keySet()).isEqualTo(constants(CORE + "levels/LevelFault.java"));
    assertThat(rows("Faults of a job").keySet()).isEqualTo(constants(CORE + "laying/FaultCode.java"));
    assertThat(quoted(section("outline.md", "What can be wrong"))).containsAll(constants(CORE + "outline/OutlineFault.java"));
    assertThat(quoted(section("audit.md", "What is found"))).containsAll(constants(CORE + "audit/Code.java"));
  }

  /** A new enum of codes has to be entered above. */
  @Test
  void thereIsNoOtherEnumOfCodes() throws IOException {
    List<String> enums = new ArrayList<>();
    for (String module : List.of("floorcalc-core", "floorcalc-examples")) {
      try (Stream<Path> files = Files.walk(HOME.resolve(module).resolve("src/main/java"))) {
        for (Path file : files.filter(file -> file.toString().endsWith(".java")).sorted().toList()) {
          String text = Files.readString(file, UTF_8);
          if (text.contains("enum ") && Pattern.compile("String (code|text)\\(\\) \\{").matcher(text).find()) {
            enums.add(file.getFileName().toString());
          }
        }
      }
    }
    assertThat(enums).containsExactlyInAnyOrder("Code.java", "OutlineFault.java", "LevelFault.java", "FaultCode.java", "Mistake.java",
        "Deviation.java");
  }

  @Test
  void allCodesAreOfOneForm() throws IOException {
    Set<String> all = new TreeSet<>(found.uses().keySet());
    all.remove("deviation-...");
    for (String file : List.of(EXAMPLES + "job/Mistake.java", CORE + "levels/LevelFault.java", CORE + "laying/FaultCode.java",
        CORE + "outline/OutlineFault.java", CORE + "audit/Code.java")) {
      String text = Files.readString(HOME.resolve(file), UTF_8);
      List<String> codes = CONSTANT.matcher(text).results().map(constant -> constant.group(1)).toList();
      assertThat(codes).as(file).doesNotHaveDuplicates();
      all.addAll(codes);
    }
    assertThat(all).allSatisfy(code -> assertThat(code).matches(FORM));
  }

  @Test
  void everyExceptionIsListed() throws IOException {
    Set<String> thrown = new TreeSet<>();
    for (String module : List.of("floorcalc-core", "floorcalc-examples")) {
      try (Stream<Path> files = Files.walk(HOME.resolve(module).resolve("src/main/java"))) {
        files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith("Exception.java"))
            .forEach(name -> thrown.add(name.replace(".java", "")));
      }
    }
    assertThat(rows("Exceptions").keySet()).isEqualTo(with(thrown, "IllegalArgumentException", "NullPointerException"));
  }

  @Test
  void everyExitCodeIsListed() throws IOException {
    assertThat(section("errors.md", "Exit codes of the runner")).contains("\n| " + Main.OK + " |", "\n| " + Main.FAULT + " |",
        "\n| " + Main.REFUSED + " |");
  }

  @Test
  void theExamplesOfJobFaultsAreReal() throws IOException {
    Map<String, List<String>> rows = rows("Faults of a job");
    Room hall = Room.of("Hall", Wkt.parse("POLYGON ((0 0, 3000 0, 3000 2000, 0 2000, 0 0))"));
    List<JobFault> faults = new ArrayList<>();
    faults.addAll(faults(job("2.2 mm").room(hall)));
    faults.addAll(faults(job("50 mm").room(Room.of("Hall", Wkt.parse("POLYGON ((0 0, 400000 0, 400000 100000, 0 100000, 0 0))")))));
    faults.addAll(faults(job("1.2 m").room(Room.of("Study", Wkt.parse("POLYGON ((0 0, 3000 0, 3000 20, 0 20, 0 0))")))));
    faults.addAll(faults(job("1.2 m").room(hall.withOpenings(List.of(new Opening("arch", at(500, 500), at(1000, 500)))))));
    Room parted = hall.withBreaks(List.of(ExpansionBreak.given(at(1000, 0), at(1000, 2000))));
    FloorJob noGap = job("1.2 m").room(parted).build();
    faults.addAll(faults(job("1.2 m").rules(noGap.rules().with(LayingRules.EXPANSION_GAP, Length.ZERO, Source.GIVEN)).room(parted)));
    Room slot = Room.of("Hall", Wkt.parse("POLYGON ((0 0, 2000 0, 2000 1000, 2000.000001 1000, 2000.000001 0, 3000 0, 3000 2000, 0 2000, 0 0))"));
    faults.addAll(faults(job("1.2 m").rules(noGap.rules().with(LayingRules.EXPANSION_GAP, Length.ZERO, Source.GIVEN)).room(slot)));
    faults.addAll(faults(job("1.2 m").room(hall.withBreaks(List.of(ExpansionBreak.given(at(500, 500), at(1000, 500)))))));
    Room narrow = Room.of("Hall", Wkt.parse("POLYGON ((0 0, 200 0, 200 2000, 0 2000, 0 0))"))
        .withBreaks(List.of(ExpansionBreak.given(at(100, 0), at(100, 2000))));
    faults.addAll(faults(job("1.2 m").rules(noGap.rules().with(LayingRules.BREAK_GAP, Length.ofMillimetres(200), Source.GIVEN)).room(narrow)));
    faults.addAll(faults(job("1.2 m").room(hall.withPipes(Collections.nCopies(1001, new Pipe(at(500, 500), Length.ofMillimetres(22)))))));
    assertThat(faults).extracting(JobFault::code).containsExactlyInAnyOrderElementsOf(rows.keySet());
    assertThat(faults).allSatisfy(fault -> assertThat(rows.get(fault.code()).get(2)).isEqualTo(fault.message()));
  }

  private static FloorJobBuilder job(String board) {
    return FloorJob.of("A job", BoardGoods.of(Length.parse(board), Length.parse("185 mm"), Length.parse("14 mm"), 6));
  }

  private static List<JobFault> faults(FloorJobBuilder job) {
    return FloorPlanner.faultsOf(job.build());
  }

  private static Point at(long x, long y) {
    return Point.ofMillimetres(x, y);
  }

  @Test
  void theExamplesOfMistakesAreReal() throws IOException {
    String messages = Files.readString(Path.of("src/test/resources/broken-jobs/messages.txt"), UTF_8);
    rows("Mistakes of a job file").forEach((code, cells) -> {
      if (!Set.of("unreadable-readings", "more-mistakes", "program-fault").contains(code)) {
        assertThat(messages).as(code).contains("\n" + cells.get(2).replaceFirst(" \\.\\.\\.$", ""));
      }
    });
  }

  private static Set<Use> uses(String code, String kind) {
    return found.uses().get(code).stream().filter(use -> use.kind().equals(kind)).collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> codes(String kind) {
    return found.uses().keySet().stream().filter(code -> !uses(code, kind).isEmpty()).collect(Collectors.toCollection(TreeSet::new));
  }

  private static String packages(Set<Use> uses) {
    return uses.stream().map(use -> "`" + use.packageName().replaceFirst("^floorcalc\\.", "") + "`").distinct().sorted()
        .collect(Collectors.joining(", "));
  }

  private static Set<String> with(Set<String> set, String... more) {
    Set<String> all = new TreeSet<>(set);
    all.addAll(List.of(more));
    return all;
  }

  private static Set<String> constants(String file) throws IOException {
    return CONSTANT.matcher(Files.readString(HOME.resolve(file), UTF_8)).results().map(constant -> constant.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> quoted(String text) {
    return Pattern.compile("`([^`\\n]+)`").matcher(text).results().map(quote -> quote.group(1)).collect(Collectors.toSet());
  }

  /** The rows of the table in a section, by the code in the first cell; rows without one are left out. */
  private static Map<String, List<String>> rows(String heading) throws IOException {
    Map<String, List<String>> rows = new TreeMap<>();
    for (MatchResult row : Pattern.compile("(?m)^\\| `([^`]+)` \\|.*$").matcher(section("errors.md", heading)).results().toList()) {
      List<String> cells = Stream.of(row.group().split("(?<!\\\\)\\|")).map(String::strip).skip(1).toList();
      assertThat(rows.put(row.group(1), cells)).as("%s stands once under %s", row.group(1), heading).isNull();
    }
    return rows;
  }

  private static String section(String page, String heading) throws IOException {
    String text = Files.readString(HOME.resolve("docs").resolve(page), UTF_8);
    int from = Math.max(text.indexOf("\n## " + heading + "\n"), text.indexOf("\n### " + heading + "\n"));
    assertThat(from).as("%s in %s", heading, page).isNotNegative();
    int to = text.indexOf("\n## ", from + 4);
    return text.substring(from, to < 0 ? text.length() : to);
  }
}
