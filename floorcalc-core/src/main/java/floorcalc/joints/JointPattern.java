package floorcalc.joints;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.math.BigInteger;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * How end joints move from row to row: freely, by a fraction of a board, or by a fixed length.
 * <p>
 * Row {@code k}, counted from 0, has its joints {@code shift(k)} beyond those of row 0, in boards laid end to end. A
 * fixed shift {@code s} of boards of length {@code L} puts the joints of neighbouring rows {@code min(s, L - s)} apart
 * and comes round after {@code L / gcd(s, L)} rows: the positions that {@code n} rows take divide the board into at
 * most three different lengths (the three-gap theorem).
 * <p>
 * Half a board gives joints in line in every second row; a third or a quarter gives stairs; both are laid on purpose,
 * and {@link JointLayout} reports them as what they are. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class JointPattern implements Serializable {
  /** Joints fall where the rules allow and the boards go furthest. */
  public static final JointPattern FREE = new JointPattern(Kind.FREE, 0, 0, Length.ZERO);

  private static final long serialVersionUID = 1L;

  /**
   * What kind of pattern it is.
   *
   * @since 0.1
   */
  public enum Kind {
    /** No fixed pattern. */
    FREE,
    /** Each row is shifted by a fraction of the board length. */
    FRACTION,
    /** Each row is shifted by a fixed length. */
    STEP
  }

  private final Kind kind;
  private final int numerator;
  private final int denominator;
  private final Length step;

  private JointPattern(Kind kind, int numerator, int denominator, Length step) {
    this.kind = kind;
    this.numerator = numerator;
    this.denominator = denominator;
    this.step = step;
  }

  /**
   * Returns the pattern in which each row is shifted by a fraction of the board length.
   *
   * @param numerator the numerator, at least 1
   * @param denominator the denominator, more than the numerator
   * @return the pattern, not null
   * @throws IllegalArgumentException if the fraction is not between 0 and 1
   */
  public static JointPattern ofFraction(int numerator, int denominator) {
    if (numerator < 1 || denominator <= numerator) {
      throw new IllegalArgumentException(
          "a shift must be a fraction between 0 and 1, but was " + numerator + "/" + denominator);
    }
    return new JointPattern(Kind.FRACTION, numerator, denominator, Length.ZERO);
  }

  /**
   * Returns the pattern in which each row is shifted by a fixed length.
   *
   * @param step the shift, not null, more than zero
   * @return the pattern, not null
   * @throws IllegalArgumentException if the shift is not more than zero
   */
  public static JointPattern ofStep(Length step) {
    if (!Objects.requireNonNull(step, "step").isPositive()) {
      throw new IllegalArgumentException("a shift must be more than 0 mm, but was " + step);
    }
    return new JointPattern(Kind.STEP, 0, 0, step);
  }

  /**
   * Returns the kind of the pattern.
   *
   * @return the kind, not null
   */
  public Kind kind() {
    return kind;
  }

  /**
   * Returns how far a row's joints lie beyond those of the first row, before whole boards are taken off.
   *
   * @param row the row, from 0
   * @param board the board length, not null, more than zero
   * @return the shift within one board, from zero to less than the board length; zero for a free pattern; a fraction
   *     that is no whole nanometre is rounded down; not null
   * @throws IllegalArgumentException if the row is negative or the board length is not more than zero
   */
  public Length shift(int row, Length board) {
    if (row < 0) {
      throw new IllegalArgumentException("a row is counted from 0, but was " + row);
    }
    requirePositive(board);
    return switch (kind) {
      case FREE -> Length.ZERO;
      case FRACTION -> part((long) row * numerator % denominator, board);
      case STEP -> Length.ofNanometres(BigInteger.valueOf(step.toNanometres()).multiply(BigInteger.valueOf(row))
          .mod(BigInteger.valueOf(board.toNanometres())).longValueExact());
    };
  }

  private Length part(long parts, Length board) {
    return Length.ofNanometres(BigInteger.valueOf(board.toNanometres()).multiply(BigInteger.valueOf(parts))
        .divide(BigInteger.valueOf(denominator)).longValueExact());
  }

  /**
   * Returns how far apart the joints of neighbouring rows fall: the shift or what it lacks of a board, whichever is less.
   *
   * @param board the board length, not null, more than zero
   * @return the joint offset, at most half a board; empty for a free pattern; not null
   * @throws IllegalArgumentException if the board length is not more than zero
   */
  public Optional<Length> neighbourOffset(Length board) {
    requirePositive(board);
    Length once = shift(1, board);
    return kind == Kind.FREE ? Optional.empty() : Optional.of(once.min(board.minus(once)));
  }

  /**
   * Returns after how many rows the joints fall where they fell first.
   *
   * @param board the board length, not null, more than zero
   * @return the rows, at least 1; empty for a free pattern
   * @throws IllegalArgumentException if the board length is not more than zero
   */
  public OptionalLong repeatsAfter(Length board) {
    requirePositive(board);
    return switch (kind) {
      case FREE -> OptionalLong.empty();
      case FRACTION -> OptionalLong.of(rounds(numerator, denominator));
      case STEP -> OptionalLong.of(rounds(step.toNanometres(), board.toNanometres()));
    };
  }

  private static long rounds(long step, long whole) {
    return whole / BigInteger.valueOf(step).gcd(BigInteger.valueOf(whole)).longValueExact();
  }

  private static void requirePositive(Length board) {
    if (!Objects.requireNonNull(board, "board").isPositive()) {
      throw new IllegalArgumentException("board length must be more than 0 mm, but was " + board);
    }
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof JointPattern other && kind == other.kind && numerator == other.numerator
        && denominator == other.denominator && step.equals(other.step);
  }

  @Override
  public int hashCode() {
    return Objects.hash(kind, numerator, denominator, step);
  }

  /**
   * Returns the pattern in words.
   *
   * @return for example {@code "each row shifted by 1/3 of a board"}, not null
   */
  @Override
  public String toString() {
    return switch (kind) {
      case FREE -> "free";
      case FRACTION -> "each row shifted by " + numerator + "/" + denominator + " of a board";
      case STEP -> "each row shifted by " + step;
    };
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return switch (kind) {
      case FREE -> FREE;
      case FRACTION -> ofFraction(numerator, denominator);
      case STEP -> ofStep(step);
    };
  }
}
