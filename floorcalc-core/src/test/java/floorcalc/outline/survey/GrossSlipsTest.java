package floorcalc.outline.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A reading so far off that no room has it: corners (0, 0), (5000, 0), (5200, 1500), (3000, 2200), (2800, 4000) and (-300, 3900),
 * the fourth one juts in; all lengths between corners that see each other, to the millimetre.
 */
class GrossSlipsTest {
  private static final long[] WALLS = {5000, 1513, 2309, 1811, 3102, 3912};
  private static final int[][] TIES = {{1, 3, 5412}, {1, 4, 3720}, {1, 5, 4883}, {2, 4, 2973}, {2, 5, 4565}, {2, 6, 6580},
      {3, 6, 6001}, {4, 6, 3712}};

  private static Survey spoilt(int wall, long wallReads, int tie, long tieReads) {
    List<SurveyWall> walls = new ArrayList<>();
    for (int i = 0; i < WALLS.length; i++) {
      walls.add(SurveyWall.of(Length.ofMillimetres(i == wall ? wallReads : WALLS[i])).then(i == 2 ? Turn.RIGHT : Turn.LEFT));
    }
    List<Tie> ties = new ArrayList<>();
    for (int i = 0; i < TIES.length; i++) {
      ties.add(new Tie(TIES[i][0], TIES[i][1], Length.ofMillimetres(i == tie ? tieReads : TIES[i][2])));
    }
    return Survey.of(walls).withTies(ties);
  }

  private static void assertNamed(Survey survey, String name, double expected, String slip) {
    Calculated<SurveyReport> report = SurveyReport.of(survey);
    assertThat(report.value().room()).isEmpty();
    assertThat(report.findings()).extracting(Finding::code).contains("survey-no-shape", "survey-misfit");
    assertThat(report.findings()).filteredOn(finding -> finding.code().equals("survey-no-shape")).singleElement()
        .satisfies(finding -> assertThat(finding.message())
            .isEqualTo("no room has all of these measurements; without one of them the others fit"));
    Suspect first = report.value().misfits().get(0).first();
    assertThat(first.measured().name()).isEqualTo(name);
    assertThat(first.expected()).isCloseTo(expected, within(4 * first.expectedDeviation()));
    assertThat(first.slip()).contains(slip);
    assertThat(Math.abs(first.normalisedResidual())).isGreaterThan(50);
    assertThat(report.value().toMeasure().get(0).why()).isEqualTo(ToMeasure.Why.MEASURE_AGAIN);
  }

  /** 3720 as 7320: corners 1 and 4 are on the way from 1 over 2 at most 5000 + 2973 mm apart, but not with the other ties. */
  @Test
  void aTieWithDigitsExchanged() {
    assertNamed(spoilt(-1, 0, 1, 7320), "tie 1-4", 3720, "exchanged: meant 3720 mm");
    assertNamed(spoilt(-1, 0, 3, 9273), "tie 2-4", 2973, "exchanged: meant 2973 mm");
  }

  @Test
  void aWallWithDigitsExchanged() {
    assertNamed(spoilt(3, 8111, -1, 0), "wall 4", 1811, "exchanged: meant 1811 mm");
    assertNamed(spoilt(5, 9312, -1, 0), "wall 6", 3912, "exchanged: meant 3912 mm");
  }

  /** 601 for 6001: a digit left out is no slip that is looked for, the tie is named all the same. */
  @Test
  void aTieWithADigitLeftOut() {
    assertNamed(spoilt(-1, 0, 6, 601), "tie 3-6", 6001, "");
  }

  /** A rectangle of right angles with two steps: wall 2 must close what wall 4 and wall 6 leave, whatever it reads. */
  @Test
  void aWallOfARoomOfRightAngles() {
    List<SurveyWall> walls = new ArrayList<>();
    long[] lengths = {6000, 200, 2500, 2000, 3500, 4600}; // wall 2 should be 4600 - 2000 = 2600
    for (int i = 0; i < 6; i++) {
      walls.add(SurveyWall.of(Length.ofMillimetres(lengths[i])).then(i == 2 ? Turn.RIGHT : Turn.LEFT));
    }
    Calculated<SurveyReport> report = SurveyReport.of(Survey.of(walls).withCorners(Survey.Corners.RIGHT_ANGLES)
        .withTies(List.of(new Tie(1, 4, Length.ofMillimetres(4360)), new Tie(2, 4, Length.ofMillimetres(3607)))));
    assertThat(report.value().misfits()).isNotEmpty();
    assertThat(report.value().misfits().get(0).oneOf()).extracting(one -> one.measured().name()).contains("wall 2");
  }

  /** Where leaving out a length leaves nothing to check the rest by, nothing can be named. */
  @Test
  void withoutRedundancyNothingIsNamed() {
    Survey survey = Survey.of(List.of(SurveyWall.of(Length.ofMillimetres(4000)), SurveyWall.of(Length.ofMillimetres(3000)),
        SurveyWall.of(Length.ofMillimetres(4000)), SurveyWall.of(Length.ofMillimetres(3000))))
        .withTies(List.of(new Tie(1, 3, Length.ofMillimetres(7500))));
    Calculated<SurveyReport> report = SurveyReport.of(survey);
    assertThat(report.value().misfits()).isEmpty();
    assertThat(report.findings()).extracting(Finding::code).contains("survey-no-shape");
  }
}
