package floorcalc.plan;

/**
 * What to order, and how good that is.
 *
 * @param boardsUsed the boards that the plan cuts or lays whole
 * @param boardsAtLeast a true lower bound for any plan with the same rows and rules
 * @param spare boards kept for mistakes and repairs
 * @param packs whole packs to order
 * @param boardsInPacks the boards in these packs
 */
public record Order(int boardsUsed, int boardsAtLeast, int spare, int packs, int boardsInPacks) {
  /** Checks that no part is null and copies the lists. */
  public Order {
  }

  /**
   * Tells whether no plan with the same rows and rules can do with fewer boards.
   *
   * @return true if the bound is reached
   */
  public boolean provenFewest() {
    return boardsUsed == boardsAtLeast;
  }
}
