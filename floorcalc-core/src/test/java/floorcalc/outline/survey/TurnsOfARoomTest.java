package floorcalc.outline.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** How the walls turn at the corners of a surveyed room, and how sure that is. */
class TurnsOfARoomTest {
  private static List<SurveyWall> walls(long... millimetres) {
    return LongStream.of(millimetres).mapToObj(length -> SurveyWall.of(Length.ofMillimetres(length))).toList();
  }

  /**
   * Walls of 3, 4 and 5 m, each with a standard deviation of 2 mm. From c² = a² + b² - 2ab cos C with C square:
   * ab dC = c dc - a da - b db, so sC = 2 mm · sqrt(c² + a² + b²) / ab = 2 · 7071.068 / 12 000 000 = 0.00117851 = 0.067524°.
   */
  @Test
  void squareCornerOfATriangle() {
    SurveyedRoom room = SurveyReport.of(Survey.of(walls(3000, 4000, 5000))
        .withUncertainty(new SurveyUncertainty(Length.ofMillimetres(2), Length.ZERO, 0.5))).value().room().orElseThrow();
    assertThat(room.turn(2)).isCloseTo(90, within(5e-7));
    assertThat(room.turnDeviation(2)).isCloseTo(0.067524, within(5e-7));
    // the corner between 3 and 5 m has the inner angle acos(3/5) = 53.130102°
    assertThat(room.turn(1)).isCloseTo(180 - 53.130102, within(5e-7));
    assertThat(room.offSquare(1)).isEmpty();
    assertThat(room.offSquare(2).orElseThrow()).isCloseTo(0, within(5e-7));
  }

  /**
   * Walls of 3, 4 and 5.1 m: the corner between the shorter two is acos((9 + 16 - 26.01) / 24) = acos(-0.04208333) =
   * 92.411910°.
   */
  @Test
  void cornerThatIsWiderThanSquare() {
    SurveyedRoom room = SurveyReport.of(Survey.of(walls(3000, 4000, 5100))).value().room().orElseThrow();
    assertThat(room.offSquare(2).orElseThrow()).isCloseTo(2.411910, within(5e-7));
  }

  /** Walked round once, the walls turn by 360°. */
  @Test
  void turnsGoRoundOnce() {
    SurveyedRoom room = SurveyReport.of(Survey.of(walls(3000, 4000, 4500))).value().room().orElseThrow();
    assertThat(Stream.of(1, 2, 3).mapToDouble(room::turn).sum()).isCloseTo(360, within(1e-9));
  }

  /** Right angles taken for granted: the reflex corner turns to the right, and none of them is in doubt. */
  @Test
  void cornersTakenAsSquare() {
    List<SurveyWall> walls = walls(6000, 2500, 2600, 2300, 3400, 4800);
    SurveyedRoom room = SurveyReport.of(Survey.of(List.of(walls.get(0).then(Turn.LEFT), walls.get(1).then(Turn.LEFT),
        walls.get(2).then(Turn.RIGHT), walls.get(3).then(Turn.LEFT), walls.get(4).then(Turn.LEFT), walls.get(5).then(Turn.LEFT)))
        .withCorners(Survey.Corners.RIGHT_ANGLES)).value().room().orElseThrow();
    assertThat(room.turn(4)).isCloseTo(-90, within(1e-9));
    assertThat(room.turn(5)).isCloseTo(90, within(1e-9));
    assertThat(room.offSquare(4).orElseThrow()).isCloseTo(0, within(1e-9));
    assertThat(room.turnDeviation(4)).isCloseTo(0, within(1e-6));
  }
}
