package floorcalc.differential;

import java.util.List;

/** What all comparisons have in common. */
abstract class Comparison implements Differential {
  /** Enough cases for a planted fault to show. */
  private static final int WITH_FAULT = 25;

  private final String calculation;
  private final Library library;
  private final int cases;
  private final List<Class<?>> underTest;

  Comparison(String calculation, Library library, int cases, Class<?>... underTest) {
    this.calculation = calculation;
    this.library = library;
    this.cases = cases;
    this.underTest = List.of(underTest);
  }

  /** What is done to the core's answers before they are compared. */
  enum Answers { AS_GIVEN, WITH_FAULT }

  /**
   * Compares so many cases.
   *
   * @param upTo the number of cases to make
   * @param answers whether the core's answers are passed on with a fault planted in them
   * @param worst what is told of each case
   */
  abstract void compare(int upTo, Answers answers, Worst worst);

  @Override
  public final String calculation() {
    return calculation;
  }

  @Override
  public final Library library() {
    return library;
  }

  @Override
  public final List<Class<?>> underTest() {
    return underTest;
  }

  @Override
  public final DifferentialResult run(double factor) {
    return compared((int) Math.max(1, Math.round(cases * factor)), Answers.AS_GIVEN);
  }

  @Override
  public final DifferentialResult runWithFault() {
    return compared(Math.min(cases, WITH_FAULT), Answers.WITH_FAULT);
  }

  private DifferentialResult compared(int upTo, Answers answers) {
    Worst worst = new Worst();
    compare(upTo, answers, worst);
    return worst.result(tolerance());
  }

  @Override
  public final String toString() {
    return calculation + ", against " + library;
  }
}
