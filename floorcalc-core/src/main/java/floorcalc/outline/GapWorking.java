package floorcalc.outline;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The steps of an expansion gap, from the figures that gave the result. */
final class GapWorking {
  /** The formula's area is given to a square micrometre: finer than any rounding of corners, so more would not be true. */
  private static final BigDecimal HALVES_PER_SQUARE_MICROMETRE = new BigDecimal(2_000_000);
  private static final int SUM_DECIMALS = 12;
  /** Pieces of floor listed one by one; the others are added up. */
  private static final int MOST_LISTED = 10;

  private GapWorking() {}

  static List<Step> steps(ExpansionGap result, List<Mitres> rings) {
    Outline room = result.room();
    Length perimeter = result.perimeter();
    Length gap = result.gap();
    BigDecimal juttingOut = sum(rings, false);
    BigDecimal reflex = sum(rings, true);
    BigDecimal corners = plain(juttingOut.add(reflex));
    Area area = room.area();
    Area formula = byFormula(area, perimeter, gap, corners);
    Area laid = result.laidArea();
    return List.of(
        step("gap-perimeter", "How long are the walls that the gap runs along?", "P = shell + voids", perimeter,
            Term.of("shell", room.shell().size() + " walls of the room", room.shell().perimeter()),
            Term.of("voids", room.size() - room.shell().size() + " walls of voids",
                perimeter.minus(room.shell().perimeter()))),
        step("room-area", "What is the area of the room?", "A = shell - voids", area,
            Term.of("shell", "area within the walls, by the shoelace formula", room.shell().area()),
            Term.of("voids", "area of " + room.voids().size() + " voids, by the shoelace formula",
                room.shell().area().minus(area))),
        step("gap-corners", "What do the corners add?", "S = out + reflex", corners,
            Term.of("out", "Σ cot(θ/2) over corners whose angle θ is at most 180°", juttingOut),
            Term.of("reflex", "Σ cot(θ/2) over reflex corners" + cutOff(rings), reflex)),
        step("laid-area-by-formula", "What area is left to lay, if the gap swallows no wall?",
            "F = A - P * d + d * d * S, rounded to a whole square micrometre", formula,
            Term.of("A", "area of the room", area), Term.of("P", "length of all walls", perimeter),
            Term.of("d", "expansion gap", gap), Term.of("S", "sum over the corners", corners)),
        pieces(result.laid(), laid),
        step("gap-area", "What area does the gap take?", "T = A - L", result.areaTaken(),
            Term.of("A", "area of the room", area), Term.of("L", "area left to lay", laid)),
        step("gap-check", "How far is the formula from the corners? By rounding alone, while no wall is swallowed.",
            "e = F - L", formula.minus(laid),
            Term.of("F", "area left by the formula", formula), Term.of("L", "area left to lay", laid)));
  }

  private static Step step(String id, String question, String formula, Object result, Term... terms) {
    return new Step(id, question, formula, List.of(terms), result, Source.DEFINITION);
  }

  private static Step pieces(List<Outline> laid, Area sum) {
    List<Term> terms = new ArrayList<>();
    int listed = Math.min(MOST_LISTED, laid.size());
    for (int i = 0; i < listed; i++) {
      terms.add(Term.of("L" + (i + 1), "piece " + (i + 1) + ", by the shoelace formula", laid.get(i).area()));
    }
    if (listed < laid.size()) {
      terms.add(Term.of("others", laid.size() - listed + " more pieces",
          laid.subList(listed, laid.size()).stream().map(Outline::area).reduce(Area.ZERO, Area::plus)));
    }
    String formula = terms.stream().map(Term::symbol).collect(Collectors.joining(" + ", "L = ", terms.isEmpty() ? "0" : ""));
    return new Step("laid-area", "What area is left to lay, by the corners of what is laid?", formula, terms, sum,
        Source.DEFINITION);
  }

  /** Sums the corners of one kind, to twelve decimals: what is shown is what the next step works with. */
  private static BigDecimal sum(List<Mitres> rings, boolean reflex) {
    double sum = 0;
    for (Mitres ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        sum += ring.isReflex(i) == reflex ? ring.term(i) : 0;
      }
    }
    return plain(new BigDecimal(sum).setScale(SUM_DECIMALS, RoundingMode.HALF_EVEN));
  }

  private static String cutOff(List<Mitres> rings) {
    int count = 0;
    for (Mitres ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        count += ring.isCutOff(i) ? 1 : 0;
      }
    }
    return count == 0 ? "" : ", " + count + " mitres cut off square ten gaps from the corner";
  }

  private static BigDecimal plain(BigDecimal value) {
    BigDecimal stripped = value.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }

  private static Area byFormula(Area room, Length perimeter, Length gap, BigDecimal corners) {
    BigDecimal strips = new BigDecimal(perimeter.times(gap).toHalfSquareNanometres());
    BigDecimal mitres = new BigDecimal(gap.times(gap).toHalfSquareNanometres()).multiply(corners);
    BigDecimal halves = new BigDecimal(room.toHalfSquareNanometres()).subtract(strips).add(mitres);
    return Area.ofHalfSquareNanometres(halves.divide(HALVES_PER_SQUARE_MICROMETRE, 0, RoundingMode.HALF_EVEN)
        .multiply(HALVES_PER_SQUARE_MICROMETRE).toBigInteger());
  }
}
