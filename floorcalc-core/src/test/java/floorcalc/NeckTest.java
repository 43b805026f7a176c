package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Two chambers of 1 m by 1 m and between them a neck of 300 mm by 20 mm: as wide as the gaps at its two walls. */
class NeckTest {
  private static final Ring CHAMBERS = Ring.of(Point.ofMillimetres(0, 0), Point.ofMillimetres(1000, 0),
      Point.ofMillimetres(1000, 490), Point.ofMillimetres(1300, 490), Point.ofMillimetres(1300, 0),
      Point.ofMillimetres(2300, 0), Point.ofMillimetres(2300, 1000), Point.ofMillimetres(1300, 1000),
      Point.ofMillimetres(1300, 510), Point.ofMillimetres(1000, 510), Point.ofMillimetres(1000, 1000),
      Point.ofMillimetres(0, 1000));

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.7, 12.34, 37.5, 45, 71.9, 133.3, 201.01, 288.8, 345.6})
  void aNeckAsWideAsItsGapsIsPlannedWhicheverWayItIsTurned(double degrees) {
    Outline room = Outline.of(Direction.fromDegrees(degrees).toRoom(CHAMBERS));
    BoardGoods goods = BoardGoods.of(Length.ofMillimetres(900), Length.ofMillimetres(120), Length.ofMillimetres(14), 6);

    FloorPlan plan = FloorPlanner.plan(FloorJob.of("neck", goods).room(Room.of("Chambers", room)).build());

    // Rounding decides whether the neck is closed; either way the plan passes its audit and covers both chambers, each
    // 980 by 980.
    assertThat(plan.bays()).hasSizeBetween(1, 2);
    assertThat(plan.ledger().laid().toSquareMillimetres()).isCloseTo(2.0 * 980 * 980, within(0.01));
  }
}
