package floorcalc.outline.survey;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/**
 * An arc of a circle over its chord, measured as chord and rise: a bay, a bowed wall, a turret.
 * <p>
 * The radius is {@code (c^2 / 4 + h^2) / (2 h)} and the angle at the centre {@code 4 atan(2 h / c)}. A rise of half the
 * chord is a half circle, more than that more than a half. Lengths are rounded to the nearest nanometre and the area to
 * the nearest square millimetre; of radii beyond 100 km the angle, to fifteen decimals, leaves the arc's length less sure.
 * <pre>{@code
 * Arc.of(Length.parse("12 ft"), Length.parse("6 ft")).value().segment();   // half circle of 6 ft: 5.253... m²
 * }</pre>
 * Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Arc {
  private static final MathContext DIGITS = new MathContext(40);
  private static final int ANGLE_DECIMALS = 15;
  private static final Length LONGEST_CHORD = Length.ofMillimetres(20_000_000);
  private static final BigDecimal LEAST_SHARE = new BigDecimal("0.000001");
  private static final BigDecimal GREATEST_SHARE = new BigDecimal("1000");
  private static final BigDecimal SMALLEST_TERM = new BigDecimal("1e-60");

  private final Length chord;
  private final Length rise;
  private final Length radius;
  private final BigDecimal angle;
  private final Length length;
  private final Area segment;

  private Arc(Length chord, Length rise, Length radius, BigDecimal angle, Length length, Area segment) {
    this.chord = chord;
    this.rise = rise;
    this.radius = radius;
    this.angle = angle;
    this.length = length;
    this.segment = segment;
  }

  /**
   * Returns an arc by its chord and its rise.
   *
   * @param chord the straight line from end to end, not null, more than zero, at most 20 km
   * @param rise how far the middle of the arc is from the middle of the chord, not null, more than zero, from a millionth of
   *     the chord to a thousand times it
   * @return the arc with the steps {@code radius}, {@code angle}, {@code arc-length} and {@code segment-area}, not null
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Calculated<Arc> of(Length chord, Length rise) {
    require(chord, rise);
    BigDecimal c = Sides.decimal(chord);
    BigDecimal h = Sides.decimal(rise);
    BigDecimal exact = c.multiply(c).divide(BigDecimal.valueOf(4)).add(h.multiply(h)).divide(h.multiply(BigDecimal.valueOf(2)), DIGITS);
    Length radius = Sides.length(exact, RoundingMode.HALF_EVEN);
    BigDecimal angle = new BigDecimal(StrictMath.atan(h.multiply(BigDecimal.valueOf(2)).divide(c, DIGITS).doubleValue()))
        .multiply(BigDecimal.valueOf(4)).setScale(ANGLE_DECIMALS, RoundingMode.HALF_UP);
    // Not from the rounded radius: half a nanometre of it is three where the arc goes nearly all round.
    Length length = Sides.length(exact.multiply(angle), RoundingMode.HALF_EVEN);
    BigDecimal lessSine = lessSine(angle);
    Area segment = Sides.area(Sides.decimal(radius).pow(2).multiply(lessSine).divide(BigDecimal.valueOf(2)), RoundingMode.HALF_EVEN);
    return Calculated.of(new Arc(chord, rise, radius, angle, length, segment), List.of(
        new Step("radius", "Which circle has this chord and this rise?",
            "R = (c * c / 4 + h * h) / (2 * h), rounded to the nearest nanometre",
            List.of(Term.of("c", "chord", chord), Term.of("h", "rise", rise)), radius, Source.DEFINITION),
        new Step("angle", "Which angle does the arc take at the centre, in radians?",
            "w = 4 * arctan(2 * h / c), rounded to fifteen decimals",
            List.of(Term.of("h", "rise", rise), Term.of("c", "chord", chord)), angle, Source.DEFINITION),
        new Step("arc-length", "How long is the arc? The radius, not rounded, times the angle.",
            "b = (c * c / 4 + h * h) / (2 * h) * w, rounded to the nearest nanometre",
            List.of(Term.of("c", "chord", chord), Term.of("h", "rise", rise), Term.of("w", "angle", angle)), length, Source.DEFINITION),
        new Step("segment-area", "How large is the area between arc and chord?",
            "K = R * R * (w - sin(w)) / 2, rounded to a whole square millimetre",
            List.of(Term.of("R", "radius", radius), Term.of("w", "angle", angle)), segment, Source.DEFINITION)));
  }

  /** Refuses what is no arc. */
  static void require(Length chord, Length rise) {
    if (!chord.isPositive() || chord.compareTo(LONGEST_CHORD) > 0) {
      throw new IllegalArgumentException("the chord of an arc must be more than 0 mm and at most 20 km, but was " + chord);
    }
    if (!rise.isPositive()) {
      throw new IllegalArgumentException("the rise of an arc must be more than 0 mm, but was " + rise
          + "; an arc without a rise is a straight wall");
    }
    BigDecimal share = Sides.decimal(rise).divide(Sides.decimal(chord), DIGITS);
    if (share.compareTo(LEAST_SHARE) < 0 || share.compareTo(GREATEST_SHARE) > 0) {
      throw new IllegalArgumentException("the rise of an arc must be from a millionth of its chord to a thousand times it, but was "
          + rise + " on a chord of " + chord + "; measure both again");
    }
  }

  /** Returns an angle less its sine, by the series, which loses nothing where the angle is small. */
  private static BigDecimal lessSine(BigDecimal angle) {
    BigDecimal square = angle.multiply(angle).negate();
    BigDecimal term = angle;
    BigDecimal sum = BigDecimal.ZERO;
    for (int i = 2; term.abs().compareTo(SMALLEST_TERM) > 0; i += 2) {
      term = term.multiply(square).divide(BigDecimal.valueOf((long) i * (i + 1)), DIGITS);
      sum = sum.subtract(term);
    }
    return sum;
  }

  /**
   * Returns the chord.
   *
   * @return from end to end, not null
   */
  public Length chord() {
    return chord;
  }

  /**
   * Returns the rise.
   *
   * @return from the middle of the chord to the middle of the arc, not null
   */
  public Length rise() {
    return rise;
  }

  /**
   * Returns the radius.
   *
   * @return to the nearest nanometre, not null
   */
  public Length radius() {
    return radius;
  }

  /**
   * Returns the angle of the arc at its centre.
   *
   * @return degrees, more than 0 and less than 360
   */
  public double degrees() {
    return StrictMath.toDegrees(angle.doubleValue());
  }

  /**
   * Returns the length of the arc.
   *
   * @return to the nearest nanometre, not null
   */
  public Length length() {
    return length;
  }

  /**
   * Returns the area between the arc and its chord.
   *
   * @return to the nearest square millimetre, not null
   */
  public Area segment() {
    return segment;
  }
}
