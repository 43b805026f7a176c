package floorcalc.reference.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Asks an implementation all questions and compares its answers. */
public final class Checks {
  private Checks() {}

  /**
   * Asks every question once.
   *
   * @param cases the cases, not null
   * @param implementation who answers, not null
   * @return one check for each expected figure, in order, not null
   */
  public static List<Check> run(List<ReferenceCase> cases, Implementation implementation) {
    List<Check> checks = new ArrayList<>();
    for (ReferenceCase one : cases) {
      Optional<Answer> answer = implementation.answer(one.question());
      one.expected().forEach(expected -> checks.add(Check.compare(one, expected, answer)));
    }
    return List.copyOf(checks);
  }
}
