package floorcalc.reference.answers;

import floorcalc.joints.JointLayout;
import floorcalc.measure.Length;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleKey;
import floorcalc.rules.RuleSet;
import floorcalc.rules.RuleValue;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;

/** Rules of plans by source. */
final class RuleAnswers {
  /** What a question calls a source, and the set that rests on it. */
  static final Map<String, RuleSet> SETS = Map.of("common practice", RuleSet.COMMON_PRACTICE,
      "NF DTU 51.11 P1-1 (Dec 2009) cl. 8.2", RuleSet.NF_DTU_51_11, "NF DTU 51.11 P1-1 (Dec 2009) cl. 8.1.3", RuleSet.NF_DTU_51_11,
      "NWFA guidelines (2008 revision)", RuleSet.NWFA_GUIDELINES, "NWFA technical advisor", RuleSet.NWFA_THREE_WIDTHS,
      "NWFA magazine (Dec 2017)", RuleSet.NWFA_TWO_WIDTHS, "NWFA guidelines ch. 7", RuleSet.NWFA_PARQUET,
      "Australian practice (BCA/AS 1684)", RuleSet.AS_1684);
  private static final BigDecimal INCH = BigDecimal.valueOf(25_400_000L);

  void addTo(Answers answers) {
    answers.add("expansion-gap", RuleAnswers::gap, RuleSet.class, LayingRules.class);
    answers.add("longest-floor-without-a-break", RuleAnswers::run, RuleSet.class, LayingRules.class);
    answers.add("joint-offset", RuleAnswers::offset, RuleSet.class, LayingRules.class);
    answers.add("narrowest-row", RuleAnswers::narrowest, RuleSet.class, LayingRules.class);
    answers.add("tolerance-of-end-joints", RuleAnswers::tolerance, JointLayout.class);
  }

  private static LayingRules rules(Question question) {
    RuleSet set = MoistureLimitAnswers.known(SETS, question.text("source"));
    Length thickness = Length.parse(question.text("boardThickness"));
    Length width = Length.parse(question.text("boardWidth"));
    return question.has("largestDimension") ? set.forBoardAndRoom(thickness, width, Length.parse(question.text("largestDimension")))
        : set.forBoard(thickness, width);
  }

  private static Answer length(RuleValue<Length> rule) {
    return Answer.of("millimetres", rule.value().toMillimetreString()).with("standing", rule.source().standing().words());
  }

  private static Answer gap(Question question) {
    return length(rules(question).get(LayingRules.EXPANSION_GAP));
  }

  private static Answer run(Question question) {
    RuleKey<Length> key = question.text("way").startsWith("along") ? LayingRules.MAXIMUM_RUN_ALONG : LayingRules.MAXIMUM_RUN_ACROSS;
    RuleValue<Length> rule = rules(question).get(key);
    return length(rule).with("metres", new BigDecimal(rule.value().toMillimetreString()).movePointLeft(3));
  }

  private static Answer offset(Question question) {
    RuleValue<Length> rule = rules(question).get(LayingRules.MINIMUM_JOINT_OFFSET);
    return length(rule).with("inches", BigDecimal.valueOf(rule.value().toNanometres()).divide(INCH, 9, RoundingMode.HALF_EVEN));
  }

  private static Answer narrowest(Question question) {
    return length(rules(question).get(LayingRules.MINIMUM_ROW_WIDTH));
  }

  private static Answer tolerance(Question question) {
    if (!question.text("source").startsWith("NF DTU 51.11")) {
      throw new IllegalArgumentException("nothing is known of joints in line by " + question.text("source"));
    }
    return Answer.of("inLineMillimetres", JointLayout.IN_LINE.toMillimetreString())
        .with("halfBoardMillimetres", JointLayout.EQUAL_STEPS.toMillimetreString()).with("standing", JointLayout.TOLERANCES.standing().words());
  }
}
