package floorcalc.laying;

import floorcalc.boards.Ends;
import floorcalc.boards.PieceWanted;

/**
 * A piece as it lies, in the frame of its bay.
 *
 * @param row its row
 * @param run its run
 * @param number the number that its run has in the row, from 1
 * @param floor its floor
 * @param ends which of its ends meet boards
 */
record ShapedPiece(FrameRow row, FrameRun run, int number, Patch floor, Ends ends) {

  /** The rectangle that encloses the piece, placed across as in its row. */
  PieceWanted wanted() {
    Loop shell = floor.shell();
    return PieceWanted.ofNanometres(row.jobRow(), shell.maxX - shell.minX, shell.minY - row.low(),
        shell.maxY - row.low(), ends);
  }

  long length() {
    return floor.shell().maxX - floor.shell().minX;
  }

  /** What the piece shows across its row. */
  long width() {
    return floor.shell().maxY - floor.shell().minY;
  }
}
