package floorcalc.flatness;

import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.List;

/** Shows how a gap comes about. */
final class GapWorking {
  private GapWorking() {}

  static List<Step> steps(GreatestGap greatest) {
    EdgeRest rest = greatest.rest();
    return List.of(new Step("gap-under-edge", "How far is the floor at " + rest.lowSpot().place() + " beneath an edge of "
        + greatest.span() + " laid from " + greatest.start() + ", which rests at " + rest.left().place() + " and "
        + rest.right().place() + (greatest.rule() == RestRule.GRAVITY ? " as gravity has it?" : " at its worst?"),
        "g = hL + (hR - hL) * (x - xL) / (xR - xL) - h, rounded to the nearest nanometre",
        List.of(Term.of("hL", "height of the left contact", rest.left().height()),
            Term.of("hR", "height of the right contact", rest.right().height()),
            Term.of("x", "place of the low spot", rest.lowSpot().place()),
            Term.of("xL", "place of the left contact", rest.left().place()),
            Term.of("xR", "place of the right contact", rest.right().place()),
            Term.of("h", "height of the floor at the low spot", rest.lowSpot().height())),
        rest.gap(), Source.DEFINITION));
  }
}
