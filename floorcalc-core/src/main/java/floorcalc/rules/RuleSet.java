package floorcalc.rules;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;

/** A named set of rules whose values depend on the goods. Immutable and thread-safe. */
public final class RuleSet {
  /** What many layers do; no published source was found for these figures. */
  public static final RuleSet COMMON_PRACTICE = new RuleSet("common practice");

  private final String name;

  private RuleSet(String name) {
    this.name = name;
  }

  /**
   * Returns the name of the set.
   *
   * @return the name, not null
   */
  public String name() {
    return name;
  }

  /**
   * Returns the rules for boards of a size.
   *
   * @param thickness the thickness of the boards, not null
   * @param coverWidth the cover width of the boards, not null
   * @return the rules, not null
   */
  public LayingRules forBoard(Length thickness, Length coverWidth) {
    Length ends = Length.ofMillimetres(thickness.compareTo(Length.ofMillimetres(15)) >= 0 ? 500 : 300);
    Map<RuleKey<?>, RuleValue<?>> values = new LinkedHashMap<>();
    put(values, LayingRules.EXPANSION_GAP, Length.ofMillimetres(10));
    put(values, LayingRules.MINIMUM_ROW_WIDTH, Length.ofMillimetres(70));
    put(values, LayingRules.MINIMUM_END_PIECE, ends);
    put(values, LayingRules.MINIMUM_JOINT_OFFSET, ends);
    put(values, LayingRules.SAW_KERF, Length.ofMillimetres(3));
    put(values, LayingRules.SPARE_SHARE, new BigDecimal("0.02"));
    put(values, LayingRules.MAXIMUM_RUN_ALONG, Length.ofMillimetres(12000));
    put(values, LayingRules.MAXIMUM_RUN_ACROSS, Length.ofMillimetres(8000));
    return new LayingRules(name, values);
  }

  private static <T> void put(Map<RuleKey<?>, RuleValue<?>> values, RuleKey<T> key, T value) {
    values.put(key, new RuleValue<>(key, value, Source.COMMON_PRACTICE));
  }
}
