package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import java.util.Objects;
import java.util.Optional;

/**
 * A place where the floor ends across the rows: a wall, the side of a column, a doorway, a hearth. Levels are heights
 * y in the frame of the bay, in which rows run along x and are counted upwards.
 * <p>
 * A stop parallel to the rows lies at one level. One that is not lies between two: {@code low} and {@code high}.
 * <p>
 * A stop that was measured may carry an error: it lies anywhere from {@code plusMinus} nearer to {@code plusMinus} further
 * than measured, as a whole. A strip is then sure of a width if it has it wherever in that band the stop lies. The stop from
 * which the rows are set out has no error of its own; that of any other is its error against that one.
 *
 * @param name what people call it, such as {@code "wall 3"}; not null
 * @param side on which side of the stop the floor lies, not null
 * @param low its lowest level, not null
 * @param high its highest level, not null, at least {@code low}
 * @param plusMinus the most that its place is off as measured, both ways, not null, not negative; zero if it is exact
 * @since 0.1
 */
public record Stop(String name, Side side, Length low, Length high, Length plusMinus) {

  /** A side that rises more than one in so many ends rows. */
  private static final int STEEPEST = 2;

  /**
   * On which side of a stop the floor lies.
   *
   * @since 0.1
   */
  public enum Side {
    /** The floor begins at the stop and lies above it, as at the starting wall. */
    FLOOR_ABOVE,
    /** The floor ends at the stop and lies below it, as at the finishing wall. */
    FLOOR_BELOW
  }

  /**
   * Checks that no part is null, that the levels are in order and that the error is a size.
   *
   * @throws IllegalArgumentException if {@code high} is less than {@code low}, or {@code plusMinus} is negative
   */
  public Stop {
    Objects.requireNonNull(plusMinus, "plusMinus");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(side, "side");
    Objects.requireNonNull(low, "low");
    Objects.requireNonNull(high, "high");
    if (high.compareTo(low) < 0) {
      throw new IllegalArgumentException("the highest level of stop '" + name + "' must not be less than its lowest, "
          + low + ", but was " + high);
    }
    Widths.requireNotNegative(plusMinus, "measuring error of stop '" + name + "'", "give its size, it counts both ways");
  }

  /**
   * Makes a stop without an error.
   *
   * @param name what people call it, not null
   * @param side on which side of the stop the floor lies, not null
   * @param low its lowest level, not null
   * @param high its highest level, not null, at least {@code low}
   * @throws IllegalArgumentException if {@code high} is less than {@code low}
   */
  public Stop(String name, Side side, Length low, Length high) {
    this(name, side, low, high, Length.ZERO);
  }

  /**
   * Returns a stop parallel to the rows with the floor above it.
   *
   * @param name what people call it, not null
   * @param level where it lies, not null
   * @return the stop, not null
   */
  public static Stop floorAbove(String name, Length level) {
    Objects.requireNonNull(level, "level");
    return new Stop(name, Side.FLOOR_ABOVE, level, level);
  }

  /**
   * Returns a stop at a slant to the rows with the floor above it.
   *
   * @param name what people call it, not null
   * @param low its lowest level, not null
   * @param high its highest level, not null, at least {@code low}
   * @return the stop, not null
   */
  public static Stop floorAbove(String name, Length low, Length high) {
    return new Stop(name, Side.FLOOR_ABOVE, low, high);
  }

  /**
   * Returns a stop parallel to the rows with the floor below it.
   *
   * @param name what people call it, not null
   * @param level where it lies, not null
   * @return the stop, not null
   */
  public static Stop floorBelow(String name, Length level) {
    Objects.requireNonNull(level, "level");
    return new Stop(name, Side.FLOOR_BELOW, level, level);
  }

  /**
   * Returns a stop at a slant to the rows with the floor below it.
   *
   * @param name what people call it, not null
   * @param low its lowest level, not null
   * @param high its highest level, not null, at least {@code low}
   * @return the stop, not null
   */
  public static Stop floorBelow(String name, Length low, Length high) {
    return new Stop(name, Side.FLOOR_BELOW, low, high);
  }

  /**
   * Returns the stop that a side of a floor is, if it is one: a side steeper than one in two ends rows and is none.
   *
   * @param name what people call it, not null
   * @param from where the side begins, in the frame of the bay, with the floor on its left; not null
   * @param to where it ends, not null
   * @return the stop, empty if the side is too steep; not null
   */
  public static Optional<Stop> ofSide(String name, Point from, Point to) {
    Objects.requireNonNull(name, "name");
    long dx = Math.subtractExact(to.xNanometres(), from.xNanometres());
    Length low = from.y().min(to.y());
    Length high = from.y().max(to.y());
    if (dx == 0 || STEEPEST * high.minus(low).toNanometres() > Math.abs(dx)) {
      return Optional.empty();
    }
    return Optional.of(dx > 0 ? floorAbove(name, low, high) : floorBelow(name, low, high));
  }

  /**
   * Returns by how much the stop runs off across the rows.
   *
   * @return {@code high - low}, zero if it is parallel to the rows; not null
   */
  public Length taper() {
    return high.minus(low);
  }

  /**
   * Returns this stop, measured to within an error: every start line is then judged by the strip that it keeps wherever the
   * stop lies.
   *
   * @param error the most that its place is off, both ways, not null, not negative; takes the place of one given before
   * @return the stop, not null
   * @throws IllegalArgumentException if the error is negative
   */
  public Stop within(Length error) {
    Objects.requireNonNull(error, "error");
    return new Stop(name, side, low, high, error);
  }

  /**
   * Returns this stop as if its measure were right.
   *
   * @return the stop without an error, not null
   */
  public Stop asMeasured() {
    return plusMinus.isZero() ? this : within(Length.ZERO);
  }

  /** Returns how far across the rows the stop may lie: what it runs off by, and its error both ways. */
  Length reach() {
    return taper().plus(plusMinus).plus(plusMinus);
  }

  /** Returns the level at which the strip is narrowest, as measured. */
  Length tightestMeasured() {
    return side == Side.FLOOR_ABOVE ? high : low;
  }

  /** Returns the level at which the strip is narrowest, if the floor ends as soon there as it may. */
  Length tightest() {
    return side == Side.FLOOR_ABOVE ? high.plus(plusMinus) : low.minus(plusMinus);
  }

  /**
   * Returns the narrowest that the strip at this stop gets wherever within its error the stop lies, in nanometres: more than
   * zero and at most {@code pitch - reach}, or zero if a row line meets the stop so that the strip comes to nothing.
   *
   * @param line any row line, nm
   * @param pitch the laid pitch, nm
   */
  long strip(long line, long pitch) {
    long toLine = side == Side.FLOOR_ABOVE
        ? Math.subtractExact(line, tightest().toNanometres())
        : Math.subtractExact(tightest().toNanometres(), line);
    long strip = Math.floorMod(toLine - 1, pitch) + 1;
    return strip <= pitch - reach().toNanometres() ? strip : 0;
  }

  /** Returns this stop moved, so that the floor ends so much later (or sooner, if negative). */
  Stop later(Length by) {
    Length move = side == Side.FLOOR_ABOVE ? by.negated() : by;
    return new Stop(name, side, low.plus(move), high.plus(move), plusMinus);
  }
}
