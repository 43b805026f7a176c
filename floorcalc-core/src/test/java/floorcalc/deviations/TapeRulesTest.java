package floorcalc.deviations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import floorcalc.measure.Length;
import floorcalc.working.StepChecks;
import org.junit.jupiter.api.Test;

class TapeRulesTest {
  @Test
  void aLongerTapeMayBeOffMore() {
    assertThat(TapeRules.toleranceFor(Length.parse("6 ft")).orElseThrow().most()).isEqualTo(Length.parse("1/32 in"));
    assertThat(TapeRules.toleranceFor(Length.parse("6' 1\"")).orElseThrow().most()).as("between two rows").isEqualTo(Length.parse("1/16 in"));
    assertThat(TapeRules.toleranceFor(Length.parse("5 m")).orElseThrow().most()).as("16.4 ft").isEqualTo(Length.parse("1.5875 mm"));
    assertThat(TapeRules.toleranceFor(Length.parse("100 ft")).orElseThrow().most()).isEqualTo(Length.parse("1/4 in"));
    assertThat(TapeRules.toleranceFor(Length.parse("101 ft"))).as("the source is silent").isEmpty();
    assertThatIllegalArgumentException().isThrownBy(() -> TapeRules.toleranceFor(Length.ZERO)).withMessageContaining("more than 0 mm");
  }

  @Test
  void theRowsFollowEachOther() {
    Length end = Length.ZERO;
    for (TapeRules.Tolerance row : TapeRules.tolerances()) {
      assertThat(row.over()).isEqualTo(end);
      end = row.upTo();
    }
  }

  /** A limit of 3 mm is measured to 1 mm. */
  @Test
  void whatIsHeldAgainstALimitIsMeasuredFiner() {
    assertThat(TapeRules.precisionFor(Length.ofMillimetres(3)).value()).isEqualTo(Length.ofMillimetres(1));
    StepChecks.assertStepsHold(TapeRules.precisionFor(Length.ofMillimetres(5)));
  }

  @Test
  void midwayBetweenGraduationsTheEvenOneIsRead() {
    Length sixteenth = Length.parse("1/16 in");
    assertThat(TapeRules.toGraduation(Length.parse("5/32 in"), sixteenth).value()).as("between 2 and 3").isEqualTo(Length.parse("1/8 in"));
    assertThat(TapeRules.toGraduation(Length.parse("7/32 in"), sixteenth).value()).as("between 3 and 4").isEqualTo(Length.parse("1/4 in"));
    assertThat(TapeRules.toGraduation(Length.parse("9/64 in"), sixteenth).value()).isEqualTo(Length.parse("1/8 in"));
    assertThat(TapeRules.toGraduation(Length.parse("11/64 in"), sixteenth).value()).isEqualTo(Length.parse("3/16 in"));
    StepChecks.assertStepsHold(TapeRules.toGraduation(Length.parse("7/32 in"), sixteenth));
  }
}
