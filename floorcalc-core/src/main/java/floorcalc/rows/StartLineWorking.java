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
    return line.strips().stream().filter(strip -> strip.stop().side() == side && strip.certain().isPositive())
        .min(Comparator.comparing(Strip::certain));
  }

  private static Step above(StartLine line, Strip strip) {
    Length height = strip.stop().tightestMeasured().minus(line.bayLow());
    long k = strip.certain().plus(strip.stop().plusMinus()).plus(height).minus(line.firstRowWidth()).dividedBy(line.pitch());
    return new Step("strip-above", question("above", strip), "s = w1 + k * p - h" + lessError(strip),
        terms(line, strip, height, k), strip.certain(), Source.DEFINITION);
  }

  private static Step below(StartLine line, Strip strip) {
    Length height = strip.stop().tightestMeasured().minus(line.bayLow());
    long k = height.minus(strip.stop().plusMinus()).minus(strip.certain()).minus(line.firstRowWidth()).dividedBy(line.pitch());
    return new Step("strip-below", question("below", strip), "s = h - w1 - k * p" + lessError(strip),
        terms(line, strip, height, k), strip.certain(), Source.DEFINITION);
  }

  private static String question(String side, Strip strip) {
    return "How wide is the narrowest strip " + side + " a stop, at " + strip.stop().name()
        + (strip.stop().plusMinus().isZero() ? "?" : ", wherever within its error the stop lies?");
  }

  private static String lessError(Strip strip) {
    return strip.stop().plusMinus().isZero() ? "" : " - e";
  }

  private static List<Term> terms(StartLine line, Strip strip, Length height, long k) {
    List<Term> terms = new ArrayList<>(List.of(Term.of("w1", "first row", line.firstRowWidth()),
        Term.of("k", "rows between the first row line and the row line at the strip", k),
        Term.of("p", "laid pitch", line.pitch()),
        Term.of("h", "height of the stop over the lowest level", height)));
    if (strip.stop().plusMinus().isPositive()) {
      terms.add(Term.of("e", "measuring error of the stop, plus or minus", strip.stop().plusMinus()));
    }
    return terms;
  }
}
