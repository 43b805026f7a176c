package floorcalc.laying;

import floorcalc.boards.Run;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/**
 * A bay in its own frame, cut into rows and runs.
 *
 * @param name its name
 * @param room the name of its room
 * @param frame its floor in the frame of its boards
 * @param rows its rows from the starting wall on
 */
record FrameBay(String name, String room, Frame frame, List<FrameRow> rows) {
  /** Floor smaller than this, in half square nanometres, is a crumb that rounding leaves at a slanted wall. */
  private static final double CRUMB = 2e9;
  private static final double THIN_CRUMB = 4e11;
  private static final long THIN = 10;

  /**
   * Cuts a bay into rows from a start line on.
   *
   * @param first the width of the first row from the lowest place of the floor
   * @param runs the runs of the job so far, to which this bay's are added
   */
  static FrameBay cut(String name, String room, Frame frame, long first, long pitch, int firstJobRow, List<Run> runs) {
    long low = frame.low();
    long high = frame.high();
    int lines = (int) Math.max(0, (high - low - first + pitch - 1) / pitch);
    long[] at = new long[lines];
    for (int k = 0; k < lines; k++) {
      at[k] = low + first + k * pitch;
    }
    List<List<Loop>> strips = Strips.level(frame.floor, at);
    List<FrameRow> rows = new ArrayList<>(strips.size());
    List<FrameRun> below = List.of();
    for (int k = 0; k < strips.size(); k++) {
      long rowLow = low + first + (k - 1) * pitch;
      List<FrameRun> here = new ArrayList<>(1);
      for (Patch patch : Patch.of(strips.get(k))) {
        if (isCrumb(patch.shell())) {
          continue;
        }
        FrameRun run = new FrameRun(runs.size(), patch, patch.contacts(rowLow, false),
            patch.contacts(rowLow + pitch, false));
        here.add(run);
        runs.add(null);
      }
      FrameRow row = new FrameRow(rows.size() + 1, firstJobRow + rows.size(), rowLow, here);
      for (FrameRun run : here) {
        runs.set(run.index(), touching(row.jobRow(), run, here, below));
      }
      if (!here.isEmpty()) {
        rows.add(row);
      }
      below = here;
    }
    return new FrameBay(name, room, frame, rows);
  }

  static boolean isCrumb(Loop shell) {
    long width = shell.maxX - shell.minX;
    long height = shell.maxY - shell.minY;
    double limit = Math.min(width, height) <= THIN ? THIN_CRUMB : CRUMB;
    return (double) width * height < limit && shell.twiceArea().doubleValue() < limit;
  }

  /** The run with its touching neighbours; joints are kept apart wherever the two rows touch. */
  private static Run touching(int jobRow, FrameRun run, List<FrameRun> row, List<FrameRun> below) {
    List<Integer> neighbours = new ArrayList<>(1);
    for (FrameRun other : below) {
      if (Contacts.shared(run.lowContacts(), other.highContacts()).length > 0) {
        neighbours.add(other.index());
      }
    }
    if (neighbours.isEmpty()) {
      return Run.of(jobRow, run.from(), run.to());
    }
    long[] between = between(row, below);
    List<long[]> contacts = new ArrayList<>(neighbours.size());
    for (int i = 0; i < neighbours.size(); i++) {
      contacts.add(between);
    }
    return Run.touching(jobRow, run.from(), run.to(), neighbours, contacts);
  }

  /** All stretches where a row touches the row below it. */
  static long[] between(List<FrameRun> row, List<FrameRun> below) {
    long[] mine = Contacts.NONE;
    for (FrameRun run : row) {
      mine = mine.length == 0 ? run.lowContacts() : Contacts.joined(mine, run.lowContacts());
    }
    long[] theirs = Contacts.NONE;
    for (FrameRun run : below) {
      theirs = theirs.length == 0 ? run.highContacts() : Contacts.joined(theirs, run.highContacts());
    }
    return Contacts.shared(mine, theirs);
  }

  /** Cuts the runs at their joints into pieces, in laying order. */
  List<ShapedPiece> pieces(IntFunction<long[]> joints) {
    List<ShapedPiece> pieces = new ArrayList<>();
    for (FrameRow row : rows) {
      int number = 0;
      for (FrameRun run : row.runs()) {
        number = RunPieces.add(row, run, joints.apply(run.index()), number, pieces);
      }
    }
    return pieces;
  }
}
