package floorcalc.reference.answers;

import floorcalc.moisture.Acclimatisation;
import floorcalc.moisture.AirClimate;
import floorcalc.moisture.Percent;
import floorcalc.moisture.Temperature;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.working.Judgement;
import java.util.List;
import java.util.Locale;

/** Boards and room. */
final class AcclimatisationAnswers {
  void addTo(Answers answers) {
    answers.add("acclimatisation", AcclimatisationAnswers::judge, Acclimatisation.class);
  }

  private static Answer judge(Question question) {
    List<Percent> boards = question.list("boards").stream().map(Percent::of).toList();
    Acclimatisation known = Acclimatisation.notStated().boards(boards);
    if (question.has("packs")) {
      known = question.text("packs").equals("closed") ? known.packsClosed() : known.packsOpened();
    }
    if (question.has("days")) {
      known = known.days(question.number("days"));
    }
    if (question.has("temperature")) {
      known = known.air(AirClimate.of(Temperature.parse(question.text("temperature")), Percent.of(question.text("relativeHumidity"))));
    }
    List<Judgement> judgements = known.judge().value();
    Answer answer = Answer.of("packsClosed", words(judgements.get(0))).with("daysInRoom", words(judgements.get(1)))
        .with("agreement", words(judgements.get(2)));
    return boards.isEmpty() ? answer : answer.with("mean", Acclimatisation.meanOfBoards(boards).value().number());
  }

  private static String words(Judgement judgement) {
    return judgement.outcome().name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
