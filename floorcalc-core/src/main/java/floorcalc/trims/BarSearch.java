package floorcalc.trims;

import floorcalc.measure.Length;
import floorcalc.rules.RuleValue;
import floorcalc.trims.BarGoods.LongRuns;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Cuts runs and pieces from bars. Used by one thread. */
final class BarSearch {
  private final BarGoods bars;
  private final RuleValue<Length> kerf;
  private final List<Step> steps = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  BarSearch(BarGoods bars, RuleValue<Length> kerf) {
    this.bars = Objects.requireNonNull(bars, "bars");
    this.kerf = Objects.requireNonNull(kerf, "kerf");
  }

  Calculated<BarOrder> ofRuns(List<TrimRuns> rooms) {
    List<TrimPiece> pieces = new ArrayList<>();
    Length net = Length.ZERO;
    for (TrimRuns room : rooms) {
      net = net.plus(room.net());
      for (TrimRun run : room.runs()) {
        pieces.add(TrimPiece.of(run.name(), run.cut()));
      }
      if (room.returns() > 0 && bars.thickness().isPositive()) {
        pieces.add(TrimPiece.of(room.name() + ", return", bars.thickness()).times(room.returns()));
      }
    }
    if (pieces.isEmpty()) {
      throw new IllegalArgumentException(bars.name() + ": no wall takes any; there is nothing to order");
    }
    return order(pieces, net);
  }

  Calculated<BarOrder> ofPieces(List<TrimPiece> pieces) {
    return order(pieces, pieces.stream().map(piece -> piece.length().multipliedBy(piece.count()))
        .reduce(Length.ZERO, Length::plus));
  }

  private Calculated<BarOrder> order(List<TrimPiece> pieces, Length net) {
    List<TrimPiece> cut = new ArrayList<>();
    for (TrimPiece piece : pieces) {
      TrimPiece fitted = piece.withAllowance(piece.allowance().plus(bars.allowance()));
      cut.addAll(fitted.cutLength().compareTo(bars.longest()) > 0 ? parts(piece, fitted) : List.of(fitted));
    }
    List<TrimStock> stock = bars.lengths().stream().map(TrimStock::sold).toList();
    Calculated<TrimCutting> cutting = TrimCutting.of(cut, stock, kerf);
    steps.addAll(cutting.steps());
    findings.addAll(cutting.findings());
    BarOrder order = new BarOrder(bars, cutting.value(), net);
    steps.add(new Step("bars-to-order", "How many bars of " + bars.name() + " are to be ordered?" + (cutting.value().isLeast()
        ? " No cutting of these pieces buys less." : ""), "value as stated", List.of(), order.number(), Source.DEFINITION));
    cutting.value().cutList("pieces-from-bars", "bar").ifPresent(steps::add);
    steps.add(new Step("bars-over-net", "How much more is bought than the walls or breaks measure?", "m = L - T",
        List.of(Term.of("L", "length bought", order.lengthBought()), Term.of("T", "net length", net)),
        order.lengthBought().minus(net), Source.DEFINITION));
    return Calculated.of(order, steps, findings);
  }

  /** A long piece made up of parts, each longer by the slant of a scarf. */
  private List<TrimPiece> parts(TrimPiece piece, TrimPiece fitted) {
    if (bars.longRuns() == LongRuns.IN_ONE_PIECE) {
      findings.add(new Finding("no-bar-long-enough", Severity.WARNING, piece.name(), "a piece of " + fitted.cutLength()
          + " should be in one, but the longest bar of " + bars.name() + " is " + bars.longest()
          + "; it is made up of parts, or ask for longer bars", Source.GIVEN));
    }
    Length scarf = bars.longRuns() == LongRuns.SCARFED ? bars.thickness() : Length.ZERO;
    Calculated<List<TrimPiece>> parts = TrimPiecing.of(List.of(fitted.withAllowance(fitted.allowance().plus(scarf))),
        bars.longest(), bars.leastPiece());
    steps.addAll(parts.steps());
    return parts.value();
  }
}
