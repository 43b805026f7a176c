package floorcalc.outline;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import org.junit.jupiter.api.Test;

class LeastWidthTest {
  private static LeastWidth width(String outline) {
    Calculated<LeastWidth> calculated = LeastWidth.of(Wkt.parse(outline));
    assertStepsHold(calculated);
    return calculated.value();
  }

  /** The shorter side, whatever is cut out and wherever a corner lies on a straight wall. */
  @Test
  void ofARectangleItIsTheShorterSide() {
    LeastWidth width = width("POLYGON ((0 0, 2000 0, 4000 0, 4000 3000, 0 3000, 0 0), (500 500, 900 500, 900 900, 500 900, 500 500))");
    assertThat(width.width()).isEqualTo(Length.ofMillimetres(3000));
    assertThat(width.along().degrees() % 180).isZero();
  }

  /** The height of the triangle 3, 4, 5 on its longest side: 3 · 4 / 5 = 2.4 m. */
  @Test
  void ofATriangleItIsTheHeightOnItsLongestSide() {
    LeastWidth width = width("POLYGON ((0 0, 4000 0, 0 3000, 0 0))");
    assertThat(width.width()).isEqualTo(Length.ofMillimetres(2400));
  }

  /** The arms of an L with sides of 4 m and 1 m: the hull's slanted side from (4, 1) to (1, 4) and the corner (0, 0) are 5 / √2 = 3.535534 m apart. */
  @Test
  void ofAnLItMayBeAskew() {
    LeastWidth width = width("POLYGON ((0 0, 4000 0, 4000 1000, 1000 1000, 1000 4000, 0 4000, 0 0))");
    assertThat(width.width()).isEqualTo(Length.parse("3535.533906 mm"));
    assertThat(width.along().degrees()).isEqualTo(135);
  }

  @Test
  void aLineHasNoWidthAndAPointHasNone() {
    assertThat(LeastWidth.of(Outline.of(Ring.of(Point.ofMillimetres(0, 0), Point.ofMillimetres(3, 4), Point.ofMillimetres(6, 8)))).value().width())
        .isEqualTo(Length.ZERO);
    assertThatThrownBy(() -> LeastWidth.of(Outline.of(Ring.of(Point.ofMillimetres(1, 1))))).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a width needs at least two different corners, but the outline is (1 mm, 1 mm)");
  }
}
