package floorcalc.outline.network;

import java.util.List;
import java.util.Map;

/** The observations of a network as functions of its coordinates: values, misclosures and slopes. Angles in radians. */
final class Equations {
  private final List<Observation> observations;
  private final int[] at;
  private final int[] from;
  private final int[] to;

  Equations(List<Observation> observations, Map<String, Integer> index) {
    this.observations = observations;
    at = observations.stream().mapToInt(o -> index(index, o, o.at())).toArray();
    from = observations.stream().mapToInt(o -> index(index, o, o.from())).toArray();
    to = observations.stream().mapToInt(o -> index(index, o, o.to())).toArray();
  }

  private static int index(Map<String, Integer> index, Observation observation, String name) {
    Integer found = index.get(name);
    if (found == null) {
      throw new IllegalArgumentException(observation.name() + " names point " + name
          + ", which the network does not have; add the point or mend the name");
    }
    return found;
  }

  int size() {
    return observations.size();
  }

  Observation get(int i) {
    return observations.get(i);
  }

  /** What the coordinates (x and y of each point in turn) make of an observation. */
  double computed(int i, double[] place) {
    return switch (observations.get(i).kind()) {
      case DISTANCE -> length(place, from[i], to[i]);
      case BEARING -> bearing(place, from[i], to[i]);
      case ANGLE -> bearing(place, at[i], to[i]) - bearing(place, at[i], from[i]);
    };
  }

  /** Observed less computed; of an angle the part within half a turn. */
  double misclosure(int i, double[] place) {
    double value = observations.get(i).value();
    if (observations.get(i).kind() == Observation.Kind.DISTANCE) {
      return value - computed(i, place);
    }
    return halfTurn(StrictMath.toRadians(value) - computed(i, place));
  }

  static double halfTurn(double angle) {
    return StrictMath.IEEEremainder(angle, 2 * StrictMath.PI);
  }

  /** The standard deviation in radians or the unit of length. */
  double deviation(int i) {
    double deviation = observations.get(i).deviation();
    return observations.get(i).kind() == Observation.Kind.DISTANCE ? deviation : StrictMath.toRadians(deviation);
  }

  /** How an observation changes with each coordinate. */
  double[] slopes(int i, double[] place) {
    double[] row = new double[place.length];
    switch (observations.get(i).kind()) {
      case DISTANCE -> {
        double length = length(place, from[i], to[i]);
        double dx = dx(place, from[i], to[i]) / length;
        double dy = dy(place, from[i], to[i]) / length;
        add(row, from[i], to[i], dx, dy);
      }
      case BEARING -> turn(row, place, from[i], to[i], 1);
      case ANGLE -> {
        turn(row, place, at[i], to[i], 1);
        turn(row, place, at[i], from[i], -1);
      }
    }
    return row;
  }

  private static void turn(double[] row, double[] place, int a, int b, int sign) {
    double dx = dx(place, a, b);
    double dy = dy(place, a, b);
    double square = dx * dx + dy * dy;
    add(row, a, b, -sign * dy / square, sign * dx / square);
  }

  private static void add(double[] row, int a, int b, double dx, double dy) {
    row[2 * b] += dx;
    row[2 * b + 1] += dy;
    row[2 * a] -= dx;
    row[2 * a + 1] -= dy;
  }

  private static double dx(double[] place, int a, int b) {
    return place[2 * b] - place[2 * a];
  }

  private static double dy(double[] place, int a, int b) {
    return place[2 * b + 1] - place[2 * a + 1];
  }

  private static double length(double[] place, int a, int b) {
    return StrictMath.hypot(dx(place, a, b), dy(place, a, b));
  }

  private static double bearing(double[] place, int a, int b) {
    return StrictMath.atan2(dy(place, a, b), dx(place, a, b));
  }
}
