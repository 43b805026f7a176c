package floorcalc.outline;

import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Rooms by chance, all sound: for properties of what is laid in them. */
public final class RandomRooms {
  private static final long MM = 1_000_000;

  private RandomRooms() {}

  /** Rectangles of 0.5 to 12 m, turned by any angle. */
  public static Arbitrary<Outline> rectangles() {
    Arbitrary<Long> side = Arbitraries.longs().between(500 * MM, 12_000 * MM);
    return Combinators.combine(side, side, directions()).as((w, h, turn) -> turn.toRoom(rectangle(0, 0, w, h)));
  }

  /** Rooms of 3 to 40 corners at random distances from their middle, 0.3 to 8 m: sharp and blunt corners of both kinds. */
  public static Arbitrary<Outline> stars() {
    Arbitrary<Long> radius = Arbitraries.longs().between(300 * MM, 8_000 * MM);
    Arbitrary<Double> jitter = Arbitraries.doubles().between(-0.35, 0.35);
    return Combinators.combine(radius, jitter).as(Spoke::new).list().ofMinSize(3).ofMaxSize(40).map(RandomRooms::star);
  }

  /** Combs: L, T, U and E shapes and all between, square or turned, with notches from 30 mm to 3 m. */
  public static Arbitrary<Outline> combs() {
    Arbitrary<Long> width = Arbitraries.longs().between(30, 3_000).map(mm -> mm * MM);
    Arbitrary<Long> height = Arbitraries.longs().between(2, 40).map(n -> n * 100 * MM);
    Arbitrary<Direction> turn = Arbitraries.oneOf(directions(), Arbitraries.just(Direction.ALONG_X));
    return Combinators.combine(Combinators.combine(width, height).as((w, h) -> new long[] {w, h}).list().ofMinSize(1)
        .ofMaxSize(9), turn).as((teeth, direction) -> direction.toRoom(comb(teeth)));
  }

  /** A room of 6 m by 5 m with up to five columns, some near each other or near a wall, turned by any angle. */
  public static Arbitrary<Outline> withColumns() {
    Arbitrary<Integer> cell = Arbitraries.integers().between(0, 19);
    Arbitrary<Long> size = Arbitraries.longs().between(40 * MM, 240 * MM);
    Arbitrary<Long> shift = Arbitraries.longs().between(1 * MM, 9 * MM);
    Arbitrary<Ring> column = Combinators.combine(cell, size, shift).as((c, s, d) -> {
      long x = c % 5 * 1_200 * MM + d;
      long y = c / 5 * 250 * MM + d;
      return rectangle(x, y, x + 1_000 * MM, y + s).shell();
    });
    return Combinators.combine(column.list().ofMaxSize(5).uniqueElements(ring -> ring.x(0) / (1_200 * MM) * 100
        + ring.y(0) / (250 * MM)), directions())
        .as((columns, turn) -> turn.toRoom(Outline.of(rectangle(0, 0, 6_000 * MM, 5_000 * MM).shell(), columns)));
  }

  /** All of them. */
  public static Arbitrary<Outline> all() {
    return Arbitraries.oneOf(rectangles(), stars(), combs(), withColumns());
  }

  /** Any direction. */
  public static Arbitrary<Direction> directions() {
    return Arbitraries.doubles().between(0, 360).ofScale(9).map(Direction::fromDegrees);
  }

  /** Gaps from 1 nm to 60 mm. */
  public static Arbitrary<Length> gaps() {
    return Arbitraries.longs().between(1, 60 * MM).map(Length::ofNanometres);
  }

  static Outline rectangle(long x0, long y0, long x1, long y1) {
    return Outline.of(Ring.ofNanometres(new long[] {x0, x1, x1, x0}, new long[] {y0, y0, y1, y1}));
  }

  private record Spoke(long radius, double jitter) { }

  private static Outline star(List<Spoke> spokes) {
    int n = spokes.size();
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double angle = 2 * StrictMath.PI * (i + spokes.get(i).jitter) / n;
      corners.add(Point.ofNanometres(StrictMath.round(spokes.get(i).radius * StrictMath.cos(angle)),
          StrictMath.round(spokes.get(i).radius * StrictMath.sin(angle))));
    }
    return Outline.of(Ring.of(corners));
  }

  private static Outline comb(List<long[]> teeth) {
    List<Point> corners = new ArrayList<>();
    corners.add(Point.ofNanometres(0, 0));
    long x = 0;
    for (long[] tooth : teeth) {
      addNew(corners, Point.ofNanometres(x, tooth[1]));
      x += tooth[0];
      addNew(corners, Point.ofNanometres(x, tooth[1]));
    }
    corners.add(Point.ofNanometres(x, 0));
    return Outline.of(Ring.of(corners));
  }

  private static void addNew(List<Point> corners, Point corner) {
    if (!corners.get(corners.size() - 1).equals(corner)) {
      corners.add(corner);
    }
  }
}
