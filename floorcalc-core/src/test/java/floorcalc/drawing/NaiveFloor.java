package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.ExpansionGap;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.Cut;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.OpenedBoard;
import floorcalc.plan.PieceKind;
import floorcalc.plan.Room;
import floorcalc.plan.Row;
import floorcalc.rules.LayingRules;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * Floors to draw, laid by the simplest habit: strips from the low side up, in each run the last offcut first and whole
 * boards after it. It keeps no rule but gives every piece a true shape, so drawings can be tested without the planner.
 */
final class NaiveFloor {
  private static final GeometryFactory JTS = new GeometryFactory();

  private final FloorJob job;
  private final Direction direction;
  private final double pitch;
  private final double boardLength;
  private final double kerf;
  private final List<Bay> bays = new ArrayList<>();
  private final List<OpenedBoard> opened = new ArrayList<>();
  private double offcut;
  private int offcutBoard;

  private NaiveFloor(FloorJob job, Direction direction) {
    this.job = job;
    this.direction = direction;
    this.pitch = job.board().laidPitch().toNanometres();
    this.boardLength = job.board().longest().toNanometres();
    this.kerf = job.rules().value(LayingRules.SAW_KERF).toNanometres();
  }

  static FloorPlan plan(FloorJob job, Direction direction) {
    NaiveFloor floor = new NaiveFloor(job, direction);
    Length gap = job.rules().value(LayingRules.EXPANSION_GAP);
    for (Room room : job.rooms()) {
      int number = 1;
      for (Outline laid : ExpansionGap.inset(room.outline(), gap).value().laid()) {
        floor.bays.add(floor.bay(room.name() + "-" + number++, room.name(), laid));
      }
    }
    return Rooms.plan(job, floor.bays, floor.opened);
  }

  private Bay bay(String name, String room, Outline laid) {
    Polygon frame = JTS.createPolygon(ring(direction.toFrame(laid.shell())),
        laid.voids().stream().map(v -> ring(direction.toFrame(v))).toArray(LinearRing[]::new));
    Envelope box = frame.getEnvelopeInternal();
    double rest = box.getHeight() % pitch;
    double first = rest > 0 && rest < 70e6 ? Math.rint((pitch + rest) / 2) : pitch;
    List<Row> rows = new ArrayList<>();
    double low = box.getMinY() - (pitch - first);
    for (int number = 1; low < box.getMaxY() - 1; number++) {
      List<LaidPiece> pieces = row(name + "." + number, frame, low, box);
      double wide = 0;
      for (LaidPiece piece : pieces) {
        wide = Math.max(wide, piece.from().width().toNanometres());
      }
      rows.add(new Row(number, Length.ofNanometres((long) wide), pieces));
      low += pitch;
    }
    return new Bay(name, room, direction, laid, rows);
  }

  private List<LaidPiece> row(String name, Polygon laid, double low, Envelope box) {
    Geometry strip = JTS.toGeometry(new Envelope(box.getMinX() - 1, box.getMaxX() + 1, low, low + pitch));
    List<Polygon> runs = polygons(laid.intersection(strip));
    runs.sort(Comparator.comparingDouble(r -> r.getEnvelopeInternal().getMinX()));
    List<LaidPiece> pieces = new ArrayList<>();
    for (int run = 0; run < runs.size(); run++) {
      lay(name, run + 1, runs.get(run), low, pieces);
    }
    return pieces;
  }

  private void lay(String row, int run, Polygon area, double low, List<LaidPiece> pieces) {
    double at = Math.rint(area.getEnvelopeInternal().getMinX());
    double end = Math.rint(area.getEnvelopeInternal().getMaxX());
    boolean begins = true;
    while (at < end) {
      boolean reuse = begins && offcut > 100e6 && offcut < end - at;
      double full = reuse ? offcut : boardLength;
      double to = Math.min(at + full, end);
      boolean ends = to == end;
      int board = reuse ? offcutBoard : open(row);
      double from = reuse ? boardLength - full : 0;
      PieceKind kind = begins && ends ? PieceKind.SINGLE : begins ? reuse ? PieceKind.START : PieceKind.FULL
          : ends && to - at < boardLength ? PieceKind.END : PieceKind.FULL;
      Geometry slice = JTS.toGeometry(new Envelope(at, to, low - 1, low + pitch + 1));
      for (Polygon part : polygons(area.intersection(slice))) {
        Envelope b = part.getEnvelopeInternal();
        Cut cut = new Cut(board, nanometres(from + b.getMinX() - at), nanometres(from + b.getMaxX() - at),
            nanometres(b.getMinY() - low), nanometres(b.getMaxY() - low));
        pieces.add(new LaidPiece(row + "." + (pieces.size() + 1), run, kind, ring(part.getExteriorRing()),
            holes(part), cut));
      }
      if (ends) {
        offcut = from + (to - at) < boardLength ? boardLength - from - (to - at) - kerf : 0;
        offcutBoard = board;
      }
      begins = false;
      at = to;
    }
  }

  private int open(String row) {
    opened.add(new OpenedBoard(opened.size() + 1, job.board().longest(), row));
    return opened.size();
  }

  private List<Ring> holes(Polygon part) {
    List<Ring> holes = new ArrayList<>();
    for (int i = 0; i < part.getNumInteriorRing(); i++) {
      holes.add(ring(part.getInteriorRingN(i)));
    }
    return holes;
  }

  private static Length nanometres(double value) {
    return Length.ofNanometres((long) Math.rint(value));
  }

  private static List<Polygon> polygons(Geometry geometry) {
    List<Polygon> polygons = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (geometry.getGeometryN(i) instanceof Polygon polygon && polygon.getArea() > 1e12) {
        polygons.add(polygon);
      }
    }
    return polygons;
  }

  private static LinearRing ring(Ring ring) {
    Coordinate[] corners = new Coordinate[ring.size() + 1];
    for (int i = 0; i <= ring.size(); i++) {
      corners[i] = new Coordinate(ring.x(i % ring.size()), ring.y(i % ring.size()));
    }
    return JTS.createLinearRing(corners);
  }

  private Ring ring(LinearRing ring) {
    Coordinate[] corners = ring.getCoordinates();
    long[] xs = new long[corners.length - 1];
    long[] ys = new long[corners.length - 1];
    for (int i = 0; i < xs.length; i++) {
      xs[i] = (long) Math.rint(corners[i].x);
      ys[i] = (long) Math.rint(corners[i].y);
    }
    return direction.toRoom(Ring.ofNanometres(xs, ys));
  }
}
