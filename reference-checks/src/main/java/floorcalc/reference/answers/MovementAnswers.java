package floorcalc.reference.answers;

import floorcalc.measure.Length;
import floorcalc.moisture.Percent;
import floorcalc.movement.Coefficient;
import floorcalc.movement.Grain;
import floorcalc.movement.MovementForecast;
import floorcalc.movement.WidthChange;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Map;

/** By how much widths change. */
final class MovementAnswers {
  private static final String DTU_51_2 = "NF DTU 51.2 P1-1 (May 2020) cl. 7.2";
  private static final String DTU_51_1 = "NF DTU 51.1 P1-1 (Dec 2010) cl. 7.5";
  private static final String DANISH = "Gulvfakta (Danish flooring reference)";
  /** What a question calls a source, and the coefficient that rests on it. */
  static final Map<String, Coefficient> RULES = Map.of(
      DTU_51_2 + ": softwoods, width and thickness", Coefficient.NF_DTU_SOFTWOOD,
      DTU_51_2 + ": hardwoods, width and thickness", Coefficient.NF_DTU_HARDWOOD,
      DTU_51_1 + ": solid wood", Coefficient.named("NF DTU solid"),
      DTU_51_1 + ": multilayer", Coefficient.named("NF DTU multilayer"),
      DANISH + ": radial", Coefficient.named("Danish radial"),
      DANISH + ": tangential", Coefficient.named("Danish tangential"),
      DANISH + ": mixed grain mean", Coefficient.named("Danish mixed grain"),
      "Wood Handbook FPL-GTR-190 chapter 12: plywood, balanced lay-up", Coefficient.named("plywood"));
  private static final BigDecimal MILLIMETRE = BigDecimal.valueOf(1_000_000L);
  private static final BigDecimal CENTIMETRE = BigDecimal.valueOf(10_000_000L);
  private static final BigDecimal INCH = BigDecimal.valueOf(25_400_000L);

  void addTo(Answers answers) {
    answers.add("coefficient-by-rule", MovementAnswers::rule, Coefficient.class);
    answers.add("change-of-width", MovementAnswers::change, WidthChange.class, Coefficient.class);
    answers.add("change-of-width-by-shrinkage", MovementAnswers::byShrinkage, WidthChange.class);
    answers.add("joint-opening", MovementAnswers::jointOpening, MovementForecast.class);
  }

  private static Answer rule(Question question) {
    Coefficient found = RULES.get(question.text("source") + ": " + question.text("appliesTo"));
    if (found == null) {
      throw new IllegalArgumentException("no rule of movement is known for " + question);
    }
    return Answer.of("share", found.share()).with("percent", found.share().movePointRight(2))
        .with("standing", found.source().standing().words());
  }

  private static Coefficient coefficient(Question question) {
    if (question.has("coefficient")) {
      return Coefficient.of(question.number("coefficient"), "as stated", Source.GIVEN);
    }
    Grain grain = Arrays.stream(Grain.values()).filter(one -> one.words().equals(question.text("grain"))).findFirst().orElseThrow();
    return ShrinkageAnswers.species(question.text("table"), question.text("wood")).coefficient(grain);
  }

  private static Answer change(Question question) {
    Length width = Length.parse(question.text("width"));
    return changed(width, WidthChange.of(width, coefficient(question), Percent.of(question.text("moistureBefore")),
        Percent.of(question.text("moistureAfter"))).value());
  }

  private static Answer byShrinkage(Question question) {
    Length width = Length.parse(question.text("width"));
    return changed(width, WidthChange.byShrinkage(width, Percent.of(question.text("shrinkage")), Percent.of(question.text("shrinkageStart")),
        Percent.of(question.text("moistureBefore")), Percent.of(question.text("moistureAfter"))).value());
  }

  private static Answer changed(Length width, Length change) {
    Length size = change.abs();
    Length after = width.plus(change);
    return Answer.of("changeMillimetres", in(size, MILLIMETRE)).with("changeCentimetres", in(size, CENTIMETRE))
        .with("changeInches", in(size, INCH)).with("newMillimetres", in(after, MILLIMETRE)).with("newInches", in(after, INCH))
        .with("direction", change.isZero() ? "stays" : change.isNegative() ? "shrinks" : "swells");
  }

  private static String in(Length length, BigDecimal unit) {
    return BigDecimal.valueOf(length.toNanometres()).divide(unit, 12, RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString();
  }

  private static Answer jointOpening(Question question) {
    Percent now = Percent.of(question.text("moistureBefore"));
    return Answer.of("millimetres", in(MovementForecast.of(now, Percent.of(question.text("moistureAfter")), now, coefficient(question))
        .jointOpening(Length.parse(question.text("width")), question.count("joints")).value(), MILLIMETRE));
  }
}
