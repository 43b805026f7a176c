package floorcalc.transitions;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class RisersTest {
  private static Length in(int whole, int over, int under) {
    return Length.ofInches(whole, over, under);
  }

  private static HeightStack laid(Length thickness) {
    return HeightStack.BARE.on("floor", thickness);
  }

  /** Nine risers: 6 1/2, seven of 7 3/4, 7 1/2. */
  private static List<Length> stair() {
    List<Length> risers = new ArrayList<>(List.of(in(6, 1, 2)));
    risers.addAll(Collections.nCopies(7, in(7, 3, 4)));
    risers.add(in(7, 1, 2));
    return risers;
  }

  /** 7 3/4 - 6 1/2 = 1 1/4 in; 3/8 in is allowed. */
  @Test
  void asItIs() {
    Calculated<Risers> risers = Risers.of(stair(), HeightStack.BARE, HeightStack.BARE, HeightStack.BARE,
        StairSet.COMMON_PRACTICE_US);
    assertStepsHold(risers);
    assertThat(risers.value().after()).isEqualTo(stair());
    assertThat(risers.value().spread()).isEqualTo(in(1, 1, 4));
    assertThat(risers.value().judgements()).extracting(Judgement::outcome).containsExactly(Outcome.NOT_MET, Outcome.MET);
    assertThat(risers.findings()).extracting(Finding::message).containsExactly("risers are 31.75 mm apart, common practice, US"
        + " allows 9.525 mm: uneven risers trip people; pad the treads, and follow the local code");
  }

  /**
   * 3/4 in on the treads alone: the first is 6 1/2 + 3/4 = 7 1/4, those between stay 7 3/4, the last is 7 1/2 - 3/4 = 6 3/4:
   * 1 in apart. With 5/8 in at the foot and 1 1/4 in at the top: 6 1/2 - 5/8 + 3/4 = 6 5/8 and 7 1/2 - 3/4 + 1 1/4 = 8.
   */
  @Test
  void withFloors() {
    Risers treads = Risers.of(stair(), HeightStack.BARE, laid(in(0, 3, 4)), HeightStack.BARE, StairSet.COMMON_PRACTICE_US)
        .value();
    assertThat(treads.after().get(0)).isEqualTo(in(7, 1, 4));
    assertThat(treads.after().subList(1, 8)).containsOnly(in(7, 3, 4));
    assertThat(treads.after().get(8)).isEqualTo(in(6, 3, 4));
    assertThat(treads.spread()).isEqualTo(in(1, 0, 1));

    Calculated<Risers> all = Risers.of(stair(), laid(in(0, 5, 8)), laid(in(0, 3, 4)), laid(in(1, 1, 4)),
        StairSet.COMMON_PRACTICE_US);
    assertStepsHold(all);
    assertThat(all.value().after().get(0)).isEqualTo(in(6, 5, 8));
    assertThat(all.value().after().get(8)).isEqualTo(in(8, 0, 1));
    assertThat(all.value().spread()).isEqualTo(in(1, 3, 8));
    assertThat(all.findings()).extracting(Finding::code).containsExactly("risers-uneven", "riser-too-high");
  }

  /** One step from 16 mm of floor up to 20 mm: 180 - 16 + 20 = 184. */
  @Test
  void oneRiser() {
    Calculated<Risers> one = Risers.of(List.of(Length.ofMillimetres(180)), laid(Length.ofMillimetres(16)), HeightStack.BARE,
        laid(Length.ofMillimetres(20)), StairSet.COMMON_PRACTICE_CANADA);
    assertStepsHold(one);
    assertThat(one.value().after()).containsExactly(Length.ofMillimetres(184));
    assertThat(one.value().spread()).isEqualTo(Length.ZERO);
    assertThat(one.value().judgements()).extracting(Judgement::outcome).containsExactly(Outcome.MET);
    assertThat(one.findings()).isEmpty();
  }

  /** 900 + 905.5 + 898 = 2703.5. */
  @Test
  void nosing() {
    Calculated<Length> nosing = Risers.nosing(List.of(Length.ofMillimetres(900), Length.ofMillimetres("905.5"),
        Length.ofMillimetres(898)));
    assertStepsHold(nosing);
    assertThat(nosing.value()).isEqualTo(Length.ofMillimetres("2703.5"));
  }

  @Test
  void refuses() {
    assertThatThrownBy(() -> Risers.of(List.of(), HeightStack.BARE, HeightStack.BARE, HeightStack.BARE,
        StairSet.COMMON_PRACTICE_US)).hasMessage("a stair must have 1 to 100 risers, but has 0");
    assertThatThrownBy(() -> Risers.of(List.of(Length.ofMillimetres(10)), laid(Length.ofMillimetres(16)), HeightStack.BARE,
        HeightStack.BARE, StairSet.COMMON_PRACTICE_US)).hasMessage(
            "riser 1 must be more than 0 mm, but is 10 mm before and -6 mm after the floor; measure it again");
    assertThatThrownBy(() -> Risers.nosing(List.of(Length.ZERO))).hasMessage(
        "nosing takes 1 to 100 steps, each more than 0 mm wide, but they are [0 mm]");
    assertThat(StairSet.named("common practice, Canada")).isEqualTo(StairSet.COMMON_PRACTICE_CANADA);
    assertThatThrownBy(() -> StairSet.named("x")).hasMessageContaining("'common practice, US', 'common practice, Canada'");
  }
}
