package floorcalc.recheck;

import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.Cut;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.PieceKind;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** A piece as polygons in millimetres: as it lies in the room, and turned so that its boards run along x. */
final class SeenPiece {
  static final GeometryFactory GEOMETRY = new GeometryFactory();

  final LaidPiece piece;
  /** The place of its row in the list of all rows of the plan. */
  final int rowOfPlan;
  /** Its row in its bay, from 0. */
  final int row;
  final Polygon inRoom;
  final Polygon inFrame;
  final Envelope box;
  /** Whether another piece of its row meets its end at low x, its end at high x. */
  boolean meetsLow;
  boolean meetsHigh;

  SeenPiece(LaidPiece piece, Bay bay, int row, int rowOfPlan) {
    this.piece = piece;
    this.row = row;
    this.rowOfPlan = rowOfPlan;
    this.inRoom = polygon(piece.outline(), piece.holes(), 0);
    this.inFrame = polygon(piece.outline(), piece.holes(), -bay.direction().degrees());
    this.box = inFrame.getEnvelopeInternal();
  }

  String name() {
    return piece.piece();
  }

  Cut cut() {
    return piece.from();
  }

  boolean is(PieceKind kind) {
    return piece.kind() == kind;
  }

  static Polygon polygon(Ring shell, List<Ring> holes, double turnedByDegrees) {
    return GEOMETRY.createPolygon(ring(shell, turnedByDegrees),
        holes.stream().map(hole -> ring(hole, turnedByDegrees)).toArray(LinearRing[]::new));
  }

  private static LinearRing ring(Ring ring, double degrees) {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    Coordinate[] corners = new Coordinate[ring.size() + 1];
    for (int i = 0; i < ring.size(); i++) {
      double x = ring.x(i) / 1e6;
      double y = ring.y(i) / 1e6;
      corners[i] = new Coordinate(x * cos - y * sin, x * sin + y * cos);
    }
    corners[ring.size()] = corners[0].copy();
    return GEOMETRY.createLinearRing(corners);
  }

  /** The edges in the frame, each with the piece on its left. */
  List<LineSegment> edges() {
    List<LineSegment> edges = new ArrayList<>();
    addEdges(inFrame.getExteriorRing(), true, edges);
    for (int i = 0; i < inFrame.getNumInteriorRing(); i++) {
      addEdges(inFrame.getInteriorRingN(i), false, edges);
    }
    return edges;
  }

  private static void addEdges(LinearRing ring, boolean counterClockwise, List<LineSegment> edges) {
    Coordinate[] at = ring.getCoordinates();
    boolean asWanted = Orientation.isCCW(at) == counterClockwise;
    for (int i = 1; i < at.length; i++) {
      edges.add(asWanted ? new LineSegment(at[i - 1], at[i]) : new LineSegment(at[i], at[i - 1]));
    }
  }
}
