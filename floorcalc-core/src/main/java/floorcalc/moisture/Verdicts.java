package floorcalc.moisture;

import floorcalc.moisture.SubfloorMoisture.Summary;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** The verdict on all readings of one method. */
final class Verdicts {
  static final String CODE = "subfloor-moisture";
  private static final Comparator<MoistureLimit> STRICTEST_FIRST = Comparator.comparing(MoistureLimit::most);

  private final List<MoistureReading> taken;
  private final Substrate substrate;
  private final Heating heating;
  private final MoistureLimits set;
  private final Summary summary;

  Verdicts(List<MoistureReading> taken, Substrate substrate, Heating heating, MoistureLimits set, Summary summary) {
    this.taken = taken;
    this.substrate = substrate;
    this.heating = heating;
    this.set = set;
    this.summary = summary;
  }

  Judgement judge() {
    MoistureReading failed = null;
    MoistureReading open = null;
    MoistureReading without = null;
    for (MoistureReading reading : taken) {
      List<MoistureLimit> limits = limits(reading);
      if (limits.isEmpty()) {
        without = higher(without, reading);
      } else if (reading.value().compareTo(limits.get(limits.size() - 1).most()) > 0) {
        failed = higher(failed, reading);
      } else if (reading.value().compareTo(limits.get(0).most()) > 0) {
        open = higher(open, reading);
      }
    }
    if (failed != null) {
      List<MoistureLimit> limits = limits(failed);
      MoistureLimit kept = limits.get(limits.size() - 1);
      return judgement(failed, Outcome.NOT_MET, limits, "do not lay; let it dry, find where the damp comes from, or put in"
          + " what its maker and the adhesive's maker allow, then measure again (over "
          + summary.method().text(kept.most()) + ")");
    }
    if (without != null) {
      return noLimit(without);
    }
    if (open == null && !isCovered(summary.highest())) {
      return judgement(summary.highest(), Outcome.NOT_MEASURED, limits(summary.highest()), "state what the subfloor is: it"
          + " may be one that the set has no limit for");
    }
    if (open != null) {
      return judgement(open, Outcome.NOT_MEASURED, limits(open), "state the subfloor, its heating and the depth of the"
          + " reading: it keeps one of the limits that may apply and not the other");
    }
    return judgement(summary.highest(), Outcome.MET, limits(summary.highest()), "");
  }

  /**
   * Whether there is a limit whatever the subfloor and its heating turn out to be. A meter that shows so little that any
   * wood would pass leaves nothing open on wood.
   */
  private boolean isCovered(MoistureReading reading) {
    return substrate.candidates().stream().filter(summary.method()::isFor)
        .filter(on -> substrate == on || !on.isWood() || reading.value().compareTo(PublishedLimits.WOOD_BY_METER) > 0)
        .allMatch(on -> heating.candidates().stream()
            .noneMatch(heated -> set.limitsFor(reading, on, heated).isEmpty()));
  }

  private static MoistureReading higher(MoistureReading so, MoistureReading reading) {
    return so == null || reading.value().compareTo(so.value()) > 0 ? reading : so;
  }

  private List<MoistureLimit> limits(MoistureReading reading) {
    return set.limitsFor(reading, substrate, heating).stream().sorted(STRICTEST_FIRST).toList();
  }

  private Judgement judgement(MoistureReading reading, Outcome outcome, List<MoistureLimit> limits, String advice) {
    return new Judgement(CODE, check(), reading.place(), found(reading), limit(limits), outcome,
        limits.get(0).source(), advice);
  }

  /** Limits of one figure are named once. */
  private String limit(List<MoistureLimit> limits) {
    if (limits.stream().map(MoistureLimit::most).distinct().count() == 1) {
      return "at most " + summary.method().text(limits.get(0).most());
    }
    return limits.stream().map(MoistureLimit::toString).distinct().collect(Collectors.joining(", or "));
  }

  private Judgement noLimit(MoistureReading reading) {
    String others = MoistureLimits.forMethod(reading.method(), substrate).stream().map(other -> "'" + other + "'")
        .collect(Collectors.joining(", "));
    String known = set.limits().stream().map(limit -> limit.method().words()).distinct()
        .collect(Collectors.joining(", "));
    return new Judgement(CODE, check(), reading.place(), found(reading), "none in set '" + set + "' for this method"
        + reading.depth().map(depth -> ", this depth (" + depth + ")").orElse("") + " and subfloor", Outcome.NOT_MEASURED,
        set.source(), "measure by " + known + ", or judge by a set that has such a limit"
        + (others.isEmpty() ? "; none of the library's has" : ": " + others)
        + "; readings of one method are not converted into another");
  }

  private String check() {
    return "moisture of the subfloor by " + summary.method().words() + ", " + substrate.words()
        + (substrate.isWood() ? "" : ", " + heating.words());
  }

  private String found(MoistureReading reading) {
    if (summary.count() == 1) {
      return reading.toString();
    }
    boolean highest = reading.value().compareTo(summary.highest().value()) == 0;
    return reading + (highest ? ", the highest of " : ", one of ") + summary.count() + "; mean "
        + summary.method().text(summary.mean());
  }
}
