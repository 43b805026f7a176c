package floorcalc.levels;

import static floorcalc.levels.Grids.mm;
import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.flatness.ToleranceSet;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LevelsTest {
  @Test
  void aPlaneIsFoundExactly() {
    // z = 1 mm per m along x and 2 mm per m along y: 0, 1, 2, 3 mm at the corners of a metre.
    Calculated<LevelPlane> calculated = Grids.of(1000, 1000, "0 1", "2 3").plane();
    LevelPlane plane = calculated.value();
    assertThat(plane.slopeAlongX()).isEqualByComparingTo("1");
    assertThat(plane.slopeAlongY()).isEqualByComparingTo("2");
    assertThat(plane.slope()).isEqualByComparingTo("2.236068"); // square root of 5
    assertThat(plane.fall()).isEqualTo(mm("3"));
    assertThat(plane.residualRange()).isEqualTo(Length.ZERO);
    // Down along (-1, -2): 180 + atan(2) degrees.
    assertThat(plane.directionOfFall().orElseThrow().degrees()).isCloseTo(243.434949, org.assertj.core.data.Offset.offset(1e-6));
    assertThat(plane.heightAt(Point.ofMillimetres(500, 500))).isEqualTo(mm("1.5"));
    assertStepsHold(calculated);
  }

  @Test
  void leastSquaresByHand() {
    // Corners of a metre: 0, 0, 0 and 4 mm. The right side is on average 2 mm higher than the left, the far side than the near one;
    // the mean is 1 mm. The plane is 1 + 2 (x - 0.5) + 2 (y - 0.5): -1, 1, 1, 3 mm. Residuals 1, -1, -1, 1 mm.
    Calculated<LevelPlane> calculated = Grids.of(1000, 1000, "0 0", "0 4").plane();
    LevelPlane plane = calculated.value();
    assertThat(plane.slopeAlongX()).isEqualByComparingTo("2");
    assertThat(plane.slopeAlongY()).isEqualByComparingTo("2");
    assertThat(plane.fall()).isEqualTo(mm("4"));
    assertThat(plane.residualRange()).isEqualTo(mm("2"));
    assertThat(plane.residual(plane.highestAbove())).isEqualTo(mm("1"));
    assertThat(plane.residual(plane.deepestBelow())).isEqualTo(mm("-1"));
    assertStepsHold(calculated);
  }

  @Test
  void aLevelFloorFallsNowhere() {
    LevelPlane plane = Grids.of(1000, 1000, "7 7", "7 7").plane().value();
    assertThat(plane.directionOfFall()).isEmpty();
    assertThat(plane.fall()).isEqualTo(Length.ZERO);
    assertThat(plane.slope()).isEqualByComparingTo("0");
  }

  @Test
  void highestAndLowest() {
    Levels levels = Grids.of(1000, 1000, "0 3 1", "-2 3 -2");
    assertThat(levels.highest().place()).isEqualTo(Point.ofMillimetres(1000, 0));
    assertThat(levels.lowest().place()).isEqualTo(Point.ofMillimetres(0, 1000));
    assertThat(levels).hasToString("6 levels from -2 mm to 3 mm");
  }

  @Test
  void scatteredReadingsHaveAPlaneButNoRows() {
    Levels levels = Levels.of(List.of(at(0, 0, "0"), at(2100, 300, "1"), at(700, 1900, "2"), at(1500, 1200, "1.5")));
    assertThat(levels.isGrid()).isFalse();
    assertThat(levels.plane().value().fall().isPositive()).isTrue();
    assertThatThrownBy(() -> GridFlatness.of(levels, ToleranceSet.COMMON_PRACTICE))
        .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("do not lie in rows and columns");
  }

  private static SpotLevel at(long x, long y, String height) {
    return SpotLevel.of(Length.ofMillimetres(x), Length.ofMillimetres(y), mm(height));
  }

  @Test
  void tooFewReadings() {
    assertThat(Levels.faultsOf(List.of(at(0, 0, "0"), at(1000, 0, "0")))).singleElement().satisfies(fault -> {
      assertThat(fault.kind()).isEqualTo(LevelFault.Kind.TOO_FEW);
      assertThat(fault.message()).isEqualTo("there must be at least 3 readings, but there are 2; read the floor at more places");
    });
  }

  @Test
  void aPlaceReadTwice() {
    assertThat(Levels.faultsOf(List.of(at(0, 0, "0"), at(1000, 0, "1"), at(0, 1000, "0"), at(1000, 0, "3"))))
        .singleElement().satisfies(fault -> {
          assertThat(fault.kind().code()).isEqualTo("place-read-twice");
          assertThat(fault.readings()).containsExactly(2, 4);
          assertThat(fault.message()).contains("readings 2 and 4 are both at x = 1000 mm, y = 0 mm, with heights 1 mm and 3 mm");
        });
  }

  @Test
  void readingsInLine() {
    assertThat(Levels.faultsOf(List.of(at(0, 0, "0"), at(1000, 500, "1"), at(3000, 1500, "0"))))
        .singleElement().extracting(LevelFault::kind).isEqualTo(LevelFault.Kind.IN_LINE);
    // Five metres long and 10 mm wide is a line too; 5 m by 500 mm is not.
    assertThat(Levels.faultsOf(List.of(at(0, 0, "0"), at(2500, 10, "1"), at(5000, 0, "0"))))
        .singleElement().extracting(LevelFault::kind).isEqualTo(LevelFault.Kind.IN_LINE);
    assertThat(Levels.faultsOf(List.of(at(0, 0, "0"), at(2500, 500, "1"), at(5000, 0, "0")))).isEmpty();
  }

  @Test
  void everythingWrongIsSaidAtOnce() {
    assertThatThrownBy(() -> Levels.of(List.of(at(0, 0, "0"), at(0, 0, "1"), at(2_000_000, 0, "0"))))
        .isInstanceOfSatisfying(BadLevelsException.class, bad -> assertThat(bad.faults()).extracting(LevelFault::kind)
            .containsExactly(LevelFault.Kind.READ_TWICE, LevelFault.Kind.BEYOND_LIMIT));
  }

  @Test
  void rowsOfUnequalLengthAreRefused() {
    assertThatThrownBy(() -> Grids.of(500, 500, "0 0 0", "0 0")).hasMessageContaining("row 2 has 2 heights, but row 1 has 3");
    assertThatThrownBy(() -> Grids.of(0, 500, "0 0", "0 0")).hasMessageContaining("distance along must be more than 0 mm");
  }

  @ParameterizedTest
  @CsvSource({"100, reading-off-by-100-mm", "-100.5, reading-off-by-100-mm", "25.4, reading-off-by-1-in",
      "1000, reading-off-by-1-m", "60, reading-stands-out"})
  void aSlipIsNamed(String slip, String code) {
    List<Finding> doubts = withSlip(mm(slip), 8);
    assertThat(doubts).singleElement().satisfies(doubt -> {
      assertThat(doubt.code()).isEqualTo(code);
      assertThat(doubt.where()).isEqualTo("x = 3000 mm, y = 1000 mm");
      assertThat(doubt.message()).startsWith("reading 9 (").contains("ead it again");
    });
  }

  /** Five by three readings at about 1200 mm, even within a millimetre. */
  private static List<Finding> withSlip(Length slip, int reading) {
    List<SpotLevel> spots = new ArrayList<>(Grids.of(1000, 1000, "1200 1201 1200 1199 1200", "1201 1200 1200 1201 1200",
        "1199 1200 1201 1200 1200").spots());
    SpotLevel spot = spots.get(reading);
    spots.set(reading, new SpotLevel(spot.place(), spot.height().plus(slip)));
    return Levels.of(spots).doubts();
  }

  @Test
  void soundReadingsRaiseNoDoubt() {
    assertThat(withSlip(Length.ZERO, 0)).isEmpty();
    assertThat(withSlip(mm("5"), 7)).isEmpty(); // a bump, and no slip
  }

  @Test
  void aReadingInAnotherUnitIsNamed() {
    // 1201 mm written as 120.1 (centimetres) is 1080.9 mm too low.
    assertThat(withSlip(mm("-1080.9"), 8)).singleElement().satisfies(doubt -> {
      assertThat(doubt.code()).isEqualTo("reading-in-other-unit");
      assertThat(doubt.message()).contains("centimetres");
    });
  }

  @Test
  void wholeSetsInAnotherUnitAreNamed() {
    assertThat(Grids.of(1, 1, "0 1", "2 3").doubts()).extracting(Finding::code)
        .containsExactly("floor-in-other-unit", "heights-in-other-unit");
    assertThat(Grids.of(1000, 1000, "0 150", "2 300").doubts()).extracting(Finding::code).containsExactly("heights-in-other-unit");
    assertThat(Grids.of(1000, 1000, "1.2 1.201", "1.203 1.2").doubts()).extracting(Finding::code)
        .containsExactly("heights-in-other-unit");
  }

  @Test
  void aGridMayHaveUnequalStepsAndMissingCorners() {
    List<SpotLevel> spots = new ArrayList<>();
    for (long x : new long[] {0, 500, 900, 2000}) {
      for (long y : new long[] {100, 700, 1500}) {
        if (x < 2000 || y < 1500) {
          spots.add(at(x, y, "0"));
        }
      }
    }
    LevelGrid grid = Levels.of(spots).grid();
    assertThat(grid.gaps()).isEqualTo(1);
    // Three rows and four columns, of which the last has two readings only; at these steps no diagonal goes straight on.
    assertThat(grid.lines).extracting(line -> line.way() + " " + line.size()).containsExactly("ROW 4", "ROW 4", "ROW 3",
        "COLUMN 3", "COLUMN 3", "COLUMN 3");
  }

  @Test
  void noEdgeLiesAcrossAMissingReading() {
    List<SpotLevel> spots = new ArrayList<>(Grids.of(500, 500, "0 0 0 0 0", "0 0 0 0 0", "0 0 0 0 0").spots());
    spots.remove(7); // the middle of the middle row
    LevelGrid grid = Levels.of(spots).grid();
    assertThat(grid.lines.stream().filter(line -> line.way() == LineWay.ROW)).extracting(GridLine::number)
        .containsExactly(1, 3);
    assertThat(grid.lines.stream().filter(line -> line.way() == LineWay.COLUMN)).extracting(GridLine::number)
        .containsExactly(1, 2, 4, 5);
    // Of the six diagonals of three all meet the middle or pass beside it through cells that lack a corner.
    assertThat(grid.lines.stream().filter(line -> line.way().words().contains("diagonal"))).isEmpty();
  }

  @Test
  void diagonalsOfASquareGrid() {
    LevelGrid grid = Grids.of(500, 500, "0 0 0 0", "0 0 0 0", "0 0 0 0").grid();
    // Of 3 by 4 readings two diagonals each way have three.
    assertThat(grid.lines.stream().filter(line -> line.way() == LineWay.RISING_DIAGONAL)).hasSize(2);
    assertThat(grid.lines.stream().filter(line -> line.way() == LineWay.FALLING_DIAGONAL)).hasSize(2)
        .allSatisfy(line -> assertThat(line.at()[2]).isCloseTo(1000e6 * Math.sqrt(2), org.assertj.core.data.Offset.offset(1.0)));
  }
}
