package floorcalc.audit;

import floorcalc.measure.Length;
import floorcalc.plan.Bay;
import floorcalc.plan.Compromise;
import floorcalc.plan.FloorPlan;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleKey;
import floorcalc.rules.RuleValue;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The compromises of a plan, found by rule and place. A place begins with {@code <bay> row <number>} or, for the pieces
 * of a run, with {@code <bay> row <number> run <number>}; more words may follow.
 */
final class Compromises {
  private static final String ROW = " row ";
  private static final String RUN = " run ";
  private static final Set<String> MINIMUMS = Set.of(LayingRules.MINIMUM_ROW_WIDTH.name(),
      LayingRules.MINIMUM_END_PIECE.name(), LayingRules.MINIMUM_JOINT_OFFSET.name());

  private final List<Compromise> listed;
  private final Map<String, List<Integer>> byPlace = new HashMap<>();
  private final boolean[] needed;
  private final Breaches breaches;

  private Compromises(FloorPlan plan, Breaches breaches) {
    this.listed = plan.compromises();
    this.needed = new boolean[listed.size()];
    this.breaches = breaches;
    Set<String> bays = new HashSet<>();
    for (Bay bay : plan.bays()) {
      bays.add(bay.bay());
    }
    for (int i = 0; i < listed.size(); i++) {
      Compromise compromise = listed.get(i);
      String where = compromise.where();
      for (int at = where.indexOf(ROW); at >= 0; at = where.indexOf(ROW, at + 1)) {
        if (bays.contains(where.substring(0, at))) {
          int end = endOfNumber(where, at + ROW.length());
          put(compromise.rule(), where.substring(0, end), i);
          if (where.startsWith(RUN, end)) {
            put(compromise.rule(), where.substring(0, endOfNumber(where, end + RUN.length())), i);
          }
          break;
        }
      }
    }
  }

  static Compromises of(FloorPlan plan, Breaches breaches) {
    return new Compromises(plan, breaches);
  }

  private static int endOfNumber(String text, int from) {
    int end = from;
    while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
      end++;
    }
    return end;
  }

  private void put(String rule, String place, int index) {
    byPlace.computeIfAbsent(rule + '|' + place, key -> new ArrayList<>()).add(index);
  }

  /**
   * Answers for the worst that was found at a place where a rule is not kept.
   *
   * @param code the breach to report if no compromise names it
   * @param rule the rule with its value and source
   * @param place the place as the compromise must begin
   * @param found the worst that was found there, in nanometres
   * @param foundAtMost the same if what rounding leaves in doubt is not counted
   * @param slack how far the stated value may differ, in nanometres
   * @param what the breach in words
   */
  void breach(Code code, RuleValue<Length> rule, String place, double found, double foundAtMost, double slack,
      String what) {
    List<Integer> named = byPlace.getOrDefault(rule.key() + "|" + place, List.of());
    if (named.isEmpty()) {
      breaches.add(code, place, what + "; the rule asks for at least " + rule.value() + " (" + rule.key()
          + ") and no compromise names it", rule.source());
      return;
    }
    long least = Long.MAX_VALUE;
    for (int index : named) {
      needed[index] = true;
      least = Math.min(least, listed.get(index).found().toNanometres());
      if (!listed.get(index).required().equals(rule.value())) {
        breaches.add(Code.COMPROMISE, place, "the compromise on " + rule.key() + " at " + place + " says that "
            + listed.get(index).required() + " is required, but the rule asks for " + rule.value(), rule.source());
      }
    }
    if (least < found - slack || least > foundAtMost + slack) {
      breaches.add(Code.COMPROMISE, place, "the compromise on " + rule.key() + " at " + place + " says "
          + Words.mm(least) + ", but " + what, rule.source());
    }
  }

  /** Answers for a place where a rule is broken by rounding alone: a compromise may name it. */
  void allow(RuleValue<Length> rule, String place) {
    for (int index : byPlace.getOrDefault(rule.key() + "|" + place, List.of())) {
      needed[index] = true;
    }
  }

  static boolean isKept(double found, RuleValue<Length> rule, double slack) {
    return found >= rule.value().toNanometres() - slack;
  }

  /** Notes each compromise on one of the three minimums that no breach asked for. */
  void noteTheRest(LayingRules rules) {
    for (int i = 0; i < needed.length; i++) {
      Compromise compromise = listed.get(i);
      if (!needed[i] && MINIMUMS.contains(compromise.rule())) {
        RuleKey<Length> key = key(compromise.rule());
        breaches.note(Code.COMPROMISE_NOT_NEEDED, compromise.where(), "a compromise on " + compromise.rule()
            + " is listed at " + compromise.where() + ", but the rule (at least " + rules.value(key)
            + ") is kept there", rules.get(key).source());
      }
    }
  }

  private static RuleKey<Length> key(String rule) {
    return rule.equals(LayingRules.MINIMUM_ROW_WIDTH.name()) ? LayingRules.MINIMUM_ROW_WIDTH
        : rule.equals(LayingRules.MINIMUM_END_PIECE.name()) ? LayingRules.MINIMUM_END_PIECE
        : LayingRules.MINIMUM_JOINT_OFFSET;
  }
}
