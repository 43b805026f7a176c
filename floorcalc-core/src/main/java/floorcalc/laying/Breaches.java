package floorcalc.laying;

import floorcalc.boards.Ends;
import floorcalc.joints.JointLayout;
import floorcalc.joints.JointPair;
import floorcalc.measure.Length;
import floorcalc.plan.Compromise;
import floorcalc.rules.LayingRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Finds where the three minimums are not kept, and says why; also the least of each that the floor has. */
final class Breaches {
  private final JobLaying laying;
  private final long minimumRow;
  private final long minimumPiece;
  private final long minimumOffset;
  private final long board;
  final List<Compromise> found = new ArrayList<>();
  /** The joints of each bay. */
  final List<JointLayout> layouts = new ArrayList<>();
  private int next;
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
      breaches.rows(bays.get(i).bay(), laying.pieces().get(i));
      breaches.pieces(bays.get(i).bay(), laying.pieces().get(i));
      breaches.joints(bays.get(i).bay(), laying.pieces().get(i));
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

  /** The widest piece of each row tells what the row shows. */
  private void rows(FrameBay bay, List<ShapedPiece> pieces) {
    Map<Integer, Long> shown = new TreeMap<>();
    for (ShapedPiece piece : pieces) {
      shown.merge(piece.row().number(), piece.width(), Math::max);
    }
    Length pitch = laying.job().board().laidPitch();
    shown.forEach((row, width) -> {
      leastRow = Math.min(leastRow, width);
      if (width < minimumRow) {
        String because = pitch.toNanometres() < minimumRow ? "a whole board shows no more than " + pitch
            : bay.rows().size() == 1 ? "the floor is one row wide"
            : "no start line makes every strip wide enough";
        add(LayingRules.MINIMUM_ROW_WIDTH.name(), bay.name() + " row " + row, minimumRow, width, because);
      }
    });
  }

  private void pieces(FrameBay bay, List<ShapedPiece> pieces) {
    for (ShapedPiece piece : pieces) {
      int board = laying.cutting().placement(next++).board();
      if (piece.length() == laying.cutting().boardLength(board).toNanometres()) {
        continue;
      }
      leastPiece = Math.min(leastPiece, piece.length());
      if (piece.length() < minimumPiece) {
        long run = piece.run().to() - piece.run().from();
        String because = run < minimumPiece ? "the run is only " + Length.ofNanometres(run) + " long"
            : piece.length() == run ? "the run is one piece"
            : "no way was found to lay this run with longer pieces and keep the joints apart";
        add(LayingRules.MINIMUM_END_PIECE.name(),
            bay.name() + " row " + piece.row().number() + " run " + piece.number(), minimumPiece, piece.length(),
            because);
      }
    }
  }

  private void joints(FrameBay bay, List<ShapedPiece> pieces) {
    JointLayout layout = jointsOf(bay, pieces);
    layouts.add(layout);
    layout.smallestOffset().ifPresent(pair -> leastOffset = Math.min(leastOffset, pair.offset().toNanometres()));
    String because = board < 2 * minimumOffset
        ? "joints in neighbouring rows of boards this long are never further apart than "
            + Length.ofNanometres(board / 2)
        : "no way was found to keep the joints further apart and the end pieces long enough";
    for (JointPair pair : layout.closerThan(Length.ofNanometres(minimumOffset))) {
      add(LayingRules.MINIMUM_JOINT_OFFSET.name(), bay.name() + " row " + pair.otherRow(), minimumOffset,
          pair.offset().toNanometres(), because);
    }
  }

  /**
   * The joints of each row and where it touches the next one. A joint is where pieces meet: next to a tip that is too small
   * to saw there is none. A joint beside a slant that ends short of the row line counts where the rows touch there all the same.
   */
  static JointLayout jointsOf(FrameBay bay, List<ShapedPiece> pieces) {
    int count = bay.rows().size();
    long[][] joints = new long[count][];
    long[][] touching = new long[count][];
    int at = 0;
    for (int k = 0; k < count; k++) {
      FrameRow row = bay.rows().get(k);
      int first = at;
      while (at < pieces.size() && pieces.get(at).row() == row) {
        at++;
      }
      joints[k] = pieces.subList(first, at).stream().filter(piece -> piece.ends() == Ends.HIGH || piece.ends() == Ends.BOTH)
          .mapToLong(piece -> piece.floor().shell().maxX).distinct().toArray();
      touching[k] = k + 1 < count ? FrameBay.between(bay.rows().get(k + 1).runs(), row.runs()) : Contacts.NONE;
    }
    return JointLayout.ofNanometres(joints, touching);
  }

  private void add(String rule, String where, long required, long has, String because) {
    found.add(new Compromise(rule, where, Length.ofNanometres(required), Length.ofNanometres(has), because));
  }
}
