package floorcalc;

import floorcalc.measure.Length;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.OpenedBoard;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;

/**
 * One way to lay a floor, to be held against others: boards against joint offset against cut pieces. Immutable and
 * thread-safe.
 *
 * @param jointOffset the joint offset that the plan keeps to, not null
 * @param cutPieces how many pieces are not whole boards
 * @param plan the plan, audited; not null
 */
public record Alternative(Length jointOffset, int cutPieces, FloorPlan plan) {
  /** Checks that no part is null. */
  public Alternative {
    Objects.requireNonNull(jointOffset, "jointOffset");
    Objects.requireNonNull(plan, "plan");
  }

  static Alternative of(Length jointOffset, FloorPlan plan) {
    Map<Integer, Length> lengths = new HashMap<>();
    for (OpenedBoard board : plan.boards()) {
      lengths.put(board.board(), board.length());
    }
    int cut = 0;
    for (var bay : plan.bays()) {
      for (var row : bay.rows()) {
        for (LaidPiece piece : row.pieces()) {
          cut += piece.from().length().equals(lengths.get(piece.from().board())) ? 0 : 1;
        }
      }
    }
    return new Alternative(jointOffset, cut, plan);
  }

  /**
   * Returns the boards that the plan uses.
   *
   * @return the number of boards
   */
  public int boards() {
    return plan.order().boardsUsed();
  }

  /**
   * Returns the packs to order.
   *
   * @return the number of packs
   */
  public int packs() {
    return plan.order().packs();
  }

  /** Tells whether another is as good in each way and better in one. */
  boolean isBeatenBy(Alternative other) {
    int offsets = other.jointOffset.compareTo(jointOffset);
    return other.boards() <= boards() && offsets >= 0 && other.cutPieces <= cutPieces
        && (other.boards() < boards() || offsets > 0 || other.cutPieces < cutPieces);
  }
}
