package floorcalc.reference.answers;

import floorcalc.materials.Consumables;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Wkt;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.trims.BarGoods;
import floorcalc.trims.BarOrder;
import floorcalc.trims.TrimPiece;
import floorcalc.trims.TrimPiecing;
import floorcalc.underlay.Lap;
import floorcalc.underlay.RollGoods;
import floorcalc.underlay.RollStrip;
import floorcalc.underlay.StripLayout;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;

/** Strips off rolls, wedges, sealant, long walls and bars. */
final class StripAnswers {
  void addTo(Answers answers) {
    answers.add("strips-of-a-floor", StripAnswers::strips, StripLayout.class);
    answers.add("wedges-of-a-room", StripAnswers::wedges, Consumables.class);
    answers.add("cartridges-of-sealant", StripAnswers::sealant, Consumables.class);
    answers.add("parts-of-a-long-wall", StripAnswers::parts, TrimPiecing.class);
    answers.add("bars-to-order", StripAnswers::bars, BarOrder.class, TrimPiecing.class);
  }

  private static Length length(Question question, String name) {
    return Length.parse(question.text(name));
  }

  private static BigDecimal millimetres(Length length) {
    return BigDecimal.valueOf(length.toNanometres()).movePointLeft(6);
  }

  private static Outline outline(Question question) {
    return Wkt.parse(question.text("outline"));
  }

  private static Answer strips(Question question) {
    RollGoods roll = RollGoods.barrier("film", length(question, "rollWidth"), length(question, "rollLength"), Lap.of(length(question, "overlap")))
        .withUpturn(length(question, "upturn"));
    Direction along = question.text("along").equals("x") ? Direction.ALONG_X : Direction.ALONG_X.plusQuarterTurns(1);
    StripLayout layout = StripLayout.of("floor", outline(question), along, roll).value();
    Length cut = layout.cutLengths().stream().reduce(Length.ZERO, Length::plus);
    return Answer.of("stripsAcross", BigDecimal.valueOf(layout.strips().stream().mapToInt(RollStrip::number).max().orElseThrow()))
        .with("length", millimetres(layout.length())).with("seam", millimetres(layout.seamLength())).with("cutLength", millimetres(cut))
        .with("cutArea", new BigDecimal(layout.cutArea().toHalfSquareNanometres()).divide(BigDecimal.valueOf(2)).movePointLeft(12));
  }

  private static Answer wedges(Question question) {
    return Answer.of("wedges", BigDecimal.valueOf(Consumables.wedges("room", outline(question), length(question, "spacing")).value()));
  }

  private static Answer sealant(Question question) {
    Calculated<Long> worked = Consumables.sealant(length(question, "bead"), length(question, "width"), length(question, "depth"),
        question.number("cartridge"), question.number("loss"));
    Step volume = worked.steps().stream().filter(step -> step.id().equals("bead-volume")).findFirst().orElseThrow();
    return Answer.of("millilitres", (BigDecimal) volume.result()).with("cartridges", BigDecimal.valueOf(worked.value()));
  }

  private static Answer parts(Question question) {
    List<TrimPiece> parts = TrimPiecing.of(List.of(TrimPiece.of("wall", length(question, "length")).withAllowance(length(question, "allowance"))),
        length(question, "longestBar"), length(question, "leastPart")).value();
    return Answer.of("parts", BigDecimal.valueOf(parts.size()))
        .with("lengths", parts.stream().map(part -> part.length().toMillimetreString()).collect(Collectors.joining(" ")));
  }

  private static Answer bars(Question question) {
    BarGoods goods = BarGoods.of("skirting", question.list("sold").stream().map(Length::parse).toList(), length(question, "thickness"))
        .withLeastPiece(length(question, "leastPart")).withAllowance(length(question, "allowance"));
    List<TrimPiece> pieces = question.list("pieces").stream().map(piece -> TrimPiece.of("", Length.parse(piece))).toList();
    BarOrder order = BarOrder.ofPieces(goods, pieces, new RuleValue<>(LayingRules.SAW_KERF, length(question, "sawKerf"), Source.GIVEN)).value();
    return Answer.of("netLength", millimetres(order.net())).with("lengthBought", millimetres(order.lengthBought()))
        .with("bars", BigDecimal.valueOf(order.number()));
  }
}
