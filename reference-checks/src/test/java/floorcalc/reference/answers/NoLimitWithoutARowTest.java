package floorcalc.reference.answers;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.deviations.AngleLimit;
import floorcalc.deviations.AngleSet;
import floorcalc.deviations.BoardSize;
import floorcalc.deviations.DeviationLimit;
import floorcalc.deviations.DeviationSet;
import floorcalc.deviations.LevelMeasure;
import floorcalc.deviations.OutOfLevelLimit;
import floorcalc.deviations.OutOfLevelSet;
import floorcalc.deviations.SizeSet;
import floorcalc.deviations.TapeRules;
import floorcalc.measure.Length;
import floorcalc.moisture.BoardMoistureLimits;
import floorcalc.moisture.ClimateLimits;
import floorcalc.moisture.MoistureLimit;
import floorcalc.moisture.MoistureLimits;
import floorcalc.movement.Coefficient;
import floorcalc.movement.SpeciesTable;
import floorcalc.reference.Suite;
import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.ReferenceCase;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleKey;
import floorcalc.rules.RuleSet;
import floorcalc.transitions.DoorSet;
import floorcalc.transitions.LevelChangeLimit;
import floorcalc.transitions.LevelChangeSet;
import floorcalc.transitions.StairSet;
import floorcalc.underlay.Lap;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** No named set of the library has a limit that the suite does not ask for: none is invented, and none rests on a row recalled from memory unless it says so. */
@Tag("reference")
class NoLimitWithoutARowTest {
  private static final List<ReferenceCase> CASES = Suite.cases();

  private static Stream<ReferenceCase> asked(String calculation) {
    return CASES.stream().filter(one -> one.question().calculation().equals(calculation));
  }

  /** What is asked of the source of each set, put into words. */
  private static Set<String> askedOf(String calculation, Function<Question, String> set, Function<Expected, String> figure) {
    return asked(calculation).flatMap(one -> one.expected().stream().map(expected -> set.apply(one.question()) + " " + figure.apply(expected)))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void limitsOfSubfloors() {
    Set<String> asked = askedOf("most-moisture-of-subfloor", question -> MoistureLimitAnswers.SUBFLOORS.get(question.text("source")).name() + ", "
        + question.text("method"), figure -> figure.figure().equals("most") ? new java.math.BigDecimal(figure.printed()).stripTrailingZeros().toPlainString() : "");
    for (MoistureLimits set : MoistureLimits.all()) {
      for (MoistureLimit limit : set.limits()) {
        assertThat(asked).contains(set.name() + ", " + limit.method().words() + " " + limit.most().stripTrailingZeros().toPlainString());
        assertKnown(limit.source());
      }
    }
  }

  @Test
  void rangesOfAirAndBoards() {
    Set<String> air = askedOf("air-for-wood-floors", question -> MoistureLimitAnswers.AIR.get(question.text("source")).name(), Expected::figure);
    for (ClimateLimits set : ClimateLimits.all()) {
      assertThat(air).contains(set.name() + " dampestPercent");
      assertThat(air.contains(set.name() + " coldestCelsius") || air.contains(set.name() + " coldestFahrenheit")).as(set.name())
          .isEqualTo(set.coldest().isPresent());
      assertKnown(set.source());
    }
    Set<String> boards = askedOf("moisture-of-boards", question -> MoistureLimitAnswers.BOARDS.get(question.text("source") + ": " + question.text("boards")),
        Expected::figure);
    for (BoardMoistureLimits range : BoardMoistureLimits.all()) {
      assertThat(boards).contains(range.name() + " lowPercent", range.name() + " highPercent");
      assertKnown(range.source());
    }
  }

  /** What a set has of its own, beside common practice, is asked for, and so are gap, offset, row and runs of common practice. */
  @Test
  void rulesOfPlans() {
    Map<RuleKey<Length>, String> calculations = Map.of(LayingRules.EXPANSION_GAP, "expansion-gap", LayingRules.MINIMUM_JOINT_OFFSET, "joint-offset",
        LayingRules.MINIMUM_ROW_WIDTH, "narrowest-row", LayingRules.MAXIMUM_RUN_ACROSS, "longest-floor-without-a-break");
    for (RuleSet set : RuleSet.all()) {
      LayingRules rules = set.forBoard(Length.ofMillimetres(14), Length.ofMillimetres(185));
      calculations.forEach((key, calculation) -> {
        assertKnown(rules.get(key).source());
        if (set == RuleSet.COMMON_PRACTICE || !rules.get(key).source().equals(Source.COMMON_PRACTICE)) {
          assertThat(asked(calculation)).as(set + ", " + key).anyMatch(one -> RuleAnswers.SETS.get(one.question().text("source")) == set);
        }
      });
      assertThat(rules.get(LayingRules.MINIMUM_ROW_WIDTH).source()).as(set.name()).isEqualTo(Source.COMMON_PRACTICE);
      List.of(LayingRules.MAXIMUM_RUN_ALONG, LayingRules.MINIMUM_END_PIECE, LayingRules.SAW_KERF, LayingRules.BREAK_GAP)
          .forEach(key -> assertThat(rules.get(key).source()).as(set + ", " + key).isEqualTo(Source.COMMON_PRACTICE));
    }
  }

  @Test
  void movement() {
    Set<String> rules = askedOf("coefficient-by-rule", question -> MovementAnswers.RULES.get(question.text("source") + ": " + question.text("appliesTo")).about(),
        Expected::figure);
    for (Coefficient coefficient : Coefficient.published()) {
      assertThat(rules).anyMatch(one -> one.equals(coefficient.about() + " percent") || one.equals(coefficient.about() + " share"));
      assertKnown(coefficient.source());
    }
    assertThat(SpeciesTable.all()).allSatisfy(table -> assertThat(asked("number-of-woods"))
        .anyMatch(one -> ShrinkageAnswers.TABLES.get(one.question().text("table")) == table));
  }

  /** One overlap is from memory, says so, and is asked for that alone. */
  @Test
  void overlaps() {
    Set<String> laps = askedOf("overlap-of-film", question -> FilmAnswers.LAPS.get(question.text("source")).name(), Expected::figure);
    for (Lap lap : Lap.named()) {
      boolean recalled = lap.source().standing() == Standing.FROM_MEMORY;
      assertThat(recalled).as(lap.name()).isEqualTo(lap == Lap.GERMAN_PRACTICE);
      assertThat(laps).contains(lap.name() + " standing");
      assertThat(laps.contains(lap.name() + " millimetres")).as(lap.name()).isNotEqualTo(recalled);
    }
  }

  /** Each treatment up to its limit, and each steeper slope; each space at a door; each stair. */
  @Test
  void transitions() {
    Set<String> levels = askedOf("change-of-level", question -> TransitionAnswers.LEVELS.get(question.text("source")).name(), Expected::printed);
    for (LevelChangeSet set : LevelChangeSet.all()) {
      for (LevelChangeLimit limit : set.limits()) {
        if (limit.space() == LevelChangeLimit.Space.ANY) {
          assertThat(levels).contains(set.name() + " " + limit.treatment().words());
        } else {
          assertThat(levels).anyMatch(one -> one.startsWith(set.name() + " 1:") && one.contains(limit.slope().orElseThrow().toString()));
        }
        assertKnown(limit.source());
      }
    }
    Set<String> doors = askedOf("space-at-door", question -> TransitionAnswers.DOORS.get(question.text("source")).name() + ", " + question.text("space"),
        Expected::figure);
    for (DoorSet set : DoorSet.all()) {
      set.limits().forEach(limit -> {
        assertThat(doors).contains(set.name() + ", " + limit.space().words() + " leastMillimetres");
        assertKnown(limit.source());
      });
    }
    for (StairSet set : StairSet.all()) {
      assertThat(asked("risers-of-stairs")).anyMatch(one -> TransitionAnswers.STAIRS.get(one.question().text("source")) == set);
    }
    assertThat(List.of(LevelChangeSet.ADA_ANSI.limits().size(), LevelChangeSet.NF_DTU_51_11.limits().size(), DoorSet.UK_VENTILATION.limits().size(),
        DoorSet.UK_WARRANTY.limits().size())).containsExactly(5, 2, 2, 2);
  }

  /** Each size, and each deviation of each set for boards of the widths that it is for. */
  @Test
  void deviations() {
    Set<String> sizes = askedOf("size-of-boards", question -> DeviationAnswers.SIZES.get(question.text("source") + ": " + question.text("product")).name()
        + ", " + question.text("size"), Expected::figure);
    for (SizeSet set : SizeSet.all()) {
      set.limits().forEach(limit -> {
        boolean elsewhere = set == SizeSet.EN_13489_THREE_LAYERS && limit.size() == BoardSize.WEAR_LAYER;
        assertThat(sizes).contains((elsewhere ? SizeSet.EN_13489_TWO_LAYERS : set).name() + ", " + (limit.size() == BoardSize.WIDTH ? "width"
            : limit.size().words()) + " leastMillimetres");
        assertKnown(limit.source());
      });
    }
    for (DeviationSet set : DeviationSet.all()) {
      for (DeviationLimit limit : set.limits()) {
        assertThat(asked("permitted-deviation")).as(set + ", " + limit).anyMatch(one -> DeviationAnswers.set(one.question()) == set
            && one.question().text("deviation").equals(limit.deviation().code().replace('-', ' '))
            && limit.widths().contains(Length.parse(one.question().text("boardWidth")))
            && (!one.question().has("beyondPercent") || one.question().count("beyondPercent") == limit.beyondPercent())
            && (!one.question().has("meanOf") || one.question().count("meanOf") == limit.meanOf()));
        assertKnown(limit.source());
      }
      assertThat(set.moisture().isPresent()).as(set.name()).isEqualTo(asked("moisture-when-sizes-are-measured")
          .anyMatch(one -> DeviationAnswers.set(one.question()) == set));
      assertThat(set.number().isPresent()).as(set.name()).isEqualTo(asked("readings-asked-for").anyMatch(one -> DeviationAnswers.set(one.question()) == set));
    }
  }

  @Test
  void anglesLevelAndTapes() {
    for (AngleLimit limit : AngleSet.DIN_18202.limits()) {
      assertThat(asked("out-of-square-limit").filter(one -> limit.covers(Length.parse(one.question().text("wall"))))).as(limit.toString()).hasSize(2);
      assertKnown(limit.source());
    }
    assertThat(AngleSet.all()).containsExactly(AngleSet.DIN_18202);
    for (OutOfLevelSet set : OutOfLevelSet.all()) {
      for (OutOfLevelLimit limit : set.limits()) {
        assertThat(asked("out-of-level-limit")).as(set + ", " + limit).anyMatch(one -> LevelLimitAnswers.SETS.get(one.question().text("source")).equals(set.name())
            && one.question().text("measured").equals("from the level line") == (limit.measure() == LevelMeasure.FROM_DATUM)
            && limit.covers(Length.parse(one.question().text("across"))));
        assertKnown(limit.source());
      }
    }
    for (TapeRules.Tolerance row : TapeRules.tolerances()) {
      assertThat(asked("tape-tolerance").filter(one -> TapeRules.toleranceFor(Length.parse(one.question().text("length"))).orElseThrow().equals(row)))
          .hasSize(2);
      assertKnown(row.source());
    }
  }

  private static void assertKnown(Source source) {
    assertThat(source.standing()).as(source.toString()).isIn(Standing.READ, Standing.QUOTED, Standing.COMMON_PRACTICE);
  }
}
