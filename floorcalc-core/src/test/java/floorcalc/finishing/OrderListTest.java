package floorcalc.finishing;

import static floorcalc.working.StepChecks.assertHolds;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.boards.BoardGoods;
import floorcalc.materials.FloorGoods;
import floorcalc.materials.GlueGoods;
import floorcalc.materials.OrderLine;
import floorcalc.materials.SealantGoods;
import floorcalc.materials.WedgeGoods;
import floorcalc.measure.Length;
import floorcalc.measure.Mass;
import floorcalc.measure.Price;
import floorcalc.measure.UnitPrice;
import floorcalc.outline.Direction;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.plan.Beyond;
import floorcalc.plan.Check;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorJobBuilder;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Pipe;
import floorcalc.plan.Profile;
import floorcalc.plan.Room;
import floorcalc.plan.Subfloor;
import floorcalc.trims.BarGoods;
import floorcalc.underlay.Lap;
import floorcalc.underlay.RollGoods;
import floorcalc.underlay.RoomUse;
import floorcalc.underlay.TapeGoods;
import floorcalc.working.Finding;
import floorcalc.working.Outcome;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** An invented study of 4200 x 3600 on screed, a door of 900, a pipe; boards of 2.2 m in packs of 6. */
class OrderListTest {
  private static final BoardGoods BOARDS = BoardGoods.of(mm(2200), mm(185), mm(14), 6)
      .withPackPrice(eur("100")).withPackMass(new Mass(new BigDecimal("26")));
  private static final Room STUDY = Room.of("Study", Wkt.parse("POLYGON ((0 0, 4200 0, 4200 3600, 0 3600, 0 0))"))
      .withDoors(List.of(new Door("D1", Point.ofMillimetres(1000, 0), Point.ofMillimetres(1900, 0), "Hall", Beyond.UNKNOWN)))
      .withPipes(List.of(new Pipe(Point.ofMillimetres(300, 3000), mm(22)))).withSubfloor(Subfloor.SCREED);

  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static Price eur(String amount) {
    return new Price(new BigDecimal(amount), "EUR");
  }

  private static FloorJob job(FloorGoods goods, Room... rooms) {
    FloorJobBuilder job = FloorJob.of("Study", BOARDS).direction(DirectionChoice.of(Direction.ALONG_X)).goods(goods);
    List.of(rooms).forEach(job::room);
    return job.build();
  }

  private static OrderLine line(OrderList order, String item) {
    return order.lines().stream().filter(one -> one.item().equals(item)).findFirst().orElseThrow();
  }

  private static OrderList ordered(FloorGoods goods, Room... rooms) {
    FloorJob job = job(goods, rooms);
    OrderList order = OrderList.of(job, FloorPlanner.plan(job));
    order.lines().forEach(line -> line.working().forEach(step -> assertHolds(step)));
    order.cost().steps().forEach(step -> assertHolds(step));
    order.stack().steps().forEach(step -> assertHolds(step));
    return order;
  }

  @Test
  void withoutGoodsWhatTheFloorTakes() {
    OrderList order = ordered(FloorGoods.NONE, STUDY);
    assertThat(order.lines()).extracting(OrderLine::item)
        .containsExactly("boards", "underlay", "moisture barrier", "skirting", "T profile", "wedges", "glue at pipes");
    // 4.2 * 3.6 = 15.12 m²; 2 * (4.2 + 3.6) - 0.9 = 14.7 m; 0.9 m of profile in the door; walls of 4200 take 9 wedges, of 3600 take 8: 34; 5 ml of glue
    assertThat(order.lines()).extracting(line -> line.quantity().toPlainString() + " " + line.unit())
        .endsWith("15.12 m²", "15.12 m²", "14.70 m", "0.90 m", "34 piece", "5 ml");
    assertThat(order.checks()).singleElement().satisfies(check -> {
      assertThat(check.judgement().code()).isEqualTo("moisture-barrier");
      assertThat(check.outcome()).isEqualTo(Outcome.NOT_MEASURED);
    });
  }

  @Test
  void barrierOnlyWhereTheSubfloorIsMineral() {
    Room loft = Room.of("Loft", Wkt.parse("POLYGON ((0 0, 3000 0, 3000 2000, 0 2000, 0 0))")).withSubfloor(Subfloor.TIMBER);
    OrderList order = ordered(FloorGoods.NONE, STUDY, loft);
    // 15.12 + 6 m² of underlay, 15.12 m² of barrier
    assertThat(line(order, "underlay").quantity()).isEqualByComparingTo("21.12");
    assertThat(line(order, "moisture barrier").quantity()).isEqualByComparingTo("15.12");
  }

  private static FloorGoods goods() {
    return FloorGoods.NONE
        .withLayers(List.of(
            RollGoods.barrier("film", mm(2000), mm(25_000), Lap.NBS_K21).withUpturn(mm(50))
                .withPrice(new UnitPrice(eur("1.10"), UnitPrice.Per.SQUARE_METRE)),
            RollGoods.underlay("cork", mm(1000), mm(10_000)).withPrice(UnitPrice.each(eur("39.90")))))
        .withTape(new TapeGoods("tape", mm(25_000), TapeGoods.Along.SEAMS_AND_WALLS, Optional.of(UnitPrice.each(eur("8.50")))))
        .withSkirting(BarGoods.of("oak skirting", List.of(mm(2400)), mm(16)).withPrice(new UnitPrice(eur("4.20"), UnitPrice.Per.METRE)))
        .withWedges(new WedgeGoods("wedges", 40, mm(500), Optional.of(UnitPrice.each(eur("6.95")))))
        .withGlue(new GlueGoods("glue", BigDecimal.valueOf(250), BigDecimal.valueOf(5), Optional.empty()))
        .withCasing(mm(60)).withPacksBeyond(1, new BigDecimal("0.8"));
  }

  @Test
  void goodsAreOrderedWholeWithTheirPrices() {
    OrderList order = ordered(goods(), STUDY);
    // film along x: 3700 wide, (3700 - 150) / 1850 = 1.92: 2 strips of 4300 = 8600 in 1 roll of 50 m²; 55.00 EUR. Along y 4300 wide,
    // (4300 - 150) / 1850 = 2.24: 3 strips of 3700, 1 roll too, but more seam, 7400 against 4300
    assertThat(line(order, "film").quantity()).isEqualByComparingTo("1");
    assertThat(line(order, "film").price().orElseThrow().amount()).isEqualByComparingTo("55.00");
    // cork square to the film, along y: 5 strips of 3600, two to a roll of 10 m: 3 rolls, 119.70 EUR
    assertThat(line(order, "cork").quantity()).isEqualByComparingTo("3");
    assertThat(line(order, "cork").price().orElseThrow().amount()).isEqualByComparingTo("119.70");
    // tape: the film's seam of 4300 and the walls, 15 600: 19.9 m, one roll of 25 m
    assertThat(line(order, "tape").net()).isEqualTo("19.90 m of seams and edges");
    assertThat(line(order, "tape").quantity()).isEqualByComparingTo("1");
    // skirting: 15 600 less 900 and 2 * 60 of casing = 14 580
    assertThat(line(order, "oak skirting").net()).startsWith("14.58 m at the walls");
    // 34 wedges in a pack of 40
    assertThat(line(order, "wedges").quantity()).isEqualByComparingTo("1");
    assertThat(line(order, "glue").quantity()).isEqualByComparingTo("1");
    assertThat(line(order, "boards, kept back").price()).contains(eur("100"));
    // the total is the sum of the lines; the glue has no price, which is said
    BigDecimal sum = order.lines().stream().flatMap(line -> line.price().stream()).map(Price::amount)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
    assertThat(order.cost().value().total("EUR").orElseThrow().amount()).isEqualByComparingTo(sum);
    assertThat(order.findings()).extracting(Finding::code).contains("price-missing", "heavy-pack");
    assertThat(order.checks()).filteredOn(check -> check.judgement().code().equals("moisture-barrier"))
        .extracting(Check::outcome).containsExactly(Outcome.MET);
    // one pack more stands in the room than the floor takes
    int packs = line(order, "boards").quantity().intValueExact();
    assertThat(order.stack().value().packs()).isEqualTo(packs + 1);
    assertThat(order.money().orElseThrow().value().boards().amount()).isEqualByComparingTo(BigDecimal.valueOf(100L * packs));
  }

  @Test
  void thePlanHasTheLinesOnceHoweverOftenTheListIsMade() {
    FloorJob job = job(goods(), STUDY);
    FloorPlan plan = FloorPlanner.plan(job);
    OrderList again = OrderList.of(job, plan);
    assertThat(plan.materials()).extracting(OrderLine::item).doesNotHaveDuplicates()
        .containsExactlyElementsOf(again.lines().stream().map(OrderLine::item).toList());
    assertThat(plan.materials()).extracting(OrderLine::working)
        .containsExactlyElementsOf(again.lines().stream().map(OrderLine::working).toList());
    assertThat(plan.working()).anyMatch(part -> part.about().equals("cost"));
  }

  @Test
  void profilesAndTheirSealant() {
    FloorGoods goods = FloorGoods.NONE.withProfile("T", BarGoods.of("T profile", List.of(mm(900)), Length.ZERO))
        .withSealant(new SealantGoods("sealant", BigDecimal.valueOf(310), new BigDecimal("0.1"), mm(10), mm(6), mm(2000), Optional.empty()));
    FloorJob job = job(goods, STUDY);
    Point at = Point.ofMillimetres(0, 0);
    FloorPlan plan = FloorPlanner.plan(job).withProfiles(List.of(new Profile("T", at, at, mm(820), "door"),
        new Profile("end", at, at, mm(1300), "hearth"), new Profile("end", at, at, mm(700), "hearth")));
    OrderList order = OrderList.of(job, plan);
    // one bar of 900 for 820; end profiles are not stated: 2 m; bead 2 + 2 m of 10 x 6 mm = 240 ml of 279: one cartridge
    assertThat(line(order, "T profile").quantity()).isEqualByComparingTo("1");
    assertThat(line(order, "end profile").quantity() + " " + line(order, "end profile").unit()).isEqualTo("2.00 m");
    assertThat(line(order, "sealant").quantity()).isEqualByComparingTo("1");
    order.lines().forEach(line -> line.working().forEach(step -> assertHolds(step)));
  }

  @Test
  void aWetRoomIsRefusedByACheckAndACaution() {
    FloorJob job = job(FloorGoods.NONE, STUDY.withUse(RoomUse.WET));
    FloorPlan plan = FloorPlanner.plan(job);
    assertThat(plan.findings()).extracting(Finding::code).contains("wet-room");
    assertThat(plan.checks()).anyMatch(check -> check.judgement().code().equals("wet-room") && check.outcome() == Outcome.NOT_MET);
    assertThat(plan.cautions()).anyMatch(caution -> caution.startsWith("Wet rooms"));
  }
}
