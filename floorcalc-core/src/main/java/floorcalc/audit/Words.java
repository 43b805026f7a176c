package floorcalc.audit;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/** Values put into words for findings. */
final class Words {
  private Words() {
  }

  static String mm(long nanometres) {
    return Length.ofNanometres(nanometres).toString();
  }

  static String mm(double nanometres) {
    return mm(Math.round(nanometres));
  }

  /** An area in square millimetres with four digits that count. */
  static String squareMillimetres(double squareNanometres) {
    return new BigDecimal(squareNanometres).movePointLeft(12).round(new MathContext(4)).stripTrailingZeros()
        .toPlainString() + " mm²";
  }

  /** An area in square millimetres to the last half square nanometre. */
  static String squareMillimetres(BigInteger halfSquareNanometres) {
    BigDecimal exact = new BigDecimal(halfSquareNanometres.multiply(BigInteger.valueOf(5)), 13).stripTrailingZeros();
    return exact.toPlainString() + " mm²";
  }

  static String point(double x, double y) {
    return Point.ofNanometres(Math.round(x), Math.round(y)).toString();
  }

  static String span(long from, long to) {
    return Length.ofNanometres(from).toMillimetreString() + " to " + mm(to);
  }

  static String count(long number, String thing) {
    return number + " " + (number == 1 ? thing : thing + "s");
  }
}
