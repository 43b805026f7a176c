package floorcalc.examples.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import floorcalc.examples.Docs;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Broken jobs are refused with every message pinned. */
class BrokenJobsTest {
  /** What a schema cannot say, so that the published one accepts these. */
  private static final Set<String> BEYOND_THE_SCHEMA = Set.of("board-length-too-fine", "board-measured-of-one-board", "board-mix-length-twice",
      "board-mix-longer-than-sold", "board-thickness-zero", "door-away-from-wall", "door-in-two-walls",
      "door-step-too-high", "door-without-width", "laying-direction-too-fine", "laying-end-piece-longer-than-board",
      "laying-gap-too-wide", "laying-joint-offset-of-a-board", "laying-kerf-longer-than-board", "pipe-in-void",
      "pipe-outside", "room-corner-twice", "room-first-corner-repeated", "room-huge", "room-name-twice", "room-no-area",
      "room-smaller-than-gap", "room-swallowed-by-gap", "room-void-across-wall",
      "room-void-crosses-itself", "room-void-outside", "room-voids-overlap", "room-wall-runs-back", "room-walls-cross",
      "room-walls-touch", "board-length-inches-too-many", "site-gap-more-than-half-the-span", "site-line-name-twice",
      "site-line-places-too-few", "site-temperature-of-an-oven", "survey-arc-of-more-than-half-a-circle",
      "survey-offset-beyond-the-wall", "survey-offset-goes-back", "survey-offset-of-an-arc", "survey-tie-to-itself",
      "survey-two-arcs-of-a-wall", "survey-arcs-that-meet",
      "survey-offsets-across-the-room", "survey-without-a-diagonal", "survey-of-two-shapes",
      "survey-wall-longer-than-the-rest", "survey-turns-do-not-go-round", "survey-right-angles-without-sides",
      "survey-void-outside", "survey-door-beyond-the-wall", "survey-swallowed-by-gap", "door-along-two-walls", "door-beyond-the-wall", "pipe-through-the-other-wall",
      "break-without-length", "break-through-the-wall", "opening-in-the-open", "opening-name-twice");

  @TestFactory
  Stream<DynamicTest> eachBrokenJobIsRefusedWithItsMessages() throws IOException {
    return BrokenJobs.messages().entrySet().stream().map(job -> DynamicTest.dynamicTest(job.getKey(), () ->
        assertThat(mistakes(BrokenJobs.read(job.getKey()))).isEqualTo(job.getValue())));
  }

  @TestFactory
  Stream<DynamicTest> theSchemaRefusesWhatASchemaCanRefuse() throws IOException {
    return BrokenJobs.messages().keySet().stream()
        .filter(name -> !name.startsWith("syntax-") && !name.equals("top-name-twice")
            && !name.equals("board-length-beyond-all-bounds"))
        .map(name -> DynamicTest.dynamicTest(name, () ->
            assertThat(Docs.faultsOfJob(BrokenJobs.read(name)).isEmpty()).isEqualTo(BEYOND_THE_SCHEMA.contains(name))));
  }

  @Test
  void theListHoldsEachFileOfTheFolder() throws IOException {
    try (Stream<Path> files = Files.list(BrokenJobs.FOLDER)) {
      List<String> names = files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".json"))
          .map(name -> name.substring(0, name.length() - 5)).sorted().toList();
      assertThat(BrokenJobs.messages().keySet()).containsExactlyInAnyOrderElementsOf(names);
      assertThat(names).hasSizeGreaterThan(60);
    }
  }

  @Test
  void eachMessageIsOneLineThatStartsWithItsPlace() throws IOException {
    for (Map.Entry<String, List<String>> job : BrokenJobs.messages().entrySet()) {
      for (String message : job.getValue()) {
        assertThat(message).as(job.getKey())
            .matches("(/\\S+|line [0-9]+, column [0-9]+|\\(the whole file\\)): \\S.*").hasSizeLessThan(320);
      }
    }
  }

  @Test
  void fileOf50Megabytes() {
    byte[] blanks = new byte[50_000_000];
    Arrays.fill(blanks, (byte) ' ');
    assertThat(mistakes(blanks)).containsExactly(
        "(the whole file): found more than 20 MB; a job file may have at most 20000000 bytes");
  }

  @Test
  void fileOfNineteenMegabytesIsRead() throws IOException {
    byte[] padded = Arrays.copyOf("{}".getBytes(StandardCharsets.UTF_8), 19_000_000);
    Arrays.fill(padded, 2, padded.length, (byte) '\n');
    assertThat(mistakes(padded)).containsExactly(
        "/format: missing; must be \"floorcalc-job/1\"",
        "/title: missing; must be a text that is not blank",
        "/board: missing; must be an object: the boards as they are sold",
        "/rooms: missing; must be an array of at least one room");
  }

  @Test
  void moreMistakesThanAreListedAreCounted() throws IOException {
    String job = new String(Files.readAllBytes(Path.of("src/test/resources/jobs/least.json")), StandardCharsets.UTF_8)
        .replace("[4195,3620]", "[-1e9,0],".repeat(1500) + "[4195,3620]");
    List<String> mistakes = mistakes(job.getBytes(StandardCharsets.UTF_8));
    assertThat(mistakes).hasSize(1001);
    assertThat(mistakes.get(999))
        .isEqualTo("/rooms/0/outline/1001/0: found -1000000000 mm; must be a length from -10 km to 10 km");
    assertThat(mistakes.get(1000)).isEqualTo("(and more): 500 more mistakes are not listed; mend these first");
  }

  @Test
  void moreValuesThanAnyJobNeeds() {
    // two million zeros and the array itself are one value too many; the last zero stands in column 2 x 2 000 000
    assertThat(mistakes(("[" + "0,".repeat(2_000_000) + "0]").getBytes(StandardCharsets.UTF_8)))
        .containsExactly("line 1, column 4000000: found more than 2000000 values; split the job");
  }

  @Test
  void numberOfTenThousandDigits() throws IOException {
    String job = new String(BrokenJobs.read("board-length-zero"), StandardCharsets.UTF_8)
        .replace("\"length\": 0", "\"length\": " + "9".repeat(10_000));
    assertThat(mistakes(job.getBytes(StandardCharsets.UTF_8))).hasSize(1).first().asString()
        .startsWith("line 5, column 15").endsWith(": found a number or a text that is far too long; no value of a job is");
  }

  static List<String> mistakes(byte[] json) {
    BadJobException bad = catchThrowableOfType(BadJobException.class, () -> JobReader.read(json));
    assertThat(bad).isNotNull();
    assertThat(bad.getMessage()).isEqualTo(String.join("\n", bad.mistakes().stream().map(Mistake::toString).toList()));
    return bad.mistakes().stream().map(Mistake::toString).toList();
  }
}
