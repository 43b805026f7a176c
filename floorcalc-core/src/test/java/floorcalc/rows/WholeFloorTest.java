package floorcalc.rows;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.rows.Closure.Arm;
import floorcalc.rows.LayingOrder.Meeting;
import floorcalc.rows.LayingOrder.Turn;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Source;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One start line for a floor of several rooms: its stops, the table of its strips, the order of laying, closures. */
class WholeFloorTest {
  private static final Length PITCH = mm("185");
  private static final ControlLine ALONG_X = ControlLine.through(Point.ofMillimetres(0, 0), Direction.ALONG_X);

  private static Length mm(String decimal) {
    return Length.ofMillimetres(decimal);
  }

  private static Outline box(long x0, long y0, long x1, long y1) {
    return Outline.of(Ring.of(Point.ofMillimetres(x0, y0), Point.ofMillimetres(x1, y0), Point.ofMillimetres(x1, y1),
        Point.ofMillimetres(x0, y1)));
  }

  private static FloorPart part(String name, long x0, long y0, long x1, long y1) {
    return new FloorPart(name, box(x0, y0, x1, y1));
  }

  /** A hall, a kitchen beside it and a study beyond it, a wall of 100 mm between each two, with a door in each. */
  private static final List<FloorPart> FLOOR = List.of(part("hall", 0, 0, 4000, 3010), part("kitchen", 4100, -400, 7000, 2500),
      part("door 1", 4000, 1000, 4100, 1900), part("study", 0, 3110, 4000, 5600), part("door 2", 500, 3010, 1400, 3110));

  @Test
  void everyStopOfEveryRoomIsNamedAndOpenEndsAreNone() {
    FloorStops floor = FloorStops.of(FLOOR, ALONG_X);
    assertThat(floor.stops()).extracting(Stop::name).containsExactly("hall, wall 1", "hall, wall 3", "kitchen, wall 1",
        "kitchen, wall 3", "door 1, wall 1", "door 1, wall 3", "study, wall 1", "study, wall 3");
    assertThat(floor.stops().get(4)).isEqualTo(Stop.floorAbove("door 1, wall 1", mm("1000")));
    assertThat(floor.low()).isEqualTo(mm("-400"));
    assertThat(floor.high()).isEqualTo(mm("5600"));
    Outline withHearth = Outline.of(box(0, 0, 4000, 3000).shell(), List.of(box(1000, 2000, 2000, 2500).shell()));
    assertThat(FloorStops.of(List.of(new FloorPart("hall", withHearth)), ALONG_X).stops())
        .filteredOn(stop -> stop.name().contains("void"))
        .extracting(Stop::side, Stop::low).containsExactlyInAnyOrder(
            org.assertj.core.groups.Tuple.tuple(Stop.Side.FLOOR_BELOW, mm("2000")),
            org.assertj.core.groups.Tuple.tuple(Stop.Side.FLOOR_ABOVE, mm("2500")));
    assertThatThrownBy(() -> FloorStops.of(List.of(), ALONG_X)).hasMessage("a floor needs at least one part");
    assertThatThrownBy(() -> new FloorPart(" ", withHearth)).hasMessageContaining("needs a name");
  }

  @Test
  void whichStartLineMakesTheWorstStripOfAllRoomsWidest() {
    FloorStops floor = FloorStops.of(FLOOR, ALONG_X);
    var minimum = new RuleValue<>(LayingRules.MINIMUM_ROW_WIDTH, mm("70"), Source.GIVEN);
    Calculated<StripTable> table = StripTable.of(floor.stops(), floor.low(), PITCH, minimum, mm("5"), mm("3"));
    // levels over -400, modulo 185: the floor begins at 0, 30, 105 and 180 and ends at 80, 80, 80 and 125. A line f leaves, from a
    // beginning at a, f - a or, below it, f - a + 185, and to an end at b, b - f or, beyond it, b - f + 185. Best in each stretch:
    // up to 30 at 30 (30), up to 80 in the middle of 30 and 80 (25), up to 105 at 81 (44, then 125 comes nearer), up to 125 at 125
    // (20 over 105), up to 180 at 180 (75 over 105, 85 to 80 + 185), beyond it 5 over 180. So 180, where 180 has a full board.
    assertThat(table.value().best().firstRowWidth()).isEqualTo(mm("180"));
    assertThat(table.value().best().narrowestStrip()).isEqualTo(mm("75"));
    assertThat(table.value().plusMinus()).isEqualTo(mm("3"));
    // a strip that just fits is no strip to build on: 3 mm of error make a sliver of it
    assertThat(table.findings()).extracting(Finding::code).contains("fragile-fit");
    assertThat(table.value().entries()).extracting(StripTable.Entry::firstRow).startsWith(mm("5"), mm("10")).endsWith(mm("185"))
        .hasSize(37);
    StripTable.Entry at170 = table.value().entries().get(33);
    assertThat(at170.firstRow()).isEqualTo(mm("170"));
    // hall 0: 140 and 80 + 185 - 170 = 95; kitchen 170 and 125 + 185 - 170 = 140; door 65 and 95; study 170 - (180 - 185) = 175, 95
    assertThat(at170.strips().stream().map(Length::toMillimetreString)).containsExactly("140", "95", "170", "140", "65", "95", "175",
        "95");
    assertThat(at170.narrowest()).isEqualTo(mm("65"));
    assertThat(at170.within()).isEqualTo(mm("62"));
    assertStepsHold(table);
    // with 3 mm of doubt at all but the wall that is set out from: beyond 180 - 3 the study's wall may leave a sliver; at 177 the door's
    // lining at 105 leaves 72, 69 for certain
    List<Stop> doubted = floor.stops().stream().map(stop -> stop.low().equals(floor.low()) ? stop : stop.within(mm("3"))).toList();
    Calculated<StartLine> sure = StartLine.choose(doubted, floor.low(), PITCH, minimum, RowWay.WIDEST_STRIP);
    assertThat(sure.value().firstRowWidth()).isEqualTo(mm("177"));
    assertThat(sure.value().narrowestStrip()).isEqualTo(mm("69"));
  }

  @Test
  void tableOfTooManyLinesIsRefused() {
    var minimum = new RuleValue<>(LayingRules.MINIMUM_ROW_WIDTH, mm("70"), Source.GIVEN);
    assertThatThrownBy(() -> StripTable.of(List.of(), Length.ZERO, PITCH, minimum, mm("0.05"), mm("3"))).hasMessage("a step of 0.05 mm"
        + " makes more than 2000 start lines of a pitch of 185 mm; take a longer one");
  }

  @Test
  void columnIsPassedOnBothSidesAndClosesBehind() {
    Outline room = Outline.of(box(0, 0, 5000, 4000).shell(), List.of(box(2000, 1500, 2400, 1900).shell()));
    Calculated<LayingOrder> order = LayingOrder.of(List.of(new FloorPart("hall", room)), ALONG_X, PITCH);
    assertThat(order.value().turns()).isEmpty();
    assertThat(order.value().tongueAtLine()).isEqualTo(Length.ZERO);
    assertThat(order.value().meetings()).containsExactly(new Meeting(mm("1900"), mm("2000"), mm("2400"), Meeting.How.SIDE_BY_SIDE));
    assertThat(order.findings()).extracting(Finding::code).containsExactly("arms-meet");
    assertStepsHold(order);
  }

  @Test
  void fromTheMiddleALooseTongueLiesAlongTheWholeLine() {
    Calculated<LayingOrder> order = LayingOrder.of(List.of(part("hall", 0, -2000, 5000, 2000)), ALONG_X, PITCH);
    assertThat(order.value().tongueAtLine()).isEqualTo(mm("5000"));
    assertThat(order.value().turns()).isEmpty();
    assertThat(order.value().meetings()).isEmpty();
    assertStepsHold(order);
  }

  @Test
  void roomBesideADoorIsLaidBackFromARow() {
    Calculated<LayingOrder> order = LayingOrder.of(FLOOR, ALONG_X, PITCH);
    // the kitchen is reached through door 1 at 1000: the row line at or over it is 6 * 185 = 1110, the kitchen 2900 wide below it
    assertThat(order.value().turns())
        .containsExactly(new Turn(mm("1110"), mm("4100"), mm("7000"), mm("-400"), List.of("kitchen, wall 1")));
    assertThat(order.value().turns().get(0).tongue()).isEqualTo(mm("2900"));
    assertThat(order.value().meetings()).isEmpty();
    assertThat(order.findings()).extracting(Finding::code).containsExactly("laid-back");
    assertStepsHold(order);
    // with a first row of 117.5 the row lines are at 117.5 + 4 * 185 = 857.5 and 1042.5
    assertThat(LayingOrder.of(FLOOR, ALONG_X, PITCH, mm("117.5")).value().turns().get(0).level()).isEqualTo(mm("1042.5"));
    assertThatThrownBy(() -> LayingOrder.of(FLOOR, ALONG_X, PITCH, mm("186"))).hasMessage("the first row must not be wider than the"
        + " laid pitch, 185 mm, but was 186 mm");
  }

  @Test
  void wallBetweenTwoDoorsClosesBehind() {
    Calculated<LayingOrder> order = LayingOrder.of(List.of(part("hall", 0, 0, 5000, 3000), part("door 1", 500, 3000, 1400, 3100),
        part("door 2", 3500, 3000, 4400, 3100), part("study", 0, 3100, 5000, 6000)), ALONG_X, PITCH);
    assertThat(order.value().turns()).isEmpty();
    assertThat(order.value().meetings()).containsExactly(new Meeting(mm("3100"), mm("1400"), mm("3500"), Meeting.How.SIDE_BY_SIDE));
  }

  @Test
  void roundAStairWellTheFarArmIsLaidBackAndMeetsHeadOnIfLaidFromBelow() {
    // two legs joined at the top: started in the left one, the right one is laid back from the row over 2000
    FloorPart left = part("left", 0, 0, 1000, 3000);
    FloorPart top = part("top", 1000, 2000, 3000, 3000);
    FloorPart right = part("right", 3000, 500, 4000, 3000);
    Calculated<LayingOrder> order = LayingOrder.of(List.of(left, top, right), ALONG_X, PITCH);
    assertThat(order.value().turns())
        .containsExactly(new Turn(mm("2035"), mm("3000"), mm("4000"), mm("500"), List.of("right, wall 1")));
    // joined at the bottom as well it is a ring, closed from both sides at the top
    Calculated<LayingOrder> ring = LayingOrder.of(List.of(left, top, right, part("bottom", 1000, 500, 3000, 900)), ALONG_X, PITCH);
    assertThat(ring.value().turns()).isEmpty();
    assertThat(ring.value().meetings()).containsExactly(new Meeting(mm("2000"), mm("1000"), mm("3000"), Meeting.How.SIDE_BY_SIDE));
    // started in the middle of the left leg both ways, rows laid up and rows laid down meet in the right one
    Calculated<LayingOrder> both = LayingOrder.of(List.of(left, top, right, part("bottom", 1000, 500, 3000, 900)),
        ControlLine.through(Point.ofMillimetres(0, 1500), Direction.ALONG_X), PITCH);
    assertThat(both.value().tongueAtLine()).isEqualTo(mm("1000"));
    assertThat(both.value().turns()).hasSize(2);
    assertThat(both.value().meetings()).extracting(Meeting::how).containsExactly(Meeting.How.HEAD_ON);
    assertStepsHold(both);
  }

  @Test
  void partsThatDoNotHangTogetherAreSaid() {
    Calculated<LayingOrder> order =
        LayingOrder.of(List.of(part("hall", 0, 0, 1000, 1000), part("shed", 5000, 0, 6000, 1000)), ALONG_X, PITCH);
    assertThat(order.findings()).extracting(Finding::code).containsExactly("not-reached");
    assertThatThrownBy(() -> LayingOrder.of(List.of(part("hall", 0, 10, 1000, 1000)), ALONG_X, PITCH))
        .hasMessageContaining("the start line misses the floor");
  }

  @Test
  void slantedFloorsAreFollowed() {
    // a triangle that stands on its point beside a trapezoid: both reach up to 2000
    Outline room = Outline.of(Ring.of(Point.ofMillimetres(0, 0), Point.ofMillimetres(1000, 0), Point.ofMillimetres(2000, 1000),
        Point.ofMillimetres(3000, 200), Point.ofMillimetres(4000, 2000), Point.ofMillimetres(0, 2000)));
    Calculated<LayingOrder> order = LayingOrder.of(List.of(new FloorPart("bay", room)), ALONG_X, PITCH);
    // the point at 3000,200 is laid back from the row over 1000; the floor is there 2000 to 3000 + 800 / 1.8 = 3444.444 wide
    assertThat(order.value().turns()).singleElement().satisfies(turn -> {
      assertThat(turn.level()).isEqualTo(mm("1110"));
      assertThat(turn.from()).isEqualTo(mm("2000"));
      assertThat(turn.to()).isEqualTo(mm("3444.444444"));
      assertThat(turn.farthest()).isEqualTo(mm("200"));
    });
  }

  @Test
  void bothArmsMustArriveInPhase() {
    // 11 rows of 3 1/4 in from 3/8 in arrive at 36 1/8 in; the other arm, 11 rows from the wall's gap of 1/2 in, 1/8 in beyond
    Length pitch = Length.ofInches(3, 1, 4);
    Arm one = Arm.straight("left of the hearth", Length.ofInches(0, 3, 8), 11, pitch);
    assertThat(one.arrival()).isEqualTo(Length.ofInches(36, 1, 8));
    Arm other = Arm.straight("right of the hearth", Length.ofInches(0, 1, 2), 11, pitch);
    Calculated<Closure> closure = Closure.of(one, other, Length.ofInches(120, 0, 1), Length.ofInches(0, 1, 32));
    assertThat(closure.value().mismatch()).isEqualTo(Length.ofInches(0, -1, 8));
    assertThat(closure.value().parting()).isEqualTo(Length.ZERO);
    assertThat(closure.findings()).extracting(Finding::code).containsExactly("arms-out-of-phase");
    assertStepsHold(closure);
    // a whole row more in one arm is no mismatch
    assertThat(Closure.of(one, Arm.straight("right", Length.ofInches(0, 3, 8), 10, pitch), PITCH, mm("1")).value().mismatch())
        .isEqualTo(Length.ZERO);
  }

  @Test
  void pitchesThatDifferAddUpOverTheRows() {
    // 78 rows, one arm 1/64 in wider each: 78/64 = 1 7/32 in
    Length pitch = Length.ofInches(3, 1, 4);
    Arm tight = Arm.straight("tight", Length.ZERO, 78, pitch);
    Arm loose = Arm.straight("loose", Length.ZERO, 78, pitch.plus(Length.ofInches(0, 1, 64)));
    Calculated<Closure> closure = Closure.of(loose, tight, mm("3000"), mm("0.5"));
    assertThat(closure.value().mismatch()).isEqualTo(Length.ofInches(1, 7, 32));
    // in phase as measured, but each pitch known to 0.05 mm: 20 rows on both sides may be 2 mm apart
    Arm a = new Arm("a", Length.ZERO, 20, PITCH, mm("0.05"), Length.ZERO, mm("1000"));
    Calculated<Closure> unsure = Closure.of(a, new Arm("b", Length.ZERO, 20, PITCH, mm("0.05"), mm("2"), mm("3000")), mm("6000"),
        mm("0.5"));
    assertThat(unsure.value().plusMinus()).isEqualTo(mm("2"));
    // 2 mm in 3 m of the other arm: 4 mm over the row of 6 m that joins them
    assertThat(unsure.value().parting()).isEqualTo(mm("-4"));
    assertThat(unsure.findings()).extracting(Finding::code).containsExactly("arms-may-be-out-of-phase", "arms-at-an-angle");
    assertStepsHold(unsure);
    assertThatThrownBy(() -> Arm.straight("a", Length.ZERO, -1, PITCH)).hasMessageContaining("must not be negative");
  }
}
