package floorcalc.levels;

import floorcalc.flatness.RestRule;
import floorcalc.flatness.SpanLimit;
import floorcalc.flatness.ToleranceSet;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How flat a grid of levels is: an edge laid along every row, every column and both diagonals, each at every place, judged by a set of
 * tolerances.
 * <p>
 * The edge may be rocked onto any two high points, so the greatest gap counts ({@link RestRule#WORST}). Between two readings the floor
 * is taken to run straight; what lies between the lines is not seen. A line shorter than the edge is judged as if by an edge as
 * long as the line. Where three readings in line do not fit under an edge it shows nothing of the floor: that span is
 * <em>not measured</em>, which is never a pass. Slope does not matter. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class GridFlatness {
  private final List<GridGap> gaps;
  private final List<Judgement> judgements;

  private GridFlatness(List<GridGap> gaps, List<Judgement> judgements) {
    this.gaps = List.copyOf(gaps);
    this.judgements = List.copyOf(judgements);
  }

  /**
   * Judges a grid of levels.
   *
   * @param levels the levels, on a grid; not null
   * @param set what the floor has to keep; limits for a share of the placements are not judged; not null
   * @return the greatest gaps and a judgement for each span, with the working of the worst of each; finding
   *     {@code grid-with-gaps} if places of the grid were not read; not null
   * @throws IllegalArgumentException if the levels do not form a grid, see {@link Levels#isGrid()}, or the set is not one of
   *     gaps under an edge
   */
  public static Calculated<GridFlatness> of(Levels levels, ToleranceSet set) {
    return of(levels, Limits.of(set));
  }

  static Calculated<GridFlatness> of(Levels levels, Limits limits) {
    LevelGrid grid = levels.grid();
    GapSearch search = new GapSearch(grid, levels.spots());
    List<GridGap> gaps = new ArrayList<>();
    List<Judgement> judgements = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    for (Limit limit : limits.limits()) {
      List<GridGap> found = new ArrayList<>();
      for (LineWay way : LineWay.values()) {
        search.worst(limit, way).ifPresent(found::add);
      }
      gaps.addAll(found);
      Optional<GridGap> worst = found.stream().reduce((a, b) -> over(b).compareTo(over(a)) > 0 ? b : a);
      worst.ifPresent(gap -> steps.add(step(levels, gap)));
      judgements.add(judgement(limit, worst));
    }
    for (SpanLimit limit : limits.left()) {
      judgements.add(new Judgement("flatness", "greatest gap under an edge of " + limit.span() + " at " + limit.percent()
          + " % of the placements", "", "", limit.gap().toString(), Outcome.NOT_MEASURED, limit.source(),
          "judge the lines of the grid as profiles"));
    }
    List<Finding> findings = new ArrayList<>();
    if (grid.gaps() > 0) {
      findings.add(new Finding("grid-with-gaps", Severity.NOTE, "", grid.gaps() + (grid.gaps() == 1 ? " place" : " places")
          + " of the grid of " + grid.xs.length + " by " + grid.ys.length + " readings "
          + (grid.gaps() == 1 ? "was" : "were") + " not read; no edge is laid across, and nothing is said about the floor there",
          Source.DEFINITION));
    }
    return Calculated.of(new GridFlatness(gaps, judgements), steps, findings);
  }

  private static Length over(GridGap gap) {
    return gap.gap().minus(gap.allowed());
  }

  private static Step step(Levels levels, GridGap gap) {
    Length height = levels.spots().stream().filter(spot -> spot.place().equals(gap.lowSpot())).findFirst().orElseThrow()
        .height();
    return new Step("gap-under-edge", "How far is the floor at x = " + gap.lowSpot().x() + ", y = " + gap.lowSpot().y()
        + " beneath an edge of " + gap.span() + " along " + gap.way().words() + " " + gap.line() + ", which rests at x = "
        + gap.from().x() + ", y = " + gap.from().y() + " and x = " + gap.to().x() + ", y = " + gap.to().y() + "?",
        "g = c - h", List.of(Term.of("c", "height of the edge over the low spot", height.plus(gap.gap())),
        Term.of("h", "height of the floor there", height)), gap.gap(), Source.DEFINITION);
  }

  private static Judgement judgement(Limit limit, Optional<GridGap> worst) {
    Length span = Length.ofNanometres(Math.round(limit.reach()));
    String check = "greatest gap under an edge of " + span;
    if (worst.isEmpty()) {
      return new Judgement("flatness", check, "", "", "", Outcome.NOT_MEASURED, limit.source(),
          "no three readings in line lie within " + span + "; read the floor closer, or lay an edge of this length on it");
    }
    GridGap gap = worst.get();
    return new Judgement("flatness", check, "x = " + gap.lowSpot().x() + ", y = " + gap.lowSpot().y(),
        gap.gap().toString(), gap.allowed().toString(), gap.isAllowed() ? Outcome.MET : Outcome.NOT_MET, limit.source(),
        gap.isAllowed() ? "" : "grind the high spots or fill the low ones");
  }

  /**
   * Returns the greatest gap for each span and each direction that could be judged: for each span rows, columns, rising and
   * falling diagonals.
   *
   * @return an unmodifiable list, not null, may be empty
   */
  public List<GridGap> gaps() {
    return gaps;
  }

  /**
   * Returns one judgement for each span of the set.
   *
   * @return an unmodifiable list, not null, not empty
   */
  public List<Judgement> judgements() {
    return judgements;
  }

  /**
   * Returns what all judgements come to: not met if one is not met, else not measured if one is not measured.
   *
   * @return the outcome, not null
   */
  public Outcome outcome() {
    if (judgements.stream().anyMatch(judgement -> judgement.outcome() == Outcome.NOT_MET)) {
      return Outcome.NOT_MET;
    }
    return judgements.stream().allMatch(Judgement::isMet) ? Outcome.MET : Outcome.NOT_MEASURED;
  }
}
