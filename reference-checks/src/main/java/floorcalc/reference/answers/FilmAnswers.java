package floorcalc.reference.answers;

import floorcalc.measure.Length;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.underlay.FilmLimits;
import floorcalc.underlay.Lap;
import floorcalc.underlay.VapourClass;
import java.math.BigDecimal;
import java.util.Map;

/** Films below a floor. */
final class FilmAnswers {
  /** What a question calls a source, and the overlap that rests on it. */
  static final Map<String, Lap> LAPS = Map.of("common practice", Lap.BUTT, "NWFA magazine (Feb 2017)", Lap.NWFA_MAGAZINE, "NBS K21", Lap.NBS_K21,
      "Chinese laying practice", Lap.CHINESE_PRACTICE, "German/European laying guidance", Lap.GERMAN_PRACTICE);
  private static final Map<String, FilmLimits> LIMITS = Map.of("NWFA guidelines, concrete", FilmLimits.NWFA_CONCRETE,
      "NWFA guidelines, wood", FilmLimits.NWFA_WOOD, "NOFMA, concrete", FilmLimits.NOFMA_SLAB);

  void addTo(Answers answers) {
    answers.add("overlap-of-film", FilmAnswers::overlap, Lap.class);
    answers.add("limits-of-film", FilmAnswers::limits, FilmLimits.class);
    answers.add("class-of-vapour-retarder", FilmAnswers::vapourClass, VapourClass.class);
  }

  private static Answer overlap(Question question) {
    Lap lap = MoistureLimitAnswers.known(LAPS, question.text("source"));
    return Answer.of("millimetres", lap.overlap().toMillimetreString()).with("standing", lap.source().standing().words());
  }

  private static Answer limits(Question question) {
    FilmLimits limits = MoistureLimitAnswers.known(LIMITS, question.text("source") + ", " + question.text("over"));
    return Answer.of("thinnestMillimetres", limits.thinnest().map(Length::toMillimetreString).orElse("none"))
        .with("leastPerm", limits.leastPermeance().map(BigDecimal::toPlainString).orElse("none"))
        .with("mostPerm", limits.mostPermeance().map(BigDecimal::toPlainString).orElse("none"))
        .with("standing", limits.source().standing().words());
  }

  private static Answer vapourClass(Question question) {
    return Answer.of("class", VapourClass.of(question.number("permeance")).words()).with("standing", VapourClass.SOURCE.standing().words());
  }
}
