package floorcalc.examples.job;

import floorcalc.outline.Outline;
import floorcalc.outline.OutlineCheck;
import floorcalc.outline.OutlineFault;
import floorcalc.outline.Ring;
import floorcalc.plan.Door;
import floorcalc.plan.Pipe;
import floorcalc.plan.Room;
import floorcalc.plan.Subfloor;
import floorcalc.site.SiteReadings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads one of the {@code rooms} of a job. */
final class RoomReader {
  private static final List<String> FIELDS =
      List.of("name", "outline", "survey", "voids", "doors", "pipes", "subfloor", "site");
  private static final Map<String, Subfloor> SUBFLOORS = new LinkedHashMap<>();

  static {
    SUBFLOORS.put("concrete", Subfloor.CONCRETE);
    SUBFLOORS.put("screed", Subfloor.SCREED);
    SUBFLOORS.put("timber", Subfloor.TIMBER);
    SUBFLOORS.put("sheet", Subfloor.SHEET);
    SUBFLOORS.put("old floor", Subfloor.OLD_FLOOR);
  }

  private RoomReader() {
  }

  /** A room and its place in the file. */
  record Read(Room room, Fields fields) {
  }

  static Optional<Read> read(Value value) {
    return value.object("a room", FIELDS).flatMap(RoomReader::room);
  }

  private static Optional<Read> room(Fields fields) {
    long before = fields.mistakes().count();
    Optional<String> name = fields.requiredText("name");
    Optional<Outline> outline = outline(fields);
    List<Door> doors = fields.optional("doors").map(list -> FixtureReader.doors(list, outline)).orElse(List.of());
    List<Pipe> pipes = fields.optional("pipes").map(list -> FixtureReader.pipes(list, outline)).orElse(List.of());
    Subfloor subfloor =
        fields.optional("subfloor").flatMap(value -> value.choice(SUBFLOORS)).orElse(Subfloor.NOT_STATED);
    SiteReadings site = SiteReader.read(fields.optional("site"));
    if (fields.mistakes().count() > before) {
      return Optional.empty();
    }
    Room room = new Room(name.orElseThrow(), outline.orElseThrow(), doors, pipes, subfloor, site, Optional.empty());
    return Optional.of(new Read(room, fields));
  }

  private static Optional<Outline> outline(Fields fields) {
    if (fields.has("survey")) {
      fields.mistake("survey", fields.has("outline")
          ? "stands beside outline; give one of the two, and this version works with an outline only"
          : "found a survey; this version does not work out surveys, give the corners of the room as outline");
      if (!fields.has("outline")) {
        return Optional.empty();
      }
    }
    long before = fields.mistakes().count();
    Optional<Ring> shell = fields.required("outline", "an array of at least 3 corners [x, y]").flatMap(RingReader::ring);
    List<Ring> voids = new ArrayList<>();
    fields.optional("voids").ifPresent(list -> {
      for (Value ring : list.items("rings of corners", 0, JobLimits.VOIDS)) {
        RingReader.ring(ring).ifPresent(voids::add);
      }
    });
    if (fields.mistakes().count() > before) {
      return Optional.empty();
    }
    for (OutlineFault fault : OutlineCheck.faultsOf(shell.orElseThrow(), voids)) {
      Place place = fault.ring() == 0 ? fields.place().field("outline")
          : fields.place().field("voids").item(fault.ring() - 1);
      fields.mistakes().add(place, fault.message());
    }
    return fields.mistakes().count() > before ? Optional.empty() : Optional.of(Outline.of(shell.get(), voids));
  }
}
