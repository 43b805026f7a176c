package floorcalc.materials;

import floorcalc.boards.PackContent;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.measure.Price;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What the boards of an order cost, how much of that does not end up on the floor, what unopened packs are worth when they go back, and
 * what packs kept back for repairs cost. Amounts are rounded once, half up, to the decimals of the currency.
 *
 * @param boards the price of the packs for the floor, not null
 * @param waste the part of it that is not on the floor: cuts, offcuts, spare boards, packs sold whole; not null
 * @param unopened packs that stay closed if no spare board is needed, not negative
 * @param returned what these bring when they go back, not null
 * @param keptBack the price of the packs kept back on top, not null
 * @since 0.1
 */
public record BoardMoney(Price boards, Price waste, int unopened, Price returned, Price keptBack) {
  /** Checks that no part is null. */
  public BoardMoney {
    Objects.requireNonNull(boards, "boards");
    Objects.requireNonNull(waste, "waste");
    Objects.requireNonNull(returned, "returned");
    Objects.requireNonNull(keptBack, "keptBack");
  }

  /**
   * Works out the money in an order of boards.
   *
   * @param order the packs, not null
   * @param content what a pack holds, not null
   * @param pack the price of a pack, not null
   * @param ledger where the boards go, not null
   * @param keepBack packs ordered on top to be kept for repairs, not negative
   * @param returnShare what the seller gives for an unopened pack, as a share of its price from 0 to 1; 0 if none goes back; not null
   * @return the money with the steps {@code boards-price}, {@code waste-price}, {@code packs-unopened}, {@code return-price} and
   *     {@code keep-back-price}; not null
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Calculated<BoardMoney> of(PackOrder order, List<PackContent> content, Price pack, WasteLedger ledger, int keepBack,
      BigDecimal returnShare) {
    if (keepBack < 0 || keepBack > 10_000) {
      throw new IllegalArgumentException("packs kept back must be from 0 to 10000, but were " + keepBack);
    }
    if (returnShare.signum() < 0 || returnShare.compareTo(BigDecimal.ONE) > 0) {
      throw new IllegalArgumentException("the return value must be a share of the price from 0 to 1, but was "
          + returnShare.toPlainString());
    }
    List<Step> steps = new ArrayList<>();
    Price boards = priced(steps, "boards-price", "What do the packs for the floor cost?", "P", "packs", order.packs(), pack);
    Price waste = waste(steps, order.packs(), pack, ledger);
    int unopened = unopened(steps, order, content);
    String rounding = rounding(pack);
    Price returned = CostSheet.rounded(new Price(pack.amount().multiply(BigDecimal.valueOf(unopened)).multiply(returnShare),
        pack.currency()));
    step(steps, "return-price", "What do unopened packs bring, if the seller takes them back?", "V = r * c * q" + rounding,
        List.of(Term.of("r", "packs unopened", unopened), Term.of("c", "price of a pack", pack),
            Term.of("q", "return value as a share of the price", returnShare)), returned);
    Price kept = priced(steps, "keep-back-price", "What do the packs cost that are kept back for repairs, of the same batch?", "K",
        "packs kept back", keepBack, pack);
    return Calculated.of(new BoardMoney(boards, waste, unopened, returned, kept), steps);
  }

  private static Price priced(List<Step> steps, String id, String question, String symbol, String what, int number, Price pack) {
    Price price = CostSheet.rounded(new Price(pack.amount().multiply(BigDecimal.valueOf(number)), pack.currency()));
    step(steps, id, question, "C = " + symbol + " * c" + rounding(pack), List.of(Term.of(symbol, what, number),
        Term.of("c", "price of a pack", pack)), price);
    return price;
  }

  /** A share of the exact price, so that it is rounded once. */
  private static Price waste(List<Step> steps, int packs, Price pack, WasteLedger ledger) {
    int digits = CurrencyDigits.of(pack.currency());
    if (ledger.bought().isZero()) {
      return new Price(BigDecimal.ZERO.setScale(digits), pack.currency());
    }
    BigDecimal share = pack.amount().multiply(BigDecimal.valueOf(packs)).multiply(halves(ledger.bought().minus(ledger.laid())));
    Price waste = new Price(share.divide(halves(ledger.bought()), digits, RoundingMode.HALF_UP), pack.currency());
    step(steps, "waste-price", "How much of that is paid for boards that are not on the floor?", "W = P * c * (b - l) / b"
        + rounding(pack), List.of(Term.of("P", "packs", packs), Term.of("c", "price of a pack", pack),
        Term.of("b", "area bought", ledger.bought()), Term.of("l", "area laid", ledger.laid())), waste);
    return waste;
  }

  private static BigDecimal halves(Area area) {
    return new BigDecimal(area.toHalfSquareNanometres());
  }

  private static int unopened(List<Step> steps, PackOrder order, List<PackContent> content) {
    Map<Length, Integer> over = order.leftOver();
    StringBuilder formula = new StringBuilder();
    List<Term> terms = new ArrayList<>();
    int least = Integer.MAX_VALUE;
    for (PackContent one : content) {
      int i = terms.size() / 2 + 1;
      int left = over.get(one.length());
      least = Math.min(least, left / one.perPack());
      formula.append(i == 1 ? "" : ", ").append("floor(o").append(i).append(" / k").append(i).append(")");
      terms.add(Term.of("o" + i, "boards of " + one.length() + " over, spare ones included", left));
      terms.add(Term.of("k" + i, "boards of " + one.length() + " in a pack", one.perPack()));
    }
    step(steps, "packs-unopened", "How many packs stay closed, if no spare board is needed?", "r = "
        + (content.size() == 1 ? formula : "min(" + formula + ")"), terms, least);
    return least;
  }

  private static String rounding(Price price) {
    return ", rounded to " + List.of("no", "one", "two", "three").get(CurrencyDigits.of(price.currency())) + " decimals";
  }

  private static void step(List<Step> steps, String id, String question, String formula, List<Term> terms, Object result) {
    steps.add(new Step(id, question, formula, terms, result, Source.DEFINITION));
  }
}
