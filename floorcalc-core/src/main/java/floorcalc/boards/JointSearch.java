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
  private static final int[] WIDTHS = {8, 24, 64, 160};
  private static final int FIRST_WIDTH = 12;
  private static final int NARROWEST = 4;
  private static final long STEPS = 30_000_000L;
  private static final int MOST_GUIDED = 4_000;
  private static final double BREACH = 1_000;
  private static final double PATTERN = 0.03;
  private static final double PATTERN_WHEN_CALM = 0.5;
  private static final int CALM_WIDTH = 24;
  /** Joints this near are in line, steps this near are equal; see {@code floorcalc.joints.JointLayout}. */
  private static final long IN_LINE = 2_000_000;
  private static final long EQUAL_STEPS = 3_000_000;
  private static final double PER_JOINT = 0.001;

  private final List<Run> runs;
  private final Stock stock;
  private final JointRule rule;
  private final Candidates candidates;
  private final long joints;
  private Guide guide;
  /** Ways that must take more boards than this, or break a rule, are given up. */
  private int limit = Integer.MAX_VALUE;
  private double patternPenalty = PATTERN;

  JointSearch(List<Run> runs, Stock stock) {
    this.runs = runs;
    this.stock = stock;
    this.rule = new JointRule(runs, stock);
    this.candidates = new Candidates(runs, stock, rule);
    this.guide = Guide.byLength(stock);
    long shortest = stock.lengths[stock.lengths.length - 1];
    this.joints = runs.stream().mapToLong(run -> run.span() / shortest + 2).sum();
  }

  /** A quick search first; where its boards are not proven the fewest, wider ones guided by prices. */
  RunLayout best() {
    return runs.isEmpty() ? new RunLayout(new long[0][], 0) : layout(calmer(fewest()));
  }

  private Layer fewest() {
    Layer best = search(affordable(FIRST_WIDTH));
    if (!stock.isUniform() || best.breaches > 0 || !PriceList.isOfUse(stock) || runs.size() > MOST_GUIDED
        || boards(best) <= byLength()) {
      return best;
    }
    double[] all = new double[runs.size()];
    Arrays.fill(all, 1);
    PriceGame game = new PriceGame(runs, all, stock);
    int bound = game.play(boards(best));
    guide = Guide.byPrices(game);
    for (int i = 0; i < WIDTHS.length && boards(best) > bound; i++) {
      if (affordable(WIDTHS[i]) == WIDTHS[i]) {
        limit = boards(best) - 1;
        Layer wider = search(WIDTHS[i]);
        if (wider != null && finalRank(wider) < finalRank(best)) {
          best = wider;
        }
      }
    }
    return best;
  }

  /** Another way with as few boards and fewer H and stair patterns, if one is found. */
  private Layer calmer(Layer best) {
    if (best.patterns == 0 || affordable(CALM_WIDTH) < CALM_WIDTH) {
      return best;
    }
    patternPenalty = PATTERN_WHEN_CALM;
    if (limit < Integer.MAX_VALUE) {
      limit = boards(best);
    }
    Layer calm = search(CALM_WIDTH);
    boolean better = calm != null && calm.breaches <= best.breaches && calm.patterns < best.patterns
        && (stock.isUniform() ? boards(calm) <= boards(best) : stock.weight(calm.opened) <= stock.weight(best.opened));
    return better ? calm : best;
  }

  private int affordable(int width) {
    return (int) Math.max(NARROWEST, Math.min(width, STEPS / (joints * 60)));
  }

  private int byLength() {
    double sum = 0;
    for (Run run : runs) {
      sum += run.span() + (double) stock.kerf * ((run.span() - 1) / stock.longest() + 1);
    }
    return (int) StrictMath.ceil(sum / (stock.longest() + stock.kerf) - 1e-9);
  }

  private RunLayout layout(Layer best) {
    long[][] found = new long[runs.size()][];
    Layer layer = best;
    for (int index = runs.size() - 1; index >= 0; index--) {
      found[index] = layer.joints;
      layer = layer.before;
    }
    return new RunLayout(found, best.breaches);
  }

  private Layer search(int width) {
    List<Layer> ways = List.of(Layer.first(stock));
    for (int index = 0; index < runs.size(); index++) {
      List<Layer> next = new ArrayList<>();
      candidates.at(index);
      for (Layer way : ways) {
        for (long[] places : candidates.of(index, runs.get(index), way)) {
          for (Hand.Fresh fresh : fresh(index, places, way)) {
            Layer layer = lay(index, places, way, fresh);
            if (layer.rank < Double.MAX_VALUE) {
              next.add(layer);
            }
          }
        }
      }
      ways = keep(next, width);
      if (ways.isEmpty()) {
        return null;
      }
    }
    Layer best = ways.get(0);
    for (Layer way : ways) {
      if (finalRank(way) < finalRank(best)) {
        best = way;
      }
    }
    return best;
  }

  /** Opening a board although an offcut would do is only worth trying in a guided search, and where there is an offcut. */
  private List<Hand.Fresh> fresh(int index, long[] places, Layer way) {
    if (limit == Integer.MAX_VALUE || places.length == 0) {
      return List.of(Hand.Fresh.NONE);
    }
    Run run = runs.get(index);
    List<Hand.Fresh> ways = new ArrayList<>(3);
    ways.add(Hand.Fresh.NONE);
    if (Layer.shortestFor(way.forStarts, Joints.startPiece(run, places)) >= 0) {
      ways.add(Hand.Fresh.START);
    }
    if (Layer.shortestFor(way.forEnds, Joints.endPiece(run, places)) >= 0) {
      ways.add(Hand.Fresh.END);
    }
    return ways;
  }

  private double finalRank(Layer way) {
    return (stock.isUniform() ? boards(way) : stock.weight(way.opened)) + way.penalty;
  }

  /** Boards that a whole way takes when its end and start pieces are paired as well as can be. */
  private int boards(Layer way) {
    long[] ends = new long[runs.size()];
    long[] starts = new long[runs.size()];
    int endCount = 0;
    int startCount = 0;
    long whole = 0;
    Layer layer = way;
    for (int index = runs.size() - 1; index >= 0; index--, layer = layer.before) {
      long[] places = layer.joints;
      Run run = runs.get(index);
      if (places.length == 0 && run.span() < stock.longest()) {
        return way.opened[0];
      }
      long start = Joints.startPiece(run, places);
      long end = places.length == 0 ? stock.longest() : Joints.endPiece(run, places);
      whole += Math.max(0, places.length - 1);
      if (start == stock.longest()) {
        whole++;
      } else {
        starts[startCount++] = start;
      }
      if (end < stock.longest()) {
        ends[endCount++] = end;
      } else if (places.length > 0) {
        whole++;
      }
    }
    return (int) whole + startCount + endCount
        - Pairs.most(Arrays.copyOf(ends, endCount), Arrays.copyOf(starts, startCount), stock.longest() - stock.kerf);
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

  private Layer lay(int index, long[] joints, Layer way, Hand.Fresh fresh) {
    Run run = runs.get(index);
    Hand hand = new Hand(stock, way);
    hand.lay(run, joints, fresh);
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
    layer.rank(stock, guide, index, runs.size(), run.from());
    if (limit < Integer.MAX_VALUE && (layer.breaches > 0 || layer.atLeast(guide, index, run.from()) > limit + 1e-6)) {
      layer.rank = Double.MAX_VALUE;
    }
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
    long step = joints[0] - middle[0];
    long stepBefore = middle[0] - other[0];
    return aroundBoard(step + stepBefore) <= IN_LINE || aroundBoard(step - stepBefore) <= EQUAL_STEPS;
  }

  /** The distance to the nearest whole number of boards. */
  private long aroundBoard(long length) {
    long over = Math.floorMod(length, stock.longest());
    return Math.min(over, stock.longest() - over);
  }
}
