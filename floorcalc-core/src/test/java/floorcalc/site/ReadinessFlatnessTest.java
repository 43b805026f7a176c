package floorcalc.site;

import static floorcalc.site.Sites.READY;
import static floorcalc.site.Sites.flatness;
import static floorcalc.site.Sites.grid;
import static floorcalc.site.Sites.judge;
import static floorcalc.site.Sites.level;
import static floorcalc.site.Sites.line;
import static floorcalc.site.Sites.mm;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.flatness.GapReading;
import floorcalc.flatness.ProfilePoint;
import floorcalc.flatness.ToleranceSet;
import floorcalc.levels.SpotLevel;
import floorcalc.measure.Length;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Step;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How lines, grids and gaps read by hand come together. Common practice: 3 mm in 8 ft, 2 mm in 4 ft, 1 mm in 10 in. */
class ReadinessFlatnessTest {
  private static final Length EIGHT_FEET = Length.parse("8 ft");
  /** 2.5 mm deep and 1 m wide, as on the page of flatness: 8 ft and 4 ft show all of it, 10 in 2.5 * 127 / 500 = 0.635 mm. */
  private static final String DIP =
      "0 0 0 0 0 0 0 0 0 0 0 -0.5 -1 -1.5 -2 -2.5 -2 -1.5 -1 -0.5 0 0 0 0 0 0 0 0 0 0 0";

  private static SiteReadings lines(HeightLine... lines) {
    return READY.withLines(List.of(lines));
  }

  @Test
  void theWorstLineDecidesUnderEachSpan() {
    List<Judgement> rows = flatness(judge(lines(line("A", "100", level(31)), line("B", "100", DIP))));
    assertThat(rows).extracting(Judgement::found).containsExactly("2.5 mm", "2.5 mm", "0.635 mm");
    assertThat(rows).extracting(Judgement::outcome).containsExactly(Outcome.MET, Outcome.NOT_MET, Outcome.MET);
    assertThat(rows).extracting(Judgement::limit)
        .containsExactly("3 mm under 2438.4 mm", "2 mm under 1219.2 mm", "1 mm under 254 mm");
    assertThat(rows).allMatch(row -> row.where().startsWith("line B, ") && row.where().endsWith("the worst of line A and line B"));
  }

  /** The working is that of the line that decides, one step for each span; of the other nothing. */
  @Test
  void workingIsThatOfTheLineThatDecides() {
    List<Step> steps = Readiness.of(Sites.FLOOR, lines(line("A", "100", level(31)), line("B", "100", DIP))).steps().stream()
        .filter(step -> step.id().equals("gap-under-edge")).toList();
    assertThat(steps).extracting(Step::result).containsExactly(mm("2.5"), mm("2.5"), mm("0.635"));
  }

  /** A gap of 4 mm read by hand under 8 ft is beyond 3 mm, whatever the line shows. */
  @Test
  void gapsReadByHandCountBesideTheLines() {
    List<Judgement> rows = flatness(judge(lines(line("A", "100", level(31)))
        .withStraightedge(List.of(new GapReading(EIGHT_FEET, mm("4"), "door"), new GapReading(EIGHT_FEET, mm("1"), "window")))));
    assertThat(rows).hasSize(3);
    assertThat(rows.get(0).outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(rows.get(0).where()).startsWith("gaps read by hand, door");
    assertThat(rows.get(1).outcome()).isEqualTo(Outcome.MET);
  }

  @Test
  void spansThatNothingShowsShareOneLine() {
    List<Judgement> rows = flatness(judge(READY.withLines(List.of())
        .withStraightedge(List.of(new GapReading(EIGHT_FEET, mm("1"), "")))));
    assertThat(rows).extracting(Judgement::outcome).containsExactly(Outcome.MET, Outcome.NOT_MEASURED);
    assertThat(rows.get(1).check()).isEqualTo("flatness under 1219.2 mm, 254 mm, common practice");
    assertThat(rows.get(1).limit()).isEqualTo("2 mm under 1219.2 mm; 1 mm under 254 mm");
  }

  @Test
  void readingsThatShowNothingAreNotLost() {
    List<Judgement> rows = flatness(judge(lines(line("A", "100", level(31)), line("B", "30", "0 0 0"), line("C", "30", "0 0 0"))
        .withStraightedge(List.of(new GapReading(mm("2000"), mm("1"), "")))));
    assertThat(rows).extracting(Judgement::outcome)
        .containsExactly(Outcome.MET, Outcome.MET, Outcome.MET, Outcome.NOT_MEASURED, Outcome.NOT_MEASURED);
    assertThat(rows.get(3).check()).isEqualTo("flatness by gaps read by hand");
    assertThat(rows.get(3).advice()).contains("no limit for the gap of 1 mm read under 2000 mm");
    assertThat(rows.get(4).check()).isEqualTo("flatness by line B and line C");
    assertThat(rows.get(4).advice()).startsWith("measure lines of at least 254 mm");
  }

  /** A staff misread by a decimetre: named, and it neither passes nor hides what the others show. */
  @Test
  void oneReadingOffByAHundredMillimetresIsNamed() {
    HeightLine slipped = line("S", "100", "0 0 0 0 0 0 0 0 0 0 100 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0");
    Readiness readiness = judge(lines(line("A", "100", level(31)), slipped));
    assertThat(readiness.findings()).extracting(Finding::code).contains("reading-slip");
    assertThat(readiness.findings()).extracting(Finding::where).contains("line S, reading 11 at 1000 mm");
    List<Judgement> rows = flatness(readiness);
    assertThat(rows).extracting(Judgement::outcome)
        .containsExactly(Outcome.MET, Outcome.MET, Outcome.MET, Outcome.NOT_MET);
    assertThat(rows.get(3).advice()).startsWith("read again before anything is ground");
  }

  @Test
  void oneInchOnAGridIsNamed() {
    List<SpotLevel> spots = new ArrayList<>(grid("500", "0 0 0 0 0 0 0", "0 0 0 0 0 0 0", "0 0 0 0 0 0 0", "0 0 0 0 0 0 0"));
    spots.set(9, new SpotLevel(spots.get(9).place(), mm("25.4")));
    Readiness readiness = judge(lines().withHeights(spots));
    assertThat(readiness.findings()).extracting(Finding::code).contains("reading-off-by-1-in");
    assertThat(readiness.isReady()).isFalse();
    assertThat(flatness(readiness)).anyMatch(row -> row.check().endsWith("by readings that are doubted"));
  }

  /** Heights of a floor written in metres are flatter than any floor: a pass that rests on them is none. */
  @Test
  void wrongUnitPassesNothing() {
    Readiness readiness = judge(lines().withHeights(grid("500", "0 0 0 0 0 0 0", "0 0.001 0.002 0 0 0 0", "0 0 0 0 0 0 0")));
    assertThat(readiness.findings()).extracting(Finding::code).contains("heights-in-other-unit");
    assertThat(flatness(readiness)).noneMatch(Judgement::isMet);
    assertThat(readiness.outcome()).isEqualTo(Outcome.NOT_MEASURED);
  }

  @Test
  void placeReadTwiceIsNamedAndNotJudged() {
    Readiness grid = judge(lines().withHeights(List.of(SpotLevel.of(mm("0"), mm("0"), mm("0")),
        SpotLevel.of(mm("0"), mm("0"), mm("3")), SpotLevel.of(mm("500"), mm("0"), mm("0")),
        SpotLevel.of(mm("0"), mm("500"), mm("0")))));
    assertThat(grid.findings()).extracting(Finding::code).contains("place-read-twice");
    assertThat(flatness(grid)).extracting(Judgement::check)
        .containsExactly("flatness under 2438.4 mm, 1219.2 mm, 254 mm, common practice", "flatness by heights");
    Readiness twice = judge(lines(new HeightLine("A", List.of(new ProfilePoint(mm("0"), mm("0")),
        new ProfilePoint(mm("0"), mm("1")), new ProfilePoint(mm("900"), mm("0"))))));
    assertThat(twice.findings()).extracting(Finding::code).contains("line-not-fit");
    assertThat(flatness(twice)).noneMatch(Judgement::isMet);
    assertThat(flatness(twice).get(1).advice()).contains("has the place of reading 1");
  }

  /** 3 mm in the middle of 1 m in a grid of 0.5 m: three readings in line, so 4 ft shows 3 mm, beyond 2 mm. */
  @Test
  void gridCountsBesideTheLines() {
    List<Judgement> rows = flatness(judge(lines(line("A", "100", level(31)))
        .withHeights(grid("500", "0 0 0 0 0 0 0", "0 0 0 -3 0 0 0", "0 0 0 0 0 0 0"))));
    assertThat(rows).hasSize(3);
    assertThat(rows.get(1).outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(rows.get(1).found()).isEqualTo("3 mm");
    assertThat(rows.get(1).where()).startsWith("grid of heights, ");
    assertThat(rows.get(1).advice()).startsWith("grind where the edge rests, or fill at ").contains("silica dust");
    assertThat(rows.get(2).where()).as("10 in lies between the readings of the grid").startsWith("line A");
  }

  /**
   * 3 mm may be 2 mm, so one reading is filled by 1 mm; it stands for 0.5 m by 0.5 m: 0.25 litres. The worst depth times the area is
   * 3 mm over 3 m by 1 m, 9 litres.
   */
  @Test
  void whatFillingTakesIsSaid() {
    Readiness readiness = judge(lines()
        .withHeights(grid("500", "0 0 0 0 0 0 0", "0 0 0 -3 0 0 0", "0 0 0 0 0 0 0")));
    assertThat(readiness.findings()).filteredOn(finding -> finding.code().equals("subfloor-to-fill")).singleElement()
        .satisfies(finding -> assertThat(finding.message()).contains("0.3 litres of filler over 1 reading, at most 1 mm deep",
            "not the 9.0 litres of the worst depth"));
    assertThat(Readiness.of(Sites.FLOOR, lines().withHeights(grid("500", "0 0 0 0 0 0 0", "0 0 0 -3 0 0 0", "0 0 0 0 0 0 0")))
        .steps()).as("so that the sum can be redone").extracting(Step::id).contains("filler-volume", "worst-depth-times-area");
    Readiness flat = judge(lines().withHeights(grid("500", "0 0 0 0 0 0 0", "0 0 0 -1 0 0 0", "0 0 0 0 0 0 0")));
    assertThat(flat.findings()).noneMatch(finding -> finding.code().equals("subfloor-to-fill"));
  }

  /** 3 m by 1 m of 15.2 m²; 4 m by 3.5 m are 14 m², nearly all. */
  @Test
  void heightsOfAPartOfTheFloorAreSaidToBe() {
    Readiness part = judge(lines().withHeights(grid("500", "0 0 0 0 0 0 0", "0 0 0 0 0 0 0", "0 0 0 0 0 0 0")));
    assertThat(part.findings()).filteredOn(finding -> finding.code().equals("heights-of-part")).singleElement()
        .satisfies(finding -> assertThat(finding.message()).contains("over 3.0 m² of 15.2 m²"));
    String[] rows = new String[8];
    java.util.Arrays.fill(rows, "0 0 0 0 0 0 0 0 0");
    assertThat(judge(lines().withHeights(grid("500", rows))).findings()).noneMatch(finding -> finding.code().equals("heights-of-part"));
  }

  @Test
  void scatteredHeightsAreNotJudgedButShow() {
    Readiness readiness = judge(lines().withHeights(List.of(SpotLevel.of(mm("0"), mm("0"), mm("0")),
        SpotLevel.of(mm("900"), mm("130"), mm("3")), SpotLevel.of(mm("210"), mm("1700"), mm("0")))));
    assertThat(flatness(readiness).get(1).found()).isEqualTo("3 levels from 0 mm to 3 mm");
    assertThat(flatness(readiness).get(1).outcome()).isEqualTo(Outcome.NOT_MEASURED);
    assertThat(readiness.findings()).extracting(Finding::code).contains("floor-falls");
  }

  /** DIN 18202 line 3 allows 2 mm at 0.1 m and 4 mm at 1 m; interpolated at 0.6 m 3.1, so 3 mm. */
  @Test
  void setByContactDistance() {
    ToleranceSet din = ToleranceSet.named("DIN 18202 line 3");
    List<Judgement> rows = flatness(judge(READY.withFlatness(din).withLines(List.of())
        .withStraightedge(List.of(new GapReading(mm("600"), mm("3.1"), ""), new GapReading(mm("1000"), mm("4"), "")))));
    assertThat(rows).extracting(Judgement::limit).containsExactly("4 mm under 1000 mm", "3 mm under 600 mm");
    assertThat(rows).extracting(Judgement::outcome).containsExactly(Outcome.MET, Outcome.NOT_MET);
    assertThat(flatness(judge(SiteReadings.NONE.withFlatness(din)))).hasSize(1);
    List<Judgement> grid = flatness(judge(lines().withFlatness(din).withHeights(grid("500", "0 0 0", "0 -4 0", "0 0 0"))));
    assertThat(grid).hasSize(1);
    assertThat(grid.get(0).found()).isEqualTo("4 mm");
    assertThat(grid.get(0).outcome()).as("4 mm at 1 m").isEqualTo(Outcome.MET);
  }

  @Test
  void setOnEqualBlocksDoesNotJudgeAGrid() {
    ToleranceSet blocks = ToleranceSet.named("NHBC 9.1.5");
    Readiness readiness = judge(lines(line("A", "100", level(31))).withFlatness(blocks)
        .withHeights(grid("500", "0 0 0", "0 0 0", "0 0 0")));
    assertThat(flatness(readiness)).extracting(Judgement::outcome).containsExactly(Outcome.MET, Outcome.NOT_MEASURED);
    assertThat(flatness(readiness).get(1).advice()).contains("NHBC 9.1.5");
  }

  @Test
  void setForWallsIsNoSetForAFloor() {
    Readiness walls = judge(READY.withFlatness(ToleranceSet.named("DIN 18202 line 6")));
    assertThat(walls.findings()).extracting(Finding::code).contains("set-for-no-floor");
    assertThat(walls.isReady()).isFalse();
  }

  @Test
  void everySetTakesEveryKindOfReading() {
    for (ToleranceSet set : ToleranceSet.all()) {
      Readiness readiness = judge(lines(line("A", "100", level(41))).withFlatness(set)
          .withHeights(grid("500", "0 0 0 0 0 0 0", "0 0.5 0 0 0 0 0", "0 0 0 0 0 0 0"))
          .withStraightedge(List.of(new GapReading(mm("2000"), mm("1"), ""))));
      assertThat(flatness(readiness)).as(set.name()).isNotEmpty().allMatch(row -> row.outcome() != Outcome.NOT_MET);
    }
  }
}
