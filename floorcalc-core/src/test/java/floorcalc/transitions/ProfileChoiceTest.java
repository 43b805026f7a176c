package floorcalc.transitions;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProfileChoiceTest {
  private static HeightDifference by(String millimetres) {
    return new HeightDifference(Length.ofMillimetres(millimetres));
  }

  private static ProfileChoice choose(EdgeType edge, String higherBy, LevelChangeSet set) {
    Calculated<ProfileChoice> choice = ProfileChoice.of(edge, by(higherBy), set);
    assertStepsHold(choice);
    return choice.value();
  }

  /** 1/8 in = 3.175 mm, 3/8 in = 9.525 mm, 1/2 in = 12.7 mm, all still within. */
  @ParameterizedTest
  @CsvSource({
      "SAME_FLOOR, 0, T, LEVEL", "SAME_FLOOR, 3.175, T, TO_HERE", "SAME_FLOOR, -3.175, T, TO_BEYOND",
      "SAME_FLOOR, 3.175001, REDUCER, TO_HERE", "SAME_FLOOR, -9.525, REDUCER, TO_BEYOND", "SAME_FLOOR, 12.7, REDUCER, TO_HERE",
      "SAME_FLOOR, -12.700001, END, TO_BEYOND", "NOT_STATED, 0, T, LEVEL", "NOT_STATED, -4, REDUCER, TO_BEYOND",
      "OTHER_FINISH, 0, END, LEVEL", "OTHER_FINISH, -4, END, TO_BEYOND", "FIXED_EDGE, 30, END, TO_HERE",
      "STEP, -170, NOSING, TO_BEYOND", "STEP, 0, NOSING, LEVEL", "STEP, 170, END, TO_HERE"})
  void commonPractice(EdgeType edge, String higherBy, ProfileKind kind, Fall fall) {
    ProfileChoice choice = choose(edge, higherBy, LevelChangeSet.COMMON_PRACTICE);
    assertThat(choice.kind()).isEqualTo(kind);
    assertThat(choice.fall()).isEqualTo(fall);
    assertThat(choice.source()).isEqualTo(Source.COMMON_PRACTICE);
  }

  /** Sources that disagree: 5 mm is beyond a T profile by common practice, needs nothing by ADA and a threshold by NF DTU. */
  @Test
  void setsStayApart() {
    assertThat(choose(EdgeType.SAME_FLOOR, "5", LevelChangeSet.COMMON_PRACTICE).kind()).isEqualTo(ProfileKind.REDUCER);
    assertThat(choose(EdgeType.SAME_FLOOR, "5", LevelChangeSet.ADA_ANSI).kind()).isEqualTo(ProfileKind.T);
    ProfileChoice french = choose(EdgeType.SAME_FLOOR, "5", LevelChangeSet.NF_DTU_51_11);
    assertThat(french.kind()).isEqualTo(ProfileKind.REDUCER);
    assertThat(french.verdict().treatment()).isEqualTo(LevelTreatment.THRESHOLD);
    assertThat(french.source().standing()).isEqualTo(Standing.READ);
  }

  /** 10 mm at 1:2 is 20 mm long. 20 mm at 1:12 is 240 mm; where space is limited 1:10 is 200 mm and 1:8 is 160 mm. */
  @Test
  void runs() {
    Calculated<LevelChangeVerdict> bevel = LevelChangeSet.ADA_ANSI.judge(by("-10"));
    assertStepsHold(bevel);
    assertThat(bevel.value().run()).contains(Length.ofMillimetres(20));
    assertThat(bevel.value().steeper()).isEmpty();
    assertThat(bevel.findings()).isEmpty();

    Calculated<LevelChangeVerdict> ramp = LevelChangeSet.ADA_ANSI.judge(by("20"));
    assertStepsHold(ramp);
    assertThat(ramp.value().treatment()).isEqualTo(LevelTreatment.RAMP);
    assertThat(ramp.value().run()).contains(Length.ofMillimetres(240));
    assertThat(ramp.steps()).filteredOn(step -> step.id().equals("run-of-slope")).extracting(step -> step.result())
        .containsExactly(Length.ofMillimetres(240), Length.ofMillimetres(200), Length.ofMillimetres(160));
    assertThat(ramp.findings()).extracting(Finding::message).containsExactly("a difference of height of 20 mm needs a ramp of at"
        + " least 240 mm (no steeper than 1:12) by 'ADA and ANSI'; raise the lower floor or build a ramp");
  }

  /** A rise of 100 mm is more than 3 in (76.2 mm) and less than 6 in (152.4 mm): 1:10 may do, 1:8 may not; 160 mm: neither. */
  @Test
  void limitedSpaceEnds() {
    assertThat(LevelChangeSet.ADA_ANSI.judge(by("100")).value().steeper()).extracting(one -> one.slope().orElseThrow())
        .containsExactly(new Slope(10));
    assertThat(LevelChangeSet.ADA_ANSI.judge(by("160")).value().steeper()).isEmpty();
  }

  @Test
  void because() {
    assertThat(choose(EdgeType.SAME_FLOOR, "0", LevelChangeSet.COMMON_PRACTICE).because()).isEqualTo("both sides at one height");
    assertThat(choose(EdgeType.SAME_FLOOR, "-2", LevelChangeSet.COMMON_PRACTICE).because()).isEqualTo(
        "2 mm lower beyond, falls to the floor beyond, within the 3.175 mm that need no reducer by 'common practice'");
    assertThat(choose(EdgeType.SAME_FLOOR, "6", LevelChangeSet.COMMON_PRACTICE).because())
        .isEqualTo("6 mm higher beyond, falls to this floor");
    assertThat(choose(EdgeType.SAME_FLOOR, "11", LevelChangeSet.COMMON_PRACTICE).because())
        .isEqualTo("11 mm higher beyond, falls to this floor, at least 22 mm long across at 1:2");
    assertThat(choose(EdgeType.SAME_FLOOR, "20", LevelChangeSet.COMMON_PRACTICE).because()).isEqualTo("20 mm higher beyond, falls to"
        + " this floor, more than a reducer takes up by 'common practice': a ramp or a step is needed beside it");
    assertThat(choose(EdgeType.SAME_FLOOR, "20", LevelChangeSet.ADA_ANSI).because()).isEqualTo("20 mm higher beyond, falls to this"
        + " floor, more than a reducer takes up by 'ADA and ANSI': a ramp of at least 240 mm is needed beside it");
    assertThat(choose(EdgeType.OTHER_FINISH, "-4", LevelChangeSet.COMMON_PRACTICE).because()).isEqualTo("another finish beyond, 4 mm"
        + " lower beyond, falls to the floor beyond: the floor ends there with its gap");
    assertThat(choose(EdgeType.FIXED_EDGE, "0", LevelChangeSet.COMMON_PRACTICE).because())
        .isEqualTo("fixed edge, at one height: the floor ends there with its gap");
    assertThat(choose(EdgeType.STEP, "-180", LevelChangeSet.COMMON_PRACTICE).because())
        .isEqualTo("edge of a step, 180 mm lower beyond, falls to the floor beyond");
    assertThat(choose(EdgeType.STEP, "180", LevelChangeSet.COMMON_PRACTICE).because())
        .isEqualTo("foot of a step that is 180 mm high: the floor ends at its face with its gap");
  }

  @Test
  void findings() {
    assertThat(ProfileChoice.of(EdgeType.STEP, by("-180"), LevelChangeSet.COMMON_PRACTICE).findings()).isEmpty();
    assertThat(ProfileChoice.of(EdgeType.FIXED_EDGE, by("60"), LevelChangeSet.ADA_ANSI).findings()).isEmpty();
    assertThat(ProfileChoice.of(EdgeType.OTHER_FINISH, by("-20"), LevelChangeSet.COMMON_PRACTICE).findings())
        .extracting(Finding::code, Finding::message).containsExactly(org.assertj.core.groups.Tuple.tuple(
            "level-change-beyond-set", "on a difference of height of 20 mm 'common practice' says nothing; level the floors, or"
                + " plan a ramp or a step by the local code"));
    assertThat(ProfileChoice.of(EdgeType.NOT_STATED, by("0"), LevelChangeSet.COMMON_PRACTICE).findings())
        .extracting(Finding::code).containsExactly("floor-beyond-not-stated");
  }

  @Test
  void ownSets() {
    LevelChangeSet own = LevelChangeSet.of("ours", "our floors", List.of(new LevelChangeLimit(LevelTreatment.T_PROFILE,
        Optional.of(Length.ofMillimetres(5)), Optional.empty(), LevelChangeLimit.Space.ANY, Source.GIVEN)));
    assertThat(choose(EdgeType.SAME_FLOOR, "5", own).kind()).isEqualTo(ProfileKind.T);
    assertThat(own.about()).isEqualTo("our floors");
    assertThatThrownBy(() -> LevelChangeSet.of("none", "", List.of())).hasMessage("set 'none' must have at least one limit");
    assertThat(LevelChangeSet.named("ADA and ANSI")).isSameAs(LevelChangeSet.ADA_ANSI);
    assertThatThrownBy(() -> LevelChangeSet.named("ours")).hasMessage("there is no set of level changes 'ours'; the sets are: 'common"
        + " practice', 'ADA and ANSI', 'NF DTU 51.11'");
    assertThatThrownBy(() -> new Slope(0))
        .hasMessage("the run of a slope must be at least 1, but was 0; give 1:12 as 12");
  }
}
