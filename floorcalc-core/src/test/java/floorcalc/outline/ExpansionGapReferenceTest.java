package floorcalc.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * The expansion gap of 26 shapes against closed formulas, which were checked against a general offset; the derivation
 * stands at the head of {@code reference/offset_area_formulas.csv}. Areas in square metres, lengths in metres.
 */
@Tag("reference")
class ExpansionGapReferenceTest {
  private static final double LAST_DIGIT = 0.5e-12;

  @ParameterizedTest(name = "{0} with a gap of {5} m")
  @CsvFileSource(resources = "/reference/offset_area_formulas.csv", useHeadersInDisplayName = true)
  void mitredGap(String shape, String area, String perimeter, double corners, String round, BigDecimal gapMetres,
      double innerArea, String innerRound, double innerPerimeter, String wkt) {
    // Two shapes are printed to a picometre; the corners of all others are whole nanometres.
    boolean finer = shape.equals("regular_hexagon_R3") || shape.equals("reflex_60deg_notch");
    Outline room = Wkt.parse(wkt, Wkt.Unit.METRES, finer ? RoundingMode.HALF_EVEN : RoundingMode.UNNECESSARY);
    assertThat(OutlineCheck.faultsOf(room)).isEmpty();
    assertPrinted(room.area().toSquareMetres(), area, room);
    assertPrinted(room.perimeter().toMillimetres() / 1000, perimeter, room);

    Length gap = Length.ofNanometres(gapMetres.movePointRight(9).longValueExact());
    Calculated<ExpansionGap> calculated = ExpansionGap.inset(room, gap);
    assertThat(calculated.findings()).isEmpty();
    assertThat(calculated.value().laid()).hasSize(1);
    Outline laid = calculated.value().laid().get(0);

    // Where all corners fall on whole nanometres there is no rounding; elsewhere each moves by up to 0.7 nm.
    boolean whole = isWhole(innerArea) && isWhole(innerPerimeter) && isRectilinear(room);
    double rounding = whole ? 0 : 1e-9 * room.perimeter().toMillimetres() / 1000;
    assertThat(laid.area().toSquareMetres()).isCloseTo(innerArea, within(LAST_DIGIT + rounding));
    assertThat(rounding / innerArea).isLessThan(1e-8);
    assertThat(laid.perimeter().toMillimetres() / 1000)
        .isCloseTo(innerPerimeter, within(LAST_DIGIT + (whole ? 0 : 4e-9 * room.size())));
    BigDecimal sum = (BigDecimal) calculated.steps().get(2).result();
    assertThat(sum.doubleValue()).isCloseTo(corners, within(1e-8)); // printed to twelve digits; corners are rounded
    assertThat(((Area) calculated.steps().get(3).result()).toSquareMetres())
        .isCloseTo(innerArea, within(LAST_DIGIT + rounding));
  }

  /** Within half of the last printed digit, and the rounding of the room's corners. */
  private static void assertPrinted(double actual, String printed, Outline room) {
    BigDecimal value = new BigDecimal(printed);
    double half = Math.scalb(Math.pow(10, -value.scale()), -1);
    assertThat(actual).isCloseTo(value.doubleValue(), within(half + (isRectilinear(room) ? 0 : 1e-9 * room.size())));
  }

  private static boolean isWhole(double metres) {
    return Math.abs(metres * 1e6 - Math.rint(metres * 1e6)) < 1e-4;
  }

  private static boolean isRectilinear(Outline room) {
    return room.rings().stream().allMatch(ring -> {
      for (int i = 0; i < ring.size(); i++) {
        if (ring.angleDegrees(i) % 90 != 0) {
          return false;
        }
      }
      return true;
    });
  }
}
