package floorcalc.outline.survey;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Walls as chords of one circle: the largest area that walls of these lengths can enclose, in whatever order. */
final class WallsOnCircle {
  private final Sides sides;
  private final int longest;
  /** How far the centre lies from each wall, rounded up: negative for the longest if the centre lies beyond it. */
  private final List<Length> heights = new ArrayList<>();

  WallsOnCircle(Sides sides) {
    this.sides = sides;
    int most = 0;
    for (int i = 1; i < sides.size(); i++) {
      most = sides.get(i).compareTo(sides.get(most)) > 0 ? i : most;
    }
    this.longest = most;
    double radius = radius();
    double unit = Math.ulp(radius);
    for (int i = 0; i < sides.size(); i++) {
      double half = sides.get(i).toNanometres() / 2.0;
      double height = i == longest ? -radius * StrictMath.cos(halfAngleOfOthers(radius))
          : Math.sqrt((radius - half) * (radius + half));
      // What the radius may be off moves a wall near the diameter most; the wall found from all others by each of them.
      double off = i == longest ? 8 * unit * sides.size() : 8 * unit * radius / Math.max(height, Math.sqrt(unit * radius));
      heights.add(Length.ofNanometres((long) Math.ceil(height + off)));
    }
  }

  private double halfAngle(int wall, double radius) {
    return StrictMath.asin(Math.min(1, sides.get(wall).toNanometres() / (2 * radius)));
  }

  private double halfAngleOfOthers(double radius) {
    double sum = 0;
    for (int i = 0; i < sides.size(); i++) {
      sum += i == longest ? 0 : halfAngle(i, radius);
    }
    return sum;
  }

  /** The half angles come to 180 degrees round a centre within; beyond the longest wall, its own equals all others. */
  private double radius() {
    double low = sides.get(longest).toNanometres() / 2.0;
    boolean within = halfAngleOfOthers(low) >= StrictMath.PI / 2;
    DoubleUnaryOperator tooSmall = within ? r -> halfAngleOfOthers(r) + halfAngle(longest, r) - StrictMath.PI
        : r -> halfAngle(longest, r) - halfAngleOfOthers(r);
    double high = 2 * low;
    while (tooSmall.applyAsDouble(high) > 0) {
      high *= 2;
    }
    while (true) {
      double middle = low + (high - low) / 2;
      if (middle <= low || middle >= high) {
        return high;
      }
      if (tooSmall.applyAsDouble(middle) > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
  }

  Area area() {
    BigInteger twice = BigInteger.ZERO;
    for (int i = 0; i < sides.size(); i++) {
      twice = twice.add(Sides.whole(sides.get(i)).multiply(Sides.whole(heights.get(i))));
    }
    return Sides.area(new BigDecimal(twice).divide(BigDecimal.valueOf(2)), RoundingMode.CEILING);
  }

  List<Step> steps(String question) {
    List<Term> terms = sides.terms();
    IntStream.range(0, sides.size()).forEach(i -> terms.add(Term.of("h" + (i + 1),
        "distance of the circle's centre from wall " + (i + 1) + (heights.get(i).isNegative() ? ", beyond it" : ""),
        heights.get(i))));
    String angles = IntStream.range(0, sides.size())
        .mapToObj(i -> "atan2(" + sides.symbol(i) + ", 2 * h" + (i + 1) + ")").collect(Collectors.joining(" + "));
    String areas = IntStream.range(0, sides.size())
        .mapToObj(i -> sides.symbol(i) + " * h" + (i + 1)).collect(Collectors.joining(" + "));
    Step circle = new Step("circle", "Which circle has all walls as chords? (found by trial; half the angle of each wall at"
        + " its centre, together 180 degrees)", "w = " + angles + ", rounded to four decimals", terms,
        new BigDecimal("180.0000"), Source.DEFINITION);
    return List.of(circle, new Step("greatest-area", question,
        "K = (" + areas + ") / 2, rounded up to a whole square millimetre", terms, area(), Source.DEFINITION));
  }
}
