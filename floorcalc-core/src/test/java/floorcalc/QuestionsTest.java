package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import floorcalc.moisture.Percent;
import floorcalc.movement.BayMovement;
import floorcalc.movement.BreakAdvice;
import floorcalc.movement.Coefficient;
import floorcalc.movement.ContinuousFloor;
import floorcalc.movement.JoinedOpening;
import floorcalc.movement.JoinedRoom;
import floorcalc.movement.MovementForecast;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.rows.Closure;
import floorcalc.rows.ControlLine;
import floorcalc.rows.EndCut;
import floorcalc.rows.FloorPart;
import floorcalc.rows.FloorStops;
import floorcalc.rows.LayingOrder;
import floorcalc.rows.RowDivision;
import floorcalc.rows.RowDrift;
import floorcalc.rows.RowWay;
import floorcalc.rows.RowsBothWays;
import floorcalc.rows.Stop;
import floorcalc.rows.StripTable;
import floorcalc.rows.TaperedRows;
import floorcalc.rows.TrimCover;
import floorcalc.rows.WallFace;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What people who lay floors ask about rows and lines, each answered end to end with numbers that came up on real floors. */
class QuestionsTest {
  private static Length in(long whole, int numerator, int denominator) {
    return Length.ofInches(whole, numerator, denominator);
  }

  private static Length mm(String decimal) {
    return Length.ofMillimetres(decimal);
  }

  private static Outline box(long x0, long y0, long x1, long y1) {
    return Outline.of(Ring.of(Point.ofMillimetres(x0, y0), Point.ofMillimetres(x1, y0), Point.ofMillimetres(x1, y1),
        Point.ofMillimetres(x0, y1)));
  }

  /** Three rooms 21 m wide across the boards with their openings; oak of 3 and of 4 mm for each metre; 9 mm kept on each side. */
  @Test
  void howWideIsAFloorAcrossItsBoardsCountedThroughOpeningsAndWhereDoesItBreak() {
    ContinuousFloor floor = ContinuousFloor.of(
        List.of(new JoinedRoom("hall", box(0, 0, 4000, 6900)), new JoinedRoom("dining room", box(0, 7000, 4000, 13_900)),
            new JoinedRoom("study", box(0, 14_000, 4000, 21_000))),
        List.of(new JoinedOpening("arch", "hall", "dining room", box(1000, 6900, 2500, 7000)),
            new JoinedOpening("study door", "dining room", "study", box(1000, 13_900, 1900, 14_000))), Direction.ALONG_X);
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(mm("14"), mm("185")).with(LayingRules.EXPANSION_GAP, mm("9"), Source.GIVEN);
    String[][] needed = {{"0.3", "63", "22.5"}, {"0.4", "84", "33"}};
    for (String[] oak : needed) {
      BreakAdvice advice = BreakAdvice.of(MovementForecast.of(Percent.of("8"), Percent.of("8"), Percent.of("9"),
          Coefficient.ofPercent(new BigDecimal(oak[0]), "oak", Source.GIVEN)), floor, rules).value();
      BayMovement asOne = advice.asOne().get(0);
      assertThat(asOne.bay().across()).isEqualTo(mm("21000"));
      // 21 m of 3 mm are 63 mm and of 4 mm 84 mm in total, half of it on each side; 18 mm in total are kept
      assertThat(asOne.swelling()).isEqualTo(mm(oak[1]));
      assertThat(asOne.needed().minus(mm("9"))).isEqualTo(mm(oak[2]));
      assertThat(asOne.fits()).isFalse();
      assertThat(advice.breaks()).extracting(at -> at.opening().name()).contains("arch", "study door");
    }
    // with the boards along the long way it is 4 m wide
    assertThat(ContinuousFloor.of(floor.rooms(), floor.openings(), Direction.fromDegrees(90)).bays().get(0).across())
        .isEqualTo(mm("4000"));
  }

  @Test
  void whereDoesOneStartLineLeaveTheWorstStripOfAWholeFloorWidest() {
    // 5 in boards; a hall of 120 in, a hearth whose front is 40 1/2 in off, a stair that ends the floor at 83 in; laid from 0
    List<Stop> stops = List.of(Stop.floorAbove("hall", Length.ZERO), Stop.floorBelow("hearth", in(40, 1, 2)),
        Stop.floorBelow("stair", in(83, 0, 1)), Stop.floorBelow("far wall", in(119, 0, 1)));
    Calculated<StripTable> table = StripTable.of(stops, Length.ZERO, in(5, 0, 1),
        new RuleValue<>(LayingRules.MINIMUM_ROW_WIDTH, in(1, 0, 1), Source.GIVEN), in(0, 1, 2), in(0, 1, 8));
    // ends at 1/2, 3 and 4 over a row line: between 1/2 and 3 the first row of 1 1/2 leaves 1 1/2 at the stair; between 3 and 4 there
    // is at most 1, beyond 4 the hearth: (0 + 5 1/2) / 2 = 2 3/4 is outside, 4 leaves 1 1/2 too and a full board at the far wall
    assertThat(table.value().best().narrowestStrip()).isEqualTo(in(1, 1, 2));
    assertThat(table.value().best().firstRowWidth()).isEqualTo(in(4, 0, 1));
    StripTable.Entry atFour = table.value().entries().get(7);
    assertThat(atFour.strips()).containsExactly(in(4, 0, 1), in(1, 1, 2), in(4, 0, 1), in(5, 0, 1));
    // 1/8 in of error: the full board at the far wall may be a sliver; 1 1/2 in from the hall keeps 1 3/8
    assertThat(atFour.within()).isEqualTo(Length.ZERO);
    StripTable.Entry atOneAndAHalf = table.value().entries().get(2);
    assertThat(atOneAndAHalf.firstRow()).isEqualTo(in(1, 1, 2));
    assertThat(atOneAndAHalf.narrowest()).isEqualTo(in(1, 1, 2));
    assertThat(atOneAndAHalf.within()).isEqualTo(in(1, 3, 8));
    assertThat(table.findings()).extracting(Finding::code).containsExactly("fragile-fit");
  }

  @Test
  void whatDoesTheLaidPitchDoToTheLastRow() {
    // 33 ft in 5 in boards: 79 full rows and one of 1 in; each lies 0.025 in wider: 79 * 0.025 = 1.975 in, nearly 2 in
    RowDivision nominal = RowDivision.of(in(396, 0, 1), in(5, 0, 1), in(1, 0, 1), RowWay.AS_NEEDED).value();
    assertThat(nominal.lastRow()).isEqualTo(in(1, 0, 1));
    Calculated<RowDrift> drift = RowDrift.of(nominal, in(5, 0, 1).plus(Length.ofMillimetres("0.635")));
    assertThat(drift.value().drift()).isEqualTo(Length.ofMillimetres("50.165"));
    assertThat(drift.findings()).extracting(Finding::code).containsExactly("last-row-narrower-than-drift");
    // 1 mm a joint is 30 mm in 30 rows
    assertThat(RowDrift.of(mm("185"), mm("186"), 30).value().drift()).isEqualTo(mm("30"));
  }

  @Test
  void whichRowsTaperAndDoesTheTrimHideIt() {
    // a room 3/8 in out over 12 ft; shoe of 3/4 in, 1/4 in gap, 1/8 in bearing: it hides 3/8 in
    TrimCover shoe = new TrimCover(in(0, 3, 4), in(0, 1, 8), in(0, 1, 4));
    WallFace out = WallFace.of(List.of(new WallFace.Offset(Length.ZERO, in(118, 3, 8)), new WallFace.Offset(in(144, 0, 1), in(118, 0, 1))));
    Calculated<TaperedRows> hidden = TaperedRows.of(out, in(5, 0, 1), shoe);
    assertThat(hidden.value().rips()).isEmpty();
    // 118 - 1/4 = 117 3/4: 23 rows are 115
    assertThat(hidden.value().straightRow()).contains(in(2, 3, 4));
    // 1 in out: 5/8 in too much; over both walls each has 1/2 in, 1/8 in too much
    assertThat(shoe.toSaw(in(1, 0, 1)).value()).isEqualTo(in(0, 5, 8));
    assertThat(shoe.toSawAtEachOfTwo(in(1, 0, 1)).value()).isEqualTo(in(0, 1, 8));
    // ripped to the wall, the last row is 3 3/4 in at one end and 2 3/4 at the other
    WallFace farOut = WallFace.of(List.of(new WallFace.Offset(Length.ZERO, in(119, 0, 1)), new WallFace.Offset(in(144, 0, 1), in(118, 0, 1))));
    assertThat(TaperedRows.of(farOut, in(5, 0, 1), shoe).value().rips()).containsExactly(
        new TaperedRows.Rip(24, Length.ZERO, in(144, 0, 1), in(3, 3, 4), in(2, 3, 4)));
  }

  @Test
  void doBothWaysRoundAnObstacleMeetInPhase() {
    Outline room = Outline.of(box(0, 0, 5000, 4000).shell(), List.of(box(2000, 1500, 3200, 2400).shell()));
    ControlLine start = ControlLine.through(Point.ofMillimetres(0, 0), Direction.ALONG_X);
    Calculated<LayingOrder> order = LayingOrder.of(List.of(new FloorPart("kitchen", room)), start, mm("185"));
    assertThat(order.value().meetings()).singleElement()
        .satisfies(meeting -> assertThat(meeting.level()).isEqualTo(mm("2400")));
    // 13 rows up to behind the island, one arm laid 0.3 mm wider a row: 3.9 mm out of phase
    Calculated<Closure> closure = Closure.of(Closure.Arm.straight("left", Length.ZERO, 13, mm("185.3")),
        Closure.Arm.straight("right", Length.ZERO, 13, mm("185")), mm("5000"), mm("0.5"));
    assertThat(closure.value().mismatch()).isEqualTo(mm("3.9"));
    assertThat(closure.findings()).extracting(Finding::code).containsExactly("arms-out-of-phase");
  }

  @Test
  void whatDoesRoundingOneFaceAtFortyFiveDegreesCostOverTwelveBoards() {
    ControlLine rows = ControlLine.through(Point.ofMillimetres(0, 0), Direction.fromDegrees(45));
    Point end = Point.ofMillimetres(3000, 0);
    Length twelve = EndCut.of(rows, rows.origin(), end, in(48, 0, 1)).value().cut();
    assertThat(twelve.toMillimetres() / 25.4).isCloseTo(67.88, within(0.005));
    assertThat(twelve.minus(in(5, 5, 8).multipliedBy(12)).toMillimetres() / 25.4).isCloseTo(0.38, within(0.005));
  }

  @Test
  void isARowOrAJointToLieOnTheMiddle() {
    RowsBothWays squares = RowsBothWays.fromMiddle(in(176, 0, 1), in(12, 0, 1), in(6, 0, 1)).value();
    assertThat(squares.joint()).isEqualTo(RowsBothWays.Joint.ROW_ON_LINE);
    assertThat(squares.rows() - 2).isEqualTo(13);
    assertThat(squares.stripBefore()).isEqualTo(in(10, 0, 1));
  }

  @Test
  void whichStopsOfTwoRoomsDoesALineHaveToServe() {
    FloorStops stops = FloorStops.of(List.of(new FloorPart("hall", box(0, 0, 4000, 3000)), new FloorPart("door", box(1000, 3000, 1900, 3100)),
        new FloorPart("study", box(0, 3100, 4000, 5000))), ControlLine.through(Point.ofMillimetres(0, 0), Direction.ALONG_X));
    assertThat(stops.stops()).extracting(Stop::name)
        .containsExactly("hall, wall 1", "hall, wall 3", "study, wall 1", "study, wall 3");
  }
}
