package floorcalc.boards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import java.math.BigInteger;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Boards of 2000 by 200 mm, kerf 3 mm; all figures by hand. */
class CuttingPlanTest {
  private static final BoardGoods GOODS =
      BoardGoods.of(Length.ofMillimetres(2000), Length.ofMillimetres(200), Length.ofMillimetres(14), 5);
  private static final LayingRules RULES = RuleSet.COMMON_PRACTICE.forBoard(GOODS.thickness(), GOODS.coverWidth());

  private static PieceWanted piece(int row, long length, long from, long to, Ends ends) {
    return PieceWanted.of(row, Length.ofMillimetres(length), Length.ofMillimetres(from), Length.ofMillimetres(to), ends);
  }

  private static void assertAt(Placement place, int board, long from, long to, long low, long high) {
    assertThat(place).isEqualTo(new Placement(board, Length.ofMillimetres(from), Length.ofMillimetres(to),
        Length.ofMillimetres(low), Length.ofMillimetres(high)));
  }

  @Test
  void anEndPieceAndAStartPieceShareABoard() {
    // 800 + 3 + 1197 = 2000: they just fit beside the kerf
    CuttingPlan plan = CuttingPlan.of(
        List.of(piece(0, 800, 0, 200, Ends.LOW), piece(1, 1197, 0, 200, Ends.HIGH)), GOODS, RULES);

    assertThat(plan.boardCount()).isEqualTo(1);
    assertAt(plan.placement(0), 0, 0, 800, 0, 200);
    assertAt(plan.placement(1), 0, 803, 2000, 0, 200);
    assertThat(plan.offcuts()).isEmpty();
    // one cut: 3 mm by 200 mm
    assertThat(plan.sawKerf()).isEqualTo(Area.ofSquareMillimetres(600));
  }

  @Test
  void oneMillimetreTooLongTakesASecondBoard() {
    CuttingPlan plan = CuttingPlan.of(
        List.of(piece(0, 800, 0, 200, Ends.LOW), piece(1, 1198, 0, 200, Ends.HIGH)), GOODS, RULES);

    assertThat(plan.boardCount()).isEqualTo(2);
    assertThat(plan.openedFor(1)).isEqualTo(1);
  }

  @Test
  void twoStartPiecesNeverShareABoard() {
    CuttingPlan plan = CuttingPlan.of(
        List.of(piece(0, 400, 0, 200, Ends.HIGH), piece(1, 400, 0, 200, Ends.HIGH)), GOODS, RULES);

    assertThat(plan.boardCount()).isEqualTo(2);
  }

  @Test
  void piecesWithoutMachinedEndsComeFromTheMiddle() {
    // 600 + 3 + 700 + 3 + 694 = 2000
    CuttingPlan plan = CuttingPlan.of(List.of(piece(0, 600, 0, 200, Ends.LOW), piece(1, 700, 0, 200, Ends.HIGH),
        piece(2, 694, 0, 200, Ends.NONE)), GOODS, RULES);

    assertThat(plan.boardCount()).isEqualTo(1);
    assertAt(plan.placement(2), 0, 603, 1297, 0, 200);
    assertThat(plan.sawKerf()).isEqualTo(Area.ofSquareMillimetres(2 * 600));
  }

  @Test
  void stripsOfTheFirstAndTheLastRowShareABoard() {
    // first row 120 wide keeps its high edge, last row 77 wide its low edge: 120 + 3 + 77 = 200
    CuttingPlan plan = CuttingPlan.of(
        List.of(piece(0, 2000, 80, 200, Ends.BOTH), piece(9, 2000, 0, 77, Ends.BOTH)), GOODS, RULES);

    assertThat(plan.boardCount()).isEqualTo(1);
    assertAt(plan.placement(1), 0, 0, 2000, 0, 77);
    // one rip: 3 mm by 2000 mm
    assertThat(plan.sawKerf()).isEqualTo(Area.ofSquareMillimetres(6000));
  }

  @Test
  void stripsThatDoNotFitBesideTheKerfTakeTwoBoards() {
    CuttingPlan plan = CuttingPlan.of(
        List.of(piece(0, 2000, 80, 200, Ends.BOTH), piece(9, 2000, 0, 78, Ends.BOTH)), GOODS, RULES);

    assertThat(plan.boardCount()).isEqualTo(2);
  }

  @Test
  void pairingAheadBeatsTheShortestOffcutFirst() {
    // By hand: ends 500 and 900, starts 1000 and 1400. Shortest first gives 500 + 1000 and leaves 900 and 1400 alone: 3.
    // Paired: 900 + 1000 and 500 + 1400: 2.
    CuttingPlan plan = CuttingPlan.of(List.of(piece(0, 500, 0, 200, Ends.LOW), piece(0, 900, 0, 200, Ends.LOW),
        piece(1, 1000, 0, 200, Ends.HIGH), piece(2, 1400, 0, 200, Ends.HIGH)), GOODS, RULES);

    assertThat(plan.boardCount()).isEqualTo(2);
  }

  @Test
  void piecesWithoutMachinedEndsArePackedLongestFirst() {
    // As laid: 850 and 750 from one board, 1200 and 1100 from one each: 3. Longest first: 1200 + 3 + 750 = 1953 and
    // 1100 + 3 + 850 = 1953: 2.
    CuttingPlan plan = CuttingPlan.of(List.of(piece(0, 850, 0, 200, Ends.NONE), piece(1, 750, 0, 200, Ends.NONE),
        piece(2, 1200, 0, 200, Ends.NONE), piece(3, 1100, 0, 200, Ends.NONE)), GOODS, RULES);

    assertThat(plan.boardCount()).isEqualTo(2);
  }

  @Test
  void aBoardIsEmptiedIntoTheOthers() {
    // Longest first, each where least is left: 790 + 790, 590 + 590 + 590, 590: 3 boards. With one 790 and one 590
    // exchanged, 790 + 590 + 590 with two kerfs is 1976, and the last 590 fits beside the other two: 2.
    CuttingPlan plan = CuttingPlan.of(List.of(piece(0, 790, 0, 200, Ends.NONE), piece(1, 790, 0, 200, Ends.NONE),
        piece(2, 590, 0, 200, Ends.NONE), piece(3, 590, 0, 200, Ends.NONE), piece(4, 590, 0, 200, Ends.NONE),
        piece(5, 590, 0, 200, Ends.NONE)), GOODS, RULES);

    assertThat(plan.boardCount()).isEqualTo(2);
  }

  @Test
  void rippedRowsShareBoardsThatAreRippedFromEndToEnd() {
    // High strips 80 wide: 900 + 3 + 1000 = 1903. Low strips 100 wide: 500 + 3 + 1400 = 1903. 80 + 3 + 100 = 183 of 200.
    CuttingPlan plan = CuttingPlan.of(List.of(piece(0, 1000, 120, 200, Ends.HIGH), piece(0, 900, 120, 200, Ends.LOW),
        piece(9, 1400, 0, 100, Ends.HIGH), piece(9, 500, 0, 100, Ends.LOW)), GOODS, RULES);

    assertThat(plan.boardCount()).isEqualTo(1);
    assertAt(plan.placement(0), 0, 1000, 2000, 120, 200);
    assertAt(plan.placement(1), 0, 0, 900, 120, 200);
    assertAt(plan.placement(2), 0, 600, 2000, 0, 100);
    assertAt(plan.placement(3), 0, 0, 500, 0, 100);
    // the rip, 3 by 2000; in the low strip, 100 wide, a cut beside each piece, in the high one, 97 wide; and 17 by 3 beyond
    // nothing: the high strip keeps 103 to 200, so its pieces lose 3 more along their low edges
    assertThat(plan.sawKerf()).isEqualTo(Area.ofSquareMillimetres(3 * 2000 + 2 * 3 * 100 + 2 * 3 * 97 + 3 * 1900));
  }

  @Test
  void stripsLessThanAKerfApartAreRippedFirst() {
    // 700 + 1299 = 1999: 1 mm is left between them along the board, so no cut across; 80 + 3 + 100 = 183 of 200 across. The board is
    // ripped from end to end, beside the low strip.
    CuttingPlan plan = CuttingPlan.of(
        List.of(piece(0, 700, 0, 80, Ends.HIGH), piece(1, 1299, 100, 200, Ends.LOW)), GOODS, RULES);

    assertThat(plan.boardCount()).isEqualTo(1);
    assertAt(plan.placement(0), 0, 1300, 2000, 0, 80);
    assertAt(plan.placement(1), 0, 0, 1299, 100, 200);
  }

  @Test
  void stripsSideBySideLeaveRoomForAnEndPiece() {
    // 700 high and 650 low from one length of 700 at the high end, 1297 at the low end: 1297 + 3 + 700 = 2000.
    CuttingPlan plan = CuttingPlan.of(List.of(piece(0, 650, 0, 90, Ends.HIGH), piece(4, 1297, 0, 200, Ends.LOW),
        piece(9, 700, 120, 200, Ends.HIGH)), GOODS, RULES);

    assertThat(plan.boardCount()).isEqualTo(1);
    assertAt(plan.placement(0), 0, 1350, 2000, 0, 90);
    assertAt(plan.placement(1), 0, 0, 1297, 0, 200);
    assertAt(plan.placement(2), 0, 1300, 2000, 120, 200);
  }

  @Test
  void everyBoardIsPiecesKerfAndOffcuts() {
    List<PieceWanted> pieces = List.of(piece(0, 1999, 0, 200, Ends.LOW), piece(0, 300, 100, 200, Ends.HIGH),
        piece(1, 250, 0, 60, Ends.NONE), piece(2, 700, 10, 190, Ends.NONE), piece(3, 2000, 0, 200, Ends.BOTH));
    CuttingPlan plan = CuttingPlan.of(pieces, GOODS, RULES);

    BigInteger cut = BigInteger.ZERO;
    for (PieceWanted piece : pieces) {
      cut = cut.add(BigInteger.valueOf(piece.span()).multiply(BigInteger.valueOf(piece.high() - piece.low())));
    }
    Area left = plan.offcuts().stream().map(Offcut::area).reduce(Area.ZERO, Area::plus);
    Area boards = Area.ofSquareMillimetres(2000L * 200 * plan.boardCount());
    assertThat(Area.ofSquareNanometres(cut).plus(plan.sawKerf()).plus(left)).isEqualTo(boards);
  }

  @Test
  void mixedLengthsAreOpenedInStepWithThePacks() {
    BoardGoods mixed = BoardGoods.mixed(List.of(new PackContent(Length.ofMillimetres(1800), 1),
        new PackContent(Length.ofMillimetres(1200), 1)), Length.ofMillimetres(200), Length.ofMillimetres(14));
    // Six end pieces of 1000 fit into either length: three of each are opened.
    List<PieceWanted> pieces = java.util.stream.IntStream.range(0, 6)
        .mapToObj(row -> piece(row, 1000, 0, 200, Ends.LOW)).toList();

    assertThat(CuttingPlan.of(pieces, mixed, RULES).boardsPerLength()).containsExactly(3, 3);
  }

  @Test
  void aWholeBoardIsOpenedInItsOwnLength() {
    // By their share of the packs the 1800 boards would come first; a piece with two machined ends must be a whole board.
    BoardGoods mixed = BoardGoods.mixed(List.of(new PackContent(Length.ofMillimetres(1800), 9),
        new PackContent(Length.ofMillimetres(1200), 1)), Length.ofMillimetres(200), Length.ofMillimetres(14));
    CuttingPlan plan = CuttingPlan.of(List.of(piece(0, 1200, 0, 200, Ends.BOTH), piece(0, 1200, 0, 200, Ends.BOTH)),
        mixed, RULES);

    assertThat(plan.boardsPerLength()).containsExactly(0, 2);
  }

  @Test
  void aWholeShortStripIsNotCutFromALongOne() {
    // The strip left of the 1800 board has both its ends, 1800 apart: it is no whole 1200 board.
    BoardGoods mixed = BoardGoods.mixed(List.of(new PackContent(Length.ofMillimetres(1800), 1),
        new PackContent(Length.ofMillimetres(1200), 1)), Length.ofMillimetres(200), Length.ofMillimetres(14));
    CuttingPlan plan = CuttingPlan.of(List.of(piece(0, 1800, 100, 200, Ends.BOTH), piece(9, 1200, 0, 90, Ends.BOTH)),
        mixed, RULES);

    assertThat(plan.boardsPerLength()).containsExactly(1, 1);
  }

  @Test
  void aPieceLongerThanTheBoardIsRefused() {
    assertThatThrownBy(() -> CuttingPlan.of(List.of(piece(0, 2001, 0, 200, Ends.LOW)), GOODS, RULES))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a piece 2001 mm long that ends 200 mm across does not fit into the longest board,"
            + " 2000 mm by 200 mm");
  }
}
