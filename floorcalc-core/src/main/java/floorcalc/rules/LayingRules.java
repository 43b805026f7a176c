package floorcalc.rules;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import java.io.Serializable;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The rules in force for a job, each with its value and source. Immutable and thread-safe. */
public final class LayingRules implements Serializable {
  /** The gap left at everything fixed, on each side, square to it. */
  public static final RuleKey<Length> EXPANSION_GAP =
      new RuleKey<>("expansionGap", "gap at everything fixed, on each side", Length.class);
  /** The narrowest first or last row. */
  public static final RuleKey<Length> MINIMUM_ROW_WIDTH =
      new RuleKey<>("minimumRowWidth", "narrowest row", Length.class);
  /** The shortest start or end piece of a run. */
  public static final RuleKey<Length> MINIMUM_END_PIECE =
      new RuleKey<>("minimumEndPiece", "shortest start or end piece", Length.class);
  /** The least distance along the rows between end joints of rows that touch. */
  public static final RuleKey<Length> MINIMUM_JOINT_OFFSET =
      new RuleKey<>("minimumJointOffset", "least distance between end joints of neighbouring rows", Length.class);
  /** What the saw blade turns to dust. */
  public static final RuleKey<Length> SAW_KERF = new RuleKey<>("sawKerf", "width of a saw cut", Length.class);
  /** Boards kept for mistakes and repairs, as a share of those used. */
  public static final RuleKey<BigDecimal> SPARE_SHARE =
      new RuleKey<>("spareShare", "boards kept over, as a share of those used", BigDecimal.class);
  /** The longest floor along the boards before an expansion break. */
  public static final RuleKey<Length> MAXIMUM_RUN_ALONG =
      new RuleKey<>("maximumRun.alongBoards", "longest bay along the boards", Length.class);
  /** The widest floor across the boards before an expansion break. */
  public static final RuleKey<Length> MAXIMUM_RUN_ACROSS =
      new RuleKey<>("maximumRun.acrossBoards", "widest bay across the boards", Length.class);

  private static final long serialVersionUID = 1L;

  private final String name;
  @SuppressWarnings("serial")
  private final Map<RuleKey<?>, RuleValue<?>> values;

  LayingRules(String name, Map<RuleKey<?>, RuleValue<?>> values) {
    this.name = name;
    this.values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /**
   * Returns the name of the set that these rules started from.
   *
   * @return the name, not null
   */
  public String name() {
    return name;
  }

  /**
   * Returns a rule's value and source.
   *
   * @param <T> the type of the value
   * @param key the rule, not null
   * @return the value with its source, not null
   */
  @SuppressWarnings("unchecked")
  public <T> RuleValue<T> get(RuleKey<T> key) {
    RuleValue<?> found = values.get(key);
    if (found == null) {
      throw new IllegalArgumentException("rule set '" + name + "' has no rule '" + key + "'");
    }
    return (RuleValue<T>) found;
  }

  /**
   * Returns a rule's bare value.
   *
   * @param <T> the type of the value
   * @param key the rule, not null
   * @return the value, not null
   */
  public <T> T value(RuleKey<T> key) {
    return get(key).value();
  }

  /**
   * Returns a copy with one rule replaced.
   *
   * @param <T> the type of the value
   * @param key the rule, not null
   * @param value its new value, not null
   * @param source where the new value comes from, not null
   * @return the new rules, not null
   */
  public <T> LayingRules with(RuleKey<T> key, T value, Source source) {
    Map<RuleKey<?>, RuleValue<?>> copy = new LinkedHashMap<>(values);
    copy.put(key, new RuleValue<>(key, value, source));
    return new LayingRules(name, copy);
  }

  /**
   * Returns all rules in a fixed order.
   *
   * @return an unmodifiable list, not null
   */
  public List<RuleValue<?>> all() {
    return Collections.unmodifiableList(new ArrayList<>(values.values()));
  }
}
