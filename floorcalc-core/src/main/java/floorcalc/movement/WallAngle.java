package floorcalc.movement;

import floorcalc.measure.Length;
import floorcalc.measure.PlainNumber;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;

/**
 * The angle between a wall and the boards, from 0 degrees, where the boards run along the wall, to 90 degrees, where they
 * end at it. Immutable and thread-safe.
 * <p>
 * A gap at a slanted wall is measured square to the wall. Measured along a board or across the boards it looks wider: at
 * 45 degrees 6.35 mm along the board are 4.49 mm square to the wall. And boards that swell across push against such a wall
 * with a part of their movement only, its component square to the wall.
 * <p>
 * Sines and cosines are decimal numbers rounded to twelve places, the same on every machine.
 *
 * @since 0.1
 */
public final class WallAngle implements Serializable {
  /** The boards run along the wall: 0 degrees. */
  public static final WallAngle ALONG_BOARDS = new WallAngle(BigDecimal.ZERO);
  /** The boards end at the wall: 90 degrees. */
  public static final WallAngle ACROSS_BOARDS = new WallAngle(BigDecimal.valueOf(90));

  private static final long serialVersionUID = 1L;
  private static final int PLACES = 12;

  private final BigDecimal degrees;

  private WallAngle(BigDecimal degrees) {
    this.degrees = degrees;
  }

  /**
   * Returns an angle.
   *
   * @param degrees from 0 to 90, at most 9 decimals, not null
   * @return the angle, not null
   * @throws IllegalArgumentException if it is out of bounds
   */
  public static WallAngle of(BigDecimal degrees) {
    Objects.requireNonNull(degrees, "degrees");
    if (degrees.signum() < 0 || degrees.compareTo(BigDecimal.valueOf(90)) > 0 || degrees.scale() > 9) {
      throw new IllegalArgumentException("the angle between wall and boards must be from 0 to 90 degrees with at most 9"
          + " decimals, but was " + degrees + "; give the smaller of the two angles between them");
    }
    BigDecimal plain = degrees.signum() == 0 ? BigDecimal.ZERO : degrees.stripTrailingZeros();
    return new WallAngle(plain.scale() < 0 ? plain.setScale(0) : plain);
  }

  /**
   * Returns the angle.
   *
   * @return degrees from 0 to 90, not null
   */
  public BigDecimal degrees() {
    return degrees;
  }

  /** The part of a movement across the boards that is square to the wall: the cosine. */
  BigDecimal ofAcross() {
    return part(StrictMath.cos(StrictMath.toRadians(degrees.doubleValue())));
  }

  /** The part of a movement along the boards that is square to the wall: the sine. */
  BigDecimal ofAlong() {
    return part(StrictMath.sin(StrictMath.toRadians(degrees.doubleValue())));
  }

  private static BigDecimal part(double value) {
    BigDecimal rounded = PlainNumber.of(value).setScale(PLACES, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
  }

  /**
   * Returns how wide a gap is square to the wall that was measured along a board.
   *
   * @param alongBoard what was measured, not negative, not null
   * @return rounded down to a whole nanometre, 0 where the boards run along the wall; with the step
   *     {@code square-to-wall}; not null
   * @throws IllegalArgumentException if the length is negative
   */
  public Calculated<Length> squareToWall(Length alongBoard) {
    Objects.requireNonNull(alongBoard, "alongBoard");
    WidthChange.requireWidth(alongBoard);
    Length square = Length.ofNanometres(BigDecimal.valueOf(alongBoard.toNanometres()).multiply(ofAlong())
        .setScale(0, RoundingMode.FLOOR).longValueExact());
    return Calculated.of(square, List.of(new Step("square-to-wall",
        "How wide is the gap square to the wall?", "g = a * k, rounded down to a whole nanometre",
        List.of(Term.of("a", "measured along the board", alongBoard),
            Term.of("k", "sine of " + this + " between wall and boards", ofAlong())), square, Source.DEFINITION)));
  }

  /**
   * Returns how far along a board to measure for a gap square to the wall.
   *
   * @param squareToWall the gap wanted, not negative, not null
   * @return rounded up to a whole nanometre, with the step {@code along-the-board}; not null
   * @throws IllegalArgumentException if the length is negative, or the boards run along the wall or nearly so (below 1
   *     degree)
   */
  public Calculated<Length> alongBoard(Length squareToWall) {
    Objects.requireNonNull(squareToWall, "squareToWall");
    WidthChange.requireWidth(squareToWall);
    if (degrees.compareTo(BigDecimal.ONE) < 0) {
      throw new IllegalArgumentException("at " + this + " to the boards a gap is measured across the boards, not along"
          + " them");
    }
    Length along = Length.ofNanometres(BigDecimal.valueOf(squareToWall.toNanometres())
        .divide(ofAlong(), 0, RoundingMode.CEILING).longValueExact());
    return Calculated.of(along, List.of(new Step("along-the-board", "How far along the board is that?",
        "a = g / k, rounded up to a whole nanometre", List.of(Term.of("g", "gap square to the wall", squareToWall),
            Term.of("k", "sine of " + this + " between wall and boards", ofAlong())), along, Source.DEFINITION)));
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof WallAngle other && degrees.equals(other.degrees);
  }

  @Override
  public int hashCode() {
    return degrees.hashCode();
  }

  /**
   * Returns the angle as text.
   *
   * @return for example {@code "45 degrees"}, not null
   */
  @Override
  public String toString() {
    return degrees.toPlainString() + " degrees";
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return of(degrees);
  }
}
