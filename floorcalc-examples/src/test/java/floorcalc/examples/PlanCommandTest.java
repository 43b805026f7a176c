package floorcalc.examples;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.examples.job.BrokenJobs;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.InputSource;

class PlanCommandTest {
  private static final String SMALL = "{\"format\":\"floorcalc-job/1\",\"title\":\"Küche\",\"board\":{\"length\":2200,"
      + "\"coverWidth\":185,\"thickness\":14,\"perPack\":6,\"construction\":\"engineered\"},"
      + "\"rooms\":[{\"name\":\"Küche 1\",\"outline\":[[0,0],[3000,0],[3000,2000],[0,2000]]}]}";

  @TempDir
  private Path folder;
  private Path job;
  private Path out;

  @BeforeEach
  void jobAndPlace() throws IOException {
    job = write("small job.json", SMALL);
    out = folder.resolve("made here").resolve("results");
  }

  private Path write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.write(file, text.getBytes(StandardCharsets.UTF_8));
  }

  private List<String> written() throws IOException {
    if (!Files.exists(out)) {
      return List.of();
    }
    try (Stream<Path> files = Files.walk(out)) {
      return files.filter(Files::isRegularFile)
          .map(file -> out.relativize(file).toString().replace('\\', '/')).sorted().toList();
    }
  }

  @Test
  void writesAFolderOfFilesForEachJob() throws IOException {
    Path other = write("other.JSON", SMALL.replace("Küche 1", "Hall"));
    Ran ran = Ran.with("plan", job.toString(), other.toString(), "--out", out.toString());
    assertThat(ran.exit()).isZero();
    assertThat(ran.complaints()).isEmpty();
    assertThat(written()).containsExactly("other/cut-card.csv", "other/floor-hall-1.svg", "other/job-sheet.html",
        "other/order.csv", "other/plan.json", "small job/cut-card.csv", "small job/floor-kuche-1-1.svg",
        "small job/job-sheet.html", "small job/order.csv", "small job/plan.json");
  }

  @Test
  void printsAShortSummary() {
    List<String> lines = Ran.with("plan", job.toString(), "--out", out.toString()).out().lines().toList();
    assertThat(lines.get(0)).isEqualTo("Küche (" + job + ")");
    // 2980 mm by 1980 mm = 5.9004 m²
    assertThat(lines.get(1)).isEqualTo("  floor        5.90 m² laid in 1 room, 1 bay");
    assertThat(lines).filteredOn(line -> line.startsWith("  boards ")).hasSize(1);
    assertThat(lines).filteredOn(line -> line.startsWith("  packs ")).hasSize(1);
    assertThat(lines).contains("  job sheet    " + out.resolve("small job").resolve("job-sheet.html"));
    assertThat(lines).hasSizeLessThan(12);
  }

  @Test
  void jsonGoesToStandardOutputAloneAndIsThePlanOfTheFile() throws IOException {
    Ran.with("plan", job.toString(), "--out", out.toString());
    Ran ran = Ran.with("plan", job.toString(), "--json");
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).isEqualTo(Files.readString(out.resolve("small job").resolve("plan.json"), StandardCharsets.UTF_8));
    assertThat(Docs.faultsOfPlan(ran.out().getBytes(StandardCharsets.UTF_8))).isEmpty();
  }

  @Test
  void dashReadsStandardInput() throws IOException {
    byte[] bytes = SMALL.getBytes(StandardCharsets.UTF_8);
    assertThat(Ran.reading(bytes, "plan", "-", "--json").out()).isEqualTo(Ran.with("plan", job.toString(), "--json").out());
    assertThat(Ran.reading(bytes, "plan", "-", "--out", out.toString()).exit()).isZero();
    assertThat(written()).contains("standard-input/plan.json");
  }

  @Test
  void sameJobGivesTheSameBytes() throws IOException {
    Path second = folder.resolve("again");
    Ran.with("plan", job.toString(), "--out", out.toString());
    Ran.with("plan", job.toString(), "--out", second.toString());
    for (String file : written()) {
      assertThat(Files.readAllBytes(second.resolve(file))).as(file).isEqualTo(Files.readAllBytes(out.resolve(file)));
    }
  }

  @Test
  void mistakesOfAllFilesAreListedAndNothingIsWritten() throws IOException {
    Path bad = folder.resolve("bad.json");
    Files.write(bad, BrokenJobs.read("many-mistakes-together"));
    Path cut = write("cut.json", SMALL.substring(0, 40));
    Ran ran = Ran.with("plan", job.toString(), bad.toString(), cut.toString(), folder + "/none.json", "--out", out.toString());
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(written()).isEmpty();
    assertThat(Files.exists(out.getParent())).isFalse();
    List<String> lines = ran.err().lines().toList();
    List<String> many = BrokenJobs.messages().get("many-mistakes-together");
    assertThat(lines.get(0)).isEqualTo(bad + ": 9 mistakes, nothing was planned or written");
    assertThat(lines.subList(1, 10)).isEqualTo(many);
    assertThat(lines.get(10)).isEqualTo(cut + ": 1 mistake, nothing was planned or written");
    assertThat(lines.get(11)).startsWith("line 1, column 41: the text ends too early");
    assertThat(lines.get(12)).isEqualTo(folder + "/none.json: cannot be read: there is no such file");
    assertThat(lines).hasSize(13);
  }

  @Test
  void eachBrokenJobIsRefusedWithExit2AndNothingWritten() throws IOException {
    for (Map.Entry<String, List<String>> broken : BrokenJobs.messages().entrySet()) {
      Ran ran = Ran.with("plan", BrokenJobs.FOLDER.resolve(broken.getKey() + ".json").toString(), "--out", out.toString());
      assertThat(ran.exit()).as(broken.getKey()).isEqualTo(2);
      assertThat(ran.out()).isEmpty();
      assertThat(ran.err().lines().skip(1).toList()).isEqualTo(broken.getValue());
      assertThat(ran.err()).doesNotContain("\tat ").doesNotContain("Exception");
    }
    assertThat(Files.exists(out)).isFalse();
  }

  @Test
  void fileOf50Megabytes() throws IOException {
    byte[] large = new byte[50_000_000];
    Arrays.fill(large, (byte) '\n');
    Path file = Files.write(folder.resolve("large.json"), large);
    Ran ran = Ran.with("plan", file.toString(), "--json");
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).contains("(the whole file): found more than 20 MB; a job file may have at most 20000000 bytes");
  }

  @Test
  void twoJobsOfOneNameAreRefused() throws IOException {
    Path same = write("elsewhere/Small Job.json", SMALL);
    Ran ran = Ran.with("plan", job.toString(), same.toString(), "--out", out.toString());
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).isEqualTo(same + ": the results go to a folder named after the file, and " + job
        + " has that name already; rename one of the two or plan them with different --out folders\n");
    assertThat(written()).isEmpty();
  }

  @Test
  void namesThatLeaveNoFolderAreRefused() throws IOException {
    for (String name : List.of(".json", "..json", "...json")) {
      assertThat(Ran.with("plan", write(name, SMALL).toString(), "--out", out.toString()).err())
          .as(name).endsWith("nothing is left of this name; rename the file\n");
    }
    assertThat(written()).isEmpty();
  }

  @Test
  void placeThatIsAFileIsRefusedBeforeAnyWork() throws IOException {
    Path file = write("taken", "x");
    Ran ran = Ran.with("plan", job.toString(), "--out", file.resolve("deeper").toString());
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).isEqualTo(
        "--out " + file.resolve("deeper") + ": " + file + " is a file; name a folder to write to\n");
  }

  @Test
  void resultsFolderThatIsAFileIsRefused() throws IOException {
    Files.createDirectories(out);
    Files.write(out.resolve("small job"), new byte[] {1});
    Ran ran = Ran.with("plan", job.toString(), "--out", out.toString());
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.complaints()).containsExactly(out.resolve("small job") + ": is a file; name another --out folder");
  }

  @Test
  void folderInPlaceOfAJobIsRefused() {
    Ran ran = Ran.with("plan", folder.toString(), "--out", out.toString());
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).isEqualTo(folder + ": cannot be read: it is a folder\n");
  }

  @Test
  void drawingsOfAnEarlierRunAreNamed() throws IOException {
    Path old = out.resolve("small job").resolve("floor-hall-2.svg");
    Files.createDirectories(old.getParent());
    Files.write(old, new byte[0]);
    Ran ran = Ran.with("plan", job.toString(), "--out", out.toString());
    assertThat(ran.out()).contains("  beware       not of this plan, left by an earlier run: floor-hall-2.svg\n");
    assertThat(Files.exists(old)).isTrue();
  }

  @Test
  void jsonOfTwoJobsIsRefused() throws IOException {
    Path other = write("other.json", SMALL);
    assertThat(Ran.with("plan", job.toString(), other.toString(), "--json")).isEqualTo(new Ran(2, "",
        "--json writes one plan, but there are 2 jobs; plan them one by one or use --out\n"));
  }

  @Test
  void placeIsAskedFor() {
    Ran ran = Ran.with("plan", job.toString());
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).contains("--out").endsWith("For help: floorcalc plan --help\n");
  }

  @Test
  void namesOfAnyKindGiveSafeFilesAndSoundMarkup() throws Exception {
    String rooms = "[{\"name\":\"=<b a='\\\"&amp;'> ]]>\",\"outline\":[[0,0],[900,0],[900,700],[0,700]]},"
        + "{\"name\":\"../../書斎\",\"outline\":[[0,0],[900,0],[900,700],[0,700]]},"
        + "{\"name\":\"غرفة\",\"outline\":[[0,0],[900,0],[900,700],[0,700]]},"
        + "{\"name\":\"" + "long ".repeat(39) + "\",\"outline\":[[0,0],[900,0],[900,700],[0,700]]}]";
    Path odd = write("odd & <names>.json", SMALL.substring(0, SMALL.indexOf("\"rooms\":")) + "\"rooms\":" + rooms + "}");
    Ran ran = Ran.with("plan", odd.toString(), "--out", out.toString());
    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(written()).hasSize(8).allMatch(name -> name.matches("odd & <names>/[a-z0-9.-]{1,60}"));
    for (String name : written()) {
      String text = Files.readString(out.resolve(name), StandardCharsets.UTF_8);
      if (name.endsWith(".svg") || name.endsWith(".html")) {
        DocumentBuilderFactory.newInstance().newDocumentBuilder()
            .parse(new InputSource(new StringReader(text.replace("<!DOCTYPE html>\n", ""))));
        assertThat(text).doesNotContain("<b a");
      }
    }
    assertThat(Docs.faultsOfPlan(Files.readAllBytes(out.resolve("odd & <names>").resolve("plan.json")))).isEmpty();
  }

  @Test
  void gapThatSplitsARoomGivesTwoBays() throws IOException {
    // two rooms of 2000 mm joined by a neck 15 mm wide, which a gap of 10 mm on each side closes
    Path neck = write("neck.json", SMALL.replace("[[0,0],[3000,0],[3000,2000],[0,2000]]",
        "[[0,0],[2000,0],[2000,900],[2500,900],[2500,0],[4500,0],[4500,2000],[2500,2000],[2500,915],[2000,915],[2000,2000],[0,2000]]"));
    Ran ran = Ran.with("plan", neck.toString(), "--out", out.toString());
    assertThat(ran.exit()).isZero();
    assertThat(written()).contains("neck/floor-kuche-1-1.svg", "neck/floor-kuche-1-2.svg");
  }
}
