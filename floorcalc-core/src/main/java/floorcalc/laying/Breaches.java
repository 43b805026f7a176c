package floorcalc.laying;

import floorcalc.measure.Length;
import floorcalc.plan.Compromise;
import floorcalc.rules.LayingRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds where the three minimums are not kept, and says why; also the least of each that the floor has. */
final class Breaches {
  private final JobLaying laying;
  private final long minimumRow;
  private final long minimumPiece;
  private final long minimumOffset;
  private final long board;
  final List<Compromise> found = new ArrayList<>();
  private long leastRow = Long.MAX_VALUE;
  private long leastPiece = Long.MAX_VALUE;
  private long leastOffset = Long.MAX_VALUE;

  private Breaches(JobLaying laying) {
    this.laying = laying;
    LayingRules rules = laying.job().rules();
    this.minimumRow = rules.value(LayingRules.MINIMUM_ROW_WIDTH).toNanometres();
    this.minimumPiece = rules.value(LayingRules.MINIMUM_END_PIECE).toNanometres();
    this.minimumOffset = rules.value(LayingRules.MINIMUM_JOINT_OFFSET).toNanometres();
    this.board = laying.job().board().longest().toNanometres();
  }

  static Breaches of(JobLaying laying) {
    Breaches breaches = new Breaches(laying);
    List<BayPlan> bays = laying.bays();
    for (int i = 0; i < bays.size(); i++) {
      breaches.rows(bays.get(i).bay());
      breaches.pieces(bays.get(i).bay(), laying.pieces().get(i));
      breaches.joints(bays.get(i).bay());
    }
    return breaches;
  }

  Optional<Length> narrowestRow() {
    return known(leastRow);
  }

  Optional<Length> shortestPiece() {
    return known(leastPiece);
  }

  Optional<Length> smallestOffset() {
    return known(leastOffset);
  }

  private static Optional<Length> known(long least) {
    return least == Long.MAX_VALUE ? Optional.empty() : Optional.of(Length.ofNanometres(least));
  }

  private void rows(FrameBay bay) {
    long pitch = laying.job().board().laidPitch().toNanometres();
    for (FrameRow row : bay.rows()) {
      leastRow = Math.min(leastRow, row.shown());
      if (row.shown() < minimumRow) {
        String because = pitch < minimumRow ? "a whole board shows no more than "
            + laying.job().board().laidPitch()
            : bay.rows().size() == 1 ? "the floor is one row wide"
            : "the floor ends here at a slant or at several levels, and no start line makes every strip wide enough";
        add(LayingRules.MINIMUM_ROW_WIDTH.name(), bay.name() + " row " + row.number(), minimumRow, row.shown(), because);
      }
    }
  }

  private void pieces(FrameBay bay, List<ShapedPiece> pieces) {
    for (ShapedPiece piece : pieces) {
      boolean whole = piece.length() == board || piece.ends().low() && piece.ends().high();
      if (whole) {
        continue;
      }
      leastPiece = Math.min(leastPiece, piece.length());
      if (piece.length() < minimumPiece) {
        long run = piece.run().to() - piece.run().from();
        String because = run < minimumPiece ? "the run is only " + Length.ofNanometres(run) + " long"
            : piece.length() == run ? "the run is one piece"
            : "no way was found to lay this run with longer pieces and keep the joints apart";
        add(LayingRules.MINIMUM_END_PIECE.name(),
            bay.name() + " row " + piece.row().number() + " run " + piece.run().number(), minimumPiece, piece.length(),
            because);
      }
    }
  }

  private void joints(FrameBay bay) {
    for (int k = 1; k < bay.rows().size(); k++) {
      FrameRow row = bay.rows().get(k);
      FrameRow below = bay.rows().get(k - 1);
      long[] between = FrameBay.between(row.runs(), below.runs());
      long[] mine = JointPairs.touching(row.runs(), between, laying.joints()::jointsOf);
      long[] others = JointPairs.touching(below.runs(), between, laying.joints()::jointsOf);
      leastOffset = Math.min(leastOffset, JointPairs.least(mine, others));
      JointPairs.nearerThan(minimumOffset, mine, others, (joint, other) -> {
        String because = board < 2 * minimumOffset
            ? "joints in neighbouring rows of boards this long are never further apart than "
                + Length.ofNanometres(board / 2)
            : "no way was found to keep the joints further apart and the end pieces long enough";
        add(LayingRules.MINIMUM_JOINT_OFFSET.name(), bay.name() + " row " + row.number(), minimumOffset,
            Math.abs(joint - other), because);
      });
    }
  }

  private void add(String rule, String where, long required, long has, String because) {
    found.add(new Compromise(rule, where, Length.ofNanometres(required), Length.ofNanometres(has), because));
  }
}
