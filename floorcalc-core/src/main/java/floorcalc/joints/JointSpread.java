package floorcalc.joints;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * How evenly end joints are spread over the length of a board, whole boards taken off: the distances between neighbouring places, and
 * the star discrepancy, one figure for all of them.
 * <p>
 * With n joints evenly spread, any part of the board from its start holds joints in proportion to its length. The star discrepancy is the
 * greatest difference from that, over all such parts: D = 1 / 2n + max |x(i) / L − (2i − 1) / 2n| for the places x(1) ≤ x(2) ≤ … within a board
 * of length L. It is 1/2n at best and 1 at worst, and exact. A small figure says that joints are spread over the floor as a whole; how near
 * those of neighbouring rows lie, {@link JointLayout} tells. Immutable and thread-safe. See {@code docs/end-joints.md}.
 *
 * @since 0.1
 */
public final class JointSpread {
  private static final int DECIMALS = 12;
  private static final Source FORMULA = new Source("Random Number Generation and Quasi-Monte Carlo Methods", "H. Niederreiter, SIAM", 1992,
      "theorem 2.6", Standing.FROM_MEMORY);

  private final long[] places;
  private final long board;
  private final BigInteger numerator;
  private final BigInteger denominator;

  private JointSpread(long[] places, long board, BigInteger numerator, BigInteger denominator) {
    this.places = places;
    this.board = board;
    this.numerator = numerator;
    this.denominator = denominator;
  }

  /**
   * Measures how evenly joints are spread.
   *
   * @param joints places of end joints along the rows, of any rows and in any order, not null, not empty
   * @param board the length that they are taken within, not null, more than zero
   * @return the spread with its working: the steps {@code smallest-distance}, {@code largest-distance} and {@code joint-spread}; not null
   * @throws IllegalArgumentException if there is no joint, or the board length is not more than zero
   */
  public static Calculated<JointSpread> of(List<Length> joints, Length board) {
    if (joints.isEmpty()) {
      throw new IllegalArgumentException("there is no joint; a spread needs at least one");
    }
    if (!board.isPositive()) {
      throw new IllegalArgumentException("board length must be more than 0 mm, but was " + board);
    }
    long length = board.toNanometres();
    long[] places = joints.stream().mapToLong(joint -> Math.floorMod(joint.toNanometres(), length)).sorted().toArray();
    BigInteger twice = BigInteger.valueOf(2L * places.length);
    BigInteger most = BigInteger.valueOf(-1);
    int at = 0;
    for (int i = 0; i < places.length; i++) {
      BigInteger off = twice.multiply(BigInteger.valueOf(places[i])).subtract(BigInteger.valueOf(2L * i + 1).multiply(board(length))).abs();
      if (off.compareTo(most) > 0) {
        most = off;
        at = i;
      }
    }
    BigInteger numerator = board(length).add(most);
    BigInteger denominator = twice.multiply(board(length));
    BigInteger common = numerator.gcd(denominator);
    JointSpread spread = new JointSpread(places, length, numerator.divide(common), denominator.divide(common));
    return Calculated.of(spread, spread.steps(at));
  }

  /**
   * Measures how evenly a pattern spreads the first joints of its rows.
   *
   * @param pattern the pattern, not null, not free
   * @param rows the number of rows, at least 1
   * @param board the board length, not null, more than zero
   * @return the spread with its working, as {@link #of(List, Length)}; not null
   * @throws IllegalArgumentException if the pattern is free, or a value is out of range
   */
  public static Calculated<JointSpread> of(JointPattern pattern, int rows, Length board) {
    Objects.requireNonNull(board, "board");
    if (pattern.kind() == JointPattern.Kind.FREE) {
      throw new IllegalArgumentException("a free pattern sets no joints; give a shift, or the joints themselves");
    }
    return of(IntStream.range(0, rows).mapToObj(row -> pattern.shift(row, board)).toList(), board);
  }

  private static BigInteger board(long length) {
    return BigInteger.valueOf(length);
  }

  private List<Step> steps(int at) {
    Term n = Term.of("n", "number of joints", places.length);
    Term length = Term.of("L", "length of the board", Length.ofNanometres(board));
    SortedMap<Length, Integer> distances = distances();
    return List.of(distance("smallest-distance", "smallest", distances.firstKey()), distance("largest-distance", "largest", distances.lastKey()),
        new Step("joint-spread", "How far from even is the spread, at joint " + (at + 1) + " where it is farthest?",
            "D = 1 / (2 * n) + abs(x / L - (2 * i - 1) / (2 * n)), rounded to twelve decimals",
            List.of(n, Term.of("x", "place of that joint within a board", Length.ofNanometres(places[at])), length,
                Term.of("i", "its number, from the start of the board", at + 1)), discrepancy(), FORMULA));
  }

  /** Shows the first two neighbours that lie so far apart; beyond the last joint comes the first, a board on. */
  private Step distance(String id, String which, Length distance) {
    int i = 0;
    while (next(i) - places[i] != distance.toNanometres()) {
      i++;
    }
    return new Step(id, "What is the " + which + " distance between neighbouring joints, taken round the board?", "g = x2 - x1",
        List.of(Term.of("x2", i + 1 < places.length ? "joint " + (i + 2) : "joint 1, a board on", Length.ofNanometres(next(i))),
            Term.of("x1", "joint " + (i + 1), Length.ofNanometres(places[i]))), distance, Source.DEFINITION);
  }

  private long next(int i) {
    return i + 1 < places.length ? places[i + 1] : Math.addExact(places[0], board);
  }

  /**
   * Returns the places within a board.
   *
   * @return the places from the start of the board, in order, each less than the board length; unmodifiable, not null
   */
  public List<Length> places() {
    return Arrays.stream(places).mapToObj(Length::ofNanometres).toList();
  }

  /**
   * Returns the distances between neighbouring places, taken round the board, and how often each occurs.
   *
   * @return an unmodifiable map from the smallest distance to the largest; 0 mm where joints fall together; not null
   */
  public SortedMap<Length, Integer> distances() {
    SortedMap<Length, Integer> distances = new TreeMap<>();
    for (int i = 0; i < places.length; i++) {
      distances.merge(Length.ofNanometres(next(i) - places[i]), 1, Integer::sum);
    }
    return Collections.unmodifiableSortedMap(distances);
  }

  /**
   * Returns the star discrepancy.
   *
   * @return the figure, rounded half up to twelve decimals, more than 0, at most 1; not null
   */
  public BigDecimal discrepancy() {
    return new BigDecimal(numerator).divide(new BigDecimal(denominator), DECIMALS, RoundingMode.HALF_UP);
  }

  /**
   * Returns the star discrepancy as a fraction in lowest terms.
   *
   * @return for example {@code "7/20"}; {@code "1"} for a whole number; not null
   */
  public String discrepancyAsFraction() {
    return denominator.equals(BigInteger.ONE) ? numerator.toString() : numerator + "/" + denominator;
  }

  /** Returns the number of joints and the star discrepancy. */
  @Override
  public String toString() {
    return places.length + " joints, star discrepancy " + discrepancyAsFraction();
  }
}
