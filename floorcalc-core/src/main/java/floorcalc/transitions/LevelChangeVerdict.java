package floorcalc.transitions;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a set asks for at a difference of height.
 *
 * @param set whose verdict it is, not null
 * @param treatment what is asked for, not null
 * @param slope the steepest slope allowed, empty if none is named; not null
 * @param run the least length of the bevel or ramp along the floor at that slope, exact, empty if none is named; not null
 * @param steeper steeper slopes that are allowed where space is limited, gentlest first; not null
 * @param source whose limit it is, not null
 * @since 0.1
 */
public record LevelChangeVerdict(LevelChangeSet set, LevelTreatment treatment, Optional<Slope> slope, Optional<Length> run,
    List<LevelChangeLimit> steeper, Source source) {
  /** Checks that no part is null and copies the list. */
  public LevelChangeVerdict {
    Objects.requireNonNull(steeper, "steeper");
    Objects.requireNonNull(set, "set");
    Objects.requireNonNull(treatment, "treatment");
    Objects.requireNonNull(slope, "slope");
    Objects.requireNonNull(run, "run");
    steeper = List.copyOf(steeper);
    Objects.requireNonNull(source, "source");
  }
}
