package floorcalc.fuzz;

/** What must hold of each case. */
final class Claim {
  private Claim() {}

  static void that(boolean holds, String otherwise) {
    if (!holds) {
      throw new AssertionError(otherwise);
    }
  }
}
