package floorcalc.boards;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.StepChecks;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Boards of 2000 by 200 mm, kerf 3 mm; all figures by hand. */
class BoardBoundTest {
  private static final BoardGoods GOODS =
      BoardGoods.of(Length.ofMillimetres(2000), Length.ofMillimetres(200), Length.ofMillimetres(14), 5);
  private static final LayingRules RULES = RuleSet.COMMON_PRACTICE.forBoard(GOODS.thickness(), GOODS.coverWidth());

  private static Stretch stretch(long length, long width, Edges edges) {
    return new Stretch(Length.ofMillimetres(length), Length.ofMillimetres(width), edges);
  }

  private static int bound(List<Stretch> stretches) {
    return BoardBound.of(runs(stretches), Area.ZERO, Area.ZERO, GOODS, RULES).value();
  }

  /** A run for each stretch. */
  private static List<List<Stretch>> runs(List<Stretch> stretches) {
    return stretches.stream().map(List::of).toList();
  }

  @Test
  void kerfsCount() {
    // Ten rows of 3998: 2 pieces each. (39980 + 20 * 3) / 2003 = 19.99, so 20.
    assertThat(bound(Collections.nCopies(10, stretch(3998, 200, Edges.BOTH)))).isEqualTo(20);
    // Ten rows of 3000: (30000 + 60) / 2003 = 15.007, so 16; by length alone 15 would do.
    assertThat(bound(Collections.nCopies(10, stretch(3000, 200, Edges.BOTH)))).isEqualTo(16);
  }

  @Test
  void stripsThatNeedTheSameEdgeNeverShareAPlace() {
    assertThat(bound(Collections.nCopies(2, stretch(2000, 90, Edges.LOW)))).isEqualTo(2);
    assertThat(bound(Collections.nCopies(2, stretch(2000, 90, Edges.HIGH)))).isEqualTo(2);
  }

  @Test
  void aLowAndAHighStripShareABoardWhereTheyFit() {
    // 90 + 3 + 107 = 200 fits, 90 + 3 + 108 does not.
    assertThat(bound(List.of(stretch(2000, 90, Edges.LOW), stretch(2000, 107, Edges.HIGH)))).isEqualTo(1);
    assertThat(bound(List.of(stretch(2000, 90, Edges.LOW), stretch(2000, 108, Edges.HIGH)))).isEqualTo(2);
  }

  @Test
  void onlyStripsThatFitTogetherRideAlong() {
    // Low strips of 120 and 40, high ones of 100 and 70, 2000 long each. 120 fits beside 70 (193), not beside 100 (223); 40 beside
    // both. At best 120 lies beside 70 and 40 beside 100: two boards.
    assertThat(bound(List.of(stretch(2000, 120, Edges.LOW), stretch(2000, 40, Edges.LOW), stretch(2000, 100, Edges.HIGH),
        stretch(2000, 70, Edges.HIGH)))).isEqualTo(2);
    // Low 120 and 110, high 100 and 70: 110 and 100 do not fit either, so one pair at best: three boards.
    assertThat(bound(List.of(stretch(2000, 120, Edges.LOW), stretch(2000, 110, Edges.LOW), stretch(2000, 100, Edges.HIGH),
        stretch(2000, 70, Edges.HIGH)))).isEqualTo(3);
  }

  @Test
  void aPieceMayLieInSeveralStretchesOfItsRun() {
    // 1000 + 1000 in one run may be one piece: (2000 + 3) / 2003 = 1. In two runs there are two: (2000 + 6) / 2003, so 2.
    Stretch full = stretch(1000, 200, Edges.BOTH);
    Stretch strip = stretch(1000, 150, Edges.LOW);
    assertThat(BoardBound.of(List.of(List.of(full, strip)), Area.ZERO, Area.ZERO, GOODS, RULES).value()).isEqualTo(1);
    assertThat(BoardBound.of(List.of(List.of(full), List.of(strip)), Area.ZERO, Area.ZERO, GOODS, RULES).value()).isEqualTo(2);
  }

  @Test
  void otherFloorCountsByItsArea() {
    // 0.9 m² of a board enlarged to 2.003 * 0.203 = 0.406609 m²: 2.21, so 3.
    assertThat(BoardBound.of(List.of(), Area.ofSquareMillimetres(900_000), Area.ZERO, GOODS, RULES).value()).isEqualTo(3);
  }

  @Test
  void theWorkingGivesTheSameNumber() {
    // (3000 + 2 * 3) * (200 + 3) = 610218 mm²
    Calculated<Integer> bound = BoardBound.of(List.of(List.of(stretch(3000, 200, Edges.BOTH))), Area.ZERO,
        Area.ofSquareMillimetres(600_000), GOODS, RULES);
    assertThat(bound.explain()).isEqualTo("""
        boards-by-length: How many boards does the length of the rows take at least?
          b1 = ceil((S + n * c) / (P + c))
            S = 3000 mm  (length that pieces must cover, none of them side by side)
            n = 2  (least number of pieces in it)
            c = 3 mm  (saw kerf; common practice, no source)
            P = 2000 mm  (longest board)
          = 2  [definition]
        boards-by-area: How many boards does the area of the floor take at least?
          b2 = ceil((T + A) / ((P + c) * (w + c)))
            T = 0.610218 m²  (stretches of rows, each piece enlarged by the kerf)
            A = 0 m²  (floor of odd shape)
            c = 3 mm  (saw kerf; common practice, no source)
            P = 2000 mm  (longest board)
            w = 200 mm  (laid pitch)
          = 2  [definition]
        boards-by-floor: How many boards does the floor fill, with nothing lost?
          b3 = ceil(F / (P * w))
            F = 0.6 m²  (floor laid)
            P = 2000 mm  (longest board)
            w = 200 mm  (laid pitch)
          = 2  [definition]""");
  }

  @Test
  void theWorkingCanBeWorkedAgain() {
    List<Stretch> stretches = List.of(stretch(3000, 200, Edges.BOTH), stretch(1234, 77, Edges.LOW), stretch(900, 150, Edges.HIGH));
    StepChecks.assertStepsHold(
        BoardBound.of(runs(stretches), Area.ofSquareMillimetres(654_321), Area.ofSquareMillimetres(1_500_000), GOODS, RULES));
  }

  @Test
  void nothingToCoverTakesNoBoard() {
    assertThat(bound(List.of())).isZero();
  }

  @Test
  void pricesSeeThatLongPiecesFindNoPartner() {
    // Rows of 1900 from boards of 1000, least piece 480, kerf 3. Two pieces of one board are at least 480 each, so a piece
    // that has a partner is 480 to 517 long. s + e is 900 (with one whole board) or 1900 (with none): at 900 both are 480
    // at least, so each is at most 420: impossible. So s + e = 1900: both at least 900 or whole: no partner; two boards a
    // row. By length (1900 + 2 * 3) / 1003 = 1.9 a row: for 20 rows 39.
    BoardGoods goods = BoardGoods.of(Length.ofMillimetres(1000), Length.ofMillimetres(200), Length.ofMillimetres(14), 5);
    LayingRules rules = RULES.with(LayingRules.MINIMUM_END_PIECE, Length.ofMillimetres(480), Source.GIVEN)
        .with(LayingRules.MINIMUM_JOINT_OFFSET, Length.ZERO, Source.GIVEN);
    List<Run> runs = Run.equalRows(20, Length.ofMillimetres(1900));
    List<Stretch> stretches = Collections.nCopies(20, stretch(1900, 200, Edges.BOTH));

    assertThat(BoardBound.of(runs(stretches), Area.ZERO, Area.ZERO, goods, rules).value()).isEqualTo(39);
    assertThat(BoardBound.of(runs, runs(stretches), Area.ZERO, Area.ZERO, goods, rules, 1000).value()).isEqualTo(40);
  }

  private static Calculated<Integer> ofRuns(int least, long... spans) {
    LayingRules rules = RULES.with(LayingRules.MINIMUM_END_PIECE, Length.ofMillimetres(least), Source.GIVEN)
        .with(LayingRules.MINIMUM_JOINT_OFFSET, Length.ZERO, Source.GIVEN);
    List<Run> runs = java.util.stream.IntStream.range(0, spans.length)
        .mapToObj(i -> Run.of(i, 0, Length.ofMillimetres(spans[i]).toNanometres())).toList();
    List<Stretch> stretches = java.util.Arrays.stream(spans).mapToObj(span -> stretch(span, 200, Edges.BOTH)).toList();
    return BoardBound.of(runs, runs(stretches), Area.ZERO, Area.ZERO, GOODS, rules, 1000);
  }

  @Test
  void singlePiecesLongerThanHalfABoardTakeABoardEach() {
    // Two pieces of 600 are longer than 1100, so each run is one piece. By length 3 * 1103 / 2003 = 1.7, so 2.
    assertThat(ofRuns(600, 1100, 1100, 1100).value()).isEqualTo(3);
    // With 500 allowed, 500 and 600 from two boards, and 600 + 3 + 500 from the third run: fewer may do.
    assertThat(ofRuns(500, 1100, 1100, 1100).value()).isEqualTo(2);
  }

  @Test
  void singlePiecesLongerThanAThirdOfABoardGoTwoToABoard() {
    // Boards are divided into three parts of 2003 / 3 = 667.7; 700 + 3 is longer than one: half a board each. By length
    // 8 * 703 / 2003 = 2.8, so 3.
    Calculated<Integer> bound = ofRuns(400, 700, 700, 700, 700, 700, 700, 700, 700);
    assertThat(bound.value()).isEqualTo(4);
    assertThat(bound.steps()).anySatisfy(step -> {
      assertThat(step.id()).isEqualTo("boards-by-shares");
      assertThat(step.result()).isEqualTo(4);
    });
  }

  @Test
  void piecesThatLeaveNoRoomForAnotherCountForABoard() {
    // Two pieces of 760 are longer than 1500, so each run is one piece. 1500 leaves 497, less than 600: a board each, and 603
    // of 2003 more. By length (3 * 1503 + 603) / 2003 = 2.6, so 3.
    assertThat(ofRuns(760, 1500, 1500, 1500, 600).value()).isEqualTo(4);
  }

  @Test
  void aBoundIsGivenWhereNoWayKeepsTheRules() {
    // 4500 is one board and 2500, and no piece may be shorter than 900: start pieces are 900 to 1600 long, or all is whole but
    // 500, too short. Joints of two rows are then never more than 700 apart, 900 is asked for. By length
    // (5 * 4500 + 15 * 3) / 2003 = 11.3, so 12.
    LayingRules rules = RULES.with(LayingRules.MINIMUM_JOINT_OFFSET, Length.ofMillimetres(900), Source.GIVEN)
        .with(LayingRules.MINIMUM_END_PIECE, Length.ofMillimetres(900), Source.GIVEN);
    Calculated<Integer> bound = BoardBound.of(Run.equalRows(5, Length.ofMillimetres(4500)),
        Collections.nCopies(5, List.of(stretch(4500, 200, Edges.BOTH))), Area.ZERO, Area.ZERO, GOODS, rules, 1000);
    assertThat(bound.value()).isBetween(12, 15);
    assertThat(bound.findings()).extracting(finding -> finding.code()).containsExactly("no-way-keeps-the-rules");
  }
}
