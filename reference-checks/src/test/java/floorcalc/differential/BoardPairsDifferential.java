package floorcalc.differential;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.CuttingPlan;
import floorcalc.boards.Ends;
import floorcalc.boards.PieceWanted;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * End pieces and start pieces, at most one of each from a board: as many pairs as an assignment by an integer program gives, each of
 * which saves a board.
 */
final class BoardPairsDifferential extends Comparison {
  BoardPairsDifferential(int cases) {
    super("fewest boards for end and start pieces", Library.OJALGO, cases, CuttingPlan.class);
  }

  @Override
  public String unit() {
    return "boards";
  }

  @Override
  public double tolerance() {
    return 0;
  }

  @Override
  public String argument() {
    return "both sides find the least number";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    SplittableRandom random = new SplittableRandom(311);
    for (int k = 0; k < upTo; k++) {
      long board = random.nextLong(900, 2400);
      long kerf = random.nextLong(5);
      long[] ends = random.longs(random.nextInt(1, 14), 100, board).toArray();
      long[] starts = random.longs(random.nextInt(1, 14), 100, board).toArray();
      Length width = Length.ofMillimetres(100);
      BoardGoods goods = BoardGoods.of(Length.ofMillimetres(board), width, Length.ofMillimetres(14), 1);
      LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(goods.thickness(), width)
          .with(LayingRules.SAW_KERF, Length.ofMillimetres(kerf), Source.GIVEN);
      List<PieceWanted> pieces = new ArrayList<>();
      for (int i = 0; i < Math.max(ends.length, starts.length); i++) {
        if (i < starts.length) {
          pieces.add(piece(pieces.size(), starts[i], width, Ends.HIGH));
        }
        if (i < ends.length) {
          pieces.add(piece(pieces.size(), ends[i], width, Ends.LOW));
        }
      }
      int mine = answers == Answers.AS_GIVEN ? CuttingPlan.of(pieces, goods, rules).boardCount() : habit(ends, starts, board - kerf);
      double theirs = ends.length + starts.length - pairs(ends, starts, board - kerf);
      worst.nextCase();
      worst.see(mine - theirs, () -> board + " kerf " + kerf + " " + pieces.size() + " pieces: " + mine + ", " + theirs);
    }
  }

  private static PieceWanted piece(int row, long length, Length width, Ends ends) {
    return PieceWanted.of(row, Length.ofMillimetres(length), Length.ZERO, width, ends);
  }

  private static double pairs(long[] ends, long[] starts, long room) {
    QuietOjalgo.beQuiet();
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    Expression[] ofEnd = new Expression[ends.length];
    Expression[] ofStart = new Expression[starts.length];
    for (int i = 0; i < ends.length; i++) {
      ofEnd[i] = model.addExpression("end " + i).upper(1);
    }
    for (int j = 0; j < starts.length; j++) {
      ofStart[j] = model.addExpression("start " + j).upper(1);
    }
    for (int i = 0; i < ends.length; i++) {
      for (int j = 0; j < starts.length; j++) {
        if (ends[i] + starts[j] <= room) {
          Variable pair = model.addVariable().binary().weight(1);
          ofEnd[i].set(pair, 1);
          ofStart[j].set(pair, 1);
        }
      }
    }
    if (model.countVariables() == 0) {
      return 0;
    }
    Optimisation.Result result = model.maximise();
    return result.getState().isOptimal() ? Math.rint(result.getValue()) : Double.NaN;
  }

  /** A fault: each end piece goes with the first start piece that fits. */
  private static int habit(long[] ends, long[] starts, long room) {
    boolean[] taken = new boolean[starts.length];
    int boards = ends.length + starts.length;
    for (long end : ends) {
      for (int j = 0; j < starts.length; j++) {
        if (!taken[j] && end + starts[j] <= room) {
          taken[j] = true;
          boards--;
          break;
        }
      }
    }
    return boards;
  }
}
