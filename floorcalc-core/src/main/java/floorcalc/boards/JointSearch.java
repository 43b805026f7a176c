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
  private static final int WIDEST = 40;
  private static final int NARROWEST = 6;
  private static final long STEPS = 40_000_000L;
  private static final double BREACH = 1_000;
  private static final double IN_LINE = 0.03;
  private static final double PER_JOINT = 0.001;

  private final List<Run> runs;
  private final Stock stock;
  private final JointRule rule;
  private final Candidates candidates;
  private final int width;

  JointSearch(List<Run> runs, Stock stock) {
    this.runs = runs;
    this.stock = stock;
    this.rule = new JointRule(runs, stock);
    this.candidates = new Candidates(stock, rule);
    long joints = 1;
    long shortest = stock.lengths[stock.lengths.length - 1];
    for (Run run : runs) {
      joints += run.span() / shortest + 2;
    }
    this.width = (int) Math.max(NARROWEST, Math.min(WIDEST, STEPS / (joints * 60)));
  }

  RunLayout best() {
    List<Layer> ways = List.of(Layer.first(stock));
    for (int index = 0; index < runs.size(); index++) {
      List<Layer> next = new ArrayList<>();
      candidates.at(index);
      for (Layer way : ways) {
        for (long[] joints : candidates.of(index, runs.get(index), way)) {
          next.add(lay(index, joints, way));
        }
      }
      ways = keep(next);
    }
    Layer best = ways.get(0);
    for (Layer way : ways) {
      if (finalRank(way) < finalRank(best)) {
        best = way;
      }
    }
    long[][] joints = new long[runs.size()][];
    Layer layer = best;
    for (int index = runs.size() - 1; index >= 0; index--) {
      joints[index] = layer.joints;
      layer = layer.before;
    }
    return new RunLayout(joints, best.breaches);
  }

  private double finalRank(Layer way) {
    return stock.weight(way.opened) + way.penalty;
  }

  private List<Layer> keep(List<Layer> all) {
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
    penalty += inLine(run, index, joints, way);
    Layer layer = new Layer(way, joints, hand.opened, hand.forStarts, hand.forEnds, way.breaches + broken, penalty);
    layer.rank(stock);
    return layer;
  }

  /** A small penalty for joints in line with those two rows back, and for equal steps over three rows. */
  private double inLine(Run run, int index, long[] joints, Layer way) {
    if (joints.length == 0 || run.neighbourCount() != 1) {
      return 0;
    }
    int first = run.neighbour(0);
    Run between = runs.get(first);
    if (between.neighbourCount() != 1) {
      return 0;
    }
    long[] middle = way.jointsBack(index - first);
    long[] other = way.jointsBack(index - between.neighbour(0));
    if (middle.length == 0 || other.length == 0) {
      return 0;
    }
    long board = stock.longest();
    long step = Math.floorMod(joints[0] - middle[0], board);
    long stepBefore = Math.floorMod(middle[0] - other[0], board);
    boolean line = Math.floorMod(joints[0] - other[0], board) == 0;
    return line || step == stepBefore ? IN_LINE : 0;
  }
}
