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

/** How far the edge of a floor moves square to a wall: towards it in the dampest season, or away in the driest. */
final class Movements {
  private final String what;
  private final Percent more;
  private final Percent less;
  private final Coefficient across;
  private final Coefficient along;

  private Movements(String what, Percent more, Percent less, Coefficient across, Coefficient along) {
    this.what = what;
    this.more = more;
    this.less = less;
    this.across = across;
    this.along = along;
  }

  static Movements swelling(MovementForecast forecast) {
    return new Movements("swelling", forecast.dampest(), forecast.now(), forecast.coefficient(),
        forecast.coefficientAlong().orElse(null));
  }

  static Movements shrinkage(MovementForecast forecast) {
    return new Movements("shrinkage", forecast.now(), forecast.driest(), forecast.coefficient(),
        forecast.coefficientAlong().orElse(null));
  }

  private BigDecimal share(Coefficient coefficient) {
    return coefficient.share().multiply(more.minus(less).number().max(BigDecimal.ZERO));
  }

  Length at(GapPoint point) {
    BigDecimal square = BigDecimal.valueOf(point.across().toNanometres()).multiply(share(across))
        .multiply(point.angle().ofAcross());
    if (along != null) {
      square = square.add(BigDecimal.valueOf(point.along().toNanometres()).multiply(share(along))
          .multiply(point.angle().ofAlong()));
    }
    return Length.ofNanometres(square.setScale(0, RoundingMode.CEILING).longValueExact());
  }

  List<Step> steps(GapPoint point) {
    List<Step> steps = new ArrayList<>();
    steps.add(shareStep("m", "across", across));
    List<Term> terms = new ArrayList<>(List.of(
        Term.of("d", "distance across the boards from the line that stays put", point.across()),
        Term.of("m", what + " across the boards, as a share", share(across).toPlainString()),
        Term.of("k", "cosine of " + point.angle() + " between wall and boards", point.angle().ofAcross().toPlainString())));
    String formula = "x = d * m * k";
    if (along != null) {
      steps.add(shareStep("n", "along", along));
      terms.add(Term.of("l", "distance along the boards from the point that stays put", point.along()));
      terms.add(Term.of("n", what + " along the boards, as a share", share(along).toPlainString()));
      terms.add(Term.of("j", "sine of " + point.angle() + " between wall and boards",
          point.angle().ofAlong().toPlainString()));
      formula += " + l * n * j";
    }
    steps.add(new Step(what + "-at-place", "How far is the " + what + " at " + point.name() + ", square to the wall?",
        formula + ", rounded up to a whole nanometre", terms, at(point), Source.DEFINITION));
    return steps;
  }

  private Step shareStep(String symbol, String way, Coefficient coefficient) {
    return new Step(what + "-share", "What is the " + what + " " + way + " the boards, as a share?",
        symbol + " = C * max(0, MF - MI)",
        List.of(new Term("C", "change for each 1 % of moisture, " + coefficient.about(), coefficient.share().toPlainString(),
            coefficient.source()), Term.of("MF", "moisture content, damper", more),
            Term.of("MI", "moisture content, drier", less)), share(coefficient).toPlainString(), coefficient.source());
  }
}
