package floorcalc.reference.answers;

import floorcalc.measure.Length;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.transitions.DoorLimit;
import floorcalc.transitions.DoorSet;
import floorcalc.transitions.DoorSpace;
import floorcalc.transitions.HeightDifference;
import floorcalc.transitions.LevelLimit;
import floorcalc.transitions.LevelSet;
import floorcalc.transitions.LevelVerdict;
import floorcalc.transitions.Slope;
import floorcalc.transitions.StairSet;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Changes of level, spaces at doors, risers. */
final class TransitionAnswers {
  /** What a question calls a source, and the set that rests on it. */
  static final Map<String, LevelSet> LEVELS = Map.of("common practice", LevelSet.COMMON_PRACTICE,
      "ADA/ANSI as quoted by TCNA 2009", LevelSet.ADA_ANSI, "NF DTU 51.11 P1-1 cl. 9.2", LevelSet.NF_DTU_51_11);
  /** Likewise. */
  static final Map<String, DoorSet> DOORS = Map.of("common practice", DoorSet.COMMON_PRACTICE,
      "UK ventilation guidance (Approved Document F practice)", DoorSet.UK_VENTILATION, "UK warranty tolerances", DoorSet.UK_WARRANTY);
  /** Likewise. */
  static final Map<String, StairSet> STAIRS = Map.of("common practice, US", StairSet.COMMON_PRACTICE_US,
      "common practice, Canada", StairSet.COMMON_PRACTICE_CANADA);

  void addTo(Answers answers) {
    answers.add("change-of-level", TransitionAnswers::level, LevelSet.class, HeightDifference.class, LevelVerdict.class);
    answers.add("space-at-door", TransitionAnswers::door, DoorSet.class, DoorLimit.class);
    answers.add("risers-of-stairs", TransitionAnswers::risers, StairSet.class);
  }

  private static Answer level(Question question) {
    LevelSet set = MoistureLimitAnswers.known(LEVELS, question.text("source"));
    LevelVerdict verdict = set.judge(new HeightDifference(Length.parse(question.text("difference")))).value();
    String steeper = verdict.steeper().stream().map(LevelLimit::slope).flatMap(Optional::stream).map(Slope::toString)
        .collect(Collectors.joining(", "));
    return Answer.of("treatment", verdict.treatment().words()).with("slope", verdict.slope().map(Slope::toString).orElse("none"))
        .with("steeperWhereSpaceIsLimited", steeper.isEmpty() ? "none" : steeper).with("standing", verdict.source().standing().words());
  }

  private static Answer door(Question question) {
    DoorSpace space = MoistureLimitAnswers.inWords(DoorSpace.values(), DoorSpace::words, question.text("space"));
    DoorLimit limit = MoistureLimitAnswers.known(DOORS, question.text("source")).limits().stream().filter(one -> one.space() == space).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("nothing is said in " + question));
    return Answer.of("leastMillimetres", limit.least().map(Length::toMillimetreString).orElse("none"))
        .with("mostMillimetres", limit.most().map(Length::toMillimetreString).orElse("none"))
        .with("standing", limit.source().standing().words());
  }

  private static Answer risers(Question question) {
    StairSet set = MoistureLimitAnswers.known(STAIRS, question.text("source"));
    return Answer.of("spreadMillimetres", set.spread().toMillimetreString())
        .with("highestMillimetres", set.highest().map(Length::toMillimetreString).orElse("none"))
        .with("standing", set.source().standing().words());
  }
}
