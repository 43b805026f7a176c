package floorcalc.outline.survey;

import floorcalc.measure.Length;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Walks the walls of a survey whose every turn is known or a right angle, and puts what the walk fails to close by right
 * in proportion to the lengths walked.
 */
final class Walk {
  /** Beyond this many corners that turn an unknown way there are too many shapes to try. */
  static final int MOST_UNKNOWN = 16;
  private static final int KEPT = 24;
  /** By how much all turns together may differ from a full turn: less than half a right angle. */
  private static final double FULL_TURN_WITHIN = 44;

  private Walk() {}

  /** Returns the turn at each corner (counted from 0) as it is known; NaN where it may be left or right. */
  static double[] turns(Survey survey) {
    int n = survey.size();
    double[] turns = new double[n];
    for (int i = 0; i < n; i++) {
      Turn turn = survey.walls().get(i).turn();
      OptionalDouble degrees = turn.degrees();
      turns[(i + 1) % n] = degrees.isPresent() ? degrees.getAsDouble() : switch (turn.side()) {
        case LEFT -> 90;
        case RIGHT -> -90;
        case UNKNOWN -> Double.NaN;
      };
    }
    return turns;
  }

  /** The walks that go once round, those that close best first. */
  static List<Layout> layouts(Survey survey) {
    double[] turns = turns(survey);
    List<Integer> open = new ArrayList<>();
    for (int i = 0; i < turns.length; i++) {
      if (Double.isNaN(turns[i])) {
        open.add(i);
      }
    }
    if (open.size() > MOST_UNKNOWN) {
      throw new IllegalArgumentException("the survey leaves open at " + open.size()
          + " corners whether the wall turns left or right, at most " + MOST_UNKNOWN
          + " can be tried; say for each wall whether the next one turns left or right");
    }
    List<Layout> layouts = new ArrayList<>();
    for (int choice = 0; choice < 1 << open.size(); choice++) {
      double sum = 0;
      for (int k = 0; k < open.size(); k++) {
        turns[open.get(k)] = (choice >> k & 1) == 0 ? 90 : -90;
      }
      for (double turn : turns) {
        sum += turn;
      }
      if (StrictMath.abs(sum - 360) < FULL_TURN_WITHIN) {
        layouts.add(layout(survey, turns));
      }
    }
    layouts.sort(Comparator.comparingDouble(Layout::misfit));
    return layouts.size() <= KEPT ? layouts : List.copyOf(layouts.subList(0, KEPT));
  }

  /** The same without one of the lengths, walls first, then ties: a wall is as long as it takes to close; none if its turns are not all said. */
  static List<Layout> layoutsWithout(Survey survey, int length) {
    double[] turns = turns(survey);
    if (length >= survey.size()) {
      return layouts(survey);
    }
    for (double turn : turns) {
      if (Double.isNaN(turn)) {
        return List.of();
      }
    }
    double heading = 0;
    for (int i = 1; i <= length; i++) {
      heading += turns[i];
    }
    double[] path = path(survey, turns);
    double tooFar = path[path.length - 2] * cos(heading) + path[path.length - 1] * sin(heading);
    List<SurveyWall> walls = new ArrayList<>(survey.walls());
    SurveyWall wall = walls.get(length);
    Length closing = wall.length().minus(Length.fromMillimetres(tooFar, RoundingMode.HALF_EVEN));
    if (!closing.isPositive()) {
      return List.of();
    }
    walls.set(length, new SurveyWall(closing, wall.turn(), wall.rise()));
    return layouts(Survey.of(walls).withCorners(survey.corners()));
  }

  /** Where the walk goes, n + 1 places, the last of which should be the first. */
  static double[] path(Survey survey, double[] turns) {
    int n = survey.size();
    double[] path = new double[2 * n + 2];
    double heading = 0;
    for (int i = 0; i < n; i++) {
      double length = survey.walls().get(i).length().toMillimetres();
      path[2 * i + 2] = path[2 * i] + length * cos(heading);
      path[2 * i + 3] = path[2 * i + 1] + length * sin(heading);
      heading += turns[(i + 1) % n];
    }
    return path;
  }

  private static Layout layout(Survey survey, double[] turns) {
    int n = survey.size();
    double[] path = path(survey, turns);
    double around = survey.walls().stream().mapToDouble(wall -> wall.length().toMillimetres()).sum();
    double walked = 0;
    double[] place = new double[2 * n];
    for (int i = 0; i < n; i++) {
      place[2 * i] = path[2 * i] - path[2 * n] * walked / around;
      place[2 * i + 1] = path[2 * i + 1] - path[2 * n + 1] * walked / around;
      walked += survey.walls().get(i).length().toMillimetres();
    }
    return new Layout(turned(place), StrictMath.hypot(path[2 * n], path[2 * n + 1]));
  }

  /** Turned so that the second corner lies on the x axis. */
  static double[] turned(double[] place) {
    double length = StrictMath.hypot(place[2], place[3]);
    double cos = place[2] / length;
    double sin = place[3] / length;
    double[] turned = new double[place.length];
    for (int i = 0; i < place.length; i += 2) {
      turned[i] = place[i] * cos + place[i + 1] * sin;
      turned[i + 1] = place[i + 1] * cos - place[i] * sin;
    }
    turned[3] = 0;
    return turned;
  }

  /** The sine of an angle in degrees, of right angles exactly. */
  static double sin(double degrees) {
    return cos(degrees - 90);
  }

  /** The cosine of an angle in degrees, of right angles exactly. */
  static double cos(double degrees) {
    double within = StrictMath.abs(StrictMath.IEEEremainder(degrees, 360));
    return within == 90 ? 0 : within == 0 ? 1 : within == 180 ? -1 : StrictMath.cos(StrictMath.toRadians(within));
  }
}
