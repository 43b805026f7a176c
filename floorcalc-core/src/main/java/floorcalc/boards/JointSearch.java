package floorcalc.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

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

  RunLayout best() {
    return runs.isEmpty() ? new RunLayout(runs, stock, new long[0][], 0) : layout(calmer(search(affordable(WIDTH))));
  }

  /** Another way with as few boards and fewer H and stair patterns, if one is found. */
  private Layer calmer(Layer best) {
    if (best.patterns == 0 || affordable(CALM_WIDTH) < CALM_WIDTH) {
      return best;
    }
    patternPenalty = PATTERN_WHEN_CALM;
    Layer calm = search(CALM_WIDTH);
    boolean better = calm.breaches <= best.breaches && calm.patterns < best.patterns
        && stock.weight(calm.opened) <= stock.weight(best.opened);
    return better ? calm : best;
  }

  private int affordable(int width) {
    return (int) Math.max(NARROWEST, Math.min(width, STEPS / (joints * 60)));
  }

  private RunLayout layout(Layer best) {
    long[][] found = new long[runs.size()][];
    Layer layer = best;
    for (int index = runs.size() - 1; index >= 0; index--) {
      found[index] = layer.joints;
      layer = layer.before;
    }
    return new RunLayout(runs, stock, found, best.breaches);
  }

  private Layer search(int width) {
    List<Layer> ways = List.of(Layer.first(stock));
    for (int index = 0; index < runs.size(); index++) {
      List<Layer> next = new ArrayList<>();
      candidates.at(index);
      for (Layer way : ways) {
        for (long[] places : candidates.of(index, runs.get(index), way)) {
          next.add(lay(index, places, way));
        }
      }
      ways = keep(next, width);
    }
    Layer best = ways.get(0);
    for (Layer way : ways) {
      if (finalRank(way) < finalRank(best)) {
        best = way;
      }
    }
    return best;
  }

  private double finalRank(Layer way) {
    return stock.weight(way.opened) + way.penalty;
  }

  private List<Layer> keep(List<Layer> all, int width) {
    Layer[] sorted = all.toArray(new Layer[0]);
    Arrays.sort(sorted, Comparator.comparingDouble(layer -> layer.rank));
    List<Layer> kept = new ArrayList<>(width);
    for (Layer layer : sorted) {
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

  private Layer lay(int index, long[] joints, Layer way) {
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
    int patterns = way.patterns + (makesPattern(run, index, joints, way) ? 1 : 0);
    Layer layer = new Layer(way, joints, hand.opened, hand.forStarts, hand.forEnds, way.breaches + broken, patterns,
        penalty + patternPenalty * (patterns - way.patterns));
    layer.rank(stock, runs.size() - 1 - index);
    return layer;
  }

  /** Tells whether the joints are in line with those two rows back, or step on as evenly as the two rows before. */
  private boolean makesPattern(Run run, int index, long[] joints, Layer way) {
    if (joints.length == 0 || run.neighbourCount() != 1) {
      return false;
    }
    int first = run.neighbour(0);
    Run between = runs.get(first);
    if (between.neighbourCount() != 1) {
      return false;
    }
    long[] middle = way.jointsBack(index - first);
    long[] other = way.jointsBack(index - between.neighbour(0));
    if (middle.length == 0 || other.length == 0) {
      return false;
    }
    return Patterns.isPattern(joints[0], middle[0], other[0], stock.longest());
  }
}
