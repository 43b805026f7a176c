package floorcalc.plan;

import floorcalc.bays.ExpansionBreak;
import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * An expansion break of a plan.
 *
 * @param room the name of its room, not null
 * @param line where it lies and what asks for it, not null
 * @param gap the width of its gap in all, half of it on either side of the line; not null, not negative
 * @since 0.1
 */
public record RoomBreak(String room, ExpansionBreak line, Length gap) implements Serializable {
  /** Checks that no part is null and that the gap is not negative. */
  public RoomBreak {
    Objects.requireNonNull(room, "room");
    Objects.requireNonNull(line, "line");
    if (Objects.requireNonNull(gap, "gap").isNegative()) {
      throw new IllegalArgumentException("the gap of a break must be 0 mm or more, but was " + gap);
    }
  }
}
