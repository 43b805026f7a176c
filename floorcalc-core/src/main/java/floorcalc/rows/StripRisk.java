package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.measure.PlainNumber;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.commons.math3.special.Erf;

/**
 * How likely a strip comes out narrower than the minimum when its stop is known to within a standard deviation.
 * <p>
 * The place of the stop is normally distributed about where it was measured. The strip goes with it, and where it would be
 * nothing or more than a board it begins again: of a strip as measured {@code s}, a pitch {@code p}, a minimum {@code m} and
 * a standard deviation {@code d} the likelihood is {@code P = sum over k of Phi((k * p + m - s) / d) - Phi((k * p - t - s) /
 * d)}, with {@code t} how far the stop runs off across the rows: a row line that meets a slanted stop brings a row to a
 * point. Where {@code d} is a pitch or more the strip may be anything and {@code P = (m + t) / p}, within 2e-9. Parts of the sum of
 * less than 1e-10 are left out of the working.
 * <p>
 * Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class StripRisk {
  private static final double SMALL = 1e-10;
  private static final int DECIMALS = 6;

  private final Length strip;
  private final Length standardDeviation;
  private final double probability;

  private StripRisk(Length strip, Length standardDeviation, double probability) {
    this.strip = strip;
    this.standardDeviation = standardDeviation;
    this.probability = probability;
  }

  /**
   * Returns how likely a strip at a stop parallel to the rows is narrower than the minimum.
   *
   * @param strip the strip as measured, not null, more than zero and at most the pitch
   * @param pitch the laid pitch, not null, more than zero
   * @param minimum the narrowest strip asked for, not null, not negative; zero makes nothing too narrow; more than the pitch
   *     is taken as the pitch
   * @param standardDeviation that of the place of the stop against the line that rows are set out from, not null, not negative
   * @return the likelihood with the step {@code chance-too-narrow}, and the finding {@code boards-narrower-than-minimum} where
   *     they are; not null
   * @throws IllegalArgumentException if a length is out of range
   */
  public static Calculated<StripRisk> of(Length strip, Length pitch, Length minimum, Length standardDeviation) {
    Objects.requireNonNull(standardDeviation, "standardDeviation");
    Widths.requirePositive(pitch, "laid pitch", "give the width that a laid board covers");
    Widths.requirePositive(strip, "strip", "a strip that just fits is a full board");
    if (strip.compareTo(pitch) > 0) {
      throw new IllegalArgumentException("the strip must not be wider than the laid pitch, " + pitch + ", but was " + strip);
    }
    List<Step> steps = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    Widths.requireNotNegative(minimum, "minimum row width", "give 0 mm for no minimum");
    Length least = Widths.inForce(minimum, pitch, Source.GIVEN, steps, findings);
    return of(strip, pitch, least, Length.ZERO, standardDeviation, steps, findings);
  }

  /**
   * Returns how likely the strip at a stop is narrower than the minimum of a start line. The stop's plus or minus plays no part.
   *
   * @param line the start line, not null
   * @param stop the stop, not null
   * @param standardDeviation that of the place of the stop against the line that rows are set out from, not null, not negative
   * @return the likelihood with the step {@code chance-too-narrow}, not null
   * @throws IllegalArgumentException if the standard deviation is negative
   */
  public static Calculated<StripRisk> at(StartLine line, Stop stop, Length standardDeviation) {
    Objects.requireNonNull(standardDeviation, "standardDeviation");
    Length first = line.bayLow().plus(line.firstRowWidth());
    Length toLine = stop.side() == Stop.Side.FLOOR_ABOVE
        ? first.minus(stop.tightestMeasured()) : stop.tightestMeasured().minus(first);
    Length nanometre = Length.ofNanometres(1);
    Length strip = toLine.minus(nanometre).remainder(line.pitch()).plus(nanometre);
    return of(strip, line.pitch(), line.minimum(), stop.taper(), standardDeviation, new ArrayList<>(), List.of());
  }

  /**
   * Returns the standard deviation of the place of a stop against rows whose pitch varies: what the measure of the width and
   * the pitch of {@code n} rows add up to, {@code d = sqrt(dw^2 + (n * dp)^2)}. All rows are taken to be off by as much, as
   * they are when the mean of a stack was measured a little wrong.
   *
   * @param ofWidth the standard deviation of the place of the stop as measured, not null, not negative
   * @param rows the number of rows from the line that rows are set out from, not negative
   * @param ofPitch the standard deviation of the laid pitch, not null, not negative
   * @return the standard deviation, rounded up to a whole nanometre, with the step {@code place-with-drift}; not null
   * @throws IllegalArgumentException if a value is negative
   */
  public static Calculated<Length> withDrift(Length ofWidth, long rows, Length ofPitch) {
    Objects.requireNonNull(ofWidth, "ofWidth");
    Objects.requireNonNull(ofPitch, "ofPitch");
    Widths.requireNotNegative(ofWidth, "standard deviation of the width", "give its size");
    Widths.requireNotNegative(ofPitch, "standard deviation of the pitch", "give its size");
    if (rows < 0) {
      throw new IllegalArgumentException("the number of rows must not be negative, but was " + rows);
    }
    BigInteger width = BigInteger.valueOf(ofWidth.toNanometres());
    BigInteger drift = BigInteger.valueOf(ofPitch.multipliedBy(rows).toNanometres());
    BigInteger[] root = width.multiply(width).add(drift.multiply(drift)).sqrtAndRemainder();
    Length sum = Length.ofNanometres(root[0].add(BigInteger.valueOf(root[1].signum())).longValueExact());
    return Calculated.of(sum, List.of(new Step("place-with-drift",
        "By how much is the place of the stop unsure against rows whose pitch is unsure as well?",
        "d = sqrt(dw * dw + n * dp * n * dp), rounded up to a whole nanometre",
        List.of(Term.of("dw", "standard deviation of the width", ofWidth), Term.of("n", "rows", rows),
            Term.of("dp", "standard deviation of the laid pitch", ofPitch)), sum, Source.DEFINITION)));
  }

  private static Calculated<StripRisk> of(Length strip, Length pitch, Length minimum, Length taper, Length deviation,
      List<Step> steps, List<Finding> findings) {
    Widths.requireNotNegative(deviation, "standard deviation", "give its size");
    List<Term> terms = new ArrayList<>(List.of(Term.of("m", "narrowest strip asked for", minimum),
        Term.of("p", "laid pitch", pitch)));
    boolean slanted = taper.isPositive();
    if (slanted) {
      terms.add(Term.of("t", "how far the stop runs off across the rows", taper));
    }
    String formula;
    double chance;
    if (minimum.isZero() || minimum.plus(taper).compareTo(pitch) >= 0 || deviation.compareTo(pitch) >= 0) {
      formula = minimum.isZero() ? "P = m / p" : "P = min(1, (m" + (slanted ? " + t" : "") + ") / p)";
      terms.removeIf(term -> minimum.isZero() && term.symbol().equals("t"));
      chance = minimum.isZero() ? 0 : Math.min(1, minimum.plus(taper).toMillimetres() / pitch.toMillimetres());
    } else if (deviation.isZero()) {
      formula = "P = 1 if s < m, " + (slanted ? "1 if s > p - t, " : "") + "else 0";
      terms.removeIf(term -> !slanted && term.symbol().equals("p"));
      chance = strip.compareTo(minimum) < 0 || strip.compareTo(pitch.minus(taper)) > 0 ? 1 : 0;
      terms.add(Term.of("s", "strip as measured", strip));
    } else {
      Sum sum = sum(strip.toMillimetres(), pitch.toMillimetres(), minimum.toMillimetres(), taper.toMillimetres(),
          deviation.toMillimetres());
      formula = "P = " + sum.formula();
      chance = sum.chance();
      terms.removeIf(term -> term.symbol().equals("p") && !sum.formula().contains("p"));
      terms.add(Term.of("s", "strip as measured", strip));
      terms.add(Term.of("d", "standard deviation of the place of the stop", deviation));
    }
    BigDecimal shown = PlainNumber.of(chance).setScale(DECIMALS, RoundingMode.HALF_UP);
    steps.add(new Step("chance-too-narrow", "How likely is the strip narrower than the minimum? Phi is the share of the normal"
        + " distribution below a value.", formula + ", rounded to six decimals", terms, shown, Source.DEFINITION));
    return Calculated.of(new StripRisk(strip, deviation, chance), steps, findings);
  }

  /** A sum of shares of the normal distribution, as text and as a number. */
  private record Sum(String formula, double chance) {}

  private static Sum sum(double strip, double pitch, double minimum, double taper, double deviation) {
    List<String> parts = new ArrayList<>();
    double chance = 0;
    String from = taper > 0 ? " - t - s) / d)" : " - s) / d)";
    for (int k = -10; k <= 10; k++) {
      double low = (k * pitch - taper - strip) / deviation;
      double high = (k * pitch + minimum - strip) / deviation;
      double part = 0.5 * Erf.erf(low / StrictMath.sqrt(2), high / StrictMath.sqrt(2));
      chance += part;
      if (part >= SMALL || k == 0) {
        String rows = k == 0 ? "" : k < 0 ? " - " + -k + " * p" : " + " + k + " * p";
        parts.add("Phi((m" + rows + " - s) / d) - Phi((0" + rows + from);
      }
    }
    return new Sum(String.join(" + ", parts), Math.min(1, chance));
  }

  /**
   * Returns the strip as measured.
   *
   * @return more than zero and at most the pitch, not null; at a slanted stop where it is narrowest, as if no row line met it
   */
  public Length strip() {
    return strip;
  }

  /**
   * Returns the standard deviation of the place of the stop.
   *
   * @return not negative, not null
   */
  public Length standardDeviation() {
    return standardDeviation;
  }

  /**
   * Returns how likely the strip is narrower than the minimum.
   *
   * @return from 0 to 1
   */
  public double probability() {
    return probability;
  }
}
