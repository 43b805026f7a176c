package floorcalc.reference.answers;

import floorcalc.outline.network.AdjustedObservation;
import floorcalc.outline.network.AdjustedPoint;
import floorcalc.outline.network.Adjustment;
import floorcalc.outline.network.Held;
import floorcalc.outline.network.Network;
import floorcalc.outline.network.NetworkPoint;
import floorcalc.outline.network.Observation;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Points by least squares. */
final class NetworkAnswers {
  private static final double EQUAL_WEIGHT = 0.01;

  void addTo(Answers answers) {
    answers.add("adjusted-network", NetworkAnswers::adjusted, Network.class);
    answers.add("blunders-of-network", NetworkAnswers::blunders, Network.class);
    answers.add("braced-quadrilateral", NetworkAnswers::braced, Network.class);
  }

  /** What was asked, in the library's terms: its angles are anticlockwise and its bearings anticlockwise from x. */
  private record Asked(List<NetworkPoint> points, List<Observation> observations, List<String> names) {}

  private static Asked asked(Question question) {
    List<NetworkPoint> points = new ArrayList<>();
    for (List<String> row : question.table("points")) {
      Held held = switch (row.get(3)) {
        case "xy" -> Held.BOTH;
        case "x" -> Held.X;
        case "y" -> Held.Y;
        default -> Held.NONE;
      };
      points.add(new NetworkPoint(row.get(0), Double.parseDouble(row.get(1)), Double.parseDouble(row.get(2)), held));
    }
    List<Observation> observations = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (List<String> row : question.table("observations")) {
      String from = row.get(2);
      String to = row.get(3);
      double deviation = Double.parseDouble(row.get(5));
      switch (row.get(0)) {
        case "distance" -> {
          observations.add(Observation.distance(from, to, Double.parseDouble(row.get(4)), deviation));
          names.add("distance " + from + " " + to);
        }
        case "angle" -> {
          observations.add(Observation.angle(row.get(1), to, from, degrees(row.get(4)), deviation / 3600));
          names.add("angle " + row.get(1) + " " + from + " " + to);
        }
        case "azimuth" -> {
          observations.add(Observation.bearing(from, to, 90 - degrees(row.get(4)), deviation / 3600));
          names.add("azimuth " + from + " " + to);
        }
        case "fixed azimuth" -> points.add(mark(points, from, to, Double.parseDouble(row.get(4))));
        default -> throw new IllegalArgumentException("an observation is a distance, an angle or an azimuth, not " + row);
      }
    }
    return new Asked(points, observations, names);
  }

  /** A mark sighted at an azimuth that is exact: a point that is held there, as far off as you like. */
  private static NetworkPoint mark(List<NetworkPoint> points, String at, String name, double azimuth) {
    NetworkPoint from = points.stream().filter(point -> point.name().equals(at)).findFirst().orElseThrow();
    double way = StrictMath.toRadians(azimuth);
    return NetworkPoint.held(name, from.x() + 1000 * StrictMath.sin(way), from.y() + 1000 * StrictMath.cos(way));
  }

  private static double degrees(String dms) {
    String[] parts = dms.split("-");
    return Double.parseDouble(parts[0]) + Double.parseDouble(parts[1]) / 60 + Double.parseDouble(parts[2]) / 3600;
  }

  private static Adjustment atRest(List<NetworkPoint> points, List<Observation> observations) {
    Adjustment adjusted = Network.of(points, observations).adjust();
    if (!adjusted.isAtRest() || adjusted.looseness() != 0) {
      throw new IllegalStateException("the network did not come to rest, or is loose in " + adjusted.looseness() + " ways");
    }
    return adjusted;
  }

  private static Answer adjusted(Question question) {
    Asked asked = asked(question);
    Adjustment adjusted = atRest(asked.points(), asked.observations());
    Answer answer = Answer.of("redundancy", Integer.toString(adjusted.redundancy())).with("factor", adjusted.factor());
    double thousandths = 1000 * adjusted.factor();
    for (AdjustedPoint point : adjusted.points()) {
      answer = answer.with(point.name() + ".x", point.x()).with(point.name() + ".y", point.y())
          .with(point.name() + ".deviationX", point.deviationX() * thousandths).with(point.name() + ".deviationY", point.deviationY() * thousandths);
    }
    for (int i = 0; i < adjusted.observations().size(); i++) {
      answer = answer.with("residual" + (i + 1), adjusted.observations().get(i).residual());
    }
    return answer;
  }

  private static Answer blunders(Question question) {
    Asked asked = asked(question);
    double beyond = question.number("beyond").doubleValue();
    List<Observation> left = new ArrayList<>(asked.observations());
    Answer answer = Answer.empty();
    int found = 0;
    while (true) {
      AdjustedObservation worst = atRest(asked.points(), left).observations().stream().max(Comparator.comparingDouble(NetworkAnswers::size)).orElseThrow();
      if (size(worst) <= beyond) {
        return answer.with("blunders", Integer.toString(found));
      }
      found++;
      answer = answer.with("blunder" + found, asked.names().get(asked.observations().indexOf(worst.observation())));
      left.remove(worst.observation());
    }
  }

  private static double size(AdjustedObservation one) {
    return Math.abs(one.normalisedResidual().orElse(0));
  }

  /** C and D may lie on one side of AB or on both: the way that fits better. */
  private static Answer braced(Question question) {
    List<Observation> all = question.table("lengths").stream()
        .map(row -> Observation.distance(row.get(0), row.get(1), Double.parseDouble(row.get(2)), EQUAL_WEIGHT)).toList();
    Adjustment best = null;
    for (int side : new int[] {1, -1}) {
      Adjustment one = atRest(List.of(NetworkPoint.about("A", 0, 0), NetworkPoint.about("B", value(all, "A", "B"), 0), place(all, "C", 1),
          place(all, "D", side)), all);
      best = best == null || one.squares() < best.squares() ? one : best;
    }
    // Without the last length the other five fix the figure.
    Adjustment five = atRest(best.points().stream().map(point -> NetworkPoint.about(point.name(), point.x(), point.y())).toList(),
        all.stream().filter(each -> !isBetween(each, "C", "D")).toList());
    double otherwise = StrictMath.hypot(five.point("C").x() - five.point("D").x(), five.point("C").y() - five.point("D").y());
    Answer answer = Answer.of("redundancy", Integer.toString(best.redundancy())).with("CDfromTheOthers", otherwise)
        .with("misclosure", 1000 * (otherwise - value(all, "C", "D")));
    for (AdjustedObservation one : best.observations()) {
      String name = one.observation().from() + one.observation().to();
      answer = answer.with(name + ".adjusted", one.adjusted()).with(name + ".residual", 1000 * one.residual());
    }
    return answer;
  }

  private static boolean isBetween(Observation one, String from, String to) {
    return one.from().equals(from) && one.to().equals(to);
  }

  private static double value(List<Observation> all, String from, String to) {
    return all.stream().filter(one -> isBetween(one, from, to)).findFirst().orElseThrow().value();
  }

  private static NetworkPoint place(List<Observation> all, String name, int side) {
    double base = value(all, "A", "B");
    double fromA = value(all, "A", name);
    double fromB = value(all, "B", name);
    double x = (fromA * fromA - fromB * fromB + base * base) / (2 * base);
    return NetworkPoint.about(name, x, side * StrictMath.sqrt(fromA * fromA - x * x));
  }
}
