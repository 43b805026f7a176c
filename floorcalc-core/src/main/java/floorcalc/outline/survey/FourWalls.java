package floorcalc.outline.survey;

import floorcalc.measure.Length;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Four walls and one diagonal: how long the other one is, and what equal lengths prove. */
final class FourWalls {
  private final Sides sides;
  private final Length diagonal;
  private final List<Step> steps = new ArrayList<>();
  private final Length other;

  FourWalls(Sides sides, Length diagonal) {
    this.sides = sides;
    this.diagonal = diagonal;
    Length x2 = along(0, 1, "2", "x2");
    Length y2 = off(0, x2, "2", "x2", "y2");
    Length x4 = along(3, 2, "4", "x4");
    Length y4 = off(3, x4, "4", "x4", "y4");
    BigDecimal x = Sides.decimal(x2.minus(x4));
    BigDecimal y = Sides.decimal(y2.plus(y4));
    this.other = Sides.length(x.pow(2).add(y.pow(2)).sqrt(Sides.DIGITS), RoundingMode.HALF_EVEN);
    steps.add(new Step("other-diagonal", "How long is the diagonal from corner 2 to corner 4 by the walls and the other diagonal?",
        "q = sqrt((x2 - x4) * (x2 - x4) + (y2 + y4) * (y2 + y4)), rounded to the nearest nanometre",
        List.of(Term.of("x2", "corner 2 along the diagonal", x2), Term.of("x4", "corner 4 along the diagonal", x4),
            Term.of("y2", "corner 2 off it to one side", y2), Term.of("y4", "corner 4 off it to the other", y4)),
        other, Source.DEFINITION));
  }

  /** How far along the diagonal from corner 1 a corner lies, given its wall from corner 1 and that to corner 3. */
  private Length along(int near, int far, String corner, String symbol) {
    String u = sides.symbol(near);
    String v = sides.symbol(far);
    Length along = Sides.length(square(sides.get(near)).add(square(diagonal)).subtract(square(sides.get(far)))
        .divide(Sides.decimal(diagonal).multiply(BigDecimal.valueOf(2)), Sides.DIGITS), RoundingMode.HALF_EVEN);
    steps.add(new Step("along-diagonal-" + corner, "How far along the diagonal from corner 1 to corner 3 is corner " + corner + "?",
        symbol + " = (" + u + " * " + u + " + p * p - " + v + " * " + v + ") / (2 * p), rounded to the nearest nanometre",
        List.of(sides.term(near), Term.of("p", "diagonal from corner 1 to 3", diagonal), sides.term(far)), along, Source.DEFINITION));
    return along;
  }

  private Length off(int near, Length along, String corner, String x, String symbol) {
    String u = sides.symbol(near);
    Length off = Sides.length(square(sides.get(near)).subtract(square(along)).max(BigDecimal.ZERO).sqrt(Sides.DIGITS),
        RoundingMode.HALF_EVEN);
    steps.add(new Step("off-diagonal-" + corner, "How far off that diagonal is corner " + corner + "?",
        symbol + " = sqrt(max(" + u + " * " + u + " - " + x + " * " + x + ", 0)), rounded to the nearest nanometre",
        List.of(sides.term(near), Term.of(x, "corner " + corner + " along the diagonal", along)), off, Source.DEFINITION));
    return off;
  }

  private static BigDecimal square(Length length) {
    return Sides.decimal(length).pow(2);
  }

  List<Step> steps() {
    return steps;
  }

  List<Finding> findings(Length measured, Length tolerance) {
    List<Finding> findings = new ArrayList<>(disagree(other, measured, tolerance));
    boolean sidesEqual = equal(sides.get(0), sides.get(2), tolerance) && equal(sides.get(1), sides.get(3), tolerance);
    boolean diagonalsEqual = equal(diagonal, measured, tolerance);
    String within = " to within " + tolerance;
    if (sidesEqual && diagonalsEqual) {
      findings.add(Squareness.finding("rectangle", Severity.NOTE,
          "opposite walls are equal and so are the diagonals" + within + ": the room is a rectangle as nearly as that"));
    } else if (diagonalsEqual) {
      findings.add(Squareness.finding("equal-diagonals-no-rectangle", Severity.WARNING, "the diagonals are equal" + within
          + ", but opposite walls are not: the room is no rectangle; equal diagonals alone do not prove one"));
    } else if (sidesEqual) {
      findings.add(Squareness.finding("parallelogram", Severity.WARNING, "opposite walls are equal" + within
          + ", but the diagonals, " + diagonal + " and " + measured + ", are not: the room leans like a parallelogram"));
    }
    return findings;
  }

  private static boolean equal(Length one, Length other, Length tolerance) {
    return one.minus(other).abs().compareTo(tolerance) <= 0;
  }

  static List<Finding> disagree(Length should, Length measured, Length tolerance) {
    if (equal(should, measured, tolerance)) {
      return List.of();
    }
    return List.of(Squareness.finding("lengths-disagree", Severity.WARNING, "by the sides and the other diagonal the one from"
        + " corner 2 to corner 4 is " + Sides.rounded(should.toMillimetres(), 1) + " mm, but it was measured " + measured
        + "; one of these lengths is wrong, measure them again"));
  }
}
