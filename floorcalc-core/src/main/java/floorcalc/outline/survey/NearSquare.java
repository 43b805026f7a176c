package floorcalc.outline.survey;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.measure.PlainNumber;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Shapes of four walls in which every corner is within some degrees of square. */
final class NearSquare {
  private static final double SLACK_DEGREES = 1e-9;
  /** Of a shape that only just exists, one corner can be sure to 1e-9 degrees and another of a narrow room to less. */
  private static final double ROUGHLY_DEGREES = 1e-6;
  private static final int COSINE_DECIMALS = 15;

  private final Sides sides;

  NearSquare(Sides sides) {
    this.sides = sides;
  }

  private double side(int wall) {
    return sides.get(wall).toNanometres();
  }

  /** Returns the angle in degrees that two sides of a triangle enclose. */
  private static double angle(double u, double v, double opposite) {
    double cosine = ((u - v) * (u - v) - opposite * opposite) / (2 * u * v) + 1;
    return StrictMath.toDegrees(StrictMath.acos(Math.max(-1, Math.min(1, cosine))));
  }

  /** Returns the four corners' angles in degrees, given the diagonal that cuts off a corner. */
  private double[] angles(int corner, double diagonal) {
    double u = side(corner - 1);
    double v = side(corner);
    double w = side(corner + 1);
    double x = side(corner + 2);
    double[] angles = new double[4];
    angles[corner] = angle(u, v, diagonal);
    angles[(corner + 1) % 4] = angle(v, diagonal, u) + angle(diagonal, w, x);
    angles[(corner + 2) % 4] = angle(w, x, diagonal);
    angles[(corner + 3) % 4] = angle(u, diagonal, v) + angle(diagonal, x, w);
    return angles;
  }

  private static double worst(double[] angles) {
    double worst = 0;
    for (double angle : angles) {
      worst = Math.max(worst, StrictMath.abs(angle - 90));
    }
    return worst;
  }

  /**
   * Returns the least number of degrees within which all corners can be square. Along the shapes without a reflex corner
   * every angle only grows or only shrinks, so the worst falls and then rises.
   */
  double leastDegrees() {
    DoubleUnaryOperator worst = diagonal -> worst(angles(1, diagonal));
    double low = EndShape.straight(sides, 1).otherDiagonal().toNanometres();
    double high = sides.get(0).plus(sides.get(1)).min(sides.get(2).plus(sides.get(3))).toNanometres();
    for (int i = 0; i < 200; i++) {
      double first = low + (high - low) / 3;
      double second = high - (high - low) / 3;
      if (worst.applyAsDouble(first) <= worst.applyAsDouble(second)) {
        high = second;
      } else {
        low = first;
      }
    }
    return worst.applyAsDouble(low + (high - low) / 2);
  }

  /** Returns the shapes at which a corner reaches the limit and none exceeds it: the ends of what is allowed. */
  List<Limit> limits(double degrees) {
    double least = leastDegrees();
    if (least > degrees + SLACK_DEGREES) {
      throw new IllegalArgumentException("no room with these 4 walls has every corner within " + PlainNumber.text(degrees)
          + " degrees of square; the nearest has one "
          + new BigDecimal(least).setScale(3, RoundingMode.CEILING).toPlainString()
          + " degrees off; allow at least that, or measure the walls again");
    }
    List<Limit> limits = limits(degrees, Math.max(degrees, least) + 2 * SLACK_DEGREES);
    return limits.isEmpty() ? limits(least, least + ROUGHLY_DEGREES) : limits;
  }

  private List<Limit> limits(double degrees, double allowed) {
    List<Limit> limits = new ArrayList<>();
    for (int corner = 0; corner < 4; corner++) {
      for (int sign = -1; sign <= 1; sign += 2) {
        Limit limit = new Limit(corner, 90 + sign * degrees);
        if (limit.worst <= allowed) {
          limits.add(limit);
        }
      }
    }
    return limits;
  }

  /** A shape in which one corner has a given angle. */
  final class Limit {
    private final int corner;
    private final double degrees;
    private final BigDecimal cosine;
    private final BigInteger square;
    private final Length across;
    private final Length other;
    private final double worst;
    final BigDecimal area;

    private Limit(int corner, double degrees) {
      this.corner = corner;
      this.degrees = degrees;
      this.cosine = new BigDecimal(StrictMath.sin(StrictMath.toRadians(90 - degrees)))
          .setScale(COSINE_DECIMALS, RoundingMode.HALF_EVEN);
      BigDecimal u = Sides.decimal(sides.get(corner - 1));
      BigDecimal v = Sides.decimal(sides.get(corner));
      BigDecimal exact = u.multiply(u).add(v.multiply(v)).subtract(u.multiply(v).multiply(cosine).multiply(BigDecimal.valueOf(2)));
      this.square = exact.setScale(0, RoundingMode.HALF_EVEN).toBigInteger();
      this.across = Sides.length(Sides.root(square), RoundingMode.HALF_EVEN);
      double[] angles = angles(corner, exact.sqrt(Sides.DIGITS).doubleValue());
      this.worst = closes(exact) ? worst(angles) : Double.POSITIVE_INFINITY;
      double second = side(corner + 1);
      double first = side(corner);
      double turned = StrictMath.cos(StrictMath.toRadians(angles[(corner + 1) % 4]));
      this.other = Length.ofNanometres(Math.round(Math.sqrt(first * first + second * second - 2 * first * second * turned)));
      this.area = Sides.root(sixteenSquares(sides.get(corner - 1), sides.get(corner)))
          .add(Sides.root(sixteenSquares(sides.get(corner + 1), sides.get(corner + 2)))).divide(BigDecimal.valueOf(4), Sides.DIGITS);
    }

    /** Tells whether the other two walls reach over the diagonal, and the diagonal over their difference. */
    private boolean closes(BigDecimal exact) {
      BigDecimal sum = Sides.decimal(sides.get(corner + 1).plus(sides.get(corner + 2)));
      BigDecimal difference = Sides.decimal(sides.get(corner + 1).minus(sides.get(corner + 2)));
      return exact.compareTo(sum.pow(2)) <= 0 && exact.compareTo(difference.pow(2)) >= 0;
    }

    /** Returns sixteen times the square of the area of a triangle over the diagonal, negative if it does not close. */
    private BigInteger sixteenSquares(Length u, Length v) {
      BigInteger sum = Sides.whole(u.plus(v));
      BigInteger difference = Sides.whole(u.minus(v));
      return sum.multiply(sum).subtract(square).multiply(square.subtract(difference.multiply(difference)));
    }

    /** Returns the length of the diagonal from corner 1 to corner 3, or from 2 to 4. */
    Length diagonal(int from) {
      return corner % 2 == from % 2 ? across : other;
    }

    List<Step> steps(String id, String question, RoundingMode mode) {
      String u = sides.symbol(corner - 1);
      String v = sides.symbol(corner);
      String w = sides.symbol(corner + 1);
      String x = sides.symbol(corner + 2);
      Step diagonal = new Step("diagonal-at-limit", "What is the square of the diagonal that cuts off corner " + (corner + 1)
          + " when it is at the limit, the diagonal being " + across + " long?", "f = " + u + " * " + u + " + " + v + " * " + v
          + " - 2 * " + u + " * " + v + " * t, rounded to the nearest square nanometre", List.of(sides.term(corner - 1),
          sides.term(corner), Term.of("t", "cosine of " + PlainNumber.text(degrees) + " degrees", cosine)),
          Area.ofSquareNanometres(square), Source.DEFINITION);
      List<Term> terms = sides.terms();
      terms.add(Term.of("f", "square of that diagonal", Area.ofSquareNanometres(square)));
      return List.of(diagonal, new Step(id, question, "K = (" + root(u, v) + " + " + root(w, x) + ") / 4, rounded "
          + (mode == RoundingMode.FLOOR ? "down" : "up") + " to a whole square millimetre", terms, Sides.area(area, mode),
          Source.DEFINITION));
    }

    private static String root(String u, String v) {
      return "sqrt(((" + u + " + " + v + ") * (" + u + " + " + v + ") - f) * (f - (" + u + " - " + v + ") * (" + u + " - " + v
          + ")))";
    }
  }
}
