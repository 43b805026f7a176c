package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.flatness.ToleranceSet;
import floorcalc.levels.Levels;
import floorcalc.levels.PreparationOptions;
import floorcalc.levels.SpotLevel;
import floorcalc.levels.SubfloorPreparation;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

class LevelsDrawingPropertyTest {
  private static final GeometryFactory JTS = new GeometryFactory();
  /** Places are hundredths of a millimetre on paper. */
  private static final double ROUNDING = 0.011;

  @Property(tries = 60)
  void textsKeepApartOnGrids(@ForAll("grids") Levels levels, @ForAll Measures measures) {
    SubfloorPreparation work = SubfloorPreparation.of(levels, ToleranceSet.named("DIN 18202 line 3"),
        PreparationOptions.grindingUpTo(Length.ofMillimetres(2))).value();
    check(levels, LevelsDrawing.of(levels).in(measures).with(work));
  }

  @Property(tries = 60)
  void textsKeepApartOnScatter(@ForAll("scatters") List<SpotLevel> spots, @ForAll Measures measures) {
    if (Levels.faultsOf(spots).isEmpty()) {
      Levels levels = Levels.of(spots);
      check(levels, LevelsDrawing.of(levels).in(measures));
      if (!levels.isGrid()) {
        SvgPage page = SvgPage.parse(LevelsDrawing.of(levels).toSvg());
        Geometry hull = hull(levels, paper(levels, page));
        assertThat(SvgPage.area(page.byId("-floor")).getArea()).as("the triangles cover the hull")
            .isCloseTo(hull.getArea(), within(hull.getLength() * ROUNDING));
      }
    }
  }

  /** Nothing overlaps, nothing is drawn outside the hull of the readings, and the same levels give the same bytes. */
  private static void check(Levels levels, LevelsDrawing drawing) {
    String svg = drawing.toSvg();
    SvgPage page = SvgPage.parse(svg);
    DrawingChecks.textsKeepApart(page);
    DrawingChecks.textsLieOnTheSheet(page);
    assertThat(drawing.toSvg()).as("same bytes again").isEqualTo(svg);
    Paper paper = paper(levels, page);
    Geometry hull = hull(levels, paper).buffer(ROUNDING);
    page.all("path").stream().filter(path -> path.getAttribute("class").equals("height") || path.getAttribute("id").endsWith("-floor"))
        .forEach(path -> {
          for (String part : path.getAttribute("d").substring(1).split("Z?[ML]|Z")) {
            String[] xy = part.split(" ");
            assertThat(hull.covers(JTS.createPoint(new Coordinate(Double.parseDouble(xy[0]), Double.parseDouble(xy[1])))))
                .as("%s lies within the hull", part).isTrue();
          }
        });
  }

  private static Geometry hull(Levels levels, Paper paper) {
    return JTS.createMultiPointFromCoords(levels.spots().stream()
        .map(spot -> new Coordinate(paper.x(spot.place().xNanometres()), paper.y(spot.place().yNanometres())))
        .toArray(Coordinate[]::new)).convexHull();
  }

  /** The sheet that was drawn on, by the height that it has. */
  private static Paper paper(Levels levels, SvgPage page) {
    Length left = levels.spots().stream().map(spot -> spot.place().x()).reduce(Length::min).orElseThrow();
    Length right = levels.spots().stream().map(spot -> spot.place().x()).reduce(Length::max).orElseThrow();
    Length low = levels.spots().stream().map(spot -> spot.place().y()).reduce(Length::min).orElseThrow();
    Length high = levels.spots().stream().map(spot -> spot.place().y()).reduce(Length::max).orElseThrow();
    String scale = page.words().stream().filter(text -> text.startsWith("Scale 1:")).findFirst().orElseThrow();
    return Paper.fit(Outline.of(Ring.of(Point.of(left, low), Point.of(right, low), Point.of(right, high), Point.of(left, high)))).stream()
        .filter(paper -> scale.startsWith("Scale 1:" + Words.grouped(paper.scale()) + " ")).findFirst().orElseThrow();
  }

  @Provide
  Arbitrary<Levels> grids() {
    Arbitrary<Integer> columns = Arbitraries.integers().between(3, 16);
    Arbitrary<Integer> rows = Arbitraries.integers().between(3, 12);
    Arbitrary<Integer> step = Arbitraries.integers().between(100, 2000);
    Arbitrary<List<Integer>> heights = Arbitraries.integers().between(-80, 80).list().ofSize(192);
    return Combinators.combine(columns, rows, step, heights).as((c, r, s, h) -> {
      List<SpotLevel> spots = new ArrayList<>();
      for (int i = 0; i < c * r; i++) {
        spots.add(spot((long) (i % c) * s, (long) (i / c) * s, h.get(i)));
      }
      return Levels.of(spots);
    });
  }

  @Provide
  Arbitrary<List<SpotLevel>> scatters() {
    Arbitrary<Integer> place = Arbitraries.integers().between(-6000, 9000);
    Arbitrary<SpotLevel> spot = Combinators.combine(place, place, Arbitraries.integers().between(-3000, 3000))
        .as((x, y, z) -> spot(x, y, z));
    return spot.list().ofMinSize(4).ofMaxSize(80).map(spots -> {
      Map<Object, SpotLevel> once = new LinkedHashMap<>();
      spots.forEach(one -> once.putIfAbsent(one.place(), one));
      return List.copyOf(once.values());
    });
  }

  /** Places in millimetres, the height in tenths. */
  private static SpotLevel spot(long x, long y, int tenths) {
    return SpotLevel.of(Length.ofMillimetres(x), Length.ofMillimetres(y), Length.ofNanometres(tenths * 100_000L));
  }
}
