package floorcalc.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class BreakGapTest {
  private static final Outline L = Wkt.parse("POLYGON ((0 0, 4000 0, 4000 2000, 2000 2000, 2000 3000, 0 3000, 0 0))");
  private static final Line AT_THE_CORNER = line(2000, 2000, 0, 2000);

  private static Line line(long x, long y, long tox, long toy) {
    return new Line(Point.ofMillimetres(x, y), Point.ofMillimetres(tox, toy));
  }

  private static List<String> bays(Outline room, int gap, int breakGap, Line... lines) {
    ExpansionGap floor = ExpansionGap.inset(room, Length.ofMillimetres(gap)).value();
    return BreakGap.taken(floor, List.of(lines), Length.ofMillimetres(breakGap)).stream().map(Wkt::write).toList();
  }

  @Test
  void aBreakOfTwoGapsLeavesEachPartLessItsOwnGap() {
    assertThat(bays(L, 10, 20, AT_THE_CORNER)).containsExactly(
        "POLYGON ((10 10, 3990 10, 3990 1990, 10 1990, 10 10))",
        "POLYGON ((10 2010, 1990 2010, 1990 2990, 10 2990, 10 2010))");
  }

  @Test
  void aNarrowerBreakStepsBackFromTheCornerOfTheWall() {
    assertThat(bays(L, 10, 12, AT_THE_CORNER)).containsExactly(
        "POLYGON ((10 10, 3990 10, 3990 1990, 1990 1990, 1990 1994, 10 1994, 10 10))",
        "POLYGON ((10 2006, 1990 2006, 1990 2990, 10 2990, 10 2006))");
  }

  @Test
  void aWiderBreakEndsWhereItsLineEnds() {
    assertThat(bays(L, 10, 30, AT_THE_CORNER)).containsExactly(
        "POLYGON ((10 10, 3990 10, 3990 1990, 2000 1990, 2000 1985, 10 1985, 10 10))",
        "POLYGON ((10 2015, 1990 2015, 1990 2990, 10 2990, 10 2015))");
  }

  @Test
  void aWideBreakAtASlantEndsSquareToo() {
    Outline square = Wkt.parse("POLYGON ((0 0, 3000 0, 3000 3000, 0 3000, 0 0))");
    // A line at 3 in 4: its strip of 2 x 50 mm reaches 30 mm to the left and 40 mm up of it, so its upper side ends at (970, 40) and
    // (2970, 1540). The ends run square from there: at y = 10 to x = 1000 - 10·3/4 = 992.5, at x = 2990 to y = 1500 + 10·4/3. The lower
    // side runs from (1030, -40): at y = 10 to x = 1030 + 50·4/3, at x = 2990 to y = -40 + 1960·3/4 = 1430.
    assertThat(bays(square, 10, 100, line(1000, 0, 3000, 1500))).containsExactly(
        "POLYGON ((10 10, 992.5 10, 970 40, 2970 1540, 2990 1513.333333, 2990 2990, 10 2990, 10 10))",
        "POLYGON ((1096.666667 10, 2990 10, 2990 1430, 1096.666667 10))");
  }

  @Test
  void breaksThatMeetLeaveThreeBays() {
    Outline square = Wkt.parse("POLYGON ((0 0, 4000 0, 4000 4000, 0 4000, 0 0))");
    assertThat(bays(square, 8, 16, line(1000, 0, 1000, 4000), line(1000, 3000, 4000, 3000))).containsExactly(
        "POLYGON ((8 8, 992 8, 992 3992, 8 3992, 8 8))", "POLYGON ((1008 8, 3992 8, 3992 2992, 1008 2992, 1008 8))",
        "POLYGON ((1008 3008, 3992 3008, 3992 3992, 1008 3992, 1008 3008))");
  }

  @Test
  void withoutABreakTheFloorStays() {
    ExpansionGap floor = ExpansionGap.inset(L, Length.ofMillimetres(10)).value();
    assertThat(BreakGap.taken(floor, List.of(), Length.ofMillimetres(20))).isSameAs(floor.laid());
    assertThatThrownBy(() -> BreakGap.taken(floor, List.of(AT_THE_CORNER), Length.ZERO))
        .hasMessage("the gap of a break must be more than 0 mm, but was 0 mm");
  }
}
