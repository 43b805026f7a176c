package floorcalc.moisture;

import floorcalc.measure.Area;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * What readings of the subfloor say, held against a named set of limits.
 * <p>
 * Readings of each method are taken by themselves: their number, mean and highest. Every single reading has to keep the
 * limit, so the highest of them decides. A reading without a limit for its method and subfloor in the set is not judged,
 * which is never a pass; it is not converted into another method. Where the binder of a screed, the heating or the depth
 * is not stated and the limit depends on it, a reading passes if it keeps every limit that may apply, fails if it keeps
 * none, and is not judged in between.
 * <p>
 * How long ago a screed was laid is no input: readings decide, dates never do. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class SubfloorMoisture {
  private final List<Summary> summaries;
  private final List<Judgement> judgements;

  /**
   * The readings of one method.
   *
   * @param method the method, not null
   * @param count how many there are, more than zero
   * @param mean their mean in the unit of the method, rounded half up to four decimals, not null
   * @param highest the highest of them, the first of equals, not null
   * @since 0.1
   */
  public record Summary(MoistureMethod method, int count, BigDecimal mean, MoistureReading highest) {
    /** Checks that no part is null. */
    public Summary {
      Objects.requireNonNull(method, "method");
      Objects.requireNonNull(mean, "mean");
      Objects.requireNonNull(highest, "highest");
    }
  }

  private SubfloorMoisture(List<Summary> summaries, List<Judgement> judgements) {
    this.summaries = List.copyOf(summaries);
    this.judgements = List.copyOf(judgements);
  }

  /**
   * Judges readings of a subfloor.
   *
   * @param readings the readings, perhaps none, not null
   * @param substrate what the floor is laid on, not null
   * @param heating whether it is heated, not null
   * @param area the area of the floor, more than zero, not null
   * @param limits the set of limits, not null
   * @return the judgements {@code subfloor-moisture}, one for each method or one for none, and
   *     {@code moisture-readings} if the set asks for a number; with the steps {@code mean-reading},
   *     {@code readings-wanted}; not null
   * @throws IllegalArgumentException if the area is not more than zero
   */
  public static Calculated<SubfloorMoisture> judge(List<MoistureReading> readings, Substrate substrate, Heating heating,
      Area area, MoistureLimits limits) {
    Objects.requireNonNull(area, "area");
    Objects.requireNonNull(limits, "limits");
    Objects.requireNonNull(readings, "readings");
    Objects.requireNonNull(substrate, "substrate");
    Objects.requireNonNull(heating, "heating");
    List<Step> steps = new ArrayList<>();
    List<Summary> summaries = new ArrayList<>();
    List<Judgement> judgements = new ArrayList<>();
    for (MoistureMethod method : MoistureMethod.values()) {
      List<MoistureReading> taken = readings.stream().filter(reading -> reading.method() == method).toList();
      if (!taken.isEmpty()) {
        Summary summary = summary(method, taken, steps);
        summaries.add(summary);
        judgements.add(new Verdicts(taken, substrate, heating, limits, summary).judge());
      }
    }
    if (readings.isEmpty()) {
      judgements.add(none(substrate, heating, limits));
    }
    limits.count().ifPresent(count -> {
      int judged = (int) readings.stream()
          .filter(reading -> !limits.limitsFor(reading, substrate, heating).isEmpty()).count();
      Calculated<Judgement> number = count.judge(judged, area);
      steps.addAll(number.steps());
      judgements.add(number.value());
    });
    return Calculated.of(new SubfloorMoisture(summaries, judgements), steps);
  }

  /**
   * Judges readings of a subfloor, those of each method by the first set of {@link MoistureLimits#all()} that has a limit
   * for it: a meter on concrete or screed by common practice, on wood by the NWFA guidelines; CM by German parquet
   * practice; and so on. For where nobody has chosen a set.
   *
   * @param readings the readings, perhaps none, not null
   * @param substrate what the floor is laid on, not null
   * @param heating whether it is heated, not null
   * @param area the area of the floor, more than zero, not null
   * @return as {@link #judge(List, Substrate, Heating, Area, MoistureLimits)}; not null
   * @throws IllegalArgumentException if the area is not more than zero
   */
  public static Calculated<SubfloorMoisture> judge(List<MoistureReading> readings, Substrate substrate, Heating heating,
      Area area) {
    Objects.requireNonNull(substrate, "substrate");
    Objects.requireNonNull(readings, "readings");
    List<Step> steps = new ArrayList<>();
    List<Summary> summaries = new ArrayList<>();
    List<Judgement> judgements = new ArrayList<>();
    for (MoistureMethod method : MoistureMethod.values()) {
      List<MoistureReading> taken = readings.stream().filter(reading -> reading.method() == method).toList();
      if (!taken.isEmpty()) {
        Calculated<SubfloorMoisture> one = judge(taken, substrate, heating, area, usual(method, substrate));
        steps.addAll(one.steps());
        summaries.addAll(one.value().summaries);
        judgements.addAll(one.value().judgements);
      }
    }
    return readings.isEmpty() ? judge(readings, substrate, heating, area, usual(MoistureMethod.METER, substrate))
        : Calculated.of(new SubfloorMoisture(summaries, judgements), steps);
  }

  private static MoistureLimits usual(MoistureMethod method, Substrate substrate) {
    List<MoistureLimits> sets = MoistureLimits.forMethod(method, substrate);
    return sets.isEmpty() ? MoistureLimits.COMMON_PRACTICE : sets.get(0);
  }

  private static Summary summary(MoistureMethod method, List<MoistureReading> taken, List<Step> steps) {
    BigDecimal sum = taken.stream().map(MoistureReading::value).reduce(BigDecimal.ZERO, BigDecimal::add);
    BigDecimal mean = Decimals.plain(sum.divide(BigDecimal.valueOf(taken.size()), 4, RoundingMode.HALF_UP));
    MoistureReading highest = taken.get(0);
    for (MoistureReading reading : taken) {
      highest = reading.value().compareTo(highest.value()) > 0 ? reading : highest;
    }
    steps.add(new Step("mean-reading", "What is the mean of the readings by " + method.words() + ", in " + method.unit()
        + "?", "m = S / n, rounded to four decimals", List.of(Term.of("S", "sum of the readings", Decimals.plain(sum)),
            Term.of("n", "number of readings", taken.size())), mean, Source.DEFINITION));
    return new Summary(method, taken.size(), mean, highest);
  }

  private static Judgement none(Substrate substrate, Heating heating, MoistureLimits limits) {
    String wanted = limits.limits().stream().filter(limit -> limit.mayApply(
        MoistureReading.of(limit.method(), limit.most()), substrate, heating)).map(MoistureLimit::toString)
        .distinct().collect(Collectors.joining("; "));
    return new Judgement(Verdicts.CODE, "moisture of the subfloor", "", "",
        wanted.isEmpty() ? "none in set '" + limits + "' for " + substrate.words() : wanted, Outcome.NOT_MEASURED,
        limits.source(), "measure the subfloor; how long ago it was laid is no reading");
  }

  /**
   * Returns number, mean and highest of the readings of each method.
   *
   * @return an unmodifiable list in the order of {@link MoistureMethod}, empty if there are no readings; not null
   */
  public List<Summary> summaries() {
    return summaries;
  }

  /**
   * Returns the judgements.
   *
   * @return an unmodifiable list, never empty, not null
   */
  public List<Judgement> judgements() {
    return judgements;
  }
}
