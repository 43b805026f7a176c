package floorcalc.bays;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Calculated;
import floorcalc.working.Severity;
import floorcalc.working.StepChecks;
import org.junit.jupiter.api.Test;

/** Depths and widths by hand, in millimetres; the limits are 500 for a recess and 1000 for a void. */
class BayFreedomTest {
  private static final LayingRules RULES = RuleSet.COMMON_PRACTICE.forBoard(Length.parse("14 mm"), Length.parse("185 mm"));

  private static Calculated<BayFreedom> of(String wkt) {
    Outline room = Wkt.parse(wkt);
    Calculated<BayFreedom> freedom = BayFreedom.of("study-1", room, RULES);
    freedom.steps().stream().filter(step -> !step.formula().equals("value as stated")).forEach(StepChecks::assertHolds);
    assertThat(freedom.findings().isEmpty()).isEqualTo(freedom.value().isFree());
    return freedom;
  }

  @Test
  void aPlainRoomIsFree() {
    Calculated<BayFreedom> freedom = of("POLYGON ((0 0, 4000 0, 4000 3000, 0 3000, 0 0))");
    assertThat(freedom.value().isFree()).isTrue();
    assertThat(freedom.value().obstacles()).isEmpty();
    assertThat(freedom.value().harmless()).isEmpty();
  }

  @Test
  void theDepthIsMeasuredToTheLineAcross() {
    // The line across goes from (6000, 3000) to (3000, 7000), 5000 long; the corner (3000, 3000) is 3000 * 4000 / 5000 = 2400 behind it.
    Calculated<BayFreedom> freedom = of("POLYGON ((0 0, 6000 0, 6000 3000, 3000 3000, 3000 7000, 0 7000, 0 0))");
    // 2400 mm at 1.5 mm per metre is 3.6 mm.
    assertThat(freedom.value().obstacles()).containsExactly(new Obstacle(Obstacle.Kind.INNER_CORNER, Point.ofMillimetres(3000, 3000),
        Length.ofMillimetres(2400), Length.ofMillimetres("3.6")));
    assertThat(freedom.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.code()).isEqualTo("bay-must-be-split");
      assertThat(finding.severity()).isEqualTo(Severity.SERIOUS);
      assertThat(finding.message()).isEqualTo("study-1 bends round 1 inner corner, the deepest at (3000 mm, 3000 mm), 2400 mm inside"
          + " the line across its recess (up to 500 mm needs no break): a floor of this shape cannot move freely; split it with an"
          + " expansion break at the inner corner");
    });
  }

  @Test
  void aNarrowArmDoesNotHideTheRecess() {
    // The arm is 200 wide: its inner corner is near to the outer wall, but far behind the line across.
    assertThat(of("POLYGON ((0 0, 6000 0, 6000 200, 3000 200, 3000 4000, 0 4000, 0 0))").value().isFree()).isFalse();
  }

  @Test
  void aRecessOfTheLimitIsLetPassAndTakesThreeQuartersOfAMillimetre() {
    // A chimney breast 500 deep and 1000 wide; 500 mm at 1.5 mm per metre is 0.75 mm.
    Calculated<BayFreedom> freedom =
        of("POLYGON ((0 0, 4000 0, 4000 3000, 2500 3000, 2500 2500, 1500 2500, 1500 3000, 0 3000, 0 0))");
    assertThat(freedom.value().isFree()).isTrue();
    assertThat(freedom.value().harmless()).hasSize(2).allSatisfy(corner -> {
      assertThat(corner.size()).isEqualTo(Length.ofMillimetres(500));
      assertThat(corner.closing()).isEqualTo(Length.ofMillimetres("0.75"));
    });
    assertThat(of("POLYGON ((0 0, 4000 0, 4000 3000, 2500 3000, 2500 2499, 1500 2499, 1500 3000, 0 3000, 0 0))").value().isFree())
        .isFalse();
  }

  @Test
  void aVoidIsMeasuredByItsSmallerWidth() {
    // A hearth 1000 by 2500 may stand; one turned on its corner, 1100 by 1100, is 1100 wide whichever way it stands.
    String room = "POLYGON ((0 0, 6000 0, 6000 5000, 0 5000, 0 0), ";
    assertThat(of(room + "(2000 1000, 3000 1000, 3000 3500, 2000 3500, 2000 1000))").value().isFree()).isTrue();
    // Half the diagonal of a square of side 1100 is 1100 / sqrt(2) = 777.817.
    Calculated<BayFreedom> turned =
        of(room + "(3000 1222.183, 3777.817 2000, 3000 2777.817, 2222.183 2000, 3000 1222.183))");
    assertThat(turned.value().obstacles()).singleElement().satisfies(isle -> {
      assertThat(isle.kind()).isEqualTo(Obstacle.Kind.VOID);
      assertThat(isle.at()).isEqualTo(Point.of(Length.ofMillimetres(3000), Length.ofMillimetres("1222.183")));
      // 777.817 * sqrt(2) = 1099.999 5
      assertThat(isle.size().toMillimetres()).isEqualTo(1100, org.assertj.core.data.Offset.offset(0.005));
    });
    assertThat(turned.findings()).singleElement().satisfies(finding -> assertThat(finding.message()).contains("is 1100 mm wide"));
  }

  @Test
  void theLeastWidthOfATriangleIsItsLeastHeight() {
    // Sides 3000, 4000, 5000: twice the area is 12 000 000, over the longest side 2400.
    Recesses triangle = new Recesses(new double[] {0, 3000, 0}, new double[] {0, 0, 4000});
    assertThat(triangle.leastWidth()).isEqualTo(2400);
  }
}
