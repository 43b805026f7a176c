package floorcalc.levels;

import floorcalc.flatness.ToleranceSet;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.measure.Mass;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Prepares a floor and shows how its figures come about. Used by one thread. */
final class PreparationWorking {
  private static final String AS_STATED = "value as stated";
  private static final int MOST_LISTED = 12;

  private final Levels levels;
  private final LevelGrid grid;
  private final PreparationOptions options;
  private final Limits limits;
  private final long[] found;
  private final List<Step> steps = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  PreparationWorking(Levels levels, ToleranceSet set, PreparationOptions options) {
    this.levels = levels;
    this.grid = levels.grid();
    this.options = options;
    this.limits = Limits.of(set);
    this.found = levels.spots().stream().mapToLong(spot -> spot.height().toNanometres()).toArray();
    if (limits.limits().stream().noneMatch(limit -> grid.lines.stream().anyMatch(
        line -> line.isJudgedBy(limit.reach())))) {
      throw new IllegalArgumentException("no span of tolerance set '" + set.name() + "' can be judged: nowhere do three readings in"
          + " line lie within it; read the floor closer, or choose a set with a longer span");
    }
    if (options.step().compareTo(limits.least()) > 0) {
      throw new IllegalArgumentException("steps of depths must be no more than the smallest gap allowed, " + limits.least()
          + ", but were " + options.step());
    }
  }

  Calculated<SubfloorPreparation> prepare() {
    PreparationSearch search = new PreparationSearch(grid, found, limits, options);
    long[] made = search.made();
    List<SpotWork> work = new ArrayList<>();
    List<SpotLevel> after = new ArrayList<>();
    for (int i = 0; i < made.length; i++) {
      SpotLevel spot = levels.spots().get(i);
      Length height = Length.ofNanometres(made[i]);
      work.add(new SpotWork(spot.place(), spot.height(), height));
      after.add(new SpotLevel(spot.place(), height));
    }
    Levels levelsAfter = Levels.of(after);
    Calculated<GridFlatness> flatness = GridFlatness.of(levelsAfter, limits);
    SubfloorPreparation.Volumes volumes = volumes(search, work);
    Optional<SubfloorPreparation.Filler> filler = options.filler().map(goods -> filler(goods, volumes.filler()));
    mistakes(volumes);
    SubfloorPreparation preparation =
        new SubfloorPreparation(work, volumes, filler.orElse(null), levelsAfter, flatness.value());
    findings.addAll(levels.doubts());
    findings.addAll(flatness.findings());
    notJudged(flatness.value());
    cautions(preparation, search);
    return Calculated.of(preparation, steps, findings);
  }

  private SubfloorPreparation.Volumes volumes(PreparationSearch search, List<SpotWork> work) {
    BigDecimal filler = volume("filler-volume", "How many litres of filler are laid", "V", work.stream().map(SpotWork::fill).toList(),
        search.filler(search.made()));
    BigDecimal least = search.leastFillerLitres();
    steps.add(new Step("least-filler", "How many litres can no way do without that grinds at most " + search.deepest()
        + " deep? Ground so deep everywhere and raised from there no more than the limits ask for (" + search.raised()
        + " times a reading), the floor needs the least filler at every reading at once.", AS_STATED, List.of(), least,
        Source.DEFINITION));
    BigDecimal ground = volume("ground-volume", "How many litres are ground off", "G",
        work.stream().map(SpotWork::grind).toList(), search.ground(search.made()));
    boolean byWork = options.grindingWeight().isPresent();
    Optional<BigDecimal> leastGround = Optional.empty();
    Optional<BigDecimal> worked = Optional.empty();
    Optional<BigDecimal> leastWork = Optional.empty();
    String finished = search.isFinished() ? "" : " The program was not solved to its end, so the bound may be low.";
    if (byWork) {
      BigDecimal g = options.grindingWeight().orElseThrow();
      BigDecimal f = options.fillingWeight().orElseThrow();
      worked = Optional.of(PreparationSearch.plain(ground.multiply(g).add(filler.multiply(f))));
      steps.add(new Step("work", "How much work is that?", "w = G * a + V * b", List.of(
          Term.of("G", "ground off, litres", ground), Term.of("a", "weight of a litre ground off", g),
          Term.of("V", "filler, litres", filler), Term.of("b", "weight of a litre filled in", f)), worked.get(),
          Source.DEFINITION));
      leastWork = Optional.of(search.deepest().isZero() ? worked.get() : search.bound());
      steps.add(new Step("least-work", "How much work can no way do without, by the linear program of all limits?" + finished,
          AS_STATED, List.of(), leastWork.get(), Source.DEFINITION));
    } else if (search.deepest().isPositive()) {
      leastGround = Optional.of(search.bound());
      steps.add(new Step("least-ground", "How many litres must be ground off at least for this, by the linear program of all limits?"
          + finished, AS_STATED, List.of(), leastGround.get(), Source.DEFINITION));
    }
    return new SubfloorPreparation.Volumes(area(), filler, least, ground, leastGround, worked, leastWork, worstTimesArea(),
        meanTimesArea());
  }

  /** Areas in square metres times depths in millimetres are litres. */
  private BigDecimal volume(String id, String question, String symbol, List<Length> depths, BigDecimal litres) {
    List<Term> terms = new ArrayList<>();
    StringBuilder formula = new StringBuilder(symbol).append(" = ");
    for (int i = 0; i < depths.size(); i++) {
      if (!depths.get(i).isZero()) {
        int k = terms.size() / 2 + 1;
        formula.append(k == 1 ? "" : " + ").append("A").append(k).append(" * d").append(k);
        terms.add(Term.of("A" + k, "square metres that the reading at x = " + levels.spots().get(i).place().x() + ", y = "
            + levels.spots().get(i).place().y() + " stands for", squareMetres(grid.quarters[i])));
        terms.add(Term.of("d" + k, "depth there, mm", depths.get(i).toMillimetreString()));
      }
    }
    boolean isListed = !terms.isEmpty() && terms.size() <= 2 * MOST_LISTED;
    String more = terms.size() > 2 * MOST_LISTED ? ", at " + terms.size() / 2 + " readings, each depth times the area it stands for?"
        : "?";
    steps.add(new Step(id, question + more, isListed ? formula.toString() : AS_STATED, isListed ? terms : List.of(), litres,
        Source.DEFINITION));
    return litres;
  }

  private static BigDecimal squareMetres(BigInteger quarters) {
    return PreparationSearch.plain(new BigDecimal(quarters, 18).divide(BigDecimal.valueOf(4)));
  }

  private BigInteger allQuarters() {
    BigInteger all = BigInteger.ZERO;
    for (BigInteger quarter : grid.quarters) {
      all = all.add(quarter);
    }
    return all;
  }

  private Area area() {
    return Area.ofHalfSquareNanometres(allQuarters().shiftRight(1));
  }

  private BigDecimal worstTimesArea() {
    return PreparationSearch.plain(squareMetres(allQuarters()).multiply(range()));
  }

  private BigDecimal range() {
    return new BigDecimal(levels.highest().height().minus(levels.lowest().height()).toMillimetreString());
  }

  private BigDecimal meanTimesArea() {
    return PreparationSearch.plain(squareMetres(allQuarters()).multiply(meanDepth()));
  }

  /** The mean depth below the highest reading in millimetres, each weighed with its area, rounded up to six decimals. */
  private BigDecimal meanDepth() {
    long high = levels.highest().height().toNanometres();
    BigInteger sum = BigInteger.ZERO;
    for (int i = 0; i < found.length; i++) {
      sum = sum.add(grid.quarters[i].multiply(BigInteger.valueOf(high - found[i])));
    }
    return PreparationSearch.plain(new BigDecimal(sum).divide(new BigDecimal(allQuarters()), 0, RoundingMode.CEILING)
        .movePointLeft(6));
  }

  private SubfloorPreparation.Filler filler(FillerGoods goods, BigDecimal litres) {
    Mass mass = new Mass(PreparationSearch.plain(litres.multiply(goods.kilogramsPerLitre())));
    steps.add(new Step("filler-mass", "What does the filler weigh out of the bag?", "m = V * c", List.of(
        Term.of("V", "filler, litres", litres),
        Term.of("c", "kilograms out of the bag for a litre laid, the same as kg per m2 and mm", goods.kilogramsPerLitre())), mass,
        Source.DEFINITION));
    long bags = mass.kilograms().divide(goods.bag().kilograms(), 0, RoundingMode.CEILING).longValueExact();
    steps.add(new Step("bags", "How many whole bags is that?", "B = ceil(m / b)", List.of(
        Term.of("m", "mass of the filler", mass), Term.of("b", "mass of a bag", goods.bag())), bags, Source.DEFINITION));
    return new SubfloorPreparation.Filler(mass, bags);
  }

  private void mistakes(SubfloorPreparation.Volumes volumes) {
    Term area = Term.of("A", "area of the floor that was read, square metres", squareMetres(allQuarters()));
    steps.add(new Step("worst-depth-times-area", "A usual mistake: how many litres are the worst depth all over the floor?",
        "W = A * (h - l)", List.of(area, Term.of("h", "highest reading, mm", levels.highest().height().toMillimetreString()),
            Term.of("l", "lowest reading, mm", levels.lowest().height().toMillimetreString())), volumes.worstDepthTimesArea(),
        Source.DEFINITION));
    steps.add(new Step("mean-depth-times-area", "Another: how many litres fill the floor level to its highest reading, as if there"
        + " were no tolerance?", "M = A * d", List.of(area, Term.of("d", "mean depth below the highest reading, each with the area"
            + " it stands for, rounded up to six decimals of a mm", meanDepth())), volumes.meanDepthTimesArea(),
        Source.DEFINITION));
  }

  private void notJudged(GridFlatness flatness) {
    flatness.judgements().stream().filter(judgement -> judgement.outcome() == floorcalc.working.Outcome.NOT_MEASURED).forEach(
        judgement -> findings.add(new Finding("span-not-measured", Severity.WARNING, "", judgement.check()
            + " was not measured and is not prepared for: " + judgement.advice(), judgement.source())));
  }

  private void cautions(SubfloorPreparation preparation, PreparationSearch search) {
    if (!preparation.toGrind().isEmpty()) {
      caution("grinding-dust", "grinding concrete, screed or tile makes silica dust, which harms the lungs for ever: grind with an"
          + " extractor and a fitting mask, never dry and open, and keep others away; follow local rules");
      caution("asbestos", "floors and glues of before about 1990 may hold asbestos: do not grind, sand or break them before a"
          + " licensed laboratory has tested a sample");
      caution("hidden-services", "pipes, cables and heating may lie just below the surface: find out before grinding, and ask an"
          + " engineer before taking more than the skin off a slab");
    }
    if (!preparation.toFill().isEmpty()) {
      caution("filler-instructions", "the filler's maker says how the floor is cleaned and primed, how thick a layer may be and how long it"
          + " dries; that comes before anything said here");
      options.filler().ifPresent(goods -> layers(goods, preparation));
    }
    if (!search.isFinished()) {
      findings.add(new Finding("grinding-not-proven", Severity.NOTE, "", "the linear program stopped before its end; another way may"
          + " grind less, down to the bound stated", Source.DEFINITION));
    }
  }

  private void layers(FillerGoods goods, SubfloorPreparation preparation) {
    long thin = preparation.toFill().stream().filter(spot -> spot.fill().compareTo(goods.thinnest()) < 0).count();
    if (thin > 0) {
      findings.add(new Finding("filler-thin", Severity.WARNING, "", "at " + thin + (thin == 1 ? " reading" : " readings")
          + " the filler is thinner than the " + goods.thinnest() + " that its maker allows; take one that can be drawn out"
          + " to nothing", Source.GIVEN));
    }
    goods.thickest().filter(most -> preparation.deepestFilling().compareTo(most) > 0).ifPresent(most ->
        findings.add(new Finding("filler-thick", Severity.WARNING, "", "the filler is up to " + preparation.deepestFilling()
            + " thick, more than the " + most + " that its maker allows in one layer; lay several as the maker says, or take"
            + " another filler", Source.GIVEN)));
  }

  private void caution(String code, String message) {
    findings.add(new Finding(code, Severity.WARNING, "", message, Source.COMMON_PRACTICE));
  }
}
