package floorcalc.differential;

import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Lines;
import org.apache.commons.geometry.euclidean.twod.RegionBSPTree2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.apache.commons.geometry.euclidean.twod.path.LinePath;
import org.apache.commons.numbers.core.Precision;

/**
 * Apache Commons Geometry: regions as trees of half-planes, in metres.
 * <p>
 * Its precision is one number that it holds distances against and sines of angles as well, so it must fit both. Measured on
 * 500 of these outlines: in nanometres no precision serves, many areas come out infinite; in metres one of 10 pm and less gives every
 * area to a millionth of a nanometre along the walls, one of 1 nm loses half of the floor of some. Here it is a picometre.
 */
final class CommonsPlane implements Plane, PartedDifferential.PlaneCut {
  static final double METRE = 1e-9;
  static final Precision.DoubleEquivalence PICOMETRE = Precision.doubleEquivalenceOfEpsilon(1e-12);

  @Override
  public Library library() {
    return Library.COMMONS_GEOMETRY;
  }

  @Override
  public double area(Outline outline) {
    return region(outline).getSize() / METRE / METRE;
  }

  @Override
  public double perimeter(Outline outline) {
    return region(outline).getBoundarySize() / METRE;
  }

  @Override
  public double areaOfUnion(List<Outline> pieces) {
    return union(pieces).getSize() / METRE / METRE;
  }

  @Override
  public double areaInOneAlone(List<Outline> some, List<Outline> others) {
    RegionBSPTree2D result = RegionBSPTree2D.empty();
    result.xor(union(some), union(others));
    return result.getSize() / METRE / METRE;
  }

  @Override
  public double areaOnLeft(Outline room, Point from, Point to) {
    RegionBSPTree2D left = region(room).split(Lines.fromPoints(place(from), place(to), PICOMETRE)).getMinus();
    return left == null ? 0 : left.getSize() / METRE / METRE;
  }

  private static Vector2D place(Point point) {
    return Vector2D.of(point.xNanometres() * METRE, point.yNanometres() * METRE);
  }

  RegionBSPTree2D union(List<Outline> pieces) {
    RegionBSPTree2D all = RegionBSPTree2D.empty();
    for (Outline piece : pieces) {
      all.union(region(piece));
    }
    return all;
  }

  RegionBSPTree2D region(Outline outline) {
    RegionBSPTree2D region = path(outline.shell()).toTree();
    for (Ring hole : outline.voids()) {
      region.difference(path(hole.reversed()).toTree());
    }
    return region;
  }

  /** The ring anticlockwise. */
  private LinePath path(Ring ring) {
    List<Vector2D> corners = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      corners.add(Vector2D.of(ring.x(i) * METRE, ring.y(i) * METRE));
    }
    return LinePath.fromVertexLoop(corners, PICOMETRE);
  }
}
