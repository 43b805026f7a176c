package floorcalc.fittings;

import floorcalc.measure.Length;
import floorcalc.measure.PlainNumber;
import floorcalc.outline.Point;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.math.BigInteger;
import java.util.Objects;

/**
 * A straight saw line, measured from start end and start edge of the piece: x along the board, y across it.
 *
 * @param from where it begins, not null
 * @param to where it ends, another point; not null
 * @since 0.1
 */
public record SawLine(Point from, Point to) {
  private static final int DEGREE_DECIMALS = 1;

  /**
   * Checks that no part is null and that the points differ.
   *
   * @throws IllegalArgumentException if both points are the same
   */
  public SawLine {
    Objects.requireNonNull(from, "from");
    if (from.equals(Objects.requireNonNull(to, "to"))) {
      throw new IllegalArgumentException("a saw line needs two different points, but both are " + from);
    }
  }

  /**
   * Returns how long it is.
   *
   * @return the length, rounded to the nearest nanometre; not null
   */
  public Length length() {
    BigInteger x = BigInteger.valueOf(dx());
    BigInteger y = BigInteger.valueOf(dy());
    BigInteger square = x.multiply(x).add(y.multiply(y));
    BigInteger root = square.sqrt();
    BigInteger over = square.subtract(root.multiply(root));
    return Length.ofNanometres(root.longValueExact() + (over.compareTo(root) > 0 ? 1 : 0));
  }

  /**
   * Returns the angle between it and the edges of the board.
   *
   * @return degrees from 0, along the board, to 90, square to it; rounded to one decimal; not null
   */
  public BigDecimal degreesToEdge() {
    double degrees = StrictMath.toDegrees(StrictMath.atan2(Math.abs((double) dy()), Math.abs((double) dx())));
    return PlainNumber.of(degrees).setScale(DEGREE_DECIMALS, RoundingMode.HALF_EVEN);
  }

  /**
   * Tells whether it runs along the board or square to it.
   *
   * @return true if no slant is set; a line that is a micrometre out counts as straight
   */
  public boolean isSquare() {
    return Math.abs(dx()) <= 1000 || Math.abs(dy()) <= 1000;
  }

  private long dx() {
    return to.xNanometres() - from.xNanometres();
  }

  private long dy() {
    return to.yNanometres() - from.yNanometres();
  }
}
