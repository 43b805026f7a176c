package floorcalc.trims;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.measure.Price;
import floorcalc.measure.UnitPrice;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.trims.BarGoods.AtVoids;
import floorcalc.trims.BarGoods.InsideCorners;
import floorcalc.trims.BarGoods.LongRuns;
import floorcalc.trims.BarGoods.OpenEnds;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class TrimRunsTest {
  private static final BarGoods SKIRTING = BarGoods.of("skirting", List.of(mm(2400)), mm(15));
  private static final RuleValue<Length> KERF = new RuleValue<>(LayingRules.SAW_KERF, mm(3), Source.GIVEN);
  private static final Outline ROOM = Wkt.parse("POLYGON ((0 0, 4000 0, 4000 3000, 0 3000, 0 0))");
  private static final Outline LETTER_L =
      Wkt.parse("POLYGON ((0 0, 5000 0, 5000 2000, 2000 2000, 2000 4000, 0 4000, 0 0))");
  private static final TrimOpening DOOR = TrimOpening.of("D1", Point.ofMillimetres(1000, 0), Point.ofMillimetres(1900, 0));

  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static TrimRuns runs(Outline room, List<TrimOpening> openings, BarGoods bars) {
    Calculated<TrimRuns> runs = TrimRuns.of("Study", room, openings, bars);
    assertStepsHold(runs);
    return runs.value();
  }

  @Test
  void wallByWallLessTheOpenings() {
    TrimRuns runs = runs(ROOM, List.of(DOOR), SKIRTING);
    assertThat(runs.perimeter()).isEqualTo(mm(14_000));
    assertThat(runs.openings()).isEqualTo(mm(900));
    assertThat(runs.net()).isEqualTo(mm(13_100));
    assertThat(runs.runs()).extracting(TrimRun::name)
        .containsExactly("Study, wall 1", "Study, wall 1", "Study, wall 2", "Study, wall 3", "Study, wall 4");
    assertThat(runs.runs()).extracting(TrimRun::back).containsExactly(mm(1000), mm(2100), mm(3000), mm(4000), mm(3000));
    // a face is 15 mm shorter at each inside corner: one corner at either side of the door, two elsewhere
    assertThat(runs.runs()).extracting(TrimRun::front).containsExactly(mm(985), mm(2085), mm(2970), mm(3970), mm(2970));
    assertThat(runs.corners(TrimEnd.Kind.INSIDE_CORNER)).isEqualTo(4);
    assertThat(runs.corners(TrimEnd.Kind.OPENING)).isEqualTo(2);
    assertThat(runs.runs().get(0).end()).isEqualTo(TrimEnd.OPENING);
    assertThat(runs.runs().get(0).start().sawDegrees()).isEqualByComparingTo("45");
  }

  @Test
  void anOutsideCornerMakesPiecesLonger() {
    // corner 4 at (2000, 2000) is the outside one: walls 3 (3000) and 4 (2000) each reach 15 mm beyond it
    TrimRuns runs = runs(LETTER_L, List.of(), SKIRTING);
    assertThat(runs.runs()).extracting(TrimRun::cut)
        .containsExactly(mm(5000), mm(2000), mm(3015), mm(2015), mm(2000), mm(4000));
    // wall 3: 15 shorter at its inside corner, 15 longer at the outside one
    assertThat(runs.runs().get(2).front()).isEqualTo(mm(3000));
    assertThat(runs.corners(TrimEnd.Kind.OUTSIDE_CORNER)).isEqualTo(1);
  }

  @Test
  void halfTheAngleAtOtherCorners() {
    // a corner of 135° on the side of the room: 15 * cot(67.5°) = 15 * (sqrt(2) - 1) = 6.213203... mm, saw at 22.5°
    Outline bay = Wkt.parse("POLYGON ((0 0, 3000 0, 4000 1000, 4000 3000, 0 3000, 0 0))");
    TrimRun first = runs(bay, List.of(), SKIRTING).runs().get(0);
    assertThat(first.back()).isEqualTo(mm(3000));
    assertThat(first.front()).isEqualTo(mm(3000).minus(mm(15)).minus(Length.ofMillimetres("6.213203")));
    assertThat(first.end().sawDegrees()).isEqualByComparingTo("22.5");
  }

  @Test
  void scribedCornersLetOneRunThrough() {
    // each run goes square into the corner at its end, and is scribed at its start: 15 mm shorter at its face once
    TrimRuns runs = runs(ROOM, List.of(), SKIRTING.withInsideCorners(InsideCorners.SCRIBED));
    assertThat(runs.runs()).extracting(TrimRun::front).containsExactly(mm(3985), mm(2985), mm(3985), mm(2985));
  }

  @Test
  void wallsNearlyInLineAreOneRun() {
    Outline bent = Wkt.parse("POLYGON ((0 0, 2000 0, 4000 20, 4000 3000, 0 3000, 0 0))");
    TrimRuns runs = runs(bent, List.of(), SKIRTING);
    // 2000 and sqrt(2000² + 20²) = 2000.099998 mm
    assertThat(runs.runs().get(0).name()).isEqualTo("Study, walls 1 to 2");
    assertThat(runs.runs().get(0).back()).isEqualTo(Length.ofMillimetres("4000.099998"));
    assertThat(runs.runs()).hasSize(4);
    // corner 1 in the middle of a wall: the run goes through it
    Outline turned = Wkt.parse("POLYGON ((2000 0, 4000 0, 4000 3000, 0 3000, 0 0, 2000 0))");
    assertThat(runs(turned, List.of(), SKIRTING).runs()).extracting(TrimRun::back).contains(mm(4000), mm(3000)).hasSize(4);
  }

  @Test
  void voidsAreWalkedRoundOrLeftOut() {
    Outline column = Wkt.parse("POLYGON ((0 0, 4000 0, 4000 3000, 0 3000, 0 0), (2000 1000, 2400 1000, 2400 1300, 2000 1300,"
        + " 2000 1000))");
    TrimRuns around = runs(column, List.of(), SKIRTING);
    assertThat(around.net()).isEqualTo(mm(14_000 + 1400));
    // four outside corners: each side reaches 15 mm beyond both its ends
    assertThat(around.runs()).extracting(TrimRun::cut).contains(mm(430), mm(330)).hasSize(8);
    TrimRuns without = runs(column, List.of(), SKIRTING.atVoids(AtVoids.LEFT_OUT));
    assertThat(without.net()).isEqualTo(mm(14_000));
    assertThat(without.runs()).hasSize(4);
  }

  @Test
  void casingsOverlapsAndCornersOfOpenings() {
    TrimOpening cased = new TrimOpening("D1", DOOR.from(), DOOR.to(), mm(60));
    assertThat(runs(ROOM, List.of(cased), SKIRTING).openings()).isEqualTo(mm(1020));
    // two openings that overlap count once: 1000 to 2200
    TrimOpening other = TrimOpening.of("W", Point.ofMillimetres(1500, 0), Point.ofMillimetres(2200, 0));
    assertThat(runs(ROOM, List.of(DOOR, other), SKIRTING).openings()).isEqualTo(mm(1200));
    // an opening from corner to corner: no run on that wall, and its neighbours end open
    TrimOpening wide = TrimOpening.of("W", Point.ofMillimetres(0, 0), Point.ofMillimetres(4000, 0));
    TrimRuns three = runs(ROOM, List.of(wide), SKIRTING);
    assertThat(three.runs()).hasSize(3);
    assertThat(three.runs().get(0).start()).isEqualTo(TrimEnd.OPENING);
    assertThat(three.runs().get(2).end()).isEqualTo(TrimEnd.OPENING);
    assertThat(three.net()).isEqualTo(mm(10_000));
  }

  @Test
  void anOpeningOnNoWallIsNamed() {
    Calculated<TrimRuns> runs = TrimRuns.of("Study", ROOM,
        List.of(TrimOpening.of("D9", Point.ofMillimetres(1000, 50), Point.ofMillimetres(1900, 50))), SKIRTING);
    assertThat(runs.value().openings()).isEqualTo(Length.ZERO);
    assertThat(runs.findings()).extracting(Finding::message).containsExactly("opening 'D9' from (1000 mm, 50 mm) to (1900 mm, 50 mm)"
        + " lies on no wall to within 1 mm; nothing is taken off for it, check where it is");
  }

  @Test
  void barsForARoom() {
    // 1000, 2100, 3000, 4000, 3000 of bars of 2400: 3000 = 2400 + 600 and 4000 = 2400 + 1600, each part 15 longer for the scarf:
    // 2385 + 615 (+15 each), 2385 + 1615 (+15 each). Cut: 2400, 2400, 2400, 630, 630, 1630, 1000, 2100. Three are whole bars;
    // 2100 takes one, 1630 + 630 + 3 = 2263 one, 1000 + 630 + 3 = 1633 one: 6 bars. All 13 190 and cuts / 2400: at least 6
    BarOrder order = BarOrder.ofRuns(SKIRTING, List.of(runs(ROOM, List.of(DOOR), SKIRTING)), KERF).value();
    assertThat(order.number()).isEqualTo(6);
    assertThat(order.cutting().isLeast()).isTrue();
    assertThat(order.net()).isEqualTo(mm(13_100));
    assertStepsHold(BarOrder.ofRuns(SKIRTING, List.of(runs(ROOM, List.of(DOOR), SKIRTING)), KERF));
  }

  @Test
  void offcutsServeOtherRooms() {
    // the closet of 1200 x 600: 2 * 1200 + 2 * 600 = 3600 as 1200 + 1200 (2403 with a kerf: too long), so 1200 + 600 + 3 twice:
    // alone 2 bars. Its pieces 600 and the hall's 1790 go into one bar: 2393
    Outline closet = Wkt.parse("POLYGON ((0 0, 1200 0, 1200 600, 0 600, 0 0))");
    Outline hall = Wkt.parse("POLYGON ((0 0, 1790 0, 1790 1190, 0 1190, 0 0))");
    BarGoods thin = BarGoods.of("quadrant", List.of(mm(2400)), mm(12));
    int apart = BarOrder.ofRuns(thin, List.of(runs(closet, List.of(), thin)), KERF).value().number()
        + BarOrder.ofRuns(thin, List.of(runs(hall, List.of(), thin)), KERF).value().number();
    int together = BarOrder.ofRuns(thin, List.of(runs(closet, List.of(), thin), runs(hall, List.of(), thin)), KERF).value().number();
    // hall alone: 1790, 1790, 1190 + 1190 + 3 = 2383: 3 bars, with the closet's 2: 5. Together 9560 / 2400: at least 4, as
    // 1790 + 600, 1790 + 600, 1200 + 1190, 1200 + 1190
    assertThat(apart).isEqualTo(5);
    assertThat(together).isEqualTo(4);
  }

  @Test
  void returnsAtOpenings() {
    BarGoods returned = SKIRTING.withOpenEnds(OpenEnds.RETURNED);
    TrimRuns runs = runs(ROOM, List.of(DOOR), returned);
    assertThat(runs.returns()).isEqualTo(2);
    BarOrder order = BarOrder.ofRuns(returned, List.of(runs), KERF).value();
    assertThat(order.cutting().bars().stream().flatMap(bar -> bar.pieces().stream()).filter(piece -> piece.name().endsWith("return")))
        .extracting(TrimPiece::length).containsExactly(mm(15), mm(15));
  }

  @Test
  void aRunThatShouldBeInOnePieceIsNamed() {
    BarGoods whole = SKIRTING.withLongRuns(LongRuns.IN_ONE_PIECE);
    assertThat(BarOrder.ofRuns(whole, List.of(runs(ROOM, List.of(), whole)), KERF).findings()).extracting(Finding::code)
        .containsOnly("no-bar-long-enough").hasSize(4);
  }

  @Test
  void goodsOutOfRangeAreRefused() {
    assertThatThrownBy(() -> BarGoods.of("skirting", List.of(), mm(15))).hasMessageContaining("give at least one");
    assertThatThrownBy(() -> BarGoods.of("skirting", List.of(mm(2400), mm(2400)), mm(15))).hasMessageContaining("listed twice");
    assertThatThrownBy(() -> BarGoods.of("skirting", List.of(mm(50)), mm(15)))
        .hasMessage("length of a bar must be from 100 mm to 100000 mm, but was 50 mm");
    assertThatThrownBy(() -> SKIRTING.withLeastPiece(mm(1300)))
        .hasMessage("skirting: the least piece must be at most half of the longest bar, 2400 mm, but was 1300 mm");
    assertThatThrownBy(() -> SKIRTING.withPrice(new UnitPrice(new Price(BigDecimal.ONE, "EUR"), UnitPrice.Per.SQUARE_METRE)))
        .hasMessageContaining("bars are priced by the metre");
  }
}
