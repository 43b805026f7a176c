package floorcalc.examples;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import floorcalc.examples.job.BrokenJobs;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code plan --lines}. */
class LinesCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String SMALL = "{\"format\":\"floorcalc-job/1\",\"title\":\"Küche\",\"board\":{\"length\":2200,"
      + "\"coverWidth\":185,\"thickness\":14,\"perPack\":6,\"construction\":\"engineered\"},"
      + "\"rooms\":[{\"name\":\"Küche\",\"outline\":[[0,0],[3000,0],[3000,2000],[0,2000]]}]}";

  @TempDir
  private Path folder;

  private static Ran lines(String input, String... more) {
    List<String> args = new ArrayList<>(List.of("plan", "--lines"));
    args.addAll(List.of(more));
    return Ran.reading(input.getBytes(UTF_8), args.toArray(String[]::new));
  }

  @Test
  void aPlanOnOneLineIsTheSameTreeAsThePlanFile() throws IOException {
    Ran ran = lines(SMALL + "\n");
    assertThat(ran.exit()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).matches("[ -~]+\n");
    assertThat(JSON.readTree(ran.out())).isEqualTo(JSON.readTree(Ran.reading(SMALL.getBytes(UTF_8), "plan", "-", "--json").out()));
    assertThat(Docs.faultsOfPlan(ran.out().getBytes(UTF_8))).isEmpty();
  }

  /** Each broken job that is one line, or can be made one, is refused with the places and words of the file. */
  @Test
  void aRefusalSaysAllThatIsSaidOfAFile() throws IOException {
    StringBuilder input = new StringBuilder();
    List<List<String>> expected = new ArrayList<>();
    for (Map.Entry<String, List<String>> broken : BrokenJobs.messages().entrySet()) {
      String text = new String(BrokenJobs.read(broken.getKey()), UTF_8);
      if (!broken.getKey().matches("(syntax|file)-.*") && !text.contains("\r") && broken.getValue().stream().noneMatch(line -> line.contains("line"))) {
        input.append(text.replace("\n", " ")).append('\n');
        expected.add(broken.getValue());
      }
    }
    assertThat(expected).hasSizeGreaterThan(100);
    Ran ran = lines(input.toString());
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).isEmpty();
    List<String> answers = ran.out().lines().toList();
    assertThat(answers).hasSize(expected.size());
    for (int i = 0; i < answers.size(); i++) {
      JsonNode refusal = JSON.readTree(answers.get(i));
      assertThat(Docs.faultsOfRefusal(answers.get(i).getBytes(UTF_8))).isEmpty();
      assertThat(refusal.get("line").intValue()).isEqualTo(i + 1);
      assertThat(refusal.get("outcome").textValue()).isEqualTo("refused");
      List<String> said = new ArrayList<>();
      refusal.get("mistakes").forEach(mistake -> said.add(mistake.get("pointer").textValue() + ": " + mistake.get("message").textValue()));
      assertThat(said).isEqualTo(expected.get(i).stream().map(line -> line.replaceFirst("^\\((the whole file|and more)\\)", "")).toList());
    }
  }

  @Test
  void whereTheTextIsNotJsonTheColumnIsSaid() throws IOException {
    Ran ran = lines("\uFEFF\n" + SMALL.replace("3000,0", "3000,,0") + "\n{\"a\":\r,}\n");
    List<String> answers = ran.out().lines().toList();
    assertThat(answers).hasSize(2).allSatisfy(line -> assertThat(Docs.faultsOfRefusal(line.getBytes(UTF_8))).isEmpty());
    JsonNode first = JSON.readTree(answers.get(0));
    assertThat(first.get("line").intValue()).isEqualTo(2);
    assertThat(first.at("/mistakes/0/pointer").textValue()).isEmpty();
    // characters, not bytes: the title and the name of the room before it have an ü each
    assertThat(first.at("/mistakes/0/column").intValue()).isEqualTo(SMALL.indexOf("3000,0") + 1 + "3000,".length());
    assertThat(JSON.readTree(answers.get(1)).at("/mistakes/0/column").intValue()).isEqualTo(7);
  }

  @Test
  void bytesThatAreNotUtf8() throws IOException {
    byte[] input = (SMALL + "\n" + SMALL + "\n").getBytes(UTF_8);
    input[new String(input, UTF_8).indexOf("Küche") + 1] = (byte) 0xFF;
    Ran ran = Ran.reading(input, "plan", "--lines");
    assertThat(ran.exit()).isEqualTo(2);
    List<String> answers = ran.out().lines().toList();
    assertThat(answers.get(0)).contains("\"line\":1,").contains("found a byte that is not UTF-8");
    assertThat(answers.get(1)).startsWith("{\"format\":\"floorcalc-plan/1\",");
  }

  @Test
  void aLineLongerThanAJobMayBeIsRefusedAndTheNextOneAnswered() throws IOException {
    byte[] long21 = new byte[21_000_000];
    Arrays.fill(long21, (byte) ' ');
    ByteArrayOutputStream input = new ByteArrayOutputStream();
    input.write(long21);
    input.write(("\r\n" + SMALL).getBytes(UTF_8));
    Ran ran = Ran.reading(input.toByteArray(), "plan", "--lines");
    assertThat(ran.exit()).isEqualTo(2);
    List<String> answers = ran.out().lines().toList();
    assertThat(answers).hasSize(2);
    assertThat(answers.get(0)).contains("\"line\":1,").contains("\"found more than 20 MB; a job file may have at most 20000000 bytes\"");
    assertThat(answers.get(1)).startsWith("{\"format\":\"floorcalc-plan/1\",");
  }

  /** The example on the page is what is answered to the line that it speaks of. */
  @Test
  void theRefusalOnThePageIsARealOne() throws IOException {
    String page = Docs.page("json-files.md");
    int from = page.indexOf("{\n  \"format\": \"floorcalc-refusal/1\"");
    String shown = page.substring(from, page.indexOf("```", from));
    Ran ran = lines("\n\n" + SMALL.replace("coverWidth", "coverwidth"));
    assertThat(JSON.readTree(ran.out())).isEqualTo(JSON.readTree(shown));
    assertThat(Docs.faultsOfRefusal(shown.getBytes(UTF_8))).isEmpty();
  }

  @Test
  void exitCodes() {
    assertThat(lines("")).isEqualTo(new Ran(0, "", ""));
    assertThat(lines("\r\n \n")).isEqualTo(new Ran(0, "", ""));
    assertThat(lines(SMALL).exit()).isZero();
    assertThat(lines(SMALL + "\n{}\n" + SMALL).exit()).isEqualTo(2);
  }

  @Test
  void aFileInPlaceOfStandardInput() throws IOException {
    Path file = Files.writeString(folder.resolve("jobs.txt"), SMALL + "\r\n{}\r\n", UTF_8);
    Ran typed = lines(SMALL + "\n{}");
    assertThat(lines("", file.toString())).isEqualTo(typed);
    assertThat(lines(SMALL + "\n{}", "-")).isEqualTo(typed);
    assertThat(lines(SMALL + "\n{}", "--threads", "3")).isEqualTo(typed);
    assertThat(lines("", folder + "/none.txt")).isEqualTo(new Ran(2, "", folder + "/none.txt: cannot be read: there is no such file\n"));
  }

  @Test
  void whatDoesNotGoTogether() {
    assertThat(lines("", "a", "b").err()).isEqualTo("--lines reads one file of jobs, but there are 2; join them or answer them one by one\n");
    assertThat(lines("", "--threads", "0").err()).isEqualTo("--threads 0: must be a whole number from 1 to 256\n");
    assertThat(lines("", "--threads", "257").exit()).isEqualTo(2);
    assertThat(Ran.with("plan", "--json", "--threads", "2", "-")).isEqualTo(new Ran(2, "", "--threads goes with --lines\n"));
    assertThat(Ran.with("plan", "--json")).isEqualTo(new Ran(2, "", "name the jobs to plan, or - for standard input\n"));
    assertThat(lines("", "--json").exit()).isEqualTo(2);
  }

  @Test
  void aFaultBetweenLinesIsOneOfTheProgram() {
    InputStream failing = new InputStream() {
      @Override
      public int read() {
        throw new IllegalStateException("a");
      }
    };
    Ran ran = Ran.reading(failing, "plan", "--lines", "--trace");
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).startsWith("internal fault: IllegalStateException (a).").contains("\tat floorcalc.examples.");
  }
}
