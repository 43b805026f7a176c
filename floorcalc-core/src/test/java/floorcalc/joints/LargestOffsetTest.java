package floorcalc.joints;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import org.junit.jupiter.api.Test;

class LargestOffsetTest {
  private static final RuleValue<Length> FIVE_HUNDRED = RuleSet.COMMON_PRACTICE
      .forBoard(Length.ofMillimetres(15), Length.ofMillimetres(185)).get(LayingRules.MINIMUM_JOINT_OFFSET);

  @Test
  void halfABoardIsTheMost() {
    Calculated<Length> most = LargestOffset.of(Length.ofMillimetres(1000), FIVE_HUNDRED);
    assertThat(most.value()).isEqualTo(Length.ofMillimetres(500));
    assertThat(most.findings()).isEmpty();
    assertStepsHold(most);
  }

  @Test
  void oddNanometreIsRoundedDown() {
    Calculated<Length> most = LargestOffset.of(Length.ofMillimetres("1000.000001"), FIVE_HUNDRED);
    assertThat(most.value()).isEqualTo(Length.ofMillimetres(500));
    assertStepsHold(most);
  }

  @Test
  void ruleBeyondTheBoardsIsSaid() {
    assertThat(LargestOffset.of(Length.ofMillimetres(900), FIVE_HUNDRED).findings()).singleElement()
        .satisfies(finding -> {
          assertThat(finding.code()).isEqualTo("offset-beyond-boards");
          assertThat(finding.message()).isEqualTo("boards of 900 mm can keep end joints 450 mm apart at most, at least"
              + " 500 mm is asked for; take longer boards or a smaller offset");
          assertThat(finding.source()).isEqualTo(FIVE_HUNDRED.source());
        });
  }

  @Test
  void boardWithoutLengthIsRefused() {
    assertThatThrownBy(() -> LargestOffset.of(Length.ZERO, FIVE_HUNDRED))
        .hasMessage("board length must be more than 0 mm, but was 0 mm");
  }
}
