package floorcalc.materials;

import floorcalc.measure.Area;
import java.io.Serializable;
import java.util.Objects;

/**
 * Where the boards that are bought go, to the square nanometre: everything bought is one of these.
 *
 * @param bought all boards in the packs, not null
 * @param laid the floor that the pieces cover, not null
 * @param trimmedToShape what is sawn off pieces that are not rectangles, not null
 * @param sawKerf what the saw turns to dust, not null
 * @param usableOffcuts offcuts left at the end that are long and wide enough for another piece, not null
 * @param shortOffcuts offcuts that are too short or too narrow for any piece, not null
 * @param spare whole boards kept for mistakes and repairs, not null
 * @param packRounding whole boards over because packs are sold whole, not null
 */
public record WasteLedger(
    Area bought,
    Area laid,
    Area trimmedToShape,
    Area sawKerf,
    Area usableOffcuts,
    Area shortOffcuts,
    Area spare,
    Area packRounding) implements Serializable {
  /** Checks that no part is null. */
  public WasteLedger {
    Objects.requireNonNull(bought, "bought");
    Objects.requireNonNull(laid, "laid");
    Objects.requireNonNull(trimmedToShape, "trimmedToShape");
    Objects.requireNonNull(sawKerf, "sawKerf");
    Objects.requireNonNull(usableOffcuts, "usableOffcuts");
    Objects.requireNonNull(shortOffcuts, "shortOffcuts");
    Objects.requireNonNull(spare, "spare");
    Objects.requireNonNull(packRounding, "packRounding");
  }

  /**
   * Returns what is left when every part is taken from what was bought.
   *
   * @return zero if the ledger closes, not null
   */
  public Area difference() {
    return bought.minus(laid).minus(trimmedToShape).minus(sawKerf).minus(usableOffcuts).minus(shortOffcuts)
        .minus(spare).minus(packRounding);
  }
}
