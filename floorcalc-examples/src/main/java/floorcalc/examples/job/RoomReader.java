package floorcalc.examples.job;

import floorcalc.bays.ExpansionBreak;
import floorcalc.bays.Opening;
import floorcalc.outline.survey.Survey;
import floorcalc.plan.Door;
import floorcalc.plan.Pipe;
import floorcalc.plan.Room;
import floorcalc.plan.Subfloor;
import floorcalc.site.SiteReadings;
import floorcalc.underlay.RoomUse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads one of the {@code rooms} of a job. */
final class RoomReader {
  private static final List<String> FIELDS =
      List.of("name", "outline", "survey", "voids", "doors", "pipes", "subfloor", "wet", "site", "openings", "breaks");
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

  /**
   * What was read of a room and its place in the file; a room that was not read to be laid may have a survey alone.
   *
   * @param name its name
   * @param room the room, if its shape is known
   * @param survey its survey, if it has one
   * @param fields where it stands
   */
  record Read(String name, Optional<Room> room, Optional<Survey> survey, Fields fields) {
  }

  static Optional<Read> read(Value value, Purpose purpose) {
    return value.object("a room", FIELDS).flatMap(fields -> room(fields, purpose));
  }

  private static Optional<Read> room(Fields fields, Purpose purpose) {
    long before = fields.mistakes().count();
    Optional<String> name = fields.requiredText("name");
    ShapeReader.Read read = ShapeReader.read(fields, purpose);
    Optional<Shape> shape = read.shape();
    List<Door> doors = fields.optional("doors").map(list -> FixtureReader.doors(list, shape)).orElse(List.of());
    List<Pipe> pipes = fields.optional("pipes").map(list -> FixtureReader.pipes(list, shape)).orElse(List.of());
    Subfloor subfloor =
        fields.optional("subfloor").flatMap(value -> value.choice(SUBFLOORS)).orElse(Subfloor.NOT_STATED);
    List<Opening> openings = fields.optional("openings").map(list -> BreakReader.openings(list, shape)).orElse(List.of());
    Optional<List<ExpansionBreak>> breaks = fields.optional("breaks").map(list -> BreakReader.breaks(list, shape));
    RoomUse use = fields.optional("wet").flatMap(Value::trueOrFalse).filter(wet -> wet).map(wet -> RoomUse.WET).orElse(RoomUse.DRY);
    SiteReadings site = SiteReader.read(fields.optional("site"));
    if (fields.mistakes().count() == before && shape.isPresent() && breaks.isPresent()) {
      BreakReader.check(fields, shape.get().outline(), breaks.get());
    }
    if (fields.mistakes().count() > before) {
      return Optional.empty();
    }
    Optional<Room> room = shape.map(found -> new Room(name.orElseThrow(), found.outline(), doors, pipes, subfloor, site,
        found.survey(), openings, breaks, use));
    return Optional.of(new Read(name.orElseThrow(), room, read.survey(), fields));
  }
}
