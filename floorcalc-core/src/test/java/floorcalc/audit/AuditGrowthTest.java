package floorcalc.audit;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.plan.FloorJob;
import floorcalc.plan.OpenedBoard;
import floorcalc.plan.Room;
import floorcalc.plan.DirectionChoice;
import floorcalc.outline.Outline;
import floorcalc.plan.PieceKind;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The audit's work grows with the number of pieces, counted in edges looked at, not in time. */
class AuditGrowthTest {

  /**
   * Rows of whole boards of 2 m by 0.2 m in a hall, every second row shifted by half a board: each row has as many boards
   * as asked, or one fewer and two halves from one board (999 mm would be left by a cut of 3 mm, so two boards).
   */
  private static Draft hall(int boardsInRow, int rows, double degrees) {
    Direction direction = Direction.fromDegrees(degrees);
    double width = 2000.0 * boardsInRow;
    double height = 200.0 * rows;
    Draft draft = new Draft();
    draft.job = FloorJob.of("hall", HandPlan.BOARDS).direction(DirectionChoice.of(direction)).room(Room.of("Hall",
        Outline.of(direction.toRoom(HandPlan.ring(-10, -10, width + 10, -10, width + 10, height + 10, -10, height + 10)))))
        .build();
    Draft.BayDraft bay = new Draft.BayDraft();
    bay.bay = "hall-1";
    bay.room = "Hall";
    bay.direction = direction;
    bay.shell = direction.toRoom(HandPlan.ring(0, 0, width, 0, width, height, 0, height));
    bay.voids = new ArrayList<>();
    draft.bays.add(bay);
    for (int r = 0; r < rows; r++) {
      Draft.RowDraft row = new Draft.RowDraft();
      row.row = r + 1;
      row.coverWidth = 200_000_000;
      bay.rows.add(row);
      double x = 0;
      for (int i = 0; x < width; i++) {
        double length = r % 2 == 1 && (i == 0 || i == boardsInRow) ? 1000 : 2000;
        Draft.PieceDraft piece = new Draft.PieceDraft();
        piece.name = "hall-1." + row.row + "." + (i + 1);
        piece.run = 1;
        piece.kind = length == 2000 ? PieceKind.FULL : i == 0 ? PieceKind.START : PieceKind.END;
        piece.outline = direction.toRoom(HandPlan.ring(x, 200.0 * r, x + length, 200.0 * r, x + length,
            200.0 * (r + 1), x, 200.0 * (r + 1)));
        piece.holes = List.of();
        draft.boards.add(new OpenedBoard(draft.boards.size() + 1, Length.ofMillimetres(2000), "hall-1." + row.row));
        piece.board = draft.boards.size();
        piece.alongFrom = piece.kind == PieceKind.START ? 1_000_000_000 : 0;
        piece.alongTo = piece.kind == PieceKind.END ? 1_000_000_000 : 2_000_000_000;
        piece.acrossTo = 200_000_000;
        row.pieces.add(piece);
        x += length;
      }
    }
    draft.countOrder();
    draft.addUpLedger();
    return draft;
  }

  private static double visitsPerPiece(int boardsInRow, int rows, double degrees) {
    Draft draft = hall(boardsInRow, rows, degrees);
    AuditReport report = PlanAudit.of(draft.job, draft.plan());
    assertThat(report.toString()).startsWith("clean");
    return (double) report.visits() / report.pieces();
  }

  @Test
  void workGrowsWithTheNumberOfPieces() {
    // Between two neighbouring joints a row has four edges: floor and piece, below and above.
    assertThat(visitsPerPiece(10, 10, 0)).isBetween(4.0, 6.0);
    assertThat(visitsPerPiece(100, 10, 0)).isBetween(4.0, 6.0);
    assertThat(visitsPerPiece(10, 100, 0)).isBetween(4.0, 6.0);
    assertThat(visitsPerPiece(200, 200, 0)).isBetween(4.0, 6.0);
  }

  @Test
  void workGrowsWithTheNumberOfPiecesInTurnedBays() {
    assertThat(visitsPerPiece(10, 10, 37.5)).isBetween(4.0, 8.0);
    assertThat(visitsPerPiece(100, 100, 37.5)).isBetween(4.0, 8.0);
  }

  /** A heap instead of a floor: every piece lies on every other. The work is bounded all the same. */
  @Test
  void aHeapOfPiecesIsGivenUpOn() {
    Draft draft = hall(3000, 1, 0);
    draft.pieces().forEach(piece -> piece.outline = draft.piece(1, 1).outline);
    AuditReport report = PlanAudit.of(draft.job, draft.plan());
    assertThat(report.breaches()).extracting(finding -> finding.code()).contains("laid-outline");
    assertThat(report.visits()).isLessThan(201L * 2 * 3016);
  }

  /** Of one code 200 are put in words; the rest is counted. */
  @Test
  void aThousandOfTheSameAreCounted() {
    Draft draft = hall(1000, 1, 0);
    draft.pieces().forEach(piece -> piece.name = "?");
    AuditReport report = PlanAudit.of(draft.job, draft.plan());
    assertThat(report.breaches()).hasSize(201);
    assertThat(report.breaches().get(200).message()).isEqualTo("and 800 more of piece-name");
  }
}
