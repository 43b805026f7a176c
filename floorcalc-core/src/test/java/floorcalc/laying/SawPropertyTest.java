package floorcalc.laying;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class SawPropertyTest {
  /**
   * A star-shaped floor with a star-shaped hole, seeded; corners on a grid of the given step, so that lines meet corners. From
   * six corners on they are at most 1.8 / 6 of a turn apart, 108°, and the sides no nearer to the middle than 2 m · cos 54° =
   * 1.18 m: beyond the hole, whose corners are within 0.9 m.
   */
  static List<Loop> star(long seed, int corners, long grid) {
    Random random = new Random(seed);
    return List.of(Loop.of(ring(random, corners, 2_000_000_000L, 4_000_000_000L, grid)),
        Loop.of(ring(random, 3 + corners / 3, 300_000_000L, 900_000_000L, grid).reversed()));
  }

  private static Ring ring(Random random, int corners, long least, long most, long grid) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = 2 * StrictMath.PI * (i + 0.8 * random.nextDouble()) / corners;
      double radius = least + random.nextDouble() * (most - least);
      long x = (long) (radius * StrictMath.cos(angle)) / grid * grid;
      long y = (long) (radius * StrictMath.sin(angle)) / grid * grid;
      points.add(Point.ofNanometres(x, y));
    }
    return Ring.of(points);
  }

  static BigInteger twiceArea(List<Loop> loops) {
    return loops.stream().map(Loop::twiceArea).reduce(BigInteger.ZERO, BigInteger::add);
  }

  /** The area is kept to what rounding the new corners can change: a nanometre over the length of the sides cut. */
  @Property(tries = 500)
  void partsAddUpToTheWhole(@ForAll long seed, @ForAll @IntRange(min = 6, max = 30) int corners,
      @ForAll @IntRange(min = -30, max = 30) int line, @ForAll @IntRange(min = 0, max = 1) int way) {
    List<Loop> floor = star(seed, corners, 100_000_000L);
    long at = line * 100_000_000L;
    Saw.Parts parts = way == 0 ? Saw.level(floor, at) : Saw.upright(floor, at);

    BigInteger lost = twiceArea(floor).subtract(twiceArea(parts.low())).subtract(twiceArea(parts.high())).abs();
    assertThat(lost).isLessThan(BigInteger.valueOf(4L * 8_000_000_000L * corners));
    for (Loop loop : parts.low()) {
      assertThat(way == 0 ? loop.maxY : loop.maxX).isLessThanOrEqualTo(at);
    }
    for (Loop loop : parts.high()) {
      assertThat(way == 0 ? loop.minY : loop.minX).isGreaterThanOrEqualTo(at);
    }
  }

  @Property(tries = 200)
  void lowAndHighPartsBorderOnTheSameStretches(@ForAll long seed, @ForAll @IntRange(min = 6, max = 30) int corners,
      @ForAll @IntRange(min = -20, max = 20) int line) {
    // Off the grid of the corners no side lies on the line, so both parts border on it alike.
    long at = line * 100_000_000L + 50_000_000L;
    Saw.Parts parts = Saw.level(star(seed, corners, 100_000_000L), at);

    assertThat(borders(parts.low(), at)).isEqualTo(borders(parts.high(), at));
  }

  private static long borders(List<Loop> loops, long at) {
    return Patch.of(loops).stream().mapToLong(patch -> Contacts.total(patch.contacts(at, false))).sum();
  }

  @Property(tries = 200)
  void stripsByHalvingEqualCutsOneByOne(@ForAll long seed, @ForAll @IntRange(min = 6, max = 20) int corners) {
    List<Loop> floor = star(seed, corners, 1);
    long[] lines = {-3_000_000_000L, -1_234_567_890L, -5L, 700_000_000L, 1_900_000_000L};
    List<List<Loop>> strips = Strips.level(floor, lines);
    List<Loop> rest = floor;
    for (int k = 0; k < lines.length; k++) {
      Saw.Parts parts = Saw.level(rest, lines[k]);
      BigInteger difference = twiceArea(strips.get(k)).subtract(twiceArea(parts.low())).abs();
      assertThat(difference).isLessThan(BigInteger.valueOf(8_000_000_000L * corners));
      rest = parts.high();
    }
    assertThat(strips).hasSize(lines.length + 1);
  }
}
