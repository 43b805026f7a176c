package floorcalc.transitions;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The space under the leaf of a door once the floor lies, held against named limits.
 *
 * @param clearance from the finished floor to the bottom of the leaf, negative if the floor stands higher than it; not null
 * @param lacking what the leaf lacks at most over the limits asked, 0 mm if it suffices; not null
 * @param judgements a judgement for each limit on the space under the leaf, in the order asked; not null
 * @since 0.1
 */
public record DoorLeaf(Length clearance, Length lacking, List<Judgement> judgements) {
  /** Checks that no part is null and copies the list. */
  public DoorLeaf {
    Objects.requireNonNull(judgements, "judgements");
    Objects.requireNonNull(clearance, "clearance");
    Objects.requireNonNull(lacking, "lacking");
    judgements = List.copyOf(judgements);
  }

  /**
   * Works out the space under a leaf.
   *
   * @param aboveSubfloor how high the bottom of the leaf is above the bare subfloor where the floor will lie, measured at the
   *     lowest point of its swing; not null, not negative
   * @param stack the floor, not null
   * @param sets the limits to hold it against; those at head and jamb are left out; not null
   * @param fire whether it is a fire door, not null
   * @return the space with the steps {@code stack-height}, {@code leaf-clearance} and {@code leaf-lacks} for each limit with a
   *     least; findings {@code door-does-not-clear} if the leaf would rub, {@code fire-door} for a fire door that lacks space; not null
   * @throws IllegalArgumentException if the leaf is below the subfloor
   */
  public static Calculated<DoorLeaf> of(Length aboveSubfloor, HeightStack stack, List<DoorSet> sets, FireRating fire) {
    Objects.requireNonNull(fire, "fire");
    if (Objects.requireNonNull(aboveSubfloor, "aboveSubfloor").isNegative()) {
      throw new IllegalArgumentException("the bottom of a door leaf must be 0 mm or more above the bare subfloor, but was "
          + aboveSubfloor + "; measure from the subfloor up");
    }
    Length clearance = aboveSubfloor.minus(stack.total());
    List<Step> steps = new ArrayList<>(stack.calculated().steps());
    Term leaf = Term.of("L", "bottom of the leaf above the bare subfloor", aboveSubfloor);
    steps.add(new Step("leaf-clearance", "How much space is left under the leaf once the floor lies?", "k = L - H",
        List.of(leaf, Term.of("H", "floor", stack.total())), clearance, Source.DEFINITION));
    List<Judgement> judgements = new ArrayList<>();
    Length lacking = Length.ZERO;
    for (DoorSet set : sets) {
      for (DoorLimit limit : set.limits()) {
        if (limit.space() != DoorSpace.AT_HEAD_OR_JAMB) {
          boolean finished = limit.space() == DoorSpace.OVER_FINISHED_FLOOR;
          Length found = finished ? clearance : aboveSubfloor;
          judgements.add(limit.judge(set.name(), found, fire));
          lacking = lacking.max(limit.lacking(found));
          limit.least().ifPresent(least -> steps.add(new Step("leaf-lacks", "By how much does it fall short, by '" + set.name()
              + "'?", "x = max(0, m - k)", List.of(new Term("m", "least " + limit.space().words(), least, limit.source()),
                  Term.of("k", limit.space().words(), found)), limit.lacking(found), limit.source())));
        }
      }
    }
    return Calculated.of(new DoorLeaf(clearance, lacking, judgements), steps, findings(clearance, lacking, fire));
  }

  private static List<Finding> findings(Length clearance, Length lacking, FireRating fire) {
    List<Finding> findings = new ArrayList<>();
    if (!clearance.isPositive()) {
      findings.add(new Finding("door-does-not-clear", Severity.SERIOUS, "", "the floor would stand " + clearance.negated()
          + " higher than the bottom of the leaf: the door does not open over it", Source.DEFINITION));
    }
    if (fire == FireRating.FIRE_DOOR && (lacking.isPositive() || !clearance.isPositive())) {
      findings.add(CasingWork.fireDoor());
    }
    return findings;
  }
}
