package floorcalc.differential;

import floorcalc.differential.RandomOutlines.Place;
import floorcalc.measure.Area;
import floorcalc.outline.Extent;
import floorcalc.outline.Line;
import floorcalc.outline.Outline;
import floorcalc.outline.PartedOutline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.outline.Wkt;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Rooms parted along a straight line right across: what comes to lie on its left against what the library cuts off there, and all
 * parts together against the room.
 */
final class PartedDifferential extends Comparison {
  private final PlaneCut cut;

  PartedDifferential(PlaneCut cut, int cases) {
    super("rooms parted along a line", cut.library(), cases, PartedOutline.class);
    this.cut = cut;
  }

  /** A library's way to cut a room along a line. */
  interface PlaneCut {
    /** {@return which library} */
    Library library();

    /** {@return the area in square nanometres on the left of the line through two points that lie outside the room} */
    double areaOnLeft(Outline room, Point from, Point to);
  }

  @Override
  public String unit() {
    return "nm wide strip along line and walls";
  }

  @Override
  public double tolerance() {
    return 0.71;
  }

  @Override
  public String argument() {
    return "an end of the line is rounded to whole nanometres, which turns the line and the wall that it ends on by half a nanometre along x and y";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    RandomOutlines outlines = new RandomOutlines(221);
    SplittableRandom random = new SplittableRandom(222);
    int parts = 0;
    for (int k = 0; k < upTo; k++) {
      Outline room = outlines.next(Place.NEAR);
      Line across = across(room, random);
      Point from = across.from();
      Point to = across.to();
      List<Line> lines = chords(room, across);
      if (lines.isEmpty()) {
        continue;
      }
      List<Outline> all = PartedOutline.of(room, lines);
      worst.nextCase();
      parts += all.size();
      double length = room.perimeter().toNanometres()
          + lines.stream().mapToDouble(line -> line.length().toNanometres()).sum();
      Area left = all.stream().filter(part -> isOnLeft(part, from, to)).map(Outline::area).reduce(Area.ZERO, Area::plus);
      Area together = all.stream().map(Outline::area).reduce(Area.ZERO, Area::plus);
      Area said = answers == Answers.AS_GIVEN ? left : all.get(0).area();
      worst.see(OutlineSizeDifferential.difference(cut.areaOnLeft(room, from, to), said) / length,
          () -> from + " to " + to + " across " + Wkt.write(room));
      worst.see(together.minus(room.area()).toSquareMillimetres() * 1e12 / length, () -> "all parts of " + Wkt.write(room));
    }
    worst.note(parts + " parts");
  }

  /** A line of 200 m through the middle parts of a room. */
  static Line across(Outline room, SplittableRandom random) {
    double bearing = random.nextDouble(2 * Math.PI);
    Extent extent = room.extent();
    long x = middle(extent.low().xNanometres(), extent.high().xNanometres(), random);
    long y = middle(extent.low().yNanometres(), extent.high().yNanometres(), random);
    long dx = Math.round(1e11 * StrictMath.cos(bearing));
    long dy = Math.round(1e11 * StrictMath.sin(bearing));
    return new Line(Point.ofNanometres(x - dx, y - dy), Point.ofNanometres(x + dx, y + dy));
  }

  private static long middle(long low, long high, SplittableRandom random) {
    return Math.round(low + (high - low) * random.nextDouble(0.2, 0.8));
  }

  /** {@return the stretches of the line that lie on the floor; none if one is shorter than a micrometre} */
  static List<Line> chords(Outline room, Line across) {
    Point from = across.from();
    Point to = across.to();
    List<Double> crossings = new ArrayList<>();
    for (Ring ring : JtsPlane.rings(room)) {
      for (int i = 0; i < ring.size(); i++) {
        int next = (i + 1) % ring.size();
        double a = side(from, to, ring.x(i), ring.y(i));
        double b = side(from, to, ring.x(next), ring.y(next));
        if (a > 0 != b > 0) {
          double x = ring.x(i) + (double) (ring.x(next) - ring.x(i)) * a / (a - b);
          double y = ring.y(i) + (double) (ring.y(next) - ring.y(i)) * a / (a - b);
          double dx = to.xNanometres() - from.xNanometres();
          double dy = to.yNanometres() - from.yNanometres();
          crossings.add(((x - from.xNanometres()) * dx + (y - from.yNanometres()) * dy) / (dx * dx + dy * dy));
        }
      }
    }
    double[] at = crossings.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i + 1 < at.length; i += 2) {
      if ((at[i + 1] - at[i]) * 2e11 < 1000) {
        return List.of();
      }
      lines.add(new Line(at(from, to, at[i]), at(from, to, at[i + 1])));
    }
    return Arrays.stream(at).distinct().count() == at.length ? lines : List.of();
  }

  private static Point at(Point from, Point to, double share) {
    return Point.ofNanometres(Math.round(from.xNanometres() + share * (to.xNanometres() - from.xNanometres())),
        Math.round(from.yNanometres() + share * (to.yNanometres() - from.yNanometres())));
  }

  private static double side(Point from, Point to, long x, long y) {
    return (double) (to.xNanometres() - from.xNanometres()) * (y - from.yNanometres())
        - (double) (to.yNanometres() - from.yNanometres()) * (x - from.xNanometres());
  }

  /** By the corner that is farthest from the line. */
  private static boolean isOnLeft(Outline part, Point from, Point to) {
    double farthest = 0;
    for (Point corner : part.shell().corners()) {
      double side = side(from, to, corner.xNanometres(), corner.yNanometres());
      farthest = Math.abs(side) > Math.abs(farthest) ? side : farthest;
    }
    return farthest > 0;
  }
}
