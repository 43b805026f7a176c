package floorcalc.flatness;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Tilts read step by step along a line with a level on two feet, turned into heights.
 * <p>
 * Each tilt less the first one, summed up from step to step, is the rise in units of angle. A straight line is then taken off
 * so that both ends are equally high and the middle is zero. A height is that figure times the distance of the feet, with
 * the angle in radians: 1 arc-second is pi / 648000, 4.8481e-6. After J. C. Moody, 1955. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class TiltReadings {
  private static final Source MOODY = new Source("How to calibrate surface plates in the plant",
      "J. C. Moody, The Tool Engineer", 1955, "worksheet 1, as given in a typed copy of its tables", Standing.QUOTED);
  /** Pi / 648000, the radians of an arc-second, to far more digits than a nanometre needs. */
  private static final BigDecimal ARC_SECOND = new BigDecimal("3.14159265358979323846264338327950288")
      .divide(BigDecimal.valueOf(648_000), new MathContext(36));
  private static final MathContext EXACT_ENOUGH = new MathContext(40);
  private static final BigDecimal MOST = BigDecimal.valueOf(3600);

  private final Length step;
  private final List<BigDecimal> sums;
  private final List<BigDecimal> levelled;

  private TiltReadings(Length step, List<BigDecimal> sums, List<BigDecimal> levelled) {
    this.step = step;
    this.sums = List.copyOf(sums);
    this.levelled = List.copyOf(levelled);
  }

  /**
   * Takes the readings of a line.
   *
   * @param step the distance of the feet, by which the level is moved on each time; not null, more than zero
   * @param arcSeconds the tilts in the order of the line, up ahead positive; not null, at least two, each at most 1° either way
   * @return the readings, not null
   * @throws IllegalArgumentException if there are fewer, or one is out of range
   */
  public static TiltReadings of(Length step, List<BigDecimal> arcSeconds) {
    if (!Objects.requireNonNull(step, "step").isPositive()) {
      throw new IllegalArgumentException("step must be more than 0 mm, but was " + step);
    }
    if (arcSeconds.size() < 2) {
      throw new IllegalArgumentException("a line needs at least 2 tilts, but has " + arcSeconds.size());
    }
    List<BigDecimal> sums = new ArrayList<>(List.of(BigDecimal.ZERO));
    for (int i = 0; i < arcSeconds.size(); i++) {
      if (arcSeconds.get(i).abs().compareTo(MOST) > 0) {
        throw new IllegalArgumentException("tilt " + (i + 1) + " must be at most " + MOST
            + " arc-seconds either way, but was " + arcSeconds.get(i).toPlainString() + "; check the unit");
      }
      sums.add(sums.get(i).add(arcSeconds.get(i).subtract(arcSeconds.get(0))));
    }
    int steps = arcSeconds.size();
    int middle = steps / 2;
    List<BigDecimal> levelled = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      BigDecimal line = sums.get(steps).multiply(BigDecimal.valueOf((long) i - middle))
          .divide(BigDecimal.valueOf(steps), EXACT_ENOUGH).add(sums.get(middle));
      levelled.add(sums.get(i).subtract(line));
    }
    return new TiltReadings(step, sums, levelled);
  }

  /**
   * Returns the running sum at each station, in arc-seconds: zero at the first, one more than tilts.
   *
   * @return an unmodifiable list, not null
   */
  public List<BigDecimal> sums() {
    return sums;
  }

  /**
   * Returns the running sum less the line that makes both ends equal and the middle zero, in arc-seconds. Where the number of
   * tilts is odd, the station before the middle is zero.
   *
   * @return an unmodifiable list, not null
   */
  public List<BigDecimal> levelled() {
    return levelled;
  }

  /**
   * Returns the heights of the stations, to the nearest nanometre.
   *
   * @return the profile with the working of its highest and its lowest station, and the doubts about it; not null
   */
  public Calculated<HeightProfile> profile() {
    List<Length> heights = levelled.stream().map(this::height).toList();
    HeightProfile profile = HeightProfile.ofEqualSpacing(step, heights);
    int low = 0;
    int high = 0;
    for (int i = 1; i < heights.size(); i++) {
      low = heights.get(i).compareTo(heights.get(low)) < 0 ? i : low;
      high = heights.get(i).compareTo(heights.get(high)) > 0 ? i : high;
    }
    return Calculated.of(profile, List.of(step("highest-station", high, heights), step("lowest-station", low, heights)),
        profile.doubts());
  }

  private Length height(BigDecimal arcSeconds) {
    return Length.ofNanometres(arcSeconds.multiply(ARC_SECOND).multiply(BigDecimal.valueOf(step.toNanometres()))
        .setScale(0, RoundingMode.HALF_EVEN).longValueExact());
  }

  private Step step(String id, int station, List<Length> heights) {
    return new Step(id, "How high is station " + station + ", the first being 0?",
        "h = (s - sm - (i - m) * e / n) * w * a, rounded to the nearest nanometre",
        List.of(Term.of("s", "running sum there, arc-seconds", sums.get(station)),
            Term.of("sm", "running sum at the middle station, arc-seconds", sums.get((sums.size() - 1) / 2)),
            Term.of("i", "number of the station", station), Term.of("m", "number of the middle station", (sums.size() - 1) / 2),
            Term.of("e", "running sum at the last station, arc-seconds", sums.get(sums.size() - 1)),
            Term.of("n", "number of steps", sums.size() - 1), Term.of("w", "distance of the feet", step),
            new Term("a", "an arc-second in radians", ARC_SECOND, Source.DEFINITION)),
        heights.get(station), MOODY);
  }
}
