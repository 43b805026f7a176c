package floorcalc.plan;

/**
 * What to order, and how good that is.
 *
 * @param boardsUsed the boards that the plan cuts or lays whole
 * @param boardsAtLeast boards that no plan with the same rows and rules can do without, a true lower bound
 * @param spare boards kept for mistakes and repairs
 * @param packs whole packs to order
 * @param boardsInPacks the boards in these packs
 */
public record Order(int boardsUsed, int boardsAtLeast, int spare, int packs, int boardsInPacks) {
  /**
   * Tells whether no plan with the same rows and rules can do with fewer boards.
   *
   * @return true if the bound is reached
   */
  public boolean provenFewest() {
    return boardsUsed == boardsAtLeast;
  }
}
