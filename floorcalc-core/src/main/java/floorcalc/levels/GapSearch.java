package floorcalc.levels;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/** Finds for a limit and a direction the place of a grid that is furthest over the limit, or nearest to it. Not thread-safe. */
final class GapSearch {
  private final LevelGrid grid;
  private final List<SpotLevel> spots;
  private final double[] heights;
  private final Chords chords = new Chords();

  GapSearch(LevelGrid grid, List<SpotLevel> spots) {
    this.grid = grid;
    this.spots = spots;
    this.heights = new double[spots.size()];
    for (int i = 0; i < heights.length; i++) {
      heights[i] = spots.get(i).height().minus(spots.get(0).height()).toNanometres();
    }
  }

  /** The worst gap of a direction; empty if no line of it has three readings within the reach of the limit. */
  Optional<GridGap> worst(Limit limit, LineWay way) {
    double most = Double.NEGATIVE_INFINITY;
    GridLine where = null;
    int middle = 0;
    double depth = 0;
    double from = 0;
    double to = 0;
    for (GridLine line : grid.lines) {
      if (line.way() == way && line.isJudgedBy(limit.reach())) {
        for (int i = 1; i < line.size() - 1; i++) {
          if (chords.search(line, i, heights, limit) && chords.excess > most + Chords.TINY) {
            most = chords.excess;
            where = line;
            middle = i;
            depth = chords.depth;
            from = chords.from;
            to = chords.to;
          }
        }
      }
    }
    if (where == null) {
      return Optional.empty();
    }
    return Optional.of(new GridGap(way, where.number(), Length.ofNanometres(Math.round(limit.reach())),
        spots.get(where.nodes()[middle]).place(), place(where, from), place(where, to), nearest(depth),
        nearest(depth - most)));
  }

  private static Length nearest(double nanometres) {
    return Length.ofNanometres(new BigDecimal(nanometres).setScale(0, RoundingMode.HALF_EVEN).longValueExact());
  }

  private Point place(GridLine line, double along) {
    int left = 0;
    while (left + 2 < line.size() && line.at()[left + 1] <= along) {
      left++;
    }
    double share = (along - line.at()[left]) / (line.at()[left + 1] - line.at()[left]);
    Point a = spots.get(line.nodes()[left]).place();
    Point b = spots.get(line.nodes()[left + 1]).place();
    return Point.ofNanometres(a.xNanometres() + Math.round(share * (b.xNanometres() - a.xNanometres())),
        a.yNanometres() + Math.round(share * (b.yNanometres() - a.yNanometres())));
  }
}
