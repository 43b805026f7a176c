package floorcalc.rooms;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.boards.SearchEffort;
import floorcalc.finishing.CutOuts;
import floorcalc.finishing.PieceCut;
import floorcalc.fittings.Notch;
import floorcalc.laying.FloorLaying;
import floorcalc.measure.Length;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Every shaped piece of designed and real rooms put together again, by a general geometry library, from the rectangle of the board that it is
 * cut from and the description of its notches; and every piece without a description is its rectangle.
 */
@Tag("reference")
class RoomNotchesTest {
  private static final GeometryFactory FACTORY = new GeometryFactory();
  /** A square millimetre, in square nanometres. */
  private static final double SQUARE = 1e12;

  @TestFactory
  Stream<DynamicTest> roomsWithTheProject() {
    return tests(RealRooms.withTheProject());
  }

  @TestFactory
  Stream<DynamicTest> roomsBesideTheProject() {
    return tests(RealRooms.besideTheProject());
  }

  private static Stream<DynamicTest> tests(List<RealRoom> rooms) {
    List<DynamicTest> tests = new ArrayList<>();
    for (RealRoom room : rooms) {
      tests.add(DynamicTest.dynamicTest(room.id(), () -> {
        for (Product product : Product.values()) {
          for (DirectionChoice direction : Product.directions(room)) {
            rebuilt(product.in(room, direction).withEffort(SearchEffort.QUICK));
          }
        }
      }));
    }
    return tests.stream();
  }

  private static void rebuilt(FloorJob job) {
    FloorPlan plan = FloorLaying.of(job);
    CutOuts cuts = CutOuts.of(job, plan).value();
    for (Bay bay : plan.bays()) {
      for (Row row : bay.rows()) {
        for (LaidPiece piece : row.pieces()) {
          assertThat(difference(bay, piece, cuts.of(piece.piece()))).as(piece.piece()).isLessThan(SQUARE);
        }
      }
    }
    for (PieceCut cut : cuts.pieces()) {
      assertThat(cut.inWords(Length::toMillimetreString)).hasSize(cut.shape().notches().size()).doesNotContain("");
    }
  }

  private static double difference(Bay bay, LaidPiece piece, Optional<PieceCut> cut) {
    Geometry rebuilt = FACTORY.toGeometry(new Envelope(0, piece.from().length().toNanometres(), 0, piece.from().width().toNanometres()));
    for (Notch notch : cut.map(described -> described.shape().notches()).orElse(List.of())) {
      rebuilt = OverlayNGRobust.overlay(rebuilt, polygon(notch.removed(), 0, 0), OverlayNG.DIFFERENCE);
    }
    Ring outline = bay.direction().toFrame(piece.outline());
    long x = outline.extent().low().xNanometres();
    long y = outline.extent().low().yNanometres();
    Geometry laid = polygon(outline, x, y);
    for (Ring hole : piece.holes()) {
      laid = OverlayNGRobust.overlay(laid, polygon(bay.direction().toFrame(hole), x, y), OverlayNG.DIFFERENCE);
    }
    return OverlayNGRobust.overlay(rebuilt, laid, OverlayNG.SYMDIFFERENCE).getArea();
  }

  private static Geometry polygon(Ring ring, long x, long y) {
    Coordinate[] corners = new Coordinate[ring.size() + 1];
    for (int i = 0; i < ring.size(); i++) {
      corners[i] = new Coordinate(ring.x(i) - x, ring.y(i) - y);
    }
    corners[ring.size()] = corners[0];
    return FACTORY.createPolygon(corners);
  }
}
