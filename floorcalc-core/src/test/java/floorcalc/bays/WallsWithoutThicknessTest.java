package floorcalc.bays;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.bays.ExpansionBreak.Reason;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Walls that run to and fro a nanometre apart, as drawings have them: there is floor on both sides of them, and they part it. */
class WallsWithoutThicknessTest {
  private static BaySplit split(String room, double degrees) {
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(Length.ofMillimetres(14), Length.ofMillimetres(185))
        .with(LayingRules.DEEPEST_RECESS, Length.ofMillimetres(500), Source.GIVEN)
        .with(LayingRules.WIDEST_VOID, Length.ofMillimetres(500), Source.GIVEN);
    return BaySplit.of(Wkt.parse(room), Direction.fromDegrees(degrees), List.of(), rules).value();
  }

  /** 4 m x 3 m with a wall from the middle of the upper side down to its middle: 1.5 m go on to the lower side, 2 m to either end. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 90, 180, 270})
  void theFloorIsPartedWhereAWallEnds(double boards) {
    BaySplit split = split("POLYGON ((0 0, 4000 0, 4000 3000, 2000.000001 3000, 2000 1500, 2000 3000, 0 3000, 0 0))", boards);
    assertThat(split.breaks()).hasSize(1);
    assertThat(split.breaks().get(0).reason()).isEqualTo(Reason.INNER_CORNER);
    assertThat(split.length()).isEqualTo(Length.ofMillimetres(1500));
    assertThat(split.parts()).extracting(part -> Math.round(part.area().toSquareMillimetres())).containsExactly(6_000_000L, 6_000_000L);
  }

  /**
   * A hearth of 1 m x 1 m in the middle of that room, joined to the upper side. Lines from its lower corners down to the wall leave two bays with a
   * corner 500 x 2000 / sqrt(500^2 + 2000^2) = 485 mm inside; with one of these lines alone the other lower corner would lie deeper.
   */
  @Test
  void theFloorGoesRoundAVoidThatIsJoinedToAWall() {
    BaySplit split = split("POLYGON ((0 0, 4000 0, 4000 3000, 2000.000001 3000, 2000.000001 2000, 2500 2000, 2500 1000, 1500 1000,"
        + " 1500 2000, 2000 2000, 2000 3000, 0 3000, 0 0))", 0);
    assertThat(split.length()).isEqualTo(Length.ofMillimetres(2000));
    assertThat(split.parts()).extracting(part -> Math.round(part.area().toSquareMillimetres()))
        .containsExactly(5_000_000L, 1_000_000L, 5_000_000L);
  }

  /** Bars of a comb with a fold beside one of them: a line from the next bar ended at the height of the fold's end, on the open floor. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 90, 37})
  void linesDoNotEndAtTheHeightOfAFold(double boards) {
    BaySplit split = split("POLYGON ((0 0, 674 0, 674 1281.07778, 652.5 1389.07778, 674.000001 1281.07778, 847 1281.07778, 847 0, 1521 0,"
        + " 1521 1281.07778, 1694 1281.07778, 1694 0, 2368 0, 2368 1281.07778, 2541 1281.07778, 2541 0, 3215 0, 3215 1955.07778,"
        + " 0 1955.07778, 0 0))", boards);
    Area sum = split.parts().stream().map(Outline::area).reduce(Area.ZERO, Area::plus);
    assertThat(sum.minus(split.room().area()).abs().toSquareMillimetres()).isLessThan(1);
    assertThat(split.parts().size()).isGreaterThan(2);
  }
}
