package floorcalc.finishing;

import floorcalc.materials.OrderLine;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.plan.Check;
import floorcalc.working.Finding;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** What is gathered for an order list. Used by one thread. */
final class Gathered {
  final List<OrderLine> lines = new ArrayList<>();
  final List<Check> checks = new ArrayList<>();
  final List<Finding> findings = new ArrayList<>();
  final List<String> cautions = new ArrayList<>();

  /** Metres, rounded up to the centimetre. */
  static BigDecimal metres(Length length) {
    return BigDecimal.valueOf(length.toNanometres(), 9).setScale(2, RoundingMode.CEILING);
  }

  /** Square metres, rounded up to a hundredth. */
  static BigDecimal squareMetres(Area area) {
    return new BigDecimal(area.toSquareMetreString(19)).setScale(2, RoundingMode.CEILING);
  }

  static String count(long number, String one, String many) {
    return number + " " + (number == 1 ? one : many);
  }
}
