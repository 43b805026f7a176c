package floorcalc.bays;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Wkt;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Turned rooms whose corners are rounded, so that three lines which cross at one place cross some nanometres apart. There must be
 * neither a break across that triangle nor a failure.
 */
class LinesThatNearlyMeetTest {

  private static BaySplit split(String room, double degrees, int deepest, int widest, int across) {
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(Length.ofMillimetres(14), Length.ofMillimetres(185))
        .with(LayingRules.DEEPEST_RECESS, Length.ofMillimetres(deepest), Source.GIVEN)
        .with(LayingRules.WIDEST_VOID, Length.ofMillimetres(widest), Source.GIVEN)
        .with(LayingRules.MAXIMUM_RUN_ACROSS, Length.ofMillimetres(across), Source.GIVEN);
    Outline outline = Wkt.parse(room);
    BaySplit split = BaySplit.of(outline, Direction.fromDegrees(degrees), List.of(), rules).value();
    Area parts = split.parts().stream().map(Outline::area).reduce(Area.ZERO, Area::plus);
    assertThat(parts.minus(outline.area()).abs().toSquareMillimetres()).isLessThan(1);
    return split;
  }

  @Test
  void noBreakIsShorterThanAMicrometre() {
    BaySplit split = split("POLYGON ((6996.612491 2669.721642, 4702.986767 4275.735664, 3441.118607 2473.601166,"
        + " 3277.288199 2588.316454, 1212.413028 -360.630906, 5308.173249 -3228.513088, 5652.319111 -2737.021861,"
        + " 6635.301564 -3425.313585, 7897.169724 -1623.179087, 9371.643404 -2655.616673, 10518.796276 -1017.312584,"
        + " 9863.474641 -558.451435, 11584.20395 1899.004698, 8143.765364 4308.02573, 6996.612491 2669.721642),"
        + " (6881.557193 64.580134, 6390.065967 408.725995, 6619.496541 736.386813, 7110.987768 392.240951,"
        + " 6881.557193 64.580134), (3809.82203 2825.819545, 4153.967892 3317.310771, 4809.289527 2858.449622,"
        + " 4465.143665 2366.958396, 3809.82203 2825.819545))", 10, 500, 1000, 7000);
    assertThat(split.breaks()).isNotEmpty().allMatch(line -> line.length().compareTo(Length.ofNanometres(1_000)) > 0);
  }

  @Test
  void aRoomTurnedBy184DegreesIsSplit() {
    BaySplit split = split("POLYGON ((-7630.981634 -2376.577224, -7893.405246 -2678.461056, -5931.160337 -4384.214531,"
        + " -2913.288804 -912.550462, -4573.64988 530.779402, -3786.379045 1436.430898, -5295.798206 2748.548956,"
        + " -5558.221817 2446.665124, -5860.10565 2709.088735, -6516.164679 1954.379155, -6667.106595 2085.590961,"
        + " -9291.342711 -933.24736, -7630.981634 -2376.577224))", 184, 0, 0, 8000);
    assertThat(split.breaks()).isNotEmpty().allMatch(line -> line.length().compareTo(Length.ofNanometres(1_000)) > 0);
  }
}
