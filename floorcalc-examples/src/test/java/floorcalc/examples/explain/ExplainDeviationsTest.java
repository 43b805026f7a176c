package floorcalc.examples.explain;

import static floorcalc.examples.explain.Explained.explained;
import static floorcalc.examples.explain.Explained.refused;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What goods, laid floors, corners, levels and tapes may deviate, typed. */
class ExplainDeviationsTest {
  @TempDir
  private Path folder;

  @Test
  void sizesOfGoods() {
    assertThat(explained("goods", "--board", "2200", "--width", "185", "--thickness", "14"))
        .contains("\nmet: thickness of the boards, EN 13489 two layers: 14 mm, 9 mm to 22 mm  [EN 13489").doesNotContain("note:");
    assertThat(explained("goods", "--board", "1800,200", "--width", "90", "--thickness", "13", "--solid"))
        .contains("\nnote: board: boards with a thickness of 13 mm are outside the sizes of 'EN 13226' (at least 14 mm): check")
        .contains("\nnot met: length of the boards, EN 13226: 200 mm, more than 250 mm");
    assertThat(explained("goods", "--board", "3 m", "--width", "120", "--thickness", "21", "--solid", "--wood", "Scots pine")).contains("EN 13990");
    assertThat(explained("goods", "--board", "3 m", "--width", "185", "--thickness", "14", "--sizes", "EN 13489 Austrian foreword"))
        .contains("not met: length of the boards, EN 13489 Austrian foreword: 3000 mm, 1200 mm to 2400 mm");
  }

  /** 5 in is 127 mm; over 3 1/4 in .008 in is 0.2032 mm. The mean of 127.3 and 127.1 is 127.2 mm. */
  @Test
  void aSampleOfGoods() {
    assertThat(explained("goods", "--board", "6 ft", "--width", "5 in", "--thickness", "3/4 in", "--solid", "--set", "NWFA/NOFMA factory finished",
        "--widths", "127.3,127.1", "--moisture", "11")).contains("d = abs(r - n)", "\n  = 0.3 mm",
            "\nnot met: width of the boards, NWFA/NOFMA factory finished: farthest off 127.3 mm, by 0.3 mm of 2, 1 beyond, plus or minus 0.2032 mm",
            "to do: do not lay these boards yet", "\nnote: board: the 2 boards measured are 0.2 mm wider than 127 mm on the average",
            "\nwarning: 'NWFA/NOFMA factory finished' is for wood of 6 % to 10 %");
    String[] board = {"goods", "--board", "2200", "--width", "185", "--thickness", "14"};
    assertThat(refused(with(board, "--widths", "185"))).contains("say by --set what the boards may deviate");
    assertThat(refused(with(board, "--set", "EN 13489"))).contains("--set is for a sample");
    assertThat(refused(with(board, "--set", "x", "--widths", "185"))).contains("the sets are: 'NWFA/NOFMA unfinished'");
    assertThat(refused(with(board, "--set", "NF DTU 51.1", "--widths", "185"))).contains("is for a laid floor");
    assertThat(refused(with(board, "--set", "EN 13489", "--widths", "18.5"))).contains("is the unit right?");
  }

  private static String[] with(String[] first, String... more) {
    return Stream.concat(Arrays.stream(first), Arrays.stream(more)).toArray(String[]::new);
  }

  /** 2 % of 90 mm is 1.8 mm. */
  @Test
  void aLaidFloor() {
    assertThat(explained("handover", "--width", "90", "--set", "NF DTU 51.1", "--joints", "0.4,1.9", "--cupping", "0.3"))
        .contains("a = min(p * w / 100, m), rounded down to a whole nanometre", "\nmet: cupping of the boards, NF DTU 51.1: greatest 0.3 mm of 1,",
            "\nnot met: joint between boards, NF DTU 51.1: greatest 1.9 mm of 2, 1 beyond, 2 % of the width, at most 2 mm (1.8 mm at 90 mm)");
    assertThat(explained("handover", "--width", "90", "--set", "SNiP 3.04.01", "--joints", "0.4", "--area", "20"))
        .contains("warning: joint between boards: 'SNiP 3.04.01' asks for at least 5 readings");
    assertThat(refused("handover", "--width", "90", "--set", "EN 13489", "--joints", "1")).contains("'EN 13489' is for boards before laying",
        "'NF DTU 51.11'");
  }

  /** Over 4000.4 mm DIN 18202 allows 12 mm. */
  @Test
  void corners() {
    assertThat(explained("squareness", "--outline", "0,0 5000,0 5060,4000 0,4000"))
        .contains("e = m - abs(o)", "\nmet: corner 1 square, DIN 18202: 0 mm over 5000 mm, at most 12 mm for walls over 3000 mm up to 6000 mm",
            "\nnot met: corner 2 square, DIN 18202: 60 mm over 4000.449");
    assertThat(refused("squareness", "--outline", "0,0 5000,0 5060,4000 0,4000", "--angles", "x")).contains("the sets are: 'DIN 18202'");
  }

  /** 3 m by 1 m falling 10 mm along its length: 9 mm are allowed over 3 m, and nothing falls across. */
  @Test
  void levels() throws IOException {
    Path csv = Files.writeString(folder.resolve("room.csv"), "x (m),y (m),z (mm)\n0,0,10\n1.5,0,5\n3,0,0\n0,1,10\n1.5,1,5\n3,1,0\n");
    assertThat(explained("levels", csv.toString(), "--level", "NHBC 9.1.5")).contains("level-allowed",
        "\n  level between the ends of a line across, NHBC 9.1.5: 10 mm over 3000 mm at line at y = 0 mm, from 0 mm to 3000 mm, at most 3 mm per m,"
            + " floors up to 6000 mm across (here 9 mm), not met  [NHBC Standards, NHBC, 2020, clause 9.1.5 (read in the source)]\n    find out why");
    assertThat(explained("levels", csv.toString(), "--level", "BS 8204 datum", "--datum", "20")).contains("level from the level line, BS 8204 datum:"
        + " 20 mm at x = 3000 mm, y = 0 mm, at most 15 mm, not met");
    assertThat(explained("levels", csv.toString(), "--level", "BS 8204 datum")).contains("not measured", "say how high the level line is");
    assertThat(refused("levels", csv.toString(), "--datum", "20")).contains("name them with --level");
    assertThat(refused("levels", csv.toString(), "--level", "x")).contains("the sets are: 'BS 8204 datum'");
  }

  @Test
  void tapes() {
    assertThat(explained("tape", "--length", "5 m", "--limit", "3 mm")).contains("  = 1.5875 mm  [Handbook 44, NIST, section 5.52", "  = 1 mm  [");
    assertThat(explained("tape", "--length", "6 ft")).contains("  = 0.79375 mm");
    assertThat(refused("tape", "--length", "50 m")).contains("measure in parts");
  }
}
