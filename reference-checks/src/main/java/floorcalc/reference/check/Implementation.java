package floorcalc.reference.check;

import java.util.Optional;

/** Something that answers questions of the suite: this library, or a port of it. */
public interface Implementation {
  /**
   * Returns what it is called in reports.
   *
   * @return the name, not null
   */
  String name();

  /**
   * Answers a question.
   *
   * @param question the question, not null
   * @return the answer; empty if it does not know the calculation
   */
  Optional<Answer> answer(Question question);
}
