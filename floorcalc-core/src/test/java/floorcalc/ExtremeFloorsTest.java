package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.audit.AuditReport;
import floorcalc.audit.PlanAudit;
import floorcalc.boards.BoardGoods;
import floorcalc.laying.FloorLaying;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Wkt;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorJobBuilder;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleKey;
import floorcalc.working.Finding;
import floorcalc.working.Source;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Invented floors at which rounding shows: needles, necks, boards of a few millimetres. Each is laid, passes the audit and
 * its ledger balances; what it guards is said beside it. Boards too short to be sold are laid past the check of the job.
 */
class ExtremeFloorsTest {
  private static final Map<RuleKey<Length>, Integer> NO_MINIMUMS = Map.of(LayingRules.MINIMUM_ROW_WIDTH, 0,
      LayingRules.MINIMUM_END_PIECE, 0, LayingRules.MINIMUM_JOINT_OFFSET, 0, LayingRules.SAW_KERF, 0);

  private static FloorJob job(String room, BoardGoods goods, String gap, String degrees, Map<RuleKey<Length>, Integer> rules) {
    FloorJobBuilder job = FloorJob.of("Invented floor", goods)
        .room(Room.of("Room", Wkt.parse("POLYGON (" + room + ")")))
        .direction(DirectionChoice.of(Direction.fromDegrees(Double.parseDouble(degrees))));
    LayingRules all = job.build().rules().with(LayingRules.EXPANSION_GAP, Length.ofMillimetres(gap), Source.GIVEN);
    for (Map.Entry<RuleKey<Length>, Integer> rule : rules.entrySet()) {
      all = all.with(rule.getKey(), Length.ofMillimetres(rule.getValue()), Source.GIVEN);
    }
    return job.rules(all).build();
  }

  private static BoardGoods boards(int length, int width) {
    return BoardGoods.of(Length.ofMillimetres(length), Length.ofMillimetres(width), Length.ofMillimetres(14), 6);
  }

  private static FloorPlan sound(FloorJob job) {
    FloorPlan plan = FloorLaying.of(job);
    AuditReport audit = PlanAudit.of(job, plan);
    assertThat(audit.breaches()).isEmpty();
    assertThat(audit.notes()).extracting(Finding::code).isSubsetOf("tip-left-out");
    assertThat(plan.ledger().difference()).isEqualTo(Area.ZERO);
    assertThat(plan.order().boardsAtLeast()).isBetween(1, plan.order().boardsUsed());
    return plan;
  }

  private static List<LaidPiece> pieces(FloorPlan plan) {
    return plan.bays().stream().flatMap(bay -> bay.rows().stream()).flatMap(row -> row.pieces().stream()).toList();
  }

  @Test
  void aJointAtTheVeryEndOfTheContactOfTwoRows() {
    // A needle laid at 45°: a joint of row 17 falls on the corner at which the row line meets the wall.
    sound(job("(0 0, 17449.123406 0, 0 190.258032, 0 0)", boards(300, 300), "8", "45",
        Map.of(LayingRules.MINIMUM_ROW_WIDTH, 70)));
  }

  @Test
  void jointsThatEndShortOfTheNextRow() {
    // Two arms laid at a slant: rows have runs side by side, and few joints reach both row lines.
    sound(job("(0 0, 4266.905854 0, 4266.905854 41.499605, 1706.762341 41.499605, 1706.762341 82.99921,"
        + " 4266.905854 96.832412, 4266.905854 138.332017, 0 138.332017, 0 0)", boards(10, 185), "10", "37.5",
        Map.of(LayingRules.SAW_KERF, 0)));
    sound(job("(0 0, 5908.3 5908.3, 5847 5969.7, 4665.3 4788, 3948.9 4322.7, 5609.3 6207.4, 5534.6 6282.1, 1970.9 2755.8,"
        + " -373.8 373.8, -261.6 261.6, 957.4 1405.9, -186.9 186.9, 0 0)", boards(50, 57), "8", "0", Map.of()));
  }

  @Test
  void aTipLeftOutBesideAJoint() {
    // The slanted wall rises 151 in 1, so the tip is 0.003 mm by 0.5 mm.
    sound(job("(0 0, 82.405723 0, 0 12459.033078, 0 0)", boards(10, 20), "8", "0",
        Map.of(LayingRules.MINIMUM_ROW_WIDTH, 0, LayingRules.SAW_KERF, 0)));
  }

  @Test
  void theBoundCountsNoTipThatIsLeftOut() {
    // 587 pieces of a millimetre and a tip of 0.02 mm; each piece is wider than half a board.
    FloorPlan plan = sound(job("(0 0, 1022.883928 0, 0 47.997177, 0 0)", boards(1, 90), "10", "357.313436602",
        Map.of(LayingRules.MINIMUM_ROW_WIDTH, 0)));
    assertThat(plan.order().boardsUsed()).isEqualTo(pieces(plan).size());
  }

  @Test
  void aWallCutByTenThousandJoints() {
    sound(job("(0 0, 10391.826411 0.848307, 10495.744676 84.830694, -207.836528 83.134081, 0 0)", boards(1, 90), "10",
        "0.004677216", NO_MINIMUMS));
  }

  @Test
  void aStripLessThanAMicrometreAndAHalfWide() {
    // Pieces 0.001414 mm wide meet end to end.
    sound(job("(0 0, 7429.939 7429.939, 7429.938 7429.939, 2210.634 2210.636, -3543.114 7964.384, -4648.431 6859.066,"
        + " 1105.317 1105.318, -0.001 0.001, 0 0)", boards(300, 190), "0", "45",
        Map.of(LayingRules.MINIMUM_ROW_WIDTH, 0, LayingRules.MINIMUM_END_PIECE, 0)));
  }

  @Test
  void wallsPutInLineWithBoardsTurnedByNextToNothing() {
    sound(job("(-4758.3562 2379.1781, -4158.356201 2379.178101, -4158.356201 2495.824175, -4314.290883 2495.824175,"
        + " -4314.290883 2699.178104, -4758.356201 2699.178103, -4758.3562 2379.1781)", boards(100, 20), "100", "0.0000001",
        Map.of()));
  }

  @Test
  void aNeckOfHalfAMicrometre() {
    // Two rooms joined by an arm two gaps wide: less the gaps 0.0005 mm are left of it, and it is closed.
    FloorJob neck = job("(0 0, -3747.344 -1266.61, -3737.916 -1294.505, -2854.953 -996.062, -2261.22 -2752.658,"
        + " -829.029 -2268.575, -1422.762 -511.979, 9.429 -27.896, 0 0)", boards(1820, 20), "14.722973", "270",
        Map.of(LayingRules.MINIMUM_END_PIECE, 0));
    FloorPlan plan = sound(neck.withRooms(List.of(neck.rooms().get(0).withBreaks(List.of()))));
    assertThat(plan.bays()).hasSize(1);
    assertThat(plan.bays().get(0).laid().shell().size()).as("the room, and where the arm began").isEqualTo(5);
  }

  @Test
  void aNeedleBesideAFloorWithAColumn() {
    FloorPlan plan = sound(job("(0 0, 5484.791 47.865, 5484.573 72.864, 2686.369 48.445, 2681.133 648.422, 1337.839 636.699,"
        + " 1343.075 36.722, -0.218 24.999, 0 0), (2359.044 189.343, 2377.725 128.807, 2395.346 189.66, 2376.666 250.197,"
        + " 2359.044 189.343)", boards(1820, 300), "12.5", "0", Map.of()));
    assertThat(pieces(plan)).hasSize(3);
  }

  @Test
  void aRunANanometreLongerThanWholeBoards() {
    // 4 boards of 100 mm and 1 nm: nobody can saw that piece, and no joint is counted beside it.
    FloorPlan plan = sound(job("(0 0, 400.000001 0, 400.000001 500, 0 500, 0 0)", boards(100, 98), "0", "0",
        Map.of(LayingRules.MINIMUM_JOINT_OFFSET, 0)));
    assertThat(pieces(plan)).allSatisfy(piece -> assertThat(piece.from().alongTo()).isEqualTo(Length.ofMillimetres(100)));

    plan = sound(job("(0 0, 2019.999999 0, 2019.999999 500.000001, 0 500.000001, 0 0)", boards(1820, 300), "100", "0",
        Map.of(LayingRules.MINIMUM_ROW_WIDTH, 0)));
    assertThat(plan.order().boardsUsed()).as("1819.999999 mm by 300.000001 mm, a row of 1 nm left out").isEqualTo(1);

    plan = sound(job("(0 0, 500.000002 0, 500.000002 485.000003, 0 485.000003, 0 0)", boards(300, 57), "100",
        "0.000000547", Map.of(LayingRules.MINIMUM_ROW_WIDTH, 20)));
    assertThat(plan.compromises()).noneMatch(compromise -> compromise.rule().equals("minimumJointOffset"));
  }

  @Test
  void theMitreOfANeedleReachesItsTip() {
    // Rays that meet at a point: along one wall no more than a fifth of a millimetre lies beside the mitre of the next.
    sound(job("(0 0, 1307.802527 -8592.795291, 1313.307932 -8591.957381, 1051.747427 -6873.398323, 1014.323304 -5999.910218,"
        + " 1465.980983 -8568.720915, 1505.525597 -8562.70232, 730.730235 -3405.520498, 197.723071 30.09297, 138.40615 21.065079,"
        + " 380.194348 -1700.503276, 98.861535 15.046485, 0 0)", boards(2122, 190), "100", "98.653866317",
        Map.of(LayingRules.MINIMUM_ROW_WIDTH, 150, LayingRules.MINIMUM_JOINT_OFFSET, 10)));
  }

  @Test
  void aTipWithoutAPointBesideAJoint() {
    // What the joint cuts off at the wall is 0.001 mm by 0.187 mm.
    sound(job("(345967.129 -172983.564, 345967.129 -172883.563, 345966.942 -172883.563, 345966.942 -172903.563,"
        + " 345964.629 -172913.564, 345963.129 -172883.563, 345962.129 -172883.563, 345961.879 -172943.564, 345962.129 -172983.564,"
        + " 345963.629 -172983.564, 345964.129 -172963.564, 345964.629 -172983.564, 345967.129 -172983.564)", boards(100, 67), "0",
        "90", Map.of(LayingRules.MINIMUM_END_PIECE, 0)));
  }
}
