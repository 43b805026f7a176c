package floorcalc.finishing;

import floorcalc.plan.Check;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Profile;
import floorcalc.working.Finding;
import floorcalc.working.Worked;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The edges of a planned floor: a profile at each expansion break and at each door, what becomes of casings, and whether door leaves
 * still clear the floor.
 * <p>
 * A door that is given in both rooms that it joins gets one profile, not two; each of the two must lead to the room of the other, by
 * its name. Of several doors between two rooms, those of one name belong together, then those nearest to each other within a metre, then those
 * whose widths differ least. It lies where the first of the two rooms in the job has its door, a nosing where the
 * upper one has it. Kinds and limits are common practice, see
 * {@link floorcalc.transitions.LevelChangeSet#COMMON_PRACTICE}.
 *
 * @param profiles the profiles, those at breaks first, then those at doors in the order of the job; not null
 * @param doors each door of each room with all that the floor asks for there, in the order of the job; not null
 * @param checks the space under door leaves held against limits, not null
 * @param findings what was noticed, not null
 * @param working the heights and choices of each door, not null
 * @param cautions warnings for those who do the work, not null
 * @since 0.1
 */
public record Transitions(List<Profile> profiles, List<DoorEdge> doors, List<Check> checks, List<Finding> findings,
    List<Worked> working, List<String> cautions) {
  /** Checks that no part is null and copies the lists. */
  public Transitions {
    Objects.requireNonNull(profiles, "profiles");
    Objects.requireNonNull(doors, "doors");
    Objects.requireNonNull(checks, "checks");
    Objects.requireNonNull(findings, "findings");
    Objects.requireNonNull(working, "working");
    Objects.requireNonNull(cautions, "cautions");
    profiles = List.copyOf(profiles);
    doors = List.copyOf(doors);
    checks = List.copyOf(checks);
    findings = List.copyOf(findings);
    working = List.copyOf(working);
    cautions = List.copyOf(cautions);
  }

  /**
   * Works out the edges of a floor.
   *
   * @param job the job, not null
   * @param plan its plan, of which the breaks are read; not null
   * @return the edges, not null
   */
  public static Transitions of(FloorJob job, FloorPlan plan) {
    DoorWorks works = new DoorWorks(job);
    new DoorPairs(job).places().forEach(works::add);
    List<Profile> profiles = new ArrayList<>(BreakProfiles.of(plan));
    List<DoorEdge> doors = works.edges();
    doors.forEach(edge -> edge.profile().ifPresent(profiles::add));
    return new Transitions(profiles, doors, works.checks(), works.findings(), works.working(),
        EdgeCautions.of(job, doors, profiles));
  }

  /**
   * Returns a plan with these profiles in place of those that it has, and with the checks, findings, working and cautions added.
   *
   * @param plan the plan, not null
   * @return the fuller plan, not null
   */
  public FloorPlan addedTo(FloorPlan plan) {
    return plan.withProfiles(profiles).with(checks, findings, working).withCautions(cautions);
  }
}
