package floorcalc.outline.survey;

import floorcalc.outline.network.Adjustment;
import floorcalc.outline.network.Held;
import floorcalc.outline.network.Network;
import floorcalc.outline.network.NetworkPoint;
import floorcalc.outline.network.Observation;
import java.util.ArrayList;
import java.util.List;

/** A survey as a network of its corners: millimetres, corner 1 at the origin, wall 1 along x. */
final class SurveyNetwork {
  private final Survey survey;
  private final List<Observation> observations = new ArrayList<>();
  private final List<Measured.Kind> kinds = new ArrayList<>();
  private final List<int[]> ends = new ArrayList<>();

  private SurveyNetwork(SurveyNetwork other) {
    survey = other.survey;
    observations.addAll(other.observations);
    kinds.addAll(other.kinds);
    ends.addAll(other.ends);
  }

  SurveyNetwork(Survey survey) {
    this.survey = survey;
    int n = survey.size();
    for (int i = 1; i <= n; i++) {
      var length = survey.walls().get(i - 1).length();
      length(Measured.Kind.WALL, i, i % n + 1, length.toMillimetres(), survey.uncertainty().ofLength(length));
    }
    for (Tie tie : survey.ties()) {
      length(Measured.Kind.TIE, tie.from(), tie.to(), tie.length().toMillimetres(),
          survey.uncertainty().ofLength(tie.length()));
    }
    for (int i = 1; i <= n; i++) {
      turn(i, survey.walls().get(Math.floorMod(i - 2, n)).turn());
    }
  }

  private void length(Measured.Kind kind, int from, int to, double length, double deviation) {
    observations.add(Observation.distance(name(from), name(to), length, deviation));
    kinds.add(kind);
    ends.add(new int[] {from, to});
  }

  private void turn(int corner, Turn turn) {
    if (turn.degrees().isPresent()) {
      observations.add(inner(corner, 180 - turn.degrees().getAsDouble(), survey.uncertainty().turnDegrees()));
      kinds.add(Measured.Kind.TURN);
      ends.add(new int[] {corner, corner});
    }
  }

  /** The angle of the room at a corner, from the wall that leaves it to the wall that comes to it. */
  private Observation inner(int corner, double degrees, double deviation) {
    int n = survey.size();
    return Observation.angle(name(corner), name(corner % n + 1), name(Math.floorMod(corner - 2, n) + 1), degrees, deviation);
  }

  private static String name(int corner) {
    return Integer.toString(corner);
  }

  /** Adjusts with corner 1 held and wall 1 along x. */
  Adjustment fixed(Layout about) {
    return network(about, Held.BOTH, Held.Y).adjust();
  }

  /** Adjusts with nothing held. */
  Adjustment free(Layout about) {
    return network(about, Held.NONE, Held.NONE).adjust();
  }

  /** The same network without one of its measurements. */
  SurveyNetwork without(Measured measured) {
    return without(observations.indexOf(measured.result().observation()));
  }

  /** The same network without a measurement, counted from 0: walls, ties, turns. */
  SurveyNetwork without(int i) {
    SurveyNetwork others = new SurveyNetwork(this);
    others.observations.remove(i);
    others.kinds.remove(i);
    others.ends.remove(i);
    return others;
  }

  /** The same network with one more length between two corners. */
  SurveyNetwork with(int from, int to, double length, double deviation) {
    SurveyNetwork more = new SurveyNetwork(this);
    more.length(Measured.Kind.TIE, from, to, length, deviation);
    return more;
  }

  /** A measurement, counted from 0: walls, ties, turns. */
  Observation observation(int i) {
    return observations.get(i);
  }

  private Network network(Layout about, Held first, Held second) {
    int n = survey.size();
    List<NetworkPoint> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Held which = i == 0 ? first : i == 1 ? second : Held.NONE;
      points.add(new NetworkPoint(name(i + 1), about.x(i), about.y(i), which));
    }
    List<Observation> all = new ArrayList<>(observations);
    all.addAll(exact(about));
    return Network.of(points, all);
  }

  /** The right angles that are taken for granted; which way they turn is seen from the layout. */
  private List<Observation> exact(Layout about) {
    List<Observation> exact = new ArrayList<>();
    if (survey.corners() == Survey.Corners.RIGHT_ANGLES) {
      for (int i = 1; i <= survey.size(); i++) {
        if (!survey.walls().get(Math.floorMod(i - 2, survey.size())).turn().isMeasured()) {
          exact.add(inner(i, about.turn(i - 1) > 0 ? 90 : 270, 0));
        }
      }
    }
    return exact;
  }

  /** How many measurements there are. */
  int size() {
    return observations.size();
  }

  /** The measurements with what an adjustment made of them: right angles taken for granted are none. */
  List<Measured> measured(Adjustment adjustment) {
    List<Measured> measured = new ArrayList<>();
    for (int i = 0; i < kinds.size(); i++) {
      measured.add(new Measured(kinds.get(i), ends.get(i)[0], ends.get(i)[1], adjustment.observations().get(i)));
    }
    return measured;
  }

  static Layout layout(Adjustment adjustment) {
    double[] place = new double[2 * adjustment.points().size()];
    for (int i = 0; i < place.length / 2; i++) {
      place[2 * i] = adjustment.points().get(i).x();
      place[2 * i + 1] = adjustment.points().get(i).y();
    }
    return new Layout(place, adjustment.squares());
  }
}
