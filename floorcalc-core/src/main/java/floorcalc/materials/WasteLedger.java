package floorcalc.materials;

import floorcalc.measure.Area;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.io.Serializable;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Where the boards that are bought go, to the half square nanometre: everything bought is one of these. Areas are those
 * that the boards cover when laid.
 * <p>
 * {@code bought = laid + trimmedToShape + sawKerf + usableOffcuts + shortOffcuts + spare + packRounding}. A percentage
 * is given for display beside the areas, always of a base that is named.
 *
 * @param bought all boards in the packs, not null
 * @param laid the floor that the pieces cover, not null
 * @param trimmedToShape what is sawn off pieces that are not rectangles, not null
 * @param sawKerf what the saw turns to dust, not null
 * @param usableOffcuts offcuts left at the end that are long and wide enough for another piece, not null
 * @param shortOffcuts offcuts that are too short or too narrow for any piece, not null
 * @param spare whole boards kept for mistakes and repairs, not null
 * @param packRounding whole boards over because packs are sold whole, not null
 * @since 0.1
 */
public record WasteLedger(
    Area bought,
    Area laid,
    Area trimmedToShape,
    Area sawKerf,
    Area usableOffcuts,
    Area shortOffcuts,
    Area spare,
    Area packRounding) implements Serializable {
  /** Checks that no part is null. */
  public WasteLedger {
    Objects.requireNonNull(bought, "bought");
    Objects.requireNonNull(laid, "laid");
    Objects.requireNonNull(trimmedToShape, "trimmedToShape");
    Objects.requireNonNull(sawKerf, "sawKerf");
    Objects.requireNonNull(usableOffcuts, "usableOffcuts");
    Objects.requireNonNull(shortOffcuts, "shortOffcuts");
    Objects.requireNonNull(spare, "spare");
    Objects.requireNonNull(packRounding, "packRounding");
  }

  /**
   * Returns what is left when every part is taken from what was bought.
   *
   * @return zero if the ledger closes, not null
   */
  public Area difference() {
    return bought.minus(laid).minus(trimmedToShape).minus(sawKerf).minus(usableOffcuts).minus(shortOffcuts)
        .minus(spare).minus(packRounding);
  }

  /**
   * Returns what is neither floor, nor spare, nor a whole board, nor an offcut that serves again.
   *
   * @return trim, sawdust and short offcuts together, not null
   */
  public Area cuttingWaste() {
    return trimmedToShape.plus(sawKerf).plus(shortOffcuts);
  }

  /**
   * Returns an area as a percentage of what was bought, for display.
   *
   * @param part the area, not null
   * @param decimals the decimals to round to, half away from zero; 0 to 12
   * @return the percentage, 0 if nothing was bought; not null
   * @throws IllegalArgumentException if the decimals are out of range
   */
  public BigDecimal perCentOfBought(Area part, int decimals) {
    return perCent(part, bought, decimals);
  }

  /**
   * Returns an area as a percentage of the floor laid, for display.
   *
   * @param part the area, not null
   * @param decimals the decimals to round to, half away from zero; 0 to 12
   * @return the percentage, 0 if nothing was laid; not null
   * @throws IllegalArgumentException if the decimals are out of range
   */
  public BigDecimal perCentOfLaid(Area part, int decimals) {
    return perCent(part, laid, decimals);
  }

  private static BigDecimal perCent(Area part, Area whole, int decimals) {
    return PerCent.of(new BigDecimal(part.toHalfSquareNanometres()), new BigDecimal(whole.toHalfSquareNanometres()),
        decimals);
  }

  /**
   * Returns the ledger with its working: the sum of its lines held against what was bought, and the cutting waste with
   * its share of what was bought beside it.
   *
   * @return the ledger with the steps {@code accounted-for}, {@code ledger-difference}, {@code cutting-waste} and
   *     {@code cutting-waste-share}, and a finding {@code ledger-open} if it does not close; not null
   */
  public Calculated<WasteLedger> explained() {
    Area sum = bought.minus(difference());
    List<Step> steps = new ArrayList<>();
    steps.add(step("accounted-for", "Where do the boards go?", "A = a1 + a2 + a3 + a4 + a5 + a6 + a7", List.of(
        Term.of("a1", "floor laid", laid), Term.of("a2", "trimmed to shape", trimmedToShape),
        Term.of("a3", "saw kerf", sawKerf), Term.of("a4", "offcuts that serve again", usableOffcuts),
        Term.of("a5", "offcuts too short or too narrow", shortOffcuts), Term.of("a6", "spare boards", spare),
        Term.of("a7", "whole boards over because packs are sold whole", packRounding)), sum));
    steps.add(step("ledger-difference", "What of the boards bought is not accounted for?", "D = B - A",
        List.of(Term.of("B", "boards bought", bought), Term.of("A", "accounted for", sum)), difference()));
    steps.add(step("cutting-waste", "What is lost in cutting?", "V = a2 + a3 + a5",
        List.of(Term.of("a2", "trimmed to shape", trimmedToShape), Term.of("a3", "saw kerf", sawKerf),
            Term.of("a5", "offcuts too short or too narrow", shortOffcuts)), cuttingWaste()));
    if (bought.isPositive()) {
      steps.add(step("cutting-waste-share", "What share of the boards bought is that, in %, to one decimal?",
          "v = 100 * V / B, rounded to one decimal",
          List.of(Term.of("V", "lost in cutting", cuttingWaste()), Term.of("B", "boards bought", bought)),
          perCentOfBought(cuttingWaste(), 1)));
    }
    List<Finding> findings = difference().isZero() ? List.of()
        : List.of(new Finding("ledger-open", Severity.SERIOUS, "", "of " + bought + " bought, " + difference()
            + " is not accounted for; the pieces, cuts and offcuts do not belong to these boards", Source.DEFINITION));
    return Calculated.of(this, steps, findings);
  }

  private static Step step(String id, String question, String formula, List<Term> terms, Object result) {
    return new Step(id, question, formula, terms, result, Source.DEFINITION);
  }
}
