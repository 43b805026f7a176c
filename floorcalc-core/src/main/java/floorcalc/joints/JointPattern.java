package floorcalc.joints;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.Objects;

/** How end joints move from row to row. Immutable and thread-safe. */
public final class JointPattern implements Serializable {
  /** Joints fall where the rules allow and the boards go furthest. */
  public static final JointPattern FREE = new JointPattern(Kind.FREE, 0, 0, Length.ZERO);

  private static final long serialVersionUID = 1L;

  /** What kind of pattern it is. */
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
   * @return the shift within one board, from zero up to the board length; zero for a free pattern; not null
   */
  public Length shift(int row, Length board) {
    return switch (kind) {
      case FREE -> Length.ZERO;
      case FRACTION -> board.multipliedBy(((long) row * numerator) % denominator)
          .dividedBy(denominator, java.math.RoundingMode.FLOOR);
      case STEP -> step.multipliedBy(row).remainder(board);
    };
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
}
