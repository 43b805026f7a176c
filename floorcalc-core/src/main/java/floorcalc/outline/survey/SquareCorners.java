package floorcalc.outline.survey;

import floorcalc.outline.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Corners on the nanometre grid. Walls that are square to wall 1 or along it by right angles taken for granted come out so to
 * the nanometre: corners that share a coordinate get one and the same.
 */
final class SquareCorners {
  private static final double NANOMETRES = 1_000_000;

  private SquareCorners() {}

  static List<Point> of(Survey survey, Layout layout) {
    int n = survey.size();
    int[] sameX = own(n);
    int[] sameY = own(n);
    if (survey.corners() == Survey.Corners.RIGHT_ANGLES) {
      joinOnward(survey, layout, sameX, sameY, 1);
      joinOnward(survey, layout, sameX, sameY, -1);
    }
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      corners.add(Point.ofNanometres(shared(sameX, i, layout, 0), shared(sameY, i, layout, 1)));
    }
    return corners;
  }

  private static int[] own(int n) {
    int[] own = new int[n];
    for (int i = 0; i < n; i++) {
      own[i] = i;
    }
    return own;
  }

  /** From wall 1 on, or back, up to the first corner that was measured. */
  private static void joinOnward(Survey survey, Layout layout, int[] sameX, int[] sameY, int way) {
    int n = survey.size();
    boolean alongX = true;
    for (int k = 0, wall = 0; k < n; k++, wall = Math.floorMod(wall + way, n)) {
      join(alongX ? sameY : sameX, wall, (wall + 1) % n);
      int corner = way > 0 ? (wall + 1) % n : wall;
      if (survey.walls().get(Math.floorMod(corner - 1, n)).turn().isMeasured()) {
        return;
      }
      alongX = !alongX;
    }
  }

  private static void join(int[] group, int a, int b) {
    int from = group[b];
    int to = group[a];
    for (int i = 0; i < group.length; i++) {
      if (group[i] == from) {
        group[i] = to;
      }
    }
  }

  private static long shared(int[] group, int corner, Layout layout, int axis) {
    double sum = 0;
    int count = 0;
    for (int i = 0; i < group.length; i++) {
      if (group[i] == group[corner]) {
        sum += layout.place()[2 * i + axis];
        count++;
      }
    }
    return (long) StrictMath.rint(sum / count * NANOMETRES);
  }
}
