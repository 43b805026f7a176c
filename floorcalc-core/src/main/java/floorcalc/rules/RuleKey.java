package floorcalc.rules;

import java.io.Serializable;
import java.math.BigDecimal;
import java.util.Objects;

/**
 * The name of a rule, the type of its value and the bounds that any value of it must keep. Immutable and thread-safe.
 *
 * @param <T> the type of the value
 * @since 0.1
 */
public final class RuleKey<T> implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final String meaning;
  private final Class<T> type;
  @SuppressWarnings("serial")
  private final T least;
  @SuppressWarnings("serial")
  private final T most;
  private final String advice;

  RuleKey(String name, String meaning, Class<T> type, T least, T most, String advice) {
    this.name = name;
    this.meaning = meaning;
    this.type = type;
    this.least = least;
    this.most = most;
    this.advice = advice;
  }

  /**
   * Returns the name that files use, such as {@code "expansionGap"}.
   *
   * @return the name, not null
   */
  public String name() {
    return name;
  }

  /**
   * Returns what the rule is about, in a few words.
   *
   * @return the meaning, not null
   */
  public String meaning() {
    return meaning;
  }

  /**
   * Returns the type of the value.
   *
   * @return the type, not null
   */
  public Class<T> type() {
    return type;
  }

  /**
   * Returns the smallest value that is taken.
   *
   * @return the lower bound, itself allowed, not null
   */
  public T least() {
    return least;
  }

  /**
   * Returns the largest value that is taken. The bounds catch slips of unit and decimal point; they are no advice.
   *
   * @return the upper bound, itself allowed, not null
   */
  public T most() {
    return most;
  }

  /**
   * Returns the value if it keeps the bounds.
   *
   * @param value the value, not null
   * @return the same value, not null
   * @throws IllegalArgumentException if it is out of bounds; the message names rule, value, bounds and what to do
   */
  public T check(T value) {
    Objects.requireNonNull(value, name);
    if (compare(value, least) < 0 || compare(value, most) > 0) {
      throw new IllegalArgumentException(name + " must be from " + text(least) + " to " + text(most) + ", but was "
          + text(value) + "; " + advice);
    }
    return value;
  }

  @SuppressWarnings("unchecked")
  private int compare(T value, T bound) {
    return ((Comparable<T>) type.cast(value)).compareTo(bound);
  }

  private static String text(Object value) {
    return value instanceof BigDecimal decimal ? decimal.toPlainString() : value.toString();
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof RuleKey<?> other && name.equals(other.name);
  }

  @Override
  public int hashCode() {
    return name.hashCode();
  }

  @Override
  public String toString() {
    return name;
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return LayingRules.key(name);
  }
}
