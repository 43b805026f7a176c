package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The working of a start line: its strips at the two stops that decide, one on each side where there are both. */
final class StartLineWorking {
  private StartLineWorking() {}

  static List<Step> steps(StartLine line, String reason) {
    List<Step> steps = new ArrayList<>();
    steps.add(new Step("first-row", "Where does the first row line lie? " + reason, "w1 = p - c",
        List.of(Term.of("p", "laid pitch", line.pitch()),
            Term.of("c", "what is ripped off the first row", line.pitch().minus(line.firstRowWidth()))),
        line.firstRowWidth(), Source.DEFINITION));
    narrowest(line, Stop.Side.FLOOR_ABOVE).ifPresent(strip -> steps.add(above(line, strip)));
    narrowest(line, Stop.Side.FLOOR_BELOW).ifPresent(strip -> steps.add(below(line, strip)));
    return steps;
  }

  /** Why a line was chosen. */
  static String reason(StartLine line, RowWay way) {
    if (line.firstRowWidth().equals(line.pitch())) {
      return "A full board above the lowest level.";
    }
    if (way == RowWay.LEAST_CUT && line.narrowestStrip().compareTo(line.minimum()) >= 0) {
      return "As high as every strip of at least " + line.minimum() + " allows.";
    }
    return "Where the narrowest strip of all stops is widest, "
        + line.narrowestStrip() + ": higher or lower makes one of them narrower.";
  }

  private static Optional<Strip> narrowest(StartLine line, Stop.Side side) {
    return line.strips().stream().filter(strip -> strip.stop().side() == side && strip.width().isPositive())
        .min(Comparator.comparing(Strip::width));
  }

  private static Step above(StartLine line, Strip strip) {
    Length height = strip.stop().tightest().minus(line.bayLow());
    long k = strip.width().plus(height).minus(line.firstRowWidth()).dividedBy(line.pitch());
    return new Step("strip-above", "How wide is the narrowest strip above a stop, at " + strip.stop().name() + "?",
        "s = w1 + k * p - h", terms(line, height, k), strip.width(), Source.DEFINITION);
  }

  private static Step below(StartLine line, Strip strip) {
    Length height = strip.stop().tightest().minus(line.bayLow());
    long k = height.minus(strip.width()).minus(line.firstRowWidth()).dividedBy(line.pitch());
    return new Step("strip-below", "How wide is the narrowest strip below a stop, at " + strip.stop().name() + "?",
        "s = h - w1 - k * p", terms(line, height, k), strip.width(), Source.DEFINITION);
  }

  private static List<Term> terms(StartLine line, Length height, long k) {
    return List.of(Term.of("w1", "first row", line.firstRowWidth()),
        Term.of("k", "rows between the first row line and the row line at the strip", k),
        Term.of("p", "laid pitch", line.pitch()),
        Term.of("h", "height of the stop over the lowest level", height));
  }
}
