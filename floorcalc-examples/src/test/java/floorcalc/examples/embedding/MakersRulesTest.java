package floorcalc.examples.embedding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rules are what the two (invented) papers say, row by row, on both sides of each limit. */
class MakersRulesTest {
  private static final BoardGoods BOARDS = BoardGoods.of(Length.parse("2.2 m"), Length.parse("185 mm"), Length.parse("14 mm"), 6);

  // Laying sheet (invented), page 2, table 1: "up to 6 m: 8 mm; up to 10 m: 12 mm".
  @ParameterizedTest
  @CsvSource({"1 m, 8 mm", "6 m, 8 mm", "6.001 m, 12 mm", "10 m, 12 mm"})
  void gapOfTheSheet(String largest, String gap) {
    RuleValue<Length> rule = sheet(largest).get(LayingRules.EXPANSION_GAP);
    assertThat(rule.value()).isEqualTo(Length.parse(gap));
    assertThat(rule.source().locator()).isEqualTo("page 2, table 1");
  }

  @Test
  void beyondItsTableTheSheetSaysNothing() {
    assertThat(sheet("10.001 m").get(LayingRules.EXPANSION_GAP).source()).isEqualTo(Source.COMMON_PRACTICE);
  }

  // Page 3: "end joints of neighbouring rows at least 400 mm apart".
  @Test
  void jointsOfTheSheet() {
    assertThat(sheet("1 m").value(LayingRules.MINIMUM_JOINT_OFFSET)).isEqualTo(Length.parse("400 mm"));
  }

  // Leaflet in the pack (invented): "15 mm all round". It says nothing of joints.
  @Test
  void theLeafletDisagreesAndIsASetOfItsOwn() {
    LayingRules rules = MakersRules.named(MakersRules.LEAFLET, BOARDS, Length.parse("1 m"));
    assertThat(rules.value(LayingRules.EXPANSION_GAP)).isEqualTo(Length.parse("15 mm"));
    assertThat(rules.get(LayingRules.EXPANSION_GAP).source().standing()).isEqualTo(Standing.QUOTED);
    assertThat(rules.get(LayingRules.MINIMUM_JOINT_OFFSET).source()).isEqualTo(Source.COMMON_PRACTICE);
  }

  @Test
  void anotherNameIsRefused() {
    assertThatThrownBy(() -> MakersRules.named("brochure", BOARDS, Length.parse("1 m"))).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("no rules 'brochure'; there are: sheet of an invented maker, leaflet of an invented maker");
  }

  private static LayingRules sheet(String largest) {
    return MakersRules.named(MakersRules.SHEET, BOARDS, Length.parse(largest));
  }
}
