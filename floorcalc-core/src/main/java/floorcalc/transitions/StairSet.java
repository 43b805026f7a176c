package floorcalc.transitions;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Limits on the risers of a stair under one name. The local building code comes first: stairs are where people fall.
 *
 * @param name its name, not null
 * @param spread the greatest difference between any two risers, not null
 * @param highest the highest riser, empty if none is named; not null
 * @param source whose limits they are, not null
 * @since 0.1
 */
public record StairSet(String name, Length spread, Optional<Length> highest, Source source) {
  /** Checks that no part is null. */
  public StairSet {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(spread, "spread");
    Objects.requireNonNull(highest, "highest");
    Objects.requireNonNull(source, "source");
  }

  /** What is heard in the US: risers within 3/8 in of each other, none above 7 3/4 in. No published source was found. */
  public static final StairSet COMMON_PRACTICE_US = new StairSet("common practice, US", Length.ofInches(0, 3, 8),
      Optional.of(Length.ofInches(7, 3, 4)), Source.COMMON_PRACTICE);

  /** What was heard from one voice in Canada: risers within 1/4 in of each other. No published source was found. */
  public static final StairSet COMMON_PRACTICE_CANADA = new StairSet("common practice, Canada", Length.ofInches(0, 1, 4),
      Optional.empty(), Source.COMMON_PRACTICE);

  /**
   * Returns all sets.
   *
   * @return an unmodifiable list, not null
   */
  public static List<StairSet> all() {
    return List.of(COMMON_PRACTICE_US, COMMON_PRACTICE_CANADA);
  }

  /**
   * Returns the set of a name.
   *
   * @param name the name, not null
   * @return the set, not null
   * @throws IllegalArgumentException if there is no such set; the message lists the names
   */
  public static StairSet named(String name) {
    Objects.requireNonNull(name, "name");
    return all().stream().filter(set -> set.name.equals(name)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no set of stair limits '" + name + "'; the sets are: "
            + all().stream().map(set -> "'" + set.name + "'").collect(Collectors.joining(", "))));
  }
}
