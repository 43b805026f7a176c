package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;

/**
 * What a measuring error does to the strips of a start line. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class MeasuringError {
  private final Length plusMinus;
  private final List<StripRange> strips;
  private final Length worst;

  private MeasuringError(Length plusMinus, List<StripRange> strips, Length worst) {
    this.plusMinus = plusMinus;
    this.strips = List.copyOf(strips);
    this.worst = worst;
  }

  static Calculated<MeasuringError> of(StartLine line, Length plusMinus) {
    Widths.requireNotNegative(plusMinus, "measuring error", "give its size, it counts both ways");
    List<StripRange> ranges = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    Length worst = line.pitch();
    StripRange governing = null;
    for (Strip strip : line.strips()) {
      Length error = plusMinus.max(strip.stop().plusMinus());
      StripRange range = isStartingWall(strip.stop(), line)
          ? new StripRange(strip.stop(), strip.width(), strip.width(), strip.width(), strip.width())
          : range(strip, line, error);
      ranges.add(range);
      if (strip.stop().taper().compareTo(line.pitch()) < 0) {
        addFinding(range, line, error, findings);
        if (governing == null || range.worst().compareTo(worst) < 0) {
          governing = range;
          worst = range.worst();
        }
      }
    }
    List<Step> steps = governing == null ? List.of() : List.of(step(governing, line, plusMinus.max(governing.stop().plusMinus())));
    return Calculated.of(new MeasuringError(plusMinus, ranges, worst), steps, findings);
  }

  /** What the strip is if the floor ends sooner or later by an error. */
  static StripRange range(Strip strip, StartLine line, Length error) {
    Stop measuredAt = strip.stop().asMeasured();
    Length measured = strip.width();
    long at = line.bayLow().plus(line.firstRowWidth()).toNanometres();
    long pitch = line.pitch().toNanometres();
    Length sooner = Length.ofNanometres(measuredAt.later(error.negated()).strip(at, pitch));
    Length later = Length.ofNanometres(measuredAt.later(error).strip(at, pitch));
    boolean shrinksToNothing = measured.compareTo(error) <= 0;
    boolean growsPastFull = measured.plus(error).compareTo(line.pitch().minus(measuredAt.taper())) > 0;
    boolean passesNothing = error.isPositive() && (shrinksToNothing || growsPastFull);
    Length worst = passesNothing ? Length.ZERO : measured.minus(error).max(Length.ZERO);
    return new StripRange(strip.stop(), sooner, measured, later, worst);
  }

  private static boolean isStartingWall(Stop stop, StartLine line) {
    return stop.side() == Stop.Side.FLOOR_ABOVE && stop.low().equals(line.bayLow());
  }

  /** Says that a strip of the minimum may be narrower within the error. */
  static void addFinding(StripRange range, StartLine line, Length error, List<Finding> findings) {
    Length minimum = line.minimum();
    if (range.worst().compareTo(minimum) >= 0 || range.measured().compareTo(minimum) < 0) {
      return;
    }
    String both = "as measured the strip is " + range.measured() + "; if the floor ends " + error
        + " sooner it is " + range.sooner() + ", if " + error + " later " + range.later();
    if (range.worst().isZero()) {
      findings.add(new Finding("fragile-fit", Severity.WARNING, range.stop().name(), both
          + "; in between it passes through nothing: measure again and keep the line clear of this stop",
          line.minimumSource()));
    } else {
      findings.add(new Finding("narrow-within-error", Severity.NOTE, range.stop().name(), both
          + "; at least " + minimum + " is asked for: measure again before the first row is ripped",
          line.minimumSource()));
    }
  }

  private static Step step(StripRange governing, StartLine line, Length error) {
    Stop stop = governing.stop();
    String question = "How narrow can the strip at " + stop.name() + " get within the error?";
    Term measured = Term.of("s", "strip as measured", governing.measured());
    if (isStartingWall(stop, line)) {
      return new Step("worst-strip", question + " The rows are set out from there, so it stays.", "s' = s",
          List.of(measured), governing.worst(), Source.DEFINITION);
    }
    return new Step("worst-strip", question, "s' = 0 mm if s <= e, 0 mm if s + e > p - t, else s - e",
        List.of(measured, Term.of("e", "measuring error", error), Term.of("p", "laid pitch", line.pitch()),
            Term.of("t", "how far the stop runs off across the rows", stop.taper())), governing.worst(),
        Source.DEFINITION);
  }

  /**
   * Returns the error that was assumed, both ways.
   *
   * @return the error, not negative, not null
   */
  public Length plusMinus() {
    return plusMinus;
  }

  /**
   * Returns the strip at every stop, in the order the stops were given.
   *
   * @return an unmodifiable list, not null
   */
  public List<StripRange> strips() {
    return strips;
  }

  /**
   * Returns the narrowest strip that any error within the bounds gives at a stop that was in the choice.
   *
   * @return from zero to the pitch; the pitch if no stop was in the choice; not null
   */
  public Length worst() {
    return worst;
  }
}
