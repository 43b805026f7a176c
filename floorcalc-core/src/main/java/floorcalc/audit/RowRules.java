package floorcalc.audit;

import floorcalc.measure.Length;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.PieceKind;
import floorcalc.plan.Row;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/** Measures rows, end pieces and joints against the three minimums. */
final class RowRules {
  private final RuleValue<Length> minimumRow;
  private final RuleValue<Length> minimumPiece;
  private final RuleValue<Length> minimumOffset;
  private final Compromises compromises;
  private final Breaches breaches;

  RowRules(FloorJob job, Compromises compromises, Breaches breaches) {
    this.minimumRow = job.rules().get(LayingRules.MINIMUM_ROW_WIDTH);
    this.minimumPiece = job.rules().get(LayingRules.MINIMUM_END_PIECE);
    this.minimumOffset = job.rules().get(LayingRules.MINIMUM_JOINT_OFFSET);
    this.compromises = compromises;
    this.breaches = breaches;
  }

  void checkRow(Bay bay, int r, RowSketch sketch, CutList cuts, int firstCut, BoardBook book, BayFrame frame) {
    Row row = bay.rows().get(r);
    String place = BayCheck.rowPlace(bay, r);
    double widest = 0;
    boolean measured = sketch.count > 0;
    Map<Integer, Long> shortest = new TreeMap<>();
    for (int i = 0; i < sketch.count; i++) {
      if (sketch.sound[i]) {
        widest = Math.max(widest, sketch.yMax[i] - sketch.yMin[i]);
      }
      measured &= sketch.sound[i];
      LaidPiece piece = sketch.pieces.get(i);
      int cut = firstCut + i;
      long length = cuts.alongTo[cut] - cuts.alongFrom[cut];
      boolean whole = cuts.board[cut] >= 0 && length == book.length(cuts.board[cut]);
      if (piece.kind() != PieceKind.FULL && !whole && !Compromises.isKept(length, minimumPiece, 0)) {
        shortest.merge(piece.run(), length, Math::min);
      }
    }
    double stated = row.coverWidth().toNanometres();
    if (measured && Math.abs(stated - widest) > frame.slack()) {
      breaches.add(Code.ROW_WIDTH, place, place + " says that it shows " + row.coverWidth()
          + " at its widest, but its widest piece is " + Words.mm(widest) + " wide");
    }
    if (measured && !Compromises.isKept(widest, minimumRow, frame.slack())) {
      compromises.breach(Code.ROW_TOO_NARROW, minimumRow, place, widest, widest, frame.slack(),
          place + " is " + Words.mm(widest) + " wide");
    } else if (measured && !Compromises.isKept(widest, minimumRow, 0)) {
      compromises.allow(minimumRow, place);
    }
    shortest.forEach((run, length) -> compromises.breach(Code.END_PIECE_TOO_SHORT, minimumPiece, place + " run " + run,
        length, length, 0, "the shortest end piece of " + place + " run " + run + " is " + Words.mm(length) + " long"));
  }

  /**
   * Measures along the rows, on the line where two rows touch, from each joint to the nearest one across the line. Two kinds
   * of joints may count or not: those at the very end of a stretch on which the rows touch, where rounding decides, and those
   * beside a slant that end short of the line, though the rows touch there.
   */
  void checkJoints(Bay bay, int r, RowSketch below, RowSketch above, EdgeCheck line, BayFrame frame) {
    double slack = frame.slack();
    double[] least = nearest(onLine(below, Double.NaN, slack, slack, line), onLine(above, Double.NaN, slack, slack, line));
    double required = minimumOffset.value().toNanometres();
    if (least[0] >= required) {
      return;
    }
    double[] sure = nearest(onLine(below, below.high, slack, -slack, line), onLine(above, above.low, slack, -slack, line));
    String place = BayCheck.rowPlace(bay, r);
    if (sure[0] < required - slack) {
      compromises.breach(Code.JOINTS_TOO_CLOSE, minimumOffset, place, least[0], sure[0], slack, "a joint of " + place
          + " near " + frame.place(sure[1], above.low) + " is " + Words.mm(sure[0])
          + " along the rows from a joint of the row below");
    } else {
      compromises.allow(minimumOffset, place);
    }
  }

  /** The least distance from a place of one list to a place of the other, and where it is. */
  private static double[] nearest(double[] lower, double[] upper) {
    double[] least = {Double.POSITIVE_INFINITY, 0};
    int k = 0;
    for (double x : upper) {
      while (k + 1 < lower.length && Math.abs(lower[k + 1] - x) <= Math.abs(lower[k] - x)) {
        k++;
      }
      if (k < lower.length && Math.abs(lower[k] - x) < least[0]) {
        least[0] = Math.abs(lower[k] - x);
        least[1] = x;
      }
    }
    return least;
  }

  /** The joints of a row that reach a row line, or any if that is no number, where both rows touch or so far beyond, from low x to high x. */
  private static double[] onLine(RowSketch row, double y, double slack, double beyond, EdgeCheck line) {
    double[] found = new double[row.joints.size];
    int n = 0;
    for (int j = 0; j < row.joints.size; j++) {
      if (Double.isNaN(y) || row.joints.y0[j] <= y + slack && row.joints.y1[j] >= y - slack) {
        found[n++] = row.joints.x0[j];
      }
    }
    Arrays.sort(found, 0, n);
    int kept = 0;
    int s = 0;
    for (int j = 0; j < n; j++) {
      while (s < line.stretches && line.to[s] < found[j] - beyond) {
        s++;
      }
      if (s < line.stretches && line.from[s] <= found[j] + beyond) {
        found[kept++] = found[j];
      }
    }
    return Arrays.copyOf(found, kept);
  }
}
