package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import floorcalc.fittings.BoardPiece;
import floorcalc.fittings.CutOutLimits;
import floorcalc.fittings.HoleCut;
import floorcalc.fittings.PipeAllowance;
import floorcalc.fittings.PipeAt;
import floorcalc.fittings.PipeHoles;
import floorcalc.flatness.HeightProfile;
import floorcalc.flatness.RestRule;
import floorcalc.flatness.Straightedge;
import floorcalc.joints.JointLayout;
import floorcalc.measure.Length;
import floorcalc.moisture.AirClimate;
import floorcalc.moisture.ClimateLimits;
import floorcalc.moisture.Percent;
import floorcalc.moisture.Temperature;
import floorcalc.movement.Coefficient;
import floorcalc.movement.MovementForecast;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.rows.RowDivision;
import floorcalc.rows.RowWay;
import floorcalc.rows.StartLine;
import floorcalc.rows.Stop;
import floorcalc.transitions.HeightStack;
import floorcalc.transitions.ProfileKind;
import floorcalc.trims.TrimCutting;
import floorcalc.trims.TrimPiece;
import floorcalc.trims.TrimStock;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** Drawings that are no plan: what is drawn is as long as it should be on paper, and says what it should. */
class FiguresTest {
  private static Length mm(long number) {
    return Length.ofMillimetres(number);
  }

  private static SvgPage page(String svg) {
    SvgPage page = SvgPage.parse(svg);
    DrawingChecks.textsKeepApart(page);
    DrawingChecks.textsLieOnTheSheet(page);
    return page;
  }

  private static String description(SvgPage page) {
    return page.root().getElementsByTagName("desc").item(0).getTextContent();
  }

  private static List<Double> widths(SvgPage page, String fill) {
    return page.all("rect").stream().filter(rect -> rect.getAttribute("fill").equals(fill)).map(rect -> number(rect, "width")).toList();
  }

  private static double number(Element element, String name) {
    return Double.parseDouble(element.getAttribute(name));
  }

  /** 3735 mm at 1:25: the first row of 150 mm is 6 mm, the last of 70 mm 2.8 mm, the 19 between 7.4 mm each; 35 mm would be 1.4 mm. */
  @Test
  void rowsAreToScale() {
    RowDivision rows = RowDivision.of(mm(3735), mm(185), mm(70), RowWay.LEAST_CUT).value();
    SvgPage page = page(RowsDrawing.of(rows).withGap(mm(10)).titled("Bedroom").toSvg());
    assertThat(widths(page, "#dadada")).containsExactly(6.0, 2.8, 1.4, 6.0);
    assertThat(widths(page, "#fff").stream().filter(width -> width == 7.4)).hasSize(19 + 20);
    assertThat(page.words()).contains("150", "70", "19 x 185 = 3515", "3735", "35", "with a full first row:",
        "narrowest row asked for, 70 mm, from either side", "At each wall a gap of 10 mm is left; the room is 3755 mm wide there.");
    assertThat(description(page)).isEqualTo("A section across 21 rows of a floor 3735 mm wide, to scale. The first row is 150 mm, the last 70 mm;"
        + " between them lie 19 rows of 185 mm. At each wall a gap of 10 mm is left. With a full first row the last would be 35 mm.");
  }

  @Test
  void oneRowHasNoOtherWay() {
    RowDivision rows = RowDivision.of(mm(120), mm(185), mm(70), RowWay.AS_NEEDED).value();
    SvgPage page = page(RowsDrawing.of(rows).in(Measures.FEET_AND_INCHES).toSvg());
    assertThat(page.words()).contains("1", "4 3/4\"").doesNotContain("with a full first row:");
    assertThat(description(page)).contains("The only row is 120 mm wide.");
    assertThatIllegalArgumentException().isThrownBy(() -> RowsDrawing.of(rows).withGap(mm(-1)))
        .withMessage("the gap at the walls must not be negative, but was -1 mm");
  }

  private static JointLayout fiveRows() {
    return JointLayout.of(Stream.of(2200, 2000, 2200, 2600, 3000).map(joint -> List.of(mm(joint))).toList());
  }

  /** 4200 mm at 1:30; the two offsets of 200 mm are 6.67 mm long and heavy, those of 400 mm 13.33 mm. */
  @Test
  void offsetsHAndStairAreMarked() {
    SvgPage page = page(JointsDrawing.of(fiveRows(), mm(4200)).least(mm(300)).titled("Hall").toSvg());
    assertThat(page.words()).contains("200", "400", "less than 300 mm", "in line with one row between (H pattern)",
        "equal steps (stair pattern)", "Rows 3 to 5: equal steps of 400 mm.");
    List<Double> heavy = page.all("path").stream().filter(path -> path.getAttribute("stroke-width").equals("1.2"))
        .map(path -> path.getAttribute("d").substring(1).split("[ L]")).map(xy -> Double.parseDouble(xy[2]) - Double.parseDouble(xy[0])).toList();
    assertThat(heavy.stream().filter(length -> Math.abs(length - 200 / 30.0) < 0.011)).hasSize(2);
    assertThat(description(page)).isEqualTo("The end joints of 5 rows, to scale along the rows. The smallest offset is 200 mm, in rows 1 and 2."
        + " 2 offsets are less than 300 mm. 1 H pattern. 1 stair pattern.");
  }

  /** The example of the page: at 1:20 the strip of 140 mm is 7 mm; those of 120 and 115 mm are less than the 130 mm asked for. */
  @Test
  void stripsAtStopsAreToScale() {
    StartLine line = StartLine.choose(List.of(Stop.floorAbove("starting wall", Length.ZERO), Stop.floorBelow("column", mm(1000)),
        Stop.floorAbove("column", mm(1300)), Stop.floorBelow("finishing wall", mm(1900))), Length.ZERO, mm(185), mm(130), RowWay.WIDEST_STRIP).value();
    SvgPage page = page(StartLineDrawing.of(line).titled("Column").toSvg());
    assertThat(widths(page, "#dadada")).containsExactly(140 / 20.0, 6.0);
    assertThat(page.words()).contains("120", "140", "115", "narrower than 130 mm");
    assertThat(description(page)).endsWith("Strips at the stops: starting wall 120 mm, column 140 mm, column 115 mm, finishing wall 115 mm.");
    StartLine none = StartLine.choose(List.of(), Length.ZERO, mm(185), mm(70), RowWay.WIDEST_STRIP).value();
    assertThatIllegalArgumentException().isThrownBy(() -> StartLineDrawing.of(none)).withMessageContaining("at least one stop");
  }

  @Test
  void jointsBeyondTheRowsAreRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> JointsDrawing.of(fiveRows(), mm(2900)))
        .withMessage("row 5 has an end joint at 3000 mm, but the rows run from 0 mm to 2900 mm; give joints from where the rows begin");
    assertThatIllegalArgumentException().isThrownBy(() -> JointsDrawing.of(fiveRows(), Length.ZERO)).withMessageContaining("longer than 0 mm");
    assertThatIllegalArgumentException().isThrownBy(() -> JointsDrawing.of(JointLayout.of(List.of()), mm(1))).withMessageContaining("one row");
  }

  /** At 1:20 pieces of 1010 and 810 mm are 50.5 and 40.5 mm; 2400 - 2 * 1010 - 2 * 3 = 374 mm are left of the first bar. */
  @Test
  void barsShowPiecesCutsAndWhatIsLeft() {
    TrimCutting cutting = TrimCutting.of(List.of(TrimPiece.of("doorway", mm(810)).times(7), TrimPiece.of("wide", mm(1010)).times(3)),
        List.of(TrimStock.sold(mm(2400))), mm(3)).value();
    SvgPage page = page(CutsDrawing.of(cutting).titled("Thresholds").toSvg());
    assertThat(widths(page, "#ededed")).containsExactly(50.5, 50.5, 50.5, 40.5, 40.5, 40.5, 6.0);
    assertThat(page.words()).contains("wide: 1010", "doorway: 810", "374", "574", "774", "3 x", "Cut alike: bars 3, 4, 5.");
    assertThat(description(page)).startsWith("What is cut from 5 bars, to scale along. Bar 1: wide 1010 mm, wide 1010 mm.");
  }

  /** A bar that is used up shows nothing left; one of which nothing is cut off is named. */
  @Test
  void wholeBarsAreNamed() {
    TrimCutting cutting = TrimCutting.of(List.of(TrimPiece.of("long wall", mm(2400)), TrimPiece.of("niche", mm(1200)),
        TrimPiece.of("end", mm(1197))), List.of(TrimStock.sold(mm(2400))), mm(3)).value();
    SvgPage page = page(CutsDrawing.of(cutting).in(Measures.FEET_AND_INCHES).toSvg());
    assertThat(String.join(" ", page.words())).contains("Laid whole: bar 1.").contains("bar 2");
  }

  /** The dip of the page: 2.5 mm at 1:20, 200 times larger, is 25 mm deep on paper. */
  @Test
  void theGapUnderAStraightedgeIsAsDeepAsSaid() {
    List<Length> heights = Stream.iterate(0, i -> i + 1).limit(31)
        .map(i -> Length.ofMillimetres("-0.5").multipliedBy(Math.max(0, 5 - Math.abs(i - 15)))).toList();
    SvgPage page = page(StraightedgeDrawing.of(HeightProfile.ofEqualSpacing(mm(100), heights), Straightedge.of(Length.parse("1219.2 mm")), RestRule.WORST)
        .titled("Dip").toSvg());
    assertThat(page.words()).contains("2.5", "780.8", "1000", "1500", "2000").anyMatch(text -> text.startsWith("Scale 1:20 along, heights drawn 200 times"));
    List<Double> upright = page.all("path").stream().filter(path -> path.getAttribute("stroke-width").equals("0.18"))
        .map(path -> path.getAttribute("d").substring(1).split("[ L]")).map(xy -> Math.abs(Double.parseDouble(xy[3]) - Double.parseDouble(xy[1]))).toList();
    assertThat(upright).anySatisfy(height -> assertThat(height).isCloseTo(25, within(0.011)));
    assertThat(description(page)).isEqualTo("A section along a line of 31 readings, heights drawn 200 times. An edge of 1219.2 mm laid from 780.8 mm"
        + " rests at 1000 mm and 2000 mm; the greatest gap beneath it is 2.5 mm at 1500 mm.");
  }

  /** 30 mm from the lowest subfloor to the leaf take at most 52 mm: 1.5 times; board 21 mm, underlay 3 mm, tile 15 mm, adhesive 12 mm. */
  @Test
  void layersAreToOneScale() {
    HeightStack here = HeightStack.BARE.on("underlay", mm(2)).on("board", mm(14));
    HeightStack beyond = HeightStack.BARE.on("adhesive", mm(8)).on("tile", mm(10)).fromSubfloorAt(mm(-6));
    SvgPage page = page(HeightsDrawing.of(here).beyond(beyond).profile(ProfileKind.REDUCER).casing(mm(17)).leaf(mm(24)).titled("Door").toSvg());
    assertThat(page.all("rect").stream().filter(rect -> rect.getAttribute("stroke-width").equals("0.3")).map(rect -> number(rect, "height")))
        .containsExactly(3.0, 21.0, 12.0, 15.0);
    assertThat(page.words()).contains("board 14", "underlay 2", "tile 10", "adhesive 8", "subfloor", "subfloor at -6", "16", "18", "8",
        "casing cut at 17", "reducer", "Beyond, the floor is 4 mm lower.");
    assertThat(description(page)).contains("This floor, from below: underlay 2 mm, board 14 mm, in all 16 mm.")
        .contains("The leaf ends at 24 mm, 8 mm over the floor.");
  }

  @Test
  void aBareSubfloorAndEachProfileCanBeDrawn() {
    assertThat(description(page(HeightsDrawing.of(HeightStack.BARE).toSvg()))).contains("the bare subfloor, in all 0 mm");
    for (ProfileKind kind : ProfileKind.values()) {
      HeightStack floor = HeightStack.BARE.on("board", mm(14));
      assertThat(page(HeightsDrawing.of(floor).beyond(HeightStack.BARE.on("tile", mm(22))).profile(kind).leaf(mm(14)).toSvg()).words())
          .contains("The leaf stands on the floor.").anyMatch(text -> text.startsWith("Over the edge: " + kind.word()));
    }
  }

  /** At 1:10: the hole of 42 mm is 4.2 mm wide; its places are those of the page. */
  @Test
  void aPieceShowsNotchAndHole() {
    Point[] corners = Stream.of(new long[][] {{0, 0}, {1200, 0}, {1200, 185}, {390, 185}, {390, 140}, {210, 140}, {210, 185}, {0, 185}})
        .map(at -> Point.ofMillimetres(at[0], at[1])).toArray(Point[]::new);
    BoardPiece piece = BoardPiece.of("study-1.2.1", Ring.of(corners));
    List<HoleCut> holes = PipeHoles.of(List.of(new PipeAt("pipe 1", Point.ofMillimetres(700, 120), mm(22))), List.of(piece),
        PipeAllowance.TWENTY_WIDER, CutOutLimits.COMMON_PRACTICE).value();
    SvgPage page = page(PieceDrawing.of(piece).with(holes).toSvg());
    assertThat(page.words()).contains("0", "210", "390", "679", "700", "721", "1200", "120", "140", "185",
        "Notch in the far edge, 210 mm to 390 mm from the start end, 45 mm deep.");
    List<Double> across = page.all("path").stream().filter(path -> path.getAttribute("fill").equals("#fff"))
        .map(path -> SvgPage.area(path).getEnvelopeInternal().getWidth()).toList();
    assertThat(across).hasSize(1).allSatisfy(width -> assertThat(width).isCloseTo(4.2, within(0.03)));
    assertThat(page(PieceDrawing.of(piece).titled("Notch").in(Measures.FEET_AND_INCHES).toSvg()).words()).contains("Notch");
  }

  /** 8 m of 0.03 %: 4.8 mm narrower at 6 %, 7.2 mm wider at 11 %; gaps of 10 mm become 12.4 and 6.4 mm. */
  @Test
  void gapsChangeByHalfOfTheMovement() {
    MovementForecast forecast = MovementForecast.of(Percent.of("8"), Percent.of("6"), Percent.of("11"), Coefficient.NF_DTU_MULTILAYER);
    SvgPage page = page(SeasonsDrawing.of(forecast, mm(8000), mm(10)).titled("Two rooms").toSvg());
    assertThat(page.words()).contains("12.4", "10", "6.4", "driest season, 6 %: 7995.2", "as laid, 8 %: 8000", "dampest season, 11 %: 8007.2");
    // 50 times larger at 1:75
    List<Double> floors = page.all("rect").stream().filter(rect -> rect.getAttribute("stroke-width").equals("0.3")).map(rect -> number(rect, "width")).toList();
    assertThat(floors).hasSize(3);
    assertThat(floors.get(1) - floors.get(0)).isCloseTo(4.8 * 50 / 75, within(0.02));
    assertThat(floors.get(2) - floors.get(1)).isCloseTo(7.2 * 50 / 75, within(0.02));
    SvgPage tight = page(SeasonsDrawing.of(forecast, mm(8000), mm(3)).toSvg());
    assertThat(tight.words()).contains("Dampest season: the floor has no gap left and would press on each wall by 0.6 mm; it lifts or breaks.");
    assertThatIllegalArgumentException().isThrownBy(() -> SeasonsDrawing.of(forecast, mm(8000), mm(-1))).withMessageContaining("was -1 mm");
  }

  /** At 20 degrees Celsius wood holds 9 % in air of 48.3 % (see the page): 9 of 25 % of 80 mm over the axis. */
  @Test
  void theChartHoldsThePublishedPoint() {
    SvgPage page = page(EquilibriumDrawing.at(List.of(Temperature.celsius("20"))).marking(AirClimate.of(Temperature.celsius("20"), Percent.of("48.3")))
        .within(ClimateLimits.COMMON_PRACTICE).titled("Study").toSvg());
    Element dot = page.all("circle").get(0);
    assertThat(number(dot, "cy")).isCloseTo(100 - 9 / 25.0 * 80, within(0.1));
    assertThat(number(dot, "cx")).isCloseTo(26 + 48.3 / 100 * 136, within(0.01));
    assertThat(page.words()).contains("at 20 °C", "20 °C, 48.3 %: 9.0 %", "asked for: 45 % to 60 % (common practice)");
    assertThatIllegalArgumentException().isThrownBy(() -> EquilibriumDrawing.at(List.of())).withMessageContaining("one to 4");
    assertThatIllegalArgumentException().isThrownBy(() -> EquilibriumDrawing.at(List.of(Temperature.celsius("20")))
        .marking(AirClimate.of(Temperature.celsius("20"), Percent.of("2")))).withMessageContaining("was 2 %");
  }
}
