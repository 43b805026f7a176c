package floorcalc.finishing;

import floorcalc.materials.Consumables;
import floorcalc.materials.OrderLine;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.measure.UnitPrice;
import floorcalc.outline.Direction;
import floorcalc.plan.Bay;
import floorcalc.plan.Check;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.underlay.Base;
import floorcalc.underlay.CoveredRoom;
import floorcalc.underlay.FilmLimits;
import floorcalc.underlay.RollGoods;
import floorcalc.underlay.RollGoods.Layer;
import floorcalc.underlay.RollOrder;
import floorcalc.underlay.StripLayout;
import floorcalc.underlay.TapeGoods;
import floorcalc.underlay.UnderlayAdvice;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The lines of an order list on what lies under the boards, and what is judged about it. */
final class LayerLines {
  private final FloorJob job;
  private final FloorPlan plan;
  private final Gathered gathered;
  private final Map<String, Direction> below = new LinkedHashMap<>();
  private Length taped = Length.ZERO;
  private Length walls = Length.ZERO;

  LayerLines(FloorJob job, FloorPlan plan, Gathered gathered) {
    this.job = job;
    this.plan = plan;
    this.gathered = gathered;
  }

  void write() {
    job.rooms().forEach(this::judge);
    if (job.goods().layers().isEmpty()) {
      net("underlay", job.rooms());
      net("moisture barrier", job.rooms().stream().filter(room -> base(room) == Base.MINERAL).toList());
    }
    for (RollGoods roll : job.goods().layers()) {
      List<Room> rooms = job.rooms().stream().filter(room -> takes(room, roll)).toList();
      if (!rooms.isEmpty()) {
        order(roll, rooms);
      }
    }
    job.goods().tape().ifPresent(this::tape);
  }

  private void judge(Room room) {
    List<RollGoods> laid = job.goods().layers().stream().filter(roll -> takes(room, roll)).toList();
    UnderlayAdvice advice = job.goods().layers().isEmpty()
        ? UnderlayAdvice.of(room.name(), base(room), room.site().heating(), room.use())
        : UnderlayAdvice.of(room.name(), base(room), room.site().heating(), room.use(), laid);
    advice.judgements().forEach(judgement -> gathered.checks.add(new Check("", of(room, judgement))));
    gathered.findings.addAll(advice.findings());
    advice.cautions().stream().filter(caution -> !gathered.cautions.contains(caution)).forEach(gathered.cautions::add);
  }

  /** A check of the laid floor, not of the site: it says itself which room it is about. */
  private static Judgement of(Room room, Judgement one) {
    return new Judgement(one.code(), room.name() + ": " + one.check(), "", one.found(), one.limit(), one.outcome(), one.source(),
        one.advice());
  }

  private static Base base(Room room) {
    return switch (room.subfloor()) {
      case CONCRETE, SCREED -> Base.MINERAL;
      case TIMBER, SHEET -> Base.WOOD;
      case OLD_FLOOR -> Base.OLD_FLOOR;
      case NOT_STATED -> Base.NOT_STATED;
    };
  }

  /** A barrier that is not known to let wood dry is left out over wood and old floors. */
  private static boolean takes(Room room, RollGoods roll) {
    boolean dries = roll.permeance().isPresent() && roll.permeance().get().compareTo(
        FilmLimits.NWFA_WOOD.leastPermeance().orElseThrow()) >= 0;
    return roll.layer() != Layer.BARRIER || dries || base(room) == Base.MINERAL || base(room) == Base.NOT_STATED;
  }

  private void net(String item, List<Room> rooms) {
    if (rooms.isEmpty()) {
      return;
    }
    StringBuilder formula = new StringBuilder("A = ");
    List<Term> terms = new ArrayList<>();
    Area area = Area.ZERO;
    for (Room room : rooms) {
      String symbol = "A" + (terms.size() + 1);
      formula.append(terms.isEmpty() ? "" : " + ").append(symbol);
      terms.add(Term.of(symbol, "area of " + room.name(), room.outline().area()));
      area = area.plus(room.outline().area());
    }
    gathered.lines.add(OrderLine.of(item, area.toSquareMetreString(2) + " m² of floor, without laps and upturns",
        Gathered.squareMetres(area), "m²", List.of(new Step("net-area", "How large are the floors that take " + item + "?",
            formula.toString(), terms, area, Source.DEFINITION))));
  }

  private void order(RollGoods roll, List<Room> rooms) {
    Calculated<RollOrder> calculated;
    try {
      calculated = RollOrder.of(roll, rooms.stream().map(this::covered).toList());
    } catch (IllegalArgumentException tooMany) {
      gathered.findings.add(new Finding("rolls-not-counted", Severity.WARNING, roll.name(), tooMany.getMessage(), Source.DEFINITION));
      net(roll.name(), rooms);
      return;
    }
    RollOrder order = calculated.value();
    gathered.findings.addAll(calculated.findings());
    for (StripLayout layout : order.layouts()) {
      below.put(layout.room().name(), layout.direction());
    }
    BigDecimal rolls = BigDecimal.valueOf(order.rolls());
    OrderLine line = OrderLine.of(roll.name(), order.netArea().toSquareMetreString(2) + " m² of floor in "
        + Gathered.count(order.layouts().stream().mapToLong(layout -> layout.strips().size()).sum(), "strip", "strips") + ", "
        + (order.isProvenFewest() ? "no cutting takes fewer rolls" : "at least " + order.rollsAtLeast() + " rolls"), rolls, "roll",
        calculated.steps());
    gathered.lines.add(roll.price().map(price -> line.at(price, sold(price, order))).orElse(line));
    if (roll.lap().overlap().isPositive() || roll.layer().isBarrier() || job.goods().layers().size() == 1) {
      taped = taped.plus(order.seamLength());
      walls = walls.max(order.edgeLength());
    }
  }

  private static BigDecimal sold(UnitPrice price, RollOrder order) {
    return switch (price.per()) {
      case UNIT -> BigDecimal.valueOf(order.rolls());
      case SQUARE_METRE -> plain(new BigDecimal(order.boughtArea().toSquareMetreString(19)));
      case METRE -> plain(BigDecimal.valueOf(order.roll().length().multipliedBy(order.rolls()).toNanometres(), 9));
    };
  }

  static BigDecimal plain(BigDecimal number) {
    BigDecimal stripped = number.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }

  /** A layer on another lies square to it, so that seams cross; the first may run along the boards or across. */
  private CoveredRoom covered(Room room) {
    Direction first = below.get(room.name());
    return first != null ? CoveredRoom.oneWay(room.name(), room.outline(), first.plusQuarterTurns(1))
        : CoveredRoom.bothWays(room.name(), room.outline(), plan.bays().stream().filter(bay -> bay.room().equals(room.name()))
            .map(Bay::direction).findFirst().orElse(Direction.ALONG_X));
  }

  private void tape(TapeGoods tape) {
    boolean isEdged = tape.along() == TapeGoods.Along.SEAMS_AND_WALLS;
    Length wanted = isEdged ? taped.plus(walls) : taped;
    if (wanted.isZero()) {
      return;
    }
    List<Step> steps = new ArrayList<>(List.of(new Step("tape-length", "How much tape do the seams" + (isEdged ? " and edges" : "")
        + " take?", isEdged ? "W = s + e" : "W = s", isEdged
            ? List.of(Term.of("s", "length of seams", taped), Term.of("e", "length of walls and voids", walls))
            : List.of(Term.of("s", "length of seams", taped)), wanted, Source.DEFINITION)));
    Calculated<Long> rolls = Consumables.whole("rolls-of-tape", "How many whole rolls is that?", wanted,
        tape.length());
    steps.addAll(rolls.steps());
    OrderLine line = OrderLine.of(tape.name(), Gathered.metres(wanted).toPlainString() + " m of seams" + (isEdged ? " and edges" : ""),
        BigDecimal.valueOf(rolls.value()), "roll", steps);
    gathered.lines.add(tape.price().map(price -> line.at(price, price.per() == UnitPrice.Per.METRE
        ? plain(BigDecimal.valueOf(tape.length().multipliedBy(rolls.value()).toNanometres(), 9))
        : BigDecimal.valueOf(rolls.value()))).orElse(line));
  }
}
