package floorcalc.drawing;

import floorcalc.levels.Levels;
import floorcalc.levels.SpotLevel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;

/**
 * The floor between its readings, as triangles that are planes. A cell of a grid is four of them round its middle, which is as high as the mean of its
 * corners; a cell with three corners is one. Scattered readings are joined by the triangulation of Delaunay. Nothing lies outside
 * the hull of the readings. Places are millimetres on paper, heights are nanometres; the first vertices are the readings.
 */
final class Relief {
  private final List<double[]> vertices = new ArrayList<>();
  private final List<int[]> triangles = new ArrayList<>();
  private final ReadingGrid grid;

  private Relief(Levels levels, Paper paper) {
    List<SpotLevel> spots = levels.spots();
    for (SpotLevel spot : spots) {
      vertices.add(new double[] {paper.x(spot.place().xNanometres()), paper.y(spot.place().yNanometres()),
          spot.height().toNanometres()});
    }
    grid = levels.isGrid() ? new ReadingGrid(spots) : null;
    if (grid != null) {
      cells();
    } else {
      scatter(spots);
    }
  }

  static Relief of(Levels levels, Paper paper) {
    return new Relief(levels, paper);
  }

  boolean isGrid() {
    return grid != null;
  }

  /** The grid of readings that are one. */
  ReadingGrid grid() {
    return grid;
  }

  List<int[]> triangles() {
    return triangles;
  }

  double x(int vertex) {
    return vertices.get(vertex)[0];
  }

  double y(int vertex) {
    return vertices.get(vertex)[1];
  }

  double height(int vertex) {
    return vertices.get(vertex)[2];
  }

  int size() {
    return vertices.size();
  }

  private void cells() {
    for (int column = 0; column + 1 < grid.xs.length; column++) {
      for (int row = 0; row + 1 < grid.ys.length; row++) {
        int[] corners = grid.corners(column, row);
        if (corners.length == 3) {
          triangles.add(corners);
        } else if (corners.length == 4) {
          int middle = vertices.size();
          double[] mean = new double[3];
          for (int i = 0; i < 3; i++) {
            mean[i] = (vertices.get(corners[0])[i] + vertices.get(corners[1])[i] + vertices.get(corners[2])[i]
                + vertices.get(corners[3])[i]) / 4;
          }
          vertices.add(mean);
          for (int i = 0; i < 4; i++) {
            triangles.add(new int[] {corners[i], corners[(i + 1) % 4], middle});
          }
        }
      }
    }
  }

  private void scatter(List<SpotLevel> spots) {
    Map<Coordinate, Integer> numbers = new HashMap<>();
    List<Coordinate> places = new ArrayList<>();
    for (int i = 0; i < spots.size(); i++) {
      Coordinate place = new Coordinate(spots.get(i).place().xNanometres() / 1e6, spots.get(i).place().yNanometres() / 1e6);
      numbers.put(place, i);
      places.add(place);
    }
    DelaunayTriangulationBuilder builder = new DelaunayTriangulationBuilder();
    builder.setSites(places);
    Geometry joined = builder.getTriangles(new GeometryFactory());
    for (int t = 0; t < joined.getNumGeometries(); t++) {
      Coordinate[] ring = joined.getGeometryN(t).getCoordinates();
      int[] corners = {numbers.get(ring[0]), numbers.get(ring[1]), numbers.get(ring[2])};
      // The order in which the triangulation hands them out is its own affair: the drawing starts each at its first reading.
      int first = corners[0] <= corners[1] && corners[0] <= corners[2] ? 0 : corners[1] <= corners[2] ? 1 : 2;
      int[] turned = {corners[first], corners[(first + 1) % 3], corners[(first + 2) % 3]};
      triangles.add(turn(turned) < 0 ? turned : new int[] {turned[0], turned[2], turned[1]});
    }
    triangles.sort(Comparator.<int[]>comparingInt(t -> t[0]).thenComparingInt(t -> t[1]).thenComparingInt(t -> t[2]));
  }

  /** Negative if the corners run anticlockwise as seen on the sheet, whose y runs down. */
  private double turn(int[] t) {
    return (x(t[1]) - x(t[0])) * (y(t[2]) - y(t[0])) - (x(t[2]) - x(t[0])) * (y(t[1]) - y(t[0]));
  }
}
