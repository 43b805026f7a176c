package floorcalc.compare;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.Run;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;

/**
 * Rows to lay from boards of one length, every row from the same line on and touching the one before. All in whole
 * millimetres: rules and lengths only ask for differences, so in whole millimetres as few boards will do as in finer ones.
 *
 * @param number its place in the series
 * @param board length of a board
 * @param kerf saw kerf
 * @param offset least joint offset
 * @param minimum least start or end piece
 * @param rows lengths of the rows in laying order
 */
record BoardCase(int number, int board, int kerf, int offset, int minimum, List<Integer> rows) {
  private static final Length THICKNESS = Length.ofMillimetres(14);
  private static final Length WIDTH = Length.ofMillimetres(185);
  /** Boards in a pack. */
  static final int PER_PACK = 6;

  BoardCase {
    rows = List.copyOf(rows);
  }

  List<Run> runs() {
    List<Run> runs = new ArrayList<>();
    for (int k = 0; k < rows.size(); k++) {
      long length = nanometres(rows.get(k));
      runs.add(k == 0
          ? Run.of(0, 0, length)
          : Run.touching(k, 0, length, List.of(k - 1), List.of(new long[] {0, nanometres(contact(k))})));
    }
    return List.copyOf(runs);
  }

  /** How far a row touches the one before: all along the shorter of the two. */
  int contact(int row) {
    return Math.min(rows.get(row - 1), rows.get(row));
  }

  BoardGoods goods() {
    return BoardGoods.of(Length.ofMillimetres(board), WIDTH, THICKNESS, PER_PACK);
  }

  LayingRules rules() {
    return RuleSet.COMMON_PRACTICE.forBoard(THICKNESS, WIDTH)
        .with(LayingRules.SAW_KERF, Length.ofMillimetres(kerf), Source.GIVEN)
        .with(LayingRules.MINIMUM_END_PIECE, Length.ofMillimetres(minimum), Source.GIVEN)
        .with(LayingRules.MINIMUM_JOINT_OFFSET, Length.ofMillimetres(offset), Source.GIVEN);
  }

  static long nanometres(long millimetres) {
    return Length.ofMillimetres(millimetres).toNanometres();
  }
}
