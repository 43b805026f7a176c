package floorcalc.laying;

import floorcalc.boards.CuttingPlan;
import floorcalc.boards.Ends;
import floorcalc.boards.Placement;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.plan.Bay;
import floorcalc.plan.Cut;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.OpenedBoard;
import floorcalc.plan.PieceKind;
import floorcalc.plan.Row;
import java.util.ArrayList;
import java.util.List;

/** Turns shaped pieces back into the room and names them: bay, row, number in the row. */
final class PieceMaker {
  private final CuttingPlan cutting;
  private final List<String> rowOfPiece = new ArrayList<>();
  private int next;

  PieceMaker(CuttingPlan cutting) {
    this.cutting = cutting;
  }

  Bay bay(FrameBay bay, List<ShapedPiece> pieces) {
    List<Row> rows = new ArrayList<>(bay.rows().size());
    int at = 0;
    for (FrameRow row : bay.rows()) {
      String name = bay.name() + "." + row.number();
      List<LaidPiece> laid = new ArrayList<>();
      long shown = 0;
      while (at < pieces.size() && pieces.get(at).row() == row) {
        shown = Math.max(shown, pieces.get(at).width());
        laid.add(piece(name + "." + (laid.size() + 1), pieces.get(at++), bay.frame().direction));
        rowOfPiece.add(name);
      }
      rows.add(new Row(row.number(), Length.ofNanometres(shown), laid));
    }
    return new Bay(bay.name(), bay.room(), bay.frame().direction, bay.frame().laid, rows);
  }

  private LaidPiece piece(String name, ShapedPiece piece, Direction direction) {
    Placement placement = cutting.placement(next++);
    boolean whole = piece.length() == cutting.boardLength(placement.board()).toNanometres();
    PieceKind kind = whole || piece.ends() == Ends.BOTH ? PieceKind.FULL : switch (piece.ends()) {
      case LOW -> PieceKind.END;
      case HIGH -> PieceKind.START;
      default -> PieceKind.SINGLE;
    };
    return new LaidPiece(name, piece.number(), kind, direction.toRoom(piece.floor().shell().toRing()),
        piece.floor().holes().stream().map(hole -> direction.toRoom(hole.toRing())).toList(),
        new Cut(placement.board() + 1, placement.alongFrom(), placement.alongTo(), placement.acrossFrom(),
            placement.acrossTo()));
  }

  /** The boards in the order of opening; all pieces must have been made. */
  List<OpenedBoard> boards() {
    List<OpenedBoard> boards = new ArrayList<>(cutting.boardCount());
    for (int i = 0; i < cutting.boardCount(); i++) {
      boards.add(new OpenedBoard(i + 1, cutting.boardLength(i), rowOfPiece.get(cutting.openedFor(i))));
    }
    return boards;
  }
}
