package floorcalc.examples.job;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.plan.Beyond;
import floorcalc.plan.Door;
import floorcalc.plan.Pipe;
import floorcalc.transitions.Casing;
import floorcalc.transitions.FireRating;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads what is fixed in a room: doors and pipes. They are held against the walls if these could be read. */
final class FixtureReader {
  private static final Length ON_WALL = Length.ofMillimetres(1);

  private static final List<String> DOOR_FIELDS =
      List.of("name", "from", "to", "leadsTo", "beyond", "casing", "leaf", "fire");
  private static final Map<String, Casing> CASINGS = new LinkedHashMap<>();

  static {
    CASINGS.put("cut", Casing.CUT);
    CASINGS.put("cannot be cut", Casing.CANNOT_BE_CUT);
  }

  private FixtureReader() {
  }

  static List<Door> doors(Value list, Optional<Shape> shape) {
    List<Door> doors = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (Value item : list.items("doors", 0, JobLimits.DOORS)) {
      item.object("a door", DOOR_FIELDS)
          .flatMap(fields -> door(fields, shape, names)).ifPresent(doors::add);
    }
    return doors;
  }

  private static Optional<Door> door(Fields fields, Optional<Shape> shape, Set<String> names) {
    long before = fields.mistakes().count();
    Optional<String> name = fields.requiredText("name");
    if (name.isPresent() && !names.add(name.get())) {
      fields.mistake(Mistake.Kind.GIVEN_TWICE, "name", "found text \"" + name.get() + "\" a second time; must be a name of its own in its room");
    }
    Optional<Point> from = point(fields, "from", shape);
    Optional<Point> to = point(fields, "to", shape);
    String leadsTo = fields.optionalText("leadsTo").orElse("");
    Beyond beyond = fields.optional("beyond")
        .flatMap(value -> value.object("the floor beyond the door", List.of("finish", "higherBy", "aboveSubfloor")))
        .map(FixtureReader::beyond).orElse(Beyond.UNKNOWN);
    Casing casing = fields.optional("casing").flatMap(value -> value.choice(CASINGS)).orElse(Casing.NOT_STATED);
    Optional<Length> leaf = fields.optional("leaf")
        .flatMap(value -> value.object("the leaf of the door", List.of("aboveSubfloor")))
        .flatMap(one -> one.requiredLength("aboveSubfloor", LengthRange.OPENING));
    FireRating fire = fields.optional("fire").flatMap(Value::trueOrFalse)
        .map(yes -> yes ? FireRating.FIRE_DOOR : FireRating.NO_FIRE_DOOR).orElse(FireRating.NOT_STATED);
    if (fields.mistakes().count() > before || from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    if (from.get().equals(to.get())) {
      fields.mistake("to", "found " + to.get() + ", the same as from; a door must be wider than 0 mm");
      return Optional.empty();
    }
    if (shape.isPresent() && !shape.get().walls().oneWallPasses(from.get(), to.get(), ON_WALL)) {
      fields.mistake("to", "found " + to.get() + ", which is on another wall than from, or the wall bends between them; a"
          + " door must lie in one straight wall");
      return Optional.empty();
    }
    return Optional.of(new Door(name.orElseThrow(), from.get(), to.get(), leadsTo, beyond, casing, leaf, fire));
  }

  private static Optional<Point> point(Fields fields, String side, Optional<Shape> shape) {
    Optional<Point> point = fields.required(side, PlaceReader.ON_WALL)
        .flatMap(value -> PlaceReader.onWall(value, shape.map(Shape::numbered)));
    if (point.isPresent() && shape.isPresent()) {
      Length away = shape.get().walls().toNearest(point.get());
      if (away.compareTo(ON_WALL) > 0) {
        fields.mistake(side, "found " + point.get() + ", which is " + Shown.tenths(away)
            + " from the nearest wall; must be at most " + ON_WALL + " from it");
      }
    }
    return point;
  }

  private static Beyond beyond(Fields fields) {
    String finish = fields.optionalText("finish").orElse("");
    if (fields.has("higherBy") && fields.has("aboveSubfloor")) {
      fields.mistake("aboveSubfloor", "found beside higherBy; one of the two says how high the floor beyond is");
    }
    Length higherBy = fields.optionalLength("higherBy", LengthRange.HEIGHT).orElse(Length.ZERO);
    Optional<Length> aboveSubfloor = fields.optionalLength("aboveSubfloor", LengthRange.HEIGHT);
    return aboveSubfloor.map(height -> Beyond.aboveSubfloor(finish, height)).orElseGet(() -> new Beyond(finish, higherBy));
  }

  static List<Pipe> pipes(Value list, Optional<Shape> shape) {
    List<Pipe> pipes = new ArrayList<>();
    for (Value item : list.items("pipes", 0, JobLimits.PIPES)) {
      item.object("a pipe", List.of("at", "diameter")).flatMap(fields -> pipe(fields, shape)).ifPresent(pipes::add);
    }
    return pipes;
  }

  private static Optional<Pipe> pipe(Fields fields, Optional<Shape> shape) {
    Optional<Point> at = fields.required("at", PlaceReader.IN_ROOM)
        .flatMap(value -> PlaceReader.inRoom(value, shape.map(Shape::numbered)));
    Optional<Length> diameter = fields.requiredLength("diameter", LengthRange.THICKNESS);
    if (at.isPresent() && shape.isPresent() && !shape.get().walls().onFloor(at.get())) {
      fields.mistake("at", "found " + at.get() + ", which is not on the floor of the room; must be inside its outline"
          + " and outside its voids");
      return Optional.empty();
    }
    return at.isPresent() && diameter.isPresent() ? Optional.of(new Pipe(at.get(), diameter.get())) : Optional.empty();
  }
}
