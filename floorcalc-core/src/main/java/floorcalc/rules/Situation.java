package floorcalc.rules;

import floorcalc.measure.Length;
import floorcalc.working.Finding;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The boards and the room that a set is resolved for, and what has been resolved so far. Used by one thread. */
final class Situation {
  private final Length thickness;
  private final Length coverWidth;
  private final Length largestDimension;
  private final Map<RuleKey<?>, RuleValue<?>> values = new LinkedHashMap<>();
  private final Map<RuleKey<?>, Step> steps = new LinkedHashMap<>();
  private final List<Finding> findings = new ArrayList<>();

  /** @param largestDimension the largest length or width to be covered, or null if it is not known */
  Situation(Length thickness, Length coverWidth, Length largestDimension) {
    this.thickness = positive(thickness, "thickness");
    this.coverWidth = positive(coverWidth, "cover width");
    this.largestDimension = largestDimension == null ? null : positive(largestDimension, "largest dimension");
  }

  private static Length positive(Length value, String what) {
    if (!Objects.requireNonNull(value, what).isPositive()) {
      throw new IllegalArgumentException(what + " must be more than 0 mm, but was " + value);
    }
    return value;
  }

  Length thickness() {
    return thickness;
  }

  Length coverWidth() {
    return coverWidth;
  }

  /** The largest dimension; if it is not known, the longest that a bay may have under the rules so far. */
  Length largestDimension() {
    return largestDimension != null ? largestDimension
        : value(LayingRules.MAXIMUM_RUN_ALONG).max(value(LayingRules.MAXIMUM_RUN_ACROSS));
  }

  @SuppressWarnings("unchecked")
  private <T> T value(RuleKey<T> key) {
    return (T) values.get(key).value();
  }

  <T> void put(RuleKey<T> key, T value, Source source) {
    put(key, value, source, "value as stated");
  }

  <T> void put(RuleKey<T> key, T value, Source source, String formula, Term... terms) {
    values.put(key, new RuleValue<>(key, value, source));
    steps.put(key, new Step(key.name(), "What is asked for: " + key.meaning() + "?", formula, List.of(terms), value,
        source));
  }

  LayingRules rules(String name) {
    return new LayingRules(name, values);
  }

  void note(Finding finding) {
    findings.add(finding);
  }

  List<Step> steps() {
    return new ArrayList<>(steps.values());
  }

  List<Finding> findings() {
    return findings;
  }
}
