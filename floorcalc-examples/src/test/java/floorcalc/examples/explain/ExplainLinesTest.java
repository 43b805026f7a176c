package floorcalc.examples.explain;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.examples.Ran;
import org.junit.jupiter.api.Test;

/** Start lines and irregular walls on the command line; the pages show the working, see CommandLinePageTest. */
class ExplainLinesTest {
  private static String explained(String... args) {
    Ran ran = Ran.with(args);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.exit()).isZero();
    return ran.out();
  }

  private static String refused(String... args) {
    Ran ran = Ran.with(args);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).doesNotContain("\tat ").doesNotContain("Exception");
    return ran.err();
  }

  /** 3 mm of the width and 20 rows of 0.2 mm are 5 mm together; 10 mm are two of them: 2.28 % below. */
  @Test
  void stripRisk() {
    assertThat(explained("explain", "strip-risk", "--strip", "80", "--pitch", "185", "--deviation", "3", "--rows", "20",
        "--pitch-deviation", "0.2")).contains("= 5 mm").contains("= 0.022750");
    assertThat(explained("explain", "strip-risk", "--strip", "80", "--pitch", "185", "--deviation", "5")).contains("= 0.022750");
  }

  /** 1000 = 5 x 185 + 75 and 1895 = 10 x 185 + 45; with a row on the line 167.5 and 137.5. */
  @Test
  void bothWaysFromALine() {
    assertThat(explained("explain", "both-ways", "--before", "1000", "--beyond", "1895", "--pitch", "185")).contains("= 167.5 mm")
        .contains("= 137.5 mm");
  }

  /** Without a trim all 14 mm are scribed. */
  @Test
  void scribeWithoutATrim() {
    assertThat(explained("explain", "scribe", "--wall", "0,0 2m,14 4m,2", "--pitch", "185")).contains("at 0 mm: scribe 14 mm, width left 171 mm");
  }

  /** Along a line at 3 : 4, (2000, 2000) from (1000, 500): 600 over it and 1700 along: 3 rows of 185 and 45. */
  @Test
  void placeAtAnAngle() {
    assertThat(explained("explain", "angle", "--line", "1000,500 5000,3500", "--wall", "0,0 1000,0", "--pitch", "185", "--at", "2000,2000"))
        .contains("(2000 mm, 2000 mm): row 4, 45 mm over its row line, 1700 mm along it");
  }

  /** Along y the stops are those left and right: the floor is 4000 = 21 x 185 + 115 wide. */
  @Test
  void startLineAlongALine() {
    assertThat(explained("explain", "start-line", "--room", "hall: 0,0 4000,0 4000,3000 0,3000", "--line", "4000,0 4000,1", "--pitch",
        "185", "--step", "50")).contains("a: hall, wall 2, floor begins at 0 mm").contains("\n185: 185 115 | 115 | 112");
  }

  @Test
  void mistakesAreSaid() {
    assertThat(refused("explain", "start-line", "--room", "0,0 1,0 1,1", "--pitch", "185")).contains("write a name, a colon and the outline");
    assertThat(refused("explain", "scribe", "--wall", "0,0", "--pitch", "185")).contains("distances at two places at least");
    assertThat(refused("explain", "scribe", "--wall", "0 0", "--pitch", "185")).contains("found [0] as a distance of the wall");
    assertThat(refused("explain", "angle", "--line", "0,0", "--wall", "0,0 1,0", "--pitch", "185")).contains("write two points");
    assertThat(refused("explain", "angle", "--line", "0,0 1,1", "--wall", "0,0 1,0", "--pitch", "185", "--at", "1,1 2,2"))
        .contains("write one point");
    assertThat(refused("explain", "laying-order", "--room", "hall: 0,10 10,10 10,20", "--line", "0,0 1,0", "--pitch", "185"))
        .contains("misses the floor");
  }
}
