package floorcalc.site;

import floorcalc.moisture.AirClimate;
import floorcalc.moisture.ClimateLimits;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import java.util.List;
import java.util.stream.Collectors;

/** The air of the room now, and what it will be in the two seasons if that was given. */
final class AirCheck {
  private static final String IN_USE = "the air in use is not that of this limit: damp or dry it in that season, or ask the"
      + " boards' maker and say in writing that joints and gaps will move";

  private AirCheck() {}

  static void add(SiteParts site, Report report) {
    ClimateLimits limits = site.airLimits;
    if (site.air != null) {
      report.judgements.addAll(limits.judge(site.air, ""));
    } else {
      none(limits.notMeasured(""), report);
    }
    if (site.driest != null) {
      season(limits, site.driest, "driest season", report);
      season(limits, site.dampest, "dampest season", report);
    }
  }

  /** One line, however many limits the set has. */
  private static void none(List<Judgement> open, Report report) {
    Judgement first = open.get(0);
    report.open(first.code(), open.size() == 1 ? first.check() : "relative humidity and temperature of the air", "", "",
        open.stream().map(Judgement::limit).collect(Collectors.joining("; ")), first.source(), first.advice());
  }

  private static void season(ClimateLimits limits, AirClimate air, String when, Report report) {
    for (Judgement one : limits.judge(air, when)) {
      report.judgements.add(new Judgement(one.code(), one.check(), when, one.found(), one.limit(), one.outcome(),
          one.source(), one.outcome() == Outcome.MET ? "" : IN_USE));
    }
  }
}
