package floorcalc.flatness;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.List;

/** Shows how a gap comes about. */
final class EdgeGapWorking {
  private EdgeGapWorking() {}

  /** Shows how far the floor is off the line between its heights under the ends of an edge on equal blocks. */
  static Step offset(Length span, EdgeRest rest) {
    return new Step("offset-from-edge", "How far is the floor at " + rest.lowSpot().place()
        + " off the line between its heights under the ends of an edge of " + span + "?",
        "g = abs(hL + (hR - hL) * (x - xL) / (xR - xL) - h), rounded to the nearest nanometre", terms(rest), rest.gap(),
        Source.DEFINITION);
  }

  static List<Step> steps(GreatestGap greatest) {
    EdgeRest rest = greatest.rest();
    return List.of(new Step("gap-under-edge", "How far is the floor at " + rest.lowSpot().place() + " beneath an edge of "
        + greatest.span() + " laid from " + greatest.start() + ", which rests at " + rest.left().place() + " and "
        + rest.right().place() + (greatest.rule() == RestRule.GRAVITY ? " as gravity has it?" : " at its worst?"),
        "g = hL + (hR - hL) * (x - xL) / (xR - xL) - h, rounded to the nearest nanometre",
        terms(rest), rest.gap(), Source.DEFINITION));
  }

  private static List<Term> terms(EdgeRest rest) {
    return List.of(Term.of("hL", "height of the left contact", rest.left().height()),
        Term.of("hR", "height of the right contact", rest.right().height()),
        Term.of("x", "place of the low spot", rest.lowSpot().place()),
        Term.of("xL", "place of the left contact", rest.left().place()),
        Term.of("xR", "place of the right contact", rest.right().place()),
        Term.of("h", "height of the floor there", rest.lowSpot().height()));
  }
}
