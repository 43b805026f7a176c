package floorcalc.underlay;

import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.OutlineCheck;
import floorcalc.outline.OutlineFault;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A floor that is covered by strips off rolls.
 *
 * @param name its name, not null
 * @param outline the walls and voids, not null, sound by {@link OutlineCheck}
 * @param ways the directions in which strips may run; the best is chosen; not null, not empty
 * @since 0.1
 */
public record CoveredRoom(String name, Outline outline, List<Direction> ways) {
  /** Checks that no part is null, that there is a way and that the outline is sound. */
  public CoveredRoom {
    Objects.requireNonNull(ways, "ways");
    Objects.requireNonNull(name, "name");
    ways = List.copyOf(ways);
    if (ways.isEmpty()) {
      throw new IllegalArgumentException(name + ": there is no direction for the strips; give at least one");
    }
    List<OutlineFault> faults = OutlineCheck.faultsOf(outline);
    if (!faults.isEmpty()) {
      throw new IllegalArgumentException(name + ": the outline is not sound: "
          + faults.stream().map(OutlineFault::message).collect(Collectors.joining(" | ")));
    }
  }

  /**
   * Returns a floor whose strips may run along a direction or square to it.
   *
   * @param name its name, not null
   * @param outline the walls and voids, not null, sound
   * @param one the one direction, not null
   * @return the floor, not null
   * @throws IllegalArgumentException if the outline is not sound
   */
  public static CoveredRoom bothWays(String name, Outline outline, Direction one) {
    return new CoveredRoom(name, outline, List.of(one, one.plusQuarterTurns(1)));
  }

  /**
   * Returns a floor whose strips run in one direction.
   *
   * @param name its name, not null
   * @param outline the walls and voids, not null, sound
   * @param only the direction, not null
   * @return the floor, not null
   * @throws IllegalArgumentException if the outline is not sound
   */
  public static CoveredRoom oneWay(String name, Outline outline, Direction only) {
    Objects.requireNonNull(only, "only");
    return new CoveredRoom(name, outline, List.of(only));
  }
}
