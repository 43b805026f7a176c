package floorcalc.boards;

import floorcalc.measure.Length;
import floorcalc.measure.PlainNumber;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Boards of one length that runs take at least, by shares: each piece counts for a share of a board such that no board gives more
 * than one board's share in all.
 * <p>
 * Make pieces and boards longer by one saw kerf. By length, a piece counts for its length; then it may be rounded in two ways, and
 * the shares of what fits into a board still add up to no more than one: (1) pieces shorter than some length count for nothing, and
 * those that leave less than it count for a whole board; (2) boards are divided into {@code k + 1} equal lengths, and a piece
 * counts for {@code j / k} if it is longer than {@code j} of them and no longer than {@code j + 1}. These are the roundings known
 * from bin packing. A run is laid in the way that counts least.
 */
final class ShareBound {
  private static final int MOST_ROUNDINGS = 64;
  private static final int MOST_DIVISIONS = 4;
  private static final double ROUNDING = 1e-9;

  private final Stock stock;
  private final long least;
  /** A board made longer by a kerf. */
  private final long whole;
  /** How many runs there are of each length. */
  private final TreeMap<Long, Integer> runs = new TreeMap<>();
  private int best;
  private double sum;
  private String way = "none";

  ShareBound(Stock stock) {
    this.stock = stock;
    this.least = Math.max(1, stock.minimumPiece);
    this.whole = stock.longest() + stock.kerf;
  }

  /** Adds a run of full width with pieces all along it. */
  void add(long span) {
    runs.merge(span, 1, Integer::sum);
  }

  /** Which rounding gave the bound. */
  String way() {
    return way;
  }

  /** What all runs count for with that rounding, less what adding up may round, to four decimals. */
  String sum() {
    return PlainNumber.of(sum).setScale(4, RoundingMode.CEILING).toPlainString();
  }

  /** Tries roundings until a number of boards is reached; returns the bound. */
  int reach(int target) {
    for (long limit : limits()) {
      if (best < target) {
        keep(new ByLimit(limit), "pieces under " + Length.ofNanometres(limit - stock.kerf)
            + " count for nothing, those that leave no such piece for a board");
      }
    }
    for (int k = 1; k <= MOST_DIVISIONS && best < target; k++) {
      keep(new ByDivision(k), "pieces longer than j of " + (k + 1) + " equal parts of a board count for j/" + k);
    }
    return best;
  }

  /** Limits that one piece or another decides, the greatest first; of very many, some spread evenly. */
  private List<Long> limits() {
    TreeSet<Long> all = new TreeSet<>(Comparator.reverseOrder());
    all.add(least + stock.kerf);
    for (long span : runs.keySet()) {
      long piece = span + stock.kerf;
      if (span <= stock.longest()) {
        all.add(Math.min(piece, whole - piece));
        // What is left beside the piece counts for nothing.
        all.add(whole - piece + 1);
      }
    }
    List<Long> limits = all.stream().filter(limit -> limit > 0 && 2 * limit <= whole).toList();
    if (limits.size() <= MOST_ROUNDINGS) {
      return limits;
    }
    List<Long> spread = new ArrayList<>();
    for (int i = 0; i < MOST_ROUNDINGS; i++) {
      spread.add(limits.get(i * (limits.size() - 1) / (MOST_ROUNDINGS - 1)));
    }
    return spread;
  }

  private void keep(Shares shares, String how) {
    double all = 0;
    for (Map.Entry<Long, Integer> entry : runs.entrySet()) {
      all += entry.getValue() * cheapest(entry.getKey(), shares);
    }
    double sure = all - ROUNDING * (1 + all);
    int bound = (int) StrictMath.ceil(sure);
    if (bound > best) {
      best = bound;
      sum = Math.max(0, sure);
      way = how;
    }
  }

  /** The least that any way to lay a run counts for. */
  private double cheapest(long span, Shares shares) {
    long board = stock.longest();
    double cost = span <= board ? shares.of(span + stock.kerf) : Double.MAX_VALUE;
    for (long boards = Math.max(0, span / board - 1); boards <= span / board; boards++) {
      long rest = span - boards * board;
      if (rest == 0) {
        cost = Math.min(cost, boards);
      } else if (rest <= board && rest >= least) {
        cost = Math.min(cost, boards + shares.of(rest + stock.kerf));
      }
      long low = Math.max(least, rest - board);
      long high = Math.min(board, rest - least);
      if (low <= high) {
        cost = Math.min(cost, boards + shares.cheapest(rest, low, high, stock.kerf));
      }
    }
    // Nothing keeps the rules: whatever is laid, its length counts at least by the boards that it fills.
    return cost == Double.MAX_VALUE ? 0 : cost;
  }

  /** How much a piece counts for, made longer by a kerf. */
  private abstract class Shares {
    abstract double of(long piece);

    /** The lengths, made longer by a kerf, just beyond which the share leaps. */
    abstract long[] leaps();

    /** The least that a start piece from low to high and the end piece that makes up the rest count for together. */
    double cheapest(long rest, long low, long high, long kerf) {
      double cost = pair(rest, low, kerf);
      cost = Math.min(cost, pair(rest, high, kerf));
      for (long leap : leaps()) {
        for (long start : new long[] {leap - kerf - 1, leap - kerf, leap - kerf + 1, rest - leap + kerf - 1, rest - leap + kerf,
            rest - leap + kerf + 1}) {
          if (start >= low && start <= high) {
            cost = Math.min(cost, pair(rest, start, kerf));
          }
        }
      }
      return cost;
    }

    private double pair(long rest, long start, long kerf) {
      return of(start + kerf) + of(rest - start + kerf);
    }
  }

  private final class ByLimit extends Shares {
    private final long limit;

    ByLimit(long limit) {
      this.limit = limit;
    }

    @Override
    double of(long piece) {
      return piece < limit ? 0 : piece > whole - limit ? 1 : (double) piece / whole;
    }

    @Override
    long[] leaps() {
      return new long[] {limit, whole - limit};
    }
  }

  private final class ByDivision extends Shares {
    private final int k;

    ByDivision(int k) {
      this.k = k;
    }

    @Override
    double of(long piece) {
      long parts = (k + 1) * piece;
      return parts % whole == 0 ? (double) piece / whole : (double) (parts / whole) / k;
    }

    @Override
    long[] leaps() {
      long[] leaps = new long[k];
      for (int j = 1; j <= k; j++) {
        leaps[j - 1] = j * whole / (k + 1);
      }
      return leaps;
    }
  }
}
