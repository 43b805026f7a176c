package floorcalc.transitions;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DoorTest {
  private static final HeightStack FLOOR = HeightStack.BARE.on("underlay", mm("2")).on("board", mm("14"));

  private static Length mm(String millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  /** 2 + 14 = 16, and 1 mm of clearance: 17. */
  @Test
  void undercut() {
    Calculated<CasingWork> work = CasingWork.of(FLOOR, CasingWork.CLEARANCE, Casing.CUT, FireRating.NO_FIRE_DOOR);
    assertStepsHold(work);
    assertThat(work.value().treatment()).isEqualTo(CasingWork.Treatment.UNDERCUT);
    assertThat(work.value().height()).contains(mm("17"));
    assertThat(work.steps().get(1).explain()).isEqualTo("""
        undercut-height: How high above the bare subfloor is a casing cut?
          u = H + c
            H = 16 mm  (floor)
            c = 1 mm  (clearance above it; common practice, no source)
          = 17 mm  [common practice, no source]""");
    // Not stated: as if it could be cut, and the question says so.
    assertThat(CasingWork.of(FLOOR, mm("0"), Casing.NOT_STATED, FireRating.NOT_STATED).steps().get(1).question())
        .isEqualTo("How high above the bare subfloor is a casing cut, if it can be?");
  }

  @Test
  void frameThatCannotBeCut() {
    Calculated<CasingWork> work = CasingWork.of(FLOOR, mm("1"), Casing.CANNOT_BE_CUT, FireRating.NO_FIRE_DOOR);
    assertThat(work.value()).isEqualTo(new CasingWork(CasingWork.Treatment.SEALED_GAP, java.util.Optional.empty()));
    assertThat(work.findings()).extracting(Finding::message).containsExactly("the frame cannot be cut: keep the expansion gap to"
        + " it and seal the gap with something elastic that lets the floor move");
  }

  /** Whatever else is stated: no height, no step, and nobody is told to cut. */
  @ParameterizedTest
  @EnumSource(Casing.class)
  void fireDoor(Casing casing) {
    Calculated<CasingWork> work = CasingWork.of(FLOOR, mm("1"), casing, FireRating.FIRE_DOOR);
    assertThat(work.value().treatment()).isEqualTo(CasingWork.Treatment.ASK_FIRST);
    assertThat(work.value().height()).isEmpty();
    assertThat(work.steps()).isEmpty();
    assertThat(work.findings()).extracting(Finding::code).containsExactly("fire-door");
    Calculated<DoorLeaf> leaf = DoorLeaf.of(mm("10"), FLOOR, DoorSet.all(), FireRating.FIRE_DOOR);
    assertThat(leaf.value().judgements()).isNotEmpty().extracting(Judgement::advice)
        .allSatisfy(advice -> assertThat(advice).doesNotContain("come off", "plane", "cut "));
    assertThat(leaf.findings()).extracting(Finding::code).containsExactly("door-does-not-clear", "fire-door");
  }

  @Test
  void refuses() {
    assertThatThrownBy(() -> CasingWork.of(FLOOR, mm("-1"), Casing.CUT, FireRating.NOT_STATED)).hasMessage(
        "clearance under a casing must be from 0 mm to 20 mm, but was -1 mm; give what is left above the floor");
    assertThatThrownBy(() -> CasingWork.of(FLOOR, mm("20.1"), Casing.CUT, FireRating.NOT_STATED)).hasMessageContaining("20.1 mm");
    assertThatThrownBy(() -> DoorLeaf.of(mm("-1"), FLOOR, DoorSet.all(), FireRating.NOT_STATED)).hasMessage(
        "the bottom of a door leaf must be 0 mm or more above the bare subfloor, but was -1 mm; measure from the subfloor up");
  }

  /**
   * A leaf 24 mm above the bare subfloor, a floor of 16 mm: 8 mm are left. 1/2 in is 12.7 mm, so it lacks 4.7 mm by common
   * practice; 10 mm of ventilation lack 2 mm; 24 mm over the bare floor are more than 20 mm, and more than 22 mm.
   */
  @Test
  void leaf() {
    Calculated<DoorLeaf> leaf = DoorLeaf.of(mm("24"), FLOOR, DoorSet.all(), FireRating.NO_FIRE_DOOR);
    assertStepsHold(leaf);
    assertThat(leaf.value().clearance()).isEqualTo(mm("8"));
    assertThat(leaf.value().lacking()).isEqualTo(mm("4.7"));
    assertThat(leaf.value().judgements()).extracting(Judgement::check, Judgement::found, Judgement::limit, Judgement::outcome,
        Judgement::advice).containsExactly(
            org.assertj.core.groups.Tuple.tuple("space under the leaf, over the finished floor, by 'common practice'", "8 mm",
                "from 12.7 mm to 19.05 mm", Outcome.NOT_MET, "4.7 mm would have to come off the leaf; first make sure that it is no"
                    + " fire door and that its maker allows as much"),
            org.assertj.core.groups.Tuple.tuple("space under the leaf, over the finished floor, by 'UK ventilation'", "8 mm",
                "at least 10 mm", Outcome.NOT_MET, "2 mm would have to come off the leaf; first make sure that it is no fire door"
                    + " and that its maker allows as much"),
            org.assertj.core.groups.Tuple.tuple("space under the leaf, over the bare subfloor, by 'UK ventilation'", "24 mm",
                "at least 20 mm", Outcome.MET, ""),
            org.assertj.core.groups.Tuple.tuple("space under the leaf, over the bare subfloor, by 'UK warranty'", "24 mm",
                "from 5 mm to 22 mm", Outcome.NOT_MET, "wider than usual: draught, light and sound pass; nothing is cut"));
    assertThat(leaf.findings()).isEmpty();
    // A floor of 10 mm leaves 14 mm, and nothing is lacking.
    assertThat(DoorLeaf.of(mm("24"), FLOOR.with("board", mm("8")), DoorSet.all(), FireRating.NO_FIRE_DOOR).value().lacking())
        .isEqualTo(Length.ZERO);
  }

  /** A leaf 15 mm above the subfloor under which 16 mm are laid: 1 mm too low. */
  @Test
  void leafThatRubs() {
    Calculated<DoorLeaf> leaf = DoorLeaf.of(mm("15"), FLOOR, List.of(DoorSet.COMMON_PRACTICE), FireRating.NOT_STATED);
    assertStepsHold(leaf);
    assertThat(leaf.value().clearance()).isEqualTo(mm("-1"));
    assertThat(leaf.findings()).extracting(Finding::message).containsExactly(
        "the floor would stand 1 mm higher than the bottom of the leaf: the door does not open over it");
    assertThat(leaf.value().judgements().get(0).advice()).isEqualTo("13.7 mm would have to come off the leaf; first make sure"
        + " that it is no fire door and that its maker allows as much (whether it is a fire door was not stated)");
  }

  @Test
  void headAndJamb() {
    DoorLimit limit = DoorSet.UK_WARRANTY.limits().get(1);
    assertThat(limit.judge("UK warranty", mm("5"), FireRating.NOT_STATED).outcome()).isEqualTo(Outcome.MET);
    Judgement wide = limit.judge("UK warranty", mm("5.5"), FireRating.NOT_STATED);
    assertThat(wide.outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(wide.limit()).isEqualTo("at most 5 mm");
    assertThat(wide.check()).isEqualTo("gap between leaf and head or jamb, by 'UK warranty'");
  }

  @Test
  void sets() {
    assertThat(DoorSet.named("UK ventilation")).isSameAs(DoorSet.UK_VENTILATION);
    assertThatThrownBy(() -> DoorSet.named("x")).hasMessage(
        "there is no set of door clearances 'x'; the sets are: 'common practice', 'UK ventilation', 'UK warranty'");
    assertThatThrownBy(() -> DoorSet.of("none", List.of())).hasMessage("set 'none' must have at least one limit");
    assertThat(DoorSet.of("ours", DoorSet.UK_WARRANTY.limits())).hasToString("ours");
  }
}
