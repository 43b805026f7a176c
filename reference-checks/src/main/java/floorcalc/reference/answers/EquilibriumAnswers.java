package floorcalc.reference.answers;

import floorcalc.moisture.AirClimate;
import floorcalc.moisture.EquilibriumMoisture;
import floorcalc.moisture.Percent;
import floorcalc.moisture.Temperature;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;

/** Moisture content of wood in balance with air. */
final class EquilibriumAnswers {
  void addTo(Answers answers) {
    answers.add("equilibrium-moisture-content", EquilibriumAnswers::moisture, EquilibriumMoisture.class, AirClimate.class, Temperature.class);
    answers.add("humidity-for-moisture-content", EquilibriumAnswers::humidity, EquilibriumMoisture.class);
  }

  private static Answer moisture(Question question) {
    AirClimate air = AirClimate.of(Temperature.parse(question.text("temperature")), Percent.of(question.text("relativeHumidity")));
    return Answer.of("percent", EquilibriumMoisture.of(air).value().number());
  }

  private static Answer humidity(Question question) {
    return Answer.of("percent", EquilibriumMoisture.humidityFor(Temperature.parse(question.text("temperature")),
        Percent.of(question.text("moistureContent"))).value().number());
  }
}
