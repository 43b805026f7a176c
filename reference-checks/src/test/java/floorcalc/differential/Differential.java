package floorcalc.differential;

import java.util.List;

/** One calculation of the core, done again by a library that shares nothing with it, on seeded cases. */
public interface Differential {
  /** {@return what is calculated, in a few words} */
  String calculation();

  /** {@return the types of the core whose answers are held against the other library's} */
  List<Class<?>> underTest();

  /** {@return the other side} */
  Library library();

  /** {@return what the difference is and its unit} */
  String unit();

  /** {@return the largest difference that is allowed, in that unit} */
  double tolerance();

  /** {@return why no smaller tolerance could be asked for} */
  String argument();

  /**
   * Compares.
   *
   * @param factor how many times the usual number of cases
   * @return what was found, the same on every machine
   */
  DifferentialResult run(double factor);

  /**
   * Compares again, with a fault planted in the core's answers: a comparison that cannot fail proves nothing.
   *
   * @return what was found, which must not hold
   */
  DifferentialResult runWithFault();
}
