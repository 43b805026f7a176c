package floorcalc.fittings;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;

/**
 * A border of equal width on both sides of a field of whole boards: the field takes as many as fit, the border the rest.
 *
 * @param boards how many whole boards or modules the field has, not negative
 * @param first the border on the one side, not null
 * @param second the border on the other: the same, or a nanometre more where the rest cannot be halved; not null
 * @since 0.1
 */
public record Apron(long boards, Length first, Length second) {
  /** Checks that no part is null. */
  public Apron {
    Objects.requireNonNull(first, "first");
    Objects.requireNonNull(second, "second");
  }

  /**
   * Returns the widest field of whole boards that leaves both borders at least as wide as asked. Each border is then wider by less than
   * half a board.
   *
   * @param width the width of the floor, not null, at least twice the least border
   * @param pitch the laid pitch of boards or the module, not null, more than zero
   * @param least the narrowest border wanted, not null, not negative
   * @return the field and its borders with the steps {@code whole-boards} and {@code apron}; not null
   * @throws IllegalArgumentException if a length is out of range
   */
  public static Calculated<Apron> of(Length width, Length pitch, Length least) {
    if (!pitch.isPositive()) {
      throw new IllegalArgumentException("the laid pitch must be more than 0 mm, but was " + pitch);
    }
    if (least.isNegative() || width.compareTo(least.multipliedBy(2)) < 0) {
      throw new IllegalArgumentException("the narrowest border must be from 0 mm to half of the floor of " + width + ", but was " + least
          + "; make it narrower");
    }
    long n = width.minus(least.multipliedBy(2)).dividedBy(pitch);
    Length rest = width.minus(pitch.multipliedBy(n));
    Length first = rest.dividedBy(2, RoundingMode.FLOOR);
    Term w = Term.of("W", "width of the floor", width);
    Term p = Term.of("p", "laid pitch", pitch);
    List<Step> steps = List.of(
        new Step("whole-boards", "How many whole boards leave both borders wide enough?", "n = floor((W - 2 * a0) / p)",
            List.of(w, Term.of("a0", "narrowest border wanted", least), p), n, Source.DEFINITION),
        new Step("apron", "How wide is the border on each side?", "a = (W - n * p) / 2, rounded down to a whole nanometre",
            List.of(w, Term.of("n", "whole boards", n), p), first, Source.DEFINITION));
    return Calculated.of(new Apron(n, first, rest.minus(first)), steps);
  }
}
