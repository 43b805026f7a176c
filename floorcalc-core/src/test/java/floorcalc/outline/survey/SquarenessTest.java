package floorcalc.outline.survey;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class SquarenessTest {
  private static final Length ONE = Length.ofMillimetres(1);

  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static List<Length> walls(long... millimetres) {
    return Arrays.stream(millimetres).mapToObj(Length::ofMillimetres).toList();
  }

  private static <T> T sound(Calculated<T> calculated) {
    assertStepsHold(calculated);
    return calculated.value();
  }

  /**
   * A room 5000 long, its right wall leaning out by 60 in 4000, its left wall upright: corner 2 is opened by
   * arctan(60 / 4000) = 0.859372°, corner 3 closed by as much. Wall 2 ends 60 off; wall 3, 5060 long, ends off the line
   * square to wall 2 by 5060 sin 0.859372° = 5060 x 60 / sqrt(16003600) = 75.891463.
   */
  @Test
  void cornersOfAnOutline() {
    List<CornerSquareness> corners = sound(Squareness.of(Ring.of(Point.ofMillimetres(0, 0), Point.ofMillimetres(5000, 0),
        Point.ofMillimetres(5060, 4000), Point.ofMillimetres(0, 4000))));
    assertThat(corners).extracting(CornerSquareness::corner).containsExactly(1, 2, 3, 4);
    assertThat(corners.get(0)).hasToString("corner 1: square");
    assertThat(corners.get(1).degrees()).isCloseTo(0.859372, within(5e-7));
    assertThat(corners.get(1).out()).isEqualTo(mm(60));
    // 60 / sqrt(4000² + 60²) of a metre
    assertThat(corners.get(1).outPerMetre().toMillimetres()).isCloseTo(14.998313, within(5e-7));
    assertThat(corners.get(1)).hasToString("corner 2: 0.859 degrees more than square, 60.0 mm over 4000.4 mm");
    assertThat(corners.get(2).degrees()).isCloseTo(-0.859372, within(5e-7));
    assertThat(corners.get(2).out().toMillimetres()).isCloseTo(-75.891463, within(5e-7));
  }

  /** An L: its reflex corner 4 is 270 plus arctan(10 / 2000) = 0.286477°; a corner of 135 degrees is not meant to be square. */
  @Test
  void reflexAndOtherCorners() {
    List<CornerSquareness> corners = sound(Squareness.of(Ring.of(Point.ofMillimetres(0, 0), Point.ofMillimetres(4000, 0),
        Point.ofMillimetres(4000, 2000), Point.ofMillimetres(2000, 2000), Point.ofMillimetres(1990, 4000),
        Point.ofMillimetres(1000, 4000), Point.ofMillimetres(0, 3000))));
    assertThat(corners).extracting(CornerSquareness::corner).containsExactly(1, 2, 3, 4, 5);
    CornerSquareness reflex = corners.get(3);
    // Wall 4 leans left by 10 over 2000: the floor's angle is less than 270 degrees.
    assertThat(reflex.degrees()).isCloseTo(-0.286477, within(5e-7));
    assertThat(reflex.out()).isEqualTo(mm(-10));
    assertThat(corners.get(4).degrees()).isCloseTo(0.286477, within(5e-7));
  }

  /** 3-4-5: walls of 4000 and 3000 with both diagonals 5000 are a rectangle. */
  @Test
  void rectangle() {
    Calculated<List<CornerSquareness>> room = Squareness.ofWallsAndDiagonals(walls(4000, 3000, 4000, 3000), mm(5000), mm(5000), ONE);
    assertThat(sound(room)).allSatisfy(corner -> assertThat(corner.out()).isEqualTo(Length.ZERO));
    assertThat(room.findings()).extracting(Finding::code).containsExactly("rectangle");
  }

  /** A trapezium 5000 below and 4800 above, 4000 high: both legs sqrt(100² + 4000²), both diagonals sqrt(4900² + 4000²). */
  @Test
  void equalDiagonalsAloneProveNothing() {
    Length leg = Length.ofMillimetres("4001.249805");
    Length diagonal = Length.ofMillimetres("6325.345840");
    Calculated<List<CornerSquareness>> room =
        Squareness.ofWallsAndDiagonals(List.of(mm(5000), leg, mm(4800), leg), diagonal, diagonal, ONE);
    // arctan(100 / 4000) = 1.432096 degrees
    assertThat(sound(room)).extracting(corner -> Math.round(corner.degrees() * 1e5)).containsExactly(-143210L, -143210L, 143210L, 143210L);
    assertThat(room.findings()).extracting(Finding::code).containsExactly("equal-diagonals-no-rectangle");
  }

  /** p² - q² = 4 a b cos A: 6450 and 6356 on 5000 by 4000.45 is 4 x 5000 x m, m = (41602500 - 40398736) / 20000 = 60.1882. */
  @Test
  void stringRectangle() {
    Calculated<Length> move = Squareness.moveToSquare(mm(5000), Length.ofMillimetres("4000.45"), mm(6450), mm(6356), ONE);
    assertThat(sound(move)).isEqualTo(Length.ofMillimetres("60.1882"));
    assertThat(move.findings()).isEmpty();
    assertThat(Squareness.moveToSquare(mm(5000), mm(4000), mm(6403), mm(6403), ONE).value()).isEqualTo(Length.ZERO);
    // 2 (25 + 16) - 6450² = 82 - 41.6025 = 40.3975 m²: 2-4 must be 6355.9 mm
    assertThat(Squareness.moveToSquare(mm(5000), mm(4000), mm(6450), mm(6366), ONE).findings()).singleElement()
        .satisfies(finding -> assertThat(finding.message()).isEqualTo("by the sides and the other diagonal the one from corner 2 to"
            + " corner 4 is 6355.9 mm, but it was measured 6366 mm; one of these lengths is wrong, measure them again"));
  }

  @Test
  void parallelogramAndDisagreement() {
    // 5000 by 4000, leaning: 6450² + q² = 2 (5000² + 4000²), q = 6355.9
    Calculated<List<CornerSquareness>> leaning =
        Squareness.ofWallsAndDiagonals(walls(5000, 4000, 5000, 4000), mm(6450), mm(6356), ONE);
    sound(leaning);
    assertThat(leaning.findings()).extracting(Finding::code).containsExactly("parallelogram");
    Calculated<List<CornerSquareness>> wrong =
        Squareness.ofWallsAndDiagonals(walls(5000, 4000, 5000, 4000), mm(6450), mm(6256), ONE);
    assertThat(wrong.findings()).extracting(Finding::code).containsExactly("lengths-disagree", "parallelogram");
  }

  /** 20 m and 15 m: 25 m. */
  @Test
  void diagonalOfARectangle() {
    assertThat(sound(Squareness.squareDiagonal(mm(20_000), mm(15_000)))).isEqualTo(mm(25_000));
  }

  @Test
  void refuses() {
    assertThatThrownBy(() -> Squareness.ofWallsAndDiagonals(walls(5000, 4000, 5000, 4000), mm(9001), mm(6356), ONE))
        .hasMessageStartingWith("the diagonal from corner 1 to corner 3 measures 9001 mm, but with these walls it is at most 9000 mm");
    assertThatThrownBy(() -> Squareness.moveToSquare(mm(5000), mm(4000), mm(6403), mm(999), ONE))
        .hasMessageStartingWith("the diagonal from corner 2 to corner 4 measures 999 mm, but with these walls it is at least 1000 mm");
    assertThatThrownBy(() -> Squareness.moveToSquare(mm(5000), mm(4000), mm(6403), mm(6403), mm(-1)))
        .hasMessage("a tolerance must not be negative, but was -1 mm");
    assertThatThrownBy(() -> Squareness.squareDiagonal(mm(0), mm(1))).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("both legs must be longer than 0 mm, but were 0 mm and 1 mm");
  }

  /** Walls of 3.95 and 5.2 m in steps of 100 mm: 13 times 3 is 39, 13 times 4 is 52. */
  @Test
  void threeFourFive() {
    ThreeFourFive check = sound(ThreeFourFive.of(mm(5200), mm(3950), mm(100)));
    assertThat(check).isEqualTo(new ThreeFourFive(mm(5200), mm(3900), mm(6500)));
    assertThat(sound(ThreeFourFive.of(Length.parse("10 ft"), Length.parse("13 ft"), Length.parse("1 ft"))))
        .isEqualTo(new ThreeFourFive(Length.parse("9 ft"), Length.parse("12 ft"), Length.parse("15 ft")));
    assertThatThrownBy(() -> ThreeFourFive.of(mm(299), mm(5000), mm(100))).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("walls of 299 mm and 5000 mm hold no triangle of 3, 4 and 5 times 100 mm; take a smaller unit");
    assertThatThrownBy(() -> ThreeFourFive.of(mm(299), mm(5000), mm(0)))
        .hasMessage("the unit of a 3-4-5 check must be more than 0 mm, but was 0 mm");
  }

  /** Marks at 3 and 4 m, 5.01 m between them: out by (25.1001 - 25) / 6 = 0.016683 m, arcsin(0.016683 / 4) = 0.238972°. */
  @Test
  void threeFourFiveMeasured() {
    ThreeFourFive check = ThreeFourFive.of(mm(3000), mm(4000), mm(1000)).value();
    assertThat(sound(check.measured(mm(5000))).degrees()).isZero();
    CornerSquareness corner = sound(check.measured(mm(5010)));
    assertThat(corner.out().toMillimetres()).isCloseTo(16.683333, within(5e-7));
    assertThat(corner.degrees()).isCloseTo(0.238972, within(5e-7));
    assertThatThrownBy(() -> check.measured(mm(7000)))
        .hasMessage("between marks at 3000 mm and 4000 mm there can be more than 1000 mm and less than 7000 mm, but measured was 7000 mm");
  }

  /** From the outline and from its walls and diagonals the corners come out alike, and their angles make 360 degrees. */
  @Property(tries = 300)
  void twoWaysToTheSameCorners(@ForAll @IntRange(min = 2000, max = 9000) int a, @ForAll @IntRange(min = 2000, max = 9000) int b,
      @ForAll @IntRange(min = -150, max = 150) int x, @ForAll @IntRange(min = -150, max = 150) int y,
      @ForAll @IntRange(min = -150, max = 150) int z) {
    Ring ring = Ring.of(Point.ofMillimetres(0, 0), Point.ofMillimetres(a, x), Point.ofMillimetres(a + y, b), Point.ofMillimetres(z, b + x));
    List<Length> walls = List.of(ring.wallLength(0), ring.wallLength(1), ring.wallLength(2), ring.wallLength(3));
    Length p = Ring.of(ring.corners().get(0), ring.corners().get(2)).wallLength(0);
    Length q = Ring.of(ring.corners().get(1), ring.corners().get(3)).wallLength(0);
    List<CornerSquareness> byPlace = sound(Squareness.of(ring));
    Calculated<List<CornerSquareness>> calculated = Squareness.ofWallsAndDiagonals(walls, p, q, Length.ofNanometres(1000));
    List<CornerSquareness> byTape = sound(calculated);
    assertThat(calculated.findings()).extracting(Finding::code).doesNotContain("lengths-disagree");
    double sum = 0;
    for (int i = 0; i < 4; i++) {
      assertThat(byTape.get(i).degrees()).isCloseTo(byPlace.get(i).degrees(), within(2e-6));
      assertThat(byTape.get(i).degrees()).isCloseTo(ring.angleDegrees(i) - 90, within(2e-6));
      assertThat(byTape.get(i).out().toMillimetres()).isCloseTo(byPlace.get(i).out().toMillimetres(), within(1e-4));
      sum += byTape.get(i).degrees();
    }
    assertThat(sum).isCloseTo(0, within(4e-6));
  }
}
