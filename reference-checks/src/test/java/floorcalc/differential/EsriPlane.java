package floorcalc.differential;

import com.esri.core.geometry.Geometry;
import com.esri.core.geometry.GeometryEngine;
import com.esri.core.geometry.Polygon;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.List;
import java.util.stream.IntStream;

/** Esri Geometry API, without a spatial reference. Its outer rings run clockwise. */
final class EsriPlane implements Plane, PartedDifferential.PlaneCut {
  @Override
  public Library library() {
    return Library.ESRI_GEOMETRY;
  }

  @Override
  public double area(Outline outline) {
    return polygon(outline).calculateArea2D();
  }

  @Override
  public double perimeter(Outline outline) {
    return polygon(outline).calculateLength2D();
  }

  @Override
  public double areaOfUnion(List<Outline> pieces) {
    return union(pieces).calculateArea2D();
  }

  @Override
  public double areaInOneAlone(List<Outline> some, List<Outline> others) {
    return GeometryEngine.symmetricDifference(union(some), union(others), null).calculateArea2D();
  }

  /** The room and the half-plane, which is a square of 200 m at the line. */
  @Override
  public double areaOnLeft(Outline room, Point from, Point to) {
    double dx = to.xNanometres() - from.xNanometres();
    double dy = to.yNanometres() - from.yNanometres();
    Polygon left = new Polygon();
    left.startPath(from.xNanometres(), from.yNanometres());
    left.lineTo(from.xNanometres() - dy, from.yNanometres() + dx);
    left.lineTo(to.xNanometres() - dy, to.yNanometres() + dx);
    left.lineTo(to.xNanometres(), to.yNanometres());
    left.closePathWithLine();
    return GeometryEngine.intersect(polygon(room), left, null).calculateArea2D();
  }

  static Geometry union(List<Outline> pieces) {
    return GeometryEngine.union(pieces.stream().map(EsriPlane::polygon).toArray(Geometry[]::new), null);
  }

  static Polygon polygon(Outline outline) {
    Polygon polygon = new Polygon();
    addTo(polygon, outline.shell());
    outline.voids().forEach(hole -> addTo(polygon, hole));
    return polygon;
  }

  private static void addTo(Polygon polygon, Ring anticlockwise) {
    Ring ring = anticlockwise.reversed();
    polygon.startPath(ring.x(0), ring.y(0));
    IntStream.range(1, ring.size()).forEach(i -> polygon.lineTo(ring.x(i), ring.y(i)));
    polygon.closePathWithLine();
  }
}
