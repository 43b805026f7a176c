package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import floorcalc.flatness.ToleranceSet;
import floorcalc.levels.Levels;
import floorcalc.levels.PreparationOptions;
import floorcalc.levels.SpotLevel;
import floorcalc.levels.SubfloorPreparation;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.w3c.dom.Element;

class LevelsDrawingTest {
  private static Length mm(String decimal) {
    return Length.ofMillimetres(decimal);
  }

  /** Heights in millimetres, first row first. */
  private static Levels grid(long step, String... rows) {
    List<List<Length>> heights = new ArrayList<>();
    for (String row : rows) {
      heights.add(List.of(row.split(" ")).stream().map(Length::ofMillimetres).toList());
    }
    return Levels.ofGrid(Point.ofMillimetres(0, 0), Length.ofMillimetres(step), Length.ofMillimetres(step), heights);
  }

  private static SpotLevel at(long x, long y, String height) {
    return SpotLevel.of(Length.ofMillimetres(x), Length.ofMillimetres(y), mm(height));
  }

  private static SvgPage page(LevelsDrawing drawing) {
    SvgPage page = SvgPage.parse(drawing.toSvg());
    DrawingChecks.textsKeepApart(page);
    DrawingChecks.textsLieOnTheSheet(page);
    return page;
  }

  private static Levels hollow() {
    return grid(500, "0 0 0 0 0", "0 0 -6 0 0", "0 0 0 0 9", "0 0 0 0 0", "0 0 0 0 0");
  }

  /** 4 m by 2 m, one millimetre up in each metre: lying there are 216 mm for 4000, 18.5 to one, so 1:20. */
  private static Levels ramp() {
    return grid(1000, "0 1 2 3 4", "0 1 2 3 4", "0 1 2 3 4");
  }

  @Test
  void linesOfARampStandWhereItsHeightsAre() {
    SvgPage page = page(LevelsDrawing.of(ramp()));
    Envelope floor = SvgPage.area(page.byId("-floor")).getEnvelopeInternal();
    assertThat(floor.getWidth()).isCloseTo(4000 / 20.0, within(0.02));
    assertThat(floor.getHeight()).isCloseTo(2000 / 20.0, within(0.02));
    // Eight bands at most: a line each half millimetre, each 500 mm.
    List<Element> lines = heightLines(page);
    assertThat(lines).hasSize(7);
    for (int i = 0; i < 7; i++) {
      double x = floor.getMinX() + (i + 1) * 500 / 20.0;
      assertThat(places(lines.get(i))).hasSizeGreaterThan(1).allSatisfy(place -> assertThat(place.x).isCloseTo(x, within(0.011)));
    }
    assertThat(page.words()).contains("above 3.5", "3 to 3.5", "0.5 to 1", "below 0.5", "4000", "2000");
    assertThat(page.words()).anySatisfy(text -> assertThat(text)
        .isEqualTo("the way the plane of best fit falls, 1.0 mm per m, 4 mm over the readings"));
  }

  @Test
  void tonesCoverTheirShareOfARamp() {
    SvgPage page = page(LevelsDrawing.of(ramp()));
    double floor = SvgPage.area(page.byId("-floor")).getArea();
    List<Element> tones = page.all("path").stream()
        .filter(path -> path.getAttribute("fill").matches("#[0-9a-f]{6}") && path.getAttribute("stroke").equals("none")).toList();
    assertThat(tones).hasSize(8);
    assertThat(tones.get(0).getAttribute("fill")).isEqualTo("#9c9c9c");
    assertThat(tones.get(7).getAttribute("fill")).isEqualTo("#ffffff");
    for (int i = 0; i < 8; i++) {
      assertThat(SvgPage.area(tones.get(i)).getArea() / floor).isCloseTo((8 - i) / 8.0, within(1e-3));
    }
  }

  private static List<Element> heightLines(SvgPage page) {
    return page.all("path").stream().filter(path -> path.getAttribute("class").equals("height")).toList();
  }

  private static List<Coordinate> places(Element path) {
    List<Coordinate> places = new ArrayList<>();
    for (String part : path.getAttribute("d").substring(1).split("[ML]")) {
      String[] xy = part.split(" ");
      places.add(new Coordinate(Double.parseDouble(xy[0]), Double.parseDouble(xy[1])));
    }
    return places;
  }

  @Test
  void theHighestAndTheLowestAreMarked() {
    SvgPage page = page(LevelsDrawing.of(hollow()));
    assertThat(page.words()).contains("9", "-6", "highest reading", "lowest reading");
    assertThat(page.words()).contains("Scale 1:15 · 25 readings from -6 to 9 · heights in mm, upwards · x to the right, y up");
    // On a slope the highest reading is not the one that stands out.
    SvgPage slope = page(LevelsDrawing.of(grid(1000, "0 10 20 30", "0 10 24 30", "0 10 20 30")));
    assertThat(slope.words()).contains("24", "farthest above the plane of best fit", "farthest below it");
  }

  @Test
  void whatIsGroundAndFilledIsHatchedAndHasItsDepth() {
    Levels levels = hollow();
    SubfloorPreparation work = SubfloorPreparation.of(levels, ToleranceSet.named("BS 8204 SR1"), PreparationOptions.fillOnly()).value();
    SvgPage page = page(LevelsDrawing.of(levels).with(work));
    assertThat(work.toFill()).isNotEmpty().allSatisfy(spot ->
        assertThat(page.words()).contains("+" + spot.fill().toString().replace(" mm", "")));
    // Each of these readings lies inside and stands for 500 mm by 500 mm, at 1:15 33.33 mm by 33.33 mm.
    Element hatched = page.byId("-to-fill");
    assertThat(hatched.getAttribute("fill")).isEqualTo("url(#levels-fill)");
    assertThat(hatched.getAttribute("d").split("M")).hasSize(work.toFill().size() + 1);
    Envelope first = SvgPage.area(hatched).getEnvelopeInternal();
    assertThat(first.getWidth()).isCloseTo(500 / 15.0, within(0.02));
    assertThat(page.words()).contains("to fill, how thick at the reading").doesNotContain("to grind, how deep at the reading");
    assertThat(page.root().getElementsByTagName("desc").item(0).getTextContent()).contains("0 spots to grind, at most 0 mm deep; "
        + work.toFill().size() + " spots to fill, at most ");
  }

  @Test
  void aHumpIsHatchedOtherwise() {
    Levels levels = grid(500, "0 0 0 0 0", "0 0 0 0 0", "0 0 8 0 0", "0 0 0 0 0", "0 0 0 0 0");
    SubfloorPreparation work = SubfloorPreparation.of(levels, ToleranceSet.named("BS 8204 SR1"),
        PreparationOptions.grindingUpTo(mm("3"))).value();
    SvgPage page = page(LevelsDrawing.of(levels).with(work));
    // 8 mm bring the edge to 4 mm half way, 3 are allowed: 2 mm off.
    assertThat(page.words()).contains("-2", "8");
    assertThat(page.byId("-to-grind").getAttribute("fill")).isEqualTo("url(#levels-grind)");
    assertThat(page.all("pattern")).extracting(pattern -> pattern.getAttribute("id")).containsExactly("levels-grind", "levels-fill");
  }

  @Test
  void nothingToDoIsSaid() {
    Levels levels = grid(500, "0 0 0 0 0", "0 0 1 0 0", "0 0 0 0 0");
    SubfloorPreparation work =
        SubfloorPreparation.of(levels, ToleranceSet.named("BS 8204 SR1"), PreparationOptions.fillOnly()).value();
    assertThat(page(LevelsDrawing.of(levels).with(work)).words()).contains("Nothing is to be ground or filled.");
    assertThatThrownBy(() -> LevelsDrawing.of(hollow()).with(work)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the preparation is of other readings than the 25 drawn; prepare these levels");
  }

  @Test
  void inchesHaveMillimetresBesideThem() {
    Length quarter = Length.ofInches(0, 1, 4);
    Levels levels = Levels.of(List.of(SpotLevel.of(Length.ZERO, Length.ZERO, Length.ZERO),
        SpotLevel.of(Length.ofInches(48, 0, 1), Length.ZERO, quarter), SpotLevel.of(Length.ZERO, Length.ofInches(48, 0, 1), mm("0.1")),
        SpotLevel.of(Length.ofInches(48, 0, 1), Length.ofInches(48, 0, 1), quarter.negated())));
    SvgPage page = page(LevelsDrawing.of(levels).in(Measures.FEET_AND_INCHES));
    assertThat(page.words()).contains("1/4\" (6.4)", "-1/4\" (-6.4)", "<1/64\"", "4' 0\"", "4' 0\" (1219)", "above 3/16\" (4.8)");
  }

  /** 40 ft by 2 ft at 1:60 are 10 mm high on paper, less than {@code 2' 0" (610)}: it stands beside its line, and not on the caption. */
  @Test
  void aNarrowHallInInches() {
    List<SpotLevel> spots = new ArrayList<>();
    for (int i = 0; i < 42; i++) {
      spots.add(SpotLevel.of(Length.ofInches(24L * (i / 2), 0, 1), Length.ofInches(24L * (i % 2), 0, 1), Length.ofInches(0, i % 5, 8)));
    }
    assertThat(page(LevelsDrawing.of(Levels.of(spots)).in(Measures.FEET_AND_INCHES)).words()).contains("2' 0\" (610)", "40' 0\" (12\u00a0192)");
  }

  @Test
  void aFlatFloorHasNeitherLinesNorMarks() {
    SvgPage page = page(LevelsDrawing.of(grid(500, "7 7 7", "7 7 7")));
    assertThat(heightLines(page)).isEmpty();
    assertThat(page.words()).contains("all readings", "7").doesNotContain("highest reading");
    assertThat(page.words()).noneMatch(text -> text.contains("falls"));
  }

  @Test
  void scatteredReadingsAreDrawnWithinTheirHull() {
    // The hull is a square of 3 m less a triangle of 1.5 m2 at one corner: 7.5 m2.
    Levels levels = Levels.of(List.of(at(0, 0, "0"), at(3000, 0, "2"), at(3000, 2000, "4"), at(2000, 3000, "5"), at(0, 3000, "1"),
        at(1100, 1300, "-3")));
    SvgPage page = page(LevelsDrawing.of(levels));
    double scale = 20;
    assertThat(SvgPage.area(page.byId("-floor")).getArea()).isCloseTo(8.5e6 / scale / scale, within(10.0));
    assertThat(page.words()).anySatisfy(text -> assertThat(text).startsWith("Between readings: scattered readings are joined to triangles"));
    assertThat(page.words()).contains("-3", "5");
  }

  @Test
  void nothingIsDrawnWhereACornerOfTheGridIsNoFloor() {
    List<SpotLevel> spots = new ArrayList<>(grid(500, "0 1 2 3 4", "1 2 3 4 5", "2 3 4 5 6", "3 4 5 6 7", "4 5 6 7 8").spots());
    // Without the four readings of one corner three cells of sixteen have fewer than three corners; one has three and is half drawn.
    spots.removeIf(spot -> spot.place().x().compareTo(mm("1500")) >= 0 && spot.place().y().compareTo(mm("1500")) >= 0);
    SvgPage page = page(LevelsDrawing.of(Levels.of(spots)));
    double cell = 500 / 15.0 * 500 / 15.0;
    assertThat(SvgPage.area(page.byId("-floor")).getArea()).isCloseTo(12.5 * cell, within(2.0));
  }

  @Test
  void wallsKeepTheFloorWithinThem() {
    Outline room = Wkt.parse("POLYGON ((-20 -20, 2020 -20, 2020 2020, -20 2020, -20 -20), (600 600, 900 600, 900 900, 600 900, 600 600))");
    SvgPage page = page(LevelsDrawing.of(hollow()).within(room).titled("Hall & \"stairs\""));
    DrawingChecks.textsNeverCollide(page);
    assertThat(page.words()).contains("Hall & \"stairs\"");
    assertThat(page.byId("-room").getTagName()).isEqualTo("clipPath");
    assertThat(page.byId("-floor").getParentNode().getAttributes().getNamedItem("clip-path").getNodeValue())
        .isEqualTo("url(#levels-Hall_20__26__20__22_stairs_22_-room)");
    Outline small = Wkt.parse("POLYGON ((-20 -20, 1020 -20, 1020 2020, -20 2020, -20 -20))");
    assertThat(page(LevelsDrawing.of(hollow()).within(small)).words())
        .anySatisfy(text -> assertThat(text).startsWith("10 readings lie outside the walls"));
  }

  @Test
  void doubtsComeFirstAmongTheNotes() {
    List<String> words = page(LevelsDrawing.of(grid(1000, "0 1 0 1", "1 0 100 0", "0 1 0 1"))).words();
    assertThat(words.stream().filter(text -> text.startsWith("Doubtful: at x = 2000 mm, y = 1000 mm, reading 7"))).hasSize(1);
    assertThat(words.indexOf(words.stream().filter(text -> text.startsWith("Doubtful")).findFirst().orElseThrow()))
        .isLessThan(words.indexOf(words.stream().filter(text -> text.startsWith("Between")).findFirst().orElseThrow()));
  }

  @Test
  void manyReadingsHaveNoFiguresAndTheDrawingStaysSmall() {
    List<SpotLevel> spots = new ArrayList<>();
    for (int i = 0; i < 10_000; i++) {
      // Heights that jump about: multiples of 7919 within 0 to 30 mm.
      spots.add(at(i % 100 * 500L, i / 100 * 500L, Integer.toString(i * 7919 % 31)));
    }
    String svg = LevelsDrawing.of(Levels.of(spots)).toSvg();
    assertThat(svg).hasSizeLessThan(1_000_000);
    assertThat(SvgPage.parse(svg).words()).contains("There are more readings than can be marked one by one.",
        "The readings are too near to each other on the sheet for their heights.");
  }

  @Test
  void depthsWithoutRoomAreListed() {
    List<SpotLevel> spots = new ArrayList<>();
    for (int i = 0; i < 600; i++) {
      spots.add(at(i % 100 * 100L, i / 100 * 100L, i % 3 == 0 ? "-4.4" : "0"));
    }
    Levels levels = Levels.of(spots);
    SubfloorPreparation work = SubfloorPreparation.of(levels, ToleranceSet.COMMON_PRACTICE, PreparationOptions.fillOnly()).value();
    List<String> words = page(LevelsDrawing.of(levels).with(work)).words();
    assertThat(words).anySatisfy(text -> assertThat(text).startsWith("Spots without room for their depth: x = "));
  }

  @Test
  void sameBytesAgainAndInEveryLocale() {
    Levels levels = hollow();
    String svg = LevelsDrawing.of(levels).titled("Hall").toSvg();
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(LevelsDrawing.of(Levels.of(levels.spots())).titled("Hall").toSvg()).isEqualTo(svg);
    } finally {
      Locale.setDefault(before);
    }
    assertThat(svg).endsWith("</svg>\n").doesNotContain("NaN").doesNotContain("Infinity");
  }
}
