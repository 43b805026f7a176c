package floorcalc.outline.survey;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/**
 * A shape of four walls that can be pushed no further: two neighbours lie in one line, straight on or folded back, and
 * the room is a triangle.
 */
final class EndShape {
  private final Sides sides;
  /** The first of the two neighbours, from 0. */
  private final int wall;
  private final boolean folded;
  private final Length line;

  private EndShape(Sides sides, int wall, boolean folded, Length line) {
    this.sides = sides;
    this.wall = wall;
    this.folded = folded;
    this.line = line;
  }

  /** Returns the shape in which the diagonal over a wall and the next is as long as it can be. */
  static EndShape straight(Sides sides, int wall) {
    Length here = sides.get(wall).plus(sides.get(wall + 1));
    Length there = sides.get(wall + 2).plus(sides.get(wall + 3));
    return here.compareTo(there) <= 0 ? new EndShape(sides, wall, false, here) : new EndShape(sides, wall + 2, false, there);
  }

  /** Returns the shape in which the diagonal over a wall and the next is as short as it can be. */
  static EndShape folded(Sides sides, int wall) {
    Length here = sides.get(wall).minus(sides.get(wall + 1)).abs();
    Length there = sides.get(wall + 2).minus(sides.get(wall + 3)).abs();
    return here.compareTo(there) >= 0 ? new EndShape(sides, wall, true, here) : new EndShape(sides, wall + 2, true, there);
  }

  /** Returns the area in square nanometres. */
  BigDecimal area() {
    return Sides.triangle(line, sides.get(wall + 2), sides.get(wall + 3));
  }

  private String words() {
    int first = Math.floorMod(wall, 4) + 1;
    int second = Math.floorMod(wall + 1, 4) + 1;
    return folded ? "walls " + first + " and " + second + " folded back on each other, their difference"
        : "walls " + first + " and " + second + " in one line, their sum";
  }

  private Step line() {
    String u = sides.symbol(wall);
    String v = sides.symbol(wall + 1);
    return new Step("line-of-two-walls", "At which shape do the walls give way no further?",
        folded ? "x = abs(" + u + " - " + v + ")" : "x = " + u + " + " + v,
        List.of(sides.term(wall), sides.term(wall + 1)), line, Source.DEFINITION);
  }

  /** Returns the steps to the area. */
  List<Step> steps(String question) {
    String y = sides.symbol(wall + 2);
    String z = sides.symbol(wall + 3);
    String formula = "K = sqrt((x + " + y + " + " + z + ") * (" + y + " + " + z + " - x) * (x + " + z + " - " + y + ") * (x + "
        + y + " - " + z + ")) / 4, rounded down to a whole square millimetre";
    return List.of(line(), new Step("least-area", question, formula,
        List.of(Term.of("x", words(), line), sides.term(wall + 2), sides.term(wall + 3)),
        Sides.area(area(), RoundingMode.FLOOR), Source.DEFINITION));
  }

  /** Returns the step to the other diagonal, from the corner on the line: shortest of its lengths without a reflex corner. */
  Step otherDiagonal(String symbol, Length shortest) {
    String u = sides.symbol(wall);
    String v = sides.symbol(wall + 1);
    String y = sides.symbol(wall + 2);
    String z = sides.symbol(wall + 3);
    return new Step("shortest-diagonal", "How short can the diagonal from the corner between walls "
        + (Math.floorMod(wall, 4) + 1) + " and " + (Math.floorMod(wall + 1, 4) + 1) + " be, with these in one line?",
        symbol + " = sqrt(max((" + y + " * " + y + " * " + u + " + " + z + " * " + z + " * " + v + ") / (" + u + " + " + v
            + ") - " + u + " * " + v + ", 0)), rounded down to a whole nanometre",
        List.of(sides.term(wall), sides.term(wall + 1), sides.term(wall + 2), sides.term(wall + 3)), shortest,
        Source.DEFINITION);
  }

  /** Returns that diagonal: the cevian of the triangle that divides the line into the two walls. */
  Length otherDiagonal() {
    BigDecimal u = Sides.decimal(sides.get(wall));
    BigDecimal v = Sides.decimal(sides.get(wall + 1));
    BigDecimal y = Sides.decimal(sides.get(wall + 2));
    BigDecimal z = Sides.decimal(sides.get(wall + 3));
    // Wall + 2 starts where wall + 1 ends, so the side y stands at the end of v and faces u.
    MathContext digits = new MathContext(80);
    BigDecimal square = y.multiply(y).multiply(u).add(z.multiply(z).multiply(v)).divide(u.add(v), digits)
        .subtract(u.multiply(v), digits);
    return Sides.length(square.max(BigDecimal.ZERO).sqrt(Sides.DIGITS), RoundingMode.FLOOR);
  }
}
