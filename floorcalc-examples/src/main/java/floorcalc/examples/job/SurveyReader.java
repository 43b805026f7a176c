package floorcalc.examples.job;

import floorcalc.measure.Length;
import floorcalc.outline.survey.Survey;
import floorcalc.outline.survey.SurveyUncertainty;
import floorcalc.outline.survey.SurveyWall;
import floorcalc.outline.survey.Tie;
import floorcalc.outline.survey.Turn;
import floorcalc.outline.survey.WallOffset;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the {@code survey} of a room: what was measured of it. */
final class SurveyReader {
  private static final List<String> FIELDS = List.of("walls", "rightAngles", "ties", "offsets", "arcs", "uncertainty");
  private static final BigDecimal HALF_TURN = BigDecimal.valueOf(180);
  private static final Map<String, Turn> TURNS = new LinkedHashMap<>();

  static {
    TURNS.put("left", Turn.LEFT);
    TURNS.put("right", Turn.RIGHT);
  }

  private final Fields survey;
  /** The walls as far as they could be read: where a length could not, nothing is held against it. */
  private final List<Optional<SurveyWall>> walls = new ArrayList<>();

  private SurveyReader(Fields survey) {
    this.survey = survey;
  }

  static Optional<Survey> read(Value value) {
    return value.object("the measured walls, ties, offsets and arcs of the room", FIELDS)
        .flatMap(fields -> new SurveyReader(fields).read());
  }

  private Optional<Survey> read() {
    long before = survey.mistakes().count();
    List<Value> items = survey.required("walls", "an array of at least 3 measured walls")
        .map(list -> list.items("measured walls", 3, JobLimits.WALLS)).orElse(List.of());
    items.forEach(item -> walls.add(item.object("a measured wall", List.of("length", "turn")).flatMap(SurveyReader::wall)));
    Optional<Boolean> rightAngles = survey.optional("rightAngles").flatMap(Value::trueOrFalse);
    List<Tie> ties = new ArrayList<>();
    items("ties", "ties", JobLimits.TIES).forEach(item ->
        item.object("a tie", List.of("from", "to", "length")).flatMap(this::tie).ifPresent(ties::add));
    boolean[] arched = new boolean[walls.size()];
    items("arcs", "arcs", JobLimits.WALLS).forEach(item ->
        item.object("an arc", List.of("wall", "rise")).ifPresent(arc -> arc(arc, arched)));
    List<WallOffset> offsets = offsets(arched);
    SurveyUncertainty uncertainty = survey.optional("uncertainty")
        .flatMap(value -> value.object("standard deviations", List.of("length", "lengthPerMetre", "turn")))
        .map(SurveyReader::uncertainty).orElse(SurveyUncertainty.TAPE);
    if (survey.mistakes().count() > before) {
      return Optional.empty();
    }
    Survey read = Survey.of(walls.stream().map(Optional::orElseThrow).toList()).withTies(ties).withOffsets(offsets)
        .withUncertainty(uncertainty);
    return Optional.of(rightAngles.orElseGet(() -> saysNothingOfCorners(read))
        ? read.withCorners(Survey.Corners.RIGHT_ANGLES) : read);
  }

  /** Where neither a tie nor a turn was measured, nobody doubted that the corners are square, if so many walls can have square corners alone. */
  private static boolean saysNothingOfCorners(Survey survey) {
    return survey.size() % 2 == 0 && survey.ties().isEmpty() && survey.walls().stream().noneMatch(wall -> wall.turn().isMeasured());
  }

  private List<Value> items(String name, String what, int most) {
    return survey.optional(name).map(list -> list.items(what, 0, most)).orElse(List.of());
  }

  private static Optional<SurveyWall> wall(Fields wall) {
    Optional<Length> length = wall.requiredLength("length", LengthRange.SIZE);
    Optional<Turn> turn = wall.optional("turn").flatMap(SurveyReader::turn);
    return length.map(measured -> SurveyWall.of(measured).then(turn.orElse(Turn.UNKNOWN)));
  }

  private static Optional<Turn> turn(Value value) {
    String allowed = "or a number of degrees to the left, more than -180 and less than 180";
    if (!value.isNumber()) {
      return value.choice(TURNS, allowed);
    }
    Optional<BigDecimal> degrees = value.number(HALF_TURN.negate(), HALF_TURN, ", both ends excluded: degrees to the left, to the"
        + " right negative");
    if (degrees.isPresent() && degrees.get().abs().compareTo(HALF_TURN) == 0) {
      return value.refuse(Words.oneOf(TURNS.keySet()) + " " + allowed + "; a wall cannot run back along the one before it");
    }
    return degrees.map(number -> Turn.ofDegrees(number.doubleValue()));
  }

  private Optional<Tie> tie(Fields tie) {
    Optional<Integer> from = number(tie, "from");
    Optional<Integer> to = number(tie, "to");
    Optional<Length> length = tie.requiredLength("length", LengthRange.SIZE);
    if (from.isPresent() && from.equals(to)) {
      tie.mistake("to", "found " + to.get() + ", the same as from; a tie runs between two different corners");
      return Optional.empty();
    }
    return from.isPresent() && to.isPresent() && length.isPresent()
        ? Optional.of(new Tie(from.get(), to.get(), length.get())) : Optional.empty();
  }

  private void arc(Fields arc, boolean[] arched) {
    Optional<Integer> number = number(arc, "wall");
    Optional<Length> rise = arc.requiredLength("rise", LengthRange.ANYWHERE);
    if (number.isEmpty() || number.get() > walls.size()) {
      return;
    }
    int index = number.get() - 1;
    if (arched[index]) {
      arc.mistake(Mistake.Kind.GIVEN_TWICE, "wall", "found " + number.get() + " a second time; a wall has one arc");
    }
    arched[index] = true;
    Optional<SurveyWall> wall = walls.get(index);
    if (wall.isPresent() && rise.isPresent()) {
      if (rise.get().abs().multipliedBy(2).compareTo(wall.get().length()) > 0) {
        arc.mistake("rise", "found " + rise.get() + ", more than half of wall " + number.get() + ", "
            + wall.get().length() + " from corner to corner; must be at most half of it, a half circle: give a longer arc as"
            + " two walls with a corner between");
      } else {
        walls.set(index, Optional.of(wall.get().arched(rise.get())));
      }
    }
  }

  private List<WallOffset> offsets(boolean[] arched) {
    List<WallOffset> offsets = new ArrayList<>();
    Length[] reached = new Length[walls.size()];
    for (Value item : items("offsets", "offsets", JobLimits.OFFSETS)) {
      item.object("an offset", List.of("wall", "at", "distance"))
          .flatMap(offset -> offset(offset, arched, reached)).ifPresent(offsets::add);
    }
    return offsets;
  }

  private Optional<WallOffset> offset(Fields offset, boolean[] arched, Length[] reached) {
    Optional<Integer> number = number(offset, "wall");
    Optional<Length> at = offset.requiredLength("at", LengthRange.SIZE_OR_ZERO);
    Optional<Length> distance = offset.requiredLength("distance", LengthRange.ANYWHERE);
    if (number.isEmpty() || number.get() > walls.size() || at.isEmpty() || distance.isEmpty()) {
      return Optional.empty();
    }
    int index = number.get() - 1;
    if (arched[index]) {
      offset.mistake("wall", "found " + number.get() + ", which has an arc too; give one of the two: an arc over its chord, or"
          + " points off the straight line");
    }
    Optional<Length> length = walls.get(index).map(SurveyWall::length);
    if (length.isPresent() && at.get().compareTo(length.get()) > 0) {
      offset.mistake("at", "found " + at.get() + ", beyond the end of wall " + number.get() + "; must be at most its length, "
          + length.get() + ", measured from its first corner");
    } else if (reached[index] != null && at.get().compareTo(reached[index]) < 0) {
      offset.mistake("at", "found " + at.get() + " behind " + reached[index] + " of the same wall; must be in the order in"
          + " which the wall is walked");
    }
    reached[index] = at.get();
    return Optional.of(new WallOffset(number.get(), at.get(), distance.get()));
  }

  /** The number of a wall or a corner. */
  private Optional<Integer> number(Fields fields, String name) {
    int most = walls.isEmpty() ? JobLimits.WALLS : walls.size();
    return fields.required(name, "a whole number from 1 to " + most).flatMap(value -> value.wholeNumber(1, most));
  }

  private static SurveyUncertainty uncertainty(Fields fields) {
    SurveyUncertainty tape = SurveyUncertainty.TAPE;
    Length length = fields.optionalLength("length", LengthRange.DEVIATION).orElse(tape.length());
    Length perMetre = fields.optionalLength("lengthPerMetre", LengthRange.DEVIATION_PER_METRE).orElse(tape.lengthPerMetre());
    double turn = fields.optional("turn")
        .flatMap(value -> value.number(JobLimits.LEAST_TURN_DEVIATION, JobLimits.MOST_TURN_DEVIATION, ", in degrees"))
        .map(BigDecimal::doubleValue).orElse(tape.turnDegrees());
    return new SurveyUncertainty(length, perMetre, turn);
  }
}
