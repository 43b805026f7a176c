package floorcalc.reference.answers;

import floorcalc.joints.JointPattern;
import floorcalc.joints.JointLayout;
import floorcalc.joints.JointSpread;
import floorcalc.measure.Length;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.LongStream;

/** End joints. */
final class JointAnswers {
  /** A step in billionths of a thousandth of the board is a whole number of nanometres in a board of this length. */
  private static final Length LONG_BOARD = Length.ofMillimetres(1_000_000);
  private static final int DIGITS_OF_LONG_BOARD = 12;

  void addTo(Answers answers) {
    answers.add("offcut-carried-on", JointAnswers::carried, JointPattern.class, JointSpread.class, JointLayout.class);
    answers.add("joints-of-a-fixed-step", JointAnswers::stepped, JointPattern.class, JointSpread.class);
    answers.add("spread-of-joints", JointAnswers::spread, JointSpread.class);
  }

  private static String millimetres(Length length) {
    return length.toMillimetreString();
  }

  /** Each row starts with what the row before left: a fixed step of a board less the rest of a row. */
  private static Answer carried(Question question) {
    Length board = Length.parse(question.text("board"));
    Length run = Length.parse(question.text("rowLength"));
    int rows = question.count("rows");
    Length rest = run.remainder(board);
    JointPattern pattern = JointPattern.ofStep(board.minus(rest));
    List<List<Length>> joints = new ArrayList<>();
    List<String> first = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      Length shift = pattern.shift(row, board);
      Length piece = shift.isZero() ? board : shift;
      first.add(millimetres(piece));
      joints.add(LongStream.iterate(piece.toNanometres(), at -> at < run.toNanometres(), at -> at + board.toNanometres())
          .mapToObj(Length::ofNanometres).toList());
    }
    Length offset = JointLayout.of(joints).smallestOffset().orElseThrow().offset();
    if (!pattern.neighbourOffset(board).orElseThrow().equals(offset)) {
      throw new IllegalStateException("the pattern says " + pattern.neighbourOffset(board) + ", its joints lie " + offset + " apart");
    }
    JointSpread spread = JointSpread.of(pattern, rows, board).value();
    String distances = spread.distances().keySet().stream().filter(Length::isPositive).map(JointAnswers::millimetres)
        .collect(Collectors.joining(" "));
    return Answer.of("restOfRow", millimetres(rest)).with("jointOffset", millimetres(offset))
        .with("rowsUntilRepeated", BigDecimal.valueOf(pattern.repeatsAfter(board).orElseThrow()))
        .with("firstPieces", String.join(" ", first)).with("distances", distances);
  }

  private static Answer stepped(Question question) {
    int rows = question.count("rows");
    JointPattern pattern = JointPattern.ofStep(Length.ofNanometres(
        new BigDecimal(question.text("stepAsShareOfBoard")).movePointRight(DIGITS_OF_LONG_BOARD).longValueExact()));
    JointSpread spread = JointSpread.of(pattern, rows, LONG_BOARD).value();
    Answer answer = Answer.of("distinctDistances", BigDecimal.valueOf(spread.distances().size()));
    int number = 0;
    for (Map.Entry<Length, Integer> distance : spread.distances().entrySet()) {
      number++;
      answer = answer.with("distance" + number, share(distance.getKey()))
          .with("timesOfDistance" + number, BigDecimal.valueOf(distance.getValue()));
    }
    BigDecimal all = BigDecimal.valueOf(rows);
    return answer.with("smallestDistanceTimesRows", share(spread.distances().firstKey()).multiply(all))
        .with("largestDistanceTimesRows", share(spread.distances().lastKey()).multiply(all)).with("starDiscrepancy", spread.discrepancy());
  }

  private static BigDecimal share(Length length) {
    return BigDecimal.valueOf(length.toNanometres()).movePointLeft(DIGITS_OF_LONG_BOARD);
  }

  private static Answer spread(Question question) {
    JointSpread spread = JointSpread.of(question.list("joints").stream().map(Length::parse).toList(),
        Length.parse(question.text("board"))).value();
    return Answer.of("starDiscrepancyAsFraction", spread.discrepancyAsFraction()).with("starDiscrepancy", spread.discrepancy());
  }
}
