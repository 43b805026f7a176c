package floorcalc.plan;

import floorcalc.outline.Outline;
import floorcalc.site.SiteReadings;
import java.util.List;
import java.util.Objects;

/**
 * A room as it stands: its outline and what is fixed in it.
 *
 * @param name its name, not null, not blank, used to name its bays
 * @param outline the walls and voids, not null; one with faults is refused when the job is planned
 * @param doors its door openings, not null
 * @param pipes its pipes, not null
 * @param subfloor what the floor is laid on, not null
 * @param site what was read on site, not null
 */
public record Room(String name, Outline outline, List<Door> doors, List<Pipe> pipes, Subfloor subfloor, SiteReadings site) {
  /** Checks that no part is null and that the name is not blank. */
  public Room {
    if (Objects.requireNonNull(name, "name").isBlank()) {
      throw new IllegalArgumentException("a room needs a name that is not blank");
    }
    Objects.requireNonNull(outline, "outline");
    doors = List.copyOf(doors);
    pipes = List.copyOf(pipes);
    Objects.requireNonNull(subfloor, "subfloor");
    Objects.requireNonNull(site, "site");
  }

  /**
   * Returns a room without doors or pipes on a subfloor that is not stated, of whose site nothing was read.
   *
   * @param name its name, not null, not blank
   * @param outline the walls and voids, not null
   * @return the room, not null
   */
  public static Room of(String name, Outline outline) {
    return new Room(name, outline, List.of(), List.of(), Subfloor.NOT_STATED, SiteReadings.NONE);
  }

  /**
   * Returns the same room with doors.
   *
   * @param openings the door openings, not null
   * @return the room, not null
   */
  public Room withDoors(List<Door> openings) {
    return new Room(name, outline, openings, pipes, subfloor, site);
  }

  /**
   * Returns the same room with pipes.
   *
   * @param risers the pipes, not null
   * @return the room, not null
   */
  public Room withPipes(List<Pipe> risers) {
    return new Room(name, outline, doors, risers, subfloor, site);
  }

  /**
   * Returns the same room on a subfloor.
   *
   * @param base what the floor is laid on, not null
   * @return the room, not null
   */
  public Room withSubfloor(Subfloor base) {
    return new Room(name, outline, doors, pipes, base, site);
  }

  /**
   * Returns the same room with what was read on site.
   *
   * @param readings the readings, not null
   * @return the room, not null
   */
  public Room withSite(SiteReadings readings) {
    return new Room(name, outline, doors, pipes, subfloor, readings);
  }
}
