package floorcalc.recheck;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * What came of checking a plan. Immutable.
 *
 * @param faults what is not as it must be, at most {@value #MOST_FAULTS}; empty if nothing is wrong, not null
 * @param more faults found beyond these
 * @param checked how much was looked at, not null
 * @param leftOut what was not looked at and why, not null
 */
public record RecheckReport(List<Fault> faults, int more, Checked checked, List<LeftOut> leftOut) {
  /** So many faults are listed; others are counted. */
  public static final int MOST_FAULTS = 1000;

  /** Checks that no part is null and copies the lists. */
  public RecheckReport {
    faults = List.copyOf(faults);
    Objects.requireNonNull(checked, "checked");
    leftOut = List.copyOf(leftOut);
  }

  /**
   * Tells whether nothing was found. What was {@link #leftOut() left out} may still be wrong.
   *
   * @return true if there is no fault
   */
  public boolean isSound() {
    return faults.isEmpty();
  }

  /**
   * Tells whether a rule was found broken.
   *
   * @param rule the rule, not null
   * @return true if a fault listed breaks it
   */
  public boolean breaks(Rule rule) {
    return faults.stream().anyMatch(fault -> fault.rule() == rule);
  }

  /**
   * Returns the report as lines of text: faults, then counts, then what was left out.
   *
   * @return the lines, not null, not empty
   */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    faults.forEach(fault -> lines.add(fault.toString()));
    if (more > 0) {
      lines.add("and " + more + " more");
    }
    lines.add(isSound() ? "sound: nothing found" : count(faults.size() + more, "fault"));
    lines.add("checked: " + count(checked.rooms(), "room") + " (" + checked.walls() + " against the walls), "
        + count(checked.bays(), "bay") + ", " + count(checked.rows(), "row") + ", " + count(checked.pieces(), "piece") + ", "
        + count(checked.joints(), "end joint") + ", " + checked.contacts() + " places where rows touch, "
        + count(checked.offsets(), "joint offset") + ", " + count(checked.boards(), "board") + ", "
        + checked.pairs() + " pairs of pieces of a board, " + count(checked.profiles(), "profile") + ", "
        + count(checked.compromises(), "compromise") + ", " + count(checked.checks(), "check") + ", "
        + count(checked.lengths(), "length")
        + (checked.plans() > 1 ? ", " + checked.plans() + " plans byte for byte" : ""));
    if (checked.boardsCutAgain() > 0) {
      lines.add(String.format(Locale.ROOT, "boards: at least %d by the laid area; %d when these pieces are cut again by a simple rule",
          checked.boardsByArea(), checked.boardsCutAgain()));
    }
    leftOut.forEach(one -> lines.add("left out: " + one));
    return lines;
  }

  private static String count(int number, String word) {
    return number + " " + word + (number == 1 ? "" : "s");
  }
}
