package floorcalc.levels;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Point;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The plane that fits the levels of a floor best: the sum of the squares of the vertical distances is least. It says how far the
 * floor is out of <em>level</em>; how far it is from <em>flat</em> is another question, see {@link GridFlatness}.
 * <p>
 * Slopes are in millimetres per metre, rounded to six decimals; lengths are rounded to a whole nanometre, half to even.
 * Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class LevelPlane {
  private static final MathContext DIGITS = new MathContext(40, RoundingMode.HALF_EVEN);
  private static final int DECIMALS = 6;
  private static final String TO_SIX = ", rounded to six decimals";
  private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

  private final PlaneFit.Surface surface;
  private final BigDecimal alongX;
  private final BigDecimal alongY;
  private final BigDecimal slope;
  private final Length fall;
  private final SpotLevel most;
  private final SpotLevel least;

  private LevelPlane(PlaneFit.Surface surface, BigDecimal[] slopes, Length fall, SpotLevel most, SpotLevel least) {
    this.surface = surface;
    this.alongX = slopes[0];
    this.alongY = slopes[1];
    this.slope = slopes[2];
    this.fall = fall;
    this.most = most;
    this.least = least;
  }

  static Calculated<LevelPlane> of(List<SpotLevel> spots) {
    PlaneFit fit = PlaneFit.of(spots);
    PlaneFit.Surface surface = fit.surface();
    BigDecimal x = perMetre(surface.alongX());
    BigDecimal y = perMetre(surface.alongY());
    BigDecimal slope = x.multiply(x).add(y.multiply(y)).sqrt(DIGITS).setScale(DECIMALS, RoundingMode.HALF_UP);
    SpotLevel most = spots.get(0);
    SpotLevel least = spots.get(0);
    Length high = surface.at(most.place());
    Length low = high;
    for (SpotLevel spot : spots) {
      Length residual = residual(surface, spot);
      most = residual.compareTo(residual(surface, most)) > 0 ? spot : most;
      least = residual.compareTo(residual(surface, least)) < 0 ? spot : least;
      high = high.max(surface.at(spot.place()));
      low = low.min(surface.at(spot.place()));
    }
    LevelPlane plane = new LevelPlane(surface, new BigDecimal[] {x, y, slope}, high.minus(low), most, least);
    List<Step> steps = new ArrayList<>();
    List<Term> sums = new ArrayList<>(List.of(sum(fit, "Sxz", 0, 2), sum(fit, "Syy", 1, 1), sum(fit, "Syz", 1, 2),
        sum(fit, "Sxy", 0, 1), sum(fit, "Sxx", 0, 0)));
    String question = "How much does the plane of least squares rise, in mm per m, to the ";
    String note = "? Each S is n * sum(u * v) - sum(u) * sum(v) over the n = " + fit.n() + " readings, in mm2.";
    steps.add(new Step("slope-along-x", question + "right" + note,
        "a = 1000 * (Sxz * Syy - Syz * Sxy) / (Sxx * Syy - Sxy * Sxy)" + TO_SIX, sums, x, Source.DEFINITION));
    steps.add(new Step("slope-along-y", question + "far side, along y" + note,
        "b = 1000 * (Syz * Sxx - Sxz * Sxy) / (Sxx * Syy - Sxy * Sxy)" + TO_SIX, sums, y, Source.DEFINITION));
    steps.add(new Step("slope", "How steep is the plane where it is steepest, in mm per m?", "s = sqrt(a * a + b * b)" + TO_SIX,
        List.of(Term.of("a", "slope along x, mm per m", x), Term.of("b", "slope along y, mm per m", y)), slope,
        Source.DEFINITION));
    steps.add(new Step("fall", "How far does the plane fall over the places that were read?", "F = h - l",
        List.of(Term.of("h", "height of the plane where it is highest", high),
            Term.of("l", "height of the plane where it is lowest", low)), plane.fall, Source.DEFINITION));
    steps.add(new Step("distance-from-plane", "How far apart are the reading highest above the plane and the one deepest below"
        + " it, measured from the plane?", "R = u - d",
        List.of(Term.of("u", "above the plane, " + at(most), residual(surface, most)),
            Term.of("d", "below the plane (negative), " + at(least), residual(surface, least))), plane.residualRange(),
        Source.DEFINITION));
    return Calculated.of(plane, steps);
  }

  private static String at(SpotLevel spot) {
    return "at x = " + spot.place().x() + ", y = " + spot.place().y();
  }

  private static Term sum(PlaneFit fit, String symbol, int u, int v) {
    BigInteger s = fit.s(u, v);
    BigDecimal squareMillimetres = new BigDecimal(s, 12).stripTrailingZeros();
    return Term.of(symbol, "sum of products of " + "xyz".charAt(u) + " and " + "xyz".charAt(v) + ", mm2",
        squareMillimetres.signum() == 0 ? "0" : squareMillimetres.toPlainString());
  }

  private static BigDecimal perMetre(BigDecimal slope) {
    return slope.multiply(THOUSAND).setScale(DECIMALS, RoundingMode.HALF_UP);
  }

  private static Length residual(PlaneFit.Surface surface, SpotLevel spot) {
    return spot.height().minus(surface.at(spot.place()));
  }

  /**
   * Returns how much the plane rises to the right.
   *
   * @return millimetres per metre along x, to six decimals, negative if it falls; not null
   */
  public BigDecimal slopeAlongX() {
    return alongX;
  }

  /**
   * Returns how much the plane rises along y.
   *
   * @return millimetres per metre along y, to six decimals, negative if it falls; not null
   */
  public BigDecimal slopeAlongY() {
    return alongY;
  }

  /**
   * Returns how steep the plane is where it is steepest.
   *
   * @return millimetres per metre, to six decimals, not negative; not null
   */
  public BigDecimal slope() {
    return slope;
  }

  /**
   * Returns which way water would run.
   *
   * @return the direction, anticlockwise from x; empty if the slope is 0 to six decimals of a millimetre per metre; not null
   */
  public Optional<Direction> directionOfFall() {
    if (alongX.signum() == 0 && alongY.signum() == 0) {
      return Optional.empty();
    }
    return Optional.of(Direction.fromDegrees(StrictMath.toDegrees(
        StrictMath.atan2(-alongY.doubleValue(), -alongX.doubleValue()))));
  }

  /**
   * Returns how far the plane falls over the places that were read, from the highest to the lowest of these.
   *
   * @return the fall, not negative, not null
   */
  public Length fall() {
    return fall;
  }

  /**
   * Returns the height of the plane at a place.
   *
   * @param place the place, not null
   * @return the height above the datum of the readings, not null
   */
  public Length heightAt(Point place) {
    return surface.at(Objects.requireNonNull(place, "place"));
  }

  /**
   * Returns how far a reading lies above the plane.
   *
   * @param spot the reading, not null
   * @return the vertical distance, negative below the plane; not null
   */
  public Length residual(SpotLevel spot) {
    return residual(surface, Objects.requireNonNull(spot, "spot"));
  }

  /**
   * Returns the reading that lies highest above the plane.
   *
   * @return the first of the highest, not null
   */
  public SpotLevel highestAbove() {
    return most;
  }

  /**
   * Returns the reading that lies deepest below the plane.
   *
   * @return the first of the deepest, not null
   */
  public SpotLevel deepestBelow() {
    return least;
  }

  /**
   * Returns how far apart the highest and the deepest reading are, measured from the plane. It is a rough figure of how uneven the
   * whole floor is, and no flatness: it does not ask over which length.
   *
   * @return the range of the residuals, not negative, not null
   */
  public Length residualRange() {
    return residual(most).minus(residual(least));
  }
}
