package floorcalc.examples.job;

import floorcalc.bays.ThroughBreaks;
import floorcalc.boards.BoardGoods;
import floorcalc.boards.OffcutUse;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.plan.DirectionChoice;
import floorcalc.rules.AtDoorways;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleKey;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the {@code laying} of a job: the rules and choices that differ from common practice. */
final class LayingReader {
  private static final List<String> FIELDS = List.of("expansionGap", "minimumRowWidth", "minimumEndPiece",
      "minimumJointOffset", "sawKerf", "spareShare", "direction", "offcuts", "maximumRun",
      "breakGap", "deepestRecess", "widestVoid", "atDoorways", "throughBreaks");
  private static final BigDecimal FULL_TURN = BigDecimal.valueOf(360);
  private static final Map<String, OffcutUse> OFFCUTS = new LinkedHashMap<>();
  private static final Map<String, DirectionChoice> DIRECTIONS = new LinkedHashMap<>();
  private static final Map<String, AtDoorways> DOORWAYS = new LinkedHashMap<>();
  private static final Map<String, ThroughBreaks> THROUGH = new LinkedHashMap<>();

  static {
    OFFCUTS.put("in-laying-order", OffcutUse.IN_LAYING_ORDER);
    OFFCUTS.put("cut-ahead", OffcutUse.CUT_AHEAD);
    DIRECTIONS.put("longest-wall", DirectionChoice.LONGEST_WALL);
    DIRECTIONS.put("fewest-boards", DirectionChoice.FEWEST_BOARDS);
    DOORWAYS.put("break", AtDoorways.BREAK);
    DOORWAYS.put("run-through", AtDoorways.RUN_THROUGH);
    THROUGH.put("each-bay-its-own", ThroughBreaks.EACH_BAY_ITS_OWN);
    THROUGH.put("one-start-line", ThroughBreaks.ONE_START_LINE);
  }

  private LayingReader() {
  }

  /** What was read; the goods are left out if they could not be read, and checks against them with them. */
  record Laying(LayingRules rules, DirectionChoice direction, OffcutUse offcuts, ThroughBreaks throughBreaks) {
    static Laying defaults(LayingRules rules) {
      return new Laying(rules, DirectionChoice.LONGEST_WALL, OffcutUse.IN_LAYING_ORDER,
          ThroughBreaks.EACH_BAY_ITS_OWN);
    }
  }

  static Laying read(Optional<Value> value, Optional<BoardGoods> goods) {
    LayingRules defaults = goods
        .map(board -> RuleSet.COMMON_PRACTICE.forBoard(board.thickness(), board.coverWidth()))
        .orElseGet(() -> RuleSet.COMMON_PRACTICE.forBoard(Length.ofMillimetres(14), Length.ofMillimetres(185)));
    return value.flatMap(laying -> laying.object("rules and choices for laying", FIELDS))
        .map(fields -> laying(fields, defaults, goods)).orElse(Laying.defaults(defaults));
  }

  private static Laying laying(Fields fields, LayingRules defaults, Optional<BoardGoods> goods) {
    Optional<Length> endPiece = length(fields, "minimumEndPiece", LayingRules.MINIMUM_END_PIECE);
    Optional<Length> offset = length(fields, "minimumJointOffset", LayingRules.MINIMUM_JOINT_OFFSET);
    Optional<Length> kerf = length(fields, "sawKerf", LayingRules.SAW_KERF);
    LayingRules rules = defaults;
    rules = with(rules, LayingRules.EXPANSION_GAP, length(fields, "expansionGap", LayingRules.EXPANSION_GAP));
    rules = with(rules, LayingRules.MINIMUM_ROW_WIDTH, length(fields, "minimumRowWidth", LayingRules.MINIMUM_ROW_WIDTH));
    rules = with(rules, LayingRules.MINIMUM_END_PIECE, endPiece);
    rules = with(rules, LayingRules.MINIMUM_JOINT_OFFSET, offset);
    rules = with(rules, LayingRules.SAW_KERF, kerf);
    rules = with(rules, LayingRules.SPARE_SHARE, fields.optional("spareShare")
        .flatMap(share -> share.number(LayingRules.SPARE_SHARE.least(), LayingRules.SPARE_SHARE.most())));
    DirectionChoice direction =
        fields.optional("direction").flatMap(LayingReader::direction).orElse(DirectionChoice.LONGEST_WALL);
    OffcutUse offcuts =
        fields.optional("offcuts").flatMap(use -> use.choice(OFFCUTS)).orElse(OffcutUse.IN_LAYING_ORDER);
    rules = breaks(fields, maximumRun(fields, rules));
    ThroughBreaks through =
        fields.optional("throughBreaks").flatMap(way -> way.choice(THROUGH)).orElse(ThroughBreaks.EACH_BAY_ITS_OWN);
    goods.ifPresent(board -> compare(fields, board, endPiece, offset, kerf));
    return new Laying(rules, direction, offcuts, through);
  }

  private static LayingRules maximumRun(Fields fields, LayingRules rules) {
    Optional<Fields> runs = fields.optional("maximumRun").flatMap(value ->
        value.object("the longest bay along and across the boards", List.of("alongBoards", "acrossBoards")));
    if (runs.isEmpty()) {
      return rules;
    }
    LayingRules along = with(rules, LayingRules.MAXIMUM_RUN_ALONG,
        length(runs.get(), "alongBoards", LayingRules.MAXIMUM_RUN_ALONG));
    return with(along, LayingRules.MAXIMUM_RUN_ACROSS,
        length(runs.get(), "acrossBoards", LayingRules.MAXIMUM_RUN_ACROSS));
  }

  private static LayingRules breaks(Fields fields, LayingRules rules) {
    LayingRules with = rules;
    for (RuleKey<Length> key : List.of(LayingRules.BREAK_GAP, LayingRules.DEEPEST_RECESS, LayingRules.WIDEST_VOID)) {
      with = with(with, key, length(fields, key.name(), key));
    }
    return with(with, LayingRules.AT_DOORWAYS, fields.optional("atDoorways").flatMap(value -> value.choice(DOORWAYS)));
  }

  private static Optional<Length> length(Fields fields, String name, RuleKey<Length> key) {
    return fields.optionalLength(name, LengthRange.of(key));
  }

  private static <T> LayingRules with(LayingRules rules, RuleKey<T> key, Optional<T> value) {
    return value.map(given -> rules.with(key, given, Source.GIVEN)).orElse(rules);
  }

  private static Optional<DirectionChoice> direction(Value value) {
    String allowed = "or a number of degrees from -360 to 360";
    return value.isNumber()
        ? value.number(FULL_TURN.negate(), FULL_TURN)
            .map(degrees -> DirectionChoice.of(Direction.fromDegrees(degrees.doubleValue())))
        : value.choice(DIRECTIONS, allowed);
  }

  /** Rules that no board of this job could keep are a slip of the pen, not a poor floor. */
  private static void compare(Fields fields, BoardGoods board, Optional<Length> endPiece, Optional<Length> offset,
      Optional<Length> kerf) {
    Length longest = board.longest();
    Length shortest = board.lengths().get(board.lengths().size() - 1);
    if (endPiece.isPresent() && endPiece.get().compareTo(longest) > 0) {
      fields.mistake("minimumEndPiece", "found " + endPiece.get() + "; must be at most the length of the longest board, "
          + longest + ", or no start or end piece could keep it");
    }
    if (offset.isPresent() && offset.get().compareTo(longest) >= 0) {
      fields.mistake("minimumJointOffset", "found " + offset.get()
          + "; must be less than the length of the longest board, " + longest + ", or no two rows could keep it");
    }
    Length least = shortest.min(board.coverWidth());
    if (kerf.isPresent() && kerf.get().compareTo(least) >= 0) {
      fields.mistake("sawKerf", "found " + kerf.get() + "; must be less than the shortest side of a board, " + least
          + ", or the saw would turn all of it to dust");
    }
  }
}
