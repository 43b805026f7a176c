package floorcalc.flatness;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class StraightedgeTest {
  private static Length mm(String millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static HeightProfile profile(String spacing, String... heights) {
    return HeightProfile.ofEqualSpacing(mm(spacing), List.of(heights).stream().map(Length::ofMillimetres).toList());
  }

  /**
   * A trough of two slopes, 10 mm in 1000 mm to either side. An edge of 1200 mm lies level across it, 600 mm up either
   * slope: 6 mm. With an end at a reading, 1000 mm and 200 mm, it is 10 + (2 - 10) · 1000 / 1200 = 3.333 mm.
   */
  @ParameterizedTest
  @EnumSource(RestRule.class)
  void worstPlacementIsNotAtAReading(RestRule rule) {
    HeightProfile trough = profile("1000", "10", "0", "10");
    Straightedge edge = Straightedge.of(mm("1200"));
    Calculated<GreatestGap> greatest = edge.calculate(trough, rule);
    assertThat(greatest.value().gap()).isEqualTo(mm("6"));
    assertThat(greatest.value().start()).isEqualTo(mm("400"));
    assertThat(greatest.value().rest().left()).isEqualTo(new ProfilePoint(mm("400"), mm("6")));
    assertThat(greatest.value().rest().contactDistance()).isEqualTo(mm("1200"));
    assertThat(edge.atReadings(trough)).singleElement().satisfies(placement ->
        assertThat(placement.rest(rule).gap()).isEqualTo(mm("3.333333")));
    assertStepsHold(greatest);
  }

  /**
   * High points at 0, 400 and 1000 mm, holes of 1 mm and 5 mm between. The middle of an edge of 1000 mm is over the wider hole, 5 mm. Mirrored
   * in the heights, hole of 1 mm under the middle: gravity shows 1 mm, rocking to the other side 5 mm.
   */
  @Test
  void gravityAndTheWorstThatItCanBeRockedOnto() {
    EdgePlacement over = Straightedge.of(mm("1000")).at(profile("200", "0", "-1", "0", "-5", "-5", "-2"), Length.ZERO);
    assertThat(over.gravity().left().place()).isEqualTo(mm("400"));
    EdgePlacement rocked = Straightedge.of(mm("1000")).at(profile("200", "-6", "-6", "0", "-1", "0", "-3"), Length.ZERO);
    assertThat(rocked.gravity().gap()).isEqualTo(mm("1"));
    assertThat(rocked.worst().gap()).isEqualTo(mm("3"));
    assertThat(rocked.worst().lowSpot().place()).isEqualTo(mm("200"));
    assertThat(rocked.isTipping()).isFalse();
    assertThat(rocked.rests()).hasSize(3);
    assertThat(rocked.end()).isEqualTo(mm("1000"));
  }

  /** The middle on a high point: gravity may choose either side, and the greater gap counts. */
  @Test
  void anEdgeOnAHumpTips() {
    EdgePlacement hump = Straightedge.of(mm("800")).at(profile("200", "0", "0", "5", "0", "1"), Length.ZERO);
    assertThat(hump.isTipping()).isTrue();
    assertThat(hump.gravity().gap()).isEqualTo(mm("3"));
    assertThat(hump.gravity().right().place()).isEqualTo(mm("800"));
  }

  /**
   * Of gravity's rest a longer edge may show less. A hole at 200 mm between a high end and a slope down: an edge of 400 mm at the end
   * bridges it, 5 - (0 + 1) / 2 = 4.5 mm. One of 1200 mm covers all of the floor, its middle is over the slope, and it lies on that.
   */
  @Test
  void aLongerEdgeUnderGravityMayShowLess() {
    HeightProfile slope = profile("200", "0", "-5", "-1", "-2", "-3", "-4", "-5");
    assertThat(Straightedge.of(mm("400")).greatest(slope, RestRule.GRAVITY).gap()).isEqualTo(mm("4.5"));
    Straightedge whole = Straightedge.of(mm("1200"));
    assertThat(whole.greatest(slope, RestRule.GRAVITY).gap()).isEqualTo(Length.ZERO);
    assertThat(whole.greatest(slope, RestRule.WORST).gap()).isEqualTo(mm("4.5"));
  }

  /** Three points in line: a rest between each two, and gravity's edge lies on all three. */
  @Test
  void anEdgeOnThreePointsInLine() {
    EdgePlacement placement = Straightedge.of(mm("800")).at(profile("200", "0", "-2", "0", "-1", "0"), Length.ZERO);
    assertThat(placement.rests()).extracting(EdgeRest::gap).containsExactly(mm("2"), mm("1"));
    assertThat(placement.isTipping()).isFalse();
    assertThat(placement.gravity().gap()).isEqualTo(mm("2"));
    assertThat(placement.gravity().right().place()).isEqualTo(mm("400"));
  }

  /**
   * Two holes of the same depth, 33.554431 mm, between level rims 1000.000001 mm and 1073.741859 mm apart. In floating point the depth times the
   * width of the second one, divided by the width again, is 3.7e-9 nm more than the depth; without rounding they are equal, and the
   * left one is told.
   */
  @ParameterizedTest
  @EnumSource(RestRule.class)
  void ofEqualGapsTheLeftmostIsTold(RestRule rule) {
    long depth = 33_554_431;
    long wide = 1_073_741_859;
    assertThat((double) (depth * wide) / wide).isGreaterThan(depth);
    long[][] readings = {{0, 0}, {400_000_000, -depth}, {1_000_000_001, 0}, {1_500_000_000, -depth}, {1_000_000_001 + wide, 0}};
    HeightProfile floor = HeightProfile.of(Stream.of(readings)
        .map(reading -> new ProfilePoint(Length.ofNanometres(reading[0]), Length.ofNanometres(reading[1]))).toList());
    GreatestGap greatest = Straightedge.of(Length.ofNanometres(wide)).greatest(floor, rule);
    assertThat(greatest.gap()).isEqualTo(Length.ofNanometres(depth));
    assertThat(greatest.rest().left().place()).isEqualTo(Length.ZERO);
    assertThat(greatest.rest().lowSpot().place()).isEqualTo(mm("400"));
  }

  @Test
  void flatFloorHasNoGap() {
    HeightProfile flat = profile("300", "1", "2", "3", "4");
    GreatestGap gap = Straightedge.of(mm("700")).greatest(flat, RestRule.WORST);
    assertThat(gap.gap()).isEqualTo(Length.ZERO);
    assertThat(gap.rest().lowSpot()).isEqualTo(gap.rest().left());
  }

  @Test
  void anEdgeThatDoesNotFitIsRefused() {
    HeightProfile floor = profile("300", "1", "2", "3");
    Straightedge edge = Straightedge.of(mm("601"));
    assertThat(edge.fits(floor)).isFalse();
    assertThat(edge.atReadings(floor)).isEmpty();
    assertThatThrownBy(() -> edge.greatest(floor, RestRule.WORST)).hasMessage("an edge of 601 mm does not fit on a profile of"
        + " 600 mm; measure a longer line or use a shorter edge");
    assertThatThrownBy(() -> Straightedge.of(mm("400")).at(floor, mm("201"))).hasMessage("an edge of 400 mm laid at 201 mm must"
        + " lie between 0 mm and 600 mm; move or shorten it");
    assertThatThrownBy(() -> Straightedge.of(Length.ZERO)).isInstanceOf(IllegalArgumentException.class);
    assertThat(Straightedge.of(mm("600")).greatest(floor, RestRule.GRAVITY).gap()).isEqualTo(Length.ZERO);
    assertThat(edge).isEqualTo(Straightedge.of(mm("601"))).hasSameHashCodeAs(Straightedge.of(mm("601")))
        .hasToString("straightedge of 601 mm");
  }

  /** A hump of 6 mm in 2 m: 6 mm above a chord of 2 m, 3 mm above one of 1 m; an edge that rests on it shows nothing. */
  @Test
  void aChordIsNoStraightedge() {
    HeightProfile hump = profile("1000", "0", "6", "0");
    assertThat(MidChord.of(hump, mm("2000")).value().highest().deviation()).isEqualTo(mm("6"));
    assertThat(MidChord.of(hump, mm("1000")).value().highest().deviation()).isEqualTo(mm("3"));
    assertStepsHold(MidChord.of(hump, mm("1000")));
    assertThat(Straightedge.of(mm("2000")).greatest(hump, RestRule.WORST).gap()).isEqualTo(Length.ZERO);
    assertThatThrownBy(() -> MidChord.of(hump, mm("2001"))).hasMessage("no reading of a profile of 2000 mm has a chord of 2001"
        + " mm on the line; use a shorter chord");
    assertThatThrownBy(() -> MidChord.of(hump, Length.ofNanometres(3))).hasMessageContaining("even number of nanometres");
  }
}
