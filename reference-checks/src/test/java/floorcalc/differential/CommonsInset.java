package floorcalc.differential;

import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.ConvexArea;
import org.apache.commons.geometry.euclidean.twod.Lines;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** The floor of a convex room is what all its walls, moved in, have on their left: half-planes cut one after the other. */
final class CommonsInset implements Inset {
  @Override
  public Library library() {
    return Library.COMMONS_GEOMETRY;
  }

  @Override
  public String rooms() {
    return "convex rooms, by half-planes";
  }

  @Override
  public boolean isForConvexRooms() {
    return true;
  }

  @Override
  public String remark() {
    return "the library works in metres to a picometre";
  }

  @Override
  public Geometry walls(Outline room, long gap) {
    Ring ring = room.shell();
    ConvexArea floor = ConvexArea.full();
    for (int i = 0; i < ring.size() && floor != null; i++) {
      Vector2D from = corner(ring, i);
      Vector2D along = from.directionTo(corner(ring, (i + 1) % ring.size()));
      Vector2D moved = from.add(along.orthogonal().multiply(gap * CommonsPlane.METRE));
      floor = floor.split(Lines.fromPointAndDirection(moved, along, CommonsPlane.PICOMETRE)).getMinus();
    }
    List<Coordinate> corners = new ArrayList<>();
    if (floor != null) {
      floor.getVertices().forEach(v -> corners.add(new Coordinate(v.getX() / CommonsPlane.METRE, v.getY() / CommonsPlane.METRE)));
    }
    return JtsPlane.closed(corners);
  }

  private static Vector2D corner(Ring ring, int index) {
    return Vector2D.of(ring.x(index) * CommonsPlane.METRE, ring.y(index) * CommonsPlane.METRE);
  }
}
