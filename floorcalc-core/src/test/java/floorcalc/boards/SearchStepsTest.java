package floorcalc.boards;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Guards the search by counting, not by time: regression values, which may only fall. */
class SearchStepsTest {
  private static final Length WIDTH = Length.ofMillimetres(185);
  private static final int FLOORS = 60;
  private static final long BOARDS = 2516;
  private static final long STEPS = 132_230;

  /** Boards by length: the least that any search could need. */
  private static int byLength(int rows, long row, long board, long kerf) {
    long pieces = (row - 1) / board + 1;
    return (int) ((rows * (row + pieces * kerf) + board + kerf - 1) / (board + kerf));
  }

  @Test
  void boardsAndStepsOverFloorsOfEqualRows() {
    Random random = new Random(4);
    long boards = 0;
    long least = 0;
    long steps = 0;
    for (int i = 0; i < FLOORS; i++) {
      long board = 1200 + random.nextInt(1000);
      long row = i % 4 == 0 ? board * (1 + random.nextInt(3)) + 1 : 2300 + random.nextInt(6000);
      int rows = 6 + random.nextInt(20);
      BoardGoods goods = BoardGoods.of(Length.ofMillimetres(board), WIDTH, Length.ofMillimetres(14), 6);
      LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(Length.ofMillimetres(14), WIDTH)
          .with(LayingRules.MINIMUM_JOINT_OFFSET, Length.ofMillimetres(300 + random.nextInt(200)), Source.GIVEN);
      List<Run> runs = Run.equalRows(rows, Length.ofMillimetres(row));
      RunLayout layout = RunLayout.search(runs, goods, rules);
      assertThat(layout.breaches()).isZero();
      steps += layout.steps();
      boards += layout.boards(runs, goods, rules);
      least += byLength(rows, row, board, 3);
    }
    assertThat(boards).isBetween(least, BOARDS);
    assertThat(steps).isBetween(1L, STEPS);
  }
}
