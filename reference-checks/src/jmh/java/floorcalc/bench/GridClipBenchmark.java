package floorcalc.bench;

import floorcalc.outline.Ring;
import floorcalc.plan.FloorJob;
import floorcalc.rules.LayingRules;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What {@link PlanningBenchmark} is held against: the same rooms, tiled with a grid of boards whose rows are shifted by a third
 * of a board, each board clipped to the laid area with a general-purpose geometry library. No offcut is used twice, no
 * rule is kept, nothing is checked; only the shapes of the pieces come out.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@State(Scope.Benchmark)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(2)
public class GridClipBenchmark {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static final double NANOMETRES = 1e6;
  private static final int SHIFTS = 3;

  /** About so many boards are needed. */
  @Param({"12", "120", "1200", "12000", "120000"})
  public int boards;

  private Polygon walls;
  private double gap;

  /** Makes the room. */
  @Setup
  public void room() {
    FloorJob job = PlanningBenchmark.job(boards);
    Ring shell = job.rooms().get(0).outline().shell();
    Coordinate[] corners = new Coordinate[shell.size() + 1];
    for (int i = 0; i < corners.length; i++) {
      int corner = i % shell.size();
      corners[i] = new Coordinate(shell.x(corner) / NANOMETRES, shell.y(corner) / NANOMETRES);
    }
    walls = GEOMETRY.createPolygon(corners);
    gap = job.rules().value(LayingRules.EXPANSION_GAP).toNanometres() / NANOMETRES;
  }

  /** Clips every board of the grid. */
  @Benchmark
  public List<Geometry> everyBoard() {
    Geometry laid = laid();
    List<Geometry> pieces = new ArrayList<>();
    for (Geometry board : grid(laid)) {
      clip(board, laid, pieces);
    }
    return pieces;
  }

  /** Clips only the boards that reach over the laid area, which a prepared geometry tells. */
  @Benchmark
  public List<Geometry> boardsAtTheWalls() {
    Geometry laid = laid();
    PreparedGeometry prepared = PreparedGeometryFactory.prepare(laid);
    List<Geometry> pieces = new ArrayList<>();
    for (Geometry board : grid(laid)) {
      if (prepared.contains(board)) {
        pieces.add(board);
      } else {
        clip(board, laid, pieces);
      }
    }
    return pieces;
  }

  private Geometry laid() {
    BufferParameters mitred = new BufferParameters();
    mitred.setJoinStyle(BufferParameters.JOIN_MITRE);
    return BufferOp.bufferOp(walls, -gap, mitred);
  }

  private static List<Geometry> grid(Geometry laid) {
    Envelope box = laid.getEnvelopeInternal();
    List<Geometry> grid = new ArrayList<>();
    int row = 0;
    for (double y = box.getMinY(); y < box.getMaxY(); y += PlanningBenchmark.WIDTH) {
      double shift = (double) PlanningBenchmark.BOARD * (row % SHIFTS) / SHIFTS;
      for (double x = box.getMinX() - shift; x < box.getMaxX(); x += PlanningBenchmark.BOARD) {
        grid.add(GEOMETRY.toGeometry(new Envelope(x, x + PlanningBenchmark.BOARD, y, y + PlanningBenchmark.WIDTH)));
      }
      row++;
    }
    return grid;
  }

  private static void clip(Geometry board, Geometry laid, List<Geometry> pieces) {
    Geometry piece = OverlayNGRobust.overlay(board, laid, OverlayNG.INTERSECTION);
    if (!piece.isEmpty()) {
      pieces.add(piece);
    }
  }
}
