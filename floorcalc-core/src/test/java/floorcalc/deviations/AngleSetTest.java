package floorcalc.deviations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import floorcalc.measure.Length;
import floorcalc.outline.Wkt;
import floorcalc.outline.survey.CornerSquareness;
import floorcalc.outline.survey.Squareness;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.StepChecks;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AngleSetTest {
  private static Outcome judged(String out, String over) {
    Calculated<Judgement> judged = AngleSet.DIN_18202.judge(new CornerSquareness(1, 0, Length.ofMillimetres(out), Length.ofMillimetres(over)));
    StepChecks.assertStepsHold(judged);
    return judged.value().outcome();
  }

  @Test
  void theLongerTheWallTheMoreIsAllowed() {
    assertThat(judged("12", "4000")).isEqualTo(Outcome.MET);
    assertThat(judged("-12", "4000")).isEqualTo(Outcome.MET);
    assertThat(judged("12.000001", "4000")).isEqualTo(Outcome.NOT_MET);
    assertThat(judged("-12.000001", "4000")).isEqualTo(Outcome.NOT_MET);
  }

  @Test
  void aBoundBelongsToTheShorterWalls() {
    assertThat(AngleSet.DIN_18202.limitFor(Length.ofMillimetres(3000)).orElseThrow().most()).isEqualTo(Length.ofMillimetres(8));
    assertThat(AngleSet.DIN_18202.limitFor(Length.ofNanometres(3_000_000_001L)).orElseThrow().most()).isEqualTo(Length.ofMillimetres(12));
    assertThat(AngleSet.DIN_18202.limitFor(Length.ofMillimetres(100_000)).orElseThrow().most()).isEqualTo(Length.ofMillimetres(30));
  }

  /** A room of 4 m by 3 m whose far wall leans by 15 mm over 4 m: more than the 12 mm allowed at one corner. */
  @Test
  void theCornersOfARoomAreJudgedEachForItself() {
    Calculated<List<Judgement>> judged = AngleSet.DIN_18202.judge(
        Squareness.of(Wkt.parse("POLYGON ((0 0, 4000 0, 4000 3015, 0 3000, 0 0))").shell()).value());
    StepChecks.assertStepsHold(judged);
    assertThat(judged.value()).extracting(Judgement::outcome).containsExactly(Outcome.MET, Outcome.MET, Outcome.NOT_MET, Outcome.NOT_MET);
    assertThat(judged.value().get(2).limit()).isEqualTo("at most 12 mm for walls over 3000 mm up to 6000 mm");
  }

  @Test
  void aSetOfOnesOwnMayBeSilent() {
    AngleSet own = AngleSet.of("own", "kitchens", List.of(new AngleLimit(Length.ZERO, Optional.of(Length.ofMillimetres(2000)),
        Length.ofMillimetres(4), Source.GIVEN)));
    assertThat(own.judge(new CornerSquareness(2, 0, Length.ZERO, Length.ofMillimetres(2001))).value().outcome()).isEqualTo(Outcome.NOT_MEASURED);
    assertThatIllegalArgumentException().isThrownBy(() -> AngleSet.named("x")).withMessageContaining("'DIN 18202'");
    assertThatIllegalArgumentException().isThrownBy(() -> new AngleLimit(Length.ofMillimetres(2), Optional.of(Length.ofMillimetres(2)),
        Length.ZERO, Source.GIVEN)).withMessageContaining("give the lesser first");
  }
}
