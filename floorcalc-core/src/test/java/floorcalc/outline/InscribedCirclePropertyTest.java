package floorcalc.outline;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** Widest circles and least widths of random stars of 3 to 60 corners, against another library that divides into squares its own way. */
class InscribedCirclePropertyTest {
  private static final double TOLERANCE = 0.01;

  @Property(tries = 200)
  void asAnotherLibraryFinds(@ForAll @IntRange(min = 3, max = 60) int corners, @ForAll long seed) throws ParseException {
    Outline room = star(corners, new Random(seed));
    Geometry other = new WKTReader().read(Wkt.write(room));
    InscribedCircle circle = InscribedCircle.of(room).value();
    double radius = circle.radius().toMillimetres();
    // The other's circle lies on the floor, so it is no wider than the bound; and it is no narrower than ours by more than its tolerance allows.
    double found = new MaximumInscribedCircle(other, TOLERANCE).getRadiusLine().getLength();
    assertThat(found).isLessThanOrEqualTo(circle.radiusAtMost().toMillimetres() + 1e-6);
    assertThat(found).isGreaterThanOrEqualTo(radius - 2 * TOLERANCE);
    assertThat(circle.radiusAtMost().minus(circle.radius())).isLessThanOrEqualTo(Length.ofNanometres(3));
    assertThat(room.locate(circle.centre())).isNotEqualTo(Containment.OUTSIDE);
    double width = LeastWidth.of(room).value().width().toMillimetres();
    assertThat(width).isCloseTo(new MinimumDiameter(other).getLength(), org.assertj.core.api.Assertions.within(1e-5));
    assertThat(2 * radius).isLessThanOrEqualTo(width + 1e-5);
  }

  private static Outline star(int corners, Random random) {
    long[] xs = new long[corners];
    long[] ys = new long[corners];
    for (int i = 0; i < corners; i++) {
      double radius = (500 + random.nextDouble() * 6000) * 1e6;
      double angle = 2 * StrictMath.PI * (i + random.nextDouble() * 0.9) / corners;
      xs[i] = (long) (radius * StrictMath.cos(angle));
      ys[i] = (long) (radius * StrictMath.sin(angle));
    }
    return Outline.of(Ring.ofNanometres(xs, ys));
  }
}
