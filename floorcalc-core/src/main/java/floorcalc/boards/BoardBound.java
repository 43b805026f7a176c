package floorcalc.boards;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The number of boards that no plan with the same rows and rules can do without. Four bounds are worked out; the highest
 * counts.
 * <ol>
 * <li><b>By length.</b> Make every piece and every board longer by one saw kerf. At any place along a board there is one low
 * edge and one high edge, so of the pieces that need the same edge no two lie side by side, and their lengths add up to no
 * more than the longer board. A stretch of length L takes at least ceil(L / P) pieces whose lengths add up to L or more.</li>
 * <li><b>By area.</b> Make every piece and every board wider by one kerf too. Pieces of one board still lie apart in it, so
 * their areas add up to no more than the enlarged board. Floor of odd shape takes at least its area. And boards never cover
 * more than their own area.</li>
 * <li><b>By shares.</b> As by length, but pieces are rounded to shares of a board in ways known from bin packing, such that no
 * board gives more than one; long single pieces count for more so.</li>
 * <li><b>By prices.</b> Give every end piece and start piece a price such that no board gives more than one board's worth;
 * the cheapest way to lay all runs at these prices, end pieces and joint offsets as the rules ask, rounded up, is a bound.
 * See {@code docs/boards.md}.</li>
 * </ol>
 *
 * @since 0.1
 */
public final class BoardBound {
  private static final int ROUNDS = 150;
  private static final int LEAST_ROUNDS = 3;
  private static final int RUNS_IN_ALL = 30_000;

  private BoardBound() {}

  /**
   * Returns the least number of boards, by length and by area.
   *
   * @param stretches the stretches of each run, not null
   * @param rest the floor of runs without a stretch, not null
   * @param floor the whole floor that is laid, not null
   * @param goods the boards, not null
   * @param rules the rules, of which the saw kerf counts here; not null
   * @return the bound with its working, not null
   */
  public static Calculated<Integer> of(List<List<Stretch>> stretches, Area rest, Area floor, BoardGoods goods,
      LayingRules rules) {
    Objects.requireNonNull(stretches, "stretches");
    Stock stock = new Stock(goods, rules);
    Sums sums = Sums.of(stretches, rest, stock);
    int byLength = sums.byLength(stock);
    int byArea = sums.byArea(stock);
    RuleValue<Length> kerf = rules.get(LayingRules.SAW_KERF);
    List<Step> steps = new ArrayList<>();
    steps.add(new Step("boards-by-length", "How many boards does the length of the rows take at least?",
        "b1 = ceil((S + n * c) / (P + c))",
        List.of(Term.of("S", "length that pieces must cover, none of them side by side", Length.ofNanometres(sums.along)),
            Term.of("n", "least number of pieces in it", sums.pieces), new Term("c", "saw kerf", kerf.value(), kerf.source()),
            Term.of("P", "longest board", goods.longest())),
        byLength, Source.DEFINITION));
    steps.add(new Step("boards-by-area", "How many boards does the area of the floor take at least?",
        "b2 = ceil((T + A) / ((P + c) * (w + c)))",
        List.of(Term.of("T", "stretches of rows, each piece enlarged by the kerf", Area.ofSquareNanometres(sums.enlarged)),
            Term.of("A", "floor of odd shape", rest), new Term("c", "saw kerf", kerf.value(), kerf.source()),
            Term.of("P", "longest board", goods.longest()), Term.of("w", "laid pitch", goods.laidPitch())),
        byArea, Source.DEFINITION));
    Area board = goods.longest().times(goods.laidPitch());
    int byFloor = ceiling(floor.toHalfSquareNanometres(), board.toHalfSquareNanometres());
    steps.add(new Step("boards-by-floor", "How many boards does the floor fill, with nothing lost?", "b3 = ceil(F / (P * w))",
        List.of(Term.of("F", "floor laid", floor), Term.of("P", "longest board", goods.longest()),
            Term.of("w", "laid pitch", goods.laidPitch())),
        byFloor, Source.DEFINITION));
    return Calculated.of(Math.max(byFloor, Math.max(byLength, byArea)), steps);
  }

  /**
   * Returns the least number of boards, by prices too. Only for boards of one length, and for plans that keep the rules on
   * end pieces and joint offsets; otherwise as {@link #of(List, Area, Area, BoardGoods, LayingRules)}. Where no way to lay the
   * runs keeps these rules, the bound is that by length and area, with the finding {@code no-way-keeps-the-rules}.
   *
   * @param runs the runs in laying order, not null
   * @param stretches the stretches of each run, not null; where they are as long as the run, it has pieces all along it
   * @param rest the floor of runs without a stretch, not null
   * @param floor the whole floor that is laid, not null
   * @param goods the boards, not null
   * @param rules the rules, not null
   * @param found the number of boards of a plan that keeps the rules: when the bound reaches it, the search for a better
   *     bound ends
   * @return the bound with its working, not null
   */
  public static Calculated<Integer> of(List<Run> runs, List<List<Stretch>> stretches, Area rest, Area floor,
      BoardGoods goods, LayingRules rules, int found) {
    Objects.requireNonNull(runs, "runs");
    return of(runs, stretches, rest, floor, goods, rules, Optional.empty(), found);
  }

  /**
   * Returns the least number of boards, by prices too, beginning with those that a search has found.
   *
   * @param runs the runs in laying order, not null
   * @param stretches the stretches of each run, not null; where they are as long as the run, it has pieces all along it
   * @param rest the floor of runs without a stretch, not null
   * @param floor the whole floor that is laid, not null
   * @param goods the boards, not null
   * @param rules the rules, not null
   * @param layout the joints found for these runs, not null
   * @param found the number of boards of a plan with these joints that keeps the rules: when the bound reaches it, the
   *     search for a better bound ends
   * @return the bound with its working, not null
   */
  public static Calculated<Integer> of(List<Run> runs, List<List<Stretch>> stretches, Area rest, Area floor,
      BoardGoods goods, LayingRules rules, RunLayout layout, int found) {
    Objects.requireNonNull(runs, "runs");
    return of(runs, stretches, rest, floor, goods, rules, layout.prices(), found);
  }

  private static Calculated<Integer> of(List<Run> runs, List<List<Stretch>> stretches, Area rest, Area floor,
      BoardGoods goods, LayingRules rules, Optional<PriceList> prices, int found) {
    Calculated<Integer> plain = of(stretches, rest, floor, goods, rules);
    Stock stock = new Stock(goods, rules);
    if (!stock.isUniform() || plain.value() >= found || runs.isEmpty() || !PriceList.isOfUse(stock)) {
      return plain;
    }
    double[] counted = counted(runs, stretches, stock);
    ShareBound shares = new ShareBound(stock);
    for (int i = 0; i < counted.length; i++) {
      if (counted[i] == 1) {
        shares.add(runs.get(i).span());
      }
    }
    int byShares = shares.reach(found);
    List<Step> steps = new ArrayList<>(plain.steps());
    steps.add(new Step("boards-by-shares", "What do all rows of full width count for at least, if pieces are rounded to shares of a"
        + " board?", "b4 = ceil(S)", List.of(Term.of("S", "shares that all these rows count for at least, each laid in the way that counts"
            + " least; pieces and boards are made longer by a kerf, and of the ways to round this gives most: " + shares.way(),
            shares.sum())),
        byShares, Source.DEFINITION));
    int best = Math.max(plain.value(), byShares);
    if (best >= found) {
      return Calculated.of(best, steps);
    }
    PriceGame game = new PriceGame(runs, counted, stock);
    prices.ifPresent(game::begin);
    // The prices of a search are the best for all runs; where some do not count, others may be better.
    boolean all = Arrays.stream(counted).allMatch(count -> count == 1);
    int byPrices = game.play(found, prices.isPresent() && all ? 0 : Math.max(LEAST_ROUNDS, Math.min(ROUNDS, RUNS_IN_ALL / runs.size())));
    if (!game.anyWayKeepsRules()) {
      return Calculated.of(best, steps, List.of(new Finding("no-way-keeps-the-rules", Severity.WARNING, "",
          "no way to lay all runs keeps the least end piece and the joint offset, so nothing is said by prices: the bound holds"
              + " for plans that break them too; ask for a shorter end piece or a smaller offset, or take boards of another length",
          Source.DEFINITION)));
    }
    steps.add(new Step("boards-by-prices", "What does the cheapest way to lay all rows cost at the best prices found?",
        "b5 = ceil(C)", List.of(Term.of("C", "boards' worth of the cheapest way that keeps least end piece and joint offset, "
            + "less what rounding may add, to four decimals", game.shown())),
        byPrices, Source.DEFINITION));
    return Calculated.of(Math.max(best, byPrices), steps);
  }

  /** One for runs whose pieces count all along, zero for others. */
  static double[] counted(List<Run> runs, List<List<Stretch>> stretches, Stock stock) {
    StripSharing sharing = StripSharing.ofWholeRuns(stretches, stock);
    double[] counted = new double[runs.size()];
    for (int i = 0; i < counted.length; i++) {
      counted[i] = sharing.counted(stretches.get(i)) == runs.get(i).span() ? 1 : 0;
    }
    return counted;
  }

  /** What the stretches add up to. */
  record Sums(long along, long pieces, BigInteger enlarged, Area rest) {

    static Sums of(List<List<Stretch>> stretches, Area rest, Stock stock) {
      StripSharing sharing = StripSharing.of(stretches, stock);
      long along = 0;
      long pieces = 0;
      BigInteger enlarged = BigInteger.ZERO;
      for (List<Stretch> run : stretches) {
        long counted = sharing.counted(run);
        along = Math.addExact(along, counted);
        pieces += piecesIn(counted, stock);
        enlarged = enlarged.add(enlarged(run, stock));
      }
      return new Sums(along, pieces, enlarged, rest);
    }

    private static long piecesIn(long length, Stock stock) {
      return length == 0 ? 0 : (length - 1) / stock.longest() + 1;
    }

    /** The area of a run whose pieces are made longer and wider by a kerf: one piece may lie in several stretches. */
    private static BigInteger enlarged(List<Stretch> run, Stock stock) {
      BigInteger area = BigInteger.ZERO;
      long length = 0;
      long narrowest = Long.MAX_VALUE;
      for (Stretch stretch : run) {
        long width = stretch.width().toNanometres() + stock.kerf;
        length += stretch.length().toNanometres();
        narrowest = Math.min(narrowest, width);
        area = area.add(BigInteger.valueOf(stretch.length().toNanometres()).multiply(BigInteger.valueOf(width)));
      }
      return length == 0 ? area
          : area.add(BigInteger.valueOf(piecesIn(length, stock) * stock.kerf).multiply(BigInteger.valueOf(narrowest)));
    }

    int byLength(Stock stock) {
      return ceiling(BigInteger.valueOf(along).add(BigInteger.valueOf(pieces).multiply(BigInteger.valueOf(stock.kerf))),
          BigInteger.valueOf(stock.longest() + stock.kerf));
    }

    int byArea(Stock stock) {
      BigInteger each = BigInteger.valueOf(stock.longest() + stock.kerf)
          .multiply(BigInteger.valueOf(stock.width + stock.kerf));
      return ceiling(enlarged.shiftLeft(1).add(rest.toHalfSquareNanometres()), each.shiftLeft(1));
    }

  }

  private static int ceiling(BigInteger dividend, BigInteger divisor) {
    return dividend.add(divisor).subtract(BigInteger.ONE).divide(divisor).intValueExact();
  }
}
