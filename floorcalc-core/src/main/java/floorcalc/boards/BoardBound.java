package floorcalc.boards;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * The number of boards that no plan with the same rows can do without.
 * <p>
 * Reasoning: make every piece longer and wider by one saw kerf, and the board too. Pieces of one board still lie apart in
 * it, so their areas add up to no more than the enlarged board. A stretch of length L takes at least ceil(L / P) pieces
 * whose lengths add up to L or more. A strip so wide that not even the narrowest other strip fits beside it takes the
 * whole width of its board. Floor of any other shape takes at least its area.
 */
public final class BoardBound {
  private BoardBound() {}

  /**
   * Returns the least number of boards.
   *
   * @param stretches the stretches of runs that pieces of known width must cover, not null
   * @param rest the floor outside the stretches that other pieces cover, not null
   * @param goods the boards, not null
   * @param rules the rules, of which the saw kerf counts here; not null
   * @return the bound with its working, not null
   */
  public static Calculated<Integer> of(List<Stretch> stretches, Area rest, BoardGoods goods, LayingRules rules) {
    RuleValue<Length> kerfRule = rules.get(LayingRules.SAW_KERF);
    long board = goods.longest().toNanometres();
    long kerf = kerfRule.value().toNanometres();
    long pitch = goods.laidPitch().toNanometres();
    long narrowest = rest.isZero()
        ? stretches.stream().mapToLong(s -> s.width().toNanometres()).min().orElse(pitch)
        : 0;
    long along = 0;
    long pieces = 0;
    BigInteger strips = BigInteger.ZERO;
    for (Stretch stretch : stretches) {
      long span = stretch.length().toNanometres();
      if (span == 0) {
        continue;
      }
      long count = (span - 1) / board + 1;
      long width = stretch.width().toNanometres();
      if (width == pitch || narrowest > 0 && width + kerf + narrowest > pitch) {
        along = Math.addExact(along, span);
        pieces += count;
      } else {
        strips = strips.add(BigInteger.valueOf(span + count * kerf).multiply(BigInteger.valueOf(width + kerf)));
      }
    }
    BigInteger wide = BigInteger.valueOf(along).add(BigInteger.valueOf(pieces).multiply(BigInteger.valueOf(kerf)))
        .multiply(BigInteger.valueOf(pitch + kerf));
    BigInteger needed = wide.add(strips).shiftLeft(1).add(rest.toHalfSquareNanometres());
    BigInteger each = BigInteger.valueOf(board + kerf).multiply(BigInteger.valueOf(pitch + kerf)).shiftLeft(1);
    int bound = needed.add(each).subtract(BigInteger.ONE).divide(each).intValueExact();
    List<Term> terms = new ArrayList<>();
    terms.add(Term.of("S", "length that pieces of full width must cover", Length.ofNanometres(along)));
    terms.add(Term.of("n", "least number of pieces in it", pieces));
    terms.add(Term.of("T", "narrow strips, each enlarged by the kerf", Area.ofSquareNanometres(strips)));
    terms.add(Term.of("A", "floor of any other shape", rest));
    terms.add(new Term("c", "saw kerf", kerfRule.value(), kerfRule.source()));
    terms.add(Term.of("P", "longest board", goods.longest()));
    terms.add(Term.of("w", "laid pitch", goods.laidPitch()));
    return Calculated.of(bound, List.of(new Step("boards-at-least", "How many boards can no plan do without?",
        "ceil(((S + n·c)·(w + c) + T + A) / ((P + c)·(w + c)))", terms, bound, Source.DEFINITION)));
  }
}
