package floorcalc.examples.job;

import floorcalc.bays.BayParts;
import floorcalc.bays.ExpansionBreak;
import floorcalc.bays.Opening;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads where a room is to be split: its expansion breaks, and doorways inside its outline. */
final class BreakReader {
  private static final Length ON_WALL = Length.ofMillimetres(1);

  private BreakReader() {
  }

  static List<ExpansionBreak> breaks(Value list, Optional<Shape> shape) {
    List<ExpansionBreak> breaks = new ArrayList<>();
    for (Value item : list.items("breaks", 0, JobLimits.BREAKS)) {
      item.object("an expansion break", List.of("from", "to"))
          .flatMap(fields -> ends(fields, shape)).map(ends -> ExpansionBreak.given(ends[0], ends[1])).ifPresent(breaks::add);
    }
    return breaks;
  }

  /** Whether the breaks part the floor; a fault of one is reported with all of them, for each may end on another. */
  static void check(Fields room, Outline outline, List<ExpansionBreak> breaks) {
    try {
      BayParts.of(outline, breaks);
    } catch (IllegalArgumentException e) {
      room.mistake("breaks", "found breaks that do not part the floor: " + e.getMessage());
    }
  }

  static List<Opening> openings(Value list, Optional<Shape> shape) {
    List<Opening> openings = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (Value item : list.items("openings", 0, JobLimits.DOORS)) {
      item.object("a doorway inside the outline", List.of("name", "from", "to"))
          .flatMap(fields -> opening(fields, shape, names)).ifPresent(openings::add);
    }
    return openings;
  }

  private static Optional<Opening> opening(Fields fields, Optional<Shape> shape, Set<String> names) {
    Optional<String> name = fields.requiredText("name");
    if (name.isPresent() && !names.add(name.get())) {
      fields.mistake(Mistake.Kind.GIVEN_TWICE, "name", "found text \"" + name.get() + "\" a second time; must be a name of its own in its room");
    }
    Optional<Point[]> ends = ends(fields, shape);
    for (int i = 0; i < 2 && ends.isPresent() && shape.isPresent(); i++) {
      Length away = shape.get().walls().toNearest(ends.get()[i]);
      if (away.isPositive() && away.compareTo(ON_WALL) > 0) {
        fields.mistake(i == 0 ? "from" : "to", "found " + ends.get()[i] + ", which is " + Shown.tenths(away)
            + " from the nearest wall; must be at most " + ON_WALL + " from it");
      }
    }
    return name.isPresent() && ends.isPresent() ? Optional.of(new Opening(name.get(), ends.get()[0], ends.get()[1]))
        : Optional.empty();
  }

  /** Both ends, put on the walls that they are near to. */
  private static Optional<Point[]> ends(Fields fields, Optional<Shape> shape) {
    Optional<Point> from = end(fields, "from", shape);
    Optional<Point> to = end(fields, "to", shape);
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    if (from.get().equals(to.get())) {
      fields.mistake("to", "found " + to.get() + ", the same as from; it must be longer than 0 mm");
      return Optional.empty();
    }
    return Optional.of(new Point[] {from.get(), to.get()});
  }

  private static Optional<Point> end(Fields fields, String side, Optional<Shape> shape) {
    return fields.required(side, PlaceReader.ON_WALL)
        .flatMap(value -> PlaceReader.onWall(value, shape.map(Shape::numbered)))
        .map(point -> shape.map(found -> found.walls().onWall(point, ON_WALL)).orElse(point));
  }
}
