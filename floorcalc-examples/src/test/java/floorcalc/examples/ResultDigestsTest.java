package floorcalc.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResultDigestsTest {
  @TempDir
  private Path folder;

  @Test
  void aDigestFollowsFromWhatIsMade() throws IOException {
    Path job = folder.resolve("parlour.json");
    Files.copy(Path.of("demo", "gullhaven-parlour.json"), job);
    Path broken = folder.resolve("broken.json");
    Files.copy(Path.of("src", "test", "resources", "broken-jobs", "board-length-zero.json"), broken);
    Path rooms = folder.resolve("rooms.csv");
    Files.writeString(rooms, "# invented\nid,wkt_m\nA,\"POLYGON ((0 0, 3 0, 3 2, 0 2, 0 0))\"\n", StandardCharsets.UTF_8);
    List<String> parts = List.of("jobs=" + folder, "reports=" + folder, "rooms=" + rooms, "stock=0-1", "stock=1-2");

    List<String> lines = digests(parts);
    assertThat(lines).hasSize(5).allMatch(line -> line.matches(".+ [0-9a-f]{64}"));
    assertThat(lines.stream().map(line -> line.split(" ")[1]).distinct()).hasSize(5);
    assertThat(digests(parts)).isEqualTo(lines);

    Files.writeString(job, Files.readString(job, StandardCharsets.UTF_8).replace("\"title\": \"", "\"title\": \"Another "),
        StandardCharsets.UTF_8);
    assertThat(digests(parts.subList(0, 1))).doesNotContain(lines.get(0));
  }

  private static List<String> digests(List<String> parts) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ResultDigests.run(parts, new PrintStream(bytes, true, StandardCharsets.UTF_8));
    return bytes.toString(StandardCharsets.UTF_8).lines().toList();
  }
}
