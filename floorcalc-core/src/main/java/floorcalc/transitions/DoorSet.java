package floorcalc.transitions;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A named set of limits on the spaces at the leaf of a door, as one source states them. Sources that disagree are sets of their
 * own and are never averaged; the maker of the door and the local code come before any of them, and of fire doors before all.
 * Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class DoorSet {
  /** A leaf 1/2 in to 3/4 in over the finished floor. No published source was found. */
  public static final DoorSet COMMON_PRACTICE = new DoorSet("common practice", List.of(
      limit(DoorSpace.OVER_FINISHED_FLOOR, Length.ofInches(0, 1, 2), Length.ofInches(0, 3, 4), Source.COMMON_PRACTICE)));

  /**
   * Practice to Approved Document F, England: at least 10 mm over the finished floor so that air passes from room to room, or
   * 20 mm over bare floorboards where the covering is not yet laid.
   */
  public static final DoorSet UK_VENTILATION = new DoorSet("UK ventilation", List.of(
      limit(DoorSpace.OVER_FINISHED_FLOOR, Length.ofMillimetres(10), null, ventilation("a page on door undercuts")),
      limit(DoorSpace.OVER_BARE_SUBFLOOR, Length.ofMillimetres(20), null, ventilation("a forum thread that quotes it"))));

  /** UK warranty tolerances for new homes: 5 to 22 mm under an internal door to the unfinished floor, at most 5 mm to head and jamb. */
  public static final DoorSet UK_WARRANTY = new DoorSet("UK warranty", List.of(
      limit(DoorSpace.OVER_BARE_SUBFLOOR, Length.ofMillimetres(5), Length.ofMillimetres(22), warranty()),
      limit(DoorSpace.AT_HEAD_OR_JAMB, null, Length.ofMillimetres(5), warranty())));

  private static final List<DoorSet> ALL = List.of(COMMON_PRACTICE, UK_VENTILATION, UK_WARRANTY);

  private final String name;
  private final List<DoorLimit> limits;

  private DoorSet(String name, List<DoorLimit> limits) {
    this.name = Objects.requireNonNull(name, "name");
    this.limits = List.copyOf(limits);
  }

  private static DoorLimit limit(DoorSpace space, Length least, Length most, Source source) {
    return new DoorLimit(space, Optional.ofNullable(least), Optional.ofNullable(most), source);
  }

  private static Source ventilation(String seen) {
    return new Source("Approved Document F practice, undercut of internal doors", "HM Government", 0, "as given on " + seen,
        Standing.QUOTED);
  }

  private static Source warranty() {
    return new Source("Internal tolerances for warranty of new homes", "", 0, "as given on a page on them", Standing.QUOTED);
  }

  /**
   * Returns a set of the caller's own.
   *
   * @param name its name, not null
   * @param limits the limits, not null, at least one
   * @return the set, not null
   * @throws IllegalArgumentException if there is no limit
   */
  public static DoorSet of(String name, List<DoorLimit> limits) {
    if (limits.isEmpty()) {
      throw new IllegalArgumentException("set '" + name + "' must have at least one limit");
    }
    return new DoorSet(name, limits);
  }

  /**
   * Returns all sets, common practice first.
   *
   * @return an unmodifiable list, not null
   */
  public static List<DoorSet> all() {
    return ALL;
  }

  /**
   * Returns the set of a name.
   *
   * @param name the name, as {@link #name()} gives it, not null
   * @return the set, not null
   * @throws IllegalArgumentException if there is no such set; the message lists the names
   */
  public static DoorSet named(String name) {
    Objects.requireNonNull(name, "name");
    return ALL.stream().filter(set -> set.name.equals(name)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no set of door clearances '" + name + "'; the sets are: "
            + ALL.stream().map(set -> "'" + set.name + "'").collect(Collectors.joining(", "))));
  }

  /**
   * Returns the name of the set.
   *
   * @return the name, not null
   */
  public String name() {
    return name;
  }

  /**
   * Returns the limits in the order of the source.
   *
   * @return an unmodifiable list, not null, at least one
   */
  public List<DoorLimit> limits() {
    return limits;
  }

  /**
   * Returns the name of the set.
   *
   * @return the name, not null
   */
  @Override
  public String toString() {
    return name;
  }
}
