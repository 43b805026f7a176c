package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.fittings.BoardPiece;
import floorcalc.fittings.CutOutLimits;
import floorcalc.fittings.HoleCut;
import floorcalc.fittings.PipeAllowance;
import floorcalc.fittings.PipeAt;
import floorcalc.fittings.PipeHoles;
import floorcalc.flatness.HeightProfile;
import floorcalc.flatness.RestRule;
import floorcalc.flatness.Straightedge;
import floorcalc.joints.JointLayout;
import floorcalc.measure.Length;
import floorcalc.moisture.AirClimate;
import floorcalc.moisture.ClimateLimits;
import floorcalc.moisture.Percent;
import floorcalc.moisture.Temperature;
import floorcalc.movement.Coefficient;
import floorcalc.movement.MovementForecast;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.rows.RowDivision;
import floorcalc.rows.RowWay;
import floorcalc.rows.StartLine;
import floorcalc.rows.Stop;
import floorcalc.transitions.HeightStack;
import floorcalc.transitions.ProfileKind;
import floorcalc.trims.TrimCutting;
import floorcalc.trims.TrimPiece;
import floorcalc.trims.TrimStock;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Drawings that are no plan: whatever they show, no text lies across another, all lie on the sheet, and the bytes are the same again. */
class FiguresPropertyTest {
  private static Length mm(double value) {
    return Length.ofNanometres(Math.round(value * 1e4) * 100);
  }

  private static void holds(Supplier<String> drawing) {
    String svg = drawing.get();
    SvgPage page = SvgPage.parse(svg);
    DrawingChecks.textsKeepApart(page);
    DrawingChecks.textsLieOnTheSheet(page);
    assertThat(page.all("title")).isNotEmpty();
    assertThat(page.all("desc")).isNotEmpty();
    assertThat(svg).doesNotContain("NaN", "Infinity").endsWith("\n");
    assertThat(drawing.get()).as("same bytes again").isEqualTo(svg);
  }

  @Property(tries = 60)
  void rows(@ForAll Measures measures, @ForAll RowWay way, @ForAll long seed) {
    Random random = new Random(seed);
    Length pitch = mm(60 + random.nextInt(300));
    Length width = mm(100 + random.nextDouble() * (random.nextBoolean() ? 6000 : 40_000));
    RowDivision rows = RowDivision.of(width, pitch, mm(random.nextInt(90)), way).value();
    Length gap = mm(random.nextInt(2) * 10);
    holds(() -> RowsDrawing.of(rows).withGap(gap).titled("Rows").in(measures).toSvg());
  }

  @Property(tries = 60)
  void stops(@ForAll Measures measures, @ForAll RowWay way, @ForAll long seed) {
    Random random = new Random(seed);
    List<Stop> stops = new ArrayList<>(List.of(Stop.floorAbove("starting wall", Length.ZERO)));
    for (int i = 1; i < 1 + random.nextInt(18); i++) {
      Length low = mm(random.nextDouble() * 6000);
      Length high = low.plus(mm(random.nextInt(3) * 40));
      stops.add(random.nextBoolean() ? Stop.floorBelow("wall " + i, low, high) : Stop.floorAbove("a side of the chimney breast, wall " + i, low, high));
    }
    StartLine line = StartLine.choose(stops, Length.ZERO, mm(60 + random.nextInt(300)), mm(70), way).value();
    holds(() -> StartLineDrawing.of(line).titled("Stops").in(measures).toSvg());
  }

  @Property(tries = 60)
  void joints(@ForAll Measures measures, @ForAll long seed) {
    Random random = new Random(seed);
    double length = 1500 + random.nextInt(9000);
    List<List<Length>> rows = new ArrayList<>();
    for (int row = 0; row < 1 + random.nextInt(20); row++) {
      List<Length> joints = new ArrayList<>();
      for (double at = random.nextInt(8) * 200; at < length; at += 600 + random.nextInt(3) * 800) {
        joints.add(mm(at));
      }
      rows.add(joints);
    }
    holds(() -> JointsDrawing.of(JointLayout.of(rows), mm(length)).least(mm(300)).titled("A room").in(measures).toSvg());
  }

  @Property(tries = 40)
  void bars(@ForAll Measures measures, @ForAll long seed) {
    Random random = new Random(seed);
    List<TrimPiece> pieces = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(25); i++) {
      pieces.add(TrimPiece.of(random.nextBoolean() ? "wall " + i : "the long wall of the north bedroom", mm(20 + random.nextInt(2380))));
    }
    TrimCutting cutting = TrimCutting.of(pieces, List.of(TrimStock.sold(mm(2400))), mm(random.nextInt(4))).value();
    holds(() -> CutsDrawing.of(cutting).titled("Bars").in(measures).toSvg());
  }

  @Property(tries = 60)
  void straightedges(@ForAll Measures measures, @ForAll RestRule rule, @ForAll long seed) {
    Random random = new Random(seed);
    double height = random.nextInt(4) == 0 ? 0 : StrictMath.pow(10, random.nextInt(4) - 1);
    List<Length> heights = new ArrayList<>();
    for (int i = 0; i < 5 + random.nextInt(40); i++) {
      heights.add(mm(random.nextGaussian() * height));
    }
    Length spacing = mm(50 + random.nextInt(300));
    HeightProfile profile = HeightProfile.ofEqualSpacing(spacing, heights);
    Straightedge edge = Straightedge.of(profile.length().dividedBy(1 + random.nextInt(3), java.math.RoundingMode.DOWN));
    holds(() -> StraightedgeDrawing.of(profile, edge, rule).titled("A line").in(measures).toSvg());
  }

  @Property(tries = 100)
  void heights(@ForAll Measures measures, @ForAll ProfileKind kind, @ForAll long seed) {
    Random random = new Random(seed);
    HeightStack here = stack(random);
    HeightsDrawing drawing = HeightsDrawing.of(here).titled("A door").in(measures);
    HeightsDrawing other = random.nextInt(4) == 0 ? drawing
        : drawing.beyond(stack(random).fromSubfloorAt(mm(random.nextInt(60) - 30)));
    HeightsDrawing covered = random.nextInt(4) == 0 ? other : other.profile(kind);
    HeightsDrawing cut = random.nextBoolean() ? covered : covered.casing(here.total().plus(mm(1)));
    holds(() -> (seed % 2 == 0 ? cut : cut.leaf(mm(seed % 60))).toSvg());
  }

  private static HeightStack stack(Random random) {
    HeightStack stack = HeightStack.BARE;
    for (String name : Stream.of("filler", "underlay", "sound insulation of mineral fibre", "board").limit(random.nextInt(5)).toList()) {
      stack = stack.on(name, mm(random.nextInt(5) == 0 ? 60 : random.nextDouble() * 15));
    }
    return stack;
  }

  @Property(tries = 60)
  void pieces(@ForAll Measures measures, @ForAll long seed) {
    Random random = new Random(seed);
    double length = 200 + random.nextInt(2200);
    double width = 80 + random.nextInt(200);
    double from = length * (0.1 + random.nextDouble() * 0.5);
    double to = from + length * 0.3 * random.nextDouble() + 1;
    double deep = width * 0.8 * random.nextDouble();
    List<Point> corners = Stream.of(new double[][] {{0, 0}, {length, 0}, {length, width}, {to, width}, {to, width - deep}, {from, width - deep},
        {from, width}, {0, width}}).map(at -> Point.of(mm(at[0]), mm(at[1]))).distinct().toList();
    BoardPiece piece = BoardPiece.of("hall-1.2.3", Ring.of(corners.toArray(Point[]::new)));
    List<PipeAt> pipes = new ArrayList<>();
    for (int i = 1; i <= random.nextInt(3); i++) {
      pipes.add(new PipeAt("pipe " + i, Point.of(mm(random.nextDouble() * length), mm(random.nextDouble() * width)), mm(15 + random.nextInt(20))));
    }
    List<HoleCut> holes = pipes.isEmpty() ? List.of()
        : PipeHoles.of(pipes, List.of(piece), PipeAllowance.TWENTY_WIDER, CutOutLimits.COMMON_PRACTICE).value();
    holds(() -> PieceDrawing.of(piece).with(holes).in(measures).toSvg());
  }

  @Property(tries = 60)
  void seasons(@ForAll Measures measures, @ForAll long seed) {
    Random random = new Random(seed);
    MovementForecast forecast = MovementForecast.of(percent(6 + random.nextInt(6)), percent(5 + random.nextInt(3)), percent(8 + random.nextInt(6)),
        random.nextBoolean() ? Coefficient.NF_DTU_HARDWOOD : Coefficient.PLYWOOD);
    Length width = mm(100 + random.nextInt(12_000));
    holds(() -> SeasonsDrawing.of(forecast, width, width.min(mm(seed % 2 == 0 ? 0 : 12))).titled("A floor").in(measures).toSvg());
  }

  private static Percent percent(int number) {
    return Percent.of(BigDecimal.valueOf(number));
  }

  @Property(tries = 30)
  void charts(@ForAll long seed) {
    Random random = new Random(seed);
    List<Temperature> temperatures = Stream.generate(() -> Temperature.celsius(Integer.toString(random.nextInt(60) - 5))).limit(1 + random.nextInt(4)).toList();
    EquilibriumDrawing chart = EquilibriumDrawing.at(temperatures)
        .marking(AirClimate.of(temperatures.get(0), percent(5 + random.nextInt(91))))
        .within(ClimateLimits.all().get(random.nextInt(ClimateLimits.all().size())));
    holds(chart::toSvg);
  }
}
