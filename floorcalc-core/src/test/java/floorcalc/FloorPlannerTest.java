package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.bays.ExpansionBreak;
import floorcalc.boards.BoardGoods;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.plan.Bay;
import floorcalc.plan.Cut;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorJobBuilder;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.Order;
import floorcalc.plan.PieceKind;
import floorcalc.plan.Room;
import floorcalc.plan.Row;
import floorcalc.plan.UnsoundJobException;
import floorcalc.rows.RowWay;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Floors worked by hand. Where nothing else is said: boards of 2200 by 185 by 14, six in a pack, and common practice. */
class FloorPlannerTest {
  private static final BoardGoods PLANK = BoardGoods.of(mm(2200), mm(185), mm(14), 6);

  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static Length inches(int whole, int numerator, int denominator) {
    return Length.ofInches(whole, numerator, denominator);
  }

  private static FloorJobBuilder job(BoardGoods goods, String... rooms) {
    FloorJobBuilder job = FloorJob.of("Invented floor", goods).direction(DirectionChoice.of(Direction.ALONG_X));
    for (int i = 0; i < rooms.length; i++) {
      job.room(Room.of("Room " + (char) ('A' + i), Wkt.parse("POLYGON ((" + rooms[i] + "))")));
    }
    return job;
  }

  private static List<LaidPiece> pieces(FloorPlan plan) {
    return plan.bays().stream().flatMap(bay -> bay.rows().stream()).flatMap(row -> row.pieces().stream()).toList();
  }

  private static Stream<Length> widths(Bay bay) {
    return bay.rows().stream().map(Row::coverWidth);
  }

  /**
   * Laid: 4220 − 2 · 10 = 4200 by 3720 − 2 · 10 = 3700, which is 20 rows of 185.
   * <p>
   * Boards: a row of 4200 is a start piece s and an end piece e of 4200 in all, or these of 2000 in all with a whole board
   * between. With two pieces s and e are at least 4200 − 2200 = 2000, and beside 2000 and a kerf a board has 197 left, less than
   * the least piece of 300; so both take a board of their own. With three pieces there is the whole board, and a board gives one
   * start piece at most, since it has one end at high x. So each row takes two boards and 40 is the least. (Lengths alone say less:
   * (20 · 4200 + 40 · 3) / (2200 + 3) = 38.2, so 39; the bound by prices says 40.)
   * <p>
   * Packs: 2 % of 40 is 0.8, so 1 spare board; 41 boards are 7 packs of 6, one board over. Areas in m²: a board 2.2 · 0.185 =
   * 0.407; bought 42 · 0.407 = 17.094; laid 4.2 · 3.7 = 15.54; spare and over 0.407 each; left for the saw and offcuts
   * 40 · 0.407 − 15.54 = 0.74.
   */
  @Test
  void twentyRowsOfFullWidth() {
    FloorPlan plan = FloorPlanner.plan(job(PLANK, "0 0, 4220 0, 4220 3720, 0 3720, 0 0").build());

    Bay bay = plan.bays().get(0);
    assertThat(bay.bay()).isEqualTo("room-a-1");
    assertThat(bay.laid()).isEqualTo(Wkt.parse("POLYGON ((10 10, 4210 10, 4210 3710, 10 3710, 10 10))"));
    assertThat(widths(bay)).hasSize(20).containsOnly(mm(185));
    for (Row row : bay.rows()) {
      assertThat(row.pieces().stream().map(piece -> piece.from().length()).reduce(Length.ZERO, Length::plus))
          .isEqualTo(mm(4200));
      assertThat(row.pieces()).hasSizeBetween(2, 3).allSatisfy(piece ->
          assertThat(piece.from().length()).isBetween(mm(300), mm(2200)));
    }
    assertThat(plan.order()).isEqualTo(new Order(40, 40, 1, 7, 42, 7));
    assertThat(plan.compromises()).isEmpty();
    assertThat(plan.ledger().bought()).isEqualTo(Area.ofSquareMetres("17.094"));
    assertThat(plan.ledger().laid()).isEqualTo(Area.ofSquareMetres("15.54"));
    assertThat(plan.ledger().trimmedToShape()).isEqualTo(Area.ZERO);
    assertThat(plan.ledger().spare()).isEqualTo(Area.ofSquareMetres("0.407"));
    assertThat(plan.ledger().packRounding()).isEqualTo(Area.ofSquareMetres("0.407"));
    assertThat(plan.ledger().sawKerf().plus(plan.ledger().usableOffcuts()).plus(plan.ledger().shortOffcuts()))
        .isEqualTo(Area.ofSquareMetres("0.74"));
  }

  /** Boards of 1200 in a cupboard of 1220 by 390: two whole boards side by side, nothing sawn, four of the pack left. */
  @Test
  void twoWholeBoards() {
    BoardGoods goods = BoardGoods.of(mm(1200), mm(185), mm(14), 6);

    FloorPlan plan = FloorPlanner.plan(job(goods, "0 0, 1220 0, 1220 390, 0 390, 0 0").build());

    assertThat(pieces(plan)).hasSize(2).allSatisfy(piece -> {
      assertThat(piece.kind()).isEqualTo(PieceKind.FULL);
      assertThat(piece.from()).isEqualTo(new Cut(piece.from().board(), Length.ZERO, mm(1200), Length.ZERO, mm(185)));
    });
    assertThat(plan.order()).isEqualTo(new Order(2, 2, 1, 1, 6, 1));
    assertThat(plan.order().provenFewest()).isTrue();
    // 0.222 m² a board: 6 bought, 2 laid, 1 spare, 3 over.
    assertThat(plan.ledger().bought()).isEqualTo(Area.ofSquareMetres("1.332"));
    assertThat(plan.ledger().laid()).isEqualTo(Area.ofSquareMetres("0.444"));
    assertThat(plan.ledger().packRounding()).isEqualTo(Area.ofSquareMetres("0.666"));
    assertThat(plan.ledger().cuttingWaste()).isEqualTo(Area.ZERO);
  }

  /**
   * First and last row; the rows between are 185.
   * <p>
   * A room 2500 deep is laid 2480 deep: 13 · 185 = 2405 leaves 75, wide enough; balanced it is (185 + 75) / 2 = 130 on both
   * sides. A room 2450 deep is laid 2430 deep: 25 are left, fewer than 70; balanced (185 + 25) / 2 = 105; with the least cut the
   * last row is 70 and the first 185 − (70 − 25) = 140. All make 14 rows.
   */
  @ParameterizedTest
  @CsvSource({"2500, AS_NEEDED, 185, 75", "2500, LEAST_CUT, 185, 75", "2500, BALANCED, 130, 130",
      "2500, WIDEST_STRIP, 130, 130", "2450, AS_NEEDED, 105, 105", "2450, LEAST_CUT, 140, 70",
      "2450, BALANCED, 105, 105", "2450, WIDEST_STRIP, 105, 105"})
  void firstAndLastRow(int depth, RowWay way, int first, int last) {
    FloorPlan plan = FloorPlanner.plan(job(PLANK, "0 0, 3000 0, 3000 " + depth + ", 0 " + depth + ", 0 0")
        .rowWay(way).build());

    List<Row> rows = plan.bays().get(0).rows();
    assertThat(rows).hasSize(14);
    assertThat(rows.get(0).coverWidth()).isEqualTo(mm(first));
    assertThat(rows.get(13).coverWidth()).isEqualTo(mm(last));
    assertThat(rows.subList(1, 13)).allSatisfy(row -> assertThat(row.coverWidth()).isEqualTo(mm(185)));
    // A ripped first row keeps the edge that the second row meets, a ripped last row the edge that it lays against.
    assertThat(rows.get(0).pieces()).allSatisfy(piece -> {
      assertThat(piece.from().acrossFrom()).isEqualTo(mm(185 - first));
      assertThat(piece.from().acrossTo()).isEqualTo(mm(185));
    });
    assertThat(rows.get(13).pieces()).allSatisfy(piece -> {
      assertThat(piece.from().acrossFrom()).isEqualTo(Length.ZERO);
      assertThat(piece.from().acrossTo()).isEqualTo(mm(last));
    });
  }

  /**
   * Two rooms as long as a board. Room A is laid 2480 deep: 13 rows and a last row of 75. Room B is laid 2430 deep: 105, 12
   * rows, 105. The rip of A's last row leaves its board 185 − 75 − 3 = 107 wide along the edge at high y, and B's first row of 105
   * needs that edge: one board gives both. So 13 + 1 + 12 + 1 = 27 boards. The bound reaches that: rips of 75 and 105 could share
   * a board, so they count by area, each a kerf longer and wider, as the board does:
   * 25 + (78 + 108 + 108) / (185 + 3) = 26.6, so 27.
   * <p>
   * Sawn: 3 mm beside the 75; 2 mm below the 105, all that is left there; 3 mm above the last 105: 8 · 2200 mm² = 0.0176 m². Left:
   * 185 − 105 − 3 = 77 by 2200, 0.1694 m², wide and long enough to serve again. Spare 1, since 2 % of 27 is 0.54; 28 boards are
   * 5 packs.
   */
  @Test
  void lastRowOfOneRoomAndFirstRowOfTheNextFromOneBoard() {
    FloorPlan plan = FloorPlanner.plan(job(PLANK, "0 0, 2220 0, 2220 2500, 0 2500, 0 0",
        "0 0, 2220 0, 2220 2450, 0 2450, 0 0").build());

    assertThat(plan.bays().get(0).rows().get(13).pieces()).singleElement().satisfies(piece ->
        assertThat(piece.from()).isEqualTo(new Cut(14, Length.ZERO, mm(2200), Length.ZERO, mm(75))));
    assertThat(plan.bays().get(1).rows().get(0).pieces()).singleElement().satisfies(piece ->
        assertThat(piece.from()).isEqualTo(new Cut(14, Length.ZERO, mm(2200), mm(80), mm(185))));
    assertThat(plan.boards().get(13).openedInRow()).isEqualTo("room-a-1.14");
    assertThat(plan.order()).isEqualTo(new Order(27, 27, 1, 5, 30, 5));
    assertThat(plan.ledger().laid()).isEqualTo(Area.ofSquareMetres("10.802"));
    assertThat(plan.ledger().sawKerf()).isEqualTo(Area.ofSquareMetres("0.0176"));
    assertThat(plan.ledger().usableOffcuts()).isEqualTo(Area.ofSquareMetres("0.1694"));
    assertThat(plan.ledger().shortOffcuts()).isEqualTo(Area.ZERO);
  }

  /**
   * Feet and inches: a room of 12' 3/4" by 10' 3/4" with a gap of 3/8" is laid 12' by 10'; boards of 48" by 5" make 24 rows of
   * three boards' length.
   * <p>
   * Joints 12" apart do not allow two neighbouring rows of three whole boards, so at least 12 rows are broken: a start piece s, two
   * whole boards, an end piece e, s + e = 48". With a kerf of 1/8" s and e do not come from one board. If the 2 k pieces of k
   * broken rows came from k boards, two from each, these would hold 48 k and k kerfs, more than they are. So they take k + 1
   * boards and the floor takes 24 · 3 + 1 = 73. The bound by lengths is only (24 · 144 + 72 / 8) / (48 + 1/8) = 72; the bound by prices reaches 73.
   * Areas: 73 + 2 spare boards are 8 packs of 10; laid 144 · 120 in².
   */
  @Test
  void wholeBoardsAndBrokenRowsInTurn() {
    BoardGoods goods = BoardGoods.of(inches(48, 0, 1), inches(5, 0, 1), inches(0, 3, 4), 10);
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(goods.thickness(), goods.coverWidth())
        .with(LayingRules.EXPANSION_GAP, inches(0, 3, 8), Source.GIVEN)
        .with(LayingRules.MINIMUM_END_PIECE, inches(12, 0, 1), Source.GIVEN)
        .with(LayingRules.MINIMUM_JOINT_OFFSET, inches(12, 0, 1), Source.GIVEN)
        .with(LayingRules.SAW_KERF, inches(0, 1, 8), Source.GIVEN);
    String width = Length.parse("12' 3/4\"").toMillimetreString();
    String depth = Length.parse("10' 3/4\"").toMillimetreString();

    FloorPlan plan = FloorPlanner.plan(job(goods,
        "0 0, " + width + " 0, " + width + " " + depth + ", 0 " + depth + ", 0 0").rules(rules).build());

    assertThat(widths(plan.bays().get(0))).hasSize(24).containsOnly(inches(5, 0, 1));
    assertThat(plan.order()).isEqualTo(new Order(73, 73, 2, 8, 80, 8));
    assertThat(plan.ledger().laid()).isEqualTo(inches(144, 0, 1).times(inches(120, 0, 1)));
    assertThat(plan.compromises()).isEmpty();
  }

  /**
   * An L with walls of 1870 and 2020 across its inner corner: the break runs down from there, 1870 long, and leaves a bay 2010 - 10 =
   * 2000 wide and 3330 high, and one of 4010 - 2030 = 1980 by 1850.
   */
  @Test
  void anLIsSplitAtItsInnerCorner() {
    FloorPlan plan = FloorPlanner.plan(job(PLANK,
        "0 0, 4020 0, 4020 1870, 2020 1870, 2020 3350, 0 3350, 0 0").build());

    assertThat(plan.breaks()).singleElement().satisfies(line -> {
      assertThat(line.gap()).isEqualTo(mm(20));
      assertThat(line.room()).isEqualTo(plan.bays().get(0).room());
      assertThat(line.line().length()).isEqualTo(mm(1870));
      assertThat(line.line().reason()).isEqualTo(ExpansionBreak.Reason.INNER_CORNER);
      assertThat(List.of(line.line().from(), line.line().to()))
          .containsExactlyInAnyOrder(Point.ofMillimetres(2020, 0), Point.ofMillimetres(2020, 1870));
    });
    assertThat(plan.bays()).map(Bay::laid).map(Wkt::write).containsExactly(
        "POLYGON ((10 10, 2010 10, 2010 3340, 10 3340, 10 10))", "POLYGON ((2030 10, 4010 10, 4010 1860, 2030 1860, 2030 10))");
    assertThat(plan.findings()).noneMatch(finding -> finding.code().equals("bay-must-be-split"));
  }

  /**
   * An L laid whole: below 4020 by 1870, above 2020 by 1480. Less the gap the rows divide both parts: 1850 / 185 = 10 rows of 4000, then
   * (3330 − 1850) / 185 = 8 rows of 2000. Area 10 · 0.185 · 4 + 8 · 0.185 · 2 = 10.36 m². The short rows take a board each, the long
   * rows two at most: 28 at most; at least (10 · 4000 + 8 · 2000 + 28 · 3) / 2203 = 25.5, so 26.
   */
  @Test
  void rowsOfAnL() {
    FloorJob split = job(PLANK, "0 0, 4020 0, 4020 1870, 2020 1870, 2020 3350, 0 3350, 0 0").build();
    FloorPlan plan = FloorPlanner.plan(split.withRooms(List.of(split.rooms().get(0).withBreaks(List.of()))));

    assertThat(plan.findings()).anyMatch(finding -> finding.code().equals("bay-must-be-split"));
    List<Row> rows = plan.bays().get(0).rows();
    assertThat(widths(plan.bays().get(0))).hasSize(18).containsOnly(mm(185));
    for (int k = 0; k < 18; k++) {
      assertThat(rows.get(k).pieces().stream().map(piece -> piece.from().length()).reduce(Length.ZERO, Length::plus))
          .isEqualTo(mm(k < 10 ? 4000 : 2000));
    }
    assertThat(plan.ledger().laid()).isEqualTo(Area.ofSquareMetres("10.36"));
    assertThat(plan.order().boardsAtLeast()).isEqualTo(26);
    assertThat(plan.order().boardsUsed()).isBetween(26, 28);
  }

  @Test
  void aJobThatCannotBePlannedIsRefusedWithAllItsFaults() {
    FloorJob job = job(PLANK, "0 0, 4000 3000, 4000 0, 0 3000, 0 0", "0 0, 15 0, 15 3000, 0 3000, 0 0").build();

    assertThat(FloorPlanner.faultsOf(job)).hasSize(2);
    assertThatThrownBy(() -> FloorPlanner.plan(job)).isInstanceOfSatisfying(UnsoundJobException.class, refused ->
        assertThat(refused.faults()).isEqualTo(FloorPlanner.faultsOf(job)));
  }
}
