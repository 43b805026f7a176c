package floorcalc.boards;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigInteger;
import java.util.List;

/**
 * The number of boards that no plan with the same rows can do without.
 * <p>
 * Reasoning: make every piece longer and wider by one saw kerf, and the board too. Pieces of one board still lie apart in
 * it, so their areas add up to no more than the enlarged board. A stretch of full width and length L takes at least
 * ceil(L / P) pieces whose lengths add up to L or more; narrower floor takes at least its area.
 */
public final class BoardBound {
  private BoardBound() {}

  /**
   * Returns the least number of boards.
   *
   * @param fullStretches the lengths of the stretches of runs that pieces of full width must cover, not null
   * @param narrow the area of floor that narrower pieces may cover, not null
   * @param goods the boards, not null
   * @param rules the rules, of which the saw kerf counts here; not null
   * @return the bound with its working, not null
   */
  public static Calculated<Integer> of(List<Length> fullStretches, Area narrow, BoardGoods goods, LayingRules rules) {
    long board = goods.longest().toNanometres();
    long kerf = rules.value(LayingRules.SAW_KERF).toNanometres();
    long pitch = goods.laidPitch().toNanometres();
    long along = 0;
    long pieces = 0;
    for (Length stretch : fullStretches) {
      long span = stretch.toNanometres();
      if (span > 0) {
        along = Math.addExact(along, span);
        pieces += (span - 1) / board + 1;
      }
    }
    BigInteger wide = BigInteger.valueOf(along).add(BigInteger.valueOf(pieces).multiply(BigInteger.valueOf(kerf)))
        .multiply(BigInteger.valueOf(pitch + kerf)).shiftLeft(1);
    BigInteger needed = wide.add(narrow.toHalfSquareNanometres());
    BigInteger each = BigInteger.valueOf(board + kerf).multiply(BigInteger.valueOf(pitch + kerf)).shiftLeft(1);
    int bound = needed.add(each).subtract(BigInteger.ONE).divide(each).intValueExact();
    Step step = new Step("boards-at-least", "How many boards can no plan do without?",
        "ceil(((S + n·c)·(w + c) + A) / ((P + c)·(w + c)))",
        List.of(
            Term.of("S", "stretches of runs that full-width pieces cover", Length.ofNanometres(along)),
            Term.of("n", "least number of pieces in them", pieces),
            Term.of("A", "floor that narrower pieces may cover", narrow),
            new Term("c", "saw kerf", rules.value(LayingRules.SAW_KERF), rules.get(LayingRules.SAW_KERF).source()),
            Term.of("P", "longest board", goods.longest()),
            Term.of("w", "laid pitch", goods.laidPitch())),
        bound, Source.DEFINITION);
    return Calculated.of(bound, List.of(step));
  }
}
