package floorcalc.underlay;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;

/** The working of the strips of one floor. */
final class StripWorking {
  private StripWorking() {}

  static List<Step> of(StripLayout layout) {
    RollGoods roll = layout.roll();
    String where = layout.room().name();
    Length breadth = StripWays.breadth(layout);
    long across = layout.strips().get(layout.strips().size() - 1).number();
    List<Step> steps = new ArrayList<>();
    steps.add(new Step("breadth-to-cover", where + ": how wide is the floor across the strips, which run at "
        + layout.direction() + "?", "B = H + 2 * u",
        List.of(Term.of("H", "extent of the floor across the strips", breadth.minus(roll.upturn().multipliedBy(2))),
            Term.of("u", "upturn at each wall", roll.upturn())), breadth, Source.DEFINITION));
    steps.add(new Step("strips-across", where + ": how many strips lie side by side?", "n = max(1, ceil((B - o) / (w - o)))",
        List.of(Term.of("B", "breadth to cover", breadth), overlap(roll), Term.of("w", "width of the roll", roll.width())),
        across, Source.DEFINITION));
    steps.add(Step.sum("strip-length", where + ": how long are all strips, each as long as the floor within it and its upturns?", "S",
        layout.strips().stream().map(RollStrip::length).toList(), "strips of "));
    long endLaps = layout.strips().stream().mapToLong(strip -> layout.parts(strip) - 1).sum();
    if (endLaps > 0) {
      steps.add(new Step("end-laps", where + ": how long are all strips with end laps, where a strip is longer than a roll?",
          "E = S + k * o", List.of(Term.of("S", "length of all strips", layout.length()),
              Term.of("k", "end laps", endLaps), overlap(roll)),
          layout.length().plus(roll.lap().overlap().multipliedBy(endLaps)), Source.COMMON_PRACTICE));
    }
    steps.add(new Step("seam-length", where + ": along how much do strips meet, side by side" + (endLaps > 0 ? " and at end laps"
        : "") + "?", "value as stated", List.of(), layout.seamLength(), Source.DEFINITION));
    return steps;
  }

  private static Term overlap(RollGoods roll) {
    return new Term("o", "overlap, " + roll.lap().name(), roll.lap().overlap(), roll.lap().source());
  }
}
