package floorcalc.outline.network;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A network made by chance, in millimetres: corners all over a room, many lengths between them, some angles and bearings.
 *
 * @param truth where the points are, x and y of each in turn
 * @param points about where they are, the first two as the datum says
 * @param observations what is measured
 */
record MadeNetwork(double[] truth, List<NetworkPoint> points, List<Observation> observations) {
  private static final double SIZE = 10_000;
  private static final double APART = 1_200;

  /** What is held. */
  enum Datum {
    /** The first two points. */
    HELD,
    /** Nothing, and there are no bearings. */
    FREE
  }

  /**
   * Makes a network.
   *
   * @param errors by how many standard deviations the measurements are off as a rule
   * @param shift how far the approximate places may be off
   */
  static MadeNetwork of(long seed, Datum datum, double errors, double shift) {
    SplittableRandom random = new SplittableRandom(seed);
    int count = random.nextInt(4, 13);
    double[] truth = new double[2 * count];
    for (int i = 0; i < count; i++) {
      do {
        truth[2 * i] = random.nextDouble(SIZE);
        truth[2 * i + 1] = random.nextDouble(SIZE);
      } while (nearest(truth, i) < APART);
    }
    List<Observation> observations = new ArrayList<>();
    for (int a = 0; a < count; a++) {
      for (int b = a + 1; b < count; b++) {
        // The first three and each later point with the first three: more than enough; the rest by chance.
        if (a < 3 || random.nextInt(3) == 0) {
          double deviation = random.nextDouble(1, 4);
          observations.add(Observation.distance(name(a), name(b),
              Math.hypot(truth[2 * b] - truth[2 * a], truth[2 * b + 1] - truth[2 * a + 1])
                  + errors * deviation * random.nextGaussian(), deviation));
        }
      }
    }
    for (int k = random.nextInt(6); k > 0; k--) {
      int[] three = random.ints(0, count).distinct().limit(3).toArray();
      double off = errors * 0.05 * random.nextGaussian();
      if (datum == Datum.HELD && random.nextBoolean()) {
        observations.add(Observation.bearing(name(three[0]), name(three[1]), way(truth, three[0], three[1]) + off, 0.05));
      } else {
        observations.add(Observation.angle(name(three[0]), name(three[1]), name(three[2]),
            way(truth, three[0], three[2]) - way(truth, three[0], three[1]) + off, 0.05));
      }
    }
    List<NetworkPoint> points = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      boolean held = datum == Datum.HELD && i < 2;
      points.add(held ? NetworkPoint.held(name(i), truth[2 * i], truth[2 * i + 1])
          : NetworkPoint.about(name(i), truth[2 * i] + random.nextDouble(-1, 1) * shift,
              truth[2 * i + 1] + random.nextDouble(-1, 1) * shift));
    }
    return new MadeNetwork(truth, List.copyOf(points), List.copyOf(observations));
  }

  Adjustment adjust() {
    return Network.of(points, observations).adjust();
  }

  static String name(int i) {
    return "P" + i;
  }

  static double way(double[] truth, int a, int b) {
    return Math.toDegrees(Math.atan2(truth[2 * b + 1] - truth[2 * a + 1], truth[2 * b] - truth[2 * a]));
  }

  private static double nearest(double[] truth, int i) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int j = 0; j < i; j++) {
      nearest = Math.min(nearest, Math.hypot(truth[2 * i] - truth[2 * j], truth[2 * i + 1] - truth[2 * j + 1]));
    }
    return nearest;
  }
}
