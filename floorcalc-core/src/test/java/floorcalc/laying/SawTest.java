package floorcalc.laying;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.outline.Ring;
import java.math.BigInteger;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Floors in whole nanometres that can be drawn on squared paper; areas by hand. */
class SawTest {
  private static Loop loop(long... xy) {
    long[] x = new long[xy.length / 2];
    long[] y = new long[xy.length / 2];
    for (int i = 0; i < x.length; i++) {
      x[i] = xy[2 * i];
      y[i] = xy[2 * i + 1];
    }
    return Loop.of(Ring.ofNanometres(x, y));
  }

  private static long area(List<Loop> loops) {
    return SawPropertyTest.twiceArea(loops).divide(BigInteger.TWO).longValueExact();
  }

  @Test
  void aBoxIsHalved() {
    Saw.Parts parts = Saw.level(List.of(loop(0, 0, 10, 0, 10, 4, 0, 4)), 2);
    assertThat(area(parts.low())).isEqualTo(20);
    assertThat(area(parts.high())).isEqualTo(20);
    assertThat(parts.low().get(0).size()).isEqualTo(4);
  }

  @Test
  void aLineAlongASideCutsNothingOff() {
    Saw.Parts parts = Saw.level(List.of(loop(0, 0, 10, 0, 10, 4, 0, 4)), 4);
    assertThat(parts.high()).isEmpty();
    assertThat(parts.low()).hasSize(1);
  }

  @Test
  void aUIsCutIntoTwoArmsAndABase() {
    List<Loop> u = List.of(loop(0, 0, 9, 0, 9, 6, 6, 6, 6, 3, 3, 3, 3, 6, 0, 6));
    Saw.Parts parts = Saw.level(u, 3);
    // The base 9 by 3; two arms 3 by 3.
    assertThat(area(parts.low())).isEqualTo(27);
    assertThat(parts.high()).hasSize(2);
    assertThat(area(parts.high())).isEqualTo(18);
    // The arms border on the base where they stand, not over the opening between them.
    assertThat(Patch.of(parts.high()).get(0).contacts(3, false)).containsExactly(0, 3);
    assertThat(Patch.of(parts.high()).get(1).contacts(3, false)).containsExactly(6, 9);
  }

  @Test
  void aHoleAcrossTheLineOpensBothParts() {
    List<Loop> floor = List.of(loop(0, 0, 10, 0, 10, 10, 0, 10), loop(4, 4, 4, 6, 6, 6, 6, 4));
    Saw.Parts parts = Saw.level(floor, 5);
    assertThat(area(parts.low())).isEqualTo(50 - 2);
    assertThat(area(parts.high())).isEqualTo(50 - 2);
    assertThat(parts.low()).hasSize(1);
    assertThat(Patch.of(parts.low()).get(0).contacts(5, false)).containsExactly(0, 4, 6, 10);
  }

  @Test
  void aHoleThatOnlyTouchesTheLineStaysAHole() {
    List<Loop> floor = List.of(loop(0, 0, 10, 0, 10, 10, 0, 10), loop(5, 5, 6, 3, 4, 3));
    assertThat(floor.get(1).isHole()).isTrue();
    Saw.Parts parts = Saw.level(floor, 5);
    assertThat(area(parts.low())).isEqualTo(50 - 2);
    assertThat(Patch.of(parts.low())).hasSize(1);
    assertThat(Patch.of(parts.low()).get(0).holes()).hasSize(1);
  }

  @Test
  void aHoleWithASideOnTheLineBecomesANotch() {
    List<Loop> floor = List.of(loop(0, 0, 10, 0, 10, 10, 0, 10), loop(4, 3, 4, 5, 6, 5, 6, 3));
    Saw.Parts parts = Saw.level(floor, 5);
    assertThat(parts.low()).hasSize(1);
    assertThat(area(parts.low())).isEqualTo(50 - 4);
    assertThat(Patch.of(parts.low()).get(0).contacts(5, false)).containsExactly(0, 4, 6, 10);
    assertThat(area(parts.high())).isEqualTo(50);
    // and from above, the same hole higher up
    Saw.Parts above = Saw.level(List.of(floor.get(0), loop(4, 5, 4, 7, 6, 7, 6, 5)), 5);
    assertThat(above.high()).hasSize(1);
    assertThat(Patch.of(above.high()).get(0).contacts(5, false)).containsExactly(0, 4, 6, 10);
  }

  @Test
  void anUprightCutOfATaper() {
    // A wedge 8 long, 0 to 4 high: left of x = 4 lie 4 * 2 / 2 = 4 squares of 16.
    Saw.Parts parts = Saw.upright(List.of(loop(0, 0, 8, 0, 8, 4)), 4);
    assertThat(area(parts.low())).isEqualTo(4);
    assertThat(area(parts.high())).isEqualTo(12);
  }

  @Test
  void aSideIsRoundedOnceHoweverManyLinesCrossIt() {
    // From (0, 0) to (997, 1000): at x = k the side lies at 1000 k / 997, within half of that whatever was cut before.
    long[] lines = new long[996];
    for (int k = 0; k < lines.length; k++) {
      lines[k] = k + 1;
    }
    List<List<Loop>> slabs = Strips.upright(List.of(loop(0, 0, 997, 0, 997, 1000)), lines);
    for (int k = 1; k < slabs.size(); k++) {
      long high = slabs.get(k).stream().mapToLong(slab -> slab.maxY).max().orElseThrow();
      assertThat(high).isEqualTo(Math.round(1000.0 * (k + 1) / 997));
    }
  }
}
