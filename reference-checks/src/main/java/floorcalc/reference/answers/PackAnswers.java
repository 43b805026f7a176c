package floorcalc.reference.answers;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.PackContent;
import floorcalc.materials.BoardMoney;
import floorcalc.materials.CostSheet;
import floorcalc.materials.OrderLine;
import floorcalc.materials.PackOrder;
import floorcalc.materials.PackStack;
import floorcalc.materials.WasteLedger;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.measure.Mass;
import floorcalc.measure.Price;
import floorcalc.measure.UnitPrice;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.working.Calculated;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Packs, money, ledgers and stacks. */
final class PackAnswers {
  private static final String NOT_ASKED = "1 mm";

  void addTo(Answers answers) {
    answers.add("packs-to-order", PackAnswers::packs, PackOrder.class);
    answers.add("money-in-boards", PackAnswers::money, BoardMoney.class);
    answers.add("cost-of-lines", PackAnswers::cost, CostSheet.class, OrderLine.class);
    answers.add("ledger-of-boards", PackAnswers::ledger, WasteLedger.class);
    answers.add("stack-of-packs", PackAnswers::stack, PackStack.class);
  }

  private static List<PackContent> content(Question question) {
    List<String> lengths = question.list("lengths");
    List<String> perPack = question.list("boardsPerPack");
    List<PackContent> content = new ArrayList<>();
    for (int i = 0; i < lengths.size(); i++) {
      content.add(new PackContent(Length.parse(lengths.get(i)), Integer.parseInt(perPack.get(i))));
    }
    return content;
  }

  private static BoardGoods goods(Question question, String width, String thickness) {
    BoardGoods goods = BoardGoods.mixed(content(question), Length.parse(width), Length.parse(thickness));
    if (question.has("packMass")) {
      goods = goods.withPackMass(new Mass(question.number("packMass")));
    }
    if (question.has("packPrice")) {
      goods = goods.withPackPrice(new Price(question.number("packPrice"), question.has("currency") ? question.text("currency") : "EUR"));
    }
    return goods;
  }

  private static PackOrder order(Question question, BoardGoods goods) {
    List<PackContent> content = content(question);
    Map<Length, Integer> used = new LinkedHashMap<>();
    for (int i = 0; i < content.size(); i++) {
      used.put(content.get(i).length(), Integer.parseInt(question.list("used").get(i)));
    }
    return PackOrder.of(goods, used, question.number("spareShare")).value();
  }

  private static BigDecimal whole(long number) {
    return BigDecimal.valueOf(number);
  }

  private static String joined(Collection<Integer> numbers) {
    return numbers.stream().map(String::valueOf).collect(Collectors.joining(" "));
  }

  private static Answer packs(Question question) {
    PackOrder order = order(question, goods(question, NOT_ASKED, NOT_ASKED));
    Answer answer = Answer.of("packs", whole(order.packs())).with("spare", whole(order.spare())).with("packRounding", whole(order.packRounding()))
        .with("spareByLength", joined(order.spareByLength().values())).with("leftOverByLength", joined(order.leftOver().values()))
        .with("overUsedPercent", order.perCentOverUsed(1));
    if (order.price().isPresent()) {
      answer = answer.with("price", order.price().get().amount());
    }
    return order.mass().isPresent() ? answer.with("kilograms", order.mass().get().kilograms()) : answer;
  }

  private static Answer money(Question question) {
    BoardGoods goods = goods(question, NOT_ASKED, NOT_ASKED);
    Area bought = area(question, "areaBought");
    Area laid = area(question, "areaLaid");
    WasteLedger ledger = new WasteLedger(bought, laid, bought.minus(laid), Area.ZERO, Area.ZERO, Area.ZERO, Area.ZERO, Area.ZERO);
    BoardMoney money = BoardMoney.of(order(question, goods), goods.pack(), goods.packPrice().orElseThrow(), ledger, question.count("packsKeptBack"),
        question.number("returnShare")).value();
    return Answer.of("boards", money.boards().amount()).with("waste", money.waste().amount()).with("unopened", whole(money.unopened()))
        .with("returned", money.returned().amount()).with("keptBack", money.keptBack().amount());
  }

  private static Answer cost(Question question) {
    List<OrderLine> lines = new ArrayList<>();
    for (List<String> row : question.table("lines")) {
      BigDecimal quantity = new BigDecimal(row.get(0));
      OrderLine line = OrderLine.of("line " + (lines.size() + 1), "", quantity, "piece", List.of());
      lines.add(row.get(1).isEmpty() ? line : line.at(UnitPrice.each(new Price(new BigDecimal(row.get(1)), row.get(2))), quantity));
    }
    CostSheet sheet = CostSheet.of(lines).value();
    return Answer.of("totals", sheet.totals().values().stream().map(Price::toString).collect(Collectors.joining("; ")))
        .with("unpriced", whole(sheet.unpriced().size()));
  }

  private static Area area(Question question, String name) {
    return Area.ofSquareMillimetres(question.number(name).longValueExact());
  }

  private static BigDecimal squareMillimetres(Area area) {
    return new BigDecimal(area.toHalfSquareNanometres()).divide(BigDecimal.valueOf(2)).movePointLeft(12);
  }

  private static Answer ledger(Question question) {
    WasteLedger ledger = new WasteLedger(area(question, "bought"), area(question, "laid"), area(question, "trimmedToShape"), area(question, "sawKerf"),
        area(question, "usableOffcuts"), area(question, "shortOffcuts"), area(question, "spare"), area(question, "packRounding"));
    return Answer.of("difference", squareMillimetres(ledger.difference())).with("cuttingWaste", squareMillimetres(ledger.cuttingWaste()))
        .with("wastePercentOfBought", ledger.perCentOfBought(ledger.cuttingWaste(), 1))
        .with("wastePercentOfLaid", ledger.perCentOfLaid(ledger.cuttingWaste(), 2));
  }

  private static Answer stack(Question question) {
    Calculated<PackStack> worked = PackStack.of(goods(question, question.text("coverWidth"), question.text("thickness")), question.count("packs"),
        Length.parse(question.text("highestStack")));
    PackStack stack = worked.value();
    Answer answer = Answer.of("packHeight", stack.packHeight().toMillimetreString()).with("cubicMetres", stack.cubicMetres())
        .with("stacks", whole(stack.stacks())).with("floorSpace", squareMillimetres(stack.floorSpace()));
    return stack.mass().isEmpty() ? answer : answer.with("kilograms", stack.mass().get().kilograms())
        .with("tooHeavyForOne", worked.findings().isEmpty() ? "no" : "yes");
  }
}
