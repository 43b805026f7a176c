package floorcalc.plan;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * Which part of which board a piece is: the rectangle that encloses it, in the frame of the bay.
 *
 * @param board the number of the board, from 1
 * @param alongFrom the rectangle's end at low x, measured from the board's end at low x; not null
 * @param alongTo the rectangle's end at high x, measured likewise; not null
 * @param acrossFrom the rectangle's edge at low y, measured from the board's edge that faces the starting wall; not null
 * @param acrossTo the rectangle's edge at high y, measured likewise; not null
 * @since 0.1
 */
public record Cut(int board, Length alongFrom, Length alongTo, Length acrossFrom, Length acrossTo) implements Serializable {
  /** Checks that no part is null. */
  public Cut {
    Objects.requireNonNull(alongFrom, "alongFrom");
    Objects.requireNonNull(alongTo, "alongTo");
    Objects.requireNonNull(acrossFrom, "acrossFrom");
    Objects.requireNonNull(acrossTo, "acrossTo");
  }

  /**
   * Returns the length of the rectangle along the board.
   *
   * @return the length, not null
   */
  public Length length() {
    return alongTo.minus(alongFrom);
  }

  /**
   * Returns the width of the rectangle across the board.
   *
   * @return the width, not null
   */
  public Length width() {
    return acrossTo.minus(acrossFrom);
  }
}
