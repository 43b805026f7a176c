package floorcalc.outline.survey;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import floorcalc.working.Calculated;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class AngleTest {
  private static List<Angle> angles(String... texts) {
    return Arrays.stream(texts).map(Angle::parse).toList();
  }

  /** 129 + 5 / 60 + 37 / 3600 = 129.093611... degrees. */
  @Test
  void reads() {
    assertThat(Angle.parse("129-05-37").degrees()).isCloseTo(129.0936111, within(5e-8));
    assertThat(angles("129° 5' 37\"", "129°5′37″", " 129-5-37 ", "129-05-37.0")).containsOnly(Angle.parse("129-05-37"));
    assertThat(angles("68-44", "68°44'")).containsOnly(Angle.parse("68-44-00"));
    assertThat(Angle.parse("-0-00-18")).isEqualTo(Angle.ZERO.minus(Angle.parse("0-00-18"))).hasToString("-0-00-18");
    assertThat(Angle.parse("12.5")).isEqualTo(Angle.parse("12-30-00"));
    assertThat(Angle.parse("12.5°")).hasToString("12-30-00");
    assertThat(Angle.parse("7-06-05.25")).hasToString("7-06-05.25");
    assertThat(Angle.parse("7-06-30")).hasToString("7-06-30");
    assertThat(Angle.fromDegrees(new BigDecimal("248.09305556")).seconds()).isEqualByComparingTo("893135.000016");
  }

  @Test
  void refuses() {
    assertThatThrownBy(() -> Angle.parse("12-60-00")).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("minutes and seconds of [12-60-00] must be less than 60");
    assertThatThrownBy(() -> Angle.parse("12-00-60")).hasMessage("minutes and seconds of [12-00-60] must be less than 60");
    assertThatThrownBy(() -> Angle.parse("N 12 E")).hasMessage("cannot read [N 12 E] as an angle; write 129-05-37, 129° 5' 37\" or"
        + " decimal degrees such as 129.0936");
    assertThatThrownBy(() -> Angle.ofDegrees(1_000_001))
        .hasMessage("an angle must be within 1000000 degrees either way, but was 1000001");
  }

  @Test
  void turns() {
    assertThat(Angle.parse("370-00-01").withinATurn()).hasToString("10-00-01");
    assertThat(Angle.ZERO.minus(Angle.parse("0-00-01")).withinATurn()).hasToString("359-59-59");
    assertThat(Angle.HALF).isGreaterThan(Angle.ZERO).isEqualTo(Angle.ofDegrees(180)).hasSameHashCodeAs(Angle.ofDegrees(180));
  }

  @Property
  void readsBackWhatItWrites(@ForAll @LongRange(min = -2_000_000, max = 2_000_000) long thousandths) {
    Angle angle = Angle.fromDegrees(BigDecimal.valueOf(thousandths, 3));
    assertThat(Angle.parse(angle.toString())).isEqualTo(angle);
    assertThat(angle.degrees()).isCloseTo(thousandths / 1000.0, within(1e-12));
  }

  /** 90-00-01, 90-00-02, 89-59-59, 90-00-02 come to 360-00-04: a second off each. */
  @Test
  void balance() {
    Calculated<AngleBalance> calculated = AngleBalance.of(angles("90-00-01", "90-00-02", "89-59-59", "90-00-02"));
    assertStepsHold(calculated);
    assertThat(calculated.value().misclosure()).hasToString("0-00-04");
    assertThat(calculated.value().angles()).isEqualTo(angles("90-00-00", "90-00-01", "89-59-58", "90-00-01"));
    assertThatThrownBy(() -> AngleBalance.of(angles("90", "90"))).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a room has at least 3 angles, but 2 were given");
    assertThatThrownBy(() -> AngleBalance.of(angles("90", "-90", "90")))
        .hasMessage("angle 2 must be more than 0 and less than 360 degrees, but was -90-00-00; give the angle on the floor's side");
  }

  /** Whatever they missed, balanced angles come to the sum exactly, and shares differ by a millionth of a second at most. */
  @Property
  void balancedAnglesComeToTheSum(@ForAll @Size(min = 3, max = 20) List<@IntRange(min = 1, max = 1_295_999) Integer> seconds) {
    List<Angle> measured = seconds.stream().map(s -> Angle.parse("0-00-01").part(s, 1)).toList();
    Calculated<AngleBalance> calculated = AngleBalance.of(measured);
    assertStepsHold(calculated);
    Angle sum = calculated.value().angles().stream().reduce(Angle.ZERO, Angle::plus);
    assertThat(sum).isEqualTo(Angle.ofDegrees(180 * (seconds.size() - 2)));
  }
}
