package floorcalc.outline.survey;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * Something worth measuring, or measuring again.
 *
 * @param why what for, not null
 * @param from the corner at one end, from 1
 * @param to the corner at the other end; the same for a turn at a corner
 * @param about about how long it is, zero for a turn; not null
 * @param text the same for people, not null
 * @since 0.1
 */
public record ToMeasure(Why why, int from, int to, Length about, String text) implements Serializable {

  /**
   * What something is to be measured for.
   *
   * @since 0.1
   */
  public enum Why {
    /** Without it the shape is not fixed. */
    FIX_SHAPE,
    /** It tells which of several shapes the room has. */
    TELL_APART,
    /** It does not fit the others. */
    MEASURE_AGAIN,
    /** It would show whether what is not checked by anything else is right. */
    CHECK
  }

  /** Checks that no part is null. */
  public ToMeasure {
    Objects.requireNonNull(why, "why");
    Objects.requireNonNull(about, "about");
    Objects.requireNonNull(text, "text");
  }
}
