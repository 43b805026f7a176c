package floorcalc.reference.examples;

import java.util.List;
import java.util.stream.Stream;

/** All worked examples, in the order of their pages. */
public final class WorkedExamples {
  private WorkedExamples() {}

  /**
   * Works every example.
   *
   * @return the examples, no two of the same name, not null
   */
  public static List<WorkedExample> all() {
    return Stream.of(WoodExamples.all(), FloorExamples.all(), SurveyExamples.all(), BoardExamples.all()).flatMap(List::stream).toList();
  }
}
