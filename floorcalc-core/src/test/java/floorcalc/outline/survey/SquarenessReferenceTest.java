package floorcalc.outline.survey;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Diagonals, angles and areas against printed and constructed ones; the sources stand in the files. */
@Tag("reference")
class SquarenessReferenceTest {
  private static final Length TENTH = Length.ofNanometres(100_000);

  /** Figures without a unit are read as metres. */
  private static Length metres(BigDecimal metres) {
    return Length.ofNanometres(metres.movePointRight(9).longValueExact());
  }

  private static Length millimetres(BigDecimal millimetres) {
    return Length.ofNanometres(millimetres.movePointRight(6).longValueExact());
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/reference/survey_squareness_rectangles.csv", useHeadersInDisplayName = true)
  void diagonalOfARectangle(String id, BigDecimal a, BigDecimal b, BigDecimal p, BigDecimal q, BigDecimal published,
      BigDecimal angle, BigDecimal area, String status, String source) {
    Calculated<Length> diagonal = Squareness.squareDiagonal(metres(a), metres(b));
    assertStepsHold(diagonal);
    double metres = diagonal.value().toMillimetres() / 1000;
    assertThat(metres).isCloseTo(published.doubleValue(), within(5e-5)).isCloseTo(p.doubleValue(), within(5e-7));
    Calculated<List<CornerSquareness>> room = Squareness.ofWallsAndDiagonals(
        List.of(metres(a), metres(b), metres(a), metres(b)), diagonal.value(), diagonal.value(), Length.ZERO.plus(TENTH));
    assertThat(room.value()).allSatisfy(corner -> assertThat(90 + corner.degrees()).isCloseTo(angle.doubleValue(), within(5e-7)));
    assertThat(room.findings()).extracting(Finding::code).containsExactly("rectangle");
    Area found = AreaRange.nearSquare(List.of(metres(a), metres(b), metres(a), metres(b)), 0).value().greatest();
    assertThat(found).isEqualTo(Area.ofSquareMetres(area.toPlainString()));
  }

  /** Forward, from the coordinates to what a tape and a bevel would show. */
  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/reference/survey_quadrilaterals_constructed.csv", useHeadersInDisplayName = true)
  void fromCoordinates(String id, String places, BigDecimal ab, BigDecimal bc, BigDecimal cd, BigDecimal da, BigDecimal ac,
      BigDecimal bd, BigDecimal angleA, BigDecimal angleB, BigDecimal angleC, BigDecimal angleD, BigDecimal area, String note) {
    Ring ring = ring(places);
    List<BigDecimal> walls = List.of(ab, bc, cd, da);
    List<BigDecimal> angles = List.of(angleA, angleB, angleC, angleD);
    List<CornerSquareness> corners = Squareness.of(ring).value();
    for (int i = 0; i < 4; i++) {
      assertThat(ring.wallLength(i).toMillimetres()).isCloseTo(walls.get(i).doubleValue(), within(5e-5));
      assertThat(90 + corners.get(i).degrees()).isCloseTo(angles.get(i).doubleValue(), within(1e-6));
    }
    assertThat(ring.area().toSquareMillimetres()).isCloseTo(area.doubleValue(), within(5e-5));
  }

  /** Backward: walls and diagonals are printed to 0.0001 mm, so angles follow to 0.00001 degrees and areas to 2 mm². */
  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/reference/survey_quadrilaterals_constructed.csv", useHeadersInDisplayName = true)
  void fromTheTape(String id, String places, BigDecimal ab, BigDecimal bc, BigDecimal cd, BigDecimal da, BigDecimal ac,
      BigDecimal bd, BigDecimal angleA, BigDecimal angleB, BigDecimal angleC, BigDecimal angleD, BigDecimal area, String note) {
    List<Length> walls = List.of(millimetres(ab), millimetres(bc), millimetres(cd), millimetres(da));
    List<BigDecimal> angles = List.of(angleA, angleB, angleC, angleD);
    Calculated<List<CornerSquareness>> room = Squareness.ofWallsAndDiagonals(walls, millimetres(ac), millimetres(bd), TENTH);
    assertStepsHold(room);
    double worst = 0;
    for (int i = 0; i < 4; i++) {
      assertThat(90 + room.value().get(i).degrees()).isCloseTo(angles.get(i).doubleValue(), within(1e-5));
      worst = Math.max(worst, Math.abs(room.value().get(i).degrees()));
    }
    assertThat(room.findings()).extracting(Finding::code).containsExactly(switch (id) {
      case "Q1", "Q6" -> new String[] {"rectangle"};
      case "Q2" -> new String[] {"parallelogram"};
      case "Q3" -> new String[] {"equal-diagonals-no-rectangle"};
      default -> new String[0];
    });
    for (Tie diagonal : List.of(new Tie(1, 3, millimetres(ac)), new Tie(2, 4, millimetres(bd)))) {
      assertThat(AreaRange.withDiagonal(walls, diagonal).value().toSquareMillimetres()).isCloseTo(area.doubleValue(), within(2.0));
    }
    AreaRange range = AreaRange.nearSquare(walls, worst + 1e-4).value();
    assertThat(area.doubleValue()).isBetween(range.least().toSquareMillimetres() - 2, range.greatest().toSquareMillimetres() + 2);
  }

  private static Ring ring(String places) {
    return Ring.of(Arrays.stream(places.split(";")).map(place -> place.split(" "))
        .map(xy -> Point.of(Length.ofMillimetres(xy[0]), Length.ofMillimetres(xy[1]))).toList());
  }
}
