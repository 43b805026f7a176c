package floorcalc.reference.answers;

import floorcalc.bays.RectanglePartition;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.ExpansionGap;
import floorcalc.outline.InscribedCircle;
import floorcalc.outline.LeastWidth;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.outline.Wkt;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.trims.BarGoods;
import floorcalc.trims.TrimRuns;
import floorcalc.underlay.CoveredRoom;
import floorcalc.underlay.Lap;
import floorcalc.underlay.RollGoods;
import floorcalc.underlay.RollOrder;
import floorcalc.working.Calculated;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.IntStream;

/** Rooms: size, what the gap leaves, fewest rectangles, widest circle, least width, skirting and underlay. */
final class RoomAnswers {
  void addTo(Answers answers) {
    answers.add("room-size", RoomAnswers::size, Outline.class, Ring.class, Wkt.class);
    answers.add("laid-area", RoomAnswers::laid, ExpansionGap.class);
    answers.add("fewest-rectangles", RoomAnswers::rectangles, RectanglePartition.class);
    answers.add("widest-circle", RoomAnswers::circle, InscribedCircle.class);
    answers.add("least-width", RoomAnswers::width, LeastWidth.class);
    answers.add("skirting-net-length", RoomAnswers::skirting, TrimRuns.class);
    answers.add("underlay-net-area", RoomAnswers::underlay, RollOrder.class);
  }

  private static Wkt.Unit unit(Question question) {
    return question.text("unit").equals("m") ? Wkt.Unit.METRES : Wkt.Unit.MILLIMETRES;
  }

  private static Outline outline(Question question) {
    return Wkt.parse(question.text("outline"), unit(question), RoundingMode.HALF_EVEN);
  }

  private static BigDecimal length(Question question, Length length) {
    return BigDecimal.valueOf(length.toNanometres()).movePointLeft(unit(question) == Wkt.Unit.METRES ? 9 : 6);
  }

  private static BigDecimal area(Question question, Area area) {
    return new BigDecimal(area.toHalfSquareNanometres()).divide(BigDecimal.valueOf(2)).movePointLeft(unit(question) == Wkt.Unit.METRES ? 18 : 12);
  }

  private static BigDecimal whole(long number) {
    return BigDecimal.valueOf(number);
  }

  private static Answer size(Question question) {
    Outline room = outline(question);
    boolean convex = room.voids().isEmpty() && reflex(room) == 0;
    return Answer.of("corners", whole(room.size())).with("area", area(question, room.area()))
        .with("perimeter", length(question, room.perimeter())).with("convex", convex ? "yes" : "no");
  }

  private static long reflex(Outline room) {
    long reflex = reflex(room.shell());
    return room.voids().stream().mapToLong(RoomAnswers::reflex).reduce(reflex, Long::sum);
  }

  private static long reflex(Ring ring) {
    return IntStream.range(0, ring.size()).filter(i -> ring.angleDegrees(i) > 180).count();
  }

  private static Answer laid(Question question) {
    Calculated<ExpansionGap> gap = ExpansionGap.inset(outline(question), Length.parse(question.text("gap")));
    Length perimeter = gap.value().laid().stream().map(Outline::perimeter).reduce(Length.ZERO, Length::plus);
    return Answer.of("area", area(question, gap.value().laidArea())).with("perimeter", length(question, perimeter))
        .with("cornerSum", (BigDecimal) result(gap, "gap-corners"))
        .with("areaByFormula", area(question, (Area) result(gap, "laid-area-by-formula"))).with("pieces", whole(gap.value().laid().size()));
  }

  private static Object result(Calculated<?> calculated, String step) {
    return calculated.steps().stream().filter(one -> one.id().equals(step)).findFirst().orElseThrow().result();
  }

  private static Answer rectangles(Question question) {
    Outline room = outline(question);
    RectanglePartition partition = RectanglePartition.of(room).value();
    return Answer.of("corners", whole(room.size())).with("voids", whole(room.voids().size())).with("reflexCorners", whole(reflex(room)))
        .with("chords", whole(partition.chords())).with("chordsDrawn", whole(partition.disjointChords()))
        .with("rectangles", whole(partition.rectangles()));
  }

  private static Answer circle(Question question) {
    InscribedCircle circle = InscribedCircle.of(outline(question)).value();
    return Answer.of("radius", length(question, circle.radius())).with("centreX", length(question, circle.centre().x()))
        .with("centreY", length(question, circle.centre().y()));
  }

  private static Answer width(Question question) {
    return Answer.of("width", length(question, LeastWidth.of(outline(question)).value().width()));
  }

  /** The bar makes no difference to the net length. */
  private static Answer skirting(Question question) {
    BarGoods bars = BarGoods.of("skirting", List.of(Length.ofMillimetres(2400)), Length.ofMillimetres(15));
    return Answer.of("length", length(question, TrimRuns.of("room", outline(question), List.of(), bars).value().net()));
  }

  /** The roll, its lap and the way it runs make no difference to the net area. */
  private static Answer underlay(Question question) {
    RollGoods film = RollGoods.barrier("film", Length.ofMillimetres(1500), Length.ofMillimetres(20_000), Lap.NBS_K21)
        .withUpturn(Length.ofMillimetres(50));
    RollOrder order = RollOrder.of(film, List.of(CoveredRoom.bothWays("room", outline(question), Direction.fromDegrees(37.5)))).value();
    return Answer.of("area", area(question, order.netArea()));
  }
}
