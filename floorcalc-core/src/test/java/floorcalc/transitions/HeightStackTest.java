package floorcalc.transitions;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import java.util.List;
import org.junit.jupiter.api.Test;

class HeightStackTest {
  private static final HeightStack FLOOR = HeightStack.BARE.on("filler", mm("3")).on("barrier", mm("0.2"))
      .on("underlay", mm("2")).on("board", mm("14"));

  private static Length mm(String millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  /** 3 + 0.2 + 2 + 14 = 19.2. */
  @Test
  void total() {
    Calculated<Length> calculated = FLOOR.calculated();
    assertThat(FLOOR.total()).isEqualTo(mm("19.2"));
    assertThat(calculated.value()).isEqualTo(mm("19.2"));
    assertStepsHold(calculated);
    assertThat(calculated.explain()).isEqualTo("""
        stack-height: How high does the floor stand above the bare subfloor?
          H = t1 + t2 + t3 + t4
            t1 = 3 mm  (filler)
            t2 = 0.2 mm  (barrier)
            t3 = 2 mm  (underlay)
            t4 = 14 mm  (board)
          = 19.2 mm  [definition]""");
    assertThat(FLOOR).hasToString("filler 3 mm, barrier 0.2 mm, underlay 2 mm, board 14 mm");
  }

  /** The underlay is 5 mm instead of 2 mm: 19.2 + 3 = 22.2. */
  @Test
  void aLayerChanges() {
    assertThat(FLOOR.with("underlay", mm("5")).total()).isEqualTo(mm("22.2"));
    assertThat(FLOOR.total()).isEqualTo(mm("19.2"));
    assertThatThrownBy(() -> FLOOR.with("carpet", mm("5"))).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("there is no layer 'carpet'; the layers are: 'filler', 'barrier', 'underlay', 'board'");
  }

  /** 1/8 in of pad and 9/16 in of board: 11/16 in, which is 17.4625 mm. */
  @Test
  void inches() {
    HeightStack stack = HeightStack.of(List.of(new Layer("pad", Length.ofInches(0, 1, 8)),
        new Layer("board", Length.ofInches(0, 9, 16))));
    assertThat(stack.total()).isEqualTo(Length.ofInches(0, 11, 16)).isEqualTo(mm("17.4625"));
  }

  @Test
  void bare() {
    assertThat(HeightStack.BARE.total()).isEqualTo(Length.ZERO);
    assertStepsHold(HeightStack.BARE.calculated());
    assertThat(HeightStack.BARE).hasToString("bare subfloor");
    assertThat(FLOOR.fromSubfloorAt(mm("-12")).top()).isEqualTo(mm("7.2"));
    assertThat(HeightStack.BARE.fromSubfloorAt(mm("5"))).hasToString("bare subfloor, from a subfloor at 5 mm");
  }

  @Test
  void equality() {
    assertThat(HeightStack.of(FLOOR.layers())).isEqualTo(FLOOR).hasSameHashCodeAs(FLOOR);
    assertThat(FLOOR.fromSubfloorAt(mm("1"))).isNotEqualTo(FLOOR);
    assertThat(FLOOR.with("board", mm("15"))).isNotEqualTo(FLOOR);
    assertThat(FLOOR.layers()).extracting(Layer::name).containsExactly("filler", "barrier", "underlay", "board");
  }

  @Test
  void refuses() {
    assertThatThrownBy(() -> FLOOR.on("board", mm("8"))).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("layer 'board' is in the stack already; give each layer a name of its own");
    assertThatThrownBy(() -> new Layer("board", mm("-1"))).isInstanceOf(IllegalArgumentException.class).hasMessage(
        "thickness of layer 'board' must be from 0 mm to 1000 mm, but was -1 mm; give one layer at a time, 0 mm for one that is"
            + " left out");
    assertThatThrownBy(() -> new Layer(" ", mm("1"))).hasMessage("a layer of a floor needs a name that is not blank");
    assertThatThrownBy(() -> new Layer("board", mm("1000.000001"))).hasMessageContaining("to 1000 mm");
    assertThatThrownBy(() -> FLOOR.fromSubfloorAt(mm("-10000.1"))).hasMessage("height of the subfloor must be from -10000 mm to"
        + " 10000 mm, but was -10000.1 mm; count from a floor near by");
  }

  /** Here 2 + 14 = 16. Beyond 8 + 10 = 18 on a slab that is 6 mm lower: 12. 12 - 16 = -4: 4 mm lower, falls to beyond. */
  @Test
  void differenceOfTwoStacks() {
    HeightStack here = HeightStack.BARE.on("underlay", mm("2")).on("board", mm("14"));
    HeightStack beyond = HeightStack.BARE.on("adhesive", mm("8")).on("tile", mm("10")).fromSubfloorAt(mm("-6"));
    Calculated<HeightDifference> difference = HeightDifference.between(here, beyond);
    assertStepsHold(difference);
    assertThat(difference.value().beyondHigherBy()).isEqualTo(mm("-4"));
    assertThat(difference.value().fall()).isEqualTo(Fall.TO_BEYOND);
    assertThat(difference.value().size()).isEqualTo(mm("4"));
    assertThat(difference.value()).hasToString("4 mm lower beyond");
    assertThat(difference.value().fromBeyond()).hasToString("4 mm higher beyond");
    assertThat(HeightDifference.NONE).hasToString("level");
    // The board is 10 mm instead of 14 mm: level.
    assertThat(HeightDifference.between(here.with("board", mm("10")), beyond).value()).isEqualTo(HeightDifference.NONE);
  }

  /** A hearth 21 mm above the bare subfloor, a floor of 16 mm: 5 mm higher beyond. */
  @Test
  void differenceToAHeight() {
    HeightStack here = HeightStack.BARE.on("underlay", mm("2")).on("board", mm("14"));
    Calculated<HeightDifference> difference = HeightDifference.toHeight(here, mm("21"));
    assertStepsHold(difference);
    assertThat(difference.value().beyondHigherBy()).isEqualTo(mm("5"));
    assertThat(difference.value().fall()).isEqualTo(Fall.TO_HERE);
  }
}
