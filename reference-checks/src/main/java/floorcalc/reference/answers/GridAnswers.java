package floorcalc.reference.answers;

import floorcalc.flatness.SpanLimit;
import floorcalc.flatness.ToleranceSet;
import floorcalc.levels.FillerGoods;
import floorcalc.levels.GridFlatness;
import floorcalc.levels.GridGap;
import floorcalc.levels.Levels;
import floorcalc.levels.LineWay;
import floorcalc.levels.PreparationOptions;
import floorcalc.levels.SpotLevel;
import floorcalc.levels.SubfloorPreparation;
import floorcalc.measure.Length;
import floorcalc.measure.Mass;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Grids of levels. */
final class GridAnswers {
  void addTo(Answers answers) {
    answers.add("flatness-of-a-grid", GridAnswers::flatness, GridFlatness.class, Levels.class);
    answers.add("least-filler", GridAnswers::filler, SubfloorPreparation.class, Levels.class);
  }

  private static Levels levels(Question question) {
    Length along = Length.parse(question.text("along"));
    Length between = Length.parse(question.text("between"));
    List<SpotLevel> spots = new ArrayList<>();
    List<List<String>> rows = question.table("heights");
    for (int row = 0; row < rows.size(); row++) {
      for (int column = 0; column < rows.get(row).size(); column++) {
        String height = rows.get(row).get(column);
        if (!height.equals("-")) {
          spots.add(SpotLevel.of(along.multipliedBy(column), between.multipliedBy(row), Length.ofMillimetres(height)));
        }
      }
    }
    return Levels.of(spots);
  }

  private static ToleranceSet set(Question question) {
    return ToleranceSet.of("given", "floor",
        List.of(SpanLimit.of(Length.parse(question.text("span")), Length.parse(question.text("allowed")), Source.GIVEN)));
  }

  private static String words(Outcome outcome) {
    return switch (outcome) {
      case MET -> "met";
      case NOT_MET -> "not met";
      case NOT_MEASURED -> "not measured";
    };
  }

  private static String gap(GridFlatness flatness, LineWay way) {
    return flatness.gaps().stream().filter(gap -> gap.way() == way).map(GridGap::gap).map(Length::toMillimetreString).findFirst().orElse("none");
  }

  private static Answer flatness(Question question) {
    GridFlatness flatness = GridFlatness.of(levels(question), set(question)).value();
    return Answer.of("alongRows", gap(flatness, LineWay.ROW)).with("alongColumns", gap(flatness, LineWay.COLUMN))
        .with("alongRisingDiagonals", gap(flatness, LineWay.RISING_DIAGONAL)).with("alongFallingDiagonals", gap(flatness, LineWay.FALLING_DIAGONAL))
        .with("outcome", words(flatness.outcome()));
  }

  private static Answer filler(Question question) {
    PreparationOptions options = PreparationOptions.grindingUpTo(Length.parse(question.text("grindUpTo")))
        .with(FillerGoods.of(question.number("kilogramsPerLitre"), new Mass(question.number("bag"))));
    Levels levels = levels(question);
    ToleranceSet set = set(question);
    SubfloorPreparation work = SubfloorPreparation.of(levels, set, options).value();
    BigDecimal area = new BigDecimal(work.area().toHalfSquareNanometres()).divide(BigDecimal.valueOf(2)).movePointLeft(18);
    return Answer.of("litres", work.fillerLitres()).with("leastLitres", work.leastFillerLitres())
        .with("deepestFilling", work.deepestFilling().toMillimetreString()).with("spotsFilled", BigDecimal.valueOf(work.toFill().size()))
        .with("kilograms", work.fillerMass().orElseThrow().kilograms()).with("bags", BigDecimal.valueOf(work.bags().orElseThrow()))
        .with("area", area).with("worstDepthTimesArea", work.worstDepthTimesArea()).with("meanDepthTimesArea", work.meanDepthTimesArea())
        .with("outcome", words(GridFlatness.of(work.levelsAfter(), set).value().outcome()));
  }
}
