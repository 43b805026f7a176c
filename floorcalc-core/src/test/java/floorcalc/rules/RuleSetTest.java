package floorcalc.rules;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RuleSetTest {
  private static Length len(String text) {
    return Length.parse(text);
  }

  /** The defaults themselves: common practice, no source. */
  @Test
  void commonPractice() {
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(len("14 mm"), len("185 mm"));
    assertThat(rules.value(LayingRules.EXPANSION_GAP)).isEqualTo(len("10 mm"));
    assertThat(rules.value(LayingRules.MINIMUM_ROW_WIDTH)).isEqualTo(len("70 mm"));
    assertThat(rules.value(LayingRules.SAW_KERF)).isEqualTo(len("3 mm"));
    assertThat(rules.value(LayingRules.SPARE_SHARE)).isEqualTo(new BigDecimal("0.02"));
    assertThat(rules.value(LayingRules.MAXIMUM_RUN_ALONG)).isEqualTo(len("12 m"));
    assertThat(rules.value(LayingRules.MAXIMUM_RUN_ACROSS)).isEqualTo(len("8 m"));
    assertThat(rules.value(LayingRules.BREAK_GAP)).isEqualTo(Length.ZERO);
    assertThat(rules.value(LayingRules.DEEPEST_RECESS)).isEqualTo(len("500 mm"));
    assertThat(rules.value(LayingRules.WIDEST_VOID)).isEqualTo(len("1 m"));
    assertThat(rules.value(LayingRules.AT_DOORWAYS)).isEqualTo(AtDoorways.BREAK);
    assertThat(rules.all()).allSatisfy(rule -> assertThat(rule.source()).isEqualTo(Source.COMMON_PRACTICE));
  }

  @ParameterizedTest
  @CsvSource({"10 mm, 300 mm", "14 mm, 300 mm", "14.999999 mm, 300 mm", "15 mm, 500 mm", "20 mm, 500 mm"})
  void endsByThicknessAndBelow15MillimetresAsThin(String thickness, String ends) {
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(len(thickness), len("185 mm"));
    assertThat(rules.value(LayingRules.MINIMUM_END_PIECE)).isEqualTo(len(ends));
    assertThat(rules.value(LayingRules.MINIMUM_JOINT_OFFSET)).isEqualTo(len(ends));
  }

  @ParameterizedTest
  @MethodSource("floorcalc.rules.RuleSet#all")
  void everySetCanBeRedoneAndFallsBackOnCommonPractice(RuleSet set) {
    Calculated<LayingRules> calculated = set.resolve(len("14 mm"), len("185 mm"), len("7 m"));
    assertStepsHold(calculated);
    LayingRules practice = RuleSet.COMMON_PRACTICE.forBoard(len("14 mm"), len("185 mm"));
    assertThat(calculated.value().name()).isEqualTo(set.name());
    assertThat(calculated.value().all()).hasSize(LayingRules.keys().size()).allSatisfy(rule -> {
      if (rule.source().standing() == Standing.COMMON_PRACTICE) {
        assertThat(rule).isEqualTo(practice.get(rule.key()));
      } else {
        assertThat(rule.source().standing()).isIn(Standing.READ, Standing.QUOTED);
        assertThat(rule.source().title()).isNotEmpty();
        assertThat(rule.source().publisher()).isNotEmpty();
      }
    });
    assertThat(RuleSet.named(set.name())).isSameAs(set);
    assertThat(set.about()).isNotEmpty();
    assertThat(set).hasToString(set.name());
  }

  @ParameterizedTest
  @MethodSource("floorcalc.rules.RuleSet#all")
  void roomMattersOnlyWhereASetSaysSo(RuleSet set) {
    LayingRules small = set.forBoardAndRoom(len("14 mm"), len("185 mm"), len("3 m"));
    LayingRules large = set.forBoardAndRoom(len("14 mm"), len("185 mm"), len("11 m"));
    assertThat(small.equals(large)).isEqualTo(!set.dependsOnRoom());
  }

  @Test
  void unknownRoomTakesTheGapOfTheLargestBay() {
    // 0.15 % of 12 m, the longest run of common practice, is 18 mm
    assertThat(RuleSet.NF_DTU_51_11.forBoard(len("14 mm"), len("185 mm")).value(LayingRules.EXPANSION_GAP))
        .isEqualTo(len("18 mm"));
  }

  @Test
  void gapThatIsNoWholeNanometreIsRoundedUp() {
    // 0.0015 * 7000.001 mm = 10.5000015 mm
    assertThat(RuleSet.NF_DTU_51_11.forBoardAndRoom(len("14 mm"), len("185 mm"), len("7000.001 mm"))
        .value(LayingRules.EXPANSION_GAP)).isEqualTo(len("10.500002 mm"));
  }

  @Test
  void gapBeyondAllBoundsIsCappedAndSaid() {
    // 0.0015 * 200 m = 300 mm
    Calculated<LayingRules> rules = RuleSet.NF_DTU_51_11.resolve(len("14 mm"), len("185 mm"), len("200 m"));
    assertThat(rules.value().value(LayingRules.EXPANSION_GAP)).isEqualTo(len("100 mm"));
    assertThat(rules.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.severity()).isEqualTo(Severity.SERIOUS);
      assertThat(finding.message()).isEqualTo("a floor of 200000 mm asks for a gap of 300 mm, more than the 100 mm that"
          + " can be left; split the floor with expansion breaks");
    });
    assertThat(rules.findings()).extracting(Finding::code).containsExactly("gap-beyond-rule");
    assertStepsHold(rules);
  }

  @Test
  void thickBoardsFallOutsideTheWidthLimitOfTheStandard() {
    assertThat(RuleSet.NF_DTU_51_11.forBoard(len("19.9 mm"), len("140 mm")).get(LayingRules.MAXIMUM_RUN_ACROSS).source()
        .standing()).isEqualTo(Standing.READ);
    assertThat(RuleSet.NF_DTU_51_11.forBoard(len("20 mm"), len("140 mm")).get(LayingRules.MAXIMUM_RUN_ACROSS).source())
        .isEqualTo(Source.COMMON_PRACTICE);
  }

  @Test
  void workingNamesRuleFormulaAndSource() {
    assertThat(RuleSet.NF_DTU_51_11.resolve(len("14 mm"), len("185 mm"), len("7 m")).steps().get(0).explain())
        .isEqualTo("""
            expansionGap: What is asked for: gap at everything fixed, on each side?
              g = max(g0, 0.0015 * l), rounded up to a whole nanometre
                g0 = 8 mm  (least gap; NF DTU 51.11 P1-1, AFNOR, 2009, clause 8.2 (read in the source))
                l = 7000 mm  (largest length or width to be covered)
              = 10.5 mm  [NF DTU 51.11 P1-1, AFNOR, 2009, clause 8.2 (read in the source)]""");
  }

  @Test
  void unknownSetIsRefusedWithTheNames() {
    assertThatThrownBy(() -> RuleSet.named("usual")).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("there is no rule set 'usual'; the sets are: 'common practice', 'NF DTU 51.11', 'NWFA guidelines',"
            + " 'NWFA two widths', 'NWFA three widths', 'NWFA guidelines, parquet', 'AS 1684'");
  }

  @Test
  void sizesOutOfRangeAreRefused() {
    assertThatThrownBy(() -> RuleSet.COMMON_PRACTICE.forBoard(len("0 mm"), len("185 mm")))
        .hasMessage("thickness must be more than 0 mm, but was 0 mm");
    assertThatThrownBy(() -> RuleSet.COMMON_PRACTICE.forBoardAndRoom(len("14 mm"), len("185 mm"), len("-1 mm")))
        .hasMessage("largest dimension must be more than 0 mm, but was -1 mm");
    assertThatThrownBy(() -> RuleSet.COMMON_PRACTICE.forBoardAndRoom(len("14 mm"), len("185 mm"), null))
        .isInstanceOf(NullPointerException.class);
    assertThatThrownBy(() -> RuleSet.COMMON_PRACTICE.forBoard(null, len("185 mm")))
        .isInstanceOf(NullPointerException.class).hasMessage("thickness");
  }
}
