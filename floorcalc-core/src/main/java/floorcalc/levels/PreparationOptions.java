package floorcalc.levels;

import floorcalc.measure.Length;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * How a floor may be made flat: how deep it may be ground, what is to be least, in what steps, with which filler. Immutable and
 * thread-safe.
 * <p>
 * Start at {@link #fillOnly()} or {@link #grindingUpTo(Length)}. Without more, the least filler is looked for, and of all ways that
 * take no more filler the least grinding.
 *
 * @since 0.1
 */
public final class PreparationOptions {
  /** The step of depths if none is stated: nobody pours or grinds finer. */
  public static final Length USUAL_STEP = Length.ofMillimetres("0.1");
  private static final Length DEEPEST = Length.ofMillimetres(100);

  private final Length deepestGrinding;
  private final Length step;
  private final BigDecimal grindingWeight;
  private final BigDecimal fillingWeight;
  private final FillerGoods filler;

  private PreparationOptions(Length deepestGrinding, Length step, BigDecimal grindingWeight, BigDecimal fillingWeight,
      FillerGoods filler) {
    this.deepestGrinding = deepestGrinding;
    this.step = step;
    this.grindingWeight = grindingWeight;
    this.fillingWeight = fillingWeight;
    this.filler = filler;
  }

  /**
   * Returns options under which nothing is ground.
   *
   * @return the options, not null
   */
  public static PreparationOptions fillOnly() {
    return new PreparationOptions(Length.ZERO, USUAL_STEP, null, null, null);
  }

  /**
   * Returns options under which high spots may be ground.
   *
   * @param deepest how deep at most, 0 to 100 mm, in whole steps; what is over a whole step is not used; not null
   * @return the options, not null
   * @throws IllegalArgumentException if it is out of range
   */
  public static PreparationOptions grindingUpTo(Length deepest) {
    if (deepest.isNegative() || deepest.compareTo(DEEPEST) > 0) {
      throw new IllegalArgumentException("deepest grinding must be 0 mm to " + DEEPEST + ", but was " + deepest);
    }
    return new PreparationOptions(deepest, USUAL_STEP, null, null, null);
  }

  /**
   * Returns the same options, but with the least work of both kinds in place of the least filler.
   *
   * @param grinding what it costs to grind off a litre, in any unit, more than 0; not null
   * @param filling what it costs to fill in a litre, in the same unit, more than 0; not null
   * @return the options, not null
   * @throws IllegalArgumentException if a weight is not from 0.001 to 1000000
   */
  public PreparationOptions leastWork(BigDecimal grinding, BigDecimal filling) {
    Objects.requireNonNull(grinding, "grinding");
    Objects.requireNonNull(filling, "filling");
    for (BigDecimal weight : new BigDecimal[] {grinding, filling}) {
      if (weight.compareTo(new BigDecimal("0.001")) < 0 || weight.compareTo(BigDecimal.valueOf(1_000_000)) > 0) {
        throw new IllegalArgumentException("weights of grinding and filling must be 0.001 to 1000000, but were "
            + grinding.toPlainString() + " and " + filling.toPlainString());
      }
    }
    return new PreparationOptions(deepestGrinding, step, grinding, filling, filler);
  }

  /**
   * Returns the same options with depths in other steps.
   *
   * @param steps the step, from 1 nm to 10 mm and no more than the smallest gap allowed, which is checked later; not null
   * @return the options, not null
   * @throws IllegalArgumentException if it is out of range
   */
  public PreparationOptions inStepsOf(Length steps) {
    if (!steps.isPositive() || steps.compareTo(Length.ofMillimetres(10)) > 0) {
      throw new IllegalArgumentException("steps of depths must be more than 0 mm and at most 10 mm, but were " + steps);
    }
    return new PreparationOptions(deepestGrinding, steps, grindingWeight, fillingWeight, filler);
  }

  /**
   * Returns the same options with a filler, so that its mass and bags are worked out.
   *
   * @param goods the filler, not null
   * @return the options, not null
   */
  public PreparationOptions with(FillerGoods goods) {
    return new PreparationOptions(deepestGrinding, step, grindingWeight, fillingWeight, Objects.requireNonNull(goods, "goods"));
  }

  /**
   * Returns how deep the floor may be ground.
   *
   * @return the depth, 0 mm if it is only filled; not null
   */
  public Length deepestGrinding() {
    return deepestGrinding;
  }

  /**
   * Returns the step of all depths.
   *
   * @return the step, not null
   */
  public Length step() {
    return step;
  }

  /**
   * Returns what grinding off a litre costs, if the least work is wanted.
   *
   * @return the weight, empty if the least filler is wanted; not null
   */
  public Optional<BigDecimal> grindingWeight() {
    return Optional.ofNullable(grindingWeight);
  }

  /**
   * Returns what filling in a litre costs, if the least work is wanted.
   *
   * @return the weight, empty if the least filler is wanted; not null
   */
  public Optional<BigDecimal> fillingWeight() {
    return Optional.ofNullable(fillingWeight);
  }

  /**
   * Returns the filler.
   *
   * @return the filler, empty if none was stated; not null
   */
  public Optional<FillerGoods> filler() {
    return Optional.ofNullable(filler);
  }
}
