package floorcalc.outline.survey;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class ArcTest {
  private static Arc arc(String chord, String rise) {
    Calculated<Arc> calculated = Arc.of(Length.parse(chord), Length.parse(rise));
    assertStepsHold(calculated);
    return calculated.value();
  }

  /** Half of a 16 and 17 triangle: R = (4 + 0.25) / 1 = 4.25 m, sin(w / 2) = 2 / 4.25 = 8 / 17, sin w = 240 / 289. */
  @Test
  void lessThanAHalfCircle() {
    Arc arc = arc("4 m", "0.5 m");
    assertThat(arc.radius()).isEqualTo(Length.parse("4.25 m"));
    // w = 4 arctan(1 / 4) = 0.979914652507..., b = 4.25 w, K = 4.25² (w - 240 / 289) / 2
    assertThat(arc.degrees()).isCloseTo(56.1449739, within(5e-8));
    assertThat(arc.length().toMillimetres()).isCloseTo(4164.637273, within(5e-7));
    assertThat(arc.segment().toSquareMetres()).isCloseTo(1.349854, within(5e-7));
  }

  /** A half circle of 6 ft: b = 6 pi ft, K = 18 pi sq ft = 5.253542... m². */
  @Test
  void halfCircle() {
    Arc arc = arc("12 ft", "6 ft");
    assertThat(arc.radius()).isEqualTo(Length.parse("6 ft"));
    assertThat(arc.degrees()).isCloseTo(180, within(1e-12));
    assertThat(arc.length().toMillimetres()).isCloseTo(5745.344645, within(5e-7));
    assertThat(arc.segment()).isEqualTo(Area.ofSquareMetres("5.253543"));
  }

  /** R = (16 + 64) / 16 = 5 m, w = 4 arctan 2 = 4.42859487..., sin w = -0.96, K = 25 (w + 0.96) / 2. */
  @Test
  void moreThanAHalfCircle() {
    Arc arc = arc("8 m", "8 m");
    assertThat(arc.radius()).isEqualTo(Length.parse("5 m"));
    assertThat(arc.length().toMillimetres()).isCloseTo(22142.974356, within(5e-7));
    assertThat(arc.segment().toSquareMetres()).isCloseTo(67.357436, within(5e-7));
  }

  /** R = (0.25 + 2.25) / 3 = 5 / 6 m does not come out even, w = 4 arctan 3 = 4.99618308959301..., b = 5 w / 6 = 4.16348590799418... m. */
  @Test
  void lengthIsNotThatOfARoundedRadius() {
    Arc arc = arc("1 m", "1.5 m");
    assertThat(arc.radius()).isEqualTo(Length.parse("833.333333 mm"));
    assertThat(arc.length()).isEqualTo(Length.parse("4163.485908 mm"));
  }

  /** A bow of 3 mm in 4 m: 2 / 3 of chord times rise, but for its square: R = (4 + 0.000009) / 0.006 = 666.668166... m. */
  @Test
  void flatArcLosesNothing() {
    Arc arc = arc("4 m", "3 mm");
    assertThat(arc.radius().toMillimetres()).isCloseTo(666668.166667, within(5e-7));
    assertThat(arc.segment()).isEqualTo(Area.ofSquareMillimetres(8000));
  }

  @Test
  void refuses() {
    assertThatThrownBy(() -> arc("4 m", "0 mm")).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the rise of an arc must be more than 0 mm, but was 0 mm; an arc without a rise is a straight wall");
    assertThatThrownBy(() -> arc("-4 m", "1 mm"))
        .hasMessage("the chord of an arc must be more than 0 mm and at most 20 km, but was -4000 mm");
    assertThatThrownBy(() -> arc("4 m", "5000 m")).hasMessage("the rise of an arc must be from a millionth of its chord to a"
        + " thousand times it, but was 5000000 mm on a chord of 4000 mm; measure both again");
  }

  /** A circle in two arcs over one chord: 2 pi R round, pi R² within. */
  @Property(tries = 300)
  void twoArcsMakeACircle(@ForAll @LongRange(min = 100_000_000, max = 20_000_000_000L) long chord,
      @ForAll @DoubleRange(min = 0.01, max = 0.5) double share) {
    Length rise = Length.ofNanometres(Math.round(chord * share));
    Calculated<Arc> small = Arc.of(Length.ofNanometres(chord), rise);
    double r = small.value().radius().toMillimetres();
    Length rest = small.value().radius().multipliedBy(2).minus(rise);
    Calculated<Arc> large = Arc.of(Length.ofNanometres(chord), rest);
    assertStepsHold(small);
    assertStepsHold(large);
    assertThat(large.value().radius().toMillimetres()).isCloseTo(r, within(2e-6));
    double round = small.value().length().plus(large.value().length()).toMillimetres();
    assertThat(round).isCloseTo(2 * StrictMath.PI * r, within(2 * StrictMath.PI * r * 1e-9 + 1e-5));
    double area = small.value().segment().plus(large.value().segment()).toSquareMillimetres();
    assertThat(area).isCloseTo(StrictMath.PI * r * r, within(StrictMath.PI * r * r * 1e-9 + 1));
  }
}
