package floorcalc.examples.stock;

import floorcalc.FloorPlanner;
import floorcalc.boards.SearchEffort;
import floorcalc.measure.Length;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Order;
import floorcalc.plan.UnsoundJobException;
import java.util.Objects;
import java.util.Optional;

/**
 * What is kept of the plan of one room: a row of figures, or why there is no plan. Immutable.
 *
 * @param number the room's number
 * @param district its district, not null
 * @param kind what it is used as, not null
 * @param refused why it cannot be planned, empty if it was; not null
 * @param boards boards used, 0 if it was not planned
 * @param boardsAtLeast boards that no plan can do without, 0 if it was not planned
 * @param packs packs to order, 0 if it was not planned
 * @param findings how many findings its plan has
 * @param compromises how many rules could not be kept
 * @param narrowest the narrowest row; empty if it was not planned or has none; not null
 */
public record StockRow(int number, String district, String kind, String refused, int boards, int boardsAtLeast, int packs,
    int findings, int compromises, Optional<Length> narrowest) {
  private static final String NARROWEST_ROW = "narrowest-row";

  /** Checks that no part is null. */
  public StockRow {
    Objects.requireNonNull(district, "district");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(refused, "refused");
    Objects.requireNonNull(narrowest, "narrowest");
  }

  /**
   * Makes a room from its number, plans it, and keeps its figures. A room that cannot be planned becomes a row as well. Depends on
   * the number alone, so it can be called anywhere, in any order and more than once.
   * <p>
   * A stock is estimated, not laid: the search makes the small effort, {@link SearchEffort#QUICK}.
   *
   * @param number the room's number, 0 or more
   * @return the row, not null
   * @throws IllegalArgumentException if the number is negative
   */
  public static StockRow of(int number) {
    StockRoom room = StockRoom.of(number);
    try {
      return of(room, FloorPlanner.plan(room.job().withEffort(SearchEffort.QUICK)));
    } catch (UnsoundJobException unsound) {
      return new StockRow(number, room.district(), room.kind(), unsound.getMessage().replace('\n', ' '), 0, 0, 0, 0, 0,
          Optional.empty());
    }
  }

  private static StockRow of(StockRoom room, FloorPlan plan) {
    Order order = plan.order();
    Optional<Length> narrowest = plan.checks().stream().filter(check -> check.judgement().code().equals(NARROWEST_ROW))
        .filter(check -> !check.found().isEmpty()).map(check -> Length.parse(check.found())).findFirst();
    return new StockRow(room.number(), room.district(), room.kind(), "", order.boardsUsed(), order.boardsAtLeast(), order.packs(),
        plan.findings().size(), plan.compromises().size(), narrowest);
  }

  /**
   * Returns the row as one line.
   *
   * @return its parts between semicolons, the narrowest row in millimetres; not null
   */
  public String toLine() {
    return number + ";" + district + ";" + kind + ";" + refused + ";" + boards + ";" + boardsAtLeast + ";" + packs + ";" + findings
        + ";" + compromises + ";" + narrowest.map(Length::toMillimetreString).orElse("");
  }
}
