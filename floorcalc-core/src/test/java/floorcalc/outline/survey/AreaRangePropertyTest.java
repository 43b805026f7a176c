package floorcalc.outline.survey;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.OutlineCheck;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

/** Any room lies within the range that its walls allow, and the ends of the range are those of rooms that exist. */
class AreaRangePropertyTest {
  /** Walls are rounded to a nanometre: that changes an area by far less than a square millimetre. */
  private static final Area SLACK = Area.ofSquareMillimetres(1);

  @Provide
  Arbitrary<Ring> rooms() {
    return polygons(4, 4);
  }

  @Provide
  Arbitrary<Ring> manyWalls() {
    return polygons(5, 12);
  }

  /** Simple polygons, counter-clockwise, with walls from 10 mm on. */
  private static Arbitrary<Ring> polygons(int fewest, int most) {
    Arbitrary<Integer> place = Arbitraries.integers().between(0, 8000);
    return Combinators.combine(place, place).as(Point::ofMillimetres).list().ofMinSize(fewest).ofMaxSize(most)
        .map(Ring::of).map(ring -> ring.signedArea().isNegative() ? ring.reversed() : ring)
        .filter(ring -> OutlineCheck.faultsOf(ring, List.of()).isEmpty()
            && walls(ring).stream().allMatch(wall -> wall.compareTo(Length.ofMillimetres(10)) >= 0));
  }

  private static List<Length> walls(Ring ring) {
    return IntStream.range(0, ring.size()).mapToObj(ring::wallLength).toList();
  }

  private static void assertWithin(AreaRange range, Ring ring) {
    assertThat(ring.area()).isBetween(range.least().minus(SLACK), range.greatest().plus(SLACK));
    for (DiagonalRange diagonal : range.diagonals()) {
      assertThat(diagonal(ring, diagonal.from()).toMillimetres())
          .isBetween(diagonal.shortest().toMillimetres() - 0.001, diagonal.longest().toMillimetres() + 0.001);
    }
  }

  private static Length diagonal(Ring ring, int from) {
    return Ring.of(ring.corners().get(from - 1), ring.corners().get(from + 1)).wallLength(0);
  }

  @Property(tries = 1000)
  void anyRoomOfFourWallsIsWithin(@ForAll("rooms") Ring ring) {
    assertWithin(AreaRange.ofSides(walls(ring)).value(), ring);
    double worst = 0;
    double widest = 0;
    for (int i = 0; i < 4; i++) {
      worst = Math.max(worst, Math.abs(ring.angleDegrees(i) - 90));
      widest = Math.max(widest, ring.angleDegrees(i));
    }
    if (widest <= 180) {
      assertWithin(AreaRange.withoutReflexCorner(walls(ring)).value(), ring);
      assertThat(AreaRange.leastDegreesFromSquare(walls(ring))).isLessThan(worst + 1e-5);
    }
    if (worst <= 44) {
      assertWithin(AreaRange.nearSquare(walls(ring), worst + 1e-5).value(), ring);
    }
  }

  /** A second way: every shape is two triangles over a diagonal; walk that diagonal through all its lengths. */
  @Property(tries = 200)
  void endsAreReached(@ForAll("rooms") Ring ring) {
    List<Length> walls = walls(ring);
    AreaRange any = AreaRange.ofSides(walls).value();
    double least = Double.MAX_VALUE;
    double greatest = 0;
    for (int from = 1; from <= 2; from++) {
      DiagonalRange range = any.diagonals().get(from - 1);
      for (int i = 0; i <= 4000; i++) {
        double e = range.shortest().toMillimetres() + range.spread().toMillimetres() * i / 4000;
        double area = heron(walls.get(from - 1), walls.get(from), e) + heron(walls.get(from + 1), walls.get((from + 2) % 4), e);
        least = Math.min(least, area);
        greatest = Math.max(greatest, area);
      }
    }
    assertThat(any.least().toSquareMillimetres()).isCloseTo(least, within(2.0));
    assertThat(any.greatest().toSquareMillimetres()).isGreaterThanOrEqualTo(greatest - 1).isCloseTo(greatest, within(greatest * 1e-3));
  }

  private static double heron(Length u, Length v, double e) {
    double a = u.toMillimetres();
    double b = v.toMillimetres();
    double product = (a + b + e) * (a + b - e) * (e + a - b) * (e + b - a);
    return product > 0 ? Math.sqrt(product) / 4 : 0;
  }

  /** A parallelogram turned by some degrees is the smallest room within these degrees of square. */
  @Property(tries = 200)
  void parallelogramIsTheLimit(@ForAll("length") Length a, @ForAll("length") Length b,
      @ForAll @DoubleRange(min = 0, max = 45) double degrees) {
    AreaRange range = AreaRange.nearSquare(List.of(a, b, a, b), degrees).value();
    double cosine = StrictMath.cos(StrictMath.toRadians(degrees));
    assertThat(range.least().toSquareMillimetres()).isCloseTo(a.times(b).toSquareMillimetres() * cosine, within(1.1));
    assertThat(range.greatest().minus(a.times(b))).isBetween(Area.ZERO, SLACK);
  }

  @Provide
  Arbitrary<Length> length() {
    return Arbitraries.longs().between(100_000_000, 12_000_000_000L).map(Length::ofNanometres);
  }

  @Property(tries = 300)
  void moreWallsEncloseNoMoreThanOnACircle(@ForAll("manyWalls") Ring ring) {
    AreaRange range = AreaRange.ofSides(walls(ring)).value();
    assertWithin(range, ring);
    List<Length> shuffled = new ArrayList<>(walls(ring));
    Collections.reverse(shuffled);
    Collections.swap(shuffled, 0, 2);
    assertThat(AreaRange.ofSides(shuffled).value().greatest().minus(range.greatest()).abs()).isLessThanOrEqualTo(SLACK);
  }

  /** Corners on a circle, from some angles round it: the area is the bound itself. */
  @Property(tries = 300)
  void cornersOnACircleReachTheBound(@ForAll("angles") List<Integer> angles, @ForAll("length") Length radius) {
    List<Integer> sorted = angles.stream().sorted().toList();
    double r = radius.toNanometres();
    Ring ring = Ring.of(sorted.stream().map(angle -> StrictMath.toRadians(angle / 10.0)).map(angle -> Point.ofNanometres(
        Math.round(r * StrictMath.cos(angle)), Math.round(r * StrictMath.sin(angle)))).toList());
    AreaRange range = AreaRange.ofSides(walls(ring)).value();
    assertThat(range.greatest().toSquareMillimetres()).isCloseTo(ring.area().toSquareMillimetres(), within(1.1));
  }

  @Provide
  Arbitrary<List<Integer>> angles() {
    return Arbitraries.integers().between(0, 3599).list().uniqueElements().ofMinSize(4).ofMaxSize(12);
  }

  /** Walls from a nanometre to kilometres, however badly they go together: refused, or a range the right way round. */
  @Property(tries = 1000)
  void anyLengthsAtAll(@ForAll @Size(min = 3, max = 8) List<@DoubleRange(min = 0, max = 13) Double> powers, @ForAll boolean paired) {
    List<Length> walls = new ArrayList<>(powers.stream().map(power -> Length.ofNanometres((long) StrictMath.pow(10, power))).toList());
    if (paired) {
      walls.set(walls.size() - 1, walls.get(0));
      walls.set(2, walls.size() > 3 ? walls.get(1) : walls.get(0));
    }
    Length all = Sides.sum(walls);
    Assume.that(walls.stream().allMatch(wall -> wall.multipliedBy(2).compareTo(all) < 0));
    AreaRange any = AreaRange.ofSides(walls).value();
    assertThat(any.least()).isBetween(Area.ZERO, any.greatest());
    if (walls.size() == 4) {
      AreaRange convex = AreaRange.withoutReflexCorner(walls).value();
      assertThat(convex.least()).isBetween(any.least(), convex.greatest());
      double least = AreaRange.leastDegreesFromSquare(walls);
      for (double more : new double[] {0, 1e-12, 1e-6, 0.5}) {
        if (least + more <= 45) {
          AreaRange near = AreaRange.nearSquare(walls, least + more).value();
          assertThat(near.least()).isBetween(convex.least().minus(SLACK), near.greatest());
          assertThat(near.greatest()).isLessThanOrEqualTo(any.greatest().plus(SLACK));
        }
      }
    }
  }

  @Property(tries = 100)
  void stepsHold(@ForAll("rooms") Ring ring, @ForAll("manyWalls") Ring more) {
    assertStepsHold(AreaRange.ofSides(walls(ring)));
    assertStepsHold(AreaRange.withoutReflexCorner(walls(ring)));
    assertStepsHold(AreaRange.ofSides(walls(more)));
    double least = AreaRange.leastDegreesFromSquare(walls(ring));
    Assume.that(least < 44);
    assertStepsHold(AreaRange.nearSquare(walls(ring), least + 1));
    // The very least is one shape, to what a corner of a narrow room is sure to.
    AreaRange one = AreaRange.nearSquare(walls(ring), least).value();
    assertThat(one.greatest().toSquareMetres()).isCloseTo(one.least().toSquareMetres(), within(1e-4));
  }

  /**
   * Three lengths are rounded to half a nanometre each, 1.5 nm together. That says most of a triangle that is all but flat: with sides of 8, 4 and 4 m it has
   * √(16 · 8 · 8 · 0.0000000015) / 4 m² = 310 mm², and a room is two of them.
   */
  @Property(tries = 300)
  void withEitherDiagonalTheAreaIsThatOfTheRoom(@ForAll("rooms") Ring ring) {
    for (int i = 0; i < 4; i++) {
      Assume.that(ring.angleDegrees(i) <= 180);
    }
    for (int from = 1; from <= 2; from++) {
      Area area = AreaRange.withDiagonal(walls(ring), new Tie(from, from + 2, diagonal(ring, from))).value();
      assertThat(area.minus(ring.area()).abs()).isLessThanOrEqualTo(Area.ofSquareMillimetres(620));
    }
  }
}
