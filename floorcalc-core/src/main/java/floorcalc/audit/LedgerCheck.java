package floorcalc.audit;

import floorcalc.boards.PackContent;
import floorcalc.materials.WasteLedger;
import floorcalc.measure.Area;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Adds up where the boards that are bought go, in half square nanometres. */
final class LedgerCheck {
  private static final String WHERE = "ledger";
  private static final String TRIMMED = "trimmed to shape";

  private final FloorJob job;
  private final FloorPlan plan;
  private final Breaches breaches;
  private final BigInteger pitch;

  private LedgerCheck(FloorJob job, FloorPlan plan, Breaches breaches) {
    this.job = job;
    this.plan = plan;
    this.breaches = breaches;
    this.pitch = BigInteger.valueOf(job.board().laidPitch().toNanometres());
  }

  static void check(FloorJob job, FloorPlan plan, BoardBook book, CutList cuts, Tally tally, Breaches breaches,
      List<Step> steps) {
    new LedgerCheck(job, plan, breaches).check(book, cuts, tally, steps);
  }

  private void check(BoardBook book, CutList cuts, Tally tally, List<Step> steps) {
    WasteLedger ledger = plan.ledger();
    Map<String, Area> parts = new LinkedHashMap<>();
    parts.put("laid", ledger.laid());
    parts.put(TRIMMED, ledger.trimmedToShape());
    parts.put("saw kerf", ledger.sawKerf());
    parts.put("usable offcuts", ledger.usableOffcuts());
    parts.put("short offcuts", ledger.shortOffcuts());
    parts.put("spare", ledger.spare());
    parts.put("pack rounding", ledger.packRounding());
    BigInteger sum = BigInteger.ZERO;
    for (Map.Entry<String, Area> part : parts.entrySet()) {
      sum = sum.add(halves(part.getValue()));
      // What is trimmed off rectangles that are turned may come out below nothing by the rounding of their corners.
      BigDecimal least = new BigDecimal(part.getKey().equals(TRIMMED) ? -2 * tally.areaRounding : 0);
      if (new BigDecimal(halves(part.getValue())).compareTo(least) < 0) {
        breaches.add(Code.LEDGER_NEGATIVE, WHERE, "the ledger's " + part.getKey() + " is less than nothing: "
            + Words.squareMillimetres(halves(part.getValue())));
      }
    }
    compare(Code.LEDGER_OPEN, "all parts of the ledger together", sum, "what was bought", halves(ledger.bought()));
    compare(Code.LEDGER_BOUGHT, "what was bought", halves(ledger.bought()), "the boards in all packs", inPacks());
    BigInteger rectangles = cuts.area.value().shiftLeft(1);
    if (tally.comparable) {
      checkLaid(tally, halves(ledger.laid()));
    }
    compare(Code.LEDGER_TRIMMED, "laid and trimmed to shape",
        halves(ledger.laid()).add(halves(ledger.trimmedToShape())), "the rectangles of all pieces", rectangles);
    BigInteger used = used(book);
    compare(Code.LEDGER_CUT, "saw kerf and offcuts", halves(ledger.sawKerf()).add(halves(ledger.usableOffcuts()))
        .add(halves(ledger.shortOffcuts())), "the boards used less the rectangles of all pieces", used.subtract(rectangles));
    checkSpare(halves(ledger.spare()));
    steps.add(new Step("audit-ledger", "Where do the boards that are bought go?",
        "bought = laid + trimmed to shape + saw kerf + offcuts + spare + pack rounding",
        parts.entrySet().stream().map(part -> Term.of(part.getKey(), "from the ledger", part.getValue())).toList(),
        Area.ofHalfSquareNanometres(sum), Source.DEFINITION));
  }

  private static BigInteger halves(Area area) {
    return area.toHalfSquareNanometres();
  }

  private void compare(Code code, String what, BigInteger found, String with, BigInteger expected) {
    if (!found.equals(expected)) {
      breaches.add(code, WHERE, what + " is " + Words.squareMillimetres(found) + ", but " + with + " is "
          + Words.squareMillimetres(expected) + ": a difference of "
          + Words.squareMillimetres(found.subtract(expected)));
    }
  }

  private void checkLaid(Tally tally, BigInteger laid) {
    BigInteger pieces = tally.pieceArea.value();
    if (new BigDecimal(laid.subtract(pieces).abs()).compareTo(new BigDecimal(2 * tally.areaRounding)) > 0) {
      breaches.add(Code.LEDGER_LAID, WHERE, "laid is " + Words.squareMillimetres(laid)
          + ", but all pieces together have " + Words.squareMillimetres(pieces) + ", and rounding explains no more than "
          + Words.squareMillimetres(tally.areaRounding));
    }
  }

  private BigInteger inPacks() {
    BigInteger length = BigInteger.ZERO;
    for (PackContent content : job.board().pack()) {
      length = length.add(BigInteger.valueOf(content.length().toNanometres())
          .multiply(BigInteger.valueOf(content.perPack())));
    }
    return length.multiply(BigInteger.valueOf(plan.order().packs())).multiply(pitch).shiftLeft(1);
  }

  private BigInteger used(BoardBook book) {
    WideSum length = new WideSum();
    for (int i = 0; i < book.size(); i++) {
      length.addProduct(book.length(i), 1);
    }
    return length.value().multiply(pitch).shiftLeft(1);
  }

  /** Which lengths the spare boards have is not stated: where several are sold, their area lies between two bounds. */
  private void checkSpare(BigInteger spare) {
    List<PackContent> pack = job.board().pack();
    BigInteger boards = BigInteger.valueOf(plan.order().spare()).multiply(pitch).shiftLeft(1);
    BigInteger most = boards.multiply(BigInteger.valueOf(pack.get(0).length().toNanometres()));
    BigInteger least = boards.multiply(BigInteger.valueOf(pack.get(pack.size() - 1).length().toNanometres()));
    if (spare.compareTo(least) < 0 || spare.compareTo(most) > 0) {
      breaches.add(Code.LEDGER_SPARE, WHERE, "spare is " + Words.squareMillimetres(spare) + ", but "
          + Words.count(plan.order().spare(), "spare board") + " have " + (least.equals(most) ? "" : "at most ")
          + Words.squareMillimetres(most));
    }
  }
}
