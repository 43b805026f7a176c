package floorcalc.movement;

import floorcalc.measure.Length;
import floorcalc.working.Judgement;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;

/**
 * How far a continuous bay moves, and whether the rules take it.
 *
 * @param bay the bay, not null
 * @param swelling how much it swells across the boards from now to the dampest season, <b>in total</b> from edge to edge;
 *     not null
 * @param shrinkage how much it shrinks across the boards from now to the driest season, <b>in total</b>; not null
 * @param farthest how far its farther edge lies across the boards from the line that stays put, not null
 * @param needed the gap that the swelling needs <b>on one side</b>, the one farther from the line that stays put, square to a wall
 *     that the boards run along; rounded up to a whole nanometre; not null
 * @param gap the gap to leave <b>on each side</b> if the bay is laid as it is: that of the rule, or whole millimetres where the
 *     movement needs more; not null
 * @param judgements {@code gap-takes-movement}, {@code gap-takes-movement-along} if the boards move along their length too,
 *     {@code width-within-run} and {@code length-within-run}; not null
 * @since 0.1
 */
public record BayMovement(ContinuousBay bay, Length swelling, Length shrinkage, Length farthest, Length needed, Length gap,
    List<Judgement> judgements) {
  /** Checks that no part is null and copies the list. */
  public BayMovement {
    Objects.requireNonNull(judgements, "judgements");
    Objects.requireNonNull(bay, "bay");
    Objects.requireNonNull(swelling, "swelling");
    Objects.requireNonNull(shrinkage, "shrinkage");
    Objects.requireNonNull(farthest, "farthest");
    Objects.requireNonNull(needed, "needed");
    Objects.requireNonNull(gap, "gap");
    judgements = List.copyOf(judgements);
  }

  /**
   * Tells whether the gap of the rule takes the movement and the bay is within the longest runs.
   *
   * @return true if all judgements are met
   */
  public boolean fits() {
    return judgements.stream().allMatch(Judgement::isMet);
  }

  /** Of which side the gap needed is: of each, or of the one farther from where the bay is held. */
  String side() {
    return side(farthest, bay.across());
  }

  static String side(Length farthest, Length extent) {
    return farthest.equals(extent.dividedBy(2, RoundingMode.CEILING)) ? "on each side"
        : "on the side farther from where it is held";
  }

  /**
   * Returns the bay and its movement as text.
   *
   * @return such as {@code "hall, 4000 mm across the boards, 5000 mm along them: swells 10 mm in total, needs 5 mm on each side"}, not
   *     null
   */
  @Override
  public String toString() {
    return bay + ": swells " + swelling + " in total, needs " + needed + " " + side();
  }
}
