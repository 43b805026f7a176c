package floorcalc.moisture;

import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.List;

/** Number, mean, lowest and highest of readings of wood. */
final class Spread {
  private final int count;
  private final BigDecimal sum;
  private final Percent mean;
  private final Percent lowest;
  private final Percent highest;

  private Spread(List<Percent> readings) {
    count = readings.size();
    sum = readings.stream().map(Percent::number).reduce(BigDecimal.ZERO, BigDecimal::add);
    mean = Percent.of(sum.divide(BigDecimal.valueOf(count), 4, RoundingMode.HALF_UP));
    lowest = Collections.min(readings);
    highest = Collections.max(readings);
  }

  /** Any readings, at least one. */
  static Spread of(List<Percent> readings) {
    return new Spread(readings);
  }

  /** Readings of boards, which are refused beyond what boards for a floor may have. */
  static Spread ofBoards(List<Percent> readings) {
    readings.forEach(BoardMoistureLimits::boardReading);
    return new Spread(readings);
  }

  Step step() {
    return new Step("mean-of-boards", "What is the mean moisture content of the boards?",
        "m = S / n, rounded to four decimals", List.of(Term.of("S", "sum of the readings", Percent.of(sum)),
            Term.of("n", "number of readings", count)), mean, Source.DEFINITION);
  }

  Percent mean() {
    return mean;
  }

  Percent lowest() {
    return lowest;
  }

  Percent highest() {
    return highest;
  }

  @Override
  public String toString() {
    return count == 1 ? mean.toString() : lowest + " to " + highest + ", mean " + mean + " of " + count;
  }
}
