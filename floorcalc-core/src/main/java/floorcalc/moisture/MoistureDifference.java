package floorcalc.moisture;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Boards against a wood subfloor: how far their moisture contents may lie apart, by the width of the boards.
 * <p>
 * NWFA: within 4 percentage points for strip narrower than 3 in, within 2 for plank of 3 in and wider. The means are
 * compared; the widest apart of single readings is a finding. Only a meter on wood reads the moisture content of wood, so
 * readings of any other method are refused.
 *
 * @since 0.1
 */
public final class MoistureDifference {
  /** Whose limits these are. */
  public static final Source SOURCE = new Source("Minimizing moisture", "NWFA", 2017, "magazine, 30 January 2017",
      Standing.READ);

  private static final String CODE = "board-subfloor-difference";
  private static final Length PLANK = Length.ofInches(3, 0, 1);

  private MoistureDifference() {
  }

  /**
   * Returns how far apart boards and subfloor may be.
   *
   * @param boardWidth the cover width of the boards, more than zero, not null
   * @return 4 percentage points below 3 in, 2 from 3 in up, with the step {@code difference-allowed}; not null
   * @throws IllegalArgumentException if the width is not more than zero
   */
  public static Calculated<Percent> allowed(Length boardWidth) {
    if (!Objects.requireNonNull(boardWidth, "boardWidth").isPositive()) {
      throw new IllegalArgumentException("cover width must be more than 0 mm, but was " + boardWidth);
    }
    Percent most = Percent.of(boardWidth.compareTo(PLANK) < 0 ? "4" : "2");
    return Calculated.of(most, List.of(new Step("difference-allowed",
        "How many percentage points may boards and subfloor lie apart?", "d = 4 if b < 3in, else 2",
        List.of(Term.of("b", "cover width of the boards", boardWidth)), most, SOURCE)));
  }

  /**
   * Judges the difference between boards and a wood subfloor.
   *
   * @param boards moisture contents of boards, each from 0 % to 30 %, perhaps none, not null
   * @param subfloor readings of the subfloor by meter, each from 0 % to 100 %, perhaps none, not null
   * @param boardWidth the cover width of the boards, more than zero, not null
   * @return the judgement {@code board-subfloor-difference} with its steps and perhaps the finding
   *     {@code single-readings-apart}; not null
   * @throws IllegalArgumentException if a value is out of bounds, or a reading of the subfloor is not by meter
   */
  public static Calculated<Judgement> judge(List<Percent> boards, List<MoistureReading> subfloor, Length boardWidth) {
    Objects.requireNonNull(boards, "boards");
    Calculated<Percent> allowed = allowed(boardWidth);
    for (MoistureReading reading : subfloor) {
      if (reading.method() != MoistureMethod.METER) {
        throw new IllegalArgumentException("a reading by " + reading.method().words() + ", " + reading
            + ", cannot be turned into the moisture content of wood; measure the wood subfloor with a meter");
      }
    }
    List<Step> steps = new ArrayList<>(allowed.steps());
    if (boards.isEmpty() || subfloor.isEmpty()) {
      return Calculated.of(judgement(found(boards, subfloor), allowed.value(), Outcome.NOT_MEASURED, "measure "
          + (boards.isEmpty() ? subfloor.isEmpty() ? "boards and subfloor" : "the boards" : "the subfloor")
          + " with a meter set to the wood"), steps);
    }
    Spread above = Spread.ofBoards(boards);
    Spread below = Spread.of(percents(subfloor));
    Percent difference = above.mean().minus(below.mean()).abs();
    steps.add(new Step("mean-difference", "How far apart are boards and subfloor on average, in percentage points?",
        "D = abs(mb - ms)", List.of(Term.of("mb", "mean moisture content of the boards", above.mean()),
            Term.of("ms", "mean moisture content of the subfloor", below.mean())), difference, Source.DEFINITION));
    boolean met = difference.compareTo(allowed.value()) <= 0;
    return Calculated.of(judgement(difference.number().toPlainString() + " percentage points (boards " + above
        + "; subfloor " + below + ")", allowed.value(), met ? Outcome.MET : Outcome.NOT_MET,
        met ? "" : "do not lay; bring subfloor and boards nearer by heating and airing, and measure again"), steps,
        findings(above, below, allowed.value()));
  }

  /** What there is where one of the two is missing. */
  private static String found(List<Percent> boards, List<MoistureReading> subfloor) {
    return !boards.isEmpty() ? "boards " + Spread.ofBoards(boards)
        : subfloor.isEmpty() ? "" : "subfloor " + Spread.of(percents(subfloor));
  }

  private static List<Percent> percents(List<MoistureReading> subfloor) {
    return subfloor.stream().map(reading -> Percent.of(reading.value())).toList();
  }

  private static List<Finding> findings(Spread above, Spread below, Percent allowed) {
    Percent widest = above.highest().minus(below.lowest()).abs();
    Percent other = below.highest().minus(above.lowest()).abs();
    widest = other.compareTo(widest) > 0 ? other : widest;
    return widest.compareTo(allowed) <= 0 ? List.of() : List.of(new Finding("single-readings-apart", Severity.NOTE, "",
        "single readings of boards and subfloor lie up to " + widest.number().toPlainString() + " percentage points apart,"
            + " more than the " + allowed.number().toPlainString() + " that their means may; look for a damp place or for"
            + " packs that differ", SOURCE));
  }

  private static Judgement judgement(String found, Percent allowed, Outcome outcome, String advice) {
    return new Judgement(CODE, "moisture content of the boards against the wood subfloor", "", found,
        "at most " + allowed.number().toPlainString() + " percentage points apart", outcome, SOURCE, advice);
  }
}
