package floorcalc.recheck;

import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;

/** Rule 1: the pieces of a bay cover its laid area, without hole, overlap or excess. */
final class CoverCheck {
  private CoverCheck() {}

  static void check(String bay, Polygon laid, List<SeenPiece> pieces, Faults faults) {
    Geometry covered = Overlay.union(pieces.stream().map(piece -> piece.inRoom).toList());
    need(Overlay.difference(laid, covered).getArea(), bay, "a hole", faults);
    need(Overlay.difference(covered, laid).getArea(), bay, "floor outside the laid area", faults);
    need(overlap(pieces), bay, "an overlap", faults);
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
          area += Overlay.overlap(piece, pieces.get((Integer) other).inRoom);
        }
      }
    }
    return area;
  }

  private static void need(double area, String bay, String what, Faults faults) {
    if (!(area <= PlanRecheck.NO_AREA)) {
      faults.add(Rule.COVER, bay, String.format(Locale.ROOT, "%s of %.3f mm2", what, area), "at most 1 mm2 is allowed, which is rounding");
    }
  }
}
