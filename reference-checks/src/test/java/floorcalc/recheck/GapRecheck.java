package floorcalc.recheck;

import floorcalc.outline.Outline;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Rule 1, its premise: what is laid is the outline less the expansion gap. */
final class GapRecheck {
  /**
   * Square millimetres by which the laid area may differ from a mitred buffer. The buffer leaves out corners that are nearer to
   * each other than a share of its distance.
   */
  private static final double BUFFER = 2;
  private static final double MITRE_LIMIT = 10;

  private GapRecheck() {}

  static void check(FloorJob job, FloorPlan plan, List<String> faults) {
    double gap = job.rules().value(LayingRules.EXPANSION_GAP).toMillimetres();
    for (Room room : job.rooms()) {
      Polygon walls = polygon(room.outline());
      List<Polygon> laid = new ArrayList<>();
      for (Bay bay : plan.bays()) {
        if (bay.room().equals(room.name())) {
          laid.add(polygon(bay.laid()));
        }
      }
      double area = 0;
      for (Polygon bay : laid) {
        area += bay.getArea();
        double apart = bay.getBoundary().distance(walls.getBoundary());
        double beyond = OverlayNGRobust.overlay(bay, walls, OverlayNG.DIFFERENCE).getArea();
        if (Math.abs(apart - gap) > Recheck.ROUNDING || beyond > Recheck.NO_AREA) {
          faults.add("rule 1: a bay of " + room.name() + " comes as near as " + apart + " mm to its walls, not " + gap);
        }
      }
      BufferParameters mitred = new BufferParameters(1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, MITRE_LIMIT);
      Geometry inset = BufferOp.bufferOp(walls, -gap, mitred);
      if (Math.abs(inset.getArea() - area) > BUFFER || inset.getNumGeometries() != laid.size()) {
        faults.add("rule 1: " + room.name() + " less its gap is " + inset.getNumGeometries() + " bays of "
            + inset.getArea() + " mm2, but laid are " + laid.size() + " of " + area + " mm2");
      }
    }
  }

  private static Polygon polygon(Outline outline) {
    return SeenPiece.polygon(outline.shell(), outline.voids(), 0);
  }
}
