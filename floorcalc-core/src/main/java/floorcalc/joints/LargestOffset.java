package floorcalc.joints;

import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.RoundingMode;
import java.util.List;

/**
 * The largest joint offset that boards of a length can keep in rows of many boards.
 * <p>
 * End joints of a row lie at most one board apart. A joint of the next row falls between two of them, and so is at most
 * half a board from the nearer one, however the boards are laid. A rule that asks for more cannot be kept with these
 * boards but in rows that are shorter than a board or two.
 *
 * @since 0.1
 */
public final class LargestOffset {
  private LargestOffset() {}

  /**
   * Returns the largest offset and holds a rule against it.
   *
   * @param longestBoard the longest board sold, not null, more than zero
   * @param minimum the rule on offsets, see {@link LayingRules#MINIMUM_JOINT_OFFSET}; not null
   * @return half a board, rounded down to a whole nanometre, with the step {@code largest-offset} and a finding
   *     {@code offset-beyond-boards} if the rule asks for more; not null
   * @throws IllegalArgumentException if the board length is not more than zero
   */
  public static Calculated<Length> of(Length longestBoard, RuleValue<Length> minimum) {
    if (!longestBoard.isPositive()) {
      throw new IllegalArgumentException("board length must be more than 0 mm, but was " + longestBoard);
    }
    Length half = longestBoard.dividedBy(2, RoundingMode.FLOOR);
    Step step = new Step("largest-offset", "How far apart can end joints of neighbouring rows be kept everywhere?",
        "d = L / 2, rounded down to a whole nanometre", List.of(Term.of("L", "longest board", longestBoard)), half,
        Source.DEFINITION);
    List<Finding> findings = minimum.value().compareTo(half) <= 0 ? List.of()
        : List.of(new Finding("offset-beyond-boards", Severity.WARNING, "", "boards of " + longestBoard
            + " can keep end joints " + half + " apart at most, at least " + minimum.value()
            + " is asked for; take longer boards or a smaller offset", minimum.source()));
    return Calculated.of(half, List.of(step), findings);
  }
}
