package floorcalc.outline.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Areas of odd shapes in the units that people ask in. */
class OddShapesTest {
  private static final double SQUARE_FOOT = Length.parse("1 ft").times(Length.parse("1 ft")).toSquareMetres();

  private static double squareFeet(Area area) {
    return area.toSquareMetres() / SQUARE_FOOT;
  }

  private static Point feet(int x, int y) {
    return Point.of(Length.parse("1 ft").multipliedBy(x), Length.parse("1 ft").multipliedBy(y));
  }

  /** A house-shaped floor: a square of 6 by 10 and a gable of 6, 6 high: 60 + 6 x 6 / 2 = 78. */
  @Test
  void houseShape() {
    assertThat(squareFeet(Outline.of(Ring.of(feet(0, 0), feet(6, 0), feet(6, 10), feet(3, 16), feet(0, 10))).area()))
        .isCloseTo(78, within(1e-9));
  }

  /** 10 by 12 and a half circle of 6: 120 + 18 pi = 176.5487; as a chain within half a millimetre it is a little less. */
  @Test
  void roomWithAHalfCircle() {
    Area segment = Arc.of(Length.parse("12 ft"), Length.parse("6 ft")).value().segment();
    assertThat(squareFeet(Length.parse("10 ft").times(Length.parse("12 ft")).plus(segment))).isCloseTo(176.55, within(0.005));
    List<Point> corners = new ArrayList<>(List.of(feet(0, 0), feet(10, 0)));
    corners.addAll(WallShape.arc(feet(10, 0), feet(10, 12), Length.parse("6 ft"), Length.parse("0.5 mm")));
    corners.addAll(List.of(feet(10, 12), feet(0, 12)));
    double chain = squareFeet(Outline.of(Ring.of(corners)).area());
    // at most 2/3 of 0.5 mm times the arc of 18.85 ft: 0.0206 sq ft
    assertThat(chain).isBetween(176.5487 - 0.0206, 176.5487);
  }

  /** A round of 16 in: 64 pi sq in, 144 to the square foot: 1.396. */
  @Test
  void squareInches() {
    Area round = Arc.of(Length.parse("16 in"), Length.parse("8 in")).value().segment().multipliedBy(2);
    assertThat(squareFeet(round)).isCloseTo(1.396, within(0.0005));
    double squareInches = round.toSquareMetres() / Length.parse("1 in").times(Length.parse("1 in")).toSquareMetres();
    assertThat(squareInches / 144).isCloseTo(squareFeet(round), within(1e-12));
  }

  /** A bay of three walls on a room of 4 by 3 m: 12 + (4 + 2.8) / 2 x 0.6 = 14.04 m². */
  @Test
  void roomWithABay() {
    Point a = Point.ofMillimetres(0, 0);
    Point b = Point.ofMillimetres(4000, 0);
    List<Point> corners = new ArrayList<>(List.of(a));
    corners.addAll(WallShape.bay(a, b, Length.parse("600 mm"), Length.parse("2.8 m")));
    corners.addAll(Arrays.asList(b, Point.ofMillimetres(4000, 3000), Point.ofMillimetres(0, 3000)));
    assertThat(Outline.of(Ring.of(corners)).area()).isEqualTo(Area.ofSquareMetres("14.04"));
  }
}
