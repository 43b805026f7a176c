package floorcalc.reference.answers;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.CuttingPlan;
import floorcalc.boards.Ends;
import floorcalc.boards.PieceWanted;
import floorcalc.measure.Length;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.trims.TrimBar;
import floorcalc.trims.TrimCutting;
import floorcalc.trims.TrimEstimate;
import floorcalc.trims.TrimPiece;
import floorcalc.trims.TrimStock;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Pieces cut from bars and boards. */
final class CuttingAnswers {
  private static final Length WIDTH = Length.ofMillimetres(100);

  void addTo(Answers answers) {
    answers.add("bars-cut", CuttingAnswers::cut, TrimCutting.class, TrimBar.class);
    answers.add("bars-estimate", CuttingAnswers::estimate, TrimEstimate.class);
    answers.add("boards-of-two-pieces", CuttingAnswers::twoFromABoard, CuttingPlan.class);
    answers.add("boards-of-a-left-and-a-right-piece", CuttingAnswers::leftAndRight, CuttingPlan.class);
  }

  private static List<Length> lengths(Question question, String name) {
    return question.list(name).stream().map(Length::parse).toList();
  }

  private static List<TrimPiece> pieces(Question question) {
    return lengths(question, "pieces").stream().map(length -> TrimPiece.of("", length)).toList();
  }

  private static BigDecimal millimetres(Length length) {
    return BigDecimal.valueOf(length.toNanometres()).movePointLeft(6);
  }

  private static Answer cut(Question question) {
    TrimCutting cutting = TrimCutting.of(pieces(question), List.of(TrimStock.sold(Length.parse(question.text("bar")))),
        Length.parse(question.text("sawKerf"))).value();
    Length left = cutting.bars().stream().map(TrimBar::leftover).reduce(Length.ZERO, Length::plus);
    BigDecimal percent = millimetres(left).movePointRight(2).divide(millimetres(cutting.lengthBought()), 8, RoundingMode.HALF_UP);
    return Answer.of("bars", BigDecimal.valueOf(cutting.bars().size())).with("barsAtLeast", BigDecimal.valueOf(cutting.leastBarsBought()))
        .with("longestLeftover", millimetres(cutting.longestLeftover()))
        .with("longestLeftoverProven", cutting.isLongestLeftoverProven() ? "yes" : "no")
        .with("leftOver", millimetres(left)).with("leftOverPercent", percent);
  }

  private static Answer estimate(Question question) {
    List<Length> lengths = lengths(question, "pieces");
    TrimEstimate estimate = TrimEstimate.of(pieces(question), Length.parse(question.text("bar")), Length.parse(question.text("sawKerf"))).value();
    return Answer.of("pieces", BigDecimal.valueOf(lengths.size()))
        .with("lengthOfPieces", millimetres(lengths.stream().reduce(Length.ZERO, Length::plus)))
        .with("barsByLength", BigDecimal.valueOf(estimate.byLength())).with("barsByLongPieces", BigDecimal.valueOf(estimate.byLongPieces()))
        .with("barsByPrices", BigDecimal.valueOf(estimate.byPrices()))
        .with("barsLongestIntoFirst", BigDecimal.valueOf(estimate.longestIntoFirst()))
        .with("barsLongestIntoFullest", BigDecimal.valueOf(estimate.longestIntoFullest()));
  }

  /**
   * The library pairs start pieces with end pieces. With m pairs at most, the 2 m shortest can be paired, each of the m shortest with one
   * of the others: so dividing the lengths, shortest first, into end pieces and start pieces at each place in turn, the best division is
   * the answer for pieces that pair freely.
   */
  private static Answer twoFromABoard(Question question) {
    List<Length> lengths = lengths(question, "pieces").stream().sorted().toList();
    int fewest = Integer.MAX_VALUE;
    for (int ends = 0; ends <= lengths.size(); ends++) {
      fewest = Math.min(fewest, boards(question, "bar", lengths.subList(0, ends), lengths.subList(ends, lengths.size())));
    }
    return Answer.of("pieces", BigDecimal.valueOf(lengths.size())).with("boards", BigDecimal.valueOf(fewest));
  }

  private static Answer leftAndRight(Question question) {
    List<Length> left = lengths(question, "leftPieces");
    List<Length> right = lengths(question, "rightPieces");
    int boards = boards(question, "board", left, right);
    return Answer.of("boards", BigDecimal.valueOf(boards)).with("boardsOfTwo", BigDecimal.valueOf((long) left.size() + right.size() - boards));
  }

  private static int boards(Question question, String board, List<Length> left, List<Length> right) {
    BoardGoods goods = BoardGoods.of(Length.parse(question.text(board)), WIDTH, Length.ofMillimetres(14), 1);
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(goods.thickness(), WIDTH)
        .with(LayingRules.SAW_KERF, Length.parse(question.text("sawKerf")), Source.GIVEN);
    List<PieceWanted> wanted = new ArrayList<>();
    left.forEach(length -> wanted.add(PieceWanted.of(wanted.size(), length, Length.ZERO, WIDTH, Ends.LOW)));
    right.forEach(length -> wanted.add(PieceWanted.of(wanted.size(), length, Length.ZERO, WIDTH, Ends.HIGH)));
    return CuttingPlan.of(wanted, goods, rules).boardCount();
  }
}
