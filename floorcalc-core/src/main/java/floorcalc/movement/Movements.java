package floorcalc.movement;

import floorcalc.measure.Length;
import floorcalc.moisture.Percent;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * What one season does to gaps, square to the wall: the floor swells until the dampest season or draws together until the
 * driest. Either closes some gaps and opens others: on the far side of a column a floor that shrinks comes nearer.
 */
final class Movements {
  private final String what;
  private final int outwards;
  private final Percent more;
  private final Percent less;
  private final Coefficient across;
  private final Coefficient along;

  private Movements(String what, int outwards, Percent more, Percent less, MovementForecast forecast) {
    this.what = what;
    this.outwards = outwards;
    this.more = more;
    this.less = less;
    this.across = forecast.coefficient();
    this.along = forecast.coefficientAlong().orElse(null);
  }

  static Movements swelling(MovementForecast forecast) {
    return new Movements("swelling", 1, forecast.dampest(), forecast.now(), forecast);
  }

  static Movements shrinkage(MovementForecast forecast) {
    return new Movements("shrinkage", -1, forecast.now(), forecast.driest(), forecast);
  }

  /** How far this season closes the gap; zero if it opens it. Rounded up to a whole nanometre. */
  Length closes(GapPoint point) {
    return moved(point, outwards);
  }

  /** How far this season opens the gap; zero if it closes it. Rounded up to a whole nanometre. */
  Length opens(GapPoint point) {
    return moved(point, -outwards);
  }

  private Length moved(GapPoint point, int sign) {
    BigDecimal square = BigDecimal.valueOf(point.across().toNanometres()).multiply(share(across))
        .multiply(point.angle().ofAcross());
    if (along != null) {
      square = square.add(BigDecimal.valueOf(point.along().toNanometres()).multiply(share(along))
          .multiply(point.angle().ofAlong()));
    }
    return Length.ofNanometres(square.multiply(BigDecimal.valueOf(sign)).max(BigDecimal.ZERO)
        .setScale(0, RoundingMode.CEILING).longValueExact());
  }

  private BigDecimal share(Coefficient coefficient) {
    return coefficient.share().multiply(more.minus(less).number().max(BigDecimal.ZERO));
  }

  List<Step> closing(GapPoint point) {
    return steps(point, outwards, "gap-closes", "How far does the gap close at ", closes(point));
  }

  List<Step> opening(GapPoint point) {
    return steps(point, -outwards, "gap-opens", "How far does the gap open at ", opens(point));
  }

  private List<Step> steps(GapPoint point, int sign, String id, String question, Length result) {
    List<Step> steps = new ArrayList<>();
    steps.add(shareStep("m", "across", across));
    List<Term> terms = new ArrayList<>(List.of(
        Term.of("d", "distance across the boards from the line that stays put", point.across()),
        Term.of("m", what + " across the boards, as a share", share(across).toPlainString()),
        Term.of("k", "cosine of " + point.angle() + " between wall and boards", point.angle().ofAcross().toPlainString())));
    String sum = "d * m * k";
    if (along != null) {
      steps.add(shareStep("n", "along", along));
      terms.add(Term.of("l", "distance along the boards from the point that stays put", point.along()));
      terms.add(Term.of("n", what + " along the boards, as a share", share(along).toPlainString()));
      terms.add(Term.of("j", "sine of " + point.angle() + " between wall and boards",
          point.angle().ofAlong().toPlainString()));
      sum += " + l * n * j";
    }
    steps.add(new Step(id, question + point.name() + ", square to the wall, by " + what + "?",
        "x = max(0, " + (sign > 0 ? sum : "0 - (" + sum + ")") + "), rounded up to a whole nanometre", terms, result,
        Source.DEFINITION));
    return steps;
  }

  Step shareStep(String symbol, String way, Coefficient coefficient) {
    return new Step(what + "-share", "What is the " + what + " " + way + " the boards, as a share?",
        symbol + " = C * max(0, MF - MI)",
        List.of(new Term("C", "change for each 1 % of moisture, " + coefficient.about(), coefficient.share().toPlainString(),
            coefficient.source()), Term.of("MF", "moisture content, damper", more),
            Term.of("MI", "moisture content, drier", less)), share(coefficient).toPlainString(), coefficient.source());
  }
}
