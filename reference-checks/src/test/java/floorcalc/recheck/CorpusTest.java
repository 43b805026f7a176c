package floorcalc.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.bays.ExpansionBreak;
import floorcalc.bays.Opening;
import floorcalc.boards.BoardGoods;
import floorcalc.boards.OffcutUse;
import floorcalc.boards.PackContent;
import floorcalc.joints.JointPattern;
import floorcalc.measure.Length;
import floorcalc.measure.TapeNotation;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorJobBuilder;
import floorcalc.plan.Room;
import floorcalc.rows.RowWay;
import floorcalc.rules.AtDoorways;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Floors of many kinds as text, planned and checked a second time. Each case asserts that every room, bay, row, piece, joint, board and
 * profile of the plan was looked at; each test how many plans there were. Real rooms: {@code RealRoomsTest}.
 */
@Tag("reference")
class CorpusTest {
  private static final String RECTANGLE = "POLYGON ((0 0, 4210 0, 4210 3620, 0 3620, 0 0))";
  private static final String L = "POLYGON ((0 0, 6000 0, 6000 3000, 2500 3000, 2500 7000, 0 7000, 0 0))";
  private static final String T = "POLYGON ((0 0, 8000 0, 8000 2500, 5200 2500, 5200 6000, 2800 6000, 2800 2500, 0 2500, 0 0))";
  private static final String U = "POLYGON ((0 0, 9000 0, 9000 6000, 6500 6000, 6500 2500, 2500 2500, 2500 6000, 0 6000, 0 0))";
  private static final String SLANTED = "POLYGON ((0 0, 5210 -130, 5405 2400, 3100 2710, 3100 3770, -80 3760, 0 0))";
  private static final String ISLAND =
      "POLYGON ((0 0, 7000 0, 7000 6000, 0 6000, 0 0), (2500 2000, 4500 2000, 4500 3500, 2500 3500, 2500 2000))";
  /** Its break meets its walls at an angle. */
  private static final String BENT = "POLYGON ((1882.192456 2675.507533, 4458.436707 3974.041536, 3622.153804 5633.196412, "
      + "2628.113075 5132.158638, 1321.280611 9214.702099, -1380.666273 8349.802082, 89.389377 3757.349536, 1163.583409 4101.201757, "
      + "1882.192456 2675.507533))";
  private static final String LONG = "POLYGON ((0 0, 27000 0, 27000 2200, 0 2200, 0 0))";
  private static final String TWO_ROOMS = "POLYGON ((0 0, 4000 0, 4000 1500, 4120 1500, 4120 0, 8000 0, 8000 4000, 4120 4000, 4120 2400, "
      + "4000 2400, 4000 4000, 0 4000, 0 0))";
  /** In quarter inches: 3048 mm are 120 in, 2286 mm 90 in, 1524 mm 60 in. */
  private static final String INCHES = "POLYGON ((0 0, 3048 0, 3048 1524, 2286 1524, 2286 3657.6, 0 3657.6, 0 0))";

  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static BoardGoods plank() {
    return BoardGoods.of(mm(2200), mm(185), mm(14), 6);
  }

  private static BoardGoods mixed() {
    return BoardGoods.mixed(List.of(new PackContent(mm(1800), 3), new PackContent(mm(1200), 2), new PackContent(mm(600), 2)), mm(120), mm(15));
  }

  private static BoardGoods narrow() {
    return BoardGoods.of(mm(1000), mm(62), mm(20), 20);
  }

  private static FloorJobBuilder job(BoardGoods goods) {
    return FloorJob.of("Invented floor", goods);
  }

  private static Room room(String wkt) {
    return Room.of("Room", Wkt.parse(wkt));
  }

  /** Every shape with three products, offcuts both ways, along the longest wall and askew, one of them the cheapest way. */
  @Test
  void shapes() {
    int plans = 0;
    for (String shape : List.of(RECTANGLE, L, T, U, SLANTED, ISLAND)) {
      for (BoardGoods goods : List.of(plank(), mixed(), narrow())) {
        for (DirectionChoice direction : List.of(goods.lengths().size() > 1 ? DirectionChoice.FEWEST_BOARDS : DirectionChoice.LONGEST_WALL,
            DirectionChoice.of(Direction.fromDegrees(202.5)))) {
          OffcutUse use = plans % 2 == 0 ? OffcutUse.CUT_AHEAD : OffcutUse.IN_LAYING_ORDER;
          sound(job(goods).offcuts(use).direction(direction).room(room(shape)).build());
          plans++;
        }
      }
    }
    assertThat(plans).isEqualTo(36);
  }

  private static Rechecked sound(FloorJob job) {
    Rechecked checked = Rechecked.ofText(JobText.of(job)).assertSound(job.rooms() + " " + job.board() + " " + job.direction());
    assertThat(checked.report().leftOut()).allSatisfy(one -> assertThat(one.what()).matches("the bound against.*|rule 7.*"));
    return checked;
  }

  /** Breaks that are looked for, that the job gives, of a gap of their own, and at doorways inside an outline. */
  @Test
  void breaks() {
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(mm(14), mm(185));
    List<Opening> doorway = List.of(new Opening("Doorway", Point.ofMillimetres(4060, 1500), Point.ofMillimetres(4060, 2400)));
    ExpansionBreak given = ExpansionBreak.given(Point.ofMillimetres(0, 3000), Point.ofMillimetres(2500, 3000));
    Map<String, FloorJob> jobs = new TreeMap<>();
    jobs.put("found, 2", job(plank()).room(room(L)).build());
    jobs.put("found, narrow gap, 2", job(plank()).rules(rules.with(LayingRules.BREAK_GAP, mm(8), Source.GIVEN)).room(room(L)).build());
    jobs.put("given, 2", job(plank()).room(room(L).withBreaks(List.of(given))).build());
    jobs.put("given none, 1", job(plank()).room(room(L).withBreaks(List.of())).build());
    jobs.put("by the longest run, 3", job(plank()).room(room(LONG)).build());
    jobs.put("at a doorway, 2", job(plank()).room(room(TWO_ROOMS).withOpenings(doorway)).build());
    jobs.put("through a doorway, 1", job(plank()).rules(rules.with(LayingRules.AT_DOORWAYS, AtDoorways.RUN_THROUGH, Source.GIVEN)
        .with(LayingRules.DEEPEST_RECESS, mm(5000), Source.GIVEN)).room(room(TWO_ROOMS).withOpenings(doorway)).build());
    jobs.put("of mixed packs askew, 2", job(mixed()).direction(DirectionChoice.of(Direction.fromDegrees(30))).room(room(L)).build());
    jobs.forEach((what, job) -> assertThat(sound(job).report().checked().bays()).as(what)
        .isEqualTo(Integer.parseInt(what.substring(what.length() - 1))));
    assertThat(jobs).hasSize(8);
  }

  /** Without gap, without kerf, without rules, in one row, in a strip narrower than a board, round a column in one board, far from zero. */
  @Test
  void edges() {
    LayingRules none = RuleSet.COMMON_PRACTICE.forBoard(mm(14), mm(185)).with(LayingRules.EXPANSION_GAP, Length.ZERO, Source.GIVEN)
        .with(LayingRules.SAW_KERF, Length.ZERO, Source.GIVEN).with(LayingRules.MINIMUM_END_PIECE, Length.ZERO, Source.GIVEN)
        .with(LayingRules.MINIMUM_JOINT_OFFSET, Length.ZERO, Source.GIVEN).with(LayingRules.MINIMUM_ROW_WIDTH, Length.ZERO, Source.GIVEN);
    List<FloorJob> jobs = new ArrayList<>();
    for (String shape : List.of(RECTANGLE, L, SLANTED, ISLAND)) {
      jobs.add(job(plank()).rules(none).room(room(shape)).build());
    }
    jobs.add(job(plank()).room(room("POLYGON ((0 0, 4000 0, 4000 150, 0 150, 0 0))")).build());
    jobs.add(job(plank()).room(room("POLYGON ((0 0, 450 0, 450 5000, 0 5000, 0 0))")).direction(DirectionChoice.of(Direction.ALONG_X)).build());
    jobs.add(job(plank()).room(room("POLYGON ((0 0, 5000 0, 0 900, 0 0))")).build());
    jobs.add(job(BoardGoods.of(mm(300), mm(50), mm(15), 40)).room(room("POLYGON ((0 0, 1400 0, 1400 700, 0 700, 0 0))")).build());
    jobs.add(job(plank()).rules(none).room(room("POLYGON ((0 0, 3000 0, 3000 2000, 0 2000, 0 0), (1000 60, 1050 60, 1050 110, 1000 110, 1000 60))")).build());
    Outline far = Direction.fromDegrees(33.3).toRoom(Wkt.parse("POLYGON ((9000000 1000, 9004000 1100, 9004000 4000, 9000000 4000, 9000000 1000))"));
    jobs.add(job(mixed()).room(Room.of("Far off", far)).build());
    jobs.add(job(BoardGoods.of(mm(2081), mm(89), mm(15), 5)).direction(DirectionChoice.of(Direction.fromDegrees(90))).room(room(BENT)).build());
    int holes = 0;
    for (FloorJob job : jobs) {
      holes += sound(job).plan().bays().stream().flatMap(bay -> bay.rows().stream()).flatMap(row -> row.pieces().stream())
          .mapToInt(piece -> piece.holes().size()).sum();
    }
    assertThat(jobs).hasSize(11);
    assertThat(holes).as("a column within one board").isEqualTo(1);
  }

  /** Every length of the job in feet and inches, in inches, in metres: the plan is the same to the byte, and sound. */
  @Test
  void inches() {
    int plans = 0;
    for (OffcutUse use : OffcutUse.values()) {
      FloorJob job = job(BoardGoods.of(Length.parse("48 in"), Length.parse("7 1/2 in"), Length.parse("5/8 in"), 8)).offcuts(use)
          .rules(RuleSet.COMMON_PRACTICE.forBoard(Length.parse("5/8 in"), Length.parse("7 1/2 in"))
              .with(LayingRules.EXPANSION_GAP, Length.parse("1/2 in"), Source.GIVEN)).room(room(INCHES)).build();
      String first = Rechecked.ofText(JobText.of(job)).assertSound("millimetres").planText();
      for (TapeNotation notation : List.of(TapeNotation.feetAndInches(64), TapeNotation.inches(64), TapeNotation.metres(6))) {
        String text = JobText.of(job, notation::format);
        Rechecked checked = Rechecked.ofText(text).assertSound(text);
        assertThat(PlanRecheck.of(text, first).isSound()).as(text).isTrue();
        assertThat(checked.report().checked()).isEqualTo(PlanRecheck.of(JobText.of(job), first).checked());
        plans++;
      }
    }
    assertThat(plans).isEqualTo(6);
  }

  /** What a job file cannot ask for: patterns, ways to begin, rules of a named set. Their values go into the job that the auditor gets. */
  @Test
  void byCalls() {
    List<FloorJob> jobs = new ArrayList<>();
    for (String shape : List.of(RECTANGLE, L, SLANTED)) {
      for (JointPattern pattern : List.of(JointPattern.ofFraction(1, 3), JointPattern.ofStep(mm(450)))) {
        jobs.add(job(plank()).pattern(pattern).room(room(shape)).build());
      }
      for (RowWay way : RowWay.values()) {
        jobs.add(job(plank()).rowWay(way).room(room(shape)).build());
      }
      for (RuleSet set : List.of(RuleSet.NF_DTU_51_11, RuleSet.NWFA_GUIDELINES, RuleSet.NWFA_THREE_WIDTHS, RuleSet.AS_1684)) {
        jobs.add(job(plank()).rules(set.forBoard(mm(14), mm(185))).room(room(shape)).build());
      }
    }
    for (FloorJob job : jobs) {
      Rechecked.of(job, FloorPlanner.plan(job)).assertSound(job.pattern() + " " + job.rowWay() + " " + job.rules());
    }
    assertThat(jobs).hasSize(3 * (2 + RowWay.values().length + 4));
  }

  /** The demo jobs and the jobs of the examples' tests, made twice. What is left out is what only a survey tells. */
  @Test
  void jobFilesOfTheExamples() throws IOException {
    Path examples = Path.of(System.getProperty("basedir", "")).toAbsolutePath().resolveSibling("floorcalc-examples");
    List<Path> files = new ArrayList<>();
    for (String folder : List.of("demo", "src/test/resources/jobs")) {
      try (Stream<Path> jobs = Files.list(examples.resolve(folder))) {
        jobs.filter(file -> file.toString().endsWith(".json")).sorted().forEach(files::add);
      }
    }
    Map<String, Integer> leftOut = new TreeMap<>();
    for (Path file : files) {
      String text = Files.readString(file, StandardCharsets.UTF_8);
      Rechecked checked = Rechecked.ofText(text).assertSound(file.getFileName().toString());
      RecheckReport twice = PlanRecheck.of(text, checked.planText(), Rechecked.ofText(text).planText());
      assertThat(twice.faults()).isEmpty();
      List<LeftOut> unknown = twice.leftOut().stream().filter(one -> !one.what().startsWith("the bound against")).toList();
      assertThat(unknown).as(file.toString()).allSatisfy(one -> assertThat(one.because()).contains("survey"));
      leftOut.put(file.getFileName().toString(), unknown.size());
    }
    assertThat(leftOut).isEqualTo(new TreeMap<>(Map.of("everything.json", 0, "least.json", 0, "surveyed-study.json", 3,
        "gullhaven-flat.json", 2, "gullhaven-house.json", 0, "gullhaven-loft.json", 0, "gullhaven-parlour.json", 4)));
  }

  /** A corner of one room may be a corner of another, and both may be turned. */
  @Test
  void manyRooms() {
    FloorJobBuilder builder = job(plank()).direction(DirectionChoice.FEWEST_BOARDS);
    int number = 0;
    for (String shape : List.of(RECTANGLE, L, SLANTED, T)) {
      Outline outline = Direction.fromDegrees(17.25 * number).toRoom(Wkt.parse(shape));
      builder.room(Room.of("Room " + ++number, outline));
    }
    Rechecked checked = sound(builder.build());
    assertThat(checked.report().checked().walls()).isEqualTo(4);
    assertThat(checked.report().checked().bays()).isGreaterThan(4);
  }
}
