package floorcalc.trims;

import floorcalc.measure.Length;
import floorcalc.measure.Price;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;

/** Shows how the bound and the cutting come about, step by step. Used by one thread. */
final class TrimWorking {
  private static final String AS_STATED = "value as stated";
  private static final Source BOUNDS = new Source("Knapsack Problems: Algorithms and Computer Implementations",
      "S. Martello and P. Toth, Wiley", 1990, "chapter 8, bound L2",
      Standing.FROM_MEMORY);
  private static final Source PATTERNS = new Source("A linear programming approach to the cutting-stock problem",
      "P. C. Gilmore and R. E. Gomory, Operations Research 9", 1961, "",
      Standing.FROM_MEMORY);

  private final TrimBench bench;
  private final Problem problem;
  private final FewestBars fewest;
  private final LongestLeftover leftover;
  private final List<Step> steps = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  TrimWorking(TrimBench bench, Problem problem, FewestBars fewest, LongestLeftover leftover) {
    this.bench = bench;
    this.problem = problem;
    this.fewest = fewest;
    this.leftover = leftover;
  }

  Calculated<TrimCutting> cutting() {
    List<TrimBar> bars = bench.bars(problem, leftover.loads());
    boolean isLeast = !bench.isAnySold() || fewest.cost() == fewest.least();
    if (bench.isAnySold()) {
      bounds();
    }
    Object bound = bench.isAnySold() ? bench.bought(fewest.least()) : Length.ZERO;
    TrimCutting cutting = new TrimCutting(bars, bound instanceof Length length ? length : null,
        bound instanceof Price price ? price : null, leastBars(), new TrimCutting.Proof(isLeast, leftover.isProven()));
    results(cutting);
    if (!isLeast) {
      findings.add(new Finding("fewest-not-proven", Severity.NOTE, "", "the cutting buys " + bench.bought(fewest.cost())
          + ", the bound is " + bound + "; whether less would do was not found out within the steps allowed",
          Source.DEFINITION));
    }
    return Calculated.of(cutting, steps, findings);
  }

  Calculated<TrimEstimate> estimate(List<Load> intoFirst, List<Load> intoFullest) {
    uniformBounds();
    addQuick("bars-longest-into-first", "first", intoFirst);
    addQuick("bars-longest-into-fullest", "fullest", intoFullest);
    long byLength = PlainBounds.bySum(problem, problem.wanted());
    long byPrices = fewest.prices() == null ? byLength : fewest.prices().least() / problem.cost(0);
    return Calculated.of(new TrimEstimate(new TrimEstimate.Bounds(byLength,
        PlainBounds.LargePieces.of(problem, problem.wanted()).bars(), byPrices), number(intoFirst), number(intoFullest)), steps);
  }

  private void addQuick(String id, String which, List<Load> loads) {
    add(id, "How many bars are cut if the longest piece comes first, each into the " + which + " bar that has room for it?", AS_STATED,
        List.of(), number(loads), Source.DEFINITION);
  }

  private static long number(List<Load> loads) {
    return loads.stream().mapToLong(Load::times).sum();
  }

  private void bounds() {
    if (problem.isUniform()) {
      uniformBounds();
    } else {
      mixedBounds();
    }
    if (fewest.isByMixes()) {
      add("least-by-numbers-of-bars", "What is the least, when all numbers of bars of each length that come to less do not"
          + " suffice at prices found for each?", AS_STATED, List.of(), bench.bought(fewest.leastByMixes()), PATTERNS);
    }
    if (fewest.isSearched()) {
      add("least-by-search", "What is the least, when all ways to cut have been looked through?", AS_STATED, List.of(),
          least(), Source.DEFINITION);
    }
  }

  private Object least() {
    return problem.isUniform() ? fewest.least() / problem.cost(0) : bench.bought(fewest.least());
  }

  /** Bars that must be bought at least: the least to buy, all of it in the dearest bars. */
  private long leastBars() {
    long dearest = 0;
    for (int kind = 0; kind < problem.kinds(); kind++) {
      dearest = Math.max(dearest, problem.cost(kind));
    }
    return bench.isAnySold() ? Whole.ceiling(fewest.least(), dearest) : 0;
  }

  private void uniformBounds() {
    int[] wanted = problem.wanted();
    long number = 0;
    for (int count : wanted) {
      number += count;
    }
    Length kerf = bench.kerf().value();
    Length bar = bench.stock().get(0).length();
    Term p = Term.of("P", "length of a bar", bar);
    Term c = new Term("c", "saw kerf", kerf, bench.kerf().source());
    add("bars-by-length", "How many bars do the pieces and the cuts between them fill, with nothing left over?",
        "b1 = ceil((S + n * c) / (P + c))",
        List.of(Term.of("S", "length of all pieces", bench.size(problem.total(wanted)).minus(kerf.multipliedBy(number))),
            Term.of("n", "number of pieces", number), c, p),
        PlainBounds.bySum(problem, wanted), Source.DEFINITION);
    PlainBounds.LargePieces large = PlainBounds.LargePieces.of(problem, wanted);
    String aside = large.limit() == 0 ? "" : ", those shorter than " + bench.size(large.limit()) + " left aside";
    add("bars-by-long-pieces", "How many bars do pieces of more than half a bar take, with the others filled in" + aside
        + "? All with a kerf each.",
        "b2 = n1 + n2 + max(0, ceil((S3 - (n2 * (P + c) - S2)) / (P + c)))",
        List.of(Term.of("n1", "pieces that none of these fits beside", large.apart()),
            Term.of("n2", "other pieces of more than half a bar", large.large()),
            Term.of("S3", "length of pieces of up to half a bar", bench.size(large.smallSum())),
            p, c, Term.of("S2", "length of the n2 pieces", bench.size(large.largeSum()))),
        large.bars(), BOUNDS);
    if (fewest.prices() != null) {
      uniformPrices(wanted);
    }
  }

  private void uniformPrices(int[] wanted) {
    ShownPrices shown = ShownPrices.simplest(problem, fewest);
    Object worth = shown.worth();
    addWorth(wanted, shown, worth);
    add("bars-by-prices", "How many bars can the worth of all pieces not do without?", "b3 = ceil(V / K)",
        List.of(Term.of("V", "worth of all pieces", worth),
            Term.of("K", "the most worth that fits into one bar, found by trying", shown.ceiling(0))),
        shown.least() / problem.cost(0), PATTERNS);
  }

  private void addWorth(int[] wanted, ShownPrices shown, Object worth) {
    if (problem.sizes() > ShownPrices.MOST_LISTED) {
      add("worth-of-pieces", "What are all pieces worth, each at the price of its length?", AS_STATED, List.of(), worth,
          PATTERNS);
      return;
    }
    StringBuilder formula = new StringBuilder("V = ");
    List<Term> terms = new ArrayList<>();
    for (int i = 0; i < problem.sizes(); i++) {
      formula.append(i == 0 ? "" : " + ").append("n").append(i + 1).append(" * u").append(i + 1);
      terms.add(Term.of("n" + (i + 1), "pieces of " + bench.lengths().get(i), wanted[i]));
      terms.add(Term.of("u" + (i + 1), "price of each", shown.price(i, bench)));
    }
    add("worth-of-pieces", "What are all pieces worth, at prices found such that no bar holds much?", formula.toString(),
        terms, worth, PATTERNS);
  }

  private void mixedBounds() {
    if (fewest.prices() == null) {
      return;
    }
    ShownPrices shown = ShownPrices.simplest(problem, fewest);
    if (shown.least() < fewest.prices().least()) {
      add("least-by-prices", "What must be bought at least, at prices such that no bar holds more worth than it costs?",
          AS_STATED, List.of(), bench.bought(fewest.prices().least()), PATTERNS);
      return;
    }
    Object worth = bench.bought(shown.worth());
    addWorth(problem.wanted(), shown, worth);
    List<Term> terms = new ArrayList<>(List.of(Term.of("V", "worth of all pieces", worth)));
    StringBuilder formula = new StringBuilder("z = V");
    for (int kind = 0; kind < problem.kinds(); kind++) {
      if (problem.isLimited(kind) && shown.beyond(problem, kind) > 0) {
        formula.append(" - b").append(kind + 1).append(" * h").append(kind + 1);
        terms.add(Term.of("b" + (kind + 1), "bars: " + bench.stock().get(kind), problem.limits()[kind]));
        terms.add(Term.of("h" + (kind + 1), "what one of these holds at most beyond its cost, found by trying",
            bench.bought(shown.beyond(problem, kind))));
      }
    }
    if (shown.bound(problem) >= 0 || !bench.isPriced()) {
      add("least-by-prices", "What must be bought at least, as no bar of unlimited number holds more worth than it costs?",
          formula.toString(), terms, bench.bought(shown.bound(problem)), PATTERNS);
    }
    add("least-of-whole-bars", "What is the least sum of whole bars that is as much?", AS_STATED, List.of(),
        bench.bought(shown.least()), Source.DEFINITION);
  }

  private void results(TrimCutting cutting) {
    List<Term> terms = new ArrayList<>();
    StringBuilder formula = new StringBuilder("T = ");
    for (var entry : cutting.barsByStock().entrySet()) {
      int k = terms.size() / 2 + 1;
      formula.append(k == 1 ? "" : " + ").append("m").append(k).append(" * P").append(k);
      terms.add(Term.of("m" + k, "bars: " + entry.getKey(), entry.getValue()));
      terms.add(Term.of("P" + k, "length of each", entry.getKey().length()));
    }
    Length total = cutting.bars().stream().map(bar -> bar.stock().length()).reduce(Length.ZERO, Length::plus);
    Length pieces = cutting.bars().stream().flatMap(bar -> bar.pieces().stream()).map(TrimPiece::cutLength)
        .reduce(Length.ZERO, Length::plus);
    Length dust = cutting.bars().stream().map(TrimBar::dust).reduce(Length.ZERO, Length::plus);
    Length left = cutting.bars().stream().map(TrimBar::leftover).reduce(Length.ZERO, Length::plus);
    add("length-cut", "How long are all bars that are cut?", formula.toString(), terms, total, Source.DEFINITION);
    add("length-left-over", "How much is left over in all?", "R = T - S - D",
        List.of(Term.of("T", "length of the bars", total), Term.of("S", "length of all pieces as cut", pieces),
            Term.of("D", "sawdust of " + cutting.cuts() + " cuts", dust)), left, Source.DEFINITION);
    add("longest-leftover", "How long is the longest single leftover"
        + (leftover.isProven() ? "? The same bars give no longer one." : " that was found?"), AS_STATED, List.of(),
        cutting.longestLeftover(), Source.DEFINITION);
  }

  private void add(String id, String question, String formula, List<Term> terms, Object result, Source source) {
    steps.add(new Step(id, question, formula, terms, result, source));
  }
}
