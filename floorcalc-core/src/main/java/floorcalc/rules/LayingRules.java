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
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * The rules in force for a job, each with its value and source. Immutable and thread-safe.
 * <pre>{@code
 * LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(Length.parse("14 mm"), Length.parse("185 mm"))
 *     .with(LayingRules.EXPANSION_GAP, Length.parse("12 mm"), Source.GIVEN);
 * rules.value(LayingRules.MINIMUM_JOINT_OFFSET);   // 300 mm
 * }</pre>
 *
 * @since 0.1
 */
public final class LayingRules implements Serializable {
  /** The gap left at everything fixed, on each side of the floor, measured square to the edge: 0 to 100 mm. */
  public static final RuleKey<Length> EXPANSION_GAP = length("expansionGap", "gap at everything fixed, on each side",
      0, 100, "give the gap on one side alone, square to the wall");

  /** The narrowest strip that a first or last row, or a row at any other stop, may have: 0 to 1000 mm, 0 for no rule. */
  public static final RuleKey<Length> MINIMUM_ROW_WIDTH = length("minimumRowWidth", "narrowest first or last row",
      0, 1000, "give the narrowest strip wanted, 0 mm for none");

  /** The shortest start, end or single piece; whole boards do not count: 0 to 5 m, 0 for no rule. */
  public static final RuleKey<Length> MINIMUM_END_PIECE = length("minimumEndPiece", "shortest start or end piece",
      0, 5000, "give the shortest piece wanted at a wall, 0 mm for none");

  /** The least distance along the rows between end joints of rows that touch: 0 to 5 m, 0 for no rule. */
  public static final RuleKey<Length> MINIMUM_JOINT_OFFSET = length("minimumJointOffset",
      "least distance between end joints of neighbouring rows", 0, 5000,
      "give a distance of at most half a board, 0 mm for none");

  /** What the saw blade turns to dust in one cut: 0 to 20 mm, 0 for a blade that parts and takes nothing. */
  public static final RuleKey<Length> SAW_KERF = length("sawKerf", "width of a saw cut", 0, 20,
      "give the thickness of the cut that the blade makes");

  /** Boards kept for mistakes and repairs, as a share of the boards used: 0 to 1, so that 0.02 is 2 %. */
  public static final RuleKey<BigDecimal> SPARE_SHARE = new RuleKey<>("spareShare",
      "boards kept for mistakes and repairs, as a share of those used", BigDecimal.class, BigDecimal.ZERO,
      BigDecimal.ONE, "give 2 % as 0.02");

  /** The longest bay along the boards before an expansion break: 0.5 m to 1000 m. */
  public static final RuleKey<Length> MAXIMUM_RUN_ALONG = length("maximumRun.alongBoards",
      "longest bay along the boards", 500, 1_000_000, "give the longest floor without an expansion break");

  /** The widest bay across the boards before an expansion break: 0.5 m to 1000 m. */
  public static final RuleKey<Length> MAXIMUM_RUN_ACROSS = length("maximumRun.acrossBoards",
      "widest bay across the boards", 500, 1_000_000, "give the widest floor without an expansion break");

  /**
   * The whole width of the gap of an expansion break, 0 to 200 mm. With 0 mm it has no width of its own: each of the two bays
   * keeps its expansion gap to the middle of the break.
   */
  public static final RuleKey<Length> BREAK_GAP = length("breakGap",
      "gap of an expansion break in all, 0 mm for an expansion gap on either side of its middle", 0, 200,
      "give the gap that the profile covers, 0 mm for an expansion gap on either side");

  /**
   * How deep an inner corner may lie inside the line across its recess without a break: 0 to 1000 m, 0 for a break at every inner
   * corner. Something fixed in a recess is reached by what shrinks towards the far end of a bay; a recess of 500 mm gives way
   * by 0.75 mm at 1.5 mm per metre, the rate by which NF DTU 51.11 clause 8.2 sizes its gaps, and any gap covers that.
   */
  public static final RuleKey<Length> DEEPEST_RECESS = length("deepestRecess",
      "deepest recess that a bay may have without a break", 0, 1_000_000,
      "give how far an inner corner may lie inside the bay, 0 mm for a break at each");

  /** The widest column, hearth or island, by its smaller width, that may stand in a bay without a break: 0 to 1000 m. */
  public static final RuleKey<Length> WIDEST_VOID = length("widestVoid",
      "widest column, hearth or island that a bay may lie round without a break, by its smaller width", 0, 1_000_000,
      "give the smaller width of the widest that the floor may lie round");

  /** Whether a floor has a break at each doorway that it could run through. */
  public static final RuleKey<AtDoorways> AT_DOORWAYS = new RuleKey<>("atDoorways",
      "floor at a doorway that it could run through", AtDoorways.class, AtDoorways.RUN_THROUGH, AtDoorways.BREAK,
      "give one of the two");

  private static final List<RuleKey<?>> KEYS = List.of(EXPANSION_GAP, MINIMUM_ROW_WIDTH, MINIMUM_END_PIECE,
      MINIMUM_JOINT_OFFSET, SAW_KERF, SPARE_SHARE, MAXIMUM_RUN_ALONG, MAXIMUM_RUN_ACROSS, BREAK_GAP, DEEPEST_RECESS,
      WIDEST_VOID, AT_DOORWAYS);

  private static final long serialVersionUID = 1L;

  private final String name;
  @SuppressWarnings("serial")
  private final Map<RuleKey<?>, RuleValue<?>> values;

  LayingRules(String name, Map<RuleKey<?>, RuleValue<?>> values) {
    this.name = name;
    this.values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  private static RuleKey<Length> length(String name, String meaning, long least, long most, String advice) {
    return new RuleKey<>(name, meaning, Length.class, Length.ofMillimetres(least), Length.ofMillimetres(most), advice);
  }

  /**
   * Returns all rules that there are, in a fixed order.
   *
   * @return an unmodifiable list, not null
   */
  public static List<RuleKey<?>> keys() {
    return KEYS;
  }

  /**
   * Returns the rule of a name.
   *
   * @param name the name that files use, not null
   * @return the rule, not null
   * @throws IllegalArgumentException if there is no such rule; the message lists the names
   */
  public static RuleKey<?> key(String name) {
    Objects.requireNonNull(name, "name");
    return KEYS.stream().filter(key -> key.name().equals(name)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no rule '" + name + "'; the rules are: "
            + KEYS.stream().map(RuleKey::name).collect(Collectors.joining(", "))));
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
    return (RuleValue<T>) Objects.requireNonNull(values.get(Objects.requireNonNull(key, "key")), key.name());
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
   * Returns a copy with one rule replaced. The set that it came from stays as it is.
   *
   * @param <T> the type of the value
   * @param key the rule, not null
   * @param value its new value, not null, within the bounds of the rule
   * @param source where the new value comes from, not null
   * @return the new rules, not null
   * @throws IllegalArgumentException if the value is out of bounds
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

  @Override
  public boolean equals(Object object) {
    return object instanceof LayingRules other && name.equals(other.name) && values.equals(other.values);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, values);
  }

  /**
   * Returns the rules, one a line, after the name of their set.
   *
   * @return lines separated by {@code \n}, without one at the end; not null
   */
  @Override
  public String toString() {
    return name + values.values().stream().map(value -> "\n  " + value).collect(Collectors.joining());
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    Map<RuleKey<?>, RuleValue<?>> read = new LinkedHashMap<>();
    for (RuleKey<?> key : KEYS) {
      RuleValue<?> value = Objects.requireNonNull(values.get(key), key.name());
      if (!value.key().equals(key)) {
        throw new IllegalArgumentException("the value of rule " + key + " is one of rule " + value.key());
      }
      read.put(key, value);
    }
    return new LayingRules(Objects.requireNonNull(name, "name"), read);
  }
}
