package floorcalc.examples;

import floorcalc.FloorPlanner;
import floorcalc.boards.BoardGoods;
import floorcalc.drawing.CutsDrawing;
import floorcalc.drawing.EquilibriumDrawing;
import floorcalc.drawing.FloorDrawing;
import floorcalc.drawing.HeightsDrawing;
import floorcalc.drawing.JointsDrawing;
import floorcalc.drawing.LevelsDrawing;
import floorcalc.drawing.Measures;
import floorcalc.drawing.PieceDrawing;
import floorcalc.drawing.RowsDrawing;
import floorcalc.drawing.SeasonsDrawing;
import floorcalc.drawing.StartLineDrawing;
import floorcalc.drawing.StraightedgeDrawing;
import floorcalc.drawing.SurveyDrawing;
import floorcalc.examples.readings.ReadingFile;
import floorcalc.fittings.BoardPiece;
import floorcalc.fittings.CutOutLimits;
import floorcalc.fittings.PipeAllowance;
import floorcalc.fittings.PipeAt;
import floorcalc.fittings.PipeHoles;
import floorcalc.flatness.RestRule;
import floorcalc.flatness.Straightedge;
import floorcalc.flatness.ToleranceSet;
import floorcalc.joints.JointLayout;
import floorcalc.joints.JointPattern;
import floorcalc.levels.Levels;
import floorcalc.levels.PreparationOptions;
import floorcalc.levels.SubfloorPreparation;
import floorcalc.measure.Length;
import floorcalc.moisture.AirClimate;
import floorcalc.moisture.ClimateLimits;
import floorcalc.moisture.Percent;
import floorcalc.moisture.Temperature;
import floorcalc.movement.Coefficient;
import floorcalc.movement.MovementForecast;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.outline.survey.Survey;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyWall;
import floorcalc.outline.survey.Tie;
import floorcalc.outline.survey.WallOffset;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.rows.ControlLine;
import floorcalc.rows.FloorPart;
import floorcalc.rows.FloorStops;
import floorcalc.rows.RowDivision;
import floorcalc.rows.RowWay;
import floorcalc.rows.StartLine;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.transitions.HeightStack;
import floorcalc.transitions.ProfileKind;
import floorcalc.trims.BarGoods;
import floorcalc.trims.BarOrder;
import floorcalc.trims.TrimCutting;
import floorcalc.trims.TrimOpening;
import floorcalc.trims.TrimPiece;
import floorcalc.trims.TrimRuns;
import floorcalc.trims.TrimStock;
import floorcalc.underlay.CoveredRoom;
import floorcalc.underlay.Lap;
import floorcalc.underlay.RollGoods;
import floorcalc.underlay.RollOrder;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Stream;

/** The pictures on the pages, each drawn by the library from the calculation of its page's example. */
final class PagePictures {
  private PagePictures() {
  }

  /** Each picture by the name of its file under docs. */
  static Map<String, Callable<String>> all() {
    Map<String, Callable<String>> pictures = new TreeMap<>();
    pictures.put("bays", () -> room("Two bays (invented)", BOARDS,
        "POLYGON ((0 0, 6000 0, 6000 3000, 2500 3000, 2500 7000, 0 7000, 0 0))", JointPattern.FREE));
    pictures.put("bars", () -> CutsDrawing.of(TrimCutting.of(
        List.of(TrimPiece.of("doorway", mm(810)).times(7), TrimPiece.of("wide", mm(1010)).times(3)), List.of(TrimStock.sold(mm(2400))), mm(3))
        .value()).titled("Thresholds of an invented house").toSvg());
    pictures.put("cuts", PagePictures::cuts);
    pictures.put("equilibrium", () -> EquilibriumDrawing.at(Stream.of("0", "20", "40").map(Temperature::celsius).toList())
        .marking(AirClimate.of(Temperature.celsius("21"), Percent.of("48"))).within(ClimateLimits.COMMON_PRACTICE)
        .titled("Study of an invented house").toSvg());
    pictures.put("gullhaven-flat", () -> FloorDrawing.ofAllRooms(Demo.job(Demo.FLAT).job(), Demo.plan(Demo.FLAT), Measures.MILLIMETRES)
        .orElseThrow().toSvg());
    pictures.put("heights", PagePictures::heights);
    pictures.put("joints", () -> JointsDrawing.of(JointLayout.of(Stream.of(2200, 2000, 2200, 2600, 3000).map(joint -> List.of(mm(joint))).toList()),
        mm(4200)).least(mm(300)).titled("Five rows of an invented room").toSvg());
    pictures.put("levels", PagePictures::levels);
    pictures.put("outline", PagePictures::outline);
    pictures.put("piece", PagePictures::piece);
    pictures.put("porch", () -> bay("A column", BoardGoods.of(mm(1200), mm(250), mm(14), 5),
        "POLYGON ((0 0, 3020 0, 3020 770, 0 770, 0 0), (1510 250, 1790 250, 1790 520, 1510 520, 1510 250))", JointPattern.ofFraction(1, 3)));
    pictures.put("rolls", PagePictures::rolls);
    pictures.put("rows", () -> RowsDrawing.of(RowDivision.of(mm(3735), mm(185), mm(70), RowWay.LEAST_CUT).value()).withGap(mm(10))
        .titled("A bedroom of an invented house").toSvg());
    pictures.put("seasons", () -> SeasonsDrawing.of(MovementForecast.of(Percent.of("8"), Percent.of("6"), Percent.of("11"),
        Coefficient.NF_DTU_MULTILAYER), mm(8000), mm(10)).titled("Two rooms of an invented house").toSvg());
    pictures.put("skirting", PagePictures::skirting);
    pictures.put("square", () -> survey("A trapezium", List.of("5000", "4001.25", "4800", "4001.25"),
        List.of(tie(1, 3, "6325.35"), tie(2, 4, "6325.35")), List.of()));
    pictures.put("start-line", PagePictures::startLine);
    pictures.put("straightedge", PagePictures::straightedge);
    pictures.put("survey", () -> survey("Hall of an invented house", List.of("6202", "2610", "2787", "2209", "3411", "4800"), List.of(tie(1, 3, "6717"),
        tie(1, 4, "4284"), tie(2, 4, "3815"), tie(4, 6, "4062"), tie(1, 5, "5891"), tie(3, 6, "6576")), List.of()));
    pictures.put("taper", PagePictures::taper);
    pictures.put("traverse", () -> SurveyDrawing.of(SurveyReport.of(Survey.of(walls(List.of("5000", "4000", "5010", "4000")))
        .withCorners(Survey.Corners.RIGHT_ANGLES)).value()).titled("A walk that does not close").toSvg());
    pictures.put("unfixed", () -> survey("Four walls and no diagonal", List.of("5000", "4000", "5000", "4000"), List.of(), List.of()));
    pictures.put("wall-shapes", () -> survey("A niche in wall 1", List.of("4000", "3000", "4000", "3000"), List.of(tie(1, 3, "5000"), tie(2, 4, "5000")),
        List.of(offset(1000, 0), offset(1000, -100), offset(1600, -100), offset(1600, 0))));
    return pictures;
  }

  private static final BoardGoods BOARDS = BoardGoods.of(mm(2200), mm(185), mm(14), 6);

  private static Length mm(long number) {
    return Length.ofMillimetres(number);
  }

  private static FloorJob job(String title, BoardGoods goods, String outline, JointPattern pattern) {
    return FloorJob.of(title, goods).pattern(pattern).direction(DirectionChoice.of(Direction.ALONG_X))
        .room(Room.of(title.equals("A column") ? "Porch" : "Room", Wkt.parse(outline))).build();
  }

  private static String bay(String title, BoardGoods goods, String outline, JointPattern pattern) {
    FloorJob job = job(title, goods, outline, pattern);
    FloorPlan plan = FloorPlanner.plan(job);
    return FloorDrawing.of(job, plan, plan.bays().get(0)).toSvg();
  }

  private static String room(String title, BoardGoods goods, String outline, JointPattern pattern) {
    FloorJob job = job(title, goods, outline, pattern);
    return FloorDrawing.ofRoom(job, FloorPlanner.plan(job), "Room", Measures.MILLIMETRES).toSvg();
  }

  /** Laid in one bay, as the page is about its outline and its gap. */
  private static String outline() {
    FloorJob job = FloorJob.of("An L with a column (invented)", BOARDS).direction(DirectionChoice.of(Direction.ALONG_X))
        .room(Room.of("Room", Wkt.parse("POLYGON ((0 0, 4000 0, 4000 2000, 2000 2000, 2000 3000, 0 3000, 0 0),"
            + " (800 700, 1200 700, 1200 1100, 800 1100, 800 700))")).withBreaks(List.of())).build();
    FloorPlan plan = FloorPlanner.plan(job);
    return FloorDrawing.of(job, plan, plan.bays().get(0)).toSvg();
  }

  private static String taper() {
    FloorJob job = FloorJob.of("A wall that runs off (invented)", BoardGoods.of(mm(1200), mm(185), mm(14), 5)).pattern(JointPattern.ofFraction(1, 3))
        .direction(DirectionChoice.of(Direction.ALONG_X)).room(Room.of("Passage", Wkt.parse("POLYGON ((0 0, 3020 0, 3020 750, 0 860, 0 0))"))).build();
    FloorPlan plan = FloorPlanner.plan(job);
    return FloorDrawing.of(job, plan, plan.bays().get(0)).toSvg();
  }

  private static String levels() throws IOException {
    Levels study = ReadingFile.room(Files.readAllBytes(Demo.FOLDER.resolve("gullhaven-study.csv"))).levels();
    SubfloorPreparation work = SubfloorPreparation.of(study, ToleranceSet.named("BS 8204 SR1"),
        PreparationOptions.grindingUpTo(Length.parse("3 mm")).leastWork(BigDecimal.valueOf(2), BigDecimal.ONE)).value();
    return LevelsDrawing.of(study).titled("Study of an invented house").with(work).toSvg();
  }

  private static String cuts() {
    FloorJob job = FloorJob.of("Six rows", BoardGoods.of(mm(2000), mm(200), mm(14), 5))
        .room(Room.of("Box room", Wkt.parse("POLYGON ((0 0, 4220 0, 4220 1220, 0 1220, 0 0))"))).build();
    return CutsDrawing.of(job, FloorPlanner.plan(job)).titled("Box room of an invented house").toSvg();
  }

  private static String heights() {
    HeightStack here = HeightStack.BARE.on("underlay", mm(2)).on("board", mm(14));
    return HeightsDrawing.of(here).beyond(HeightStack.BARE.on("adhesive", mm(8)).on("tile", mm(10)).fromSubfloorAt(mm(-6)))
        .profile(ProfileKind.END).casing(mm(17)).leaf(mm(24)).titled("A door of an invented house").toSvg();
  }

  private static String piece() {
    BoardPiece piece = BoardPiece.of("a piece of an invented floor",
        Wkt.parse("POLYGON ((0 0, 1200 0, 1200 185, 390 185, 390 140, 210 140, 210 185, 0 185, 0 0))").shell());
    return PieceDrawing.of(piece).titled("A notch and a hole (invented)").with(PipeHoles.of(List.of(new PipeAt("pipe 1", Point.ofMillimetres(700, 120), mm(22))), List.of(piece),
        PipeAllowance.TWENTY_WIDER, CutOutLimits.COMMON_PRACTICE).value()).toSvg();
  }

  private static String rolls() {
    RollGoods film = RollGoods.barrier("film", mm(2000), mm(25_000), Lap.NBS_K21).withUpturn(mm(50));
    RollOrder order = RollOrder.of(film, List.of(CoveredRoom.bothWays("Study",
        Wkt.parse("POLYGON ((0 0, 5000 0, 5000 2000, 2000 2000, 2000 4000, 0 4000, 0 0))"), Direction.ALONG_X))).value();
    return CutsDrawing.of(order.cutting()).called("roll").titled("Film for a study of an invented house").toSvg();
  }

  private static String skirting() {
    BarGoods skirting = BarGoods.of("skirting", List.of(mm(2400)), mm(15));
    Outline outline = Wkt.parse("POLYGON ((0 0, 4000 0, 4000 3000, 0 3000, 0 0))");
    TrimRuns room = TrimRuns.of("Room", outline, List.of(TrimOpening.of("door", Point.ofMillimetres(1000, 0), Point.ofMillimetres(1900, 0))), skirting)
        .value();
    BarOrder order = BarOrder.ofRuns(skirting, List.of(room), RuleSet.COMMON_PRACTICE.forBoard(mm(14), mm(185)).get(LayingRules.SAW_KERF)).value();
    return CutsDrawing.of(order.cutting()).titled("Skirting of an invented room").toSvg();
  }

  private static String startLine() {
    FloorStops stops = FloorStops.of(List.of(new FloorPart("hall", Wkt.parse("POLYGON ((0 0, 4000 0, 4000 3010, 0 3010, 0 0))")),
        new FloorPart("door", Wkt.parse("POLYGON ((500 3010, 1400 3010, 1400 3110, 500 3110, 500 3010))")),
        new FloorPart("study", Wkt.parse("POLYGON ((0 3110, 4000 3110, 4000 5600, 0 5600, 0 3110))"))),
        ControlLine.of(Point.ofMillimetres(0, 0), Point.ofMillimetres(1, 0)));
    StartLine line = StartLine.choose(stops.stops(), stops.low(), mm(185), mm(70), RowWay.WIDEST_STRIP).value();
    return StartLineDrawing.of(line).titled("Hall and study of an invented house").toSvg();
  }

  private static String straightedge() {
    List<Length> heights = new ArrayList<>();
    for (int i = 0; i <= 30; i++) {
      heights.add(Length.ofMillimetres("-0.5").multipliedBy(Math.max(0, 5 - Math.abs(i - 15))));
    }
    return StraightedgeDrawing.of(floorcalc.flatness.HeightProfile.ofEqualSpacing(mm(100), heights), Straightedge.of(Length.parse("1219.2 mm")), RestRule.WORST)
        .titled("A dip under an edge of 4 ft").toSvg();
  }

  private static String survey(String title, List<String> lengths, List<Tie> ties, List<WallOffset> offsets) {
    return SurveyDrawing.of(SurveyReport.of(Survey.of(walls(lengths)).withTies(ties).withOffsets(offsets)).value()).titled(title).toSvg();
  }

  private static List<SurveyWall> walls(List<String> lengths) {
    return lengths.stream().map(length -> SurveyWall.of(Length.ofMillimetres(length))).toList();
  }

  private static Tie tie(int from, int to, String mm) {
    return new Tie(from, to, Length.ofMillimetres(mm));
  }

  private static WallOffset offset(long at, long distance) {
    return new WallOffset(1, mm(at), mm(distance));
  }
}
