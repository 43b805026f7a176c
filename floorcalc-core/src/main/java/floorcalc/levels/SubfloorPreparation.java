package floorcalc.levels;

import floorcalc.flatness.ToleranceSet;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.measure.Mass;
import floorcalc.working.Calculated;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What to grind and what to fill, and how deep, so that a floor read on a grid keeps a set of tolerances.
 * <p>
 * Least filler is proven: no way to prepare the floor that grinds no deeper fills less, at any reading. How much is ground for it, or the
 * work if that is to be least, stands beside a bound from a linear program in floating point. The floor as made is judged again by
 * {@link GridFlatness}, and keeps the limits.
 * <p>
 * It holds for the readings, with the floor straight between two of them along rows, columns and diagonals. For volumes each depth is spread
 * bilinearly between four readings; that is the same as letting each reading stand for a quarter of each cell that it
 * is a corner of. Floor beyond the outermost readings is not counted: read up to the walls.
 * <pre>{@code
 * SubfloorPreparation work = SubfloorPreparation.of(levels, ToleranceSet.named("BS 8204 SR1"),
 *     PreparationOptions.grindingUpTo(Length.ofMillimetres(2))).value();
 * work.toFill().forEach(spot -> System.out.println(spot.place() + ": " + spot.fill()));
 * }</pre>
 * Depths are whole steps, volumes are exact for these depths. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class SubfloorPreparation {
  private final List<SpotWork> spots;
  private final Volumes volumes;
  private final Filler filler;
  private final Levels after;
  private final GridFlatness flatness;

  SubfloorPreparation(List<SpotWork> spots, Volumes volumes, Filler filler, Levels after, GridFlatness flatness) {
    this.spots = List.copyOf(spots);
    this.volumes = volumes;
    this.filler = filler;
    this.after = after;
    this.flatness = flatness;
  }

  /** Volumes in litres, and their bounds. */
  record Volumes(Area area, BigDecimal filler, BigDecimal leastFiller, BigDecimal ground, Optional<BigDecimal> leastGround,
      Optional<BigDecimal> work, Optional<BigDecimal> leastWork, BigDecimal worstDepthTimesArea,
      BigDecimal meanDepthTimesArea) {}

  /** What to buy. */
  record Filler(Mass mass, long bags) {}

  /**
   * Finds what to grind and what to fill.
   *
   * @param levels the levels, on a grid; not null
   * @param set what the floor has to keep; limits for a share of the placements are left aside; not null
   * @param options how deep it may be ground, what is to be least, with which filler; not null
   * @return the preparation with its working and, beside it, two usual figures that are wrong; findings on dust, layers, readings
   *     that seem misread; not null
   * @throws IllegalArgumentException if the levels do not form a grid, the set is not one of gaps under an edge, no span
   *     of it can be judged because readings are too far apart, or the step of depths is more than its smallest gap
   */
  public static Calculated<SubfloorPreparation> of(Levels levels, ToleranceSet set, PreparationOptions options) {
    return new PreparationWorking(levels, set, options).prepare();
  }

  /**
   * Returns every reading with its height before and after, in the order in which they were given.
   *
   * @return an unmodifiable list, not null
   */
  public List<SpotWork> spots() {
    return spots;
  }

  /**
   * Returns the spots that are ground.
   *
   * @return an unmodifiable list, not null, may be empty
   */
  public List<SpotWork> toGrind() {
    return spots.stream().filter(spot -> spot.grind().isPositive()).toList();
  }

  /**
   * Returns the spots that are filled.
   *
   * @return an unmodifiable list, not null, may be empty
   */
  public List<SpotWork> toFill() {
    return spots.stream().filter(spot -> spot.fill().isPositive()).toList();
  }

  /**
   * Returns how deep is ground where it is deepest.
   *
   * @return the depth, not negative, not null
   */
  public Length deepestGrinding() {
    return spots.stream().map(SpotWork::grind).reduce(Length.ZERO, Length::max);
  }

  /**
   * Returns how thick the filler is where it is thickest.
   *
   * @return the depth, not negative, not null
   */
  public Length deepestFilling() {
    return spots.stream().map(SpotWork::fill).reduce(Length.ZERO, Length::max);
  }

  /**
   * Returns the floor that the readings stand for.
   *
   * @return the area, to half a square nanometre; not null
   */
  public Area area() {
    return volumes.area();
  }

  /**
   * Returns how much filler is laid.
   *
   * @return litres, exact for the depths of the spots, not negative; not null
   */
  public BigDecimal fillerLitres() {
    return volumes.filler();
  }

  /**
   * Returns the filler that no way to prepare the floor, in the same steps and grinding no deeper, can do without.
   *
   * @return litres, proven; the same as {@link #fillerLitres()} unless the least work was asked for; not null
   */
  public BigDecimal leastFillerLitres() {
    return volumes.leastFiller();
  }

  /**
   * Returns how much is ground off.
   *
   * @return litres, exact for the depths of the spots, not negative; not null
   */
  public BigDecimal groundLitres() {
    return volumes.ground();
  }

  /**
   * Returns what must be ground off at least with the least filler.
   *
   * @return litres, a bound worked out in floating point and rounded down to four decimals; empty if nothing may be ground or the
   *     least work was asked for; not null
   */
  public Optional<BigDecimal> leastGroundLitres() {
    return volumes.leastGround();
  }

  /**
   * Returns the work, if the least work was asked for: litres times their weights.
   *
   * @return the work, exact; not null
   */
  public Optional<BigDecimal> work() {
    return volumes.work();
  }

  /**
   * Returns the work that no way to prepare the floor can do without, if the least work was asked for.
   *
   * @return a bound worked out in floating point and rounded down to four decimals; not null
   */
  public Optional<BigDecimal> leastWork() {
    return volumes.leastWork();
  }

  /**
   * Returns what the filler weighs out of the bag.
   *
   * @return the mass, exact; empty if no filler was stated; not null
   */
  public Optional<Mass> fillerMass() {
    return Optional.ofNullable(filler).map(Filler::mass);
  }

  /**
   * Returns how many whole bags that is.
   *
   * @return the number, empty if no filler was stated; not null
   */
  public Optional<Long> bags() {
    return Optional.ofNullable(filler).map(Filler::bags);
  }

  /**
   * Returns a usual figure that is wrong: the height between the lowest and the highest reading, all over the floor.
   *
   * @return litres, never less than {@link #leastFillerLitres()} but for one step of depth; not null
   */
  public BigDecimal worstDepthTimesArea() {
    return volumes.worstDepthTimesArea();
  }

  /**
   * Returns another: the mean depth below the highest reading, all over the floor, as if it had to be level and without any tolerance.
   *
   * @return litres, never less than {@link #leastFillerLitres()} but for one step of depth; not null
   */
  public BigDecimal meanDepthTimesArea() {
    return volumes.meanDepthTimesArea();
  }

  /**
   * Returns the levels of the floor once it is prepared.
   *
   * @return the levels, in the order of those given; not null
   */
  public Levels levelsAfter() {
    return after;
  }

  /**
   * Returns how flat the floor is once it is prepared.
   *
   * @return the flatness, with no judgement that is not met; not null
   */
  public GridFlatness flatnessAfter() {
    return flatness;
  }
}
