package floorcalc.outline.survey;

/** How something changes with x and y of each corner in turn. */
final class Slopes {
  private Slopes() {}

  /** Of the area, in square millimetres. */
  static double[] ofArea(Layout layout) {
    double[] slopes = new double[2 * layout.size()];
    for (int i = 0; i < layout.size(); i++) {
      slopes[2 * i] = (layout.y(i + 1) - layout.y(i - 1)) / 2;
      slopes[2 * i + 1] = (layout.x(i - 1) - layout.x(i + 1)) / 2;
    }
    return slopes;
  }

  /** Of the distance of a corner from the line through two others, to the left positive. */
  static double[] ofDistanceFromLine(Layout layout, int a, int b, int corner) {
    double dx = layout.x(b) - layout.x(a);
    double dy = layout.y(b) - layout.y(a);
    double base = StrictMath.hypot(dx, dy);
    double normalX = -dy / base;
    double normalY = dx / base;
    double along = ((layout.x(corner) - layout.x(a)) * dx + (layout.y(corner) - layout.y(a)) * dy) / (base * base);
    double[] slopes = new double[2 * layout.size()];
    add(slopes, corner, normalX, normalY, 1);
    add(slopes, a, normalX, normalY, along - 1);
    add(slopes, b, normalX, normalY, -along);
    return slopes;
  }

  private static void add(double[] slopes, int corner, double x, double y, double share) {
    slopes[2 * corner] += x * share;
    slopes[2 * corner + 1] += y * share;
  }

  /** Of the turn to the left at a corner, in degrees. */
  static double[] ofTurn(Layout layout, int corner) {
    int n = layout.size();
    double[] slopes = new double[2 * n];
    bearing(layout, corner, (corner + 1) % n, 1, slopes);
    bearing(layout, Math.floorMod(corner - 1, n), corner, -1, slopes);
    return slopes;
  }

  private static void bearing(Layout layout, int a, int b, double share, double[] slopes) {
    double dx = layout.x(b) - layout.x(a);
    double dy = layout.y(b) - layout.y(a);
    double degrees = StrictMath.toDegrees(share / (dx * dx + dy * dy));
    add(slopes, b, -dy, dx, degrees);
    add(slopes, a, -dy, dx, -degrees);
  }

  /** Of the distance between two corners. */
  static double[] ofDistance(Layout layout, int a, int b) {
    double length = layout.distance(a, b);
    double[] slopes = new double[2 * layout.size()];
    add(slopes, b, (layout.x(b) - layout.x(a)) / length, (layout.y(b) - layout.y(a)) / length, 1);
    add(slopes, a, (layout.x(b) - layout.x(a)) / length, (layout.y(b) - layout.y(a)) / length, -1);
    return slopes;
  }
}
