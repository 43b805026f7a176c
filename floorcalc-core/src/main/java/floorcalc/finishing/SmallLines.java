package floorcalc.finishing;

import floorcalc.levels.GridFlatness;
import floorcalc.levels.Levels;
import floorcalc.levels.PreparationOptions;
import floorcalc.levels.SubfloorPreparation;
import floorcalc.materials.Consumables;
import floorcalc.materials.FillerStock;
import floorcalc.materials.GlueGoods;
import floorcalc.materials.OrderLine;
import floorcalc.materials.SealantGoods;
import floorcalc.materials.WedgeGoods;
import floorcalc.measure.Length;
import floorcalc.measure.Mass;
import floorcalc.measure.UnitPrice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Profile;
import floorcalc.plan.Room;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The lines of an order list on what is used up: wedges, glue, sealant, filler. */
final class SmallLines {
  private final FloorJob job;
  private final FloorPlan plan;
  private final Gathered gathered;

  SmallLines(FloorJob job, FloorPlan plan, Gathered gathered) {
    this.job = job;
    this.plan = plan;
    this.gathered = gathered;
  }

  void write() {
    wedges();
    glue();
    job.goods().sealant().ifPresent(this::sealant);
    job.goods().filler().ifPresent(this::filler);
  }

  private void wedges() {
    Optional<WedgeGoods> goods = job.goods().wedges();
    Length spacing = goods.map(WedgeGoods::spacing).orElse(Consumables.WEDGE_SPACING);
    List<Step> steps = new ArrayList<>();
    long most = 0;
    long all = 0;
    for (Room room : job.rooms()) {
      Calculated<Long> wedges = Consumables.wedges(room.name(), room.outline(), spacing);
      steps.addAll(wedges.steps());
      most = Math.max(most, wedges.value());
      all += wedges.value();
    }
    String net = Gathered.count(all, "wedge", "wedges") + (job.rooms().size() > 1 ? "; " + most
        + " if they move on from room to room" : "");
    if (goods.isEmpty()) {
      gathered.lines.add(OrderLine.of("wedges", net, BigDecimal.valueOf(all), "piece", steps));
    } else {
      Calculated<Long> packs = Consumables.whole("packs-of-wedges", "How many packs of wedges is that?", all, goods.get().perPack());
      steps.addAll(packs.steps());
      add(OrderLine.of(goods.get().name(), net, BigDecimal.valueOf(packs.value()), "pack", steps), goods.get().price());
    }
  }

  private void glue() {
    int pieces = job.rooms().stream().mapToInt(room -> room.pipes().size()).sum();
    if (pieces == 0) {
      return;
    }
    Optional<GlueGoods> goods = job.goods().glue();
    BigDecimal each = goods.map(GlueGoods::perPiece).orElse(Consumables.GLUE_PER_PIECE_MILLILITRES);
    BigDecimal volume = each.multiply(BigDecimal.valueOf(pieces));
    Source source = each.equals(Consumables.GLUE_PER_PIECE_MILLILITRES) ? Source.COMMON_PRACTICE : Source.GIVEN;
    List<Step> steps = new ArrayList<>(List.of(new Step("glue-at-pipes", "How much glue, in ml, do the pieces behind pipes take?",
        "V = n * v", List.of(Term.of("n", "pipes", pieces), new Term("v", "glue for each in ml", each, source)), volume,
        Source.DEFINITION)));
    String net = Gathered.count(pieces, "piece", "pieces") + " glued back at pipes";
    if (goods.isEmpty()) {
      gathered.lines.add(OrderLine.of("glue at pipes", net, volume, "ml", steps));
    } else {
      BigDecimal bottles = volume.divide(goods.get().millilitres(), 0, RoundingMode.CEILING);
      steps.add(new Step("bottles", "How many bottles is that?", "N = ceil(V / k)", List.of(Term.of("V", "glue in ml", volume),
          Term.of("k", "in a bottle", goods.get().millilitres())), bottles, Source.DEFINITION));
      add(OrderLine.of(goods.get().name(), net, bottles, "bottle", steps), goods.get().price());
    }
  }

  private void sealant(SealantGoods goods) {
    Length ends = plan.profiles().stream().filter(profile -> profile.kind().equals("end")).map(Profile::length)
        .reduce(Length.ZERO, Length::plus);
    Length beads = ends.plus(goods.beads());
    if (beads.isZero()) {
      return;
    }
    List<Step> steps = new ArrayList<>(List.of(new Step("bead-length", "How long are the beads?", "l = e + g",
        List.of(Term.of("e", "end profiles", ends), Term.of("g", "beads given, as at frames", goods.beads())), beads,
        Source.DEFINITION)));
    Calculated<Long> cartridges = Consumables.sealant(beads, goods.width(), goods.depth(), goods.millilitres(), goods.loss());
    steps.addAll(cartridges.steps());
    add(OrderLine.of(goods.name(), Gathered.metres(beads).toPlainString() + " m of bead", BigDecimal.valueOf(cartridges.value()),
        "cartridge", steps), goods.price());
  }

  private void filler(FillerStock stock) {
    List<Step> steps = new ArrayList<>();
    BigDecimal litres = BigDecimal.ZERO;
    for (Room room : job.rooms()) {
      Optional<SubfloorPreparation> filled = filled(room);
      if (filled.isPresent()) {
        BigDecimal here = filled.get().fillerLitres();
        litres = litres.add(here);
        steps.add(new Step("filler", room.name() + ": how many litres of filler, if nothing is ground?", "value as stated", List.of(),
            LayerLines.plain(here), Source.DEFINITION));
      }
    }
    if (litres.signum() == 0) {
      return;
    }
    BigDecimal perLitre = stock.goods().kilogramsPerLitre();
    Mass bag = stock.goods().bag();
    BigDecimal mass = litres.multiply(perLitre);
    BigDecimal bags = mass.divide(bag.kilograms(), 0, RoundingMode.CEILING);
    steps.add(new Step("filler-mass", "What does all of it weigh, in kg?", "M = V * m", List.of(Term.of("V", "litres", LayerLines.plain(
        litres)), Term.of("m", "kilograms for a litre, the maker's", perLitre)), LayerLines.plain(mass), Source.DEFINITION));
    steps.add(new Step("bags", "How many bags is that?", "N = ceil(M / k)", List.of(Term.of("M", "mass in kg", LayerLines.plain(mass)),
        Term.of("k", "in a bag", bag)), bags, Source.DEFINITION));
    add(OrderLine.of(stock.name(), litres.setScale(1, RoundingMode.CEILING).toPlainString() + " litres, if nothing is ground", bags,
        "bag", steps), stock.price());
  }

  private static Optional<SubfloorPreparation> filled(Room room) {
    if (room.site().heights().isEmpty() || !Levels.faultsOf(room.site().heights()).isEmpty()) {
      return Optional.empty();
    }
    Levels levels = Levels.of(room.site().heights());
    try {
      boolean isFlat = GridFlatness.of(levels, room.site().flatness()).value().gaps().stream()
          .allMatch(gap -> gap.gap().compareTo(gap.allowed()) <= 0);
      return isFlat || !levels.doubts().isEmpty() ? Optional.empty()
          : Optional.of(SubfloorPreparation.of(levels, room.site().flatness(), PreparationOptions.fillOnly()).value());
    } catch (IllegalArgumentException noGrid) {
      return Optional.empty();
    }
  }

  private void add(OrderLine line, Optional<UnitPrice> price) {
    gathered.lines.add(price.map(each -> line.at(each, line.quantity())).orElse(line));
  }
}
