package floorcalc.rules;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each figure of a named set against the tables of published figures; their sources stand in each row and at the head
 * of the files under {@code reference/}. The figures are exact. Rows recalled from memory are not in any set, and the
 * tests say so.
 */
@Tag("reference")
class RuleSetReferenceTest {
  private static final Length THICKNESS = Length.ofMillimetres(14);
  private static final Length WIDTH = Length.ofMillimetres(185);

  /** The set that a row's source stands behind; sources that are about other floors or are ranges have none. */
  private static final Map<String, RuleSet> GAP_SETS = Map.of(
      "NF DTU 51.11 P1-1 (Dec 2009) cl. 8.2", RuleSet.NF_DTU_51_11,
      "NWFA guidelines ch. 7", RuleSet.NWFA_PARQUET,
      "Australian practice (BCA/AS 1684)", RuleSet.AS_1684);

  @ParameterizedTest(name = "{0}, {1}")
  @CsvFileSource(resources = "/reference/expansion_gaps.csv", useHeadersInDisplayName = true)
  void expansionGap(String source, String appliesTo, String rule, String perMetre, String minimum, String condition,
      String status, String seen) {
    RuleSet set = GAP_SETS.get(source);
    if (set == null) {
      // About subfloor panels or laminate, a range instead of a figure, or from memory: no set.
      assertThat(RuleSet.all()).noneSatisfy(other -> assertThat(source).startsWith(other.name()));
      return;
    }
    for (int metres = 2; metres <= 16; metres += 2) {
      Length largest = Length.ofMillimetres(metres * 1000L);
      Length share = perMetre == null ? Length.ZERO : Length.ofMillimetres(perMetre).multipliedBy(metres);
      RuleValue<Length> gap = set.forBoardAndRoom(THICKNESS, WIDTH, largest).get(LayingRules.EXPANSION_GAP);
      assertThat(gap.value()).isEqualTo(share.max(Length.ofMillimetres(minimum)));
      assertThat(gap.source().standing()).isEqualTo(standing(status));
    }
  }

  /** Worked values of NF DTU 51.11, clause 8.2: 0.15 % of the largest dimension, at least 8 mm. */
  @ParameterizedTest
  @CsvSource({"5000, 8", "7000, 10.5", "12000, 18"})
  void expansionGapByLargestDimension(String largest, String gap) {
    assertThat(RuleSet.NF_DTU_51_11.forBoardAndRoom(THICKNESS, WIDTH, Length.ofMillimetres(largest))
        .value(LayingRules.EXPANSION_GAP)).isEqualTo(Length.ofMillimetres(gap));
  }

  @ParameterizedTest(name = "{0}, {1}")
  @CsvFileSource(resources = "/reference/end_joint_offsets.csv", useHeadersInDisplayName = true)
  void jointOffset(String source, String appliesTo, String minimum, String widths, String note, String status,
      String seen) {
    switch (appliesTo) {
      case "strip flooring" -> {
        assertOffset(RuleSet.NWFA_GUIDELINES, "1.5", minimum, status);
        assertOffset(RuleSet.NWFA_GUIDELINES, "2.99", minimum, status);
      }
      case "plank 3 to 5 in wide" -> {
        // The source gives 8 to 10 in; the set asks for the least of it.
        assertOffset(RuleSet.NWFA_GUIDELINES, "3", minimum.split(" to ")[0], status);
        assertOffset(RuleSet.NWFA_GUIDELINES, "5", minimum.split(" to ")[0], status);
      }
      case "plank wider than 5 in" -> {
        assertOffset(RuleSet.NWFA_GUIDELINES, "5.01", minimum, status);
        assertOffset(RuleSet.NWFA_GUIDELINES, "12", minimum, status);
      }
      case "wide plank, preferred" -> assertWidths(RuleSet.NWFA_THREE_WIDTHS, widths, status);
      case "plank, preferred" -> assertWidths(RuleSet.NWFA_TWO_WIDTHS, widths, status);
      default -> assertThat(source).doesNotStartWith("NWFA");
    }
  }

  private static void assertWidths(RuleSet set, String widths, String status) {
    for (String inches : new String[] {"4", "6", "12"}) {
      String offset = Length.parse(inches + " in").multipliedBy(Integer.parseInt(widths)).toMillimetreString();
      assertOffset(set, inches, offset, status);
    }
  }

  private static void assertOffset(RuleSet set, String inches, String offset, String status) {
    RuleValue<Length> rule = set.forBoard(THICKNESS, Length.parse(inches + " in")).get(LayingRules.MINIMUM_JOINT_OFFSET);
    assertThat(rule.value()).isEqualTo(Length.ofMillimetres(offset));
    assertThat(rule.source().standing()).isEqualTo(standing(status));
  }

  /** As printed: "12 in plank gives 36 in" (three widths); "4 in gives 8 in; 6 in gives 12 in" (two widths). */
  @ParameterizedTest
  @CsvSource({"NWFA three widths, 12, 36", "NWFA two widths, 4, 8", "NWFA two widths, 6, 12"})
  void jointOffsetExamplesAsPrinted(String set, String width, String offset) {
    assertThat(RuleSet.named(set).forBoard(THICKNESS, Length.parse(width + " in"))
        .value(LayingRules.MINIMUM_JOINT_OFFSET)).isEqualTo(Length.parse(offset + " in"));
  }

  @ParameterizedTest(name = "{0}, {1}")
  @CsvFileSource(resources = "/reference/maximum_runs.csv", useHeadersInDisplayName = true)
  void maximumRun(String source, String appliesTo, String dimension, String metres, String condition, String status,
      String seen) {
    RuleSet set = source.equals("NF DTU 51.11 P1-1 (Dec 2009) cl. 8.1.3") ? RuleSet.NF_DTU_51_11
        : source.startsWith("Australian") ? RuleSet.AS_1684 : null;
    if (set == null) {
      // An orientation rule without a limit, or from memory: no set has it.
      assertThat(condition + status).containsAnyOf("orientation rule", "memory");
      return;
    }
    RuleValue<Length> run = set.forBoard(THICKNESS, WIDTH).get(LayingRules.MAXIMUM_RUN_ACROSS);
    assertThat(run.value()).isEqualTo(Length.ofMillimetres(Integer.parseInt(metres) * 1000L));
    assertThat(run.source().standing()).isEqualTo(standing(status));
  }

  @ParameterizedTest(name = "{0}, {1}")
  @CsvFileSource(resources = "/reference/row_width_rules.csv", useHeadersInDisplayName = true)
  void rowWidthHasNoPublishedFigure(String source, String rule, String value, String unit, String status) {
    if (value != null) {
      assertThat(status).isEqualTo("memory-uncertain");
    }
    assertThat(RuleSet.all()).allSatisfy(set -> assertThat(set.forBoard(THICKNESS, WIDTH)
        .get(LayingRules.MINIMUM_ROW_WIDTH).source()).isEqualTo(Source.COMMON_PRACTICE));
  }

  private static Standing standing(String status) {
    return switch (status) {
      case "verified" -> Standing.READ;
      case "verified-secondary" -> Standing.QUOTED;
      default -> throw new AssertionError("a row of status " + status + " stands behind no set");
    };
  }
}
