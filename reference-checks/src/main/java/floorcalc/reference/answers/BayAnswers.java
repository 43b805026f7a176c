package floorcalc.reference.answers;

import floorcalc.bays.BayFreedom;
import floorcalc.bays.BayParts;
import floorcalc.bays.BaySplit;
import floorcalc.bays.ExpansionBreak;
import floorcalc.bays.Obstacle;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Bays. */
final class BayAnswers {
  void addTo(Answers answers) {
    answers.add("freedom-of-a-bay", BayAnswers::freedom, BayFreedom.class);
    answers.add("parts-between-breaks", BayAnswers::parts, BayParts.class);
    answers.add("least-breaks", BayAnswers::split, BaySplit.class);
  }

  private static LayingRules rules(Question question) {
    return RuleSet.COMMON_PRACTICE.forBoard(Length.ofMillimetres(14), Length.ofMillimetres(185))
        .with(LayingRules.DEEPEST_RECESS, Length.parse(question.text("deepestRecess")), Source.GIVEN)
        .with(LayingRules.WIDEST_VOID, Length.parse(question.text("widestVoid")), Source.GIVEN);
  }

  private static BigDecimal whole(long number) {
    return BigDecimal.valueOf(number);
  }

  private static BigDecimal millimetres(Length length) {
    return BigDecimal.valueOf(length.toNanometres()).movePointLeft(6);
  }

  private static Answer freedom(Question question) {
    BayFreedom freedom = BayFreedom.of("bay", Wkt.parse(question.text("outline")), rules(question)).value();
    List<Obstacle> all = Stream.concat(freedom.obstacles().stream(), freedom.harmless().stream()).toList();
    Answer answer = Answer.of("free", freedom.isFree() ? "yes" : "no").with("innerCorners", whole(count(all, Obstacle.Kind.INNER_CORNER)))
        .with("voids", whole(count(all, Obstacle.Kind.VOID))).with("beyond", whole(freedom.obstacles().size()));
    Optional<Obstacle> corner = largest(all, Obstacle.Kind.INNER_CORNER);
    if (corner.isPresent()) {
      answer = answer.with("deepestCorner", millimetres(corner.get().size())).with("closing", millimetres(corner.get().closing()));
    }
    Optional<Obstacle> isle = largest(all, Obstacle.Kind.VOID);
    return isle.isPresent() ? answer.with("widestVoid", millimetres(isle.get().size())) : answer;
  }

  private static long count(List<Obstacle> all, Obstacle.Kind kind) {
    return all.stream().filter(each -> each.kind() == kind).count();
  }

  private static Optional<Obstacle> largest(List<Obstacle> all, Obstacle.Kind kind) {
    return all.stream().filter(each -> each.kind() == kind).reduce((a, b) -> b.size().compareTo(a.size()) > 0 ? b : a);
  }

  private static Answer parts(Question question) {
    List<ExpansionBreak> breaks = question.table("breaks").stream().map(row -> row.stream().map(Length::ofMillimetres).toList())
        .map(row -> ExpansionBreak.given(Point.of(row.get(0), row.get(1)), Point.of(row.get(2), row.get(3)))).toList();
    BayParts parts = BayParts.of(Wkt.parse(question.text("outline")), breaks);
    String areas = parts.parts().stream().map(BayAnswers::squareMillimetres).collect(Collectors.joining(" "));
    return Answer.of("parts", whole(parts.parts().size())).with("areas", areas)
        .with("length", millimetres(parts.breaks().stream().map(ExpansionBreak::length).reduce(Length.ZERO, Length::plus)));
  }

  private static String squareMillimetres(Outline part) {
    BigDecimal area = new BigDecimal(part.area().toHalfSquareNanometres()).divide(BigDecimal.valueOf(2)).movePointLeft(12).stripTrailingZeros();
    return area.toPlainString();
  }

  private static Answer split(Question question) {
    LayingRules rules = rules(question).with(LayingRules.MAXIMUM_RUN_ALONG, Length.parse(question.text("longestAlong")), Source.GIVEN)
        .with(LayingRules.MAXIMUM_RUN_ACROSS, Length.parse(question.text("longestAcross")), Source.GIVEN);
    BaySplit split = BaySplit.of(Wkt.parse(question.text("outline")), Direction.ALONG_X, List.of(), rules).value();
    return Answer.of("length", millimetres(split.length())).with("proven", split.isProvenLeast() ? "yes" : "no");
  }
}
