package floorcalc.laying;

import floorcalc.joints.JointLayout;
import floorcalc.measure.Length;
import floorcalc.plan.Compromise;
import floorcalc.rules.LayingRules;
import java.util.ArrayList;
import java.util.Arrays;
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
            : "the floor ends here at a slant or at several levels, and no start line makes every strip wide enough";
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
    JointLayout layout = layoutOf(bay);
    layouts.add(layout);
    String because = board < 2 * minimumOffset
        ? "joints in neighbouring rows of boards this long are never further apart than "
            + Length.ofNanometres(board / 2)
        : "no way was found to keep the joints further apart and the end pieces long enough";
    List<LineJoints> lines = LineJoints.of(bay, pieces);
    for (int k = 0; k + 1 < bay.rows().size(); k++) {
      long[] touching = FrameBay.between(bay.rows().get(k + 1).runs(), bay.rows().get(k).runs());
      long[] offsets = offsets(Contacts.held(touching, lines.get(k).onHighLine()),
          Contacts.held(touching, lines.get(k + 1).onLowLine()));
      long least = Arrays.stream(offsets).min().orElse(Long.MAX_VALUE);
      leastOffset = Math.min(leastOffset, least);
      if (least < minimumOffset) {
        long close = Arrays.stream(offsets).filter(offset -> offset < minimumOffset).count();
        add(LayingRules.MINIMUM_JOINT_OFFSET.name(), bay.name() + " row " + (k + 2), minimumOffset, least,
            close == 1 ? because : because + "; of " + close + " joints of this row this one is the nearest");
      }
    }
  }

  /** The distance from each joint of the upper row to the nearest one of the lower row, if it has any. */
  private static long[] offsets(long[] lower, long[] upper) {
    long[] offsets = new long[lower.length == 0 ? 0 : upper.length];
    int k = 0;
    for (int i = 0; i < offsets.length; i++) {
      while (k + 1 < lower.length && Math.abs(lower[k + 1] - upper[i]) <= Math.abs(lower[k] - upper[i])) {
        k++;
      }
      offsets[i] = Math.abs(lower[k] - upper[i]);
    }
    return offsets;
  }

  /** The joints of each row and where it touches the next one. */
  private JointLayout layoutOf(FrameBay bay) {
    int count = bay.rows().size();
    long[][] joints = new long[count][];
    long[][] touching = new long[count][];
    for (int k = 0; k < count; k++) {
      List<FrameRun> runs = bay.rows().get(k).runs();
      joints[k] = runs.stream().flatMapToLong(run -> Arrays.stream(laying.joints().jointsOf(run.index()))).toArray();
      touching[k] = k + 1 < count ? FrameBay.between(bay.rows().get(k + 1).runs(), runs) : Contacts.NONE;
    }
    return JointLayout.ofNanometres(joints, touching);
  }

  private void add(String rule, String where, long required, long has, String because) {
    found.add(new Compromise(rule, where, Length.ofNanometres(required), Length.ofNanometres(has), because));
  }
}
