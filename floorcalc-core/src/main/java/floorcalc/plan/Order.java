package floorcalc.plan;

import java.io.Serializable;

/**
 * What to order, and how good that is.
 *
 * @param boardsUsed the boards that the plan cuts or lays whole
 * @param boardsAtLeast boards that no plan with the same rows and rules can do without, a true lower bound
 * @param spare boards kept for mistakes and repairs
 * @param packs whole packs to order
 * @param boardsInPacks the boards in these packs
 * @param packsAtLeast packs that no plan with the same rows and rules can do without, a true lower bound; 0 if nothing is known
 * @since 0.1
 */
public record Order(int boardsUsed, int boardsAtLeast, int spare, int packs, int boardsInPacks, int packsAtLeast)
    implements Serializable {
  /**
   * Makes an order of which nothing is known about the least packs.
   *
   * @param boardsUsed the boards that the plan cuts or lays whole
   * @param boardsAtLeast boards that no plan with the same rows and rules can do without, a true lower bound
   * @param spare boards kept for mistakes and repairs
   * @param packs whole packs to order
   * @param boardsInPacks the boards in these packs
   */
  public Order(int boardsUsed, int boardsAtLeast, int spare, int packs, int boardsInPacks) {
    this(boardsUsed, boardsAtLeast, spare, packs, boardsInPacks, 0);
  }

  /**
   * Tells whether no plan with the same rows and rules can do with fewer packs.
   *
   * @return true if the bound is reached
   */
  public boolean provenFewestPacks() {
    return packs == packsAtLeast;
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
