package floorcalc.rules;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

class RuleKeyTest {

  @Test
  void aValueWithinItsBoundsIsHandedBack() {
    RuleKey<Length> rows = LayingRules.MINIMUM_ROW_WIDTH;
    assertThat(rows.check(Length.ofMillimetres(70))).isEqualTo(Length.ofMillimetres(70));
    assertThat(rows.check(rows.least())).isEqualTo(rows.least());
    assertThat(rows.check(rows.most())).isEqualTo(rows.most());
  }

  @Test
  void theTypeOfItsValueIsTold() {
    assertThat(LayingRules.MINIMUM_ROW_WIDTH.type()).isEqualTo(Length.class);
    assertThat(LayingRules.SPARE_SHARE.type()).isEqualTo(BigDecimal.class);
  }

  @Test
  void keysAreToldApartByTheirNames() {
    assertThat(LayingRules.key("sawKerf")).isEqualTo(LayingRules.SAW_KERF).hasSameHashCodeAs(LayingRules.SAW_KERF)
        .isNotEqualTo(LayingRules.BREAK_GAP).isNotEqualTo("sawKerf");
  }

  /** NF DTU 51.11, clause 8.1.3: boards under 20 mm thick; one of 20 mm is not under it. */
  @Test
  void theWidestBayHoldsForBoardsUnderTwentyMillimetres() {
    Length width = Length.ofMillimetres(185);
    Length room = Length.ofMillimetres(5000);
    Length common = RuleSet.COMMON_PRACTICE.forBoard(Length.ofMillimetres(20), width).value(LayingRules.MAXIMUM_RUN_ACROSS);
    assertThat(RuleSet.NF_DTU_51_11.forBoardAndRoom(Length.parse("19.999999 mm"), width, room).get(LayingRules.MAXIMUM_RUN_ACROSS).source().title())
        .startsWith("NF DTU");
    assertThat(RuleSet.NF_DTU_51_11.forBoardAndRoom(Length.ofMillimetres(20), width, room).get(LayingRules.MAXIMUM_RUN_ACROSS))
        .satisfies(run -> assertThat(run.value()).isEqualTo(common))
        .satisfies(run -> assertThat(run.source().title()).doesNotStartWith("NF DTU"));
  }
}
