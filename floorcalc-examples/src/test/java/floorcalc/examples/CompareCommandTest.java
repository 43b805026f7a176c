package floorcalc.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class CompareCommandTest {
  private static final String JOB = "{\"format\":\"floorcalc-job/1\",\"title\":\"Hall\",\"board\":{\"length\":2200,"
      + "\"coverWidth\":185,\"thickness\":14,\"perPack\":6,\"construction\":\"engineered\"},"
      + "\"rooms\":[{\"name\":\"Hall\",\"outline\":[[0,0],[5220,0],[5220,3000],[0,3000]]}]}";

  @Test
  void showsBoardsPacksAndCutsForWiderOffsets() {
    Ran ran = Ran.reading(JOB.getBytes(StandardCharsets.UTF_8), "compare", "-");
    assertThat(ran.exit()).isZero();
    assertThat(ran.complaints().stream().filter(line -> !line.startsWith("comparing"))).isEmpty();
    assertThat(ran.out().lines().findFirst()).contains(
        "joints asked for  smallest found  boards  packs  cuts  H and stair patterns  longest leftover");
    assertThat(ran.out().lines().skip(1)).isNotEmpty().allMatch(line -> line.matches(
        " +[0-9]+ mm +[0-9]+ mm +[0-9]+ +[0-9]+ +[0-9]+ +[0-9]+ +[0-9]+ mm  (no dearer|[0-9]+ packs? more)"));
    assertThat(ran.out().lines().skip(1)).anyMatch(line -> line.endsWith("no dearer"));
    // Laid 5200 by 2980: 17 rows, the last one ripped. By length 17 rows of 5200 take (17 · 5200 + 51 · 3) / 2203 = 40.2, so 41.
    assertThat(ran.out().lines().skip(1).map(line -> line.trim().split(" +")[4])).contains("41");
  }

  @Test
  void aJobThatCannotBePlannedIsRefused() {
    Ran ran = Ran.reading("{}".getBytes(StandardCharsets.UTF_8), "compare", "-");
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.complaints()).isNotEmpty();
  }
}
