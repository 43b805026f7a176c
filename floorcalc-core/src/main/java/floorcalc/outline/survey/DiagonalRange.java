package floorcalc.outline.survey;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * How long a diagonal can be at all, given the lengths of the walls.
 *
 * @param from the corner at one end, from 1
 * @param to the corner at the other end, from 1
 * @param shortest the least length, to a nanometre, not null
 * @param longest the greatest length, to a nanometre, not null
 * @since 0.1
 */
public record DiagonalRange(int from, int to, Length shortest, Length longest) implements Serializable {

  /** Checks that no part is null. */
  public DiagonalRange {
    Objects.requireNonNull(shortest, "shortest");
    Objects.requireNonNull(longest, "longest");
  }

  /**
   * Returns how long the straight line between two corners can be in any shape that has these walls in this order.
   * <p>
   * The walls on either side of the line make a chain. Pulled straight, the shorter chain is the greatest length; the
   * least is what one wall exceeds the rest of its chain by. Exact. At the ends of the range the room has lost a corner
   * or is folded flat.
   *
   * @param walls the lengths of the walls in order, not null, 3 to 10 000, each more than zero
   * @param from the corner at one end, from 1: that where wall 1 starts
   * @param to the corner at the other end, from 1, not the same
   * @return the range, not null
   * @throws IllegalArgumentException if the walls do not close or there is no such corner
   */
  public static DiagonalRange of(List<Length> walls, int from, int to) {
    Objects.requireNonNull(walls, "walls");
    Sides sides = Sides.of(walls);
    int n = sides.size();
    if (Math.min(from, to) < 1 || Math.max(from, to) > n || from == to) {
      throw new IllegalArgumentException("a diagonal runs between two different corners from 1 to " + n + ", but was from "
          + from + " to " + to);
    }
    int low = Math.min(from, to) - 1;
    int high = Math.max(from, to) - 1;
    List<Length> there = walls.subList(low, high);
    Length sum = Sides.sum(there);
    Length rest = Sides.sum(walls).minus(sum);
    Length longest = there.stream().reduce(Length.ZERO, Length::max);
    Length shortest = longest.multipliedBy(2).minus(sum);
    for (int i = high; i < n + low; i++) {
      shortest = shortest.max(sides.get(i).multipliedBy(2).minus(rest));
    }
    return new DiagonalRange(from, to, shortest.max(Length.ZERO), sum.min(rest));
  }

  /**
   * Returns by how much the possible lengths differ.
   *
   * @return the longest less the shortest, not negative
   */
  public Length spread() {
    return longest.minus(shortest);
  }

  /**
   * Refuses a measured length that cannot be.
   *
   * @param measured the length, not null
   * @throws IllegalArgumentException if it is outside the range; the message names the bound
   */
  public void require(Length measured) {
    boolean over = measured.compareTo(longest) > 0;
    if (over || measured.compareTo(shortest) < 0) {
      throw new IllegalArgumentException("the diagonal from corner " + from + " to corner " + to + " measures " + measured
          + ", but with these walls it is at " + (over ? "most " + longest : "least " + shortest)
          + "; measure it and the walls again");
    }
  }
}
