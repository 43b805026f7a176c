package floorcalc.outline.survey;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class TraverseTest {
  private static List<Length> walls(long... millimetres) {
    return Arrays.stream(millimetres).mapToObj(Length::ofMillimetres).toList();
  }

  private static List<Angle> right(int corners) {
    return Collections.nCopies(corners, Angle.ofDegrees(90));
  }

  private static Traverse sound(Calculated<Traverse> calculated) {
    assertStepsHold(calculated);
    return calculated.value();
  }

  /**
   * Walls of 5000, 4000, 5010, 4000 with right angles: the walk ends at -10, 0. The way is 18010, so 1 in 1801. The compass
   * rule moves corner 2 by 10 x 5000 / 18010 = 2.776235 to the right, corner 3 by 10 x 9000 / 18010 = 4.997224, corner 4 by
   * 10 x 14010 / 18010 = 7.779012.
   */
  @Test
  void walkThatEndsBesideItsStart() {
    Calculated<Traverse> calculated = Traverse.ofTurns(walls(5000, 4000, 5010, 4000), right(4), ClosingLimit.FLOOR);
    Traverse walk = sound(calculated);
    assertThat(walk.latitudeError()).isEqualTo(Length.ZERO);
    assertThat(walk.departureError()).isEqualTo(Length.ofMillimetres(-10));
    assertThat(walk.closingError()).isEqualTo(Length.ofMillimetres(10));
    assertThat(walk.ratio()).hasValue(1801);
    assertThat(walk.outline().corners()).extracting(point -> point.x().toMillimetreString())
        .containsExactly("0", "5002.776235", "5004.997224", "-2.220988");
    assertThat(walk.outline().corners()).extracting(point -> point.y().toMillimetreString())
        .containsExactly("0", "0", "4000", "4000");
    assertThat(calculated.findings()).extracting(Finding::message).containsExactly("the walk ends 10.0 mm from where it began, 1 in"
        + " 1801 of 18.010 m, where 1 in 2000 is asked for; sharing such an error out hides it: measure again");
    assertThat(Traverse.ofTurns(walls(5000, 4000, 5010, 4000), right(3), new ClosingLimit(1000, Source.GIVEN)).findings()).isEmpty();
  }

  /** A rectangle closes: no error, no ratio, the area of its sides, the courses as they were. */
  @Test
  void walkThatCloses() {
    Traverse walk = sound(Traverse.ofTurns(walls(5000, 4000, 5000, 4000), right(4), ClosingLimit.FLOOR));
    assertThat(walk.ratio()).isEmpty();
    assertThat(walk.area()).isEqualTo(Area.ofSquareMetres("20"));
    assertThat(walk.adjustedCourses()).isEqualTo(walk.courses());
    assertThat(walk.courses()).extracting(course -> course.azimuth().toString())
        .containsExactly("90-00-00", "0-00-00", "270-00-00", "180-00-00");
  }

  /** An L with a reflex corner: 5 turns of 90 to the left, one to the right. 4 x 3 - 2 x 1 = 10 m². */
  @Test
  void reflexCorner() {
    List<Angle> turns = new ArrayList<>(right(6));
    turns.set(2, Angle.ofDegrees(-90));
    turns.set(1, Angle.ofDegrees(90));
    Traverse walk = sound(Traverse.ofTurns(walls(4000, 2000, 2000, 1000, 2000, 3000), turns, ClosingLimit.FLOOR));
    assertThat(walk.closingError()).isEqualTo(Length.ZERO);
    assertThat(walk.area()).isEqualTo(Area.ofSquareMetres("10"));
  }

  @Test
  void refuses() {
    assertThatThrownBy(() -> Traverse.ofTurns(walls(1, 2), right(2), ClosingLimit.FLOOR)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a traverse has from 3 to 1000 courses, but 2 were given");
    assertThatThrownBy(() -> Traverse.ofTurns(walls(1, 2, 3), right(1), ClosingLimit.FLOOR))
        .hasMessage("3 walls have 3 turns, or one fewer if the last is left out, but 1 were given");
    assertThatThrownBy(() -> Traverse.ofAngles(Angle.ZERO, right(1), walls(1, 2, 3), ClosingLimit.FLOOR))
        .hasMessage("3 walls have 3 angles, but 1 were given");
    assertThatThrownBy(() -> Traverse.ofTurns(walls(1, 0, 3), right(3), ClosingLimit.FLOOR))
        .hasMessage("a course must be longer than 0 mm, but was 0 mm");
    assertThatThrownBy(() -> new ClosingLimit(0, Source.GIVEN)).hasMessage("the ratio of a closing limit must be at least 1, but was 0");
  }

  /** Any walk: the adjusted one closes, no corner moves further than the closing error, and one that closed stays. */
  @Property(tries = 200)
  void compassRuleCloses(@ForAll @Size(min = 3, max = 12) List<@IntRange(min = 100, max = 9000) Integer> lengths,
      @ForAll @Size(value = 12) List<@IntRange(min = 0, max = 359_999) Integer> azimuths) {
    List<Course> courses = new ArrayList<>();
    for (int i = 0; i < lengths.size(); i++) {
      courses.add(new Course(Angle.fromDegrees(BigDecimal.valueOf(azimuths.get(i), 3)), Length.ofMillimetres(lengths.get(i))));
    }
    Traverse walk = sound(Traverse.of(courses, ClosingLimit.FLOOR));
    Ring outline = walk.outline();
    double x = 0;
    double y = 0;
    for (int i = 0; i < courses.size(); i++) {
      Point place = outline.corners().get(i);
      assertThat(Math.hypot(place.x().toMillimetres() - x, place.y().toMillimetres() - y))
          .isLessThanOrEqualTo(walk.closingError().toMillimetres() + 1e-5);
      double angle = Math.toRadians(azimuths.get(i) / 1000.0);
      x += lengths.get(i) * Math.sin(angle);
      y += lengths.get(i) * Math.cos(angle);
      assertThat(walk.latitudes().get(i).toMillimetres()).isCloseTo(lengths.get(i) * Math.cos(angle), within(1e-6));
    }
    assertThat(walk.departureError().toMillimetres()).isCloseTo(x, within(1e-4));
    assertThat(walk.latitudeError().toMillimetres()).isCloseTo(y, within(1e-4));
  }
}
