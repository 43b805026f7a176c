package floorcalc.underlay;

import floorcalc.measure.Length;
import java.util.Objects;

/**
 * A strip off a roll as it lies: a rectangle in the frame in which strips run along x. Where it is turned up a wall it reaches
 * beyond the wall by the upturn, as if the wall were laid flat.
 *
 * @param number its number across the strips, from 1 at the side laid first; an interrupted one has several of one number
 * @param alongFrom where it begins along the strips, not null
 * @param alongTo where it ends, not null, more than that
 * @param acrossFrom its lower edge across the strips, not null
 * @param acrossTo its upper edge, not null: a roll's width from the lower one
 * @since 0.1
 */
public record RollStrip(int number, Length alongFrom, Length alongTo, Length acrossFrom, Length acrossTo) {
  /** Checks that no part is null. */
  public RollStrip {
    Objects.requireNonNull(alongFrom, "alongFrom");
    Objects.requireNonNull(alongTo, "alongTo");
    Objects.requireNonNull(acrossFrom, "acrossFrom");
    Objects.requireNonNull(acrossTo, "acrossTo");
  }

  /**
   * Returns how long it is, upturns included.
   *
   * @return the length, not null
   */
  public Length length() {
    return alongTo.minus(alongFrom);
  }
}
