package floorcalc.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A share of {@link SlipStudy}: slips of five standard deviations and more are found in 95 of 100 rooms. */
class SlipStudyTest {
  private static final int EACH = 6;

  @Test
  void usualSlipsAreFound() {
    List<PlantedSlip> large = new ArrayList<>();
    for (RandomRoom.Kind room : RandomRoom.Kind.values()) {
      for (PlantedSlip.Kind slip : PlantedSlip.Kind.values()) {
        if (slip != PlantedSlip.Kind.JUST_FIVE && slip != PlantedSlip.Kind.CENTIMETRE) {
          SlipStudy.cases(room, slip, EACH).stream().filter(one -> one.deviations() >= SlipStudy.TO_BE_FOUND).forEach(large::add);
        }
      }
    }
    assertThat(large).hasSizeGreaterThan(70);
    assertThat(SlipStudy.percent(large, SlipStudy::isFound)).isGreaterThanOrEqualTo(95);
    assertThat(SlipStudy.percent(large, one -> one.outcome() == PlantedSlip.Outcome.FIRST)).isGreaterThanOrEqualTo(75);
    List<PlantedSlip> found = large.stream().filter(SlipStudy::isFound).toList();
    assertThat(SlipStudy.percent(found, PlantedSlip::named)).isGreaterThanOrEqualTo(85);
  }
}
