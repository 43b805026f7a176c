package floorcalc.materials;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.PackContent;
import floorcalc.measure.Length;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Works out the packs, step by step. Used by one thread. */
final class PackWorking {
  private final BoardGoods goods;
  private final Map<Length, Integer> used;
  private final RuleValue<BigDecimal> share;
  private final List<Step> steps = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  PackWorking(BoardGoods goods, Map<Length, Integer> used, RuleValue<BigDecimal> share) {
    this.goods = goods;
    this.used = used;
    this.share = share;
  }

  Calculated<PackOrder> order() {
    int total = boardsUsed();
    int spare = spare(total);
    int packs = packs(total, spare);
    PackOrder order = new PackOrder(goods, used, total, spare, packs);
    addResults(order);
    return Calculated.of(order, steps, findings);
  }

  private int boardsUsed() {
    List<Term> terms = new ArrayList<>();
    List<String> symbols = new ArrayList<>();
    long total = 0;
    for (PackContent content : goods.pack()) {
      String symbol = "u" + (terms.size() + 1);
      int number = used.get(content.length());
      terms.add(Term.of(symbol, "boards of " + content.length() + " used", number));
      symbols.add(symbol);
      total += number;
    }
    add("boards-used", "How many boards are used?", "u = " + String.join(" + ", symbols), terms, total);
    return whole(total, "boards used");
  }

  private int spare(int total) {
    long spare = share.value().multiply(BigDecimal.valueOf(total)).setScale(0, RoundingMode.CEILING).longValueExact();
    add("spare-boards", "How many boards are kept for mistakes and repairs?", "s = ceil(q * u)",
        List.of(new Term("q", "spare share", share.value().toPlainString(), share.source()),
            Term.of("u", "boards used", total)), spare);
    return whole(spare, "spare boards");
  }

  private int packs(int total, int spare) {
    long perPack = goods.boardsPerPack();
    long forAll = ceiling((long) total + spare, perPack);
    List<Term> terms = new ArrayList<>(List.of(Term.of("u", "boards used", total), Term.of("s", "spare boards", spare),
        Term.of("k", "boards in a pack", perPack)));
    if (goods.pack().size() == 1) {
      add("packs", "How many whole packs hold the boards used and the spare ones?", "P = ceil((u + s) / k)", terms,
          forAll);
      return whole(forAll, "packs");
    }
    StringBuilder formula = new StringBuilder("P = max(ceil((u + s) / k)");
    long packs = forAll;
    PackContent governing = null;
    int i = 1;
    for (PackContent content : goods.pack()) {
      long forLength = ceiling(used.get(content.length()), content.perPack());
      if (forLength > packs) {
        packs = forLength;
        governing = content;
      }
      formula.append(", ceil(u").append(i).append(" / k").append(i).append(')');
      terms.add(Term.of("u" + i, "boards of " + content.length() + " used", used.get(content.length())));
      terms.add(Term.of("k" + i, "boards of " + content.length() + " in a pack", content.perPack()));
      i++;
    }
    add("packs", "How many whole packs hold the boards of each length, and all with the spare ones?",
        formula.append(')').toString(), terms, packs);
    if (governing != null) {
      findings.add(new Finding("packs-for-one-length", Severity.NOTE, "", packs + " packs are needed for the "
          + used.get(governing.length()) + " boards of " + governing.length() + ", " + forAll
          + " would hold the number of boards; use longer boards for some of these or ask for single boards",
          Source.DEFINITION));
    }
    return whole(packs, "packs");
  }

  private void addResults(PackOrder order) {
    add("boards-in-packs", "How many boards are in the packs?", "b = P * k",
        List.of(Term.of("P", "packs", order.packs()), Term.of("k", "boards in a pack", goods.boardsPerPack())),
        order.boardsInPacks());
    add("pack-rounding", "How many boards are over because packs are sold whole?", "o = b - u - s",
        List.of(Term.of("b", "boards in the packs", order.boardsInPacks()),
            Term.of("u", "boards used", order.boardsUsed()), Term.of("s", "spare boards", order.spare())),
        order.packRounding());
    goods.packPrice().ifPresent(one -> add("order-price", "What do the packs cost?", "C = P * c",
        List.of(Term.of("P", "packs", order.packs()), Term.of("c", "price of a pack", one)),
        order.price().orElseThrow()));
    goods.packMass().ifPresent(one -> add("order-mass", "What do the packs weigh?", "M = P * m",
        List.of(Term.of("P", "packs", order.packs()), Term.of("m", "mass of a pack", one)),
        order.mass().orElseThrow()));
  }

  private void add(String id, String question, String formula, List<Term> terms, Object result) {
    steps.add(new Step(id, question, formula, terms, result, Source.DEFINITION));
  }

  private static long ceiling(long dividend, long divisor) {
    return -Math.floorDiv(-dividend, divisor);
  }

  private int whole(long number, String what) {
    if (number * goods.boardsPerPack() > Integer.MAX_VALUE) {
      throw new IllegalArgumentException(what + " would be " + number + ", more than can be counted; check the boards"
          + " used");
    }
    return (int) number;
  }
}
