package floorcalc.deviations;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.io.Serializable;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A sample of the boards of a job as they were measured before laying, and the set of deviations that they are sold by.
 *
 * @param readings what was measured, beside the nominal sizes; not null
 * @param permitted what they may deviate, not null
 * @since 0.1
 */
public record MeasuredBoards(DeviationReadings readings, DeviationSet permitted) implements Serializable {
  /** A mean width that is nearer to the nominal one than this needs no word: a tenth of a millimetre makes 2 mm in 20 rows. */
  private static final Length WORTH_SAYING = Length.ofNanometres(100_000);

  /**
   * Checks both parts.
   *
   * @throws IllegalArgumentException if the set is for laid floors
   */
  public MeasuredBoards {
    Objects.requireNonNull(readings, "readings");
    if (permitted.stage() != Stage.GOODS) {
      throw new IllegalArgumentException("'" + permitted + "' is for a laid floor; boards before laying are held against one of "
          + String.join(", ", DeviationSet.all(Stage.GOODS).stream().map(set -> "'" + set + "'").toList()) + ", or the goods' papers");
    }
  }

  /**
   * Judges the sample.
   *
   * @return what {@link DeviationSet#judge} says, and if widths were measured the step {@code mean-width}, with a finding
   *     {@code width-not-nominal}, a note, if the mean is 0.1 mm or more off the nominal width (own rule); not null
   */
  public Calculated<List<Judgement>> judge() {
    Calculated<List<Judgement>> judged = permitted.judge(readings);
    List<Length> widths = readings.of(Deviation.WIDTH);
    if (widths.isEmpty()) {
      return judged;
    }
    Length sum = widths.stream().reduce(Length.ZERO, Length::plus);
    Length mean = sum.dividedBy(widths.size(), RoundingMode.HALF_EVEN);
    List<Step> steps = new ArrayList<>(judged.steps());
    steps.add(new Step("mean-width", "How wide are the boards on the average?", "b = s / n, rounded to the nearest nanometre",
        List.of(Term.of("s", "all widths together", sum), Term.of("n", "how many were measured", widths.size())), mean, Source.DEFINITION));
    List<Finding> findings = new ArrayList<>(judged.findings());
    Length off = mean.minus(readings.width());
    if (off.abs().compareTo(WORTH_SAYING) >= 0) {
      findings.add(new Finding("width-not-nominal", Severity.NOTE, "board", "the " + widths.size() + " boards measured are "
          + rounded(off.abs()) + (off.isNegative() ? " narrower" : " wider") + " than " + readings.width()
          + " on the average, which makes " + rounded(off.abs().multipliedBy(20)) + " in 20 rows; push ten boards together, measure over them, and"
          + " plan with a tenth of that as their cover width if they lie like that too", Source.DEFINITION));
    }
    return Calculated.of(judged.value(), steps, findings);
  }

  private static String rounded(Length length) {
    return length.dividedBy(10_000, RoundingMode.HALF_UP).multipliedBy(10_000).toString();
  }
}
