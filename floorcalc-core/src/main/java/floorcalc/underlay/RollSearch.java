package floorcalc.underlay;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.trims.TrimCutting;
import floorcalc.trims.TrimPiece;
import floorcalc.trims.TrimStock;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/** Looks for the ways to lay strips that take the fewest rolls. Used by one thread. */
final class RollSearch {
  private static final int MOST_LENGTHS = 500;
  /** Cuttings tried when the ways of floors are chosen together. */
  private static final int MOST_TRIED = 60;
  private static final List<Length> STEPS = List.of(Length.ofMillimetres(1), Length.ofMillimetres(10),
      Length.ofMillimetres(100), Length.ofMillimetres(1000));
  private static final Comparator<Way> BETTER = Comparator.comparingInt((Way way) -> way.cutting.value().barsBought())
      .thenComparing(Way::seam).thenComparing(Way::length);

  private final RollGoods roll;
  private final List<CoveredRoom> rooms;
  private int tried;

  RollSearch(RollGoods roll, List<CoveredRoom> rooms) {
    this.roll = Objects.requireNonNull(roll, "roll");
    this.rooms = List.copyOf(rooms);
    if (this.rooms.isEmpty()) {
      throw new IllegalArgumentException("there is no floor to cover; give at least one");
    }
  }

  /** A layout for each floor, and how all of them are cut. */
  private record Way(List<StripLayout> layouts, Calculated<TrimCutting> cutting, Length roundedTo) {
    Length seam() {
      return layouts.stream().map(StripLayout::seamLength).reduce(Length.ZERO, Length::plus);
    }

    Length length() {
      return layouts.stream().map(StripLayout::length).reduce(Length.ZERO, Length::plus);
    }
  }

  Calculated<RollOrder> order() {
    List<List<StripLayout>> choices = rooms.stream().map(room -> StripWays.of(room, roll)).toList();
    List<StripLayout> chosen = new ArrayList<>();
    choices.forEach(ways -> chosen.add(
        ways.stream().map(way -> cut(List.of(way))).min(BETTER).orElseThrow().layouts().get(0)));
    Way best = rooms.size() == 1 ? cut(chosen) : together(choices, cut(chosen));
    RollOrder order = new RollOrder(roll, best.layouts, best.cutting.value());
    List<Finding> findings = new ArrayList<>(best.cutting.findings());
    if (!best.roundedTo.isZero()) {
      findings.add(new Finding("strip-lengths-rounded", Severity.NOTE, roll.name(), "strips of more than " + MOST_LENGTHS
          + " different lengths; each is cut longer, to whole multiples of " + best.roundedTo, Source.DEFINITION));
    }
    return Calculated.of(order, steps(order, best.cutting), findings);
  }

  /** Changes the way of one floor after another as long as that is better for all. */
  private Way together(List<List<StripLayout>> choices, Way start) {
    Way best = start;
    boolean better = true;
    while (better) {
      better = false;
      for (int i = 0; i < choices.size(); i++) {
        for (StripLayout way : choices.get(i)) {
          if (tried < MOST_TRIED && way != best.layouts.get(i)) {
            List<StripLayout> changed = new ArrayList<>(best.layouts);
            changed.set(i, way);
            Way other = cut(changed);
            tried++;
            if (BETTER.compare(other, best) < 0) {
              best = other;
              better = true;
            }
          }
        }
      }
    }
    return best;
  }

  private Way cut(List<StripLayout> layouts) {
    List<TrimPiece> pieces = new ArrayList<>();
    for (StripLayout layout : layouts) {
      int number = 1;
      for (Length length : layout.cutLengths()) {
        pieces.add(TrimPiece.of(layout.room().name() + ", strip " + number, length));
        number++;
      }
    }
    Length step = Length.ZERO;
    for (int i = 0; i < STEPS.size() && pieces.stream().map(TrimPiece::length).distinct().count() > MOST_LENGTHS; i++) {
      step = STEPS.get(i);
      Length whole = step;
      pieces.replaceAll(piece -> TrimPiece.of(piece.name(), roundedUp(piece.length(), whole)));
    }
    return new Way(layouts, TrimCutting.of(pieces, List.of(TrimStock.sold(roll.length())), Length.ZERO), step);
  }

  private Length roundedUp(Length length, Length step) {
    Length rest = length.remainder(step);
    return (rest.isZero() ? length : length.plus(step.minus(rest))).min(roll.length());
  }

  private List<Step> steps(RollOrder order, Calculated<TrimCutting> cutting) {
    List<Step> steps = new ArrayList<>();
    order.layouts().forEach(layout -> steps.addAll(layout.steps()));
    List<Area> areas = order.layouts().stream().map(StripLayout::netArea).toList();
    StringBuilder formula = new StringBuilder("A = ");
    List<Term> terms = new ArrayList<>();
    for (int i = 1; i <= areas.size(); i++) {
      formula.append(i == 1 ? "" : " + ").append("A").append(i);
      terms.add(Term.of("A" + i, "area of " + order.layouts().get(i - 1).room().name(), areas.get(i - 1)));
    }
    add(steps, "net-area", "How large are the floors, which is what glue covers?", formula.toString(), terms, order.netArea());
    cutting.steps().stream().filter(step -> step.id().startsWith("bars-") || step.id().startsWith("worth-")
        || step.id().startsWith("least-")).map(RollSearch::ofRolls).forEach(steps::add);
    add(steps, "rolls", "How many rolls do the strips take, cut as listed?" + (order.isProvenFewest()
        ? " No cutting of these strips takes fewer." : " At least " + order.rollsAtLeast() + " are needed."),
        "value as stated", List.of(), order.rolls());
    order.cutting().cutList("strips-from-rolls", "roll").ifPresent(steps::add);
    add(steps, "area-bought", "How large are these rolls?", "b = N * w * L",
        List.of(Term.of("N", "rolls", order.rolls()), Term.of("w", "width of a roll", roll.width()),
            Term.of("L", "length of a roll", roll.length())), order.boughtArea());
    add(steps, "over-net", "How much more is bought than the floors measure: laps, upturns, what walls cut off, rests?", "m = b - A",
        List.of(Term.of("b", "area bought", order.boughtArea()), Term.of("A", "area of the floors", order.netArea())),
        order.boughtArea().minus(order.netArea()));
    return steps;
  }

  /** The working of the cutting in the words for rolls. */
  private static Step ofRolls(Step step) {
    return new Step(rolls(step.id()), rolls(step.question()), step.formula(),
        step.terms().stream().map(term -> new Term(term.symbol(), rolls(term.meaning()), term.value(), term.source())).toList(),
        step.result(), step.source());
  }

  private static String rolls(String text) {
    return text.replace("bar", "roll").replace("saw kerf", "what a knife takes").replace("with a kerf each", "each whole");
  }

  private static void add(List<Step> steps, String id, String question, String formula, List<Term> terms, Object result) {
    steps.add(new Step(id, question, formula, terms, result, Source.DEFINITION));
  }
}
