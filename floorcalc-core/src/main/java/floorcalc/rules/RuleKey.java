package floorcalc.rules;

import java.io.Serializable;
import java.util.Objects;

/**
 * The name of a rule and the type of its value.
 *
 * @param <T> the type of the value
 */
public final class RuleKey<T> implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final String meaning;
  private final Class<T> type;

  RuleKey(String name, String meaning, Class<T> type) {
    this.name = name;
    this.meaning = meaning;
    this.type = type;
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

  @Override
  public boolean equals(Object object) {
    return object instanceof RuleKey<?> other && name.equals(other.name);
  }

  @Override
  public int hashCode() {
    return Objects.hashCode(name);
  }

  @Override
  public String toString() {
    return name;
  }
}
