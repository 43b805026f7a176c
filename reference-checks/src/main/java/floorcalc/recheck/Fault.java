package floorcalc.recheck;

import java.util.Objects;

/**
 * Something in a job or a plan that is not as it must be.
 *
 * @param rule the rule that it breaks, not null
 * @param place where: a file and a JSON Pointer such as {@code "plan /order/packs"}, or the name of a bay, a row, a board or a
 *     piece such as {@code "study-1.3.2"}; not null
 * @param found what was found, not null
 * @param allowed what is allowed, not null
 */
public record Fault(Rule rule, String place, String found, String allowed) {
  /** Checks that no part is null. */
  public Fault {
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(allowed, "allowed");
  }

  /**
   * Returns the fault in one line.
   *
   * @return for example {@code "rule 2 (cut), study-1.3.2: found a piece of 412 mm by 185 mm; its rectangle is 411 mm by 185 mm"}
   */
  @Override
  public String toString() {
    String name = rule == Rule.FORMAT ? rule.word() : "rule " + rule.number() + " (" + rule.word() + ")";
    return name + ", " + place + ": found " + found + "; " + allowed;
  }
}
