package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import floorcalc.outline.survey.Survey;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyUncertainty;
import floorcalc.outline.survey.SurveyWall;
import floorcalc.outline.survey.Tie;
import floorcalc.outline.survey.Turn;
import floorcalc.outline.survey.WallOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class SurveyDrawingTest {
  private static Survey walls(String... lengths) {
    return Survey.of(Arrays.stream(lengths).map(mm -> SurveyWall.of(Length.ofMillimetres(mm))).toList())
        .withUncertainty(new SurveyUncertainty(Length.ofMillimetres(2), Length.ZERO, 0.5));
  }

  private static Tie tie(int from, int to, long mm) {
    return new Tie(from, to, Length.ofMillimetres(mm));
  }

  /** The quadrilateral of the constructed tape rooms. */
  private static Survey quadrilateral() {
    return walls("5028", "3996", "5006", "3987").withTies(List.of(tie(1, 3, 6399), tie(2, 4, 6423)));
  }

  /** The L of the constructed tape rooms, tie 1-4 as it is given. */
  private static Survey letter(long tie14) {
    return walls("6202", "2610", "2787", "2209", "3411", "4800").withTies(List.of(tie(1, 3, 6717), tie(1, 4, tie14),
        tie(2, 4, 3815), tie(4, 6, 4062), tie(1, 5, 5891), tie(3, 6, 6576)));
  }

  private static SurveyDrawing drawing(Survey survey) {
    return SurveyDrawing.of(SurveyReport.of(survey).value());
  }

  private static SvgPage page(SurveyDrawing drawing) {
    SvgPage page = SvgPage.parse(drawing.toSvg());
    DrawingChecks.textsKeepApart(page);
    DrawingChecks.textsLieOnTheSheet(page);
    return page;
  }

  private static String description(SvgPage page) {
    return page.root().getElementsByTagName("desc").item(0).getTextContent();
  }

  @Test
  void theAdjustedWallsAreToScaleAndEveryReadingIsThere() {
    SvgPage page = page(drawing(quadrilateral()));
    assertThat(page.words()).contains("5028", "3996", "5006", "3987", "6399", "6423", "1", "2", "3", "4");
    // Its factor is 0.0601 with 1.5 mm each, so 0.0451 with 2 mm.
    assertThat(page.words().get(1)).startsWith("Scale 1:40 · 4 walls, 2 ties · 1 reading more than the shape needs, off by 0.05 times"
        + " what is usual · 20.02 m² ± 0.0");
    // Adjusted area of the constructed room, in its file: 20024842.5 mm2; path corners are rounded to 0.01 mm on paper.
    assertThat(SvgPage.area(page.byId("-walls")).getArea() * 40 * 40).isCloseTo(20_024_842.5, within(20_000.0));
  }

  /**
   * Corners of that room in its file: (0, 0), (5027.965, 0), (4998.087, 3995.860), (-7.869, 3986.964). The left wall is the
   * shorter one at corner 1 and leans out by 7.869 mm; wall 2 is at corner 2 and leans in by 29.878 mm.
   */
  @Test
  void cornersOutOfSquareSayByHowMuch() {
    SvgPage page = page(drawing(quadrilateral()));
    assertThat(page.words()).contains("90.1°, 7.9 out", "89.6°, 29.9 out")
        .contains("inner angle; how far the end of the shorter wall is out of square");
    assertThat(description(page)).contains("Out of square: corner 1 by 7.9 mm, corner 2 by 29.9 mm");
  }

  /** Walls of a rectangle that differ by 22 and 9 mm: the walk ends 22 mm to the right and 9 mm up, 23.8 mm of 18017 mm, 1 in 758. */
  @Test
  void theWalkShowsWhatDoesNotClose() {
    SvgPage page = page(drawing(walls("5028", "3996", "5006", "3987").withCorners(Survey.Corners.RIGHT_ANGLES)));
    assertThat(page.words()).contains("The walk along the walls as read does not close by 23.8 mm, 1 in 758.",
        "the walls as read, walked from corner 1, what they are off drawn 10 times; the heavy line is what does not close");
    String[] steps = page.byId("-walk").getAttribute("d").substring(1).split("L");
    String[] first = steps[0].split(" ");
    String[] last = steps[4].split(" ");
    // 10 times larger at 1:40
    assertThat(Double.parseDouble(last[0]) - Double.parseDouble(first[0])).isCloseTo(22 * 10 / 40.0, within(0.011));
    assertThat(Double.parseDouble(last[1]) - Double.parseDouble(first[1])).isCloseTo(-9 * 10 / 40.0, within(0.011));
  }

  /** Of two walls of 2 mm each the mean is off by half of 22 mm; bars of 11 mm are drawn 20 times at 1:40, 5.5 mm long. */
  @Test
  void barsAreAsLongAsReadingsAreOff() {
    SvgPage page = page(drawing(walls("5028", "3996", "5006", "3987").withCorners(Survey.Corners.RIGHT_ANGLES)));
    assertThat(page.words()).contains("5028 -11", "5006 +11", "read too short, the bar drawn 20 times", "read too long");
    List<Double> bars = new ArrayList<>();
    for (Element path : page.all("path")) {
      if (path.getAttribute("stroke-width").equals("1")) {
        String[] xy = path.getAttribute("d").substring(1).split("[ L]");
        bars.add(Math.hypot(Double.parseDouble(xy[2]) - Double.parseDouble(xy[0]), Double.parseDouble(xy[3]) - Double.parseDouble(xy[1])));
      }
    }
    assertThat(bars).filteredOn(length -> Math.abs(length - 5.5) < 0.02).hasSize(2);
    assertThat(bars).filteredOn(length -> Math.abs(length - 2.25) < 0.02).hasSize(2);
  }

  @Test
  void ellipsesAreAsLargeAsTheKeySays() {
    SurveyReport report = SurveyReport.of(quadrilateral()).value();
    SvgPage page = page(SurveyDrawing.of(report));
    List<Element> ellipses = page.all("ellipse").stream().filter(one -> !one.getAttribute("transform").isEmpty()).toList();
    assertThat(ellipses).hasSize(4);
    String key = page.words().stream().filter(text -> text.startsWith("how sure a corner is")).findFirst().orElseThrow();
    int times = Integer.parseInt(key.replaceAll(".*drawn (\\d+) times.*", "$1"));
    for (int i = 0; i < 4; i++) {
      assertThat(Double.parseDouble(ellipses.get(i).getAttribute("rx")))
          .isCloseTo(report.room().orElseThrow().free().points().get(i).greatestDeviation() * times / 40, within(0.006));
    }
  }

  @Test
  void whatDoesNotFitIsFramedAndToldAbout() {
    SvgPage page = page(drawing(letter(4384)).titled("Study"));
    assertThat(page.words()).anySatisfy(text -> assertThat(text).startsWith("4384 -"));
    assertThat(page.words()).contains("may be wrong: measure again", "Study", "6202")
        .anySatisfy(text -> assertThat(text).startsWith("Measure again: tie 1-4, read 4384 mm, the others say 428"))
        .noneSatisfy(text -> assertThat(text).contains(" out"));
    assertThat(page.all("path")).filteredOn(path -> path.getAttribute("stroke-width").equals("0.35")
        && path.getAttribute("fill").equals("#fff")).hasSize(1);
    assertThat(page.all("title").get(0).getTextContent()).isEqualTo("A room as measured: Study");
    assertThat(page(drawing(letter(4284))).words()).doesNotContain("may be wrong: measure again");
  }

  @Test
  void feetAndInches() {
    SvgPage page = page(drawing(letter(4284)).in(Measures.FEET_AND_INCHES));
    // 6202 mm = 244.17 in = 20 ft 4 3/16 in
    assertThat(page.words()).contains("20' 4 3/16\"", "wall, its length as read, in feet and inches to 1/16");
  }

  @Test
  void aSketchHasTheTiesThatWouldFixIt() {
    SvgPage page = page(drawing(walls("6200", "2610", "2790", "2190", "3410", "4800")));
    assertThat(page.byId("-walls").getAttribute("stroke-dasharray")).isNotEmpty();
    assertThat(page.words()).contains("to be measured", "Scale 1:50 · 6 walls, 0 ties · not enough to fix the shape: the sketch shows"
        + " about how it may look");
    assertThat(page.words()).filteredOn(text -> text.startsWith("about ")).hasSize(3);
    assertThat(description(page)).contains("To fix the shape, measure corner ");
  }

  /** A kite of 15.5 m² and its dart of 4.5 m²: the tie between corners 2 and 4 is 5 m in the one and 1.881 m in the other. */
  @Test
  void mirrorImagesStandBesideEachOther() {
    SvgPage page = page(drawing(walls("5000", "4000", "4123.105626", "3162.27766").withTies(
        List.of(new Tie(1, 3, Length.ofMillimetres("6403.124237"))))));
    assertThat(page.words()).contains("shape 1: 15.50 m²", "shape 2: 4.50 m²", "5000", "1881",
        "To tell which, measure corner 2 to corner 4: it is 5000 mm in shape 1, 1880.6 mm in shape 2.");
    assertThat(SvgPage.area(page.byId("-walls-1")).getEnvelopeInternal().getMaxX())
        .isLessThan(SvgPage.area(page.byId("-walls-2")).getEnvelopeInternal().getMinX());
  }

  /** Five right angles do not go round once. */
  @Test
  void aRoomThatCannotBeIsSaidToBeSo() {
    SvgPage page = page(drawing(walls("1000", "1000", "1500", "1000", "1200").withCorners(Survey.Corners.RIGHT_ANGLES)));
    assertThat(page.words()).contains("5 walls, 0 ties · no room has these walls and turns");
    assertThat(description(page)).contains("wall 3 1500 mm");
  }

  /** An arc out of 300 mm and a chimney breast of 400 mm: their straight lines are drawn as well, and labels keep outside. */
  @Test
  void arcsAndNichesAreDrawn() {
    Survey letter = letter(4284);
    List<SurveyWall> walls = new ArrayList<>(letter.walls());
    walls.set(1, walls.get(1).arched(Length.ofMillimetres(300)).then(Turn.ofDegrees(90.4)));
    List<WallOffset> breast = new ArrayList<>();
    for (long[] at : new long[][] {{1500, 0}, {1500, 400}, {2700, 400}, {2700, 0}}) {
      breast.add(new WallOffset(6, Length.ofMillimetres(at[0]), Length.ofMillimetres(at[1])));
    }
    SvgPage page = page(drawing(Survey.of(walls).withTies(letter.ties()).withOffsets(breast)));
    assertThat(page.words()).contains("2610", "4800");
    assertThat(page.all("path")).filteredOn(path -> path.getAttribute("stroke-width").equals("0.1")).hasSize(2);
    assertThat(page.byId("-walls").getAttribute("d").split("L").length).isGreaterThan(12);
  }

  @Test
  void textFromOutsideIsEscaped() {
    String svg = drawing(quadrilateral()).titled("<Study & \"hall\">").toSvg();
    assertThat(SvgPage.parse(svg).words()).contains("<Study & \"hall\">");
    assertThat(svg).doesNotContain("<Study").endsWith("\n");
  }
}
