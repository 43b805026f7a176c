package floorcalc.recheck;

import floorcalc.recheck.AskedJob.Room;
import floorcalc.recheck.AskedJob.Segment;
import floorcalc.recheck.ToldPlan.Bay;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.math.Vector2D;

/**
 * Rule 1, its premise: what is laid is the room less its gaps. A strip as wide as the gap is taken off along each wall, and at each
 * reflex corner the kite between the two strips, so that they are mitred; then half the gap of a break on either side of its line.
 */
final class GapCheck {
  /** A mitre that would reach further than so many gaps is cut off square there. */
  private static final double MITRE_LIMIT = 10;
  /** Square millimetres for each millimetre of wall: what putting walls in line with the boards and rounding can do. */
  private static final double ROUNDING = 1e-5;
  /** Square millimetres of floor between gaps that are no floor. */
  private static final double CRUMB = 1e-2;

  private final AskedJob job;
  private final Faults faults;

  private GapCheck(AskedJob job, Faults faults) {
    this.job = job;
    this.faults = faults;
  }

  static void check(AskedJob job, Room room, List<Bay> bays, List<Segment> breaks, Faults faults) {
    GapCheck check = new GapCheck(job, faults);
    faults.tally.rooms++;
    if (bays.isEmpty()) {
      faults.add(Rule.COVER, room.name(), "no bay", "each room of the job is laid");
    } else if (room.walls().isPresent()) {
      faults.tally.walls++;
      check.walls(room, room.walls().get(), bays, breaks);
    } else {
      faults.leaveOut("the gap at the walls of " + room.name(), "the room was surveyed; where its walls are only the survey tells");
      check.apart(room, bays);
    }
  }

  private void walls(Room room, Polygon walls, List<Bay> bays, List<Segment> breaks) {
    double gap = job.gap() / Lengths.PER_MILLIMETRE;
    for (Bay bay : bays) {
      double apart = bay.laid().getBoundary().distance(walls.getBoundary());
      boolean far = breaks.isEmpty() && apart > gap + PlanRecheck.ROUNDING;
      if (apart < gap - PlanRecheck.ROUNDING || far) {
        faults.add(Rule.COVER, bay.name(), "a gap of " + Faults.mm(apart) + " to the walls of " + room.name(), "the gap is " + Faults.mm(gap));
      }
    }
    Geometry rest = gap == 0 ? walls : Overlay.difference(walls, Overlay.union(strips(walls, gap)));
    double half = job.breakGap() / Lengths.PER_MILLIMETRE / 2;
    for (Segment line : breaks) {
      rest = half == 0 ? rest : Overlay.difference(Overlay.difference(rest, ProfileCheck.strip(line, half)), ProfileCheck.strip(line, -half));
    }
    Geometry laid = Overlay.union(bays.stream().map(Bay::laid).toList());
    double rounding = CRUMB + ROUNDING * walls.getLength();
    need(Overlay.difference(rest, laid).getArea(), rounding, room, "floor that is in no bay");
    need(Overlay.difference(laid, rest).getArea(), rounding, room, "a laid area where the gap should be");
    double twice = bays.stream().mapToDouble(bay -> bay.laid().getArea()).sum() - laid.getArea();
    need(twice, rounding, room, "bays over each other");
    int parts = 0;
    for (int i = 0; i < rest.getNumGeometries(); i++) {
      parts += rest.getGeometryN(i).getArea() > CRUMB ? 1 : 0;
    }
    if (half == 0 && !breaks.isEmpty()) {
      faults.leaveOut("how many bays the breaks of " + room.name() + " make", "the breaks have no gap");
    } else if (parts != bays.size()) {
      faults.add(Rule.COVER, room.name(), bays.size() + " bays", "the room less its gaps is " + parts + " pieces of floor");
    }
  }

  /** Without walls all that is known is that bays do not lie on each other. */
  private void apart(Room room, List<Bay> bays) {
    for (int i = 0; i < bays.size(); i++) {
      for (int j = i + 1; j < bays.size(); j++) {
        need(Overlay.overlap(bays.get(i).laid(), bays.get(j).laid()), PlanRecheck.NO_AREA, room, "bays over each other");
      }
    }
  }

  private void need(double area, double most, Room room, String what) {
    if (!(area <= most)) {
      faults.add(Rule.COVER, room.name(), String.format(Locale.ROOT, "%s, %.3f mm2", what, area),
          "the bays are the room less its gaps, to rounding");
    }
  }

  /** The floor lies on the left of every wall of every ring. */
  private static List<Geometry> strips(Polygon walls, double gap) {
    List<Geometry> strips = new ArrayList<>();
    for (List<LineSegment> ring : Shapes.edges(walls)) {
      for (int i = 0; i < ring.size(); i++) {
        addStrips(ring.get(i), ring.get((i + 1) % ring.size()), gap, strips);
      }
    }
    return strips;
  }

  private static void addStrips(LineSegment wall, LineSegment nextWall, double gap, List<Geometry> strips) {
    Vector2D from = Vector2D.create(wall.p0);
    Vector2D to = Vector2D.create(wall.p1);
    Vector2D along = to.subtract(from).normalize();
    Vector2D next = Vector2D.create(nextWall.p1).subtract(to).normalize();
    Vector2D in = along.rotateByQuarterCircle(1).multiply(gap);
    Vector2D nextIn = next.rotateByQuarterCircle(1).multiply(gap);
    strips.add(polygon(from, to, to.add(in), from.add(in)));
    double turn = along.getX() * next.getY() - along.getY() * next.getX();
    if (turn < 0) {
      Vector2D mitre = in.add(nextIn).divide(1 + along.dot(next));
      if (mitre.length() <= MITRE_LIMIT * gap) {
        strips.add(polygon(to, to.add(in), to.add(mitre), to.add(nextIn)));
      } else {
        Vector2D outward = along.subtract(next).normalize();
        double reach = (MITRE_LIMIT * gap - in.dot(outward)) / along.dot(outward);
        strips.add(polygon(to, to.add(in), to.add(in).add(along.multiply(reach)),
            to.add(nextIn).add(next.multiply(-reach)), to.add(nextIn)));
      }
    }
  }

  private static Polygon polygon(Vector2D... corners) {
    return Shapes.polygon(List.of(corners).stream().map(Vector2D::toCoordinate).toList(), List.of());
  }
}
