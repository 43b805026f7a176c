package floorcalc.reference.check;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A calculation by its name, and its inputs as text: a number such as {@code "48"}, a length with its unit such as {@code "232 mm"}, well-known
 * text, a word, or a list or a table of these. Whoever answers needs no type of this library.
 */
public final class Question {
  private final String calculation;
  private final Map<String, Object> inputs;

  private Question(String calculation, Map<String, Object> inputs) {
    this.calculation = calculation;
    this.inputs = inputs;
  }

  /**
   * Returns a question without inputs, to add to.
   *
   * @param calculation the calculation's name, words joined by hyphens, not null
   * @return the question, not null
   */
  public static Question of(String calculation) {
    return new Question(Objects.requireNonNull(calculation, "calculation"), Map.of());
  }

  /**
   * Returns the question with one more input.
   *
   * @param name the input's name, not null
   * @param text its text, not null
   * @return the question, not null
   */
  public Question with(String name, String text) {
    return put(name, Objects.requireNonNull(text, "text"));
  }

  /**
   * Returns the question with one more input that is a number.
   *
   * @param name the input's name, not null
   * @param number its value, not null
   * @return the question, not null
   */
  public Question with(String name, BigDecimal number) {
    return put(name, number.toPlainString());
  }

  /**
   * Returns the question with one more input that is a whole number.
   *
   * @param name the input's name, not null
   * @param number its value
   * @return the question, not null
   */
  public Question with(String name, long number) {
    return put(name, Long.toString(number));
  }

  /**
   * Returns the question with one more input that is a list.
   *
   * @param name the input's name, not null
   * @param texts its parts, not null
   * @return the question, not null
   */
  public Question withList(String name, List<String> texts) {
    return put(name, List.copyOf(texts));
  }

  /**
   * Returns the question with one more input that is a table.
   *
   * @param name the input's name, not null
   * @param rows its rows, not null
   * @return the question, not null
   */
  public Question withTable(String name, List<List<String>> rows) {
    return put(name, rows.stream().map(List::copyOf).toList());
  }

  private Question put(String name, Object input) {
    Map<String, Object> more = new LinkedHashMap<>(inputs);
    if (more.put(Objects.requireNonNull(name, "name"), input) != null) {
      throw new IllegalArgumentException("a question has one input of a name, but " + name + " came twice");
    }
    return new Question(calculation, Collections.unmodifiableMap(more));
  }

  /**
   * Returns the name of the calculation.
   *
   * @return words joined by hyphens, not null
   */
  public String calculation() {
    return calculation;
  }

  /**
   * Returns all inputs in the order they were added: texts, lists of texts and lists of lists of texts.
   *
   * @return an unmodifiable map, not null
   */
  public Map<String, Object> inputs() {
    return inputs;
  }

  /**
   * Returns whether there is an input of a name.
   *
   * @param name the input's name, not null
   * @return true if there is one
   */
  public boolean has(String name) {
    return inputs.containsKey(Objects.requireNonNull(name, "name"));
  }

  /**
   * Returns an input that is a text.
   *
   * @param name the input's name, not null
   * @return its text, not null
   * @throws IllegalArgumentException if there is none of this name, or it is no text
   */
  public String text(String name) {
    if (inputs.get(Objects.requireNonNull(name, "name")) instanceof String text) {
      return text;
    }
    throw new IllegalArgumentException(calculation + " needs the text " + name + "; given are " + inputs.keySet());
  }

  /**
   * Returns an input that is a number.
   *
   * @param name the input's name, not null
   * @return its value, not null
   * @throws IllegalArgumentException if there is none of this name, or it is no number
   */
  public BigDecimal number(String name) {
    try {
      return new BigDecimal(text(name));
    } catch (NumberFormatException noNumber) {
      throw new IllegalArgumentException(calculation + " needs the number " + name + ", but it is " + text(name), noNumber);
    }
  }

  /**
   * Returns an input that is a whole number.
   *
   * @param name the input's name, not null
   * @return its value
   * @throws IllegalArgumentException if there is none of this name, or it is no whole number
   */
  public int count(String name) {
    try {
      return number(name).intValueExact();
    } catch (ArithmeticException broken) {
      throw new IllegalArgumentException(calculation + " needs the whole number " + name + ", but it is " + text(name), broken);
    }
  }

  /**
   * Returns an input that is a list of texts.
   *
   * @param name the input's name, not null
   * @return its parts, not null
   * @throws IllegalArgumentException if there is none of this name, or it is no list of texts
   */
  public List<String> list(String name) {
    if (inputs.get(Objects.requireNonNull(name, "name")) instanceof List<?> list && list.stream().allMatch(String.class::isInstance)) {
      return list.stream().map(String.class::cast).toList();
    }
    throw new IllegalArgumentException(calculation + " needs the list " + name + "; given are " + inputs.keySet());
  }

  /**
   * Returns an input that is a table of texts.
   *
   * @param name the input's name, not null
   * @return its rows, not null
   * @throws IllegalArgumentException if there is none of this name, or it is no table
   */
  public List<List<String>> table(String name) {
    if (inputs.get(Objects.requireNonNull(name, "name")) instanceof List<?> rows && rows.stream().allMatch(List.class::isInstance)) {
      return rows.stream().map(row -> ((List<?>) row).stream().map(String.class::cast).toList()).toList();
    }
    throw new IllegalArgumentException(calculation + " needs the table " + name + "; given are " + inputs.keySet());
  }

  /** Returns the calculation's name and its inputs on one line. */
  @Override
  public String toString() {
    return calculation + " " + inputs;
  }
}
