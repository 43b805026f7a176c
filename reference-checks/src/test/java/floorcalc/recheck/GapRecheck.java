package floorcalc.recheck;

import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.plan.RoomBreak;
import floorcalc.rules.LayingRules;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.math.Vector2D;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Rule 1, its premise: what is laid is the outline less the expansion gap. A strip as wide as the gap is taken off along each
 * wall, and at each reflex corner the kite between the two strips, so that they are mitred.
 */
final class GapRecheck {
  /** A mitre that would reach further than so many gaps is cut off square there. */
  private static final double MITRE_LIMIT = 10;
  /** Square millimetres for each millimetre of wall: what rounding corners to the nanometre can do. */
  private static final double ROUNDING = 1e-5;
  /** Square millimetres of floor between gaps that are no floor. */
  private static final double CRUMB = 1e-2;

  private GapRecheck() {}

  static void check(FloorJob job, FloorPlan plan, List<String> faults) {
    double gap = job.rules().value(LayingRules.EXPANSION_GAP).toMillimetres();
    for (Room room : job.rooms()) {
      Polygon walls = polygon(room.outline());
      int bays = 0;
      double area = 0;
      for (Bay bay : plan.bays()) {
        if (bay.room().equals(room.name())) {
          Polygon laid = polygon(bay.laid());
          bays++;
          area += laid.getArea();
          double apart = laid.getBoundary().distance(walls.getBoundary());
          double beyond = OverlayNGRobust.overlay(laid, walls, OverlayNG.DIFFERENCE).getArea();
          boolean far = plan.breaks().isEmpty() && apart > gap + Recheck.ROUNDING;
          if (apart < gap - Recheck.ROUNDING || far || beyond > Recheck.NO_AREA) {
            faults.add("rule 1: " + bay.bay() + " comes as near as " + apart + " mm to its walls, not " + gap);
          }
        }
      }
      Geometry rest = gap == 0 ? walls
          : OverlayNGRobust.overlay(walls, OverlayNGRobust.union(strips(room.outline(), gap)), OverlayNG.DIFFERENCE);
      for (RoomBreak line : plan.breaks()) {
        if (line.room().equals(room.name())) {
          rest = OverlayNGRobust.overlay(rest, strip(line), OverlayNG.DIFFERENCE);
        }
      }
      int parts = 0;
      for (int i = 0; i < rest.getNumGeometries(); i++) {
        parts += rest.getGeometryN(i).getArea() > CRUMB ? 1 : 0;
      }
      double rounding = CRUMB + ROUNDING * walls.getLength();
      if (Math.abs(rest.getArea() - area) > rounding || parts != bays) {
        faults.add("rule 1: " + room.name() + " less its gap is " + parts + " bays of " + rest.getArea()
            + " mm2, but laid are " + bays + " of " + area + " mm2");
      }
    }
  }

  private static Polygon polygon(Outline outline) {
    return SeenPiece.polygon(outline.shell(), outline.voids(), 0);
  }

  /** A break takes half its gap on either side of its middle line, square at its ends. */
  private static Geometry strip(RoomBreak line) {
    Coordinate[] ends = {new Coordinate(line.line().from().xNanometres() / 1e6, line.line().from().yNanometres() / 1e6),
        new Coordinate(line.line().to().xNanometres() / 1e6, line.line().to().yNanometres() / 1e6)};
    return BufferOp.bufferOp(new GeometryFactory().createLineString(ends), line.gap().toMillimetres() / 2,
        new BufferParameters(8, BufferParameters.CAP_FLAT));
  }

  /** The floor lies on the left of every wall of every ring. */
  private static List<Geometry> strips(Outline outline, double gap) {
    List<Geometry> strips = new ArrayList<>();
    addStrips(outline.shell(), gap, strips);
    outline.voids().forEach(ring -> addStrips(ring, gap, strips));
    return strips;
  }

  private static void addStrips(Ring ring, double gap, List<Geometry> strips) {
    int n = ring.size();
    for (int i = 0; i < n; i++) {
      Vector2D from = corner(ring, i);
      Vector2D to = corner(ring, (i + 1) % n);
      Vector2D after = corner(ring, (i + 2) % n);
      Vector2D along = to.subtract(from).normalize();
      Vector2D next = after.subtract(to).normalize();
      Vector2D in = along.rotateByQuarterCircle(1).multiply(gap);
      Vector2D nextIn = next.rotateByQuarterCircle(1).multiply(gap);
      strips.add(polygon(from, to, to.add(in), from.add(in)));
      double turn = along.getX() * next.getY() - along.getY() * next.getX();
      if (turn < 0) {
        Vector2D middle = in.add(nextIn);
        double cosineOfTurn = along.dot(next);
        Vector2D mitre = middle.divide(1 + cosineOfTurn);
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
  }

  private static Vector2D corner(Ring ring, int index) {
    return Vector2D.create(ring.x(index) / 1e6, ring.y(index) / 1e6);
  }

  private static Polygon polygon(Vector2D... corners) {
    Coordinate[] at = new Coordinate[corners.length + 1];
    for (int i = 0; i < corners.length; i++) {
      at[i] = corners[i].toCoordinate();
    }
    at[corners.length] = at[0].copy();
    return SeenPiece.GEOMETRY.createPolygon(at);
  }
}
