package floorcalc.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Looks ahead for joints that need few boards: many ways of laying are carried from run to run side by side, and only
 * the most promising are kept. Deterministic; the effort is bounded by a number of steps, never by time.
 * <p>
 * A way is ranked by the boards it has opened, less what its dearest offcuts are worth, with rules broken far above all.
 * Counting every offcut at its worth would make it hoard offcuts that nobody will use, so only the dearest count.
 */
final class JointSearch {
  private static final int WIDTH = 40;
  private static final int NARROWEST = 4;
  private static final long STEPS = 30_000_000L;
  private static final double BREACH = 1_000;
  private static final double PATTERN = 0.03;
  private static final double PATTERN_WHEN_CALM = 0.5;
  private static final int CALM_WIDTH = 24;
  private static final double PER_JOINT = 0.001;

  private final List<Run> runs;
  private final Stock stock;
  private final JointRule rule;
  private final Candidates candidates;
  private final long joints;
  private double patternPenalty = PATTERN;

  JointSearch(List<Run> runs, Stock stock) {
    this.runs = runs;
    this.stock = stock;
    this.rule = new JointRule(runs, stock);
    this.candidates = new Candidates(runs, stock, rule);
    long shortest = stock.lengths[stock.lengths.length - 1];
    this.joints = runs.stream().mapToLong(run -> run.span() / shortest + 2).sum();
  }

  /**
   * Layouts worth cutting, the one preferred first. For boards of several lengths these are the one with the fewest packs, and
   * among them the fewest boards, and the one that uses up the packs most evenly, with and without more care for patterns.
   */
  List<RunLayout> proposals() {
    if (runs.isEmpty()) {
      return List.of(new RunLayout(runs, stock, new long[0][], 0));
    }
    List<LaidRuns> ways = search(affordable(WIDTH));
    LaidRuns best = best(ways);
    List<LaidRuns> found = new ArrayList<>(List.of(best));
    if (best.patterns > 0 && affordable(CALM_WIDTH) >= CALM_WIDTH) {
      patternPenalty = PATTERN_WHEN_CALM;
      List<LaidRuns> calm = search(CALM_WIDTH);
      ways = Stream.concat(ways.stream(), calm.stream()).toList();
      found.add(best(calm));
    }
    if (stock.isUniform()) {
      return List.of(layout(calmer(found)));
    }
    LaidRuns fewest = ways.stream().min(Comparator.<LaidRuns>comparingInt(way -> way.breaches).thenComparingInt(way -> stock.packs(way.opened))
        .thenComparingInt(way -> Arrays.stream(way.opened).sum()).thenComparingInt(way -> way.patterns)).orElseThrow();
    found.add(0, fewest);
    return found.stream().distinct().map(this::layout).toList();
  }

  /** The second of two ways if it takes as few boards and makes fewer H and stair patterns. */
  private LaidRuns calmer(List<LaidRuns> ways) {
    LaidRuns best = ways.get(0);
    LaidRuns calm = ways.get(ways.size() - 1);
    boolean better = calm.breaches <= best.breaches && calm.patterns < best.patterns
        && stock.weight(calm.opened) <= stock.weight(best.opened);
    return better ? calm : best;
  }

  private int affordable(int width) {
    return (int) Math.max(NARROWEST, Math.min(width, STEPS / (joints * 60)));
  }

  private RunLayout layout(LaidRuns best) {
    long[][] found = new long[runs.size()][];
    LaidRuns layer = best;
    for (int index = runs.size() - 1; index >= 0; index--) {
      found[index] = layer.joints;
      layer = layer.before;
    }
    return new RunLayout(runs, stock, found, best.breaches);
  }

  private List<LaidRuns> search(int width) {
    List<LaidRuns> ways = List.of(LaidRuns.first(stock));
    for (int index = 0; index < runs.size(); index++) {
      List<LaidRuns> next = new ArrayList<>();
      candidates.at(index);
      for (LaidRuns way : ways) {
        for (long[] places : candidates.of(index, runs.get(index), way)) {
          next.add(lay(index, places, way));
        }
      }
      ways = keep(next, width);
    }
    return ways;
  }

  private LaidRuns best(List<LaidRuns> ways) {
    LaidRuns best = ways.get(0);
    for (LaidRuns way : ways) {
      if (finalRank(way) < finalRank(best)) {
        best = way;
      }
    }
    return best;
  }

  private double finalRank(LaidRuns way) {
    return stock.weight(way.opened) + way.penalty;
  }

  private List<LaidRuns> keep(List<LaidRuns> all, int width) {
    LaidRuns[] sorted = all.toArray(new LaidRuns[0]);
    Arrays.sort(sorted, Comparator.comparingDouble(layer -> layer.rank));
    List<LaidRuns> kept = new ArrayList<>(width);
    for (LaidRuns layer : sorted) {
      if (kept.size() == width) {
        break;
      }
      boolean known = false;
      for (int i = kept.size() - 1; i >= 0 && !known && kept.get(i).rank == layer.rank; i--) {
        known = kept.get(i).sameHand(layer);
      }
      if (!known) {
        kept.add(layer);
      }
    }
    return kept;
  }

  private LaidRuns lay(int index, long[] joints, LaidRuns way) {
    Run run = runs.get(index);
    Hand hand = new Hand(stock, way);
    hand.lay(run, joints);
    int broken = rule.breaches(index, joints, neighbour -> way.jointsBack(index - neighbour));
    double penalty = way.penalty + PER_JOINT * joints.length;
    if (broken > 0) {
      long least = rule.leastOffset(index, joints, neighbour -> way.jointsBack(index - neighbour));
      double kept = stock.minimumOffset == 0 ? 1 : Math.min(1.0, (double) least / stock.minimumOffset);
      penalty += BREACH * broken + BREACH * (1 - kept);
      if (joints.length > 0 && stock.minimumPiece > 0) {
        double shorter = Math.min(Joints.startPiece(run, joints), Joints.endPiece(run, joints));
        penalty += BREACH * Math.max(0, 1 - shorter / stock.minimumPiece);
      }
    }
    int patterns = way.patterns + patterns(run, index, joints, way);
    LaidRuns layer = new LaidRuns(way, joints, hand.opened, hand.forStarts, hand.forEnds, way.breaches + broken, patterns,
        penalty + patternPenalty * (patterns - way.patterns));
    layer.rank(stock, runs.size() - 1 - index);
    return layer;
  }

  /** Whether the joints are in line with those two rows back, or step on as evenly as the two rows before, and how often. */
  private int patterns(Run run, int index, long[] joints, LaidRuns way) {
    if (joints.length == 0 || run.neighbourCount() != 1) {
      return 0;
    }
    int middle = run.neighbour(0);
    Run between = runs.get(middle);
    if (between.neighbourCount() != 1) {
      return 0;
    }
    return Patterns.ofThree(joints, way.jointsBack(index - middle), way.jointsBack(index - between.neighbour(0)), stock);
  }
}
