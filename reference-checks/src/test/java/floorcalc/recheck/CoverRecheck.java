package floorcalc.recheck;

import floorcalc.outline.Outline;
import floorcalc.plan.Bay;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Rule 1: the pieces of a bay cover its laid area, without hole, overlap or excess. */
final class CoverRecheck {
  private CoverRecheck() {}

  static void check(Bay bay, List<SeenPiece> pieces, List<String> faults) {
    Outline outline = bay.laid();
    Polygon laid = SeenPiece.polygon(outline.shell(), outline.voids(), 0);
    Geometry covered = OverlayNGRobust.union(pieces.stream().map(piece -> (Geometry) piece.inRoom).toList());
    need(OverlayNGRobust.overlay(laid, covered, OverlayNG.DIFFERENCE).getArea(), "hole in " + bay.bay(), faults);
    need(OverlayNGRobust.overlay(covered, laid, OverlayNG.DIFFERENCE).getArea(), "outside " + bay.bay(), faults);
    need(overlap(pieces), "overlap in " + bay.bay(), faults);
  }

  private static double overlap(List<SeenPiece> pieces) {
    STRtree tree = new STRtree();
    for (int i = 0; i < pieces.size(); i++) {
      tree.insert(pieces.get(i).inRoom.getEnvelopeInternal(), i);
    }
    double area = 0;
    for (int i = 0; i < pieces.size(); i++) {
      Polygon piece = pieces.get(i).inRoom;
      for (Object other : tree.query(piece.getEnvelopeInternal())) {
        if ((Integer) other > i) {
          area += OverlayNGRobust.overlay(piece, pieces.get((Integer) other).inRoom, OverlayNG.INTERSECTION).getArea();
        }
      }
    }
    return area;
  }

  private static void need(double area, String what, List<String> faults) {
    if (!(area <= Recheck.NO_AREA)) {
      faults.add(String.format(Locale.ROOT, "rule 1: %s of %.3f mm2", what, area));
    }
  }
}
