package floorcalc.plan;

import floorcalc.bays.ExpansionBreak;
import floorcalc.bays.Opening;
import floorcalc.outline.Outline;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.site.SiteReadings;
import floorcalc.underlay.RoomUse;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A room as it stands: its outline and what is fixed in it.
 *
 * @param name its name, not null, not blank, used to name its bays
 * @param outline the walls and voids, not null; one with faults is refused when the job is planned
 * @param doors its door openings, not null
 * @param pipes its pipes, not null
 * @param subfloor what the floor is laid on, not null
 * @param site what was read on site, not null
 * @param survey the measurements that the outline follows from, if it does; not null
 * @param openings doorways inside the outline, where one outline holds several rooms; not null
 * @param breaks its expansion breaks if the job fixes them, an empty list for none at all; where the job says nothing they are
 *     looked for; not null
 * @param use how it is used, not null
 * @since 0.1
 */
public record Room(String name, Outline outline, List<Door> doors, List<Pipe> pipes, Subfloor subfloor, SiteReadings site,
    Optional<Calculated<SurveyReport>> survey, List<Opening> openings, Optional<List<ExpansionBreak>> breaks,
    RoomUse use) implements Serializable {
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
    Objects.requireNonNull(survey, "survey");
    openings = List.copyOf(openings);
    breaks = breaks.map(List::copyOf);
    Objects.requireNonNull(use, "use");
  }

  /**
   * Returns a dry room without doors or pipes on a subfloor that is not stated, of whose site nothing was read.
   *
   * @param name its name, not null, not blank
   * @param outline the walls and voids, not null
   * @return the room, not null
   */
  public static Room of(String name, Outline outline) {
    return new Room(name, outline, List.of(), List.of(), Subfloor.NOT_STATED, SiteReadings.NONE,
        Optional.empty(), List.of(), Optional.empty(), RoomUse.DRY);
  }

  /**
   * Returns a room as it was measured, with nothing else known of it.
   *
   * @param name its name, not null, not blank
   * @param survey what its measurements came to, not null
   * @return the room with the surveyed outline, not null
   * @throws IllegalArgumentException if the name is blank or the measurements fix no shape, with what they lack
   */
  public static Room of(String name, Calculated<SurveyReport> survey) {
    Objects.requireNonNull(name, "name");
    return of(name, survey.value().room().orElseThrow(() -> new IllegalArgumentException(name + ": "
        + survey.findings().stream().map(Finding::message).collect(Collectors.joining("; ")))).outline()).withSurvey(survey);
  }

  /**
   * Returns the same room with doors.
   *
   * @param inWalls the door openings, not null
   * @return the room, not null
   */
  public Room withDoors(List<Door> inWalls) {
    Objects.requireNonNull(inWalls, "inWalls");
    return new Room(name, outline, inWalls, pipes, subfloor, site, survey, openings, breaks, use);
  }

  /**
   * Returns the same room with pipes.
   *
   * @param risers the pipes, not null
   * @return the room, not null
   */
  public Room withPipes(List<Pipe> risers) {
    Objects.requireNonNull(risers, "risers");
    return new Room(name, outline, doors, risers, subfloor, site, survey, openings, breaks, use);
  }

  /**
   * Returns the same room on a subfloor.
   *
   * @param base what the floor is laid on, not null
   * @return the room, not null
   */
  public Room withSubfloor(Subfloor base) {
    Objects.requireNonNull(base, "base");
    return new Room(name, outline, doors, pipes, base, site, survey, openings, breaks, use);
  }

  /**
   * Returns the same room with what was read on site.
   *
   * @param readings the readings, not null
   * @return the room, not null
   */
  public Room withSite(SiteReadings readings) {
    Objects.requireNonNull(readings, "readings");
    return new Room(name, outline, doors, pipes, subfloor, readings, survey, openings, breaks, use);
  }

  /**
   * Returns the same room with the measurements that its outline follows from. The outline stays: give the one of the
   * survey, with voids as there are.
   *
   * @param measured what the measurements came to, not null
   * @return the room, not null
   */
  public Room withSurvey(Calculated<SurveyReport> measured) {
    Objects.requireNonNull(measured, "measured");
    return new Room(name, outline, doors, pipes, subfloor, site, Optional.of(measured), openings, breaks, use);
  }

  /**
   * Returns the same room with doorways inside its outline.
   *
   * @param doorways the doorways, not null
   * @return the room, not null
   */
  public Room withOpenings(List<Opening> doorways) {
    Objects.requireNonNull(doorways, "doorways");
    return new Room(name, outline, doors, pipes, subfloor, site, survey, doorways, breaks, use);
  }

  /**
   * Returns the same room with the expansion breaks that it shall have, in place of those that would be found.
   *
   * @param chosen the breaks, empty for none, not null
   * @return the room, not null
   */
  public Room withBreaks(List<ExpansionBreak> chosen) {
    Objects.requireNonNull(chosen, "chosen");
    return new Room(name, outline, doors, pipes, subfloor, site, survey, openings, Optional.of(chosen), use);
  }

  /**
   * Returns the same room with another use.
   *
   * @param other how it is used, not null
   * @return the room, not null
   */
  public Room withUse(RoomUse other) {
    Objects.requireNonNull(other, "other");
    return new Room(name, outline, doors, pipes, subfloor, site, survey, openings, breaks, other);
  }

  private Object writeReplace() {
    return new Form(name, outline, doors, pipes, subfloor, site, survey.orElse(null), openings, breaks.orElse(null), use);
  }

  /** What is written: an optional part by itself, or null. Reading goes through the constructor and its checks. */
  private record Form(String name, Outline outline, List<Door> doors, List<Pipe> pipes, Subfloor subfloor, SiteReadings site,
      Calculated<SurveyReport> survey, List<Opening> openings, List<ExpansionBreak> breaks,
      RoomUse use) implements Serializable {

    private Object readResolve() {
      return new Room(name, outline, doors, pipes, subfloor, site, Optional.ofNullable(survey), openings,
          Optional.ofNullable(breaks), use);
    }
  }
}
