package floorcalc.transitions;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Each figure of a named set against the table of published figures; the sources stand in each row. The figures are exact. Rows
 * from memory are not tested against, and rows on outdoor walking surfaces and on pipes are about something else.
 */
@Tag("reference")
class TransitionsReferenceTest {
  private static Length mm(String millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static LevelLimit level(LevelSet set, LevelTreatment treatment, LevelLimit.Space space, int run) {
    return set.limits().stream().filter(one -> one.treatment() == treatment && one.space() == space
        && one.slope().map(Slope::run).orElse(0) == run).findFirst().orElseThrow();
  }

  private static DoorLimit door(DoorSet set, DoorSpace space) {
    return set.limits().stream().filter(one -> one.space() == space).findFirst().orElseThrow();
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "/reference/transitions_and_clearances.csv", useHeadersInDisplayName = true)
  void asPrinted(String source, String item, String value, String unit, String note, String status, String seen) {
    Source used = switch (item) {
      case "vertical change in level without edge treatment, at most" -> {
        LevelLimit limit = level(LevelSet.ADA_ANSI, LevelTreatment.NONE, LevelLimit.Space.ANY, 0);
        assertThat(limit.upTo()).contains(mm(value)).contains(Length.ofInches(0, 1, 4));
        yield limit.source();
      }
      case "change in level bevelled not steeper than 1:2" -> {
        LevelLimit limit = level(LevelSet.ADA_ANSI, LevelTreatment.BEVEL, LevelLimit.Space.ANY, 2);
        assertThat(limit.upTo()).contains(mm(value));
        yield limit.source();
      }
      case "above 1/2 in: ramp, maximum slope" -> {
        LevelLimit limit = level(LevelSet.ADA_ANSI, LevelTreatment.RAMP, LevelLimit.Space.ANY, 12);
        assertThat(limit.slope()).hasToString("Optional[" + value + "]");
        assertThat(limit.upTo()).isEmpty();
        yield limit.source();
      }
      case "slope 1:10 to 1:12 where space limited, rise at most" ->
          rise(level(LevelSet.ADA_ANSI, LevelTreatment.RAMP, LevelLimit.Space.LIMITED, 10), value);
      case "slope 1:8 to 1:10 where space limited, rise at most" ->
          rise(level(LevelSet.ADA_ANSI, LevelTreatment.RAMP, LevelLimit.Space.LIMITED, 8), value);
      case "adjoining covering laid first" -> {
        // Flush, or else a chamfered threshold or a bar.
        assertThat(LevelSet.NF_DTU_51_11.judge(HeightDifference.NONE).value().treatment()).isEqualTo(LevelTreatment.NONE);
        assertThat(LevelSet.NF_DTU_51_11.judge(new HeightDifference(Length.ofNanometres(1))).value().treatment())
            .isEqualTo(LevelTreatment.THRESHOLD);
        yield LevelSet.NF_DTU_51_11.limits().get(0).source();
      }
      case "undercut of internal doors above finished floor, at least" ->
          range(door(DoorSet.UK_VENTILATION, DoorSpace.OVER_FINISHED_FLOOR), value, null);
      case "undercut above bare floorboards" ->
          range(door(DoorSet.UK_VENTILATION, DoorSpace.OVER_BARE_SUBFLOOR), value, null);
      case "gap under internal door to unfinished floor" -> {
        String[] ends = value.split(" to ");
        yield range(door(DoorSet.UK_WARRANTY, DoorSpace.OVER_BARE_SUBFLOOR), ends[0], ends[1]);
      }
      case "gap door to head or jamb at most" ->
          range(door(DoorSet.UK_WARRANTY, DoorSpace.AT_HEAD_OR_JAMB), null, value);
      default -> null;
    };
    if (used == null) {
      assertThat(List.of("walking surface running slope at most", "cross slope at most",
          "clearance to heating pipes, door frames, stairs, hearths", "hole for pipe larger than pipe by")).contains(item);
      return;
    }
    assertThat(used.standing()).isEqualTo(status.equals("verified") ? Standing.READ : Standing.QUOTED);
    assertThat(status).startsWith("verified");
  }

  private static Source rise(LevelLimit limit, String value) {
    assertThat(limit.upTo()).contains(mm(value));
    return limit.source();
  }

  private static Source range(DoorLimit limit, String least, String most) {
    assertThat(limit.least()).isEqualTo(Optional.ofNullable(least).map(Length::ofMillimetres));
    assertThat(limit.most()).isEqualTo(Optional.ofNullable(most).map(Length::ofMillimetres));
    return limit.source();
  }

  /** Figures without a source say so: 1/8, 3/8 and 1/2 in at edges, 1/2 to 3/4 in under doors, 3/8, 1/4 and 7 3/4 in on stairs. */
  @Test
  void commonPracticeSaysSo() {
    assertThat(LevelSet.COMMON_PRACTICE.limits()).extracting(one -> one.upTo().orElseThrow()).containsExactly(mm("3.175"),
        mm("9.525"), mm("12.7"));
    assertThat(LevelSet.COMMON_PRACTICE.limits()).extracting(LevelLimit::source).containsOnly(Source.COMMON_PRACTICE);
    DoorLimit leaf = DoorSet.COMMON_PRACTICE.limits().get(0);
    assertThat(range(leaf, "12.7", "19.05")).isEqualTo(Source.COMMON_PRACTICE);
    assertThat(StairSet.all()).extracting(StairSet::spread).containsExactly(mm("9.525"), mm("6.35"));
    assertThat(StairSet.COMMON_PRACTICE_US.highest()).contains(mm("196.85"));
    assertThat(StairSet.all()).extracting(StairSet::source).containsOnly(Source.COMMON_PRACTICE);
  }

  /** Every published limit has a row, so that none is invented: five of ADA, two of NF DTU, two and two on doors. */
  @Test
  void noLimitWithoutARow() {
    assertThat(Arrays.asList(LevelSet.ADA_ANSI.limits().size(), LevelSet.NF_DTU_51_11.limits().size(),
        DoorSet.UK_VENTILATION.limits().size(), DoorSet.UK_WARRANTY.limits().size())).containsExactly(5, 2, 2, 2);
  }
}
