package floorcalc.boards;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Calculated;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Boards of 2000 by 200 mm, kerf 3 mm; all figures by hand. */
class BoardBoundTest {
  private static final BoardGoods GOODS =
      BoardGoods.of(Length.ofMillimetres(2000), Length.ofMillimetres(200), Length.ofMillimetres(14), 5);
  private static final LayingRules RULES = RuleSet.COMMON_PRACTICE.forBoard(GOODS.thickness(), GOODS.coverWidth());

  private static Stretch stretch(long length, long width) {
    return new Stretch(Length.ofMillimetres(length), Length.ofMillimetres(width));
  }

  @Test
  void kerfsCount() {
    // Ten rows of 3998: 2 pieces each. (39980 + 20 * 3) / 2003 = 19.99, so 20.
    assertThat(BoardBound.of(Collections.nCopies(10, stretch(3998, 200)), Area.ZERO, GOODS, RULES).value()).isEqualTo(20);
    // Ten rows of 3000: (30000 + 60) / 2003 = 15.007, so 16; by length alone 15 would do.
    assertThat(BoardBound.of(Collections.nCopies(10, stretch(3000, 200)), Area.ZERO, GOODS, RULES).value()).isEqualTo(16);
  }

  @Test
  void stripsThatFitBesideEachOtherCountByArea() {
    // Two strips of 2000 by 90: each (2003 * 93) of (2003 * 203), together 0.916: one board.
    assertThat(BoardBound.of(List.of(stretch(2000, 90), stretch(2000, 90)), Area.ZERO, GOODS, RULES).value()).isEqualTo(1);
  }

  @Test
  void stripsTooWideForEachOtherTakeABoardEach() {
    // 99 + 3 + 99 = 201 > 200: no two fit side by side.
    assertThat(BoardBound.of(List.of(stretch(2000, 99), stretch(2000, 99)), Area.ZERO, GOODS, RULES).value()).isEqualTo(2);
  }

  @Test
  void otherFloorCountsByItsArea() {
    // 0.9 m² of a board enlarged to 2.003 * 0.203 = 0.406609 m²: 2.21, so 3.
    assertThat(BoardBound.of(List.of(), Area.ofSquareMillimetres(900_000), GOODS, RULES).value()).isEqualTo(3);
  }

  @Test
  void theWorkingGivesTheSameNumber() {
    Calculated<Integer> bound = BoardBound.of(List.of(stretch(3000, 200)), Area.ZERO, GOODS, RULES);
    assertThat(bound.explain()).isEqualTo("""
        boards-at-least: How many boards can no plan do without?
          ceil(((S + n·c)·(w + c) + T + A) / ((P + c)·(w + c)))
            S = 3000 mm  (length that pieces of full width must cover)
            n = 2  (least number of pieces in it)
            T = 0 m²  (narrow strips, each enlarged by the kerf)
            A = 0 m²  (floor of any other shape)
            c = 3 mm  (saw kerf; common practice, no source)
            P = 2000 mm  (longest board)
            w = 200 mm  (laid pitch)
          = 2  [definition]""");
  }

  @Test
  void nothingToCoverTakesNoBoard() {
    assertThat(BoardBound.of(List.of(), Area.ZERO, GOODS, RULES).value()).isZero();
  }
}
