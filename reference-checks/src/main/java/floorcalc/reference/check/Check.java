package floorcalc.reference.check;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * One figure of a source held against an answer.
 *
 * @param of the case that the figure belongs to, not null
 * @param expected the figure, not null
 * @param answer what was answered, empty if nothing was, not null
 * @param verdict how they compare, not null
 */
public record Check(ReferenceCase of, Expected expected, Optional<String> answer, Verdict verdict) {
  /** Checks that nothing is null. */
  public Check {
    Objects.requireNonNull(of, "of");
    Objects.requireNonNull(expected, "expected");
    Objects.requireNonNull(answer, "answer");
    Objects.requireNonNull(verdict, "verdict");
  }

  /**
   * Compares a figure with an answer.
   *
   * @param of the case that the figure belongs to, not null
   * @param expected the figure, not null
   * @param answer the whole answer; empty if the calculation is not known
   * @return the check, not null; an answer without this figure counts as no answer
   */
  static Check compare(ReferenceCase of, Expected expected, Optional<Answer> answer) {
    Optional<String> text = answer.flatMap(figures -> figures.figure(expected.figure()));
    Verdict verdict = text.map(found -> expected.agrees(found) ? Verdict.AGREES : Verdict.DIFFERS).orElse(Verdict.NOT_ANSWERED);
    return new Check(of, expected, text, verdict);
  }

  /**
   * Returns whether it is no printed figure but what the library says of the source: how sure it is.
   *
   * @return true for the figure called {@code standing}
   */
  public boolean isOnTheSource() {
    return expected.figure().equals("standing");
  }

  /**
   * Returns how far the answer is from the printed number, in units of its last printed digit.
   *
   * @return the distance, not negative; empty for texts, ranges and missing answers
   */
  public Optional<BigDecimal> lastDigitsOff() {
    return answer.flatMap(expected::lastDigitsOff);
  }

  /** Returns one line: where the figure stands, what was asked, what is printed, what was answered. */
  @Override
  public String toString() {
    return of.file() + " " + of.id() + ": " + of.question() + ": " + expected + "; answer " + answer.orElse("none") + ": " + verdict.words();
  }
}
