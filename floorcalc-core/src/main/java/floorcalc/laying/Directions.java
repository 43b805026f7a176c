package floorcalc.laying;

import floorcalc.outline.Direction;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Directions that a room's walls suggest for its boards, each from 0 up to 180 degrees. */
final class Directions {
  private static final double SAME_DEGREES = 0.01;

  private Directions() {}

  /** Along the longest wall; of equal walls the first. */
  static Direction ofLongestWall(Ring shell) {
    int longest = 0;
    for (int i = 1; i < shell.size(); i++) {
      if (squaredLength(shell, i) > squaredLength(shell, longest)) {
        longest = i;
      }
    }
    return ofWall(shell, longest);
  }

  /** The directions of the two longest sorts of wall and those square to them, at most four. */
  static List<Direction> worthTrying(Ring shell) {
    List<Integer> walls = new ArrayList<>();
    for (int i = 0; i < shell.size(); i++) {
      walls.add(i);
    }
    walls.sort(Comparator.<Integer>comparingDouble(i -> -squaredLength(shell, i)).thenComparingInt(i -> i));
    List<Direction> found = new ArrayList<>();
    for (int wall : walls) {
      Direction along = ofWall(shell, wall);
      if (found.size() < 4 && found.stream().noneMatch(known -> near(known, along))) {
        found.add(along);
        found.add(halfTurn(along.plusQuarterTurns(1)));
      }
    }
    return found;
  }

  private static boolean near(Direction a, Direction b) {
    double apart = StrictMath.abs(a.degrees() - b.degrees()) % 180;
    return Math.min(apart, 180 - apart) < SAME_DEGREES;
  }

  private static Direction ofWall(Ring shell, int wall) {
    int next = (wall + 1) % shell.size();
    return halfTurn(Direction.fromPoints(shell.corners().get(wall), shell.corners().get(next)));
  }

  private static Direction halfTurn(Direction direction) {
    return direction.degrees() >= 180 ? direction.plusQuarterTurns(2) : direction;
  }

  private static double squaredLength(Ring shell, int wall) {
    int next = (wall + 1) % shell.size();
    double dx = (double) shell.x(next) - shell.x(wall);
    double dy = (double) shell.y(next) - shell.y(wall);
    return dx * dx + dy * dy;
  }
}
