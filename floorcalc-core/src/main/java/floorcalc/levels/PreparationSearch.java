package floorcalc.levels;

import floorcalc.measure.Length;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * Looks for heights that keep the limits with the least filler, and then the least grinding, or with the least work of both.
 * <p>
 * <b>Least filler.</b> Let the floor be ground to the full depth everywhere and {@linkplain Raising raise} it from there: what
 * comes out, {@code w}, is nowhere above any other floor that keeps the limits and is ground no deeper. Filler at a reading is what a floor stands
 * above the height found, so no way to prepare the floor fills more than {@code w} at one place and less at another: {@code w} needs the least
 * filler at every reading at once, and so the least volume, whatever area each reading stands for.
 * <p>
 * <b>Then the least grinding.</b> Filled readings stay as in {@code w}; of the others it is asked which have to be lower than found, between
 * their height in {@code w} and that. This is a linear program, see {@link Grinding}; its answer is {@linkplain Easing made
 * whole steps}.
 * <p>
 * <b>Least work.</b> A linear program in both. Its grinding depths are rounded up to whole steps, filler is raised from there, and
 * what was ground deeper than needed is eased.
 */
final class PreparationSearch {
  private static final BigInteger FOUR = BigInteger.valueOf(4);
  /** Cubic nanometres in a litre, as a power of ten. */
  private static final int LITRE = 24;
  /** A floating-point bound is taken to be true to a millionth. */
  private static final double TRUE_TO = 1e-6;

  private final LevelGrid grid;
  private final long[] found;
  private final long step;
  private final long deepest;
  private final Ground ground;
  private long[] made;
  private long[] least;
  private long raised;
  private double leastGround;
  private Double leastWork;
  private boolean isFinished = true;

  PreparationSearch(LevelGrid grid, long[] found, Limits limits, PreparationOptions options) {
    this.grid = grid;
    this.found = found;
    this.step = options.step().toNanometres();
    this.deepest = options.deepestGrinding().toNanometres() / step * step;
    this.ground = new Ground(grid, limits.limits());
    Raising raising = new Raising(ground, lowered(), step);
    least = raising.heights();
    raised = raising.raised();
    Optional<BigDecimal> weight = options.grindingWeight();
    if (weight.isPresent() && deepest > 0) {
      leastWork(weight.get().doubleValue(), options.fillingWeight().orElseThrow().doubleValue());
    } else {
      leastFiller();
    }
  }

  private long[] lowered() {
    long[] low = new long[found.length];
    for (int i = 0; i < low.length; i++) {
      low[i] = found[i] - deepest;
    }
    return low;
  }

  private void leastFiller() {
    if (deepest == 0) {
      made = least;
      return;
    }
    int n = found.length;
    long[] start = new long[n];
    long[] room = new long[n];
    for (int i = 0; i < n; i++) {
      start[i] = Math.max(found[i], least[i]);
      room[i] = Math.max(0, found[i] - least[i]);
    }
    Grinding grinding = new Grinding(ground, start, room, areas(1), new double[0], step);
    isFinished = grinding.isFinished();
    leastGround = grinding.bound();
    for (int i = 0; i < n; i++) {
      start[i] -= Math.min(room[i], wholeSteps(grinding.depth(i)));
    }
    Easing easing = new Easing(ground, start, step);
    easing.lowerTo(least);
    long[] highest = new long[n];
    for (int i = 0; i < n; i++) {
      highest[i] = Math.max(found[i], least[i]);
    }
    easing.raiseTo(highest);
    made = easing.heights();
  }

  private void leastWork(double grindingWeight, double fillingWeight) {
    int n = found.length;
    long[] room = new long[n];
    java.util.Arrays.fill(room, deepest);
    Grinding grinding = new Grinding(ground, found, room, areas(grindingWeight), areas(fillingWeight), step);
    isFinished = grinding.isFinished();
    leastWork = grinding.bound();
    long[] start = new long[n];
    for (int i = 0; i < n; i++) {
      start[i] = found[i] - Math.min(deepest, wholeSteps(grinding.depth(i)));
    }
    Raising raising = new Raising(ground, start, step);
    raised += raising.raised();
    Easing easing = new Easing(ground, raising.heights(), step);
    easing.raiseTo(found);
    made = easing.heights();
  }

  private long wholeSteps(double millimetres) {
    return (long) Math.ceil(millimetres * 1e6 / step - 0.02) * step;
  }

  /** The area that each reading stands for in square metres, times a weight: what a millimetre there costs, by litre. */
  private double[] areas(double weight) {
    double[] areas = new double[found.length];
    for (int i = 0; i < areas.length; i++) {
      areas[i] = new BigDecimal(grid.quarters[i]).movePointLeft(18).doubleValue() / 4 * weight;
    }
    return areas;
  }

  long[] made() {
    return made;
  }

  /** How often a height was raised. */
  long raised() {
    return raised;
  }

  boolean isFinished() {
    return isFinished;
  }

  /** Litres of filler of heights; exact. */
  BigDecimal filler(long[] heights) {
    BigInteger sum = BigInteger.ZERO;
    for (int i = 0; i < found.length; i++) {
      sum = sum.add(grid.quarters[i].multiply(BigInteger.valueOf(Math.max(0, heights[i] - found[i]))));
    }
    return litres(sum);
  }

  /** The filler that no way to prepare the floor can do without, in litres; exact for whole steps. */
  BigDecimal leastFillerLitres() {
    return filler(least);
  }

  /** Litres ground off; exact. */
  BigDecimal ground(long[] heights) {
    BigInteger sum = BigInteger.ZERO;
    for (int i = 0; i < found.length; i++) {
      sum = sum.add(grid.quarters[i].multiply(BigInteger.valueOf(Math.max(0, found[i] - heights[i]))));
    }
    return litres(sum);
  }

  private static BigDecimal litres(BigInteger quarters) {
    return plain(new BigDecimal(quarters, LITRE).divide(new BigDecimal(FOUR)));
  }

  static BigDecimal plain(BigDecimal value) {
    BigDecimal stripped = value.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }

  /** The bound on what must be ground off with the least filler, or on the work, rounded down to four decimals. */
  BigDecimal bound() {
    double value = leastWork == null ? leastGround : leastWork;
    return new BigDecimal(value * (1 - TRUE_TO)).setScale(4, RoundingMode.FLOOR).max(BigDecimal.ZERO);
  }

  /** How deep the floor may be ground in whole steps. */
  Length deepest() {
    return Length.ofNanometres(deepest);
  }
}
