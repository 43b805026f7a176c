package floorcalc.outline.survey;

import java.util.Arrays;

/** Where the corners of a room may lie, in millimetres: x and y of each in turn. */
record Layout(double[] place, double misfit) {
  /** A turn smaller than this, in degrees, does not contradict what was said of its side. */
  private static final double STRAIGHT = 3;

  int size() {
    return place.length / 2;
  }

  double x(int corner) {
    return place[2 * Math.floorMod(corner, size())];
  }

  double y(int corner) {
    return place[2 * Math.floorMod(corner, size()) + 1];
  }

  double distance(int a, int b) {
    return StrictMath.hypot(x(b) - x(a), y(b) - y(a));
  }

  /** Degrees by which the walls turn to the left at a corner. */
  double turn(int corner) {
    double in = StrictMath.atan2(y(corner) - y(corner - 1), x(corner) - x(corner - 1));
    double out = StrictMath.atan2(y(corner + 1) - y(corner), x(corner + 1) - x(corner));
    return StrictMath.toDegrees(StrictMath.IEEEremainder(out - in, 2 * StrictMath.PI));
  }

  /** By how many degrees all corners together are off from square. */
  double oddness() {
    double odd = 0;
    for (int i = 0; i < size(); i++) {
      odd += StrictMath.abs(StrictMath.abs(turn(i)) - 90);
    }
    return odd;
  }

  /** Whether the walls turn clearly to another side at a corner than was said. */
  boolean turnsOtherwise(int corner, Survey survey) {
    Turn.Side side = survey.walls().get(Math.floorMod(corner - 1, size())).turn().side();
    return side == Turn.Side.LEFT && turn(corner) < -STRAIGHT || side == Turn.Side.RIGHT && turn(corner) > STRAIGHT;
  }

  /** Positive if the room lies on the left. */
  double area() {
    double twice = 0;
    for (int i = 0; i < size(); i++) {
      twice += x(i) * y(i + 1) - x(i + 1) * y(i);
    }
    return twice / 2;
  }

  Layout mirrored() {
    double[] other = place.clone();
    for (int i = 1; i < other.length; i += 2) {
      other[i] = -other[i];
    }
    return new Layout(other, misfit);
  }

  /** This or its mirror image, whichever has the room on the left. */
  Layout leftHanded() {
    return area() < 0 ? mirrored() : this;
  }

  boolean isNear(Layout other, double within) {
    for (int i = 0; i < place.length; i++) {
      if (StrictMath.abs(place[i] - other.place[i]) > within) {
        return false;
      }
    }
    return true;
  }

  /** Whether no two walls that are not neighbours meet. */
  boolean isSimple() {
    for (int i = 0; i < size(); i++) {
      for (int j = i + 2; j < size(); j++) {
        if ((j + 1) % size() != i && meet(i, j)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether the straight line between two corners stays in the room. */
  boolean sees(int a, int b) {
    if (Math.floorMod(b - a, size()) == 1 || Math.floorMod(a - b, size()) == 1) {
      return true;
    }
    for (int wall = 0; wall < size(); wall++) {
      int next = (wall + 1) % size();
      if (wall != a && wall != b && next != a && next != b && meets(wall, a, b)) {
        return false;
      }
    }
    return holds((x(a) + x(b)) / 2, (y(a) + y(b)) / 2);
  }

  private boolean meets(int wall, int a, int b) {
    return side(wall, a) * side(wall, b) <= 0
        && cross(a, b, wall) * cross(a, b, wall + 1) <= 0;
  }

  private double cross(int a, int b, int corner) {
    return StrictMath.signum((x(b) - x(a)) * (y(corner) - y(a)) - (y(b) - y(a)) * (x(corner) - x(a)));
  }

  private boolean holds(double px, double py) {
    boolean inside = false;
    for (int i = 0; i < size(); i++) {
      if (y(i) > py != y(i + 1) > py && px < x(i) + (py - y(i)) / (y(i + 1) - y(i)) * (x(i + 1) - x(i))) {
        inside = !inside;
      }
    }
    return inside;
  }

  /** Whether two walls that are no neighbours meet. Walls on one line meet only if they overlap along it. */
  boolean meet(int i, int j) {
    return side(i, j) * side(i, j + 1) <= 0 && side(j, i) * side(j, i + 1) <= 0
        && overlap(x(i), x(i + 1), x(j), x(j + 1)) && overlap(y(i), y(i + 1), y(j), y(j + 1));
  }

  private static boolean overlap(double a, double b, double c, double d) {
    return Math.max(Math.min(a, b), Math.min(c, d)) <= Math.min(Math.max(a, b), Math.max(c, d));
  }

  /** On which side of the line of a wall a corner lies. */
  private double side(int wall, int corner) {
    return StrictMath.signum((x(wall + 1) - x(wall)) * (y(corner) - y(wall))
        - (y(wall + 1) - y(wall)) * (x(corner) - x(wall)));
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Layout other && Arrays.equals(place, other.place) && misfit == other.misfit;
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(place);
  }
}
