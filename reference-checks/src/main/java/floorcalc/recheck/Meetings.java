package floorcalc.recheck;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.index.strtree.STRtree;

/** Where two pieces of a bay meet along an edge, in the frame of the bay: at an end, or on a row line. */
final class Meetings {
  /** Millimetres of edge that two pieces must share to meet. */
  private static final double SHORTEST = 1e-3;

  /** An end joint: where it stands along the row, and the pieces on its two sides. */
  record Joint(double x, SeenPiece left, SeenPiece right) {}

  /** A stretch of a row line that two pieces share. */
  record Contact(double from, double to, double y, SeenPiece below, SeenPiece above) {}

  final List<Joint> joints = new ArrayList<>();
  final List<Contact> contacts = new ArrayList<>();
  private final Faults faults;

  private Meetings(Faults faults) {
    this.faults = faults;
  }

  static Meetings of(List<SeenPiece> pieces, Faults faults) {
    Meetings meetings = new Meetings(faults);
    STRtree tree = new STRtree();
    for (int i = 0; i < pieces.size(); i++) {
      tree.insert(pieces.get(i).box, i);
    }
    List<List<LineSegment>> edges = pieces.stream()
        .map(piece -> Shapes.edges(piece.inFrame).stream().flatMap(List::stream).toList()).toList();
    for (int i = 0; i < pieces.size(); i++) {
      Envelope near = new Envelope(pieces.get(i).box);
      near.expandBy(PlanRecheck.ROUNDING);
      for (Object other : tree.query(near)) {
        int j = (Integer) other;
        if (j > i) {
          meetings.look(pieces.get(i), edges.get(i), pieces.get(j), edges.get(j));
        }
      }
    }
    Set<List<String>> pairs = new LinkedHashSet<>();
    for (Joint joint : meetings.joints) {
      joint.left().meetsHigh = true;
      joint.right().meetsLow = true;
      pairs.add(List.of(joint.left().name(), joint.right().name()));
    }
    faults.tally.joints += pairs.size();
    faults.tally.contacts += meetings.contacts.size();
    return meetings;
  }

  private void look(SeenPiece a, List<LineSegment> edgesOfA, SeenPiece b, List<LineSegment> edgesOfB) {
    for (LineSegment first : edgesOfA) {
      for (LineSegment second : edgesOfB) {
        LineSegment shared = shared(first, second);
        if (shared != null) {
          sort(a, b, first, shared);
        }
      }
    }
  }

  /** The stretch in which two edges lie on each other and run opposite ways, so that the pieces lie on its two sides. */
  private static LineSegment shared(LineSegment first, LineSegment second) {
    double length = first.getLength();
    if (length == 0 || second.getLength() == 0) {
      return null;
    }
    double from = Math.max(0, along(first, second.p1));
    double to = Math.min(length, along(first, second.p0));
    if (to - from < SHORTEST) {
      return null;
    }
    Coordinate low = first.pointAlong(from / length);
    Coordinate high = first.pointAlong(to / length);
    boolean onEachOther = second.distancePerpendicular(low) <= PlanRecheck.ROUNDING
        && second.distancePerpendicular(high) <= PlanRecheck.ROUNDING;
    return onEachOther ? new LineSegment(low, high) : null;
  }

  private static double along(LineSegment line, Coordinate point) {
    return line.projectionFactor(point) * line.getLength();
  }

  private void sort(SeenPiece a, SeenPiece b, LineSegment edgeOfA, LineSegment shared) {
    boolean upright = Math.abs(shared.p1.x - shared.p0.x) <= PlanRecheck.ROUNDING;
    boolean level = Math.abs(shared.p1.y - shared.p0.y) <= PlanRecheck.ROUNDING;
    if (upright && a.row == b.row) {
      boolean aIsLeft = edgeOfA.p1.y > edgeOfA.p0.y;
      joints.add(new Joint((shared.p0.x + shared.p1.x) / 2, aIsLeft ? a : b, aIsLeft ? b : a));
    } else if (level && Math.abs(a.row - b.row) == 1) {
      boolean aIsBelow = edgeOfA.p1.x < edgeOfA.p0.x;
      contacts.add(new Contact(Math.min(shared.p0.x, shared.p1.x), Math.max(shared.p0.x, shared.p1.x),
          (shared.p0.y + shared.p1.y) / 2, aIsBelow ? a : b, aIsBelow ? b : a));
    } else {
      faults.add(Rule.FACTORY_ENDS, a.name() + " and " + b.name(), "that they meet from " + Faults.at(shared.p0) + " to " + Faults.at(shared.p1)
          + " in the frame of the bay",
          "boards meet at an end within a row or on the line between two rows that follow each other");
    }
  }
}
