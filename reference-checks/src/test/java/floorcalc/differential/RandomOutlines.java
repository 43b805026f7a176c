package floorcalc.differential;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.OutlineCheck;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Sound outlines made by chance: right-angled, slanted, star-shaped and convex, straight or turned, with and without voids, in
 * whole millimetres or nanometres, near the origin or up to 9 km from it.
 */
final class RandomOutlines {
  private static final long MILLIMETRE = 1_000_000;
  private static final long FARTHEST = 9_000_000 * MILLIMETRE;

  private static final double SMALLEST = 5e8;
  private static final double LARGEST = 2e10;

  private final SplittableRandom random;
  private final double largest;

  /** Rooms of half a metre to some 20 m. */
  RandomOutlines(long seed) {
    this(seed, LARGEST);
  }

  /** Rooms of half a metre to so many nanometres across. */
  RandomOutlines(long seed, double largest) {
    random = new SplittableRandom(seed);
    this.largest = largest;
  }

  /** Where the room stands. */
  enum Place { NEAR, FAR }

  /** {@return the next sound outline} */
  Outline next(Place place) {
    while (true) {
      Outline outline = random.nextInt(4) == 0 ? star() : random.nextInt(3) == 0 ? convex() : chains();
      if (place == Place.FAR) {
        outline = outline.moved(far(), far());
      }
      if (OutlineCheck.faultsOf(outline).isEmpty()) {
        return outline;
      }
    }
  }

  /** {@return the next sound convex room without voids, near the origin} */
  Outline nextConvex() {
    while (true) {
      Outline outline = convex();
      Ring walls = outline.shell();
      // Rounded to whole millimetres a corner between two near ones may come to lie inside.
      if (OutlineCheck.faultsOf(outline).isEmpty()
          && IntStream.range(0, walls.size()).allMatch(corner -> walls.angleDegrees(corner) < 180)) {
        return outline;
      }
    }
  }

  private Length far() {
    return Length.ofNanometres(random.nextLong(-FARTHEST, FARTHEST));
  }

  /** A ring around the origin whose corners come in the order of their bearing; voids in rings nearer to the middle. */
  private Outline star() {
    long unit = unit();
    int corners = random.nextInt(3, 30);
    double size = size();
    double[] bearings = random.doubles(corners, 0, 2 * Math.PI).sorted().toArray();
    List<double[]> shell = new ArrayList<>();
    for (double bearing : bearings) {
      double radius = size * random.nextDouble(0.4, 1);
      shell.add(new double[] {radius * StrictMath.cos(bearing), radius * StrictMath.sin(bearing)});
    }
    List<List<double[]>> voids = new ArrayList<>();
    int columns = random.nextInt(3);
    for (int k = 0; k < columns; k++) {
      double middle = 2 * Math.PI * (k + random.nextDouble()) / columns;
      voids.add(polygon(size * 0.2 * StrictMath.cos(middle), size * 0.2 * StrictMath.sin(middle), size * 0.1));
    }
    return outline(shell, voids, unit, 0);
  }

  private List<double[]> polygon(double x, double y, double radius) {
    int corners = random.nextInt(3, 7);
    List<double[]> ring = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double bearing = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
      ring.add(new double[] {x + radius * StrictMath.cos(bearing), y + radius * StrictMath.sin(bearing)});
    }
    return ring;
  }

  /** Corners of an ellipse, turned. */
  private Outline convex() {
    long unit = unit();
    int corners = random.nextInt(3, 16);
    double width = size();
    double height = width * random.nextDouble(0.2, 1);
    double[] bearings = random.doubles(corners, 0, 2 * Math.PI).sorted().toArray();
    List<double[]> shell = new ArrayList<>();
    for (double bearing : bearings) {
      shell.add(new double[] {width * StrictMath.cos(bearing), height * StrictMath.sin(bearing)});
    }
    return outline(shell, List.of(), unit, turn());
  }

  /** A lower and an upper chain of walls from left to right, in steps or slanted, with columns between them. */
  private Outline chains() {
    long unit = unit();
    boolean inSteps = random.nextBoolean();
    int parts = random.nextInt(1, 9);
    double size = size();
    double[] at = new double[parts + 1];
    for (int i = 1; i <= parts; i++) {
      at[i] = at[i - 1] + size / parts * random.nextDouble(0.3, 1.7);
    }
    List<double[]> lower = new ArrayList<>();
    List<double[]> upper = new ArrayList<>();
    List<List<double[]>> voids = new ArrayList<>();
    for (int i = 0; i < parts; i++) {
      double low = -size * random.nextDouble(0.1, 0.6);
      double high = size * random.nextDouble(0.1, 0.6);
      lower.add(new double[] {at[i], low});
      upper.add(new double[] {at[i], high});
      if (inSteps) {
        lower.add(new double[] {at[i + 1], low});
        upper.add(new double[] {at[i + 1], high});
      } else if (i + 1 == parts) {
        lower.add(new double[] {at[i + 1], low / 2});
        upper.add(new double[] {at[i + 1], high / 2});
      }
      if (inSteps && random.nextInt(3) == 0) {
        double left = at[i] + (at[i + 1] - at[i]) * 0.25;
        double right = at[i] + (at[i + 1] - at[i]) * random.nextDouble(0.4, 0.8);
        double up = 0.05 * size;
        voids.add(List.of(new double[] {left, -up}, new double[] {right, -up}, new double[] {right, up}, new double[] {left, up}));
      }
    }
    List<double[]> shell = new ArrayList<>(lower);
    for (int i = upper.size() - 1; i >= 0; i--) {
      shell.add(upper.get(i));
    }
    return outline(shell, voids, unit, turn());
  }

  private long unit() {
    return random.nextBoolean() ? MILLIMETRE : 1;
  }

  private double turn() {
    return random.nextBoolean() ? 0 : random.nextDouble(2 * Math.PI);
  }

  private double size() {
    return random.nextDouble(SMALLEST, largest);
  }

  private static Outline outline(List<double[]> shell, List<List<double[]>> voids, long unit, double turn) {
    return Outline.of(ring(shell, unit, turn), voids.stream().map(ring -> ring(ring, unit, turn)).toList());
  }

  private static Ring ring(List<double[]> corners, long unit, double turn) {
    double cos = StrictMath.cos(turn);
    double sin = StrictMath.sin(turn);
    return Ring.of(corners.stream().map(c -> Point.ofNanometres(
        unit * Math.round((c[0] * cos - c[1] * sin) / unit), unit * Math.round((c[0] * sin + c[1] * cos) / unit))).toList());
  }
}
