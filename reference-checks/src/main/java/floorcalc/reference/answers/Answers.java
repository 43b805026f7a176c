package floorcalc.reference.answers;

import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/** Calculations by name, filled while {@link Library} is made. */
final class Answers {
  private record Way(Function<Question, Answer> how, List<String> underTest) {}

  private final Map<String, Way> ways = new LinkedHashMap<>();

  /**
   * Adds a calculation.
   *
   * @param calculation its name, words joined by hyphens
   * @param how works the answer out
   * @param underTest the classes of the core whose figures the answer shows
   */
  void add(String calculation, Function<Question, Answer> how, Class<?>... underTest) {
    Objects.requireNonNull(how, "how");
    if (underTest.length == 0) {
      throw new IllegalArgumentException(calculation + " tests no class of the core");
    }
    if (ways.put(calculation, new Way(how, Arrays.stream(underTest).map(Class::getName).toList())) != null) {
      throw new IllegalArgumentException("two calculations are called " + calculation);
    }
  }

  Optional<Answer> answer(Question question) {
    return Optional.ofNullable(ways.get(question.calculation())).map(way -> way.how().apply(question));
  }

  Map<String, List<String>> underTest() {
    Map<String, List<String>> classes = new LinkedHashMap<>();
    ways.forEach((calculation, way) -> classes.put(calculation, way.underTest()));
    return Collections.unmodifiableMap(classes);
  }
}
