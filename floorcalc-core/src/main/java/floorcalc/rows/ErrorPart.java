package floorcalc.rows;

import floorcalc.measure.Length;
import java.util.Objects;

/**
 * One cause of being off in a sum of lengths, such as the tape, or the width of each of twenty boards.
 *
 * @param name what people call it, not null
 * @param shape how its values lie about the middle, not null
 * @param size of a normal part its standard deviation, of one within limits the limit both ways; not null, not negative
 * @param times how many of it add up, each off by itself; at least 1, at most {@value #MOST_TIMES}
 * @since 0.1
 */
public record ErrorPart(String name, Shape shape, Length size, long times) {
  /** The most that may add up. */
  public static final long MOST_TIMES = 100_000;

  /**
   * How values lie about the middle.
   *
   * @since 0.1
   */
  public enum Shape {
    /** Normally distributed, as errors of measuring are. */
    NORMAL,
    /** Anywhere within limits alike, as where only a tolerance is known. */
    WITHIN_LIMITS
  }

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException if the size is negative or the number is out of range
   */
  public ErrorPart {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(shape, "shape");
    Widths.requireNotNegative(size, "size of error '" + name + "'", "give its size, it counts both ways");
    if (times < 1 || times > MOST_TIMES) {
      throw new IllegalArgumentException("error '" + name + "' must add up from 1 to " + MOST_TIMES + " times, but was "
          + times);
    }
  }

  /** The variance of one of it in square millimetres; within limits {@code a^2 / 3}. */
  double variance() {
    double one = size.toMillimetres() * size.toMillimetres();
    return shape == Shape.NORMAL ? one : one / 3;
  }
}
