package floorcalc.boards;

import floorcalc.joints.JointPattern;
import floorcalc.rules.LayingRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Where the end joints of every run fall. Immutable and thread-safe.
 * <p>
 * Three ways to find them: {@link #search} looks ahead and saves boards, {@link #habit} does what a layer does without
 * looking ahead, {@link #pattern} follows a fixed shift from row to row. A run that one board fills is laid in one piece by
 * habit: a joint less counts more than an offcut. None of them promises to beat another on every
 * floor; {@code floorcalc.FloorPlanner} lays by search and by habit and keeps the better floor.
 *
 * @since 0.1
 */
public final class RunLayout {
  private final long[][] joints;
  private final int breaches;
  private final int patterns;
  /** How many start pieces the search weighed, 0 for other ways. */
  private final long steps;
  /** Prices at which the runs cost much, if the search found any. */
  private final PriceList prices;

  RunLayout(List<Run> runs, Stock stock, long[][] joints, int breaches) {
    this(runs, stock, joints, breaches, 0, null);
  }

  RunLayout(List<Run> runs, Stock stock, long[][] joints, int breaches, long steps, PriceList prices) {
    this.joints = joints;
    this.breaches = breaches;
    this.patterns = Patterns.count(runs, joints, stock);
    this.steps = steps;
    this.prices = prices;
  }

  /** The least offset of joints of runs that touch; far beyond any board if there is none. */
  long smallestOffset(List<Run> runs, Stock stock) {
    JointRule rule = new JointRule(runs, stock);
    long least = Long.MAX_VALUE / 4;
    for (int k = 0; k < joints.length; k++) {
      least = Math.min(least, rule.leastOffset(k, joints[k], other -> joints[other]));
    }
    return least;
  }

  long steps() {
    return steps;
  }

  Optional<PriceList> prices() {
    return Optional.ofNullable(prices);
  }

  /**
   * Searches for joints that need few boards and keep the rules, with full effort.
   *
   * @param runs the runs in laying order, not null
   * @param goods the boards, not null
   * @param rules the rules, not null
   * @return the layout, not null
   */
  public static RunLayout search(List<Run> runs, BoardGoods goods, LayingRules rules) {
    return search(runs, goods, rules, SearchEffort.FULL);
  }

  /**
   * Searches for joints that need few boards and keep the rules.
   *
   * @param runs the runs in laying order, not null
   * @param goods the boards, not null
   * @param rules the rules, not null
   * @param effort how hard to look, not null
   * @return the layout that needs the fewest boards where all rows are of full width, not null
   */
  public static RunLayout search(List<Run> runs, BoardGoods goods, LayingRules rules, SearchEffort effort) {
    Objects.requireNonNull(effort, "effort");
    Stock stock = new Stock(goods, rules);
    List<RunLayout> proposals = proposals(runs, stock, effort, UniformSearch::isProven);
    RunLayout best = proposals.get(0);
    if (best.breaches == 0 && isCountedExactly(runs, stock)) {
      return best;
    }
    int fewest = best.boards(runs, goods, rules);
    for (RunLayout other : proposals.subList(1, proposals.size())) {
      int boards = other.boards(runs, goods, rules);
      if (other.breaches < best.breaches || other.breaches == best.breaches && boards < fewest) {
        best = other;
        fewest = boards;
      }
    }
    return best;
  }

  /**
   * Searches for joints and returns each layout worth cutting: rows that are ripped, shaped or no longer than a board can
   * need other numbers of boards than the search counts.
   *
   * @param runs the runs in laying order, not null
   * @param goods the boards, not null
   * @param rules the rules, not null
   * @param effort how hard to look, not null
   * @return layouts, the one preferred where they need as many boards first; unmodifiable, not empty
   */
  public static List<RunLayout> proposals(List<Run> runs, BoardGoods goods, LayingRules rules, SearchEffort effort) {
    Objects.requireNonNull(effort, "effort");
    return proposals(runs, new Stock(goods, rules), effort, search -> false);
  }

  /** Looks ahead too, unless that cannot help. */
  private static List<RunLayout> proposals(List<Run> runs, Stock stock, SearchEffort effort, Predicate<UniformSearch> done) {
    List<RunLayout> proposals = new ArrayList<>();
    boolean enough = false;
    if (stock.isUniform() && !runs.isEmpty()) {
      UniformSearch search = new UniformSearch(runs, stock, effort);
      proposals.addAll(search.best());
      enough = effort == SearchEffort.QUICK || done.test(search) || isCountedExactly(runs, stock);
    }
    if (proposals.isEmpty() || !enough) {
      PriceList prices = proposals.isEmpty() ? null : proposals.get(0).prices;
      for (RunLayout ahead : new JointSearch(runs, stock).proposals()) {
        proposals.add(new RunLayout(runs, stock, ahead.joints, ahead.breaches, 0, prices));
      }
    }
    return List.copyOf(proposals);
  }

  /** Tells whether the search counts the boards of rows of full width exactly: if each run is made of several pieces. */
  private static boolean isCountedExactly(List<Run> runs, Stock stock) {
    return stock.isUniform() && runs.stream().allMatch(run -> run.span() > stock.longest());
  }

  /** The boards that rows of full width take when they are cut as laid. */
  int boards(List<Run> runs, BoardGoods goods, LayingRules rules) {
    long width = goods.laidPitch().toNanometres();
    List<PieceWanted> wanted = new ArrayList<>();
    for (int k = 0; k < joints.length; k++) {
      Run run = runs.get(k);
      long place = run.from();
      for (int i = 0; i <= joints[k].length; i++) {
        boolean last = i == joints[k].length;
        Ends ends = joints[k].length == 0 ? Ends.NONE : i == 0 ? Ends.HIGH : last ? Ends.LOW : Ends.BOTH;
        long next = last ? run.to() : joints[k][i];
        wanted.add(PieceWanted.ofNanometres(run.row(), next - place, 0, width, ends));
        place = next;
      }
    }
    return CuttingPlan.fewestBoards(wanted, goods, rules).boardCount();
  }

  /**
   * Lays by habit: each row starts with the offcut of the row before where the rules allow it, else with a board or a
   * plain part of one.
   *
   * @param runs the runs in laying order, not null
   * @param goods the boards, not null
   * @param rules the rules, not null
   * @return the layout, not null
   */
  public static RunLayout habit(List<Run> runs, BoardGoods goods, LayingRules rules) {
    return new JointHabit(runs, new Stock(goods, rules)).lay();
  }

  /**
   * Lays by a fixed shift from row to row, measured from a line that all rows share.
   *
   * @param runs the runs in laying order, not null
   * @param goods the boards, of one length, not null
   * @param rules the rules, not null
   * @param pattern the shift, not null, not free
   * @param anchor the place of a joint of row 0 along the row, in nanometres; any place a board's length on does as well
   * @return the layout, not null
   * @throws IllegalArgumentException if the pattern is free or the boards are of several lengths
   */
  public static RunLayout pattern(List<Run> runs, BoardGoods goods, LayingRules rules, JointPattern pattern,
      long anchor) {
    Objects.requireNonNull(rules, "rules");
    return pattern(runs, goods, rules, pattern, anchor, runs.stream().mapToInt(Run::row).toArray());
  }

  /**
   * Lays by a fixed shift from row to row, where rows that lie in one line may count as one row of the pattern.
   *
   * @param runs the runs in laying order, not null
   * @param goods the boards, of one length, not null
   * @param rules the rules, not null
   * @param pattern the shift, not null, not free
   * @param anchor the place of a joint of row 0 along the row, in nanometres; any place a board's length on does as well
   * @param rows the row of the pattern that each run is in, from 0, not null
   * @return the layout, not null
   * @throws IllegalArgumentException if the pattern is free, the boards are of several lengths, or there are not as many rows as runs
   */
  public static RunLayout pattern(List<Run> runs, BoardGoods goods, LayingRules rules, JointPattern pattern,
      long anchor, int[] rows) {
    Objects.requireNonNull(rules, "rules");
    if (rows.length != runs.size()) {
      throw new IllegalArgumentException("each run needs its row of the pattern, but there are " + runs.size() + " runs and "
          + rows.length + " rows");
    }
    if (pattern.kind() == JointPattern.Kind.FREE || goods.pack().size() > 1) {
      throw new IllegalArgumentException("a fixed pattern needs a shift and boards of one length, but the pattern is "
          + pattern + " and the lengths are " + goods.lengths());
    }
    Stock stock = new Stock(goods, rules);
    JointRule rule = new JointRule(runs, stock);
    long[][] joints = new long[runs.size()][];
    int breaches = 0;
    for (int k = 0; k < joints.length; k++) {
      Run run = runs.get(k);
      long shift = pattern.shift(rows[k], goods.longest()).toNanometres();
      long start = Math.floorMod(anchor + shift - run.from(), stock.longest());
      joints[k] = Joints.every(run, start == 0 ? stock.longest() : start, stock.longest());
      breaches += rule.breaches(k, joints[k], index -> joints[index]);
    }
    return new RunLayout(runs, stock, joints, breaches);
  }

  /**
   * Returns the joints of a run, from its low end on.
   *
   * @param run the place of the run in the list of runs
   * @return the places along the row in nanometres, a copy; empty if one piece fills the run
   */
  public long[] jointsOf(int run) {
    return joints[run].clone();
  }

  /**
   * Returns how often a rule on joint offsets or end pieces is broken although more than one piece is laid.
   *
   * @return the number of breaches
   */
  public int breaches() {
    return breaches;
  }

  /**
   * Returns how many rows make an H or a stair pattern with the two rows before them: joints in line with those two rows
   * back, or as far from the row before as that one from the row before it. Only rows that touch one run before them
   * are looked at, and only their first joints, a board's length more or less; of boards of several lengths each joint
   * that does so counts.
   *
   * @return the number of rows, or of joints
   */
  public int patterns() {
    return patterns;
  }
}
