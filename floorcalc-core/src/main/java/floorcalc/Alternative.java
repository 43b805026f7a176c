package floorcalc;

import floorcalc.measure.Length;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.PlanFigures;
import java.util.List;
import java.util.Objects;
import java.util.function.ToIntBiFunction;

/**
 * One way to lay a floor, to be held against others: boards and packs against joint offset, H and stair patterns, cuts and
 * the longest leftover. Immutable and thread-safe.
 *
 * @param offsetAsked the least joint offset that was asked for, not null; what the floor keeps is in {@link #figures()}
 * @param packsMore how many packs it takes more than the way with the fewest, not negative
 * @param plan the plan, audited, with its figures; not null
 * @since 0.1
 */
public record Alternative(Length offsetAsked, int packsMore, FloorPlan plan) {
  /** Less is better. */
  private static final List<ToIntBiFunction<Alternative, Alternative>> WAYS = List.of(
      (a, b) -> Integer.compare(a.boards(), b.boards()),
      (a, b) -> Integer.compare(a.packs(), b.packs()),
      (a, b) -> a.figures().compareOffset(b.figures()),
      (a, b) -> Integer.compare(a.figures().patterns(), b.figures().patterns()),
      (a, b) -> Integer.compare(a.figures().cuts(), b.figures().cuts()),
      (a, b) -> b.figures().longestLeftover().compareTo(a.figures().longestLeftover()));

  /** Checks that no part is null and that the plan has figures. */
  public Alternative {
    Objects.requireNonNull(offsetAsked, "offsetAsked");
    if (plan.figures().isEmpty()) {
      throw new IllegalArgumentException("the plan '" + plan.title() + "' has no figures to be held against others; take"
          + " one that the library made");
    }
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

  /**
   * Returns smallest offset, patterns, cuts and longest leftover of the plan.
   *
   * @return the figures, not null
   */
  public PlanFigures figures() {
    return plan.figures().orElseThrow();
  }

  /**
   * Tells whether this way fits in the packs of the way that takes the fewest.
   *
   * @return true if no pack more is to be bought
   */
  public boolean isNoDearer() {
    return packsMore == 0;
  }

  /** Tells whether another is as good in each way and better in one. */
  boolean isBeatenBy(Alternative other) {
    return isMatchedBy(other) && WAYS.stream().anyMatch(way -> way.applyAsInt(other, this) < 0);
  }

  /** Tells whether another is as good in each way. */
  boolean isMatchedBy(Alternative other) {
    return WAYS.stream().allMatch(way -> way.applyAsInt(other, this) <= 0);
  }
}
