package floorcalc.trims;

import floorcalc.measure.Length;
import floorcalc.measure.Price;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/** Turns pieces and bars into whole numbers, has them cut, and turns the loads back into bars. Used by one thread. */
final class TrimBench {
  private static final int MOST_PIECES = 20_000;
  private static final int MOST_LENGTHS = 500;
  private static final long STEPS = 240_000_000;
  private static final long STEPS_FOR_LEFTOVERS = 60_000_000;
  /** Decimals of a price that the search counts beyond those given. */
  private static final int FINER = 4;

  private static final Length LONGEST_BAR = Length.ofMillimetres(100_000);
  private static final BigDecimal HIGHEST_PRICE = BigDecimal.valueOf(1_000_000);

  private final List<TrimPiece> pieces;
  private final List<TrimStock> stock;
  private final RuleValue<Length> kerf;
  private final TreeMap<Length, Deque<TrimPiece>> bySize = new TreeMap<>(Comparator.reverseOrder());
  private long grid;

  TrimBench(List<TrimPiece> pieces, List<TrimStock> stock, RuleValue<Length> kerf) {
    this.pieces = List.copyOf(pieces);
    this.stock = stock.stream().sorted(Comparator.comparing(TrimStock::length).reversed()
        .thenComparing(one -> !one.isOnHand())
        .thenComparing(one -> one.price().map(Price::amount).orElse(BigDecimal.ZERO))).toList();
    this.kerf = Objects.requireNonNull(kerf, "sawKerf");
  }

  Calculated<TrimCutting> cut() {
    check();
    Problem problem = problem();
    FewestBars fewest = new FewestBars(problem, new Budget(STEPS));
    fewest.solve();
    if (fewest.loads() == null) {
      throw new IllegalArgumentException("the bars that can be had do not suffice for all pieces, as far as was found;"
          + " give more bars, or a length that is sold without limit");
    }
    LongestLeftover leftover = new LongestLeftover(problem, fewest, new Budget(STEPS_FOR_LEFTOVERS));
    leftover.improve();
    return new TrimWorking(this, problem, fewest, leftover).cutting();
  }

  /** Bounds and quick ways for bars of one length. */
  Calculated<TrimEstimate> estimate() {
    check();
    Problem problem = problem();
    Budget budget = new Budget(STEPS);
    FewestBars fewest = new FewestBars(problem, budget);
    fewest.price();
    int[] wanted = problem.wanted();
    return new TrimWorking(this, problem, fewest, null).estimate(Greedy.firstFit(problem, wanted, 0, budget),
        Greedy.bestFit(problem, wanted, 0, budget));
  }

  private void check() {
    if (pieces.isEmpty()) {
      throw new IllegalArgumentException("there is no piece to cut; give at least one");
    }
    if (stock.isEmpty()) {
      throw new IllegalArgumentException("there is no bar to cut from; give at least one length");
    }
    long number = pieces.stream().mapToLong(TrimPiece::count).sum();
    if (number > MOST_PIECES) {
      throw new IllegalArgumentException("pieces must be at most " + MOST_PIECES + " in all, but were " + number
          + "; cut them in several lots");
    }
    long lengths = pieces.stream().map(TrimPiece::cutLength).distinct().count();
    if (lengths > MOST_LENGTHS) {
      throw new IllegalArgumentException("pieces must be of at most " + MOST_LENGTHS + " different lengths, but were of "
          + lengths + "; cut them in several lots");
    }
    Length longest = stock.get(0).length();
    for (TrimPiece piece : pieces) {
      if (piece.cutLength().compareTo(longest) > 0) {
        throw new IllegalArgumentException("piece '" + piece.name() + "' is " + piece.cutLength()
            + " long with its allowance, the longest bar is " + longest
            + "; give longer bars or have the piece made up of several, see TrimPiecing");
      }
    }
    if (longest.compareTo(LONGEST_BAR) > 0) {
      throw new IllegalArgumentException("a bar must be at most " + LONGEST_BAR + " long, but was " + longest);
    }
    List<TrimStock> sold = stock.stream().filter(one -> !one.isOnHand()).toList();
    List<String> currencies = sold.stream().flatMap(one -> one.price().stream()).map(Price::currency).distinct().toList();
    if (currencies.size() > 1) {
      throw new IllegalArgumentException("prices must be in one currency, but were in " + currencies);
    }
    for (TrimStock one : sold) {
      one.price().filter(price -> price.amount().compareTo(HIGHEST_PRICE) > 0 || price.amount().scale() > FINER)
          .ifPresent(price -> {
            throw new IllegalArgumentException("price of a bar of " + one.length() + " must be at most "
                + HIGHEST_PRICE.toPlainString() + " with at most " + FINER + " decimals, but was " + price);
          });
    }
    if (isPriced() && sold.stream().anyMatch(one -> one.price().isEmpty())) {
      throw new IllegalArgumentException("a price is missing; give the price of each length that is sold, or of none");
    }
    if (stock.stream().distinct().count() < stock.size()) {
      throw new IllegalArgumentException("the same bars are given twice; add their numbers up");
    }
  }

  private Problem problem() {
    for (TrimPiece piece : pieces) {
      Deque<TrimPiece> same = bySize.computeIfAbsent(piece.cutLength(), length -> new ArrayDeque<>());
      for (int n = 0; n < piece.count(); n++) {
        same.add(piece.times(1));
      }
    }
    for (Length length : bySize.keySet()) {
      grid = Whole.gcd(grid, enlarged(length));
    }
    for (TrimStock one : stock) {
      grid = Whole.gcd(grid, enlarged(one.length()));
    }
    return new Problem(bySize.keySet().stream().mapToLong(length -> enlarged(length) / grid).toArray(),
        bySize.values().stream().mapToInt(Deque::size).toArray(),
        stock.stream().mapToLong(one -> enlarged(one.length()) / grid).toArray(),
        stock.stream().mapToLong(this::cost).toArray(), stock.stream().mapToInt(TrimStock::most).toArray());
  }

  private long enlarged(Length length) {
    return length.plus(kerf.value()).toNanometres();
  }

  /** What a bar adds to what is bought: its length in nanometres, or its price in small parts; without sold ones its length. */
  private long cost(TrimStock one) {
    if (one.isOnHand() && isAnySold()) {
      return 0;
    }
    return one.price().map(price -> price.amount().movePointRight(priceScale()).longValueExact())
        .orElse(one.length().toNanometres());
  }

  private int priceScale() {
    return FINER + stock.stream().flatMap(one -> one.price().stream()).mapToInt(price -> price.amount().scale()).max()
        .orElse(0);
  }

  boolean isAnySold() {
    return stock.stream().anyMatch(one -> !one.isOnHand());
  }

  boolean isPriced() {
    return stock.stream().anyMatch(one -> one.price().isPresent());
  }

  /** A cost as a price or a length. */
  Object bought(long cost) {
    return isPriced() ? price(BigDecimal.valueOf(cost, priceScale())) : Length.ofNanometres(cost);
  }

  private Price price(BigDecimal amount) {
    BigDecimal plain = amount.stripTrailingZeros();
    int scale = Math.max(priceScale() - FINER, plain.scale());
    return new Price(plain.setScale(scale), stock.stream().flatMap(one -> one.price().stream()).findFirst().orElseThrow()
        .currency());
  }

  RuleValue<Length> kerf() {
    return kerf;
  }

  List<TrimStock> stock() {
    return stock;
  }

  /** The lengths wanted, longest first, as the sizes of the problem. */
  List<Length> lengths() {
    return List.copyOf(bySize.keySet());
  }

  /** A size of the problem as a length, its kerf included. */
  Length size(long size) {
    return Length.ofNanometres(Math.multiplyExact(size, grid));
  }

  /** The loads as bars with their pieces: by kind, fullest first. */
  List<TrimBar> bars(Problem problem, List<Load> loads) {
    List<Load> sorted = new ArrayList<>(loads);
    sorted.sort(Comparator.comparingInt(Load::kind)
        .thenComparing(Comparator.comparingLong((Load load) -> load.filled(problem)).reversed())
        .thenComparing(Load::counts, (a, b) -> -Arrays.compare(a, b)));
    List<Deque<TrimPiece>> left = new ArrayList<>();
    for (Map.Entry<Length, Deque<TrimPiece>> entry : bySize.entrySet()) {
      left.add(new ArrayDeque<>(entry.getValue()));
    }
    List<TrimBar> bars = new ArrayList<>();
    for (Load load : sorted) {
      for (int n = 0; n < load.times(); n++) {
        List<TrimPiece> cut = new ArrayList<>();
        for (int i = 0; i < load.counts().length; i++) {
          for (int k = 0; k < load.counts()[i]; k++) {
            cut.add(left.get(i).remove());
          }
        }
        bars.add(new TrimBar(stock.get(load.kind()), cut, kerf.value()));
      }
    }
    return bars;
  }
}
