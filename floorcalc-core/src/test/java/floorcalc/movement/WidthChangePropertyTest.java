package floorcalc.movement;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.moisture.Percent;
import floorcalc.working.Source;
import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Scale;

class WidthChangePropertyTest {
  private static final long MOST = 100_000_000_000L;

  private static long change(long width, BigDecimal share, BigDecimal from, BigDecimal to) {
    return WidthChange.of(Length.ofNanometres(width), Coefficient.of(share, "any", Source.GIVEN), Percent.of(from),
        Percent.of(to)).value().toNanometres();
  }

  @Property
  void thereAndBackCancelOut(@ForAll @LongRange(min = 0, max = MOST) long width,
      @ForAll @BigRange(min = "0.0001", max = "0.01") @Scale(5) BigDecimal share,
      @ForAll @BigRange(min = "0", max = "30") @Scale(2) BigDecimal from,
      @ForAll @BigRange(min = "0", max = "30") @Scale(2) BigDecimal to) {
    assertThat(change(width, share, from, to)).isEqualTo(-change(width, share, to, from));
    assertThat(Integer.signum(to.compareTo(from)) * change(width, share, from, to)).isNotNegative();
  }

  /** Each of the parts is rounded by half a nanometre at most. */
  @Property
  void movementAddsUp(@ForAll @LongRange(min = 0, max = MOST) long one, @ForAll @LongRange(min = 0, max = MOST) long other,
      @ForAll @BigRange(min = "0.0001", max = "0.01") @Scale(5) BigDecimal share,
      @ForAll @BigRange(min = "0", max = "30") @Scale(2) BigDecimal from,
      @ForAll @BigRange(min = "0", max = "30") @Scale(2) BigDecimal by,
      @ForAll @BigRange(min = "0", max = "30") @Scale(2) BigDecimal to) {
    assertThat(change(one, share, from, to) + change(other, share, from, to) - change(one + other, share, from, to))
        .isBetween(-1L, 1L);
    assertThat(change(one, share, from, by) + change(one, share, by, to) - change(one, share, from, to))
        .isBetween(-1L, 1L);
  }

  /** By shrinkage the way there and back cancels out if the second starts from the new width. */
  @Property
  void byShrinkageThereAndBackEndsWhereItBegan(@ForAll @LongRange(min = 1_000_000, max = MOST) long width,
      @ForAll @BigRange(min = "0.1", max = "25") @Scale(1) BigDecimal shrinkage,
      @ForAll @BigRange(min = "0", max = "30") @Scale(2) BigDecimal from,
      @ForAll @BigRange(min = "0", max = "30") @Scale(2) BigDecimal to) {
    Percent s = Percent.of(shrinkage);
    var there = WidthChange.byShrinkage(Length.ofNanometres(width), s, Shrinkage.FIBRE_SATURATION, Percent.of(from),
        Percent.of(to));
    assertStepsHold(there);
    Length then = Length.ofNanometres(width).plus(there.value());
    Length back = WidthChange.byShrinkage(then, s, Shrinkage.FIBRE_SATURATION, Percent.of(to), Percent.of(from)).value();
    assertThat(then.plus(back).toNanometres() - width).isBetween(-1L, 1L);
  }

  /** A bay as wide as advised keeps the gap, and one a millimetre wider does not. */
  @Property
  void theGreatestWidthIsTheGreatest(@ForAll @LongRange(min = 1, max = 30) long gapInMillimetres,
      @ForAll @BigRange(min = "0.0001", max = "0.01") @Scale(5) BigDecimal share,
      @ForAll @BigRange(min = "5", max = "10") @Scale(2) BigDecimal now,
      @ForAll @BigRange(min = "10.1", max = "20") @Scale(2) BigDecimal damp) {
    MovementForecast forecast = MovementForecast.of(Percent.of(now), Percent.of("5"), Percent.of(damp),
        Coefficient.of(share, "any", Source.GIVEN));
    Length gap = Length.ofMillimetres(gapInMillimetres);
    var advice = GapAdvice.of(forecast, Length.ofMillimetres(5000), GapAdviceTest.rule(gap),
        GapAdvice.StaysPut.IN_THE_MIDDLE);
    assertStepsHold(advice);
    Length greatest = advice.value().greatestWidth().orElseThrow();
    assertThat(isWideEnough(forecast, greatest, gap)).isTrue();
    assertThat(isWideEnough(forecast, greatest.plus(Length.ofMillimetres(1)), gap)).isFalse();
    assertThat(isWideEnough(forecast, Length.ofMillimetres(5000), advice.value().gap())).isTrue();
    Length bay = Length.ofMillimetres(5000).dividedBy(advice.value().bays(), java.math.RoundingMode.FLOOR);
    assertThat(isWideEnough(forecast, bay, gap)).isTrue();
  }

  private static boolean isWideEnough(MovementForecast forecast, Length width, Length gap) {
    return GapChecks.judge(forecast, GapPoint.bothSides(width, gap), Pinning.notLookedAt()).value().places().stream()
        .noneMatch(place -> place.narrowest().toNanometres() < -1);
  }
}
