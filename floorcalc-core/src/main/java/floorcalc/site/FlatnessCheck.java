package floorcalc.site;

import floorcalc.flatness.EdgeMethod;
import floorcalc.flatness.GapReading;
import floorcalc.flatness.HeightProfile;
import floorcalc.flatness.RestRule;
import floorcalc.flatness.SpanCheck;
import floorcalc.flatness.SpanLimit;
import floorcalc.flatness.ToleranceSet;
import floorcalc.levels.GridFlatness;
import floorcalc.levels.GridGap;
import floorcalc.levels.LevelFault;
import floorcalc.levels.Levels;
import floorcalc.levels.PreparationOptions;
import floorcalc.levels.SpotLevel;
import floorcalc.levels.SubfloorPreparation;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Outcome;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * The flatness of a floor by all that was read: lines of heights, heights on a grid, gaps under an edge. For each span of the set
 * the worst of them decides. What can be judged under no span of the set, or is doubted, stands in a line of its own.
 */
final class FlatnessCheck {
  private static final String GRID = "grid of heights";
  private static final String BY_HAND = "gaps read by hand";
  private static final Comparator<GapReading> BY_SPAN = Comparator.comparing(GapReading::span)
      .thenComparing(GapReading::gap).thenComparing(GapReading::where);

  /** As much of the floor as this must lie within what was read, or it is said: a floor is not flat where nobody read it. */
  private static final double MOST = 0.75;

  private final SiteParts site;
  private final Area area;
  private final ToleranceSet set;
  private final Report report;
  private final FlatnessRows rows;

  FlatnessCheck(SiteParts site, Area area, Report report) {
    this.area = area;
    this.site = site;
    this.set = site.flatness;
    this.report = report;
    this.rows = new FlatnessRows(set, report);
  }

  void add() {
    boolean anything = !site.lines.isEmpty() || !site.heights.isEmpty() || !site.gaps.isEmpty();
    if (anything && set.floor().startsWith("no floor")) {
      report.findings.add(new Finding("set-for-no-floor", Severity.WARNING, "", "'" + set.name() + "' is for " + set.floor()
          + "; choose a set that is for floors", source()));
    }
    for (HeightLine line : site.lines) {
      line(line);
    }
    heights();
    byHand();
    rows.write();
  }

  private Source source() {
    return set.limits().get(0).source();
  }

  private void line(HeightLine line) {
    String from = "line " + line.name();
    HeightProfile profile;
    try {
      profile = line.profile();
    } catch (IllegalArgumentException unfit) {
      unfit("line-not-fit", from, line.readings().size() + " readings", unfit.getMessage());
      return;
    }
    Calculated<List<SpanCheck>> judged = set.judge(profile, RestRule.WORST);
    List<EdgeFound> found = found(from, judged.value());
    rows.working(from, judged.steps());
    report.findings.addAll(Report.at(from, judged.findings()));
    if (found.isEmpty()) {
      rows.silent(from, profile.toString(), judged.value().get(judged.value().size() - 1).advice());
    } else if (isDoubted(judged.findings())) {
      rows.doubted(found);
    } else {
      rows.found(found);
    }
  }

  private List<EdgeFound> found(String from, List<SpanCheck> checks) {
    List<EdgeFound> found = new ArrayList<>();
    for (SpanCheck check : checks) {
      if (check.outcome() != Outcome.NOT_MEASURED) {
        SpanLimit limit = set.method() == EdgeMethod.CONTACT_DISTANCE
            ? SpanLimit.of(check.span(), check.limit().gap(), check.source()) : check.limit();
        found.add(EdgeFound.of(from, limit, check));
      }
    }
    return found;
  }

  private static boolean isDoubted(List<Finding> findings) {
    return findings.stream().anyMatch(finding -> finding.severity() != Severity.NOTE
        && !finding.code().equals("within-uncertainty"));
  }

  private void heights() {
    if (site.heights.isEmpty()) {
      return;
    }
    String count = site.heights.size() + (site.heights.size() == 1 ? " height" : " heights");
    List<LevelFault> faults = Levels.faultsOf(site.heights);
    if (!faults.isEmpty()) {
      faults.forEach(fault -> report.findings.add(doubt(fault.kind().code(), "heights", fault.message())));
      rows.silent("heights", count, faults.get(0).message());
      return;
    }
    Levels levels = Levels.of(site.heights);
    List<Finding> doubts = levels.doubts();
    report.findings.addAll(Report.at("heights", doubts));
    report.findings.add(new Finding("floor-falls", Severity.NOTE, "heights", "the floor falls by " + levels.plane().value().fall()
        + " over the heights read; level is another question than flat, and no limit is held against it", Source.DEFINITION));
    partOf(levels);
    if (!levels.isGrid()) {
      rows.silent("heights", levels.toString(), "read the floor on a grid parallel to x and y, or along lines: no edge can be"
          + " laid along heights that are scattered");
    } else if (set.method() == EdgeMethod.EQUAL_OFFSETS || set.limits().stream().noneMatch(SpanLimit::isForAll)) {
      rows.silent("heights", levels.toString(), "read lines: '" + set.name() + "' is not one of gaps that all placements of an"
          + " edge must keep, which is what a grid is judged by");
    } else {
      grid(levels, doubts);
    }
  }

  /** Says how much of the floor lies within the heights, if that is little. */
  private void partOf(Levels levels) {
    Area within = extent(levels, spot -> spot.place().x()).times(extent(levels, spot -> spot.place().y()));
    if (within.toSquareMetres() < MOST * area.toSquareMetres()) {
      report.findings.add(doubt("heights-of-part", "heights", "the heights were read over " + within.toSquareMetreString(1) + " m² of "
          + area.toSquareMetreString(1) + " m²; beyond them nothing is judged: read the floor up to its walls"));
    }
  }

  private static Length extent(Levels levels, Function<SpotLevel, Length> along) {
    List<Length> places = levels.spots().stream().map(along).sorted().toList();
    return places.get(places.size() - 1).minus(places.get(0));
  }

  private void grid(Levels levels, List<Finding> doubts) {
    Calculated<GridFlatness> judged = GridFlatness.of(levels, set);
    GridFlatness flat = judged.value();
    rows.working(GRID, judged.steps());
    report.findings.addAll(Report.at("heights", judged.findings()));
    List<EdgeFound> found = new ArrayList<>();
    for (GridGap gap : flat.gaps()) {
      SpanLimit limit = set.method() == EdgeMethod.CONTACT_DISTANCE
          ? SpanLimit.of(gap.span(), gap.allowed(), source()) : limitOf(gap.span());
      found.add(EdgeFound.of(GRID, limit, set, gap));
    }
    if (found.isEmpty()) {
      rows.silent("heights", levels.toString(), flat.judgements().get(0).advice());
    } else if (isDoubted(doubts)) {
      rows.doubted(found);
    } else {
      rows.found(found);
      if (flat.gaps().stream().anyMatch(gap -> gap.gap().compareTo(gap.allowed()) > 0)) {
        report.findings.add(toFill(levels));
      }
    }
  }

  /** What filling alone would take, to tell how much work it is; its working goes into the report. */
  private Finding toFill(Levels levels) {
    Calculated<SubfloorPreparation> worked = SubfloorPreparation.of(levels, set, PreparationOptions.fillOnly());
    report.steps.addAll(worked.steps());
    SubfloorPreparation filled = worked.value();
    int spots = filled.toFill().size();
    return new Finding("subfloor-to-fill", Severity.NOTE, "heights", "filled and nothing ground, the floor keeps '" + set.name()
        + "' with " + litres(filled.fillerLitres()) + " of filler over " + spots + (spots == 1 ? " reading" : " readings") + ", at most "
        + filled.deepestFilling() + " deep, not the " + litres(filled.worstDepthTimesArea())
        + " of the worst depth times the area; where high spots are ground, less filler is needed", Source.DEFINITION);
  }

  /** Rounded up to a tenth of a litre. */
  private static String litres(BigDecimal volume) {
    return volume.setScale(1, RoundingMode.CEILING).toPlainString() + " litres";
  }

  private SpanLimit limitOf(Length span) {
    return set.limits().stream().filter(limit -> limit.isForAll() && limit.span().equals(span)).findFirst().orElseThrow();
  }

  private void byHand() {
    if (site.gaps.isEmpty()) {
      return;
    }
    Calculated<List<SpanCheck>> judged = set.judge(site.gaps.stream().sorted(BY_SPAN).toList());
    rows.working(BY_HAND, judged.steps());
    List<EdgeFound> found = found(BY_HAND, judged.value());
    rows.found(found);
    List<Finding> silent = judged.findings();
    if (!silent.isEmpty()) {
      rows.silent(BY_HAND, silent.size() + " of " + site.gaps.size() + (site.gaps.size() == 1 ? " gap" : " gaps"),
          silent.get(0).message());
    }
  }

  private void unfit(String code, String from, String found, String message) {
    report.findings.add(doubt(code, from, message));
    rows.silent(from, found, message);
  }

  private static Finding doubt(String code, String where, String message) {
    return new Finding(code, Severity.WARNING, where, message, Source.DEFINITION);
  }
}
