package floorcalc.underlay;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Wkt;
import floorcalc.working.Calculated;
import java.util.List;
import org.junit.jupiter.api.Test;

class StripLayoutTest {
  private static final Direction ALONG_Y = Direction.ALONG_X.plusQuarterTurns(1);
  private static final RollGoods METRE = RollGoods.underlay("foam", mm(1000), mm(15_000));
  private static final Outline ROOM = Wkt.parse("POLYGON ((0 0, 4200 0, 4200 3600, 0 3600, 0 0))");
  private static final Outline LETTER_L =
      Wkt.parse("POLYGON ((0 0, 5000 0, 5000 2000, 2000 2000, 2000 4000, 0 4000, 0 0))");

  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static Calculated<StripLayout> laid(Outline outline, Direction along, RollGoods roll) {
    Calculated<StripLayout> layout = StripLayout.of("Study", outline, along, roll);
    assertStepsHold(layout);
    return layout;
  }

  private static List<Length> lengths(StripLayout layout) {
    return layout.strips().stream().map(RollStrip::length).toList();
  }

  @Test
  void buttedStripsOfARectangle() {
    // 3600 / 1000 = 3.6: four strips of 4200, three seams of 4200 between them
    StripLayout along = laid(ROOM, Direction.ALONG_X, METRE).value();
    assertThat(lengths(along)).containsExactly(mm(4200), mm(4200), mm(4200), mm(4200));
    assertThat(along.seamLength()).isEqualTo(mm(12_600));
    assertThat(along.netArea()).hasToString("15.12 m²");
    assertThat(along.cutArea()).hasToString("16.8 m²");
    // 4200 / 1000 = 4.2: five strips of 3600, four seams of 3600
    StripLayout across = laid(ROOM, ALONG_Y, METRE).value();
    assertThat(lengths(across)).containsOnly(mm(3600)).hasSize(5);
    assertThat(across.seamLength()).isEqualTo(mm(14_400));
  }

  @Test
  void aWidthThatFitsExactlyTakesNoStripMore() {
    Outline room = Wkt.parse("POLYGON ((0 0, 3000 0, 3000 2000, 0 2000, 0 0))");
    assertThat(laid(room, Direction.ALONG_X, METRE).value().strips()).hasSize(2);
    // a nanometre more, and it takes three
    Outline more = Wkt.parse("POLYGON ((0 0, 3000 0, 3000 2000.000001, 0 2000.000001, 0 0))");
    assertThat(laid(more, Direction.ALONG_X, METRE).value().strips()).hasSize(3);
    // and one strip covers a room no wider than its overlap
    RollGoods film = RollGoods.barrier("film", mm(1000), mm(15_000), Lap.GERMAN_PRACTICE);
    Outline narrow = Wkt.parse("POLYGON ((0 0, 3000 0, 3000 150, 0 150, 0 0))");
    assertThat(laid(narrow, Direction.ALONG_X, film).value().strips()).hasSize(1);
  }

  @Test
  void lapsAndUpturns() {
    // to cover: 3600 + 2 * 50 = 3700; (3700 - 150) / (2000 - 150) = 1.92: two strips of 4200 + 2 * 50
    RollGoods film = RollGoods.barrier("film", mm(2000), mm(25_000), Lap.NBS_K21).withUpturn(mm(50));
    StripLayout layout = laid(ROOM, Direction.ALONG_X, film).value();
    assertThat(lengths(layout)).containsExactly(mm(4300), mm(4300));
    assertThat(layout.seamLength()).isEqualTo(mm(4300));
    assertThat(layout.strips().get(0).acrossFrom()).isEqualTo(mm(-50));
    // the second begins an overlap before the first ends
    assertThat(layout.strips().get(1).acrossFrom()).isEqualTo(mm(-50 + 2000 - 150));
  }

  @Test
  void stripsAreAsLongAsTheFloorWithinThem() {
    // two strips of 5000 and two of 2000; seams of 5000, 2000 and 2000
    StripLayout along = laid(LETTER_L, Direction.ALONG_X, METRE).value();
    assertThat(lengths(along)).containsExactly(mm(5000), mm(5000), mm(2000), mm(2000));
    assertThat(along.seamLength()).isEqualTo(mm(9000));
    // two of 4000 and three of 2000; with strips along y the frame's across runs from right to left
    assertThat(lengths(laid(LETTER_L, ALONG_Y, METRE).value()))
        .containsExactly(mm(2000), mm(2000), mm(2000), mm(4000), mm(4000));
  }

  @Test
  void fromTheSideThatTakesLess() {
    // 4500 across: five strips. From the low side the third reaches from 2000 to 3000, clear of the long arm, which ends at 2000:
    // 5000 + 5000 + 3 * 2000 = 16000. From the high side strips lie at 3500, 2500, 1500, 500, -500: three of 5000, two of 2000: 19000
    Outline room = Wkt.parse("POLYGON ((0 0, 5000 0, 5000 2000, 2000 2000, 2000 4500, 0 4500, 0 0))");
    assertThat(laid(room, Direction.ALONG_X, METRE).value().length()).isEqualTo(mm(16_000));
    // turned upside down it is the high side
    Outline turned = Wkt.parse("POLYGON ((0 0, 2000 0, 2000 2500, 5000 2500, 5000 4500, 0 4500, 0 0))");
    assertThat(laid(turned, Direction.ALONG_X, METRE).value().length()).isEqualTo(mm(16_000));
  }

  @Test
  void anUpturnReachesUpTheWallOfARecess() {
    // 4000 + 2 * 100 = 4200 across: five strips from -100. The wall at 2000 is turned up to 2100, which the strip from 1900 to 2900
    // has to cover: so three long strips of 5200, then 2200 for each of the others: 3 * 5200 + 2 * 2200 = 20 000
    StripLayout layout = laid(LETTER_L, Direction.ALONG_X, METRE.withUpturn(mm(100))).value();
    assertThat(layout.length()).isEqualTo(mm(20_000));
  }

  @Test
  void aStripIsSeveralWhereARecessOrAVoidInterruptsIt() {
    Outline letterU = Wkt.parse("POLYGON ((0 0, 5000 0, 5000 3000, 4000 3000, 4000 1000, 1000 1000, 1000 3000, 0 3000, 0 0))");
    StripLayout layout = laid(letterU, Direction.ALONG_X, METRE).value();
    assertThat(lengths(layout)).containsExactly(mm(5000), mm(1000), mm(1000), mm(1000), mm(1000));
    assertThat(layout.strips().stream().map(RollStrip::number)).containsExactly(1, 2, 2, 3, 3);
    Outline island = Wkt.parse("POLYGON ((0 0, 5000 0, 5000 3000, 0 3000, 0 0), (2000 1000, 3000 1000, 3000 2000, 2000 2000,"
        + " 2000 1000))");
    assertThat(lengths(laid(island, Direction.ALONG_X, METRE).value())).containsExactly(mm(5000), mm(2000), mm(2000), mm(5000));
    // a column that leaves a part of the strip free does not interrupt it
    Outline column = Wkt.parse("POLYGON ((0 0, 5000 0, 5000 3000, 0 3000, 0 0), (2000 1000, 3000 1000, 3000 1999, 2000 1999,"
        + " 2000 1000))");
    assertThat(lengths(laid(column, Direction.ALONG_X, METRE).value())).containsOnly(mm(5000)).hasSize(3);
  }

  @Test
  void slantedWallsEndAStripWhereTheyReachFarthest() {
    // a right triangle of 4000 by 2000: the hypotenuse is at x = 4000 - 2 * y, so strips of 4000 and 2000
    Outline triangle = Wkt.parse("POLYGON ((0 0, 4000 0, 0 2000, 0 0))");
    assertThat(lengths(laid(triangle, Direction.ALONG_X, METRE).value())).containsExactly(mm(4000), mm(2000));
    // a third of a millimetre up a wall that leans by 1 in 3: the place is rounded outwards to the nanometre
    Outline leaning = Wkt.parse("POLYGON ((0 0, 3000 0, 3001 3000, 0 3000, 0 0))");
    assertThat(lengths(laid(leaning, Direction.ALONG_X, METRE).value()))
        .containsExactly(Length.ofMillimetres("3000.333334"), Length.ofMillimetres("3000.666667"), mm(3001));
  }

  @Test
  void aStripLongerThanARollIsMadeUpWithEndLaps() {
    // 33 m in rolls of 15 m with laps of 0.15 m: (33 - 0.15) / (15 - 0.15) = 2.21: three parts, 33 + 2 * 0.15 = 33.3 m:
    // 15 + 15 + 3.3; seams: two end laps across 1 m
    Outline passage = Wkt.parse("POLYGON ((0 0, 33000 0, 33000 1000, 0 1000, 0 0))");
    RollGoods film = RollGoods.barrier("film", mm(1000), mm(15_000), Lap.NBS_K21);
    StripLayout layout = laid(passage, Direction.ALONG_X, film).value();
    assertThat(layout.cutLengths()).containsExactly(mm(15_000), mm(15_000), mm(3300));
    assertThat(layout.seamLength()).isEqualTo(mm(2000));
  }

  @Test
  void workingAsText() {
    assertThat(laid(ROOM, Direction.ALONG_X, RollGoods.barrier("film", mm(2000), mm(25_000), Lap.NWFA_MAGAZINE)).explain())
        .isEqualTo("""
            breadth-to-cover: Study: how wide is the floor across the strips, which run at 0°?
              B = H + 2 * u
                H = 3600 mm  (extent of the floor across the strips)
                u = 0 mm  (upturn at each wall)
              = 3600 mm  [definition]
            strips-across: Study: how many strips lie side by side?
              n = max(1, ceil((B - o) / (w - o)))
                B = 3600 mm  (breadth to cover)
                o = 101.6 mm  (overlap, NWFA magazine; Hardwood Floors, February/March 2017, National Wood Flooring Association, 2017, p. 52 (read in the source))
                w = 2000 mm  (width of the roll)
              = 2  [definition]
            strip-length: Study: how long are all strips, each as long as the floor within it and its upturns?
              S = n1 * x1
                n1 = 2  (how many)
                x1 = 4200 mm  (strips of this length)
              = 8400 mm  [definition]
            seam-length: Study: along how much do strips meet, side by side?
              value as stated
              = 4200 mm  [definition]""");
  }

  @Test
  void whatCannotBeLaidIsRefused() {
    assertThatThrownBy(() -> StripLayout.of("Study", Wkt.parse("POLYGON ((0 0, 3000 3000, 3000 0, 0 3000, 0 0))"),
        Direction.ALONG_X, METRE)).isInstanceOf(IllegalArgumentException.class).hasMessageStartingWith("Study: the outline is not sound");
    RollGoods tape = RollGoods.underlay("narrow", mm(50), mm(100_000));
    assertThatThrownBy(() -> StripLayout.of("Field", Wkt.parse("POLYGON ((0 0, 10 0, 10 2000000, 0 2000000, 0 0))"),
        Direction.ALONG_X, tape)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("Field would take 40000 strips of 50 mm, at most 20000 are laid; check the outline, the roll and their units");
    assertThatThrownBy(() -> METRE.withLap(Lap.of(mm(1000)))).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the overlap must be less than width and length of the roll, 1000 mm, but was 1000 mm");
    assertThatThrownBy(() -> Lap.named("none such")).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("there is no lap named 'none such'; there are butt joints, NWFA magazine, NBS K21, Chinese practice, German practice");
  }
}
