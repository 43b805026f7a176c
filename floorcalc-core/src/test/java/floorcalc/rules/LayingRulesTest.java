package floorcalc.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LayingRulesTest {
  private static final LayingRules RULES =
      RuleSet.COMMON_PRACTICE.forBoard(Length.ofMillimetres(14), Length.ofMillimetres(185));

  @Test
  void withReplacesOneRuleInACopy() {
    LayingRules changed = RULES.with(LayingRules.EXPANSION_GAP, Length.ofMillimetres(12), Source.GIVEN);
    assertThat(changed.get(LayingRules.EXPANSION_GAP).toString()).isEqualTo("expansionGap = 12 mm (given in the job)");
    assertThat(changed.name()).isEqualTo("common practice");
    assertThat(RULES.value(LayingRules.EXPANSION_GAP)).isEqualTo(Length.ofMillimetres(10));
    assertThat(changed.all()).hasSize(RULES.all().size());
    assertThat(changed).isNotEqualTo(RULES);
    assertThat(changed.with(LayingRules.EXPANSION_GAP, Length.ofMillimetres(10), Source.COMMON_PRACTICE))
        .isEqualTo(RULES).hasSameHashCodeAs(RULES);
  }

  @Test
  void everyRuleHasAValueInOrder() {
    assertThat(RULES.all()).map(value -> value.key().name()).containsExactly("expansionGap", "minimumRowWidth",
        "minimumEndPiece", "minimumJointOffset", "sawKerf", "spareShare", "maximumRun.alongBoards",
        "maximumRun.acrossBoards", "breakGap", "deepestRecess", "widestVoid", "atDoorways");
    assertThat(LayingRules.keys()).map(RuleKey::name)
        .containsExactlyElementsOf(RULES.all().stream().map(value -> value.key().name()).toList());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "expansionGap           | -1 mm    | expansionGap must be from 0 mm to 100 mm, but was -1 mm; give the gap on one side alone, square to the wall",
      "expansionGap           | 101 mm   | expansionGap must be from 0 mm to 100 mm, but was 101 mm; give the gap on one side alone, square to the wall",
      "minimumRowWidth        | 7 m      | minimumRowWidth must be from 0 mm to 1000 mm, but was 7000 mm; give the narrowest strip wanted, 0 mm for none",
      "minimumEndPiece        | 5001 mm  | minimumEndPiece must be from 0 mm to 5000 mm, but was 5001 mm; give the shortest piece wanted at a wall, 0 mm for none",
      "minimumJointOffset     | -300 mm  | minimumJointOffset must be from 0 mm to 5000 mm, but was -300 mm; give a distance of at most half a board, 0 mm for none",
      "sawKerf                | 30 mm    | sawKerf must be from 0 mm to 20 mm, but was 30 mm; give the thickness of the cut that the blade makes",
      "maximumRun.alongBoards | 12 mm    | maximumRun.alongBoards must be from 500 mm to 1000000 mm, but was 12 mm; give the longest floor without an expansion break",
      "maximumRun.acrossBoards| 8 mm     | maximumRun.acrossBoards must be from 500 mm to 1000000 mm, but was 8 mm; give the widest floor without an expansion break",
      "breakGap               | 201 mm   | breakGap must be from 0 mm to 200 mm, but was 201 mm; give the gap that the profile covers, 0 mm for an expansion gap on either side",
      "deepestRecess          | -1 mm    | deepestRecess must be from 0 mm to 1000000 mm, but was -1 mm; give how far an inner corner may lie inside the bay, 0 mm for a break at each",
      "widestVoid             | 1001 m   | widestVoid must be from 0 mm to 1000000 mm, but was 1001000 mm; give the smaller width of the widest that the floor may lie round",
  })
  void lengthsOutOfBoundsAreRefused(String key, String value, String message) {
    assertThatThrownBy(() -> put(LayingRules.key(key), value)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage(message);
  }

  @SuppressWarnings("unchecked")
  private static LayingRules put(RuleKey<?> key, String value) {
    return RULES.with((RuleKey<Length>) key, Length.parse(value), Source.GIVEN);
  }

  @Test
  void sharesOutOfBoundsAreRefused() {
    assertThatThrownBy(() -> RULES.with(LayingRules.SPARE_SHARE, new BigDecimal("2"), Source.GIVEN))
        .hasMessage("spareShare must be from 0 to 1, but was 2; give 2 % as 0.02");
    assertThatThrownBy(() -> RULES.with(LayingRules.SPARE_SHARE, new BigDecimal("-1E-9"), Source.GIVEN))
        .hasMessage("spareShare must be from 0 to 1, but was -0.000000001; give 2 % as 0.02");
  }

  @Test
  void boundsThemselvesAreTaken() {
    for (RuleKey<?> key : LayingRules.keys()) {
      takesItsBounds(key);
    }
  }

  private static <T> void takesItsBounds(RuleKey<T> key) {
    for (T bound : List.of(key.least(), key.most())) {
      assertThat(RULES.with(key, bound, Source.GIVEN).value(key)).isEqualTo(bound);
    }
  }

  @Test
  void unknownRuleIsRefusedWithTheNames() {
    assertThat(LayingRules.key("sawKerf")).isSameAs(LayingRules.SAW_KERF);
    assertThatThrownBy(() -> LayingRules.key("gap")).hasMessage("there is no rule 'gap'; the rules are: expansionGap,"
        + " minimumRowWidth, minimumEndPiece, minimumJointOffset, sawKerf, spareShare, maximumRun.alongBoards,"
        + " maximumRun.acrossBoards, breakGap, deepestRecess, widestVoid, atDoorways");
  }

  @Test
  void nothingIsNull() {
    assertThatThrownBy(() -> RULES.with(LayingRules.SAW_KERF, null, Source.GIVEN))
        .isInstanceOf(NullPointerException.class).hasMessage("sawKerf");
    assertThatThrownBy(() -> RULES.with(LayingRules.SAW_KERF, Length.ZERO, null))
        .isInstanceOf(NullPointerException.class);
    assertThatThrownBy(() -> RULES.get(null)).isInstanceOf(NullPointerException.class);
  }

  @Test
  void textListsEachRuleWithItsSource() {
    assertThat(RULES.toString()).startsWith("common practice\n  expansionGap = 10 mm (common practice, no source)\n")
        .endsWith("\n  atDoorways = a break (common practice, no source)")
        .contains("\n  spareShare = 0.02 (common practice, no source)\n");
  }
}
