package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.outline.survey.Survey;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyWall;
import floorcalc.outline.survey.Tie;
import floorcalc.plan.Check;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Outcome;
import floorcalc.working.Step;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A plan of a room that was measured: what it says of the measurements, and what their errors do to its rows. */
class SurveyOfAPlanTest {

  private static Calculated<SurveyReport> survey(long diagonal, long... walls) {
    return SurveyReport.of(Survey.of(Arrays.stream(walls).mapToObj(mm -> SurveyWall.of(Length.ofMillimetres(mm))).toList())
        .withTies(List.of(new Tie(1, 3, Length.ofMillimetres(diagonal)), new Tie(2, 4, Length.ofMillimetres(6423)))));
  }

  private static FloorPlan plan(Room room) {
    BoardGoods boards =
        BoardGoods.of(Length.ofMillimetres(2200), Length.ofMillimetres(185), Length.ofMillimetres(14), 6);
    return FloorPlanner.plan(FloorJob.of("Invented", boards).room(room).build());
  }

  @Test
  void aSoundSurveyIsAMetCheck() {
    Calculated<SurveyReport> survey = survey(6399, 5028, 3996, 5006, 3987);
    FloorPlan plan = plan(Room.of("Study", survey));
    assertThat(plan.checks()).filteredOn(check -> check.judgement().code().startsWith("survey-"))
        .extracting(Check::outcome).containsExactly(Outcome.MET, Outcome.MET);
    assertThat(plan.working()).filteredOn(worked -> worked.about().equals("Study: survey")).singleElement()
        .satisfies(worked -> assertThat(worked.steps()).isEqualTo(survey.steps()));
    assertThat(plan.working()).filteredOn(worked -> worked.about().equals("study-1: rows")).singleElement()
        .satisfies(worked -> assertThat(worked.steps()).extracting(Step::id).contains("chance-too-narrow"));
    assertThat(plan.findings()).extracting(Finding::code).contains("strip-within-survey");
  }

  @Test
  void aSlipIsACheckThatIsNotMet() {
    FloorPlan plan = plan(Room.of("Study", survey(6499, 5028, 3996, 5006, 3987)));
    assertThat(plan.checks()).filteredOn(check -> check.judgement().code().equals("survey-fits")).singleElement()
        .satisfies(check -> {
          assertThat(check.outcome()).isEqualTo(Outcome.NOT_MET);
          assertThat(check.advice()).contains("measure tie 1-3 again");
        });
    assertThat(plan.findings()).filteredOn(finding -> finding.code().equals("survey-misfit")).singleElement()
        .satisfies(finding -> assertThat(finding.where()).startsWith("Study, tie 1-3 or tie 2-4"));
  }

  /** The same outline without its measurements: nothing said of them, and rows taken as exact. */
  @Test
  void anOutlineAloneSaysNothingOfMeasurements() {
    FloorPlan plan = plan(Room.of("Study", survey(6399, 5028, 3996, 5006, 3987).value().room().orElseThrow().outline()));
    assertThat(plan.checks()).noneMatch(check -> check.judgement().code().startsWith("survey-"));
    assertThat(plan.findings()).noneMatch(finding -> finding.code().equals("strip-within-survey"));
  }

  @Test
  void measurementsThatFixNoShapeAreNoRoom() {
    Calculated<SurveyReport> survey = SurveyReport.of(Survey.of(
        List.of(SurveyWall.of(Length.ofMillimetres(5028)), SurveyWall.of(Length.ofMillimetres(3996)),
            SurveyWall.of(Length.ofMillimetres(5006)), SurveyWall.of(Length.ofMillimetres(3987)))));
    assertThatThrownBy(() -> Room.of("Study", survey)).isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("Study: the measurements do not fix the shape of the room").hasMessageContaining("one more is needed");
  }
}
