package floorcalc.outline;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** The steps and findings of an expansion gap, made from the figures that gave the result. */
final class GapWorking {
  /** The formula's area is shown to a square micrometre: finer than any rounding of corners, so no more would be true. */
  private static final BigDecimal HALVES_PER_SQUARE_MICROMETRE = new BigDecimal(2_000_000);
  private static final int SUM_DECIMALS = 9;

  private GapWorking() {}

  static Calculated<ExpansionGap> of(ExpansionGap result, List<Mitres> rings) {
    Area room = result.room().area();
    Length perimeter = result.perimeter();
    Length gap = result.gap();
    double juttingOut = sum(rings, false);
    double reflex = sum(rings, true);
    BigDecimal corners = decimal(juttingOut + reflex);
    Area formula = byFormula(room, perimeter, gap, juttingOut + reflex);
    Area laid = result.laidArea();
    List<Step> steps = new ArrayList<>();
    steps.add(new Step("gap-perimeter", "How long are the walls that the gap runs along?", "P = sum of the walls",
        List.of(Term.of("shell", result.room().shell().size() + " walls of the room", result.room().shell().perimeter()),
            Term.of("voids", "the walls of " + result.room().voids().size() + " voids",
                perimeter.minus(result.room().shell().perimeter()))),
        perimeter, Source.DEFINITION));
    steps.add(new Step("corner-sum", "How much do the corners change?", "S = Σ cot(θ/2), θ the floor's angle at each corner",
        List.of(Term.of("out", "the sum over corners of at most 180°", decimal(juttingOut)),
            Term.of("reflex", "the sum over reflex corners", decimal(reflex))),
        corners, Source.DEFINITION));
    steps.add(new Step("laid-area-by-formula", "What area is left, if the gap swallows no wall?", "A − P·d + d²·S",
        List.of(Term.of("A", "area of the room", room), Term.of("P", "length of all walls", perimeter),
            Term.of("d", "expansion gap", gap), Term.of("S", "sum over the corners", corners)),
        formula, Source.DEFINITION));
    steps.add(new Step("laid-area", "What area is left, by the corners of the pieces?", "sum of the pieces", List.of(
        Term.of("pieces", "number of pieces", result.laid().size())), laid, Source.DEFINITION));
    steps.add(new Step("gap-area", "What area does the gap take?", "A − laid",
        List.of(Term.of("A", "area of the room", room), Term.of("laid", "area left to lay", laid)),
        result.areaTaken(), Source.DEFINITION));
    return Calculated.of(result, steps, findings(result));
  }

  private static double sum(List<Mitres> rings, boolean reflex) {
    double sum = 0;
    for (Mitres ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        sum += ring.isReflex(i) == reflex ? ring.term(i) : 0;
      }
    }
    return sum;
  }

  private static BigDecimal decimal(double value) {
    return new BigDecimal(value).setScale(SUM_DECIMALS, RoundingMode.HALF_EVEN);
  }

  private static Area byFormula(Area room, Length perimeter, Length gap, double corners) {
    BigDecimal strips = new BigDecimal(perimeter.times(gap).toHalfSquareNanometres());
    BigDecimal mitres = new BigDecimal(gap.times(gap).toHalfSquareNanometres()).multiply(new BigDecimal(corners));
    BigInteger halves = new BigDecimal(room.toHalfSquareNanometres()).subtract(strips).add(mitres)
        .divide(HALVES_PER_SQUARE_MICROMETRE, 0, RoundingMode.HALF_EVEN).multiply(HALVES_PER_SQUARE_MICROMETRE)
        .toBigInteger();
    return Area.ofHalfSquareNanometres(halves);
  }

  private static List<Finding> findings(ExpansionGap result) {
    int pieces = result.laid().size();
    if (pieces == 1) {
      return List.of();
    }
    String message = pieces == 0
        ? "a gap of " + result.gap() + " at every wall leaves no floor: the room is nowhere wider than twice the gap"
        : "a gap of " + result.gap() + " at every wall leaves " + pieces
            + " pieces of floor: between them the room is nowhere wider than twice the gap";
    return List.of(new Finding(pieces == 0 ? "gap-swallows-floor" : "gap-splits-floor",
        pieces == 0 ? Severity.SERIOUS : Severity.WARNING, "", message, Source.GIVEN));
  }
}
