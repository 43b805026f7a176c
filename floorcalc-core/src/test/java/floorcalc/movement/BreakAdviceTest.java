package floorcalc.movement;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.moisture.Percent;
import floorcalc.outline.Direction;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Source;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BreakAdviceTest {
  /** 0.25 % of the width for each per cent; 8 % now, 7 % and 9 % in the seasons: 2.5 mm a metre either way, in total. */
  private static final MovementForecast FORECAST = MovementForecast.of(Percent.of("8"), Percent.of("7"), Percent.of("9"),
      Coefficient.NF_DTU_SOLID);
  /** A gap of 10 mm on each side; at most 8 m across the boards and 20 m along them. */
  private static final LayingRules RULES = RuleSet.COMMON_PRACTICE.forBoard(mm(14), mm(185))
      .with(LayingRules.EXPANSION_GAP, mm(10), Source.GIVEN).with(LayingRules.MAXIMUM_RUN_ACROSS, mm(8000), Source.GIVEN)
      .with(LayingRules.MAXIMUM_RUN_ALONG, mm(20_000), Source.GIVEN);

  static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  static JoinedRoom room(String name, long x, long y, long width, long height) {
    return new JoinedRoom(name, Wkt.parse(box(x, y, width, height)));
  }

  static JoinedOpening opening(String name, String one, String other, long x, long y, long width, long height) {
    return new JoinedOpening(name, one, other, Wkt.parse(box(x, y, width, height)));
  }

  private static String box(long x, long y, long width, long height) {
    return "POLYGON ((" + x + " " + y + ", " + (x + width) + " " + y + ", " + (x + width) + " " + (y + height) + ", " + x + " "
        + (y + height) + ", " + x + " " + y + "))";
  }

  /** Three rooms of 3900 mm in line across the boards, two openings of 100 mm between: 3 · 3900 + 2 · 100 = 11900 mm. */
  private static ContinuousFloor inLine(Direction boards) {
    return ContinuousFloor.of(List.of(room("hall", 0, 0, 5000, 3900), room("dining room", 0, 4000, 5000, 3900),
        room("study", 0, 8000, 5000, 3900)), List.of(opening("arch", "hall", "dining room", 1000, 3900, 1500, 100),
            opening("study door", "dining room", "study", 2000, 7900, 900, 100)), boards);
  }

  /**
   * As one: 11900 · 0.0025 = 29.75 mm in total, 14.875 on each side. A break at the arch: the hall with the arch 4000 mm, 10 mm in total, 5 on
   * each side; the others, with the arch counted on this side too, 8000 mm, 20 mm in total, 10 on each side, just within 10. The
   * break takes 5 + 10 = 15 mm. A break at the study door does the same; the arch is named first.
   */
  @Test
  void oneBreakOfTwoOpenings() {
    Calculated<BreakAdvice> advice = BreakAdvice.of(FORECAST, inLine(Direction.ALONG_X), RULES);
    assertStepsHold(advice);
    BayMovement asOne = advice.value().asOne().get(0);
    assertThat(advice.value().asOne()).hasSize(1);
    assertThat(asOne.bay().across()).isEqualTo(mm(11_900));
    assertThat(asOne.bay().along()).isEqualTo(mm(5000));
    assertThat(asOne.swelling()).isEqualTo(Length.parse("29.75 mm"));
    assertThat(asOne.shrinkage()).isEqualTo(Length.parse("29.75 mm"));
    assertThat(asOne.farthest()).isEqualTo(mm(5950));
    assertThat(asOne.needed()).isEqualTo(Length.parse("14.875 mm"));
    assertThat(asOne.gap()).isEqualTo(mm(15));
    assertThat(asOne.judgements()).extracting(judgement -> judgement.code() + " " + judgement.isMet())
        .containsExactly("gap-takes-movement false", "width-within-run false", "length-within-run true");
    assertThat(asOne.judgements()).extracting(Judgement::limit).startsWith("at least 14.875 mm on each side (29.75 mm in total)");

    assertThat(advice.value().breaks()).singleElement().satisfies(at -> {
      assertThat(at.opening().name()).isEqualTo("arch");
      assertThat(at.width()).isEqualTo(mm(15));
    });
    assertThat(advice.value().withBreaks()).extracting(bay -> bay.bay().across() + " " + bay.needed())
        .containsExactly("4000 mm 5 mm", "8000 mm 10 mm");
    assertThat(advice.value().withBreaks()).allMatch(BayMovement::fits);
    assertThat(advice.findings()).extracting(Finding::toString).singleElement().asString().contains("arch",
        "11900 mm across the boards, 5000 mm along them, swells 29.75 mm in total and needs 14.875 mm on each side; put a break"
            + " of 15 mm in total at arch");
  }

  /** Held at the far wall of the hall the study's far edge moves by all of it, 29.75 mm, on that side. */
  @Test
  void heldAtAPoint() {
    Calculated<BreakAdvice> advice = BreakAdvice.heldAt(FORECAST, inLine(Direction.ALONG_X), RULES, Point.ofMillimetres(100, 0));
    assertStepsHold(advice);
    BayMovement asOne = advice.value().asOne().get(0);
    assertThat(asOne.farthest()).isEqualTo(mm(11_900));
    assertThat(asOne.needed()).isEqualTo(Length.parse("29.75 mm"));
    assertThat(asOne.swelling()).isEqualTo(Length.parse("29.75 mm"));
    assertThat(asOne.judgements().get(0).limit())
        .isEqualTo("at least 29.75 mm on the side farther from where it is held (29.75 mm in total)");
    assertThat(asOne).asString().endsWith("needs 29.75 mm on the side farther from where it is held");
    // held 4000 mm from the break the hall fits; from 3900 mm to 11900 mm the rest is free: 10 mm on each side
    assertThat(advice.value().withBreaks()).extracting(BayMovement::needed).containsExactly(mm(10), mm(10));
    assertThat(advice.value().breaks()).extracting(at -> at.width()).containsExactly(mm(20));
    assertThatThrownBy(() -> BreakAdvice.heldAt(FORECAST, inLine(Direction.ALONG_X), RULES, Point.ofMillimetres(-2, 0)))
        .hasMessageContaining("is in none of its rooms and openings");
  }

  /** Boards along the line of rooms: nothing is summed, 5000 mm across, 12.5 mm in total; 11900 mm along are within 20 m. */
  @Test
  void alongTheBoardsNothingIsSummed() {
    Calculated<BreakAdvice> advice = BreakAdvice.of(FORECAST, inLine(Direction.fromDegrees(90)), RULES);
    assertStepsHold(advice);
    assertThat(advice.value().breaks()).isEmpty();
    assertThat(advice.findings()).isEmpty();
    assertThat(advice.value().withBreaks()).singleElement().satisfies(bay -> {
      assertThat(bay.swelling()).isEqualTo(Length.parse("12.5 mm"));
      assertThat(bay.bay().along()).isEqualTo(mm(11_900));
      assertThat(bay.fits()).isTrue();
    });
    // boards that move along too: 11900 · 0.0002 = 2.38 mm in total, 1.19 on each side
    Calculated<BreakAdvice> both = BreakAdvice.of(FORECAST.along(Coefficient.PLYWOOD), inLine(Direction.fromDegrees(90)), RULES);
    assertStepsHold(both);
    assertThat(both.value().asOne().get(0).judgements()).extracting(Judgement::limit)
        .contains("at least 1.19 mm on each side (2.38 mm in total)");
  }

  /** A room 9 m across: breaks at openings leave it too wide, 9000 / 8000 = 1.125, so 2 bays. */
  @Test
  void aRoomTooWideByItself() {
    ContinuousFloor floor = ContinuousFloor.of(List.of(room("hall", 0, 0, 5000, 9000), room("store", 0, 9100, 2000, 1000)),
        List.of(opening("door", "hall", "store", 500, 9000, 800, 100)), Direction.ALONG_X);
    Calculated<BreakAdvice> advice = BreakAdvice.of(FORECAST, floor, RULES);
    assertStepsHold(advice);
    assertThat(advice.value().breaks()).extracting(at -> at.opening().name()).containsExactly("door");
    assertThat(advice.findings()).extracting(Finding::code).containsExactly("break-needed", "break-within-room");
    assertThat(advice.findings().get(1).message()).contains("split it into 2 across the boards, each of at most 8000 mm, and 1"
        + " along them, each of at most 20000 mm");
  }

  /**
   * Walls of the bay of 11900 mm: the middle is at 5950. The study's far wall moves by 2.5 mm a metre over 5950 mm, 14.875 mm. The hall's wall beside the
   * arch, at 3900, faces the middle: 2050 mm off, a floor that shrinks comes 5.125 mm nearer. Ends of the arch are no walls, its two linings are.
   */
  @Test
  void theMovementAtEachWall() {
    ContinuousBay bay = inLine(Direction.ALONG_X).bays().get(0);
    List<GapPoint> points = bay.points(mm(10));
    assertThat(points).hasSize(3 * 8 + 2 * 4);
    assertThat(points).extracting(GapPoint::name).contains("study, wall 3 at corner 4", "arch, wall 2 at corner 2")
        .doesNotContain("arch, wall 1 at corner 1", "arch, wall 3 at corner 3");
    Calculated<GapChecks> checks = GapChecks.judge(FORECAST, points, Pinning.notLookedAt());
    assertThat(closes(checks, "study, wall 3 at corner 4")).isEqualTo(Length.parse("14.875 mm"));
    assertThat(closes(checks, "hall, wall 1 at corner 1")).isEqualTo(Length.parse("14.875 mm"));
    assertThat(closes(checks, "hall, wall 3 at corner 3")).isEqualTo(Length.parse("5.125 mm"));
    assertThat(closes(checks, "arch, wall 2 at corner 2")).isEqualTo(Length.ZERO);
    Calculated<GapChecks> held = GapChecks.judge(FORECAST, bay.pointsHeldAt(mm(10), Point.ofMillimetres(0, 3900)),
        Pinning.notLookedAt());
    assertThat(closes(held, "study, wall 3 at corner 4")).isEqualTo(mm(20));
    assertThat(closes(held, "hall, wall 3 at corner 3")).isEqualTo(Length.ZERO);
  }

  private static Length closes(Calculated<GapChecks> checks, String name) {
    return checks.value().places().stream().filter(place -> place.point().name().equals(name)).findFirst().orElseThrow().closes();
  }

  @Test
  void wrongValuesAreRefused() {
    JoinedRoom hall = room("hall", 0, 0, 3000, 3000);
    JoinedRoom store = room("store", 0, 3100, 3000, 3000);
    assertThatThrownBy(() -> ContinuousFloor.of(List.of(), List.of(), Direction.ALONG_X)).hasMessage("a floor needs at least one room");
    assertThatThrownBy(() -> ContinuousFloor.of(List.of(hall, hall), List.of(), Direction.ALONG_X))
        .hasMessage("there are two rooms named 'hall'; give each a name of its own");
    assertThatThrownBy(() -> ContinuousFloor.of(List.of(hall), List.of(opening("door", "hall", "attic", 0, 3000, 800, 100)),
        Direction.ALONG_X)).hasMessage("opening 'door' leads to 'attic', but the rooms are: hall");
    assertThatThrownBy(() -> ContinuousFloor.of(List.of(hall, store), List.of(opening("door", "hall", "store", 0, 3000, 800, 50)),
        Direction.ALONG_X)).hasMessageContaining("opening 'door' is more than 1 mm from room 'store'");
    assertThat(ContinuousFloor.of(List.of(hall, store), List.of(opening("door", "hall", "store", 0, 3000, 800, 99)),
        Direction.ALONG_X).bays()).hasSize(1);
    assertThatThrownBy(() -> opening("door", "hall", "hall", 0, 0, 1, 1)).hasMessageContaining("into the same room");
    assertThatThrownBy(() -> opening(" ", "hall", "store", 0, 0, 1, 1)).hasMessageContaining("needs a name");
    assertThatThrownBy(() -> room("", 0, 0, 1, 1)).hasMessageContaining("needs a name");
    assertThatThrownBy(() -> inLine(Direction.ALONG_X).bays(List.of("gate")))
        .hasMessage("there is no opening 'gate'; the openings are: arch, study door");
    List<JoinedOpening> many = IntStream.range(0, 13)
        .mapToObj(i -> opening("door " + i, "hall", "store", 0, 3000, 800, 100)).toList();
    assertThatThrownBy(() -> ContinuousFloor.of(List.of(hall, store), many, Direction.ALONG_X))
        .hasMessageContaining("at most 12 openings, but has 13");
  }
}
