package floorcalc.deviations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.Construction;
import floorcalc.boards.PackContent;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.StepChecks;
import java.util.List;
import org.junit.jupiter.api.Test;

class SizeSetTest {
  private static BoardGoods board(String length, String width, String thickness) {
    return BoardGoods.of(Length.parse(length), Length.parse(width), Length.parse(thickness), 6);
  }

  @Test
  void anEngineeredBoardOfUsualSizesIsWithin() {
    Calculated<List<Judgement>> judged = SizeSet.EN_13489_TWO_LAYERS.judge(board("2200 mm", "185 mm", "14 mm"));
    assertThat(judged.value()).extracting(Judgement::outcome).containsExactly(Outcome.MET, Outcome.NOT_MEASURED);
    assertThat(judged.findings()).isEmpty();
    StepChecks.assertStepsHold(judged);
  }

  @Test
  void aBoardOutsideGetsANoteAndNothingWorse() {
    Calculated<List<Judgement>> judged = SizeSet.EN_13489_TWO_LAYERS.judge(board("2200 mm", "185 mm", "8 mm"));
    assertThat(judged.value().get(0).outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(judged.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.severity()).isEqualTo(Severity.NOTE);
      assertThat(finding.code()).isEqualTo("board-outside-standard");
      assertThat(finding.message()).contains("thickness of 8 mm", "EN 13489 two layers", "9 mm to 22 mm", "goods' papers");
    });
  }

  @Test
  void theBoundsThemselvesAreWithinButALengthToExceed() {
    SizeSet solid = SizeSet.EN_13226;
    assertThat(solid.limit(BoardSize.THICKNESS).orElseThrow().allows(Length.ofMillimetres(14))).isTrue();
    assertThat(solid.limit(BoardSize.WIDTH).orElseThrow().allows(Length.ofMillimetres(40))).isTrue();
    assertThat(solid.limit(BoardSize.LENGTH).orElseThrow().allows(Length.ofMillimetres(250))).isFalse();
    assertThat(solid.limit(BoardSize.LENGTH).orElseThrow().allows(Length.ofNanometres(250_000_001))).isTrue();
    assertThat(SizeSet.EN_13990.limit(BoardSize.WIDTH).orElseThrow().allows(Length.ofMillimetres(192))).isTrue();
    assertThat(SizeSet.EN_13990.limit(BoardSize.WIDTH).orElseThrow().allows(Length.ofNanometres(192_000_001))).isFalse();
  }

  @Test
  void eachLengthOfAMixedPackIsLookedAt() {
    BoardGoods mixed = BoardGoods.mixed(List.of(new PackContent(Length.ofMillimetres(900), 4), new PackContent(Length.ofMillimetres(240), 2),
        new PackContent(Length.ofMillimetres(200), 2)), Length.ofMillimetres(90), Length.ofMillimetres(20)).withConstruction(Construction.SOLID);
    Calculated<List<Judgement>> judged = SizeSet.EN_13226.judge(mixed);
    assertThat(judged.value().get(1).found()).isEqualTo("240 mm, 200 mm");
    assertThat(judged.findings()).hasSize(1);
    StepChecks.assertStepsHold(judged);
  }

  @Test
  void theSetFollowsTheConstructionAndTheWood() {
    BoardGoods board = board("2200 mm", "185 mm", "20 mm");
    BoardGoods solid = board.withConstruction(Construction.SOLID);
    assertThat(SizeSet.fitting(board)).isSameAs(SizeSet.EN_13489_TWO_LAYERS);
    assertThat(SizeSet.fitting(solid)).isSameAs(SizeSet.EN_13226);
    assertThat(SizeSet.fitting(solid.withSpecies("white oak"))).isSameAs(SizeSet.EN_13226);
    assertThat(SizeSet.fitting(solid.withSpecies("Scots pine"))).isSameAs(SizeSet.EN_13990);
    assertThat(SizeSet.fitting(solid.withSpecies("first quality ash"))).as("fir is not a part of another word").isSameAs(SizeSet.EN_13226);
    assertThat(SizeSet.fitting(board.withSpecies("pine"))).isSameAs(SizeSet.EN_13489_TWO_LAYERS);
  }

  @Test
  void whatIsUsualIsNotAskedFor() {
    Calculated<List<Judgement>> judged = SizeSet.EN_13990.judge(board("2200 mm", "210 mm", "27 mm").withConstruction(Construction.SOLID));
    assertThat(judged.findings()).singleElement().satisfies(finding -> assertThat(finding.message()).contains("outside the usual sizes"));
  }

  @Test
  void aCallerHasASetOfHisOwn() {
    SizeSet own = SizeSet.of("papers", "these boards", List.of(SizeLimit.between(BoardSize.LENGTH, Length.ofMillimetres(500),
        Length.ofMillimetres(2000), Source.GIVEN)));
    assertThat(own.judge(board("2200 mm", "185 mm", "14 mm")).value().get(0).outcome()).isEqualTo(Outcome.NOT_MET);
    assertThatIllegalArgumentException().isThrownBy(() -> SizeSet.of("none", "", List.of())).withMessageContaining("at least one limit");
    assertThatIllegalArgumentException().isThrownBy(() -> SizeLimit.between(BoardSize.WIDTH, Length.ofMillimetres(2), Length.ofMillimetres(1),
        Source.GIVEN)).withMessageContaining("give the lesser one first");
  }

  @Test
  void eachSetIsFoundByItsName() {
    assertThat(SizeSet.all()).allSatisfy(set -> assertThat(SizeSet.named(set.name())).isSameAs(set));
    assertThatIllegalArgumentException().isThrownBy(() -> SizeSet.named("EN 1")).withMessageContaining("'EN 13226', 'EN 13990'");
  }
}
