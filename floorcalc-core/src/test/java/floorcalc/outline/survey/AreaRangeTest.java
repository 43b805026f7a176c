package floorcalc.outline.survey;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Step;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class AreaRangeTest {
  private static List<Length> metres(String... metres) {
    return Arrays.stream(metres).map(text -> Length.parse(text + " m")).toList();
  }

  private static AreaRange sound(Calculated<AreaRange> calculated) {
    assertStepsHold(calculated);
    return calculated.value();
  }

  /**
   * Walls of 4, 5, 8 and 6 m, 23 m together. On a circle: sqrt(7.5 x 6.5 x 3.5 x 5.5) = sqrt(938.4375) = 30.63392727... m².
   * Folded: 8 - 6 = 2 m, triangle 2, 4, 5: sqrt(5.5 x 3.5 x 1.5 x 0.5) = sqrt(14.4375) = 3.79967... m²; the other fold,
   * 8 - 5 = 3 m, triangle 3, 6, 4: sqrt(28.4375) is more. Diagonals: 1-3 from |8 - 6| = 2 to 4 + 5 = 9, 2-4 from
   * 8 - 5 = 3 to 6 + 4 = 10.
   */
  @Test
  void fourWallsOfAnyShape() {
    AreaRange range = sound(AreaRange.ofSides(metres("4", "5", "8", "6")));
    assertThat(range.greatest()).isEqualTo(Area.ofSquareMetres("30.633928"));
    assertThat(range.least()).isEqualTo(Area.ofSquareMetres("3.799671"));
    assertThat(range.diagonals()).containsExactly(
        new DiagonalRange(1, 3, Length.parse("2 m"), Length.parse("9 m")),
        new DiagonalRange(2, 4, Length.parse("3 m"), Length.parse("10 m")));
  }

  /**
   * The same walls without a reflex corner: walls 4 and 1 in one line, 10 m, triangle 10, 5, 8: sqrt(11.5 x 1.5 x 6.5 x
   * 3.5) = sqrt(392.4375) = 19.81003... m²; walls 1 and 2 in one line, 9 m, triangle 9, 8, 6: sqrt(553.4375) is more. In the
   * first shape 1-3 is sqrt((25 x 6 + 64 x 4) / 10 - 24) = sqrt(16.6) m, in the second 2-4 is
   * sqrt((64 x 4 + 36 x 5) / 9 - 20) = sqrt(28.4444) m.
   */
  @Test
  void fourWallsWithoutReflexCorner() {
    AreaRange range = sound(AreaRange.withoutReflexCorner(metres("4", "5", "8", "6")));
    assertThat(range.greatest()).isEqualTo(Area.ofSquareMetres("30.633928"));
    assertThat(range.least()).isEqualTo(Area.ofSquareMetres("19.810035"));
    assertThat(range.diagonals().get(0).shortest().toMillimetres()).isCloseTo(4074.309757, within(2e-6));
    assertThat(range.diagonals().get(1).shortest().toMillimetres()).isCloseTo(5333.333333, within(2e-6));
    assertThat(range.diagonalToMeasure()).contains(range.diagonals().get(0));
  }

  /** A rectangle 5 m by 4 m within 2 degrees: a parallelogram of 20 cos 2° = 19.98781... m²; 1-3 is sqrt(41 ± 40 sin 2°) m. */
  @Test
  void fourWallsNearSquare() {
    Calculated<AreaRange> calculated = AreaRange.nearSquare(metres("5", "4", "5", "4"), 2);
    AreaRange range = sound(calculated);
    assertThat(range).hasToString("19.987816 m² to 20 m²");
    for (DiagonalRange diagonal : range.diagonals()) {
      assertThat(diagonal.shortest().toMillimetres()).isCloseTo(6293.172501, within(2e-6));
      assertThat(diagonal.longest().toMillimetres()).isCloseTo(6511.219538, within(2e-6));
    }
    assertThat(calculated.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.code()).isEqualTo("shape-not-fixed");
      assertThat(finding.message()).isEqualTo("the walls alone leave the area open between 19.987 m² and 20.000 m²;"
          + " measure the diagonal from corner 1 to corner 3, which can be 6293 mm to 6512 mm long, and the other one as a check");
    });
  }

  /** Square exactly: one shape, one area, nothing to find. */
  @Test
  void rectangleIsFixedByItsCorners() {
    Calculated<AreaRange> calculated = AreaRange.nearSquare(metres("5", "4", "5", "4"), 0);
    assertThat(sound(calculated)).hasToString("20 m² to 20 m²");
    assertThat(calculated.findings()).isEmpty();
  }

  /** The circle's shape may lie outside what is allowed: then both areas are those of limits. */
  @Test
  void greatestAtALimit() {
    // A trapezium of 5, 4, 4.8, 4 m has angles of 90 ± asin(0.1 / 4) = 1.4325° on its circle; there is nothing nearer.
    List<Length> walls = metres("5", "4", "4.8", "4");
    assertThat(AreaRange.leastDegreesFromSquare(walls)).isCloseTo(1.43254, within(5e-6));
    AreaRange wide = sound(AreaRange.nearSquare(walls, 3));
    assertThat(wide.greatest()).isEqualTo(sound(AreaRange.ofSides(walls)).greatest());
    assertThat(wide.least()).isLessThan(wide.greatest());
    // Two walls short at one corner: the squarest shape is not the one on the circle.
    List<Length> kite = metres("5", "4", "4.9", "4.3");
    double least = AreaRange.leastDegreesFromSquare(kite);
    AreaRange narrow = sound(AreaRange.nearSquare(kite, least + 0.01));
    assertThat(narrow.least()).isLessThanOrEqualTo(narrow.greatest());
    assertThat(narrow.greatest()).isLessThanOrEqualTo(sound(AreaRange.ofSides(kite)).greatest());
  }

  @Test
  void cornersThatCannotBeSoSquare() {
    assertThatThrownBy(() -> AreaRange.nearSquare(metres("5", "4", "4.8", "4"), 1)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("no room with these 4 walls has every corner within 1.0 degrees of square; the nearest has one 1.433"
            + " degrees off; allow at least that, or measure the walls again");
  }

  /** 3, 4, 5: half of 3 x 4. */
  @Test
  void threeWallsAreATriangle() {
    Calculated<AreaRange> calculated = AreaRange.ofSides(metres("3", "4", "5"));
    assertThat(sound(calculated)).hasToString("6 m² to 6 m²");
    assertThat(calculated.findings()).isEmpty();
    assertThat(calculated.value().diagonalToMeasure()).isEmpty();
  }

  /** A regular pentagon of side 1 m has sqrt(5 (5 + 2 sqrt 5)) / 4 = 1.72047740... m². */
  @Test
  void moreWallsHaveAnUpperBound() {
    Calculated<AreaRange> calculated = AreaRange.ofSides(metres("1", "1", "1", "1", "1"));
    assertThat(sound(calculated)).hasToString("0 m² to 1.720478 m²");
    assertThat(calculated.findings()).singleElement().satisfies(finding -> assertThat(finding.message())
        .isEqualTo("of these 5 walls only the greatest area is known, 1.721 m²; measure at least 2 ties"));
  }

  /**
   * One wall of 10 m and four of 3 m: the centre lies beyond the long wall. With R the root of 4 asin(3 / 2R) = asin(10 / 2R),
   * R = 5.738528124737..., (12 sqrt(R² - 1.5²) - 10 sqrt(R² - 5²)) / 2 = 19.1533459350... m², worked to 30 digits elsewhere.
   */
  @Test
  void centreBeyondTheLongestWall() {
    Calculated<AreaRange> calculated = AreaRange.ofSides(metres("3", "3", "10", "3", "3"));
    AreaRange range = sound(calculated);
    Step circle = calculated.steps().get(0);
    assertThat(circle.terms().get(7).value().toString()).startsWith("-");
    assertThat(range.greatest().toSquareMetres()).isCloseTo(19.1533459350, within(1.5e-6));
  }

  /** The centre on the longest wall. */
  @Test
  void longestWallIsADiameter() {
    // Half circle of radius 1 m cut by five chords of 36 degrees: 5 x sin 36° / 2 m².
    Length chord = Length.ofNanometres(Math.round(2e9 * StrictMath.sin(StrictMath.PI / 10)));
    AreaRange range = sound(AreaRange.ofSides(List.of(Length.parse("2 m"), chord, chord, chord, chord, chord)));
    assertThat(range.greatest().toSquareMetres()).isCloseTo(2.5 * StrictMath.sin(StrictMath.PI / 5), within(1.5e-6));
  }

  @Test
  void wallsThatDoNotClose() {
    assertThatThrownBy(() -> AreaRange.ofSides(metres("9", "2", "3", "4"))).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("wall 1 measures 9000 mm, but the other 3 walls together reach only 9000 mm, so the room does not close;"
            + " measure them again");
    assertThatThrownBy(() -> AreaRange.ofSides(metres("9", "2")))
        .hasMessage("a room has from 3 to 10000 walls, but 2 were given");
    assertThatThrownBy(() -> AreaRange.ofSides(metres("9", "0", "9")))
        .hasMessage("wall 2 must be longer than 0 mm, but was 0 mm");
    assertThatThrownBy(() -> AreaRange.withoutReflexCorner(metres("9", "8", "9")))
        .hasMessage("this is worked out for 4 walls, but 3 were given");
    assertThatThrownBy(() -> AreaRange.nearSquare(metres("9", "8", "9", "8"), 46))
        .hasMessage("how far a corner may be from square must be from 0 to 45 degrees, but was 46.0");
  }

  /** With the diagonal of 5 m the walls 3, 4, 3, 4 m are two triangles of 6 m². */
  @Test
  void withADiagonal() {
    Calculated<Area> calculated = AreaRange.withDiagonal(metres("3", "4", "3", "4"), new Tie(4, 2, Length.parse("5 m")));
    assertStepsHold(calculated);
    assertThat(calculated.value()).isEqualTo(Area.ofSquareMetres("12"));
    assertThatThrownBy(() -> AreaRange.withDiagonal(metres("3", "4", "3", "4"), new Tie(1, 3, Length.parse("7001 mm"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the diagonal from corner 1 to corner 3 measures 7001 mm, but with these walls it is at most 7000 mm;"
            + " measure it and the walls again");
    assertThatThrownBy(() -> AreaRange.withDiagonal(metres("3", "4", "3", "4"), new Tie(1, 3, Length.parse("900 mm"))))
        .hasMessage("the diagonal from corner 1 to corner 3 measures 900 mm, but with these walls it is at least 1000 mm;"
            + " measure it and the walls again");
    assertThatThrownBy(() -> AreaRange.withDiagonal(metres("3", "4", "3", "4"), new Tie(1, 2, Length.parse("5 m"))))
        .hasMessage("a diagonal of 4 walls runs from corner 1 to 3 or from 2 to 4, but was from 1 to 2");
  }

  /** Of walls 6, 1, 2, 1, 3 m: 1-3 is at most 2 + 1 + 3 = 6 (not 7) and at least 6 - 1 = 5; 3-5 at most 2 + 1, at least 2 - 1 or 6 - 3 - 1. */
  @Test
  void diagonalsOfMoreWalls() {
    List<Length> walls = metres("6", "1", "2", "1", "3");
    assertThat(DiagonalRange.of(walls, 1, 3)).isEqualTo(new DiagonalRange(1, 3, Length.parse("5 m"), Length.parse("6 m")));
    assertThat(DiagonalRange.of(walls, 3, 5)).isEqualTo(new DiagonalRange(3, 5, Length.parse("2 m"), Length.parse("3 m")));
    assertThatThrownBy(() -> DiagonalRange.of(walls, 3, 6))
        .hasMessage("a diagonal runs between two different corners from 1 to 5, but was from 3 to 6");
  }
}
