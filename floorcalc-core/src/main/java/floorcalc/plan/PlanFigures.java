package floorcalc.plan;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * What tells plans apart that take as many packs: how the joints lie, how much is sawn, and what is left over. Immutable and
 * thread-safe.
 *
 * @param smallestOffset the smallest distance along the rows between end joints of rows that touch; empty if no two rows with
 *     joints touch; not null
 * @param inLine H patterns: pairs of joints in line with one row between them, see
 *     {@link floorcalc.joints.JointLayout#inLine()}
 * @param stairs stair patterns: joints that go on in equal steps over three rows or more, see
 *     {@link floorcalc.joints.JointLayout#stairs()}
 * @param cuts how often the saw goes straight through a board or an offcut, across or along, to make the rectangles that
 *     enclose the pieces; sawing them to shape at a slant or a notch is not counted
 * @param longestLeftover the longest offcut of full width that is left of the boards used, zero if there is none; boards that
 *     stay whole are not counted; not null
 * @since 0.1
 */
public record PlanFigures(Optional<Length> smallestOffset, int inLine, int stairs, int cuts, Length longestLeftover)
    implements Serializable {
  /** Checks that no part is null. */
  public PlanFigures {
    Objects.requireNonNull(smallestOffset, "smallestOffset");
    Objects.requireNonNull(longestLeftover, "longestLeftover");
  }

  /**
   * Returns how often a pattern was found that catches the eye.
   *
   * @return H patterns and stair patterns together
   */
  public int patterns() {
    return inLine + stairs;
  }

  /**
   * Compares by what makes the nicer floor among plans that take as many boards: fewer H and stair patterns; of as many, the
   * larger smallest offset, none at all counting as the largest; of as large, fewer cuts; of as many, the longer leftover.
   *
   * @param other figures of another plan for the same job, not null
   * @return less than zero if these are nicer, more than zero if the others are, zero if neither is
   */
  public int compareNiceness(PlanFigures other) {
    int order = Integer.compare(patterns(), other.patterns());
    order = order == 0 ? compareOffset(other) : order;
    order = order == 0 ? Integer.compare(cuts, other.cuts) : order;
    return order == 0 ? other.longestLeftover.compareTo(longestLeftover) : order;
  }

  /**
   * Compares by the smallest offset alone, none at all counting as the largest.
   *
   * @param other figures of another plan for the same job, not null
   * @return less than zero if the offset is larger here, more than zero if it is smaller, zero if they are equal
   */
  public int compareOffset(PlanFigures other) {
    if (smallestOffset.isEmpty() || other.smallestOffset.isEmpty()) {
      return Boolean.compare(smallestOffset.isPresent(), other.smallestOffset.isPresent());
    }
    return other.smallestOffset.get().compareTo(smallestOffset.get());
  }

  private Object writeReplace() {
    return new Form(smallestOffset.orElse(null), inLine, stairs, cuts, longestLeftover);
  }

  /** What is written: an optional part by itself, or null. Reading goes through the constructor and its checks. */
  private record Form(Length smallestOffset, int inLine, int stairs, int cuts,
      Length longestLeftover) implements Serializable {

    private Object readResolve() {
      return new PlanFigures(Optional.ofNullable(smallestOffset), inLine, stairs, cuts, longestLeftover);
    }
  }
}
