package floorcalc.reference.answers;

import floorcalc.flatness.FNumbers;
import floorcalc.flatness.HeightProfile;
import floorcalc.flatness.TiltReadings;
import floorcalc.measure.Length;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import java.math.BigDecimal;
import java.util.Collections;

/** Which readings are enough, and tilts turned into heights. */
final class HeightReadingAnswers {
  void addTo(Answers answers) {
    answers.add("readings-for-f-numbers", HeightReadingAnswers::accepted, FNumbers.class, HeightProfile.class);
    answers.add("heights-from-tilts", HeightReadingAnswers::heights, TiltReadings.class);
  }

  private static Answer accepted(Question question) {
    HeightProfile level = SlabAnswers.spaced(question.text("spacing"), Collections.nCopies(question.count("readings"), "0 mm"));
    try {
      FNumbers numbers = FNumbers.of(level).value();
      return Answer.of("accepted", "yes").with("curvatures", Integer.toString(numbers.curvatures().size()))
          .with("differences", Integer.toString(numbers.levelDifferences().size()));
    } catch (IllegalArgumentException refused) {
      return Answer.of("accepted", "no");
    }
  }

  private static Answer heights(Question question) {
    TiltReadings readings = TiltReadings.of(Length.parse(question.text("step")), question.list("tilts").stream().map(BigDecimal::new).toList());
    HeightProfile profile = readings.profile().value();
    Answer answer = Answer.of("length", profile.length().toMillimetreString());
    for (int i = 0; i < profile.size(); i++) {
      answer = answer.with("sum" + i, readings.sums().get(i)).with("levelled" + i, readings.levelled().get(i))
          .with("height" + i, profile.reading(i).height().toMillimetreString());
    }
    return answer;
  }
}
