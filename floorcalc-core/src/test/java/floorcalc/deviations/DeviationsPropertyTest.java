package floorcalc.deviations;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.levels.Levels;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.survey.CornerSquareness;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.StepChecks;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;

class DeviationsPropertyTest {
  private static List<Length> micrometres(List<Integer> values) {
    return values.stream().map(value -> Length.ofNanometres(1000L * value)).toList();
  }

  @Property(tries = 200)
  void theStepsOfEverySetHold(@ForAll @Size(min = 1, max = 40) List<@IntRange(max = 5000) Integer> values,
      @ForAll @IntRange(min = 5, max = 400) int width) {
    for (DeviationSet set : DeviationSet.all()) {
      for (DeviationLimit limit : set.limits()) {
        if (!limit.deviation().isSize()) {
          Calculated<List<Judgement>> judged = set.judge(DeviationReadings.ofWidth(Length.ofMillimetres(width))
              .withPanel(Length.ofMillimetres(400)).with(limit.deviation(), micrometres(values)));
          judged.steps().forEach(StepChecks::assertHolds);
        }
      }
    }
  }

  /** Counted again without the library: how many are beyond, how many may be, and whether one is beyond twice the limit. */
  @Property(tries = 300)
  void aShareIsCounted(@ForAll @Size(min = 1, max = 60) List<@IntRange(max = 5000) Integer> values) {
    long beyond = values.stream().filter(value -> value > 2000).count();
    boolean met = beyond * 100 <= 5L * values.size() && values.stream().allMatch(value -> value <= 4000);
    assertThat(DeviationSet.named("NF DTU 51.2").judge(DeviationReadings.ofWidth(Length.ofMillimetres(100)).with(Deviation.JOINT,
        micrometres(values))).value().get(0).outcome()).isEqualTo(met ? Outcome.MET : Outcome.NOT_MET);
  }

  @Property(tries = 200)
  void theOrderOfReadingsMattersOnlyWhereTheyAreTakenTogether(@ForAll @Size(min = 1, max = 30) List<@IntRange(max = 3000) Integer> values) {
    DeviationReadings boards = DeviationReadings.ofWidth(Length.ofMillimetres(90));
    List<Integer> turned = new ArrayList<>(values);
    Collections.reverse(turned);
    for (DeviationSet set : DeviationSet.all(Stage.LAID)) {
      assertThat(set.judge(boards.with(Deviation.JOINT, micrometres(turned))).value())
          .isEqualTo(set.judge(boards.with(Deviation.JOINT, micrometres(values))).value());
    }
  }

  @Property
  void aTighterLimitIsNeverKeptWhereAWiderOneIsNot(@ForAll @Size(min = 1, max = 20) List<@IntRange(max = 3000) Integer> values,
      @ForAll @IntRange(max = 3000) int one, @ForAll @IntRange(max = 3000) int other) {
    DeviationReadings joints = DeviationReadings.ofWidth(Length.ofMillimetres(90)).with(Deviation.JOINT, micrometres(values));
    if (own(Math.min(one, other)).judge(joints).value().get(0).isMet()) {
      assertThat(own(Math.max(one, other)).judge(joints).value().get(0).isMet()).isTrue();
    }
  }

  private static DeviationSet own(int micrometres) {
    return DeviationSet.of("own", "", Stage.LAID, List.of(DeviationLimit.atMost(Deviation.JOINT, Length.ofNanometres(1000L * micrometres),
        Source.GIVEN)));
  }

  @Property
  void everyWallHasOneLimitAndALongerOneNeverLess(@ForAll @LongRange(min = 1, max = 100_000_000_000L) long one,
      @ForAll @LongRange(min = 1, max = 100_000_000_000L) long other) {
    assertThat(AngleSet.DIN_18202.limits().stream().filter(limit -> limit.covers(Length.ofNanometres(one)))).hasSize(1);
    assertThat(allowed(Math.min(one, other))).isLessThanOrEqualTo(allowed(Math.max(one, other)));
    Calculated<Judgement> judged = AngleSet.DIN_18202.judge(new CornerSquareness(1, 0, Length.ofNanometres(other % 40_000_000), Length.ofNanometres(one)));
    StepChecks.assertStepsHold(judged);
    assertThat(judged.value().isMet()).isEqualTo(other % 40_000_000 <= allowed(one).toNanometres());
  }

  private static Length allowed(long nanometres) {
    return AngleSet.DIN_18202.limitFor(Length.ofNanometres(nanometres)).orElseThrow().most();
  }

  /** A plane that leans by a rate and no more keeps a limit of that rate, and breaks one of a little less; lifted or mirrored it is the same. */
  @Property(tries = 100)
  void aLeaningPlaneIsJudgedByItsLean(@ForAll @IntRange(min = 1, max = 40) int rate, @ForAll @IntRange(min = 3, max = 8) int columns,
      @ForAll @IntRange(min = -500, max = 500) int lift) {
    List<Length> row = new ArrayList<>();
    for (int i = 0; i < columns; i++) {
      row.add(Length.ofNanometres(1000L * (rate * 500L * i + 1000L * lift)));
    }
    List<Length> back = new ArrayList<>(row);
    Collections.reverse(back);
    for (LevelMeasure measure : List.of(LevelMeasure.ENDS_OF_LINE, LevelMeasure.ALONG_LINE, LevelMeasure.WHOLE_LINE)) {
      for (List<Length> heights : List.of(row, back)) {
        Levels levels = Levels.ofGrid(Point.ofMillimetres(0, 0), Length.ofMillimetres(500), Length.ofMillimetres(400), List.of(heights, heights));
        assertThat(judged(measure, Length.ofMillimetres(rate), levels)).isEqualTo(Outcome.MET);
        assertThat(judged(measure, Length.ofMillimetres(rate).minus(Length.ofNanometres(1000)), levels)).isEqualTo(Outcome.NOT_MET);
      }
    }
  }

  private static Outcome judged(LevelMeasure measure, Length perMetre, Levels levels) {
    Calculated<List<Judgement>> judged = OutOfLevelSet.of("own", "", List.of(new OutOfLevelLimit(measure, Length.ZERO, Optional.empty(),
        Optional.of(perMetre), Optional.empty(), Optional.empty(), Source.GIVEN))).judge(levels);
    StepChecks.assertStepsHold(judged);
    return judged.value().get(0).outcome();
  }
}
