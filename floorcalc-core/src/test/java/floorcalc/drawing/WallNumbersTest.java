package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.outline.survey.Survey;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyWall;
import floorcalc.outline.survey.Turn;
import floorcalc.plan.Room;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Walls keep the numbers that they were measured by. */
class WallNumbersTest {
  private static Room room(long rise) {
    return Room.of("Bay", SurveyReport.of(Survey.of(List.of(
        new SurveyWall(Length.ofMillimetres(4000), Turn.LEFT, Length.ofMillimetres(rise)),
        SurveyWall.of(Length.ofMillimetres(3000)), SurveyWall.of(Length.ofMillimetres(4000)),
        SurveyWall.of(Length.ofMillimetres(3000)))).withCorners(Survey.Corners.RIGHT_ANGLES)));
  }

  @Test
  void anArcIsOneWall() {
    WallNumbers numbers = WallNumbers.of(room(500));
    int sides = room(500).outline().shell().size();
    assertThat(numbers.count()).isEqualTo(4);
    assertThat(IntStream.range(0, sides).filter(side -> !numbers.isSilent(side)).mapToObj(numbers::of)).containsExactly(1, 2, 3, 4);
    assertThat(numbers.notes()).containsExactly("Wall 1 is an arc, drawn as a chain of straight pieces within 0.5 mm.");
  }

  @Test
  void aRoomGivenByItsCornersNumbersItsSides() {
    WallNumbers numbers = WallNumbers.of(Room.of("Bay", room(500).outline()));
    assertThat(numbers.count()).isEqualTo(room(500).outline().shell().size());
    assertThat(numbers.notes()).isEmpty();
    assertThat(WallNumbers.of(room(0)).notes()).isEmpty();
  }
}
