package floorcalc.boards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.joints.JointPattern;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Boards of 2000 mm, minimum piece and offset 300 mm; all figures by hand. */
class RunLayoutTest {
  private static final BoardGoods GOODS =
      BoardGoods.of(Length.ofMillimetres(2000), Length.ofMillimetres(200), Length.ofMillimetres(14), 5);
  private static final LayingRules RULES = RuleSet.COMMON_PRACTICE.forBoard(GOODS.thickness(), GOODS.coverWidth());
  private static final long MM = 1_000_000;

  @Test
  void aRunNoLongerThanABoardIsOnePiece() {
    List<Run> runs = List.of(Run.of(0, 0, 1999 * MM));
    assertThat(RunLayout.search(runs, GOODS, RULES).jointsOf(0)).isEmpty();
    assertThat(RunLayout.habit(runs, GOODS, RULES).jointsOf(0)).isEmpty();
  }

  @Test
  void habitCarriesTheOffcutOn() {
    // Rows of 5000: 2000, 2000, 1000; the offcut 2000 - 1000 - 3 = 997 starts row 2, whose end piece is
    // 5000 - 997 - 4000 = 3 long: too short, so the row starts with a new board or part of one instead.
    RunLayout layout = RunLayout.habit(Run.equalRows(2, Length.ofMillimetres(5000)), GOODS, RULES);
    assertThat(layout.jointsOf(0)).containsExactly(2000 * MM, 4000 * MM);
    assertThat(layout.jointsOf(1)).containsExactly(1500 * MM, 3500 * MM);
    assertThat(layout.breaches()).isZero();
  }

  @Test
  void habitUsesTheOffcutWhereItMay() {
    // Rows of 5400: 2000, 2000, 1400; offcut 2000 - 1400 - 3 = 597. Row 2: 597, 2000, 2000, 803; joints 597 against
    // 2000 and so on: 597 apart at least.
    RunLayout layout = RunLayout.habit(Run.equalRows(2, Length.ofMillimetres(5400)), GOODS, RULES);
    assertThat(layout.jointsOf(1)).containsExactly(597 * MM, 2597 * MM, 4597 * MM);
  }

  @Test
  void searchKeepsTheRulesWhereTheyCanBeKept() {
    RunLayout layout = RunLayout.search(Run.equalRows(20, Length.ofMillimetres(4000)), GOODS, RULES);
    assertThat(layout.breaches()).isZero();
  }

  @Test
  void anImpossibleOffsetIsCountedAsBroken() {
    // Boards of 500: joints of neighbouring rows are at most 250 apart, 300 is asked for.
    BoardGoods shortBoards =
        BoardGoods.of(Length.ofMillimetres(500), Length.ofMillimetres(200), Length.ofMillimetres(14), 5);
    RunLayout layout = RunLayout.search(Run.equalRows(2, Length.ofMillimetres(2000)), shortBoards, RULES);
    assertThat(layout.breaches()).isPositive();
    assertThat(layout.jointsOf(1)).isNotEmpty();
  }

  @Test
  void aThirdOfABoardFromRowToRow() {
    // Shift by 2000/3 = 666.666666 rounded down to the nanometre.
    RunLayout layout = RunLayout.pattern(Run.equalRows(3, Length.ofMillimetres(5000)), GOODS, RULES,
        JointPattern.ofFraction(1, 3), 0);
    assertThat(layout.jointsOf(0)).containsExactly(2000 * MM, 4000 * MM);
    assertThat(layout.jointsOf(1)).containsExactly(666_666_666L, 2_666_666_666L, 4_666_666_666L);
    assertThat(layout.jointsOf(2)).containsExactly(1_333_333_333L, 3_333_333_333L);
  }

  @Test
  void aFreePatternIsNoPattern() {
    assertThatThrownBy(() -> RunLayout.pattern(Run.equalRows(1, Length.ofMillimetres(5000)), GOODS, RULES,
        JointPattern.FREE, 0)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("the pattern is free");
  }

  @Test
  void mixedLengthsFillARun() {
    BoardGoods mixed = BoardGoods.mixed(List.of(new PackContent(Length.ofMillimetres(1800), 3),
        new PackContent(Length.ofMillimetres(1200), 2)), Length.ofMillimetres(200), Length.ofMillimetres(14));
    List<Run> runs = Run.equalRows(10, Length.ofMillimetres(6100));
    RunLayout layout = RunLayout.search(runs, mixed, RULES);
    for (int k = 0; k < 10; k++) {
      long[] joints = layout.jointsOf(k);
      for (int i = 1; i < joints.length; i++) {
        assertThat(joints[i] - joints[i - 1]).isIn(1800 * MM, 1200 * MM);
      }
    }
    assertThat(layout.breaches()).isZero();
  }
}
