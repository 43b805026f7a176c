package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.Construction;
import floorcalc.deviations.Deviation;
import floorcalc.deviations.DeviationReadings;
import floorcalc.deviations.DeviationSet;
import floorcalc.deviations.MeasuredBoards;
import floorcalc.measure.Length;
import floorcalc.outline.Wkt;
import floorcalc.plan.Check;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorJobBuilder;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.working.Finding;
import floorcalc.working.Outcome;
import floorcalc.working.Severity;
import floorcalc.working.StepChecks;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class GoodsChecksTest {
  private static final BoardGoods BOARDS = BoardGoods.of(Length.parse("2.2 m"), Length.parse("185 mm"), Length.parse("14 mm"), 6);

  private static FloorJobBuilder job(BoardGoods goods) {
    return FloorJob.of("Study", goods).room(Room.of("Study", Wkt.parse("POLYGON ((0 0, 4210 0, 4195 3620, 0 3605, 0 0))")));
  }

  private static List<Finding> ofBoards(FloorPlan plan) {
    return plan.findings().stream().filter(finding -> finding.where().equals("board")).toList();
  }

  @Test
  void boardsOfUsualSizesAreNotSpokenOf() {
    FloorPlan plan = FloorPlanner.plan(job(BOARDS).build());
    assertThat(ofBoards(plan)).isEmpty();
    assertThat(plan.checks()).noneMatch(check -> check.judgement().code().startsWith("board-size"));
  }

  @Test
  void aBoardOutsideItsStandardIsLaidWithANote() {
    FloorPlan plan = FloorPlanner.plan(job(BoardGoods.of(Length.parse("2.2 m"), Length.parse("185 mm"), Length.parse("8 mm"), 6)).build());
    assertThat(ofBoards(plan)).singleElement().satisfies(finding -> {
      assertThat(finding.severity()).isEqualTo(Severity.NOTE);
      assertThat(finding.message()).contains("8 mm", "EN 13489", "check the goods' papers");
    });
    FloorPlan solid = FloorPlanner.plan(job(BoardGoods.of(Length.parse("1.2 m"), Length.parse("90 mm"), Length.parse("13 mm"), 10)
        .withConstruction(Construction.SOLID).withSpecies("Scots pine")).build());
    assertThat(ofBoards(solid)).hasSize(2).allSatisfy(finding -> assertThat(finding.message()).contains("EN 13990"));
  }

  /** Mean of 184.7, 184.8, 184.6 is 184.7 mm: 0.3 mm narrower, 6 mm in 20 rows. The papers are not stated, so a published set is held against it. */
  @Test
  void aSampleIsJudgedAmongTheChecks() {
    DeviationReadings sample = DeviationReadings.of(BOARDS).with(Deviation.WIDTH, Stream.of("184.7", "184.8", "184.6").map(Length::ofMillimetres)
        .toList()).with(Deviation.LIPPING, List.of(Length.ofMillimetres("0.2")));
    FloorPlan plan = FloorPlanner.plan(job(BOARDS).measuredBoards(new MeasuredBoards(sample, DeviationSet.named("EN 13489"))).build());
    List<Check> checks = plan.checks().stream().filter(check -> check.judgement().code().startsWith("deviation-")).toList();
    assertThat(checks).extracting(Check::outcome).containsExactly(Outcome.MET, Outcome.NOT_MEASURED);
    assertThat(checks).allSatisfy(check -> assertThat(check.room()).isEmpty());
    assertThat(ofBoards(plan)).singleElement().satisfies(finding -> assertThat(finding.message())
        .contains("the 3 boards measured are 0.3 mm narrower than 185 mm", "6 mm in 20 rows"));
    assertThat(plan.working()).filteredOn(worked -> worked.about().equals("boards as measured")).singleElement()
        .satisfies(worked -> worked.steps().forEach(StepChecks::assertHolds));
  }

  @Test
  void whatASetAsksForAndNobodyMeasuredIsNoCheckOfThePlan() {
    MeasuredBoards nothing = new MeasuredBoards(DeviationReadings.of(BOARDS), DeviationSet.named("NWFA/NOFMA factory finished"));
    FloorPlan plan = FloorPlanner.plan(job(BOARDS).measuredBoards(nothing).build());
    assertThat(plan.checks()).noneMatch(check -> check.judgement().code().startsWith("deviation-"));
    assertThat(job(BOARDS).measuredBoards(nothing).build().withDirection(DirectionChoice.LONGEST_WALL).measuredBoards()).contains(nothing);
  }

  @Test
  void boardsAreNotHeldAgainstASetForLaidFloors() {
    assertThatIllegalArgumentException().isThrownBy(() -> new MeasuredBoards(DeviationReadings.of(BOARDS), DeviationSet.named("NF DTU 51.1")))
        .withMessageContaining("'NF DTU 51.1' is for a laid floor").withMessageContaining("'EN 13489'");
  }
}
