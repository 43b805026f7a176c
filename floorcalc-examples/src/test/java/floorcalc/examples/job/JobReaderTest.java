package floorcalc.examples.job;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.bays.ExpansionBreak;
import floorcalc.bays.Opening;
import floorcalc.bays.ThroughBreaks;
import floorcalc.boards.Construction;
import floorcalc.boards.OffcutUse;
import floorcalc.boards.PackContent;
import floorcalc.deviations.Deviation;
import floorcalc.deviations.DeviationReadings;
import floorcalc.deviations.DeviationSet;
import floorcalc.deviations.MeasuredBoards;
import floorcalc.examples.Docs;
import floorcalc.flatness.GapReading;
import floorcalc.flatness.ProfilePoint;
import floorcalc.flatness.ToleranceSet;
import floorcalc.levels.SpotLevel;
import floorcalc.measure.Length;
import floorcalc.measure.Mass;
import floorcalc.measure.Price;
import floorcalc.moisture.AirClimate;
import floorcalc.moisture.Heating;
import floorcalc.moisture.MoistureMethod;
import floorcalc.moisture.MoistureReading;
import floorcalc.moisture.Percent;
import floorcalc.moisture.Temperature;
import floorcalc.outline.Point;
import floorcalc.plan.Beyond;
import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Pipe;
import floorcalc.plan.Room;
import floorcalc.plan.Subfloor;
import floorcalc.rules.AtDoorways;
import floorcalc.rules.LayingRules;
import floorcalc.site.HeightLine;
import floorcalc.site.SiteReadings;
import floorcalc.transitions.Casing;
import floorcalc.transitions.FireRating;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class JobReaderTest {
  private static final Path JOBS = Path.of("src", "test", "resources", "jobs");

  private static byte[] bytes(String name) throws IOException {
    return Files.readAllBytes(JOBS.resolve(name));
  }

  private static JobFile least(String from, String to) throws IOException {
    String text = new String(bytes("least.json"), StandardCharsets.UTF_8);
    assertThat(text).contains(from);
    return JobReader.read(text.replace(from, to).getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void boardOfEveryField() throws IOException {
    FloorJob job = JobReader.read(bytes("everything.json")).job();
    assertThat(job.title()).isEqualTo("Every field of the format (invented)");
    assertThat(job.board().pack()).containsExactly(
        new PackContent(Length.ofMillimetres(1800), 3), new PackContent(Length.ofMillimetres(1200), 2));
    // 7 1/4 in = 7.25 x 25.4 mm = 184.15 mm
    assertThat(job.board().coverWidth()).isEqualTo(Length.ofMillimetres("184.15"));
    assertThat(job.board().thickness()).isEqualTo(Length.ofMillimetres("14.5"));
    assertThat(job.board().construction()).isEqualTo(Construction.SOLID);
    assertThat(job.board().species()).contains("white oak");
    assertThat(job.board().packMass()).contains(new Mass(new BigDecimal("19.4")));
    assertThat(job.board().packPrice()).contains(new Price(new BigDecimal("118.40"), "EUR"));
  }

  @Test
  void measuredBoardsOfEveryField() throws IOException {
    MeasuredBoards measured = JobReader.read(bytes("everything.json")).job().measuredBoards().orElseThrow();
    DeviationReadings readings = measured.readings();
    assertThat(measured.permitted()).isSameAs(DeviationSet.named("NWFA/NOFMA factory finished"));
    assertThat(readings.width()).isEqualTo(Length.ofMillimetres("184.15"));
    assertThat(readings.of(Deviation.WIDTH)).containsExactly(Length.ofMillimetres("184.15"), Length.ofMillimetres("184.2"),
        Length.ofMillimetres("183.9"));
    assertThat(readings.of(Deviation.THICKNESS)).hasSize(2);
    assertThat(readings.of(Deviation.LENGTH)).containsExactly(Length.ofMillimetres("1800.4"), Length.ofMillimetres("1199.6"));
    assertThat(readings.of(Deviation.OUT_OF_SQUARE)).hasSize(3);
    assertThat(readings.of(Deviation.MATCH_POSITION)).containsExactly(Length.ofMillimetres("0.1"));
    assertThat(readings.of(Deviation.TONGUE_FIT)).containsExactly(Length.ofMillimetres("0.2"));
    assertThat(readings.of(Deviation.LIPPING)).containsExactly(Length.ofMillimetres("0.15"), Length.ZERO);
    assertThat(readings.moisture()).contains(new BigDecimal("8.5"));
  }

  @Test
  void whatThePapersPermitIsASetOfTheJob() throws IOException {
    MeasuredBoards measured = least("\"construction\"", "\"measured\": {\"widths\": [185.3], \"limits\": {\"width\": 0.2}}, \"construction\"").job()
        .measuredBoards().orElseThrow();
    assertThat(measured.permitted().name()).isEqualTo("goods' papers");
    assertThat(measured.judge().value()).singleElement().satisfies(one -> {
      assertThat(one.outcome()).isEqualTo(Outcome.NOT_MET);
      assertThat(one.limit()).isEqualTo("plus or minus 0.2 mm");
      assertThat(one.source()).isEqualTo(Source.GIVEN);
    });
    assertThat(JobReader.read(bytes("least.json")).job().measuredBoards()).isEmpty();
  }

  @Test
  void layingOfEveryField() throws IOException {
    FloorJob job = JobReader.read(bytes("everything.json")).job();
    LayingRules rules = job.rules();
    assertThat(rules.value(LayingRules.EXPANSION_GAP)).isEqualTo(Length.ofMillimetres(12));
    assertThat(rules.get(LayingRules.EXPANSION_GAP).source()).isEqualTo(Source.GIVEN);
    assertThat(rules.value(LayingRules.MINIMUM_ROW_WIDTH)).isEqualTo(Length.ofMillimetres(60));
    assertThat(rules.value(LayingRules.MINIMUM_END_PIECE)).isEqualTo(Length.ofMillimetres(250));
    assertThat(rules.value(LayingRules.MINIMUM_JOINT_OFFSET)).isEqualTo(Length.ofMillimetres("260.5"));
    // 1/8 in = 25.4 mm / 8 = 3.175 mm
    assertThat(rules.value(LayingRules.SAW_KERF)).isEqualTo(Length.ofMillimetres("3.175"));
    assertThat(rules.value(LayingRules.SPARE_SHARE)).isEqualTo(new BigDecimal("0.05"));
    assertThat(rules.value(LayingRules.MAXIMUM_RUN_ALONG)).isEqualTo(Length.ofMillimetres(10_000));
    assertThat(rules.value(LayingRules.MAXIMUM_RUN_ACROSS)).isEqualTo(Length.ofMillimetres(7_500));
    assertThat(job.direction().fixed().orElseThrow().toDecimal()).isEqualTo(new BigDecimal("37.5"));
    assertThat(job.offcuts()).isEqualTo(OffcutUse.CUT_AHEAD);
    assertThat(rules.value(LayingRules.BREAK_GAP)).isEqualTo(Length.ofMillimetres(16));
    assertThat(rules.value(LayingRules.DEEPEST_RECESS)).isEqualTo(Length.ofMillimetres(400));
    assertThat(rules.value(LayingRules.WIDEST_VOID)).isEqualTo(Length.ofMillimetres(800));
    assertThat(rules.value(LayingRules.AT_DOORWAYS)).isEqualTo(AtDoorways.RUN_THROUGH);
    assertThat(job.throughBreaks()).isEqualTo(ThroughBreaks.ONE_START_LINE);
  }

  @Test
  void breaksAndOpeningsArePutOnTheWallsThatTheyAreNearTo() throws IOException {
    List<Room> rooms = JobReader.read(bytes("everything.json")).job().rooms();
    assertThat(rooms.get(0).breaks()).isEmpty();
    assertThat(rooms.get(1).openings())
        .containsExactly(new Opening("Arch", Point.ofMillimetres(5000, 1600), Point.of(Length.ofMillimetres(6096), Length.ofMillimetres("1600.5"))));
    assertThat(rooms.get(1).breaks()).contains(
        List.of(ExpansionBreak.given(Point.ofMillimetres(5000, 2000), Point.ofMillimetres(6096, 2000))));
  }

  @Test
  void roomOfEveryField() throws IOException {
    FloorJob job = JobReader.read(bytes("everything.json")).job();
    Room room = job.rooms().get(0);
    assertThat(room.name()).isEqualTo("Study");
    assertThat(room.outline().shell().corners()).containsExactly(Point.ofMillimetres(0, 0),
        Point.ofMillimetres(4210, 0), Point.ofMillimetres(4195, 3620), Point.ofMillimetres(0, 3605));
    assertThat(room.outline().voids()).hasSize(1);
    Door door = room.doors().get(0);
    assertThat(door.name()).isEqualTo("D1");
    assertThat(door.to()).isEqualTo(Point.of(Length.ofMillimetres(2026), Length.ofMillimetres("0.5")));
    assertThat(door.leadsTo()).isEqualTo("Hall");
    assertThat(door.beyond().finish()).isEqualTo("tile");
    assertThat(door.beyond().higherBy()).isEqualTo(Length.ofMillimetres(-4));
    assertThat(door.casing()).isEqualTo(Casing.NOT_STATED);
    assertThat(door.leaf()).isEmpty();
    assertThat(door.fire()).isEqualTo(FireRating.NOT_STATED);
    Door second = room.doors().get(1);
    assertThat(second.leadsTo()).isEmpty();
    assertThat(second.beyond()).isEqualTo(Beyond.aboveSubfloor("fixed edge", Length.ofMillimetres(20)));
    assertThat(second.casing()).isEqualTo(Casing.CANNOT_BE_CUT);
    // 1 1/8 in = 9 x 3.175 mm = 28.575 mm
    assertThat(second.leaf()).contains(Length.ofMillimetres("28.575"));
    assertThat(second.fire()).isEqualTo(FireRating.FIRE_DOOR);
    assertThat(room.pipes()).containsExactly(new Pipe(Point.ofMillimetres(310, 140), Length.ofMillimetres(22)));
    assertThat(room.subfloor()).isEqualTo(Subfloor.OLD_FLOOR);
    // 20 ft = 20 x 304.8 mm = 6096 mm
    assertThat(job.rooms().get(1).outline().shell().corners()).contains(Point.ofMillimetres(6096, 3200));
    assertThat(job.rooms().get(1).subfloor()).isEqualTo(Subfloor.NOT_STATED);
  }

  @Test
  void everyFieldOfTheSite() throws IOException {
    List<Room> rooms = JobReader.read(bytes("everything.json")).job().rooms();
    SiteReadings expected = SiteReadings.NONE.withAir(air("21 °C", "48")).withSeasons(air("21 °C", "35"), air("75.2 °F", "62.5"))
        .withSubfloorMoisture(List.of(MoistureReading.of(MoistureMethod.CM, "1.6").at(Point.ofMillimetres(600, 600)),
            MoistureReading.of(MoistureMethod.IN_SLAB_HUMIDITY, "71")))
        .withBoardMoisture(List.of(Percent.of("8.1"), Percent.of("8.4"), Percent.of("7.9")))
        .withDaysInRoom(BigDecimal.valueOf(3)).withPacksClosed().withHeating(Heating.UNHEATED)
        .withFlatness(ToleranceSet.named("NF DTU 51.11 subfloor"))
        .withLines(List.of(HeightLine.ofEqualSpacing("A", mm("300"), List.of(mm("0"), mm("1.2"), mm("-0.4"))),
            new HeightLine("B", List.of(new ProfilePoint(mm("0"), mm("0")), new ProfilePoint(mm("400"), mm("0.8")),
                new ProfilePoint(mm("900"), mm("0.1"))))))
        .withHeights(List.of(SpotLevel.of(mm("0"), mm("0"), mm("1.5")), SpotLevel.of(mm("1000"), mm("0"), mm("-0.2"))))
        .withStraightedge(List.of(new GapReading(Length.parse("8 ft"), mm("2.5"), "(500 mm, 500 mm)")));
    assertThat(rooms.get(0).site()).isEqualTo(expected);
    assertThat(rooms.get(1).site()).isEqualTo(SiteReadings.NONE);
  }

  private static AirClimate air(String temperature, String humidity) {
    return AirClimate.of(Temperature.parse(temperature), Percent.of(humidity));
  }

  private static Length mm(String millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  @Test
  void leastJobTakesCommonPractice() throws IOException {
    JobFile file = JobReader.read(bytes("least.json"));
    LayingRules rules = file.job().rules();
    assertThat(rules.all()).allMatch(rule -> rule.source().equals(Source.COMMON_PRACTICE));
    assertThat(rules.value(LayingRules.EXPANSION_GAP)).isEqualTo(Length.ofMillimetres(10));
    assertThat(rules.value(LayingRules.MINIMUM_END_PIECE)).isEqualTo(Length.ofMillimetres(300));
    assertThat(file.job().direction().toString()).isEqualTo("longest-wall");
    assertThat(file.job().offcuts()).isEqualTo(OffcutUse.IN_LAYING_ORDER);
    assertThat(file.tape()).isEqualTo(Tape.METRIC);
  }

  @Test
  void feetAndInchesAreNoticedAndNamesAreNot() throws IOException {
    assertThat(JobReader.read(bytes("everything.json")).tape()).isEqualTo(Tape.FEET_AND_INCHES);
    assertThat(least("2200", "\"86 5/8 in\"").tape()).isEqualTo(Tape.FEET_AND_INCHES);
    assertThat(least("2200", "\"2.2 m\"").tape()).isEqualTo(Tape.METRIC);
    assertThat(least("\"Study\"", "\"The host's room\"").tape()).isEqualTo(Tape.METRIC);
  }

  @Test
  void lengthsAreExactHoweverTheyAreWritten() throws IOException {
    assertThat(least("2200", "2.2e3").job().board().longest()).isEqualTo(Length.ofMillimetres(2200));
    assertThat(least("2200", "2200.000001").job().board().longest()).isEqualTo(Length.ofMillimetres("2200.000001"));
    assertThat(least("2200", "2200.0000000000000").job().board().longest()).isEqualTo(Length.ofMillimetres(2200));
    assertThat(least("2200", "\"7' 2 39/64\\\"\"").job().board().longest())
        .isEqualTo(Length.ofInches(86, 39, 64));
  }

  @Test
  void directionMayBeNegativeOrAChoice() throws IOException {
    String rooms = "\"rooms\"";
    assertThat(least(rooms, "\"laying\":{\"direction\":-90},\"rooms\"").job().direction().fixed().orElseThrow().toDecimal())
        .isEqualByComparingTo("270");
    assertThat(least(rooms, "\"laying\":{\"direction\":\"fewest-boards\"},\"rooms\"").job().direction().toString())
        .isEqualTo("fewest-boards");
  }

  @Test
  void byteOrderMarkIsPassedOver() throws IOException {
    assertThat(least("{\"format\"", "\uFEFF{\"format\"").job().title()).isEqualTo("Least");
  }

  @Test
  void namesInOtherScriptsAreKept() throws IOException {
    assertThat(least("\"Study\"", "\"Büro – 書斎 غرفة 🪵\"").job().rooms().get(0).name())
        .isEqualTo("Büro – 書斎 غرفة 🪵");
  }

  @Test
  void jobOnThePageOfTheFormatIsRead() throws IOException {
    String page = Docs.page("json-files.md");
    int start = page.indexOf("```json\n") + 8;
    byte[] job = page.substring(start, page.indexOf("```", start)).getBytes(StandardCharsets.UTF_8);
    assertThat(JobReader.read(job).job().title()).isEqualTo("Study floor");
    assertThat(Docs.faultsOfJob(job)).isEmpty();
  }

  @Test
  void goodJobsKeepToTheSchema() throws IOException {
    assertThat(Docs.faultsOfJob(bytes("everything.json"))).isEmpty();
    assertThat(Docs.faultsOfJob(bytes("least.json"))).isEmpty();
  }
}
