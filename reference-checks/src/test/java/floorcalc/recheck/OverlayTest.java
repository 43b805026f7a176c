package floorcalc.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

class OverlayTest {
  /**
   * Two boards side by side whose long edges lie on one line but for the rounding of their corners. Each is 388.210579 by 94.875198 mm; crossed with
   * floating places they came out as lying on each other by 31 178 mm2.
   */
  @Test
  void boardsThatTouchDoNotLieOnEachOther() {
    Polygon first = polygon(431.546178, 223.478997, 487.762158, -160.639757, 581.637351, -146.901073, 525.421371, 237.217681);
    Polygon second = polygon(459.654168, 31.41962, 403.438188, 415.538374, 309.562996, 401.79969, 365.778976, 17.680936);
    // The edge that they share is at most 388.210579 mm long, and each corner is off by half a nanometre at most: 388.2 mm x 2 nm < 0.001 mm2.
    assertThat(Overlay.overlap(first, second)).isLessThan(0.001);
    assertThat(Overlay.overlap(first, first)).isBetween(388.210579 * 94.875198 - 0.001, 388.210579 * 94.875198 + 0.001);
  }

  private static Polygon polygon(double... places) {
    Coordinate[] corners = new Coordinate[places.length / 2 + 1];
    for (int i = 0; i < corners.length - 1; i++) {
      corners[i] = new Coordinate(places[2 * i], places[2 * i + 1]);
    }
    corners[corners.length - 1] = corners[0];
    return Shapes.GEOMETRY.createPolygon(corners);
  }
}
