package floorcalc.movement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.moisture.Percent;
import floorcalc.movement.Pinning.FixedBy;
import floorcalc.movement.Pinning.Fixing;

import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.StepChecks;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PipePointsTest {
  private static final Length GAP = Length.ofMillimetres(10);
  /** Swells 1 % and shrinks 1 % of the width. */
  private static final MovementForecast ONE = MovementForecast.of(Percent.of("8"), Percent.of("6"), Percent.of("10"),
      Coefficient.of(new BigDecimal("0.005"), "any", Source.GIVEN));
  /** 4 m by 3 m, boards along the 4 m; a column at 2000 to 2400 across, a hearth 300 mm deep at the starting wall's far right. */
  private static final Outline ROOM = Wkt.parse("POLYGON ((0 0, 3000 0, 3000 300, 4000 300, 4000 3000, 0 3000, 0 0),"
      + " (1000 2000, 1400 2000, 1400 2400, 1000 2400, 1000 2000))");

  private static List<GapPoint> pipe(Direction boards, long x, long y) {
    return PipePoints.of(ROOM, boards, "pipe 1", Point.ofMillimetres(x, y), Length.ofMillimetres(20), GAP);
  }

  /** At 2500 across, 1000 from the middle: the near side is 990 off, the far side 1010. */
  @Test
  void swellingClosesTheNearSideShrinkingTheFarOne() {
    Calculated<GapChecks> checks = GapChecks.judge(ONE, pipe(Direction.ALONG_X, 500, 2500), Pinning.notLookedAt());
    assertThat(checks.value().places().stream().map(place -> place.point().name() + " " + place.closes() + " " + place.opens()))
        .containsExactly("pipe 1, near side 9.9 mm 9.9 mm", "pipe 1, far side 10.1 mm 10.1 mm", "pipe 1, left side 0 mm 0 mm",
            "pipe 1, right side 0 mm 0 mm");
    assertThat(checks.value().judgements().get(0).outcome()).isEqualTo(Outcome.NOT_MET); // 10.1 > 10
    // with the boards up the room, 1500 from its middle across: -1490 and 1510 the other way round
    assertThat(pipe(Direction.fromDegrees(90), 500, 2500)).extracting(GapPoint::across)
        .containsExactly(Length.ofMillimetres(1490), Length.ofMillimetres(-1510), Length.ZERO, Length.ZERO);
  }

  /** Three results, each by itself, for walls, a column, a hearth and a pipe at once; the place with the least margin is named. */
  @Test
  void threeResultsAtColumnHearthAndPipe() {
    List<GapPoint> points = new ArrayList<>();
    for (GapPoint point : WallPoints.of(ROOM, Direction.ALONG_X, Length.ofMillimetres(15))) {
      points.add(point.cover(Length.ofMillimetres(30)));
    }
    for (GapPoint point : pipe(Direction.ALONG_X, 500, 2500)) {
      points.add(point.cover(Length.ofMillimetres(25)));
    }
    List<Judgement> judged = judged(points, Pinning.found(List.of()));
    // wide enough: the walls have 15 - 15 = 0 to spare, the pipe 10 - 10.1; covered: the pipe 25 - 20.1, the walls 30 - 30
    assertThat(judged).extracting(Judgement::outcome).containsExactly(Outcome.NOT_MET, Outcome.MET, Outcome.MET);
    assertThat(judged.get(0).where()).isEqualTo("pipe 1, far side");
    assertThat(judged.get(1).where()).startsWith("wall");
    // the column is at most 900 off, the hearth's edge 1200: with a gap of 11 mm at the column and 15 mm elsewhere all are wide enough
    List<GapPoint> hearthAlone = WallPoints.of(ROOM, Direction.ALONG_X, Length.ofMillimetres(11)).stream()
        .filter(point -> point.name().startsWith("wall 3 ") || point.name().contains("void")).toList();
    assertThat(judged(hearthAlone, Pinning.found(List.of(new Fixing(FixedBy.PIPE, "tight")))))
        .extracting(Judgement::outcome).containsExactly(Outcome.NOT_MET, Outcome.NOT_MEASURED, Outcome.NOT_MET);
  }

  private static List<Judgement> judged(List<GapPoint> points, Pinning pinning) {
    Calculated<GapChecks> checks = GapChecks.judge(ONE, points, pinning);
    StepChecks.assertStepsHold(checks);
    return checks.value().judgements();
  }

  @Test
  void refuses() {
    assertThatThrownBy(() -> PipePoints.of(ROOM, Direction.ALONG_X, "pipe 1", Point.ofMillimetres(1, 1), Length.ofMillimetres(-20), GAP))
        .isInstanceOf(IllegalArgumentException.class).hasMessage("diameter of pipe 1 must not be negative, but was -20 mm");
  }
}
