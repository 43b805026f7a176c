package floorcalc.reference.check;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** What an implementation answers: figures by name, as text. Numbers are plain decimals in the unit that the question asks for. */
public final class Answer {
  private static final Answer NOTHING = new Answer(Map.of());

  private final Map<String, String> figures;

  private Answer(Map<String, String> figures) {
    this.figures = figures;
  }

  /**
   * Returns an answer without figures, to add to.
   *
   * @return the answer, not null
   */
  public static Answer empty() {
    return NOTHING;
  }

  /**
   * Returns an answer of one figure.
   *
   * @param figure its name, not null
   * @param value its value, not null
   * @return the answer, not null
   */
  public static Answer of(String figure, BigDecimal value) {
    return NOTHING.with(figure, value);
  }

  /**
   * Returns an answer of one figure in floating point.
   *
   * @param figure its name, not null
   * @param value its value, finite
   * @return the answer, not null
   */
  public static Answer of(String figure, double value) {
    return NOTHING.with(figure, value);
  }

  /**
   * Returns an answer of one text.
   *
   * @param figure its name, not null
   * @param text its text, not null
   * @return the answer, not null
   */
  public static Answer of(String figure, String text) {
    return NOTHING.with(figure, text);
  }

  /**
   * Returns the answer with one more figure.
   *
   * @param figure its name, not null
   * @param value its value, not null
   * @return the answer, not null
   */
  public Answer with(String figure, BigDecimal value) {
    return with(figure, value.toPlainString());
  }

  /**
   * Returns the answer with one more figure in floating point.
   *
   * @param figure its name, not null
   * @param value its value, finite
   * @return the answer, not null
   */
  public Answer with(String figure, double value) {
    return with(figure, new BigDecimal(Double.toString(value)));
  }

  /**
   * Returns the answer with one more text.
   *
   * @param figure its name, not null
   * @param text its text, not null
   * @return the answer, not null
   * @throws IllegalArgumentException if there is a figure of this name
   */
  public Answer with(String figure, String text) {
    Objects.requireNonNull(figure, "figure");
    Objects.requireNonNull(text, "text");
    Map<String, String> more = new LinkedHashMap<>(figures);
    if (more.put(figure, text) != null) {
      throw new IllegalArgumentException("an answer has one figure of a name, but " + figure + " came twice");
    }
    return new Answer(Collections.unmodifiableMap(more));
  }

  /**
   * Returns a figure.
   *
   * @param figure its name, not null
   * @return its text; empty if the answer has no such figure
   */
  public Optional<String> figure(String figure) {
    return Optional.ofNullable(figures.get(Objects.requireNonNull(figure, "figure")));
  }

  /**
   * Returns all figures in the order they were added.
   *
   * @return an unmodifiable map, not null
   */
  public Map<String, String> figures() {
    return figures;
  }

  /** {@inheritDoc} */
  @Override
  public String toString() {
    return figures.toString();
  }
}
