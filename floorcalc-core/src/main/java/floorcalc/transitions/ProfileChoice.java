package floorcalc.transitions;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Which profile lies over an edge of a floor, and why.
 * <p>
 * A step edge gets a nosing; a fixed edge and another finish an end profile, at which the floor ends with its gap; the same floor beyond
 * a T profile if the set lets it even the difference out, a reducer if the set has one that does, and where neither does an end
 * profile with a ramp or a step beside it. The kinds are common practice, no source; the limits between them are those of the
 * set.
 *
 * @param kind the kind of profile, not null
 * @param difference the heights either side, not null
 * @param verdict what the set asks for at this difference, not null
 * @param because why this kind, one sentence without its stop; not null
 * @since 0.1
 */
public record ProfileChoice(ProfileKind kind, HeightDifference difference, LevelChangeVerdict verdict, String because) {
  /** Checks that no part is null. */
  public ProfileChoice {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(difference, "difference");
    Objects.requireNonNull(verdict, "verdict");
    Objects.requireNonNull(because, "because");
  }

  /**
   * Chooses the profile for an edge.
   *
   * @param edge what lies beyond, not null
   * @param difference how much higher it is beyond, not null
   * @param set the limits on differences of height, not null
   * @return the choice with the steps of {@link LevelChangeSet#judge}; findings {@code ramp-needed} and {@code level-change-beyond-set} as
   *     there, but not at a step or a fixed edge; {@code floor-beyond-not-stated} where nothing is known of what lies beyond; not null
   */
  public static Calculated<ProfileChoice> of(EdgeType edge, HeightDifference difference, LevelChangeSet set) {
    Calculated<LevelChangeVerdict> judged = set.judge(difference);
    LevelChangeVerdict verdict = judged.value();
    List<Finding> findings = new ArrayList<>();
    if (edge == EdgeType.NOT_STATED) {
      findings.add(new Finding("floor-beyond-not-stated", Severity.NOTE, "", "what lies beyond is not stated; it is taken as the"
          + " same floor, " + difference + ": look, and measure both heights", Source.COMMON_PRACTICE));
    }
    ProfileChoice choice = switch (edge) {
      case STEP -> step(difference, verdict);
      case FIXED_EDGE -> new ProfileChoice(ProfileKind.END, difference, verdict, "fixed edge, " + heights(difference)
          + ": the floor ends there with its gap");
      case OTHER_FINISH -> new ProfileChoice(ProfileKind.END, difference, verdict, "another finish beyond, "
          + heights(difference) + ": the floor ends there with its gap");
      case SAME_FLOOR, NOT_STATED -> sameFloor(difference, verdict);
    };
    if (edge != EdgeType.STEP && edge != EdgeType.FIXED_EDGE) {
      findings.addAll(judged.findings());
    }
    return Calculated.of(choice, judged.steps(), findings);
  }

  /**
   * Returns which way the profile falls.
   *
   * @return level for a T profile that lies on two floors of one height, else from the higher floor down; not null
   */
  public Fall fall() {
    return difference.fall();
  }

  /**
   * Returns whose limit decided the kind.
   *
   * @return the source of the limit; common practice for nosings and end profiles; not null
   */
  public Source source() {
    return kind == ProfileKind.T || kind == ProfileKind.REDUCER ? verdict.source() : Source.COMMON_PRACTICE;
  }

  private static ProfileChoice step(HeightDifference difference, LevelChangeVerdict verdict) {
    if (difference.fall() == Fall.TO_HERE) {
      return new ProfileChoice(ProfileKind.END, difference, verdict, "foot of a step that is " + difference.size()
          + " high: the floor ends at its face with its gap");
    }
    return new ProfileChoice(ProfileKind.NOSING, difference, verdict, "edge of a step"
        + (difference.fall() == Fall.LEVEL ? "" : ", " + heights(difference)));
  }

  private static ProfileChoice sameFloor(HeightDifference difference, LevelChangeVerdict verdict) {
    LevelChangeSet set = verdict.set();
    Length size = difference.size();
    if (difference.fall() == Fall.LEVEL) {
      return new ProfileChoice(ProfileKind.T, difference, verdict, "both sides at one height");
    }
    String heights = heights(difference);
    return switch (verdict.treatment()) {
      case NONE, T_PROFILE -> new ProfileChoice(ProfileKind.T, difference, verdict, heights + ", within the "
          + most(set, verdict.treatment()) + " that need no reducer by '" + set + "'");
      case REDUCER, BEVEL, THRESHOLD -> new ProfileChoice(ProfileKind.REDUCER, difference, verdict, heights
          + verdict.run().map(run -> ", at least " + run + " long across at " + verdict.slope().orElseThrow()).orElse(""));
      case RAMP, NOT_STATED -> new ProfileChoice(ProfileKind.END, difference, verdict, heights
          + ", more than a reducer takes up by '" + set + "': " + verdict.run().map(run -> "a ramp of at least " + run
              + " is needed beside it").orElse("a ramp or a step is needed beside it"));
    };
  }

  private static Length most(LevelChangeSet set, LevelTreatment treatment) {
    return set.limits().stream().filter(one -> one.treatment() == treatment).flatMap(one -> one.upTo().stream())
        .reduce(Length.ZERO, Length::max);
  }

  private static String heights(HeightDifference difference) {
    return switch (difference.fall()) {
      case LEVEL -> "at one height";
      case TO_BEYOND -> difference + ", falls to the floor beyond";
      case TO_HERE -> difference + ", falls to this floor";
    };
  }
}
