package floorcalc.site;

import floorcalc.moisture.Acclimatisation;
import floorcalc.moisture.Percent;
import floorcalc.movement.Coefficient;
import floorcalc.movement.GapChecks;
import floorcalc.movement.GapPoint;
import floorcalc.movement.MovementForecast;
import floorcalc.movement.Pinning;
import floorcalc.movement.Species;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The expansion gap against the movement that the seasons bring, or what is missing to judge it. */
final class MovementCheck {
  private static final String WHAT = "gap against the movement of the seasons";
  private static final String LIMIT = "at least what the movement closes, and under the trim when it is widest";

  private final SiteFloor floor;
  private final SiteParts site;
  private final Report report;

  MovementCheck(SiteFloor floor, SiteParts site, Report report) {
    this.floor = floor;
    this.site = site;
    this.report = report;
  }

  void add() {
    Optional<Coefficient> coefficient = floor.coefficient();
    if (site.driest == null || site.boardMoisture.isEmpty() || coefficient.isEmpty() || floor.gaps().isEmpty()) {
      incomplete(coefficient);
      return;
    }
    Percent now = Acclimatisation.meanOfBoards(site.boardMoisture).value();
    MovementForecast forecast;
    try {
      forecast = MovementForecast.inSeasons(now, site.driest, site.dampest, coefficient.get()).value();
    } catch (IllegalArgumentException beyond) {
      report.open("gap-wide-enough", WHAT, "", "seasons " + site.driest + ", " + site.dampest, LIMIT, Source.DEFINITION,
          beyond.getMessage());
      return;
    }
    List<GapPoint> places = floor.gaps();
    if (site.trimCover != null) {
      places = places.stream().map(place -> place.cover().isPresent() ? place : place.cover(site.trimCover)).toList();
    }
    Pinning pinning = site.pinning == null ? Pinning.notLookedAt() : site.pinning;
    report.judgements.addAll(report.take(GapChecks.judge(forecast, places, pinning)).judgements());
    if (floor.isByRule()) {
      report.findings.add(new Finding("movement-by-rule", Severity.NOTE, "", "how much these engineered boards move is taken from"
          + " a rule for multilayer boards, " + coefficient.get() + "; their maker's figure comes first",
          coefficient.get().source()));
    }
  }

  private void incomplete(Optional<Coefficient> coefficient) {
    List<String> missing = new ArrayList<>();
    List<String> found = new ArrayList<>();
    if (site.driest == null) {
      missing.add("say what air the driest and the dampest season bring");
    } else {
      found.add("seasons " + site.driest + ", " + site.dampest);
    }
    if (site.boardMoisture.isEmpty()) {
      missing.add("measure the boards");
    }
    if (coefficient.isEmpty()) {
      missing.add(floor.boards().species().map(MovementCheck::unknown)
          .orElse("say which wood the boards are, or give their maker's figure for movement"));
    }
    if (floor.gaps().isEmpty()) {
      missing.add("measure the gap at the walls and at everything fixed");
    }
    if (site.trimCover == null) {
      missing.add("say how far from the wall the trim reaches");
    } else {
      found.add("a trim of " + site.trimCover);
    }
    if (site.pinning == null) {
      missing.add("look for what holds the floor");
    }
    report.open("gap-wide-enough", WHAT, "", String.join("; ", found), LIMIT, Source.DEFINITION,
        String.join("; ", missing));
    if (site.pinning != null) {
      report.judgements.add(site.pinning.judge());
    }
  }

  private static String unknown(String wood) {
    try {
      Species.named(wood);
      return "";
    } catch (IllegalArgumentException unknown) {
      return unknown.getMessage();
    }
  }
}
