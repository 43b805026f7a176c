package floorcalc.reference.answers;

import floorcalc.deviations.AngleSet;
import floorcalc.deviations.LevelMeasure;
import floorcalc.deviations.OutOfLevelLimit;
import floorcalc.deviations.OutOfLevelSet;
import floorcalc.deviations.TapeRules;
import floorcalc.levels.Levels;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.survey.CornerSquareness;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Angles, level, and the tape that all of it is measured with. */
final class LevelLimitAnswers {
  /** What a question calls a source and what it is for, and the set that rests on it. */
  static final Map<String, String> SETS = Map.of("BS 8204", "BS 8204 datum", "NHBC Standards 2020 cl. 9.1.5", "NHBC 9.1.5",
      "LABC Warranty technical manual 1.4", "LABC 1.4", "NF DTU 51.1 P1-1 (Dec 2010) cl. 7.3", "NF DTU 51.1",
      "NF DTU 51.1 P1-1 (Dec 2010) cl. 7.2", "NF DTU 51.1", "SNiP 3.04.01-87", "SNiP 3.04.01", "ACI 117, slab on ground",
      "ACI 117 slab on ground", "ACI 117, formed surfaces", "ACI 117 formed surfaces");

  void addTo(Answers answers) {
    answers.add("out-of-square-limit", LevelLimitAnswers::angle, AngleSet.class);
    answers.add("corner-out-of-square", LevelLimitAnswers::corner, AngleSet.class);
    answers.add("out-of-level-limit", LevelLimitAnswers::level, OutOfLevelSet.class, OutOfLevelLimit.class);
    answers.add("levels-of-a-floor", LevelLimitAnswers::levels, OutOfLevelSet.class);
    answers.add("tape-tolerance", LevelLimitAnswers::tape, TapeRules.class);
    answers.add("reading-between-graduations", LevelLimitAnswers::graduation, TapeRules.class);
    answers.add("precision-of-measuring", LevelLimitAnswers::precision, TapeRules.class);
  }

  private static Answer angle(Question question) {
    return AngleSet.named(question.text("source")).limitFor(Length.parse(question.text("wall"))).map(limit -> Answer.of("millimetres",
        limit.most().toMillimetreString()).with("standing", limit.source().standing().words())).orElseThrow();
  }

  private static Answer corner(Question question) {
    return Answer.of("verdict", DeviationAnswers.words(AngleSet.named(question.text("source")).judge(new CornerSquareness(1, 0,
        Length.parse(question.text("out")), Length.parse(question.text("wall")))).value()));
  }

  private static OutOfLevelSet set(Question question) {
    return OutOfLevelSet.named(MoistureLimitAnswers.known(SETS, question.text("source")));
  }

  private static boolean isFromDatum(Question question) {
    return question.text("measured").equals("from the level line");
  }

  private static Answer level(Question question) {
    Length distance = Length.parse(question.text("distance"));
    OutOfLevelLimit limit = set(question).limits().stream().filter(one -> (one.measure() == LevelMeasure.FROM_DATUM) == isFromDatum(question)
        && one.covers(Length.parse(question.text("across")))).findFirst().orElseThrow();
    Length allowed = limit.allowed(distance);
    return Answer.of("millimetres", allowed.toMillimetreString()).with("inches", DeviationAnswers.inches(allowed))
        .with("percentOfDistance", percent(allowed, distance)).with("standing", limit.source().standing().words());
  }

  /** To twelve decimals. */
  private static BigDecimal percent(Length part, Length whole) {
    return BigDecimal.valueOf(part.toNanometres()).multiply(BigDecimal.valueOf(100)).divide(BigDecimal.valueOf(whole.toNanometres()), 12,
        RoundingMode.HALF_EVEN);
  }

  /** Two rows of the same heights, a metre apart. */
  private static Answer levels(Question question) {
    List<Length> row = question.list("heights").stream().map(Length::parse).toList();
    Levels levels = Levels.ofGrid(Point.ofMillimetres(0, 0), Length.parse(question.text("spacing")), Length.ofMillimetres(1000), List.of(row, row));
    Optional<Length> datum = question.has("levelLine") ? Optional.of(Length.parse(question.text("levelLine"))) : Optional.empty();
    List<Judgement> judged = (datum.isPresent() ? set(question).judge(levels, datum.get()) : set(question).judge(levels)).value();
    boolean broken = judged.stream().anyMatch(one -> one.outcome() == Outcome.NOT_MET);
    return Answer.of("verdict", broken ? "not met" : "met");
  }

  private static Answer tape(Question question) {
    TapeRules.Tolerance row = TapeRules.toleranceFor(Length.parse(question.text("length"))).orElseThrow();
    return Answer.of("millimetres", row.most().toMillimetreString()).with("inches", DeviationAnswers.inches(row.most()))
        .with("standing", row.source().standing().words());
  }

  private static Answer graduation(Question question) {
    Length graduation = Length.parse(question.text("graduation"));
    return Answer.of("number", BigDecimal.valueOf(TapeRules.toGraduation(Length.parse(question.text("reading")), graduation).value()
        .dividedBy(graduation)));
  }

  private static Answer precision(Question question) {
    return Answer.of("millimetres", TapeRules.precisionFor(Length.parse(question.text("limit"))).value().toMillimetreString());
  }
}
