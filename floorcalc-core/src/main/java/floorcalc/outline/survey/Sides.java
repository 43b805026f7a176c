package floorcalc.outline.survey;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Walls by their lengths alone, in order: what is exact about them. */
final class Sides {
  /** Roots keep so many digits: those of a square nanometre in a room of many kilometres, and a dozen more. */
  static final MathContext DIGITS = new MathContext(40);
  private static final int SQUARE_MILLIMETRE = -12;
  private static final int MOST = 10_000;
  private static final String LETTERS = "abcd";

  final List<Length> lengths;

  private Sides(List<Length> lengths) {
    this.lengths = lengths;
  }

  /** Returns the walls, or refuses those that cannot close. */
  static Sides of(List<Length> lengths) {
    List<Length> copy = List.copyOf(lengths);
    if (copy.size() < 3 || copy.size() > MOST) {
      throw new IllegalArgumentException("a room has from 3 to " + MOST + " walls, but " + copy.size() + " were given");
    }
    for (int i = 0; i < copy.size(); i++) {
      if (!copy.get(i).isPositive()) {
        throw new IllegalArgumentException("wall " + (i + 1) + " must be longer than 0 mm, but was " + copy.get(i));
      }
    }
    Length all = sum(copy);
    for (int i = 0; i < copy.size(); i++) {
      Length others = all.minus(copy.get(i));
      if (copy.get(i).compareTo(others) >= 0) {
        throw new IllegalArgumentException("wall " + (i + 1) + " measures " + copy.get(i) + ", but the other "
            + (copy.size() - 1) + " walls together reach only " + others + ", so the room does not close; measure them again");
      }
    }
    return new Sides(copy);
  }

  static Sides ofFour(List<Length> lengths) {
    if (lengths.size() != 4) {
      throw new IllegalArgumentException("this is worked out for 4 walls, but " + lengths.size() + " were given");
    }
    return of(lengths);
  }

  int size() {
    return lengths.size();
  }

  /** Returns the length of a wall counted from 0, round and round. */
  Length get(int wall) {
    return lengths.get(Math.floorMod(wall, size()));
  }

  /** Returns the letter of one of four walls, or s1, s2 and so on. */
  String symbol(int wall) {
    int place = Math.floorMod(wall, size());
    return size() <= LETTERS.length() ? LETTERS.substring(place, place + 1) : "s" + (place + 1);
  }

  Term term(int wall) {
    return Term.of(symbol(wall), "wall " + (Math.floorMod(wall, size()) + 1), get(wall));
  }

  List<Term> terms() {
    return IntStream.range(0, size()).mapToObj(this::term).collect(Collectors.toCollection(ArrayList::new));
  }

  static Length sum(List<Length> lengths) {
    return lengths.stream().reduce(Length.ZERO, Length::plus);
  }

  static BigInteger whole(Length length) {
    return BigInteger.valueOf(length.toNanometres());
  }

  static BigDecimal decimal(Length length) {
    return new BigDecimal(whole(length));
  }

  /** Returns sixteen times the square of the area that three or four sides have on a circle; negative if they do not close. */
  static BigInteger sixteenSquares(List<Length> sides) {
    BigInteger all = sides.stream().map(Sides::whole).reduce(BigInteger.ZERO, BigInteger::add);
    BigInteger product = sides.size() == 3 ? all : BigInteger.ONE;
    for (Length side : sides) {
      product = product.multiply(all.subtract(whole(side).shiftLeft(1)));
    }
    return product;
  }

  /** Returns the area of a triangle in square nanometres. */
  static BigDecimal triangle(Length a, Length b, Length c) {
    return root(sixteenSquares(List.of(a, b, c))).divide(BigDecimal.valueOf(4), DIGITS);
  }

  /** Returns the formula of four times the area of a triangle with two walls and the diagonal e. */
  static String triangleFormula(String u, String v) {
    return "sqrt((" + u + " + " + v + " + e) * (" + u + " + " + v + " - e) * (e + " + u + " - " + v + ") * (e + " + v
        + " - " + u + "))";
  }

  static BigDecimal root(BigInteger square) {
    return new BigDecimal(square.max(BigInteger.ZERO)).sqrt(DIGITS);
  }

  /** Returns an area of so many square nanometres, to a whole square millimetre. */
  static Area area(BigDecimal squareNanometres, RoundingMode mode) {
    return Area.ofSquareNanometres(squareNanometres.setScale(SQUARE_MILLIMETRE, mode).toBigInteger());
  }

  /** Returns a number with a fixed number of decimals, for display. */
  static String rounded(double number, int decimals) {
    return new BigDecimal(number).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  /** Returns a length for a sentence: to a whole millimetre. */
  static String millimetres(Length length, RoundingMode mode) {
    return decimal(length).movePointLeft(6).setScale(0, mode).toPlainString() + " mm";
  }

  static Length length(BigDecimal nanometres, RoundingMode mode) {
    return Length.ofNanometres(nanometres.setScale(0, mode).longValueExact());
  }
}
