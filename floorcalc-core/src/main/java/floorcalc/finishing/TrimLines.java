package floorcalc.finishing;

import floorcalc.materials.FloorGoods;
import floorcalc.materials.OrderLine;
import floorcalc.measure.Length;
import floorcalc.measure.UnitPrice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Profile;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.trims.BarGoods;
import floorcalc.trims.BarOrder;
import floorcalc.trims.TrimOpening;
import floorcalc.trims.TrimPiece;
import floorcalc.trims.TrimRuns;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;

/** The lines of an order list on skirting, quadrant and profiles. */
final class TrimLines {
  /** What only counts lengths: no thickness, and no bar is too short. */
  private static final BarGoods UNSTATED = BarGoods.of("skirting", List.of(Length.ofMillimetres(100_000)), Length.ZERO);

  private final FloorJob job;
  private final FloorPlan plan;
  private final Gathered gathered;

  TrimLines(FloorJob job, FloorPlan plan, Gathered gathered) {
    this.job = job;
    this.plan = plan;
    this.gathered = gathered;
  }

  void write() {
    FloorGoods goods = job.goods();
    runs(goods.skirting(), goods.skirting().orElse(UNSTATED), true);
    goods.quadrant().ifPresent(quadrant -> runs(goods.quadrant(), quadrant, false));
    Set<String> kinds = new TreeSet<>();
    plan.profiles().forEach(profile -> kinds.add(profile.kind()));
    kinds.forEach(this::profiles);
  }

  private void runs(Optional<BarGoods> stated, BarGoods bars, boolean tells) {
    List<TrimRuns> rooms = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    for (Room room : job.rooms()) {
      Calculated<TrimRuns> runs = TrimRuns.of(room.name(), room.outline(), openings(room), bars);
      rooms.add(runs.value());
      steps.addAll(runs.steps());
      if (tells) {
        gathered.findings.addAll(runs.findings());
      }
    }
    Length net = rooms.stream().map(TrimRuns::net).reduce(Length.ZERO, Length::plus);
    if (net.isZero()) {
      return;
    }
    String takes = Gathered.metres(net).toPlainString() + " m at the walls" + voids(bars);
    order(stated, bars.name(), takes, net, steps,
        () -> BarOrder.ofRuns(bars, rooms, job.rules().get(LayingRules.SAW_KERF)));
  }

  private String voids(BarGoods bars) {
    boolean any = job.rooms().stream().anyMatch(room -> !room.outline().voids().isEmpty());
    return !any ? "" : bars.voids() == BarGoods.AtVoids.AROUND ? " and round voids" : ", none round voids";
  }

  private List<TrimOpening> openings(Room room) {
    return room.doors().stream().map(door -> new TrimOpening(door.name(), door.from(), door.to(), job.goods().casing())).toList();
  }

  private void profiles(String kind) {
    List<Profile> wanted = plan.profiles().stream().filter(profile -> profile.kind().equals(kind)).toList();
    String name = kind.equals("nosing") || kind.equals("reducer") ? kind : kind + " profile";
    List<TrimPiece> pieces = new ArrayList<>();
    List<Term> terms = new ArrayList<>();
    StringBuilder formula = new StringBuilder("T = ");
    Length net = Length.ZERO;
    for (Profile profile : wanted) {
      String symbol = "p" + (terms.size() + 1);
      formula.append(terms.isEmpty() ? "" : " + ").append(symbol);
      terms.add(Term.of(symbol, profile.because(), profile.length()));
      pieces.add(TrimPiece.of(name + " " + terms.size(), profile.length()));
      net = net.plus(profile.length());
    }
    List<Step> steps = new ArrayList<>(List.of(new Step("profile-length", "How much does the floor take of " + name + "?",
        formula.toString(), terms, net, Source.DEFINITION)));
    Optional<BarGoods> stated = job.goods().profile(kind);
    order(stated, stated.map(BarGoods::name).orElse(name), Gathered.metres(net).toPlainString() + " m in "
        + Gathered.count(pieces.size(), "piece", "pieces"), net, steps,
        () -> BarOrder.ofPieces(stated.orElseThrow(), pieces, job.rules().get(LayingRules.SAW_KERF)));
  }

  private void order(Optional<BarGoods> stated, String name, String takes, Length net, List<Step> steps,
      Supplier<Calculated<BarOrder>> cut) {
    if (stated.isPresent()) {
      try {
        bars(stated.get(), takes, steps, cut.get());
        return;
      } catch (IllegalArgumentException tooMany) {
        gathered.findings.add(new Finding("bars-not-counted", Severity.WARNING, name, tooMany.getMessage(), Source.DEFINITION));
      }
    }
    gathered.lines.add(OrderLine.of(name, takes, Gathered.metres(net), "m", steps));
  }

  private void bars(BarGoods goods, String takes, List<Step> steps, Calculated<BarOrder> calculated) {
    BarOrder order = calculated.value();
    gathered.findings.addAll(calculated.findings());
    steps.addAll(calculated.steps());
    String proven = order.cutting().isLeast() ? "no cutting buys less" : "not proven to buy the least";
    int number = 0;
    for (var each : order.cutting().barsByStock().entrySet()) {
      number++;
      Length length = each.getKey().length();
      BigDecimal bars = BigDecimal.valueOf(each.getValue());
      OrderLine line = OrderLine.of(goods.name() + (goods.lengths().size() > 1 ? ", bars of " + length : ""),
          number == 1 ? takes + ", " + proven : "with the line above", bars, "bar of " + Gathered.metres(length).toPlainString() + " m",
          number == 1 ? steps : List.of());
      gathered.lines.add(goods.price().map(price -> line.at(price, price.per() == UnitPrice.Per.METRE
          ? LayerLines.plain(BigDecimal.valueOf(length.multipliedBy(each.getValue()).toNanometres(), 9)) : bars)).orElse(line));
    }
  }
}
