package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.Construction;
import floorcalc.flatness.GapReading;
import floorcalc.levels.SpotLevel;
import floorcalc.measure.Length;
import floorcalc.moisture.AirClimate;
import floorcalc.moisture.MoistureMethod;
import floorcalc.moisture.MoistureReading;
import floorcalc.moisture.Percent;
import floorcalc.moisture.Temperature;
import floorcalc.movement.Pinning;
import floorcalc.outline.Direction;
import floorcalc.outline.Wkt;
import floorcalc.plan.Check;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorJobBuilder;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.plan.Subfloor;
import floorcalc.site.HeightLine;
import floorcalc.site.Readiness;
import floorcalc.site.SiteReadings;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Step;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sites by way of the front door, as a program that embeds the library does it. */
class SiteOfAPlanTest {
  private static final BoardGoods BOARDS =
      BoardGoods.of(Length.parse("2.2 m"), Length.parse("185 mm"), Length.parse("14 mm"), 6);
  private static final Room STUDY =
      Room.of("Study", Wkt.parse("POLYGON ((0 0, 4210 0, 4195 3620, 0 3605, 0 0))")).withSubfloor(Subfloor.CONCRETE);
  private static final SiteReadings GOOD = SiteReadings.NONE.withAir(air("21 °C", "48"))
      .withSeasons(air("21 °C", "45"), air("23 °C", "60"))
      .withSubfloorMoisture(List.of(MoistureReading.of(MoistureMethod.CM, "1.2")))
      .withBoardMoisture(List.of(Percent.of("8.1"), Percent.of("8.4"))).withDaysInRoom(new BigDecimal("3")).withPacksClosed()
      .withLines(List.of(HeightLine.ofEqualSpacing("A", Length.parse("100 mm"), Collections.nCopies(35, Length.ZERO))))
      .withTrimCover(Length.parse("20 mm")).withPinning(Pinning.found(List.of()));

  private static AirClimate air(String temperature, String humidity) {
    return AirClimate.of(Temperature.parse(temperature), Percent.of(humidity));
  }

  private static FloorJob job(BoardGoods boards, Room... rooms) {
    FloorJobBuilder job = FloorJob.of("Invented", boards).direction(DirectionChoice.of(Direction.ALONG_X));
    for (Room room : rooms) {
      job.room(room);
    }
    return job.build();
  }

  private static List<Check> of(FloorPlan plan, String room) {
    return plan.checks().stream().filter(check -> check.room().equals(room)).toList();
  }

  @Test
  void aRoomOfWhichNothingWasReadIsPlannedAndSaysWhatToMeasure() {
    FloorPlan plan = FloorPlanner.plan(job(BOARDS, STUDY));
    assertThat(of(plan, "Study")).hasSize(5).allMatch(check -> check.outcome() == Outcome.NOT_MEASURED
        && check.found().isEmpty() && !check.advice().isEmpty());
    assertThat(of(plan, "")).filteredOn(check -> check.outcome() == Outcome.NOT_MEASURED)
        .extracting(check -> check.judgement().code()).containsExactly("moisture-barrier");
    assertThat(plan.findings()).isEmpty();
    assertThat(plan.working()).noneMatch(part -> part.about().endsWith(": site"));
  }

  @Test
  void aGoodSiteIsReadyAndItsChecksAreThoseOfTheReport() {
    FloorJob job = job(BOARDS, STUDY.withSite(GOOD));
    FloorPlan plan = FloorPlanner.plan(job);
    Readiness study = FloorPlanner.readiness(job, plan).get(0);
    assertThat(study.isReady()).as("%s", study.judgements()).isTrue();
    assertThat(of(plan, "Study")).extracting(Check::judgement).isEqualTo(study.judgements());
    List<Step> steps = plan.working().stream().filter(part -> part.about().equals("Study: site"))
        .flatMap(part -> part.steps().stream()).toList();
    assertThat(steps).doesNotHaveDuplicates().extracting(Step::id)
        .contains("mean-reading", "board-room-difference", "gap-under-edge", "gap-closes");
  }

  @Test
  void roomsAreJudgedEachByItsOwnReadings() {
    Room hall = Room.of("Hall", Wkt.parse("POLYGON ((0 0, 3000 0, 3000 1500, 0 1500, 0 0))"));
    FloorJob job = job(BOARDS, STUDY.withSite(GOOD), hall.withSite(SiteReadings.NONE.withPacksOpened()));
    List<Readiness> rooms = FloorPlanner.readiness(job, FloorPlanner.plan(job));
    assertThat(rooms).extracting(Readiness::room).containsExactly("Study", "Hall");
    assertThat(rooms).extracting(Readiness::outcome).containsExactly(Outcome.MET, Outcome.NOT_MET);
  }

  /** What is doubted is a finding of the plan that names the room. */
  @Test
  void doubtsAreFindingsOfThePlan() {
    SiteReadings twice = GOOD.withHeights(List.of(spot("0", "0"), spot("0", "0"), spot("500", "0"), spot("0", "500")));
    FloorPlan plan = FloorPlanner.plan(job(BOARDS, STUDY.withSite(twice)));
    assertThat(plan.findings()).extracting(Finding::where, Finding::code)
        .contains(org.assertj.core.groups.Tuple.tuple("Study, heights", "place-read-twice"));
  }

  private static SpotLevel spot(String x, String y) {
    return SpotLevel.of(Length.ofMillimetres(x), Length.ofMillimetres(y), Length.ZERO);
  }

  /**
   * White oak, 0.365 % for each per cent, from 8.25 % to 10.8 % or so: of a room of 3.6 m the half swells by
   * 1800 * 0.00365 * 2.5 = 16.5 mm, more than 10; of one of 1.5 m across the boards by 750 * 0.00365 * 2.5 = 6.9 mm.
   */
  @Test
  void theDirectionOfThePlanDecidesWhichWidthMoves() {
    BoardGoods oak = BOARDS.withConstruction(Construction.SOLID).withSpecies("white oak");
    Room hall = Room.of("Hall", Wkt.parse("POLYGON ((0 0, 3600 0, 3600 1500, 0 1500, 0 0))")).withSite(GOOD);
    FloorJob along = job(oak, hall);
    assertThat(gap(along).outcome()).isEqualTo(Outcome.MET);
    FloorJob square = along.withDirection(DirectionChoice.of(Direction.fromDegrees(90)));
    assertThat(gap(square).outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(gap(square).found()).isEqualTo("10 mm");
  }

  private static Judgement gap(FloorJob job) {
    return FloorPlanner.readiness(job, FloorPlanner.plan(job)).get(0).judgements().stream()
        .filter(one -> one.code().equals("gap-wide-enough")).findFirst().orElseThrow();
  }

  /** A waist of 15 mm is swallowed by two gaps of 10: two bays of 1 m, each moving by itself and named. */
  @Test
  void aRoomInTwoBaysIsJudgedBayByBay() {
    Room waisted = Room.of("Waist", Wkt.parse("POLYGON ((0 0, 2000 0, 2000 492, 2500 492, 2500 0, 4500 0, 4500 1000, 2500 1000,"
        + " 2500 507, 2000 507, 2000 1000, 0 1000, 0 0))")).withSite(GOOD);
    FloorJob job = job(BOARDS, waisted);
    FloorPlan plan = FloorPlanner.plan(job);
    assertThat(plan.bays()).hasSize(2);
    assertThat(gap(job).where()).startsWith("waist-");
  }

  @Test
  void aGapReadUnderAnEdgeFailsTheFloor() {
    SiteReadings uneven = GOOD.withStraightedge(List.of(new GapReading(Length.parse("8 ft"), Length.parse("4 mm"), "door")));
    FloorJob job = job(BOARDS, STUDY.withSite(uneven));
    FloorPlan plan = FloorPlanner.plan(job);
    List<Check> failed = plan.checks().stream().filter(check -> check.outcome() == Outcome.NOT_MET).toList();
    assertThat(failed).hasSize(1);
    assertThat(failed.get(0).judgement().where()).startsWith("gaps read by hand, door");
    assertThat(failed.get(0).advice()).contains("silica dust");
  }
}
