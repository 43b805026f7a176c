package floorcalc.plan;

import floorcalc.working.Step;
import java.io.Serializable;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

/**
 * One line of the order list.
 *
 * @param item what to buy, such as {@code "boards"}; not null
 * @param net what the floor takes, with its unit; not null
 * @param quantity how much to buy, not null
 * @param unit the unit of the quantity, such as {@code "pack"}; not null
 * @param working how the quantity was worked out, not null
 * @since 0.1
 */
public record MaterialLine(String item, String net, BigDecimal quantity, String unit, List<Step> working)
    implements Serializable {
  /** Checks that no part is null and copies the lists given. */
  public MaterialLine {
    Objects.requireNonNull(working, "working");
    Objects.requireNonNull(item, "item");
    Objects.requireNonNull(net, "net");
    Objects.requireNonNull(quantity, "quantity");
    Objects.requireNonNull(unit, "unit");
    working = List.copyOf(working);
  }
}
