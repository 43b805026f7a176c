package floorcalc.laying;

import floorcalc.boards.Ends;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The joints of a row that reach its low line and its high line: beside a slant a joint may end short of it. A joint is
 * where two pieces meet; next to a tip that is too small to saw there is none.
 */
final class LineJoints {
  private static final int LOW = 0;
  private static final int HIGH = 1;

  private final FrameRow row;
  private final List<Long> low = new ArrayList<>();
  private final List<Long> high = new ArrayList<>();
  /** The ends of pieces that lie left of a joint and reach a line. */
  private final Set<End> ends = new HashSet<>();

  private record End(int run, long place, int line) {}

  private LineJoints(FrameRow row) {
    this.row = row;
  }

  /** Returns the joints of each row of a bay. */
  static List<LineJoints> of(FrameBay bay, List<ShapedPiece> pieces) {
    List<LineJoints> rows = new ArrayList<>(bay.rows().size());
    int at = 0;
    for (FrameRow row : bay.rows()) {
      LineJoints joints = new LineJoints(row);
      int first = at;
      while (at < pieces.size() && pieces.get(at).row() == row) {
        at++;
      }
      joints.read(pieces.subList(first, at));
      rows.add(joints);
    }
    return rows;
  }

  private void read(List<ShapedPiece> pieces) {
    for (ShapedPiece piece : pieces) {
      if (piece.ends() == Ends.HIGH || piece.ends() == Ends.BOTH) {
        ends.addAll(ends(piece, piece.floor().shell().maxX));
      }
    }
    for (ShapedPiece piece : pieces) {
      if (piece.ends() == Ends.LOW || piece.ends() == Ends.BOTH) {
        for (End end : ends(piece, piece.floor().shell().minX)) {
          if (ends.contains(end)) {
            (end.line == LOW ? low : high).add(end.place);
          }
        }
      }
    }
  }

  private List<End> ends(ShapedPiece piece, long place) {
    long[] end = piece.floor().contacts(place, true);
    List<End> found = new ArrayList<>(2);
    for (int i = 0; i < end.length; i += 2) {
      if (end[i + 1] - end[i] > RunPieces.MEET) {
        if (end[i] == row.low()) {
          found.add(new End(piece.run().index(), place, LOW));
        }
        if (end[i + 1] == row.high()) {
          found.add(new End(piece.run().index(), place, HIGH));
        }
      }
    }
    return found;
  }

  long[] onLowLine() {
    return sorted(low);
  }

  long[] onHighLine() {
    return sorted(high);
  }

  private static long[] sorted(List<Long> places) {
    long[] sorted = places.stream().mapToLong(Long::longValue).toArray();
    Arrays.sort(sorted);
    return sorted;
  }
}
