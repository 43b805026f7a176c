package floorcalc.reference.answers;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import java.math.BigDecimal;

/** Lengths and areas. */
final class UnitAnswers {
  void addTo(Answers answers) {
    answers.add("length-in-millimetres", UnitAnswers::millimetres, Length.class);
    answers.add("area-of-rectangle", UnitAnswers::rectangle, Area.class, Length.class);
  }

  private static Answer millimetres(Question question) {
    return Answer.of("millimetres", Length.parse(question.text("length")).toMillimetreString());
  }

  private static Answer rectangle(Question question) {
    Area area = Length.parse(question.text("length")).times(Length.parse(question.text("width")));
    // Half square nanometres are whole: the figure is exact.
    return Answer.of("squareMetres", new BigDecimal(area.toHalfSquareNanometres()).divide(BigDecimal.valueOf(2)).movePointLeft(18));
  }
}
