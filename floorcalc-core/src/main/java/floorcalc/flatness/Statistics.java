package floorcalc.flatness;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/** Sum, sum of squares, mean and spread of lengths, exact until the last step. */
record Statistics(int number, Length sum, Area squares) {
  private static final MathContext EXACT_ENOUGH = new MathContext(80);

  static Statistics of(List<Length> values) {
    Length sum = Length.ZERO;
    Area squares = Area.ZERO;
    for (Length value : values) {
      sum = sum.plus(value);
      squares = squares.plus(value.times(value));
    }
    return new Statistics(values.size(), sum, squares);
  }

  /** To the nearest nanometre, a half to the even one. */
  Length mean() {
    return sum.dividedBy(number, RoundingMode.HALF_EVEN);
  }

  /** The sample's standard deviation, divisor one less than the number; to the nearest nanometre. */
  Length deviation() {
    BigDecimal squareOfSum = new BigDecimal(sum.times(sum).toHalfSquareNanometres());
    BigDecimal halves = new BigDecimal(squares.toHalfSquareNanometres())
        .subtract(squareOfSum.divide(BigDecimal.valueOf(number), EXACT_ENOUGH));
    return root(halves.divide(BigDecimal.valueOf(2L * (number - 1)), EXACT_ENOUGH));
  }

  /** The root of the mean of the squares, to the nearest nanometre. */
  Length rootMeanSquare() {
    return root(new BigDecimal(squares.toHalfSquareNanometres()).divide(BigDecimal.valueOf(2L * number), EXACT_ENOUGH));
  }

  private static Length root(BigDecimal squareNanometres) {
    BigInteger nanometres = squareNanometres.signum() <= 0 ? BigInteger.ZERO
        : squareNanometres.sqrt(EXACT_ENOUGH).setScale(0, RoundingMode.HALF_EVEN).toBigInteger();
    return Length.ofNanometres(nanometres.longValueExact());
  }
}
