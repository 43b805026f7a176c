package floorcalc.examples.explain;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.examples.Ran;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code explain flatness} and {@code explain levels} say of files of readings, good and bad ones. */
class ExplainReadingsTest {
  @TempDir
  private Path folder;

  private String run(int exit, String what, String csv, String... options) throws IOException {
    Path file = Files.writeString(folder.resolve("floor.csv"), csv, StandardCharsets.UTF_8);
    Ran ran = Ran.with(Stream.concat(Stream.of("explain", what, file.toString()), Stream.of(options)).toArray(String[]::new));
    assertThat(ran.exit()).as(ran.err()).isEqualTo(exit);
    assertThat(exit == 0 ? ran.err() : ran.out()).isEmpty();
    return exit == 0 ? ran.out() : ran.err().replace(file.toString(), "floor.csv");
  }

  private String explained(String what, String csv, String... options) throws IOException {
    return run(0, what, csv, options);
  }

  private String refused(String what, String csv, String... options) throws IOException {
    return run(2, what, csv, options);
  }

  /** A dip 1 m wide and 2.5 mm deep in a level floor of 3 m, read each 100 mm: the example of docs/flatness.md. */
  private static List<String> dip() {
    List<String> lines = new ArrayList<>(List.of("distance (mm),height (mm)"));
    for (int i = 0; i <= 30; i++) {
      lines.add(i * 100 + "," + -0.5 * Math.max(0, 5 - Math.abs(i - 15)));
    }
    return lines;
  }

  private static String text(List<String> lines) {
    return String.join("\n", lines);
  }

  /** 8 ft and 4 ft bridge the dip: 2.5 mm; 10 in lies 127 mm on either slope: 2.5 * 127 / 500 = 0.635 mm. */
  @Test
  void flatness() throws IOException {
    String text = explained("flatness", text(dip()));
    assertThat(text).contains("gap-under-edge: How far is the floor at 1500 mm")
        .contains("  under 2438.4 mm: gap 2.5 mm, allowed 3 mm under 2438.4 mm, met  [common practice, no source]\n"
            + "    edge from 0 mm, resting at 1000 mm and 2000 mm, lowest at 1500 mm\n"
            + "    left to itself: 2.5 mm at 1500 mm, resting at 1000 mm and 2000 mm\n")
        .contains("  under 1219.2 mm: gap 2.5 mm, allowed 2 mm under 1219.2 mm, not met")
        .contains("  under 254 mm: gap 0.635 mm, allowed 1 mm under 254 mm, met")
        // The chord of 1219.2 mm round the lowest place has both ends off the dip.
        .contains("  1219.2 mm: -2.5 mm at 1500 mm to ")
        .contains("no F-numbers: readings for F-numbers must be 304.8 mm or 300 mm apart, but the first two are 100 mm apart");
  }

  @Test
  void flatnessUnderChosenEdges() throws IOException {
    assertThat(explained("flatness", text(dip()), "--span", "2 m", "--span", "4 ft"))
        .contains("  under 2000 mm: gap 2.5 mm, not judged, as the set has no limit for an edge of this length\n")
        .contains("  under 1219.2 mm: gap 2.5 mm, allowed 2 mm under 1219.2 mm, not met").doesNotContain("2438.4");
    assertThat(refused("flatness", text(dip()), "--span", "4 m")).contains("does not fit on a profile of 3000 mm");
  }

  /** A dip of 1/4 in half way along 8 ft: 8 ft lie across it. 1/8 in is allowed in 6 ft, where the edge shows 6/8 of it, 3/16 in. */
  @Test
  void flatnessInInches() throws IOException {
    assertThat(explained("flatness", "distance (tape),height (in)\n0,0\n2',-1/8\n4',-1/4\n6',-1/8\n8',0\n", "--set", "NWFA glued"))
        .contains("  under 1828.8 mm (6' 0\"): gap 4.7625 mm (3/16\"), allowed 3.175 mm under 1828.8 mm, not met")
        .contains("  1828.8 mm (6' 0\"): -4.7625 mm (-3/16\") at 1219.2 mm (4' 0\")")
        .contains("line: 5 readings over 2438.4 mm, at most 609.6 mm (2' 0\") apart");
  }

  @Test
  void flatnessByOtherSets() throws IOException {
    // DIN 18202 line 3, contacts 1 m apart: 4 mm at 1 m.
    assertThat(explained("flatness", text(dip()), "--set", "DIN 18202 line 3")).contains("allowed 4 mm under 1000 mm, met");
    assertThat(explained("flatness", text(dip()), "--set", "NHBC 9.1.5")).contains("an edge on two equal blocks:")
        .doesNotContain("left to itself");
    assertThat(refused("flatness", text(dip()), "--set", "nobody's")).contains("the sets are: 'common practice'");
    // Too short for 2 m: nothing is said of it.
    assertThat(explained("flatness", "distance (m),height (mm)\n0,0\n0.5,-1\n1,0\n", "--set", "BS 8204 SR1"))
        .contains("  under 2000 mm: no gap to judge, allowed 3 mm under 2000 mm, not measured")
        .contains("none of these lengths has its middle at a reading");
  }

  /** The first line of the slab in the reference tables: FF 28.8, FL 20.2 by hand there. */
  @Test
  void numbersOfALineReadEach300Millimetres() throws IOException {
    String[] heights = ("418.617 419.938 421.894 423.748 425.221 424.739 423.799 424.307 425.425 424.688 423.164 422.758 420.472"
        + " 416.738").split(" ");
    StringBuilder csv = new StringBuilder("distance (mm);height (mm)\n");
    for (int i = 0; i < heights.length; i++) {
      csv.append(i * 300).append(';').append(heights[i].replace('.', ',').replace("424,307", "424,3070")).append('\n');
    }
    assertThat(explained("flatness", csv.toString())).endsWith("F-numbers: FF 28.8, FL 20.2\n").contains("  = 28.8");
  }

  /** -4 in the middle of 3 by 3 readings of 500 mm; 3 mm in 2 m: 1 mm over 0.25 m2 is filled: 0.25 l, 0.4 kg at 1.6. */
  @Test
  void levels() throws IOException {
    String csv = "x (m),y (m),z (mm)\n0,0,0\n0.5,0,0\n1,0,0\n0,0.5,0\n0.5,0.5,-4\n1,0.5,0\n0,1,0\n0.5,1,0\n1,1,0\n";
    String text = explained("levels", csv, "--set", "BS 8204 SR1", "--filler-density", "1.6", "--bag", "25");
    assertThat(text).contains("slope-along-x: ").contains("gap-under-edge: ").contains("filler-mass: ")
        .contains("readings: 9 levels from -4 mm to 0 mm\nlevel: the plane of best fit falls 0 mm over the readings; this is no matter")
        .contains("  greatest gap under an edge of 2000 mm: 4 mm at x = 500 mm, y = 500 mm, allowed 3 mm, not met  [")
        .contains("to grind: nothing\nto fill: 1 reading, 0.25 l, at most 1 mm deep\n  x = 500 mm, y = 500 mm: 1 mm\n"
            + "filler: 0.25 l, 0.4 kg, 1 bag, for 1 m² that the readings stand for; floor beyond them is not counted\n")
        // 4 mm * 1 m2 = 4 l; a quarter of the floor is 4 mm deep: 1 l.
        .endsWith("two usual mistakes: worst depth times area 4 l, 16.0 times as much; mean depth below the highest reading times area"
            + " 1 l, 4.0 times as much\n");
    assertThat(explained("levels", csv, "--set", "BS 8204 SR1")).contains("filler: 0.25 l, for 1 m²");
  }

  /**
   * A hump of 8 mm in the middle of 5 by 5 readings of 500 mm, 3 mm allowed under 2 m. Between it and the walls the floor lies 4 mm under the
   * edge, and 1 mm of filler is wanted at the eight readings there, each for 0.25 m2: 2 l. Grinding the hump by 2 mm is 0.5 l, which
   * counts as 1 l.
   */
  @Test
  void levelsGroundOrNot() throws IOException {
    StringBuilder hump = new StringBuilder("x (mm),y (mm),z (mm)\n");
    for (int i = 0; i < 25; i++) {
      hump.append(i % 5 * 500).append(',').append(i / 5 * 500).append(',').append(i == 12 ? 8 : 0).append('\n');
    }
    assertThat(explained("levels", hump.toString(), "--set", "BS 8204 SR1", "--grind", "0"))
        .contains("to grind: nothing\nto fill: 8 readings, 2 l, at most 1 mm deep\n").doesNotContain("silica");
    assertThat(explained("levels", hump.toString(), "--set", "BS 8204 SR1"))
        .contains("to grind: 1 reading, 0.5 l, at most 2 mm deep\n  x = 1000 mm, y = 1000 mm: 2 mm\nto fill: nothing\n")
        .contains("warning: grinding concrete");
    assertThat(refused("levels", hump.toString(), "--grind", "1 m")).contains("deepest grinding must be 0 mm to 100 mm");
    assertThat(refused("levels", hump.toString(), "--bag", "25")).contains("--filler-density");
    assertThat(refused("levels", hump.toString(), "--bag", "0", "--filler-density", "1.6"))
        .contains("mass of a bag must be more than 0 kg");
  }

  /** A floor measured in inches is told in both: 3/16 in below an edge of 6 ft, 1/8 in allowed, so 1/16 in is filled. */
  @Test
  void levelsInInches() throws IOException {
    StringBuilder csv = new StringBuilder("x (ft),y (ft),z (in)\n");
    for (int i = 0; i < 9; i++) {
      csv.append(i % 3 * 3).append(',').append(i / 3 * 3).append(',').append(i == 4 ? "-3/16" : "0").append('\n');
    }
    assertThat(explained("levels", csv.toString(), "--set", "NWFA glued"))
        .contains("to fill: 1 reading").contains("\n  x = 914.4 mm (3' 0\"), y = 914.4 mm (3' 0\"): 1.5875 mm (1/16\")\n");
  }

  @Test
  void levelsDrawn() throws IOException {
    Path drawing = folder.resolve("floor.svg");
    String text = explained("levels", room(7, "1208"), "--set", "BS 8204 SR1", "--drawing", drawing.toString(), "--outline",
        "-100,-100 4.1m,-100 4.1m,2.1m -100,2.1m");
    assertThat(text).endsWith("\ndrawing: " + drawing + "\n");
    assertThat(Files.readString(drawing)).startsWith("<svg ").contains("id=\"levels-floor-walls\"").contains(">1208</text>")
        .contains("id=\"levels-floor-to-fill\"");
    assertThat(explained("levels", "x (m),y (m),z (in)\n0,0,0\n2.1,0.3,1/2\n0.7,1.9,1/4\n1.5,1.2,1/8\n", "--drawing",
        drawing.toString())).contains("not judged");
    assertThat(Files.readString(drawing)).contains(">1/2&quot; (12.7)</text>").contains("scattered readings");
    assertThat(refused("levels", room(7, "1208"), "--drawing", folder.resolve("floor.png").toString())).contains("must end in .svg");
    assertThat(refused("levels", room(7, "1208"), "--drawing", folder.resolve("none").resolve("floor.svg").toString()))
        .contains("cannot be written; name a file in a folder");
    assertThat(refused("levels", room(7, "1208"), "--outline", "0,0 1m,0 1m,1m")).contains("say where it goes with --drawing");
  }

  @Test
  void levelsReadAnywhere() throws IOException {
    assertThat(explained("levels", "x (m),y (m),z (mm)\n0,0,0\n2.1,0.3,1\n0.7,1.9,2\n1.5,1.2,1.5\n"))
        .contains("level: the plane of best fit falls ").contains("mm per m, towards ")
        .contains("  not judged: the 4 readings do not lie in rows and columns");
    assertThat(explained("levels", "x (m),y (m),z (mm)\n0,0,0\n3,0,1\n0,3,2\n3,3,1.5\n"))
        .contains("not measured").contains("grinding and filling: not worked out: no span of tolerance set");
  }

  /** Everything off by exactly a decimetre or an inch is said, and worked with as it stands. */
  @Test
  void oneReadingOffBy100Millimetres() throws IOException {
    List<String> lines = dip();
    lines.set(8, "700,100");
    assertThat(explained("flatness", text(lines))).contains("\nwarning: reading 8 at 700 mm: the height of reading 8, 100 mm, is 100 mm too"
        + " high beside its neighbours").contains("\ndoubtful: ");
    assertThat(explained("levels", room(7, "1300"))).contains("\nwarning: x = 2000 mm, y = 1000 mm: reading 8 (1300 mm) lies ")
        .contains("100 mm misread? Read it again")
        .contains("\ndoubtful: 1 warning above on the readings themselves; ");
    assertThat(explained("levels", room(7, "1200"))).doesNotContain("doubtful");
  }

  @Test
  void oneReadingOffByAnInch() throws IOException {
    List<String> lines = dip();
    lines.set(8, "700,-25.4");
    assertThat(explained("flatness", text(lines))).contains("is 25.4 mm too low beside its neighbours");
    assertThat(explained("levels", room(7, "1225.4"))).contains("1 in (25.4 mm) misread? Read it again");
  }

  /** Five by three readings a metre apart at about 1200 mm, one of them another. */
  private static String room(int slipped, String height) {
    String[] heights = "1200 1201 1200 1199 1200 1201 1200 1200 1201 1200 1199 1200 1201 1200 1200".split(" ");
    heights[slipped] = height;
    StringBuilder csv = new StringBuilder("x (m),y (m),z (mm)\n");
    for (int i = 0; i < heights.length; i++) {
      csv.append(i % 5).append(',').append(i / 5).append(',').append(heights[i]).append('\n');
    }
    return csv.toString();
  }

  @Test
  void duplicatePoints() throws IOException {
    List<String> lines = dip();
    lines.set(8, "600,-3");
    assertThat(refused("flatness", text(lines))).startsWith("floor.csv: 1 mistake, nothing was worked out\n"
        + "line 9, distance: 600 mm was read in line 8 already; heights there are 0 mm and -3 mm: keep the one that is right\n");
    assertThat(refused("levels", room(7, "1200\n1,1,1207"))).startsWith("floor.csv: 1 mistake, nothing was worked out\n"
        + "line 10: x = 1000 mm, y = 1000 mm was read in line 8 already; heights there are 1200 mm and 1207 mm");
  }

  @Test
  void tooFewReadings() throws IOException {
    assertThat(refused("flatness", "distance (m),height (mm)\n0,0\n")).contains("there must be at least 2 readings");
    assertThat(refused("levels", "x (m),y (m),z (mm)\n0,0,0\n1,0,0\n")).contains("there must be at least 3 readings, but there are 2");
  }

  @Test
  void unsortedReadings() throws IOException {
    List<String> lines = dip();
    java.util.Collections.swap(lines, 8, 9);
    assertThat(refused("flatness", text(lines)))
        .contains("line 10, distance: 700 mm lies before 800 mm of line 9; list the readings in the order of the line");
    // The order of levels says nothing, so it may be any: the same room with its lines the other way round.
    String back = room(7, "1200").lines().skip(1).sorted(java.util.Comparator.reverseOrder()).collect(Collectors.joining("\n"));
    assertThat(explained("levels", "x (m),y (m),z (mm)\n" + back)).contains("15 levels from 1199 mm to 1201 mm");
  }

  @Test
  void readingsInAnotherUnit() throws IOException {
    // Heights of millimetres said to be metres; places of metres said to be millimetres.
    assertThat(explained("flatness", text(dip()).replace("height (mm)", "height (m)"))).contains("warning: the heights range over");
    assertThat(explained("levels", room(7, "1200").replace("x (m),y (m)", "x (mm),y (mm)")))
        .contains("warning: the readings lie within 4 mm, which is hardly a floor");
    assertThat(explained("levels", room(7, "120"))).contains("was it written in centimetres? Read it again");
  }

  @Test
  void filesThatCannotBeRead() {
    assertThat(Ran.with("explain", "flatness", folder.toString()).err()).contains("cannot be read: it is a folder");
    assertThat(Ran.with("explain", "levels", folder.resolve("none.csv").toString()).err()).contains("cannot be read: there is no such file");
    assertThat(Ran.with("explain", "levels").err()).contains("FILE");
  }
}
