package floorcalc.boards;

import floorcalc.measure.Length;
import java.util.Objects;

/**
 * Where on which board a piece is cut.
 *
 * @param board the board, from 0 in the order of opening
 * @param alongFrom the piece's end at low x from the board's end at low x, not null
 * @param alongTo the piece's end at high x, measured likewise; not null
 * @param acrossFrom the piece's edge at low y from the board's edge at low y, not null
 * @param acrossTo the piece's edge at high y, measured likewise; not null
 * @since 0.1
 */
public record Placement(int board, Length alongFrom, Length alongTo, Length acrossFrom, Length acrossTo) {
  /** Checks that no part is null. */
  public Placement {
    Objects.requireNonNull(alongFrom, "alongFrom");
    Objects.requireNonNull(alongTo, "alongTo");
    Objects.requireNonNull(acrossFrom, "acrossFrom");
    Objects.requireNonNull(acrossTo, "acrossTo");
  }
}
