package floorcalc.working;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A result together with its working and with what was noticed on the way. Immutable if its value is.
 *
 * @param <T> the type of the result
 * @since 0.1
 */
public final class Calculated<T> implements Serializable {
  private static final long serialVersionUID = 1L;

  @SuppressWarnings("serial")
  private final T value;
  @SuppressWarnings("serial")
  private final List<Step> steps;
  @SuppressWarnings("serial")
  private final List<Finding> findings;

  private Calculated(T value, List<Step> steps, List<Finding> findings) {
    this.value = Objects.requireNonNull(value, "value");
    this.steps = List.copyOf(steps);
    this.findings = List.copyOf(findings);
  }

  /**
   * Returns a result with its steps and no findings.
   *
   * @param <T> the type of the result
   * @param value the result, not null
   * @param steps the steps in order, not null
   * @return the calculated value, not null
   */
  public static <T> Calculated<T> of(T value, List<Step> steps) {
    Objects.requireNonNull(steps, "steps");
    return new Calculated<>(value, steps, List.of());
  }

  /**
   * Returns a result with its steps and findings.
   *
   * @param <T> the type of the result
   * @param value the result, not null
   * @param steps the steps in order, not null
   * @param findings what was noticed, not null
   * @return the calculated value, not null
   */
  public static <T> Calculated<T> of(T value, List<Step> steps, List<Finding> findings) {
    Objects.requireNonNull(steps, "steps");
    Objects.requireNonNull(findings, "findings");
    return new Calculated<>(value, steps, findings);
  }

  /**
   * Returns the result.
   *
   * @return the result, not null
   */
  public T value() {
    return value;
  }

  /**
   * Returns the steps that led to the result, in order.
   *
   * @return an unmodifiable list, not null
   */
  public List<Step> steps() {
    return steps;
  }

  /**
   * Returns what was noticed on the way.
   *
   * @return an unmodifiable list, not null
   */
  public List<Finding> findings() {
    return findings;
  }

  /**
   * Returns the whole working as text, made from the steps.
   *
   * @return lines separated by {@code \n}, without one at the end; not null
   */
  public String explain() {
    return steps.stream().map(Step::explain).collect(Collectors.joining("\n"));
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return new Calculated<>(value, steps, findings);
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Calculated<?> other && parts().equals(other.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  private List<Object> parts() {
    return Arrays.asList(value, steps, findings);
  }
}
