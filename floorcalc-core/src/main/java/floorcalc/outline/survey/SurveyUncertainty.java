package floorcalc.outline.survey;

import floorcalc.measure.Length;
import floorcalc.measure.PlainNumber;
import java.io.Serializable;
import java.util.Objects;

/**
 * How far measurements are off as a rule: one standard deviation each.
 * <p>
 * A length of {@code L} metres has the standard deviation {@code sqrt(a^2 + (b * L)^2)}, with {@code a} from setting and
 * reading the ends and {@code b} from pull, sag and scale, which do not depend on each other.
 *
 * @param length {@code a}: what any length may be off, not null, more than zero
 * @param lengthPerMetre {@code b}: what each metre adds, not null, not negative
 * @param turnDegrees what a measured turn may be off, more than zero, at most 45 degrees
 * @since 0.1
 */
public record SurveyUncertainty(Length length, Length lengthPerMetre, double turnDegrees) implements Serializable {
  /** A tape held by hand: 2 mm and 0.2 mm a metre, turns to half a degree. Common practice, no source. */
  public static final SurveyUncertainty TAPE =
      new SurveyUncertainty(Length.ofMillimetres(2), Length.ofNanometres(200_000), 0.5);
  /** A hand-held laser meter: 1.5 mm and 0.1 mm a metre, turns to half a degree. Common practice, no source. */
  public static final SurveyUncertainty LASER =
      new SurveyUncertainty(Length.ofNanometres(1_500_000), Length.ofNanometres(100_000), 0.5);

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException if a value is out of range
   */
  public SurveyUncertainty {
    Objects.requireNonNull(lengthPerMetre, "lengthPerMetre");
    if (!Objects.requireNonNull(length, "length").isPositive()) {
      throw new IllegalArgumentException("the standard deviation of a length must be more than 0 mm, but was " + length
          + "; a good tape held by hand gives 2 mm");
    }
    if (Objects.requireNonNull(lengthPerMetre, "length per metre").isNegative()) {
      throw new IllegalArgumentException("the standard deviation of a length per metre must not be negative, but was "
          + lengthPerMetre);
    }
    if (!(turnDegrees > 0 && turnDegrees <= 45)) {
      throw new IllegalArgumentException("the standard deviation of a turn must be more than 0 and at most 45 degrees, but was "
          + PlainNumber.text(turnDegrees));
    }
  }

  /**
   * Returns the standard deviation of a measured length.
   *
   * @param measured the length, not null
   * @return in millimetres, more than zero
   */
  public double ofLength(Length measured) {
    double fixed = length.toMillimetres();
    double growing = lengthPerMetre.toMillimetres() * measured.toMillimetres() / 1000;
    return StrictMath.sqrt(fixed * fixed + growing * growing);
  }
}
