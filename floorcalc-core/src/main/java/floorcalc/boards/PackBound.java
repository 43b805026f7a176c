package floorcalc.boards;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;

/**
 * The number of packs that no plan with the same rows can do without, for packs of one or several lengths.
 * <p>
 * Some packs hold so many boards of each length and no more. However they are used, {@code u} of their boards are together no
 * longer than the {@code u} longest. So if even these, each made longer by a saw kerf, do not reach the lengths of the rows, of
 * which each piece is made longer by a kerf too, more than {@code u} boards are taken; likewise by area, see
 * {@link BoardBound}. The boards kept spare must be in the packs beside them.
 *
 * @since 0.1
 */
public final class PackBound {
  private final Stock stock;
  private final BigInteger along;
  private final BigInteger twiceEnlarged;
  private final BigInteger twiceFloor;
  private final int boardsAtLeast;
  private final BigDecimal spareShare;

  private PackBound(BoardBound.Sums sums, Area floor, Stock stock, int boardsAtLeast, BigDecimal spareShare) {
    this.stock = stock;
    this.along = BigInteger.valueOf(sums.along()).add(BigInteger.valueOf(sums.pieces()).multiply(BigInteger.valueOf(stock.kerf)));
    this.twiceEnlarged = sums.enlarged().shiftLeft(1).add(sums.rest().toHalfSquareNanometres());
    this.twiceFloor = floor.toHalfSquareNanometres();
    this.boardsAtLeast = boardsAtLeast;
    this.spareShare = spareShare;
  }

  /**
   * Returns the least number of packs.
   *
   * @param stretches the stretches of each run, not null
   * @param rest the floor of runs without a stretch, not null
   * @param floor the whole floor that is laid, not null
   * @param goods the boards, not null
   * @param rules the rules, of which the saw kerf and the spare share count here; not null
   * @param boardsAtLeast boards that no plan can do without, not negative
   * @return the packs, with the step {@code packs-at-least}; not null
   */
  public static Calculated<Integer> of(List<List<Stretch>> stretches, Area rest, Area floor, BoardGoods goods,
      LayingRules rules, int boardsAtLeast) {
    Objects.requireNonNull(stretches, "stretches");
    Stock stock = new Stock(goods, rules);
    BoardBound.Sums sums = BoardBound.Sums.of(stretches, rest, stock);
    RuleValue<BigDecimal> share = rules.get(LayingRules.SPARE_SHARE);
    PackBound bound = new PackBound(sums, floor, stock, boardsAtLeast, share.value());
    int packs = bound.fewest();
    int boards = bound.boardsFrom(packs);
    return Calculated.of(packs, List.of(new Step("packs-at-least", "How many packs must any plan with these rows take?",
        "P = least p with p * k >= u + ceil(q * u), where u of the longest boards of p packs, a kerf added to each, reach S + n * c",
        List.of(Term.of("k", "boards in a pack", goods.boardsPerPack()),
            Term.of("u", "boards that rows and area take at least from P packs", boards),
            new Term("q", "spare share", share.value().toPlainString(), share.source()),
            Term.of("S", "length that pieces must cover, none of them side by side", Length.ofNanometres(sums.along())),
            Term.of("n", "least number of pieces in it", sums.pieces()),
            Term.of("c", "saw kerf", Length.ofNanometres(stock.kerf))),
        packs, Source.DEFINITION)));
  }

  private int fewest() {
    int packs = (boardsAtLeast + stock.boardsPerPack - 1) / stock.boardsPerPack;
    while (!isEnough(packs)) {
      packs++;
    }
    return packs;
  }

  private boolean isEnough(int packs) {
    long boards = boardsFrom(packs);
    long spare = spareShare.multiply(BigDecimal.valueOf(Math.max(0, boards))).setScale(0, RoundingMode.CEILING).longValueExact();
    return boards >= 0 && boards + spare <= (long) packs * stock.boardsPerPack;
  }

  /** The boards that any plan takes that has so many packs, -1 if they do not hold enough. */
  private int boardsFrom(int packs) {
    BigInteger wide = BigInteger.valueOf(stock.width + stock.kerf).shiftLeft(1);
    int byLength = longest(packs, along, stock.kerf, BigInteger.ONE);
    int byArea = longest(packs, twiceEnlarged, stock.kerf, wide);
    int byFloor = longest(packs, twiceFloor, 0, BigInteger.valueOf(stock.width).shiftLeft(1));
    return Math.min(byLength, Math.min(byArea, byFloor)) < 0 ? -1
        : Math.max(Math.max(byLength, boardsAtLeast), Math.max(byArea, byFloor));
  }

  /** How many of the longest boards of some packs add up to what is needed; -1 if all do not. */
  private int longest(int packs, BigInteger needed, long longer, BigInteger across) {
    BigInteger toGo = needed;
    long boards = 0;
    for (int i = 0; i < stock.lengths.length && toGo.signum() > 0; i++) {
      BigInteger each = BigInteger.valueOf(stock.lengths[i] + longer).multiply(across);
      BigInteger most = toGo.add(each).subtract(BigInteger.ONE).divide(each);
      BigInteger taken = most.min(BigInteger.valueOf((long) packs * stock.perPack[i]));
      boards += taken.longValueExact();
      toGo = toGo.subtract(taken.multiply(each));
    }
    return toGo.signum() > 0 ? -1 : Math.toIntExact(boards);
  }
}
