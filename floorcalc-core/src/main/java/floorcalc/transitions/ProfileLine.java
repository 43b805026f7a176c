package floorcalc.transitions;

import floorcalc.measure.Length;
import floorcalc.measure.PlainNumber;
import floorcalc.outline.Point;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A profile that runs along several straight lines, mitred where two meet: round a hearth, along a bent break.
 * <p>
 * Where the line turns by an angle f, both pieces are sawn at f/2 from a square cut, and a profile of width w reaches
 * w/2 · tan(f/2) beyond the corner of the middle line on its outer edge. A corner of 90 degrees is sawn at 45, and adds half
 * the width to each piece. The ends of the whole line are square. Lengths are rounded to the nearest nanometre, tangents to twelve
 * decimals, angles to four.
 *
 * @param pieces the straight pieces in order, not null
 * @since 0.1
 */
public record ProfileLine(List<ProfilePiece> pieces) {
  private static final MathContext ENOUGH = new MathContext(60);
  private static final int TANGENT_DECIMALS = 12;
  private static final int DEGREE_DECIMALS = 4;
  private static final int MOST_CORNERS = 200;
  /** Beyond this a mitre would be longer than twenty widths. */
  private static final BigDecimal SHARPEST = BigDecimal.valueOf(40);

  /** Checks that no part is null and copies the list. */
  public ProfileLine {
    Objects.requireNonNull(pieces, "pieces");
    pieces = List.copyOf(pieces);
  }

  /**
   * Works out the pieces of a profile.
   *
   * @param corners the middle line of the profile, its ends among them; two points for a straight one; not null, 2 to 200
   * @param width the width of the profile on the floor, not null, more than zero
   * @return the pieces with the steps {@code tangent-of-mitre} for each corner, {@code piece-length} and {@code cut-from-bar} for
   *     each piece; a finding {@code mitres-cross} where a piece has no part of full width; not null
   * @throws IllegalArgumentException if there are too few or too many points, two that follow each other are the same, the line
   *     turns back on itself, or the width is not more than zero
   */
  public static Calculated<ProfileLine> of(List<Point> corners, Length width) {
    Objects.requireNonNull(width, "width");
    if (corners.size() < 2 || corners.size() > MOST_CORNERS) {
      throw new IllegalArgumentException("a profile runs along 2 to " + MOST_CORNERS + " points, but there are " + corners.size());
    }
    if (!Objects.requireNonNull(width, "width").isPositive()) {
      throw new IllegalArgumentException("the width of a profile must be more than 0 mm, but was " + width);
    }
    int n = corners.size() - 1;
    for (int i = 0; i < n; i++) {
      if (corners.get(i).equals(corners.get(i + 1))) {
        throw new IllegalArgumentException("points " + (i + 1) + " and " + (i + 2) + " of a profile are both "
            + corners.get(i) + "; leave one out");
      }
    }
    List<Step> steps = new ArrayList<>();
    List<BigDecimal> tangents = new ArrayList<>(List.of(BigDecimal.ZERO));
    for (int i = 0; i < n; i++) {
      tangents.add(i + 1 == n ? BigDecimal.ZERO : tangent(corners, i + 1, steps));
    }
    List<ProfilePiece> pieces = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      ProfilePiece piece = piece(corners, i, width, tangents, steps);
      pieces.add(piece);
      if (!piece.shortPoint().isPositive()) {
        findings.add(new Finding("mitres-cross", Severity.WARNING, "piece " + (i + 1), "the piece is " + piece.length()
            + " long, its mitres take " + piece.allowance() + ": the profile is too wide for so short a piece", Source.DEFINITION));
      }
    }
    return Calculated.of(new ProfileLine(pieces), steps, findings);
  }

  /**
   * Returns how two profiles are sawn that meet at a corner.
   *
   * @param before the far end of the one, not null
   * @param at where they meet, not null
   * @param after the far end of the other, not null
   * @return the angle that the saw is turned from a square cut for both, in degrees with four decimals, 0 to 90; not null
   * @throws IllegalArgumentException as {@link #of}
   */
  public static BigDecimal mitre(Point before, Point at, Point after) {
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(after, "after");
    return of(List.of(before, at, after), Length.ofMillimetres(1)).value().pieces().get(0).cutAtTo().abs();
  }

  /**
   * Returns the length along the middle line.
   *
   * @return the sum of the pieces, not null
   */
  public Length length() {
    return pieces.stream().map(ProfilePiece::length).reduce(Length.ZERO, Length::plus);
  }

  private static BigDecimal tangent(List<Point> corners, int at, List<Step> steps) {
    Length u1 = corners.get(at).x().minus(corners.get(at - 1).x());
    Length v1 = corners.get(at).y().minus(corners.get(at - 1).y());
    Length u2 = corners.get(at + 1).x().minus(corners.get(at).x());
    Length v2 = corners.get(at + 1).y().minus(corners.get(at).y());
    BigDecimal cross = product(u1, v2).subtract(product(v1, u2));
    BigDecimal dot = product(u1, u2).add(product(v1, v2));
    BigDecimal lengths = product(u1, u1).add(product(v1, v1)).multiply(product(u2, u2).add(product(v2, v2))).sqrt(ENOUGH);
    BigDecimal below = lengths.add(dot);
    if (cross.signum() == 0 && dot.signum() < 0 || cross.abs().compareTo(below.multiply(SHARPEST)) > 0) {
      throw new IllegalArgumentException("the profile turns back on itself at " + corners.get(at)
          + "; give two profiles that are butted there");
    }
    BigDecimal tangent = cross.divide(below, ENOUGH).setScale(TANGENT_DECIMALS, RoundingMode.HALF_UP);
    steps.add(new Step("tangent-of-mitre", "What is the tangent of half the turn at point " + (at + 1) + "? The saw is set to "
        + plain(degrees(tangent).abs()) + " degrees from a square cut.", "t = (u1 * v2 - v1 * u2) / (sqrt((u1 * u1 + v1 * v1) * (u2 * u2 +"
        + " v2 * v2)) + u1 * u2 + v1 * v2), rounded to twelve decimals",
        List.of(Term.of("u1", "piece before, to the right", u1), Term.of("v1", "piece before, up", v1),
            Term.of("u2", "piece after, to the right", u2), Term.of("v2", "piece after, up", v2)), plain(tangent), Source.DEFINITION));
    return tangent;
  }

  private static ProfilePiece piece(List<Point> corners, int i, Length width, List<BigDecimal> tangents, List<Step> steps) {
    Point from = corners.get(i);
    Point to = corners.get(i + 1);
    Length u = to.x().minus(from.x());
    Length v = to.y().minus(from.y());
    Length length = nearest(product(u, u).add(product(v, v)).sqrt(ENOUGH));
    BigDecimal t1 = tangents.get(i);
    BigDecimal t2 = tangents.get(i + 1);
    BigDecimal mitres = BigDecimal.valueOf(width.toNanometres()).multiply(t1.abs().add(t2.abs())).divide(BigDecimal.valueOf(2));
    Length longPoint = nearest(BigDecimal.valueOf(length.toNanometres()).add(mitres));
    steps.add(new Step("piece-length", "How long is piece " + (i + 1) + " along its middle?",
        "L = sqrt(u * u + v * v), rounded to the nearest nanometre",
        List.of(Term.of("u", "to the right", u), Term.of("v", "up", v)), length, Source.DEFINITION));
    steps.add(new Step("cut-from-bar", "What is cut off the bar for piece " + (i + 1) + ", from far point to far point?",
        "c = L + w * (abs(t1) + abs(t2)) / 2, rounded to the nearest nanometre",
        List.of(Term.of("L", "length along its middle", length), Term.of("w", "width of the profile", width),
            Term.of("t1", "tangent of the mitre at its beginning, 0 for a square end", plain(t1)),
            Term.of("t2", "tangent of the mitre at its end", plain(t2))), longPoint, Source.DEFINITION));
    return new ProfilePiece(from, to, length, longPoint, length.multipliedBy(2).minus(longPoint), degrees(t1), degrees(t2));
  }

  private static BigDecimal degrees(BigDecimal tangent) {
    return PlainNumber.of(StrictMath.toDegrees(StrictMath.atan(tangent.doubleValue())))
        .setScale(DEGREE_DECIMALS, RoundingMode.HALF_EVEN);
  }

  private static String plain(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }

  private static BigDecimal product(Length a, Length b) {
    return BigDecimal.valueOf(a.toNanometres()).multiply(BigDecimal.valueOf(b.toNanometres()));
  }

  private static Length nearest(BigDecimal nanometres) {
    return Length.ofNanometres(nanometres.setScale(0, RoundingMode.HALF_EVEN).longValueExact());
  }
}
