package floorcalc.differential;

import floorcalc.outline.network.Held;
import floorcalc.outline.network.NetworkPoint;
import floorcalc.outline.network.Observation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * A network made by chance, in millimetres: points that are known, what would be measured between them with normal errors,
 * and approximate places. Every point is fixed by the points before it and measured again by chance.
 *
 * @param truth where the points are, x and y of each in turn
 * @param points the points with their approximate places
 * @param observations what was measured
 */
record RandomNetwork(double[] truth, List<NetworkPoint> points, List<Observation> observations) {

  /** How the points lie. */
  enum Shape {
    /** All over a square. */
    SPREAD,
    /** Along a strip, a fifth as wide as it is long. */
    STRIP,
    /** In two groups at the ends of a corridor. */
    TWO_GROUPS
  }

  /** What is held. */
  enum Datum {
    /** Two points. */
    TWO_POINTS,
    /** One point, and one coordinate of another. */
    POINT_AND_COORDINATE,
    /** All points of the first three. */
    THREE_POINTS,
    /** None. */
    FREE
  }

  /** Whether some of what fixes the points is exact. */
  enum Exact {
    /** None is. */
    NONE,
    /** About a third is; what is exact never contradicts itself. */
    SOME
  }

  /** What is measured. */
  enum Measured {
    /** Distances alone. */
    DISTANCES,
    /** Distances and angles. */
    WITH_ANGLES,
    /** Distances, angles and bearings. */
    WITH_BEARINGS
  }

  static RandomNetwork of(SplittableRandom random, Shape shape, Datum datum, Measured measured, Exact exact) {
    int count = random.nextInt(4, 21);
    double size = StrictMath.pow(10, random.nextDouble(2, 5));
    double[] truth = places(random, shape, count, size);
    List<Observation> observations = new ArrayList<>();
    double distanceDeviation = size * StrictMath.pow(10, random.nextDouble(-5, -3));
    double angleDeviation = StrictMath.pow(10, random.nextDouble(-3, -0.5));
    Reader reader = new Reader(random, truth, observations, distanceDeviation, angleDeviation);
    reader.distance(0, 1);
    if (measured == Measured.WITH_BEARINGS) {
      reader.bearing(0, 1);
    }
    for (int i = 2; i < count; i++) {
      int[] near = bestBefore(truth, i);
      reader.distance(near[0], i);
      if (measured == Measured.DISTANCES || random.nextBoolean()) {
        reader.distance(near[1], i);
      } else if (measured == Measured.WITH_BEARINGS && random.nextBoolean()) {
        reader.bearing(near[0], i);
      } else {
        reader.angle(near[0], near[1], i);
      }
    }
    if (exact == Exact.SOME) {
      // What fixes a point by the points before it can be exact whatever it says; the first three points may be held.
      observations.replaceAll(o -> fixesALaterPoint(o) && random.nextInt(3) == 0 ? exactly(o) : o);
    }
    int more = random.nextInt(0, 2 * count);
    for (int k = 0; k < more; k++) {
      int[] three = random.ints(0, count).distinct().limit(3).toArray();
      int kind = random.nextInt(1 + measured.ordinal());
      if (kind == 0) {
        reader.distance(three[0], three[1]);
      } else if (kind == 1) {
        reader.angle(three[0], three[1], three[2]);
      } else {
        reader.bearing(three[0], three[1]);
      }
    }
    double shift = Math.min(20 * distanceDeviation, size / 100 / count);
    return new RandomNetwork(truth, approximate(random, truth, datum, shift), List.copyOf(observations));
  }

  private static boolean fixesALaterPoint(Observation o) {
    return Math.max(number(o.to()), number(o.from())) > 2;
  }

  private static int number(String name) {
    return Integer.parseInt(name.substring(1));
  }

  private static Observation exactly(Observation o) {
    return withDeviation(o, 0);
  }

  /** The same observation with another standard deviation. */
  static Observation withDeviation(Observation o, double deviation) {
    return switch (o.kind()) {
      case DISTANCE -> Observation.distance(o.from(), o.to(), o.value(), deviation);
      case ANGLE -> Observation.angle(o.at(), o.from(), o.to(), o.value(), deviation);
      case BEARING -> Observation.bearing(o.from(), o.to(), o.value(), deviation);
    };
  }

  private static double[] places(SplittableRandom random, Shape shape, int count, double size) {
    double turn = random.nextDouble(2 * Math.PI);
    double[] places = new double[2 * count];
    for (int i = 0; i < count; i++) {
      double x;
      double y;
      do {
        x = random.nextDouble(size);
        y = random.nextDouble(size);
        if (shape == Shape.STRIP) {
          y /= 5;
        } else if (shape == Shape.TWO_GROUPS) {
          x = x / 5 + (i % 2 == 0 ? 0 : size);
          y /= 5;
        }
      } while (nearest(places, i, turned(x, y, turn)) < size / 100);
      double[] place = turned(x, y, turn);
      places[2 * i] = place[0];
      places[2 * i + 1] = place[1];
    }
    return places;
  }

  private static double[] turned(double x, double y, double turn) {
    return new double[] {x * StrictMath.cos(turn) - y * StrictMath.sin(turn), x * StrictMath.sin(turn) + y * StrictMath.cos(turn)};
  }

  private static double nearest(double[] places, int count, double[] place) {
    return IntStream.range(0, count).mapToDouble(i -> StrictMath.hypot(places[2 * i] - place[0], places[2 * i + 1] - place[1]))
        .min().orElse(Double.POSITIVE_INFINITY);
  }

  /** Of the points before, the two between which the new one is fixed best: nearest to a right angle. */
  private static int[] bestBefore(double[] truth, int i) {
    return IntStream.range(0, i).boxed()
        .flatMap(a -> IntStream.range(0, a).mapToObj(b -> new int[] {a, b}))
        .max(Comparator.comparingDouble(pair -> Math.abs(sineAt(truth, i, pair)))).orElseThrow();
  }

  private static double sineAt(double[] truth, int i, int[] pair) {
    double ax = truth[2 * pair[0]] - truth[2 * i];
    double ay = truth[2 * pair[0] + 1] - truth[2 * i + 1];
    double bx = truth[2 * pair[1]] - truth[2 * i];
    double by = truth[2 * pair[1] + 1] - truth[2 * i + 1];
    return (ax * by - ay * bx) / StrictMath.hypot(ax, ay) / StrictMath.hypot(bx, by);
  }

  private static List<NetworkPoint> approximate(SplittableRandom random, double[] truth, Datum datum, double shift) {
    List<NetworkPoint> points = new ArrayList<>();
    boolean across = Math.abs(truth[2] - truth[0]) > Math.abs(truth[3] - truth[1]);
    for (int i = 0; i < truth.length / 2; i++) {
      Held held = switch (datum) {
        case TWO_POINTS -> i < 2 ? Held.BOTH : Held.NONE;
        case THREE_POINTS -> i < 3 ? Held.BOTH : Held.NONE;
        case POINT_AND_COORDINATE -> i == 0 ? Held.BOTH : i > 1 ? Held.NONE : across ? Held.Y : Held.X;
        case FREE -> Held.NONE;
      };
      double dx = held == Held.BOTH || held == Held.X ? 0 : random.nextDouble(-shift, shift);
      double dy = held == Held.BOTH || held == Held.Y ? 0 : random.nextDouble(-shift, shift);
      points.add(new NetworkPoint("P" + i, truth[2 * i] + dx, truth[2 * i + 1] + dy, held));
    }
    return List.copyOf(points);
  }

  /** Measures with normal errors. */
  private record Reader(SplittableRandom random, double[] truth, List<Observation> observations, double distanceDeviation,
      double angleDeviation) {

    void distance(int a, int b) {
      double deviation = distanceDeviation * random.nextDouble(0.5, 2);
      observations.add(Observation.distance("P" + a, "P" + b,
          StrictMath.hypot(truth[2 * b] - truth[2 * a], truth[2 * b + 1] - truth[2 * a + 1]) + deviation * random.nextGaussian(),
          deviation));
    }

    void bearing(int a, int b) {
      double deviation = angleDeviation * random.nextDouble(0.5, 2);
      observations.add(Observation.bearing("P" + a, "P" + b, way(a, b) + deviation * random.nextGaussian(), deviation));
    }

    void angle(int at, int a, int b) {
      double deviation = angleDeviation * random.nextDouble(0.5, 2);
      observations.add(Observation.angle("P" + at, "P" + a, "P" + b,
          way(at, b) - way(at, a) + deviation * random.nextGaussian(), deviation));
    }

    private double way(int a, int b) {
      return Math.toDegrees(StrictMath.atan2(truth[2 * b + 1] - truth[2 * a + 1], truth[2 * b] - truth[2 * a]));
    }
  }
}
