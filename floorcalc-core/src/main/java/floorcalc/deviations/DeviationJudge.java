package floorcalc.deviations;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Holds readings against a set of permitted deviations. */
final class DeviationJudge {
  private final DeviationSet set;
  private final DeviationReadings readings;
  private final List<Judgement> judgements = new ArrayList<>();
  private final List<Step> steps = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  DeviationJudge(DeviationSet set, DeviationReadings readings) {
    this.set = set;
    this.readings = readings;
  }

  /** A deviation with the reading that it comes from and the size that this should have; one is as good as the other where it is read itself. */
  private record Found(Length deviation, Length reading, Length nominal) {}

  Calculated<List<Judgement>> judge() {
    List<DeviationLimit> limits = set.limits().stream().filter(limit -> limit.widths().contains(readings.width())).toList();
    limits.forEach(this::limit);
    for (Deviation read : readings.all().keySet()) {
      if (limits.stream().noneMatch(limit -> limit.deviation() == read)) {
        judgements.add(silent(read));
      }
    }
    number();
    moisture();
    construction();
    return Calculated.of(List.copyOf(judgements), steps, findings);
  }

  private void limit(DeviationLimit limit) {
    Deviation deviation = limit.deviation();
    List<Length> values = readings.of(deviation);
    Optional<Length> base = deviation == Deviation.PANEL_JOINT ? readings.panel() : Optional.of(readings.width());
    if (base.isEmpty() && limit.percentOfWidth().isPresent()) {
      open(limit, values.isEmpty() ? "" : values.size() + " read", "say how large the panels are");
      return;
    }
    if (values.size() < limit.meanOf()) {
      open(limit, values.isEmpty() ? "" : values.size() + " read", limit.meanOf() == 1 ? "measure it"
          : "measure " + limit.meanOf() + " joints in a row");
      return;
    }
    Length allowed = allowed(limit, base.orElse(readings.width()));
    List<Found> found = limit.meanOf() == 1 ? values.stream().map(value -> found(deviation, value)).toList() : means(values, limit.meanOf());
    Found worst = found.stream().reduce((one, other) -> other.deviation().compareTo(one.deviation()) > 0 ? other : one).orElseThrow();
    Length smallest = found.stream().map(Found::deviation).reduce(Length::min).orElseThrow();
    long beyond = found.stream().filter(one -> one.deviation().compareTo(allowed) > 0
        || limit.least().filter(least -> one.deviation().compareTo(least) < 0).isPresent()).count();
    steps.add(worst(limit, worst, found.size()));
    limit.least().ifPresent(least -> steps.add(new Step("least-" + deviation.code(), "Which is the smallest of " + found.size() + " read?",
        "value as stated", List.of(), smallest, Source.GIVEN)));
    long permitted = permitted(limit, found.size());
    boolean utmost = limit.utmostTimes() == 0 || worst.deviation().compareTo(utmost(limit, allowed)) <= 0;
    boolean met = beyond <= permitted && utmost;
    judgements.add(new Judgement("deviation-" + deviation.code(), check(limit), "", words(limit, worst, smallest, found.size(), beyond),
        limit.at(base.orElse(readings.width())), met ? Outcome.MET : Outcome.NOT_MET, limit.source(), met ? "" : advice(limit, beyond, utmost)));
  }

  private Length allowed(DeviationLimit limit, Length base) {
    Length allowed = limit.allowed(base);
    if (limit.percentOfWidth().isPresent()) {
      List<Term> terms = new ArrayList<>(List.of(
          new Term("p", "share of the width in per cent", limit.percentOfWidth().get(), limit.source()),
          Term.of("w", limit.deviation() == Deviation.PANEL_JOINT ? "size of the panel" : "width of the board", base)));
      limit.most().ifPresent(most -> terms.add(new Term("m", "at most", most, limit.source())));
      steps.add(new Step("allowed-" + limit.deviation().code(), "How much is allowed of the " + limit.deviation().words() + "?",
          (limit.most().isPresent() ? "a = min(p * w / 100, m)" : "a = p * w / 100") + ", rounded down to a whole nanometre", terms, allowed,
          limit.source()));
    }
    return allowed;
  }

  private Found found(Deviation deviation, Length value) {
    Length nominal = deviation.isSize() ? readings.nominal(deviation, value) : value;
    return new Found(deviation.isSize() ? value.minus(nominal).abs() : value, value, nominal);
  }

  private static List<Found> means(List<Length> values, int number) {
    List<Found> means = new ArrayList<>();
    for (int i = 0; i + number <= values.size(); i++) {
      Length sum = values.subList(i, i + number).stream().reduce(Length.ZERO, Length::plus);
      means.add(new Found(sum.dividedBy(number, RoundingMode.HALF_EVEN), sum, sum));
    }
    return means;
  }

  private static Step worst(DeviationLimit limit, Found worst, int number) {
    Deviation deviation = limit.deviation();
    String id = "greatest-" + deviation.code();
    if (limit.meanOf() > 1) {
      return new Step(id, "Which mean of " + limit.meanOf() + " in a row is greatest, of " + number + "?",
          "d = s / n, rounded to the nearest nanometre", List.of(Term.of("s", "sum of these readings", worst.reading()),
              Term.of("n", "how many they are", limit.meanOf())), worst.deviation(), Source.DEFINITION);
    }
    String question = "Which is the greatest of " + number + " read?";
    return deviation.isSize() ? new Step(id, question, "d = abs(r - n)", List.of(Term.of("r", "the reading farthest off", worst.reading()),
        Term.of("n", "what it should be", worst.nominal())), worst.deviation(), Source.DEFINITION)
        : new Step(id, question, "value as stated", List.of(), worst.deviation(), Source.GIVEN);
  }

  private long permitted(DeviationLimit limit, int number) {
    long permitted = (long) number * limit.beyondPercent() / 100;
    if (limit.beyondPercent() > 0) {
      steps.add(new Step("may-be-beyond", "How many of " + number + " may be beyond the limit?", "k = floor(n * s / 100)",
          List.of(Term.of("n", "how many were read", number), new Term("s", "of a hundred", limit.beyondPercent(), limit.source())), permitted,
          limit.source()));
    }
    return permitted;
  }

  private Length utmost(DeviationLimit limit, Length allowed) {
    Length utmost = allowed.multipliedBy(limit.utmostTimes());
    steps.add(new Step("utmost-" + limit.deviation().code(), "Beyond what may none be?", "u = t * a",
        List.of(new Term("t", "times the limit", limit.utmostTimes(), limit.source()), Term.of("a", "the limit", allowed)), utmost,
        limit.source()));
    return utmost;
  }

  private static String words(DeviationLimit limit, Found worst, Length smallest, int number, long beyond) {
    String greatest = limit.deviation().isSize()
        ? "farthest off " + worst.reading() + ", by " + worst.deviation()
        : (limit.meanOf() > 1 ? "greatest mean " : limit.least().isPresent() ? smallest + " to " : "greatest ") + worst.deviation();
    return greatest + " of " + number + (beyond == 0 ? "" : ", " + beyond + " beyond");
  }

  private String check(DeviationLimit limit) {
    return limit.deviation().words() + ", " + set.name();
  }

  private void open(DeviationLimit limit, String found, String advice) {
    judgements.add(new Judgement("deviation-" + limit.deviation().code(), check(limit), "", found, limit.toString(), Outcome.NOT_MEASURED,
        limit.source(), advice));
  }

  private Judgement silent(Deviation read) {
    String others = DeviationSet.all(set.stage()).stream().filter(other -> other.limits().stream().anyMatch(limit -> limit.deviation() == read
        && limit.widths().contains(readings.width()))).map(other -> "'" + other + "'").collect(Collectors.joining(", "));
    return new Judgement("deviation-" + read.code(), read.words() + ", " + set.name(), "", readings.of(read).size() + " read",
        "none in set '" + set + "' for boards of " + readings.width(), Outcome.NOT_MEASURED, set.limits().get(0).source(),
        "look in the goods' papers for what is permitted" + (others.isEmpty() ? "; none of the library's sets has a limit for it"
            : ", or by a set that has such a limit: " + others));
  }

  private void number() {
    if (set.number().isEmpty() || readings.area().isEmpty()) {
      return;
    }
    long needed = set.number().get().neededFor(readings.area().get());
    Source source = set.limits().get(0).source();
    readings.all().forEach((deviation, values) -> {
      if (values.size() < needed) {
        findings.add(new Finding("few-readings", Severity.WARNING, deviation.words(), "'" + set + "' asks for at least " + needed
            + " readings of the " + deviation.words() + " (" + set.number().get() + "), but there are " + values.size()
            + "; measure at more places", source));
      }
    });
  }

  private void moisture() {
    if (set.moisture().isPresent() && readings.moisture().isPresent()
        && !set.moisture().get().contains(readings.moisture().get())) {
      findings.add(new Finding("measured-at-other-moisture", Severity.WARNING, "", "'" + set + "' is for wood of " + set.moisture().get()
          + ", but it was measured at " + readings.moisture().get().toPlainString() + " %; wood is wider when it is damper and joints close:"
          + " measure again when it is within", set.limits().get(0).source()));
    }
  }

  private void construction() {
    if (set.construction().isPresent() && readings.construction().isPresent() && !set.construction().equals(readings.construction())) {
      findings.add(new Finding("set-for-other-boards", Severity.WARNING, "board", "'" + set + "' is for " + set.about() + ", but these boards are "
          + readings.construction().get().name().toLowerCase(Locale.ROOT) + "; take the limits of the goods' papers", set.limits().get(0).source()));
    }
  }

  /** Where a share may be beyond, so few readings can be too few: how many it would take. */
  private String advice(DeviationLimit limit, long beyond, boolean isUtmostKept) {
    String more = limit.beyondPercent() == 0 || !isUtmostKept ? "" : "measure more: with " + beyond + " beyond, "
        + (beyond * 100 + limit.beyondPercent() - 1) / limit.beyondPercent() + " readings and more would keep it; ";
    return more + advice(limit.deviation());
  }

  private String advice(Deviation deviation) {
    if (set.stage() == Stage.GOODS) {
      return "do not lay these boards yet: measure more of them, set aside those that are off, and ask who sold them before any is sawn";
    }
    return switch (deviation) {
      case JOINT, PANEL_JOINT -> "read the air and the moisture of the boards before anything is filled: joints open in dry air and close again";
      case CUPPING -> "read the moisture of boards, subfloor and air before anything is sanded: boards that took up moisture from below cup, and"
          + " lie down again when it is gone";
      case LIPPING -> "look whether the subfloor beneath is flat and whether the boards are of one thickness";
      default -> "show it to who laid the floor, and agree on what is done before it is used";
    };
  }
}
