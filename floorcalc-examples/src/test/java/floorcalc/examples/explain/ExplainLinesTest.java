package floorcalc.examples.explain;

import static floorcalc.examples.explain.Explained.explained;
import static floorcalc.examples.explain.Explained.refused;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.examples.Ran;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Start lines and irregular walls on the command line; the pages show the working, see CommandLinePageTest. */
class ExplainLinesTest {
  @TempDir
  private Path folder;

  /** 3 mm of the width and 20 rows of 0.2 mm are 5 mm together; 10 mm are two of them: 2.28 % below. */
  @Test
  void stripRisk() {
    assertThat(explained("strip-risk", "--strip", "80", "--pitch", "185", "--deviation", "3", "--rows", "20",
        "--pitch-deviation", "0.2")).contains("= 5 mm").contains("= 0.022750");
    assertThat(explained("strip-risk", "--strip", "80", "--pitch", "185", "--deviation", "5")).contains("= 0.022750");
  }

  /** 1000 = 5 x 185 + 75 and 1895 = 10 x 185 + 45; with a row on the line 167.5 and 137.5. */
  @Test
  void bothWaysFromALine() {
    assertThat(explained("both-ways", "--before", "1000", "--beyond", "1895", "--pitch", "185")).contains("= 167.5 mm")
        .contains("= 137.5 mm");
  }

  /** 13 rows of 0.3 mm are 3.9 mm; 2 mm in 3 m are 4 mm over 6 m. */
  @Test
  void closure() {
    assertThat(explained("closure", "--arm", "left: 0, 13, 185.3", "--arm", "right: 0, 13, 185, 0.05, 2, 3000", "--joined", "6 m",
        "--allowed", "0.5")).contains("= 3.9 mm").contains("= -4 mm").contains("warning: left, right: the row lines miss each other by 3.9 mm");
    assertThat(refused("closure", "--arm", "left: 0, 13, 185", "--joined", "6 m", "--allowed", "0")).contains("given twice");
    assertThat(refused("closure", "--arm", "left", "--joined", "6 m", "--allowed", "0")).contains("write a name, a colon");
    assertThat(refused("closure", "--arm", "left: 0, 13, 0", "--joined", "6 m", "--allowed", "0")).contains("more than 0 mm");
  }

  /** Without a trim all 14 mm are scribed. */
  @Test
  void scribeWithoutATrim() {
    assertThat(explained("scribe", "--wall", "0,0 2m,14 4m,2", "--pitch", "185")).contains("at 0 mm: scribe 14 mm, width left 171 mm");
  }

  /** Along a line at 3 : 4, (2000, 2000) from (1000, 500): 600 over it and 1700 along: 3 rows of 185 and 45. */
  @Test
  void placeAtAnAngle() {
    assertThat(explained("angle", "--line", "1000,500 5000,3500", "--wall", "0,0 1000,0", "--pitch", "185", "--at", "2000,2000"))
        .contains("(2000 mm, 2000 mm): row 4, 45 mm over its row line, 1700 mm along it");
  }

  /** Along y the stops are those left and right: the floor is 4000 = 21 x 185 + 115 wide. */
  @Test
  void startLineAlongALine() {
    assertThat(explained("start-line", "--room", "hall: 0,0 4000,0 4000,3000 0,3000", "--line", "4000,0 4000,1", "--pitch",
        "185", "--step", "50")).contains("a: hall, wall 2, floor begins at 0 mm").contains("\n185: 185 115 | 115 | 112")
        .contains("row line on the line given, first row 185: 185 115\n");
    // along x through 1000: 1000 = 5 x 185 + 75 below and 2000 = 10 x 185 + 150 above
    assertThat(explained("start-line", "--room", "hall: 0,0 4000,0 4000,3000 0,3000", "--line", "0,1000 1,1000", "--pitch",
        "185")).contains("row line on the line given, first row 75: 75 150\n");
  }

  private static final String FLAT = """
      {"format": "floorcalc-job/1", "title": "Three rooms in a row (invented)",
       "board": {"length": 2200, "coverWidth": 185, "thickness": 14, "perPack": 6, "construction": "solid"},
       "laying": {"expansionGap": 10},
       "rooms": [
        {"name": "Hall", "outline": [[0, 0], [5000, 0], [5000, 3900], [0, 3900]],
         "doors": [{"name": "arch", "from": [2500, 3900], "to": [1000, 3900], "leadsTo": "Dining room"}]},
        {"name": "Dining room", "outline": [[0, 4000], [5000, 4000], [5000, 7900], [0, 7900]],
         "doors": [{"name": "arch", "from": [1000, 4000], "to": [2500, 4000], "leadsTo": "Hall"},
                   {"name": "study door", "from": [2900, 7900], "to": [2000, 7900], "leadsTo": "Study"}]},
        {"name": "Study", "outline": [[0, 8000], [5000, 8000], [5000, 11900], [0, 11900]],
         "doors": [{"name": "study door", "from": [2000, 8000], "to": [2900, 8000], "leadsTo": "Dining room"}]}]}
      """;

  private String breaks(String job, String... more) throws IOException {
    Path file = Files.writeString(folder.resolve("flat.json"), job);
    List<String> args = new ArrayList<>(List.of("explain", "breaks", file.toString(), "--percent", "0.25", "--now", "8", "--driest", "7",
        "--dampest", "9"));
    args.addAll(List.of(more));
    Ran ran = Ran.with(args.toArray(String[]::new));
    assertThat(ran.err()).doesNotContain("\tat ").doesNotContain("Exception");
    return ran.out() + ran.err();
  }

  /**
   * 3 x 3900 + 2 x 100 = 11900 mm of 0.25 % are 29.75 mm, 14.875 mm on each side of which 10 are there. With a break at the arch 4000
   * and 8000 mm are left, 10 and 20 mm: 5 + 10 = 15 mm at the arch. The other way it is 5000 mm: 12.5 mm.
   */
  @Test
  void breaksWhereTheWidthIsCountedThroughDoors() throws IOException {
    assertThat(breaks(FLAT)).isEqualTo("""
        boards at 0°, a gap of 10 mm on each side
          Hall + Dining room + Study, 11900 mm across the boards, 5000 mm along them: swells 29.75 mm in total, needs 14.875 mm on each side,\
         4.875 mm short; too wide, at most 8000 mm
          break at Hall, arch: 15 mm in total; then
            Hall, 4000 mm across the boards, 5000 mm along them: swells 10 mm in total, needs 5 mm on each side
            Dining room + Study, 8000 mm across the boards, 5000 mm along them: swells 20 mm in total, needs 10 mm on each side
        boards at 90°, a gap of 10 mm on each side
          Hall + Dining room + Study, 5000 mm across the boards, 11900 mm along them: swells 12.5 mm in total, needs 6.25 mm on each side
        """);
    assertThat(breaks(FLAT, "--direction", "0")).contains("width-across: ").contains("break at Hall, arch: 15 mm in total; then");
  }

  @Test
  void doorsThatDoNotFaceEachOtherAreSaid() throws IOException {
    assertThat(breaks(FLAT.replace("[2000, 8000], \"to\": [2900, 8000], \"leadsTo\": \"Dining room\"",
        "[2000, 8000], \"to\": [2900, 8000], \"leadsTo\": \"Garden\"")))
        .contains("door 'study door' leads from 'Dining room' to 'Study', but no door of 'Study' is left that leads back");
    assertThat(breaks(FLAT.replace("[1000, 4000], \"to\": [2500, 4000]", "[1000, 7900], \"to\": [1900, 7900]")))
        .contains("lead to each other, but are 4011 mm apart; give both rooms in the same coordinates");
    assertThat(breaks(FLAT.replace("\"laying\"", "\"layin\""))).contains("1 mistake, nothing was worked out").contains("/layin: unknown field");
  }

  /** Rooms drawn without the wall between them: their doors lie on one line. */
  @Test
  void doorsOnOneLineJoinRooms() throws IOException {
    String joined = FLAT.replace("4000", "3900").replace("7900], [0, 7900", "7800], [0, 7800").replace("7900]", "7800]")
        .replace("8000", "7800").replace("11900", "11700");
    assertThat(breaks(joined)).contains("Hall + Dining room + Study, 11700 mm across the boards");
  }

  @Test
  void mistakesAreSaid() {
    assertThat(refused("start-line", "--room", "0,0 1,0 1,1", "--pitch", "185")).contains("write a name, a colon and the outline");
    assertThat(refused("scribe", "--wall", "0,0", "--pitch", "185")).contains("distances at two places at least");
    assertThat(refused("scribe", "--wall", "0 0", "--pitch", "185")).contains("found [0] as a distance of the wall");
    assertThat(refused("angle", "--line", "0,0", "--wall", "0,0 1,0", "--pitch", "185")).contains("write two points");
    assertThat(refused("angle", "--line", "0,0 1,1", "--wall", "0,0 1,0", "--pitch", "185", "--at", "1,1 2,2"))
        .contains("write one point");
    assertThat(refused("laying-order", "--room", "hall: 0,10 10,10 10,20", "--line", "0,0 1,0", "--pitch", "185"))
        .contains("misses the floor");
  }
}
