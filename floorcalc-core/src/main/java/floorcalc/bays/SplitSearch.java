package floorcalc.bays;

import floorcalc.bays.BreakReasons.Because;
import floorcalc.bays.ExpansionBreak.Reason;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.rules.AtDoorways;
import floorcalc.rules.LayingRules;
import floorcalc.working.Calculated;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** One search for the breaks of a room, from the lines that may be taken to the breaks with their reasons. */
final class SplitSearch {
  /** Sets of cells that are judged, and bays that are tried, before a search is broken off. */
  static final long MOST_GROWN = 500_000;
  static final long MOST_TRIED = 1_000_000;
  /** Costs are lengths in 1024ths of a nanometre, so that of equal lengths one can be preferred. */
  private static final long SCALE = 1024;

  private final Outline room;
  private final List<Opening> openings;
  private final LayingRules rules;
  private final SplitLimits limits;
  private final RoomShape shape;

  SplitSearch(Outline room, Direction boards, List<Opening> openings, LayingRules rules) {
    this.room = room;
    this.openings = openings;
    this.rules = rules;
    this.limits = SplitLimits.of(rules);
    this.shape = new RoomShape(room, boards);
  }

  Calculated<BaySplit> run() {
    List<Cut> cuts = new ArrayList<>(new OpeningCuts(shape).of(openings));
    boolean doorways = !openings.isEmpty() && rules.value(LayingRules.AT_DOORWAYS) == AtDoorways.BREAK;
    if (!doorways && isOneBay()) {
      return result(List.of(), true);
    }
    CornerCuts corners = new CornerCuts(shape, limits);
    List<Cut> fromCorners = corners.all();
    List<Cut> forRuns = RunCuts.of(shape, limits);
    Tried all = new Tried(cuts, fromCorners, forRuns, doorways);
    Optional<Found> best = all.search.isComplete() ? Optional.of(all.found()) : Optional.empty();
    if (best.isPresent() && all.search.isProven()) {
      return result(best.get().breaks(), !corners.isThinned());
    }
    Found few = new Tried(cuts, CornerCuts.cheapest(fromCorners), forRuns, doorways).found();
    return result(best.map(found -> found.orBetter(few)).orElse(few).breaks(), false);
  }

  /** Breaks, and how many of the bays between them are still not free or too long. */
  private record Found(List<ExpansionBreak> breaks, int notFree) {
    Found orBetter(Found other) {
      return other.notFree < notFree || other.notFree == notFree && other.length().compareTo(length()) < 0 ? other : this;
    }

    private Length length() {
      return breaks.stream().map(ExpansionBreak::length).reduce(Length.ZERO, Length::plus);
    }
  }

  private boolean isOneBay() {
    double[] box = {Double.MAX_VALUE, -Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE};
    for (int i = shape.first[0]; i < shape.first[1]; i++) {
      double u = shape.along(shape.xs[i], shape.ys[i]);
      double w = shape.across(shape.xs[i], shape.ys[i]);
      box[0] = Math.min(box[0], u);
      box[1] = Math.max(box[1], u);
      box[2] = Math.min(box[2], w);
      box[3] = Math.max(box[3], w);
    }
    return box[1] - box[0] <= limits.along() && box[3] - box[2] <= limits.across() && BayFreedom.isFree(shape, limits);
  }

  private Calculated<BaySplit> result(List<ExpansionBreak> breaks, boolean proven) {
    BaySplit split = new BaySplit(BreakEnds.parts(room, breaks), proven);
    return Calculated.of(split, SplitWorking.steps(split), SplitWorking.findings(split, rules));
  }

  /** The search over one choice of lines. */
  private final class Tried {
    private final Mesh mesh;
    private final boolean[] fixed;
    private final PartCheck check;
    private final PartSearch search;

    Tried(List<Cut> doors, List<Cut> fromCorners, List<Cut> forRuns, boolean doorways) {
      List<Cut> cuts = new ArrayList<>(doors);
      cuts.addAll(fromCorners);
      cuts.addAll(forRuns);
      mesh = new Mesh(shape, new MeshNodes(shape, cuts));
      fixed = new boolean[mesh.cutOf.length];
      for (int e = 0; e < fixed.length; e++) {
        fixed[e] = doorways && opening(e) >= 0;
      }
      check = new PartCheck(mesh, limits, fixed);
      search = new PartSearch(mesh, check, costs(mesh, cuts), fixed, MOST_GROWN, MOST_TRIED);
    }

    Found found() {
      List<BitSet> bays = search.bays();
      return new Found(breaks(bays),
          (int) bays.stream().filter(bay -> check.judge(bay) != PartCheck.Verdict.FREE).count());
    }

    /** The opening that an edge lies in, -1 if none: openings are the first cuts. */
    private int opening(int edge) {
      return mesh.cutOf[edge] < openings.size() ? mesh.cutOf[edge] : -1;
    }

    /** Whether an edge parts two bays. Where walls lie nearer to each other than nodes do, a side of a cut may be off the floor: it parts nothing. */
    private boolean parts(int edge, int[] bayOf) {
      int left = mesh.cell[2 * edge];
      int right = mesh.cell[2 * edge + 1];
      return left >= 0 && right >= 0 && bayOf[left] != bayOf[right];
    }

    private List<ExpansionBreak> breaks(List<BitSet> bays) {
      int[] bayOf = new int[mesh.cells];
      for (int b = 0; b < bays.size(); b++) {
        int bay = b;
        bays.get(b).stream().forEach(c -> bayOf[c] = bay);
      }
      boolean[] isBreak = new boolean[mesh.cutOf.length];
      for (int e = 0; e < isBreak.length; e++) {
        isBreak[e] = fixed[e] || mesh.cutOf[e] >= 0 && parts(e, bayOf);
      }
      BreakRuns runs = new BreakRuns(mesh, isBreak);
      BreakReasons reasons = new BreakReasons(mesh, check, limits, rules);
      List<ExpansionBreak> breaks = new ArrayList<>();
      for (int[] run : runs.all()) {
        int door = opening(run[0] / 2);
        Because because = fixed[run[0] / 2]
            ? new Because(Reason.DOORWAY, "doorway " + openings.get(door).name() + ": the rules ask for a break at each doorway")
            : reasons.of(run, bays);
        breaks.add(new ExpansionBreak(place(mesh.from[run[0]]), place(runs.end(run)), because.reason(),
            door >= 0 && !fixed[run[0] / 2] ? "in doorway " + openings.get(door).name() + ": " + because.text() : because.text()));
      }
      return breaks;
    }

    private Point place(int node) {
      return shape.point(mesh.xs[node], mesh.ys[node]);
    }
  }

  private static long[] costs(Mesh mesh, List<Cut> cuts) {
    long[] costs = new long[mesh.cutOf.length];
    for (int e = 0; e < costs.length; e++) {
      if (mesh.cutOf[e] >= 0) {
        Cut cut = cuts.get(mesh.cutOf[e]);
        double length = mesh.length(2 * e);
        double counted = cut.length() == 0 ? length : length * cut.counted() / cut.length();
        costs[e] = (long) StrictMath.rint(counted) * SCALE + cut.kind().ordinal();
      }
    }
    return costs;
  }
}
