package floorcalc.recheck;

import floorcalc.recheck.ToldPlan.Cut;
import floorcalc.recheck.ToldPlan.Piece;
import java.math.BigDecimal;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/** A piece as polygons in millimetres: as it lies in the room, and turned so that its boards run along x. */
final class SeenPiece {
  final Piece piece;
  /** Its row in its bay, from 0. */
  final int row;
  /** The place of its row in the list of all rows of the plan. */
  final int rowOfPlan;
  final Polygon inRoom;
  final Polygon inFrame;
  final Envelope box;
  /** The length of its board in nanometres. */
  final long board;
  /** Whether another piece of its row meets its end at low x, its end at high x. */
  boolean meetsLow;
  boolean meetsHigh;

  SeenPiece(Piece piece, BigDecimal degrees, int row, int rowOfPlan, long board) {
    this.piece = piece;
    this.row = row;
    this.rowOfPlan = rowOfPlan;
    this.board = board;
    this.inRoom = piece.outline();
    this.inFrame = Shapes.turned(inRoom, -degrees.doubleValue());
    this.box = inFrame.getEnvelopeInternal();
  }

  String name() {
    return piece.name();
  }

  Cut cut() {
    return piece.from();
  }

  /** Whether it is a board from end to end. */
  boolean isWhole() {
    return cut().length() == board;
  }
}
