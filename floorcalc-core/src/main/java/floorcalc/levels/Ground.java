package floorcalc.levels;

import java.util.ArrayList;
import java.util.List;

/**
 * A grid with its limits: what breaks them at given heights, and who is near whom. Not thread-safe.
 */
final class Ground {
  final LevelGrid grid;
  final List<Limit> limits;
  private final double reach;
  private final Chords chords = new Chords();

  Ground(LevelGrid grid, List<Limit> limits) {
    this.grid = grid;
    this.limits = List.copyOf(limits);
    this.reach = limits.stream().mapToDouble(Limit::reach).max().orElse(0);
  }

  /** The chord over a reading that breaks a limit most, among the lines through it; null if none breaks one by so much. */
  ChordRow worst(int node, double[] heights, double tolerated) {
    ChordRow worst = null;
    double most = tolerated;
    for (ChordRow row : broken(node, heights, tolerated)) {
      double excess = row.excess(heights);
      if (worst == null || excess > most) {
        worst = row;
        most = excess;
      }
    }
    return worst;
  }

  /** For each line through a reading the chord that breaks a limit most. */
  List<ChordRow> broken(int node, double[] heights, double tolerated) {
    List<ChordRow> rows = new ArrayList<>();
    for (LevelGrid.Seat seat : grid.seats.get(node)) {
      double most = tolerated;
      ChordRow row = null;
      for (Limit limit : limits) {
        if (seat.line().isJudgedBy(limit.reach()) && chords.search(seat.line(), seat.at(), heights, limit)
            && chords.excess > most) {
          most = chords.excess;
          row = ChordRow.of(seat.line(), seat.at(), chords.from, chords.to, chords.depth - chords.excess);
        }
      }
      if (row != null) {
        rows.add(row);
      }
    }
    return rows;
  }

  /** Tells whether a reading keeps every limit. */
  boolean isKept(int node, double[] heights) {
    for (LevelGrid.Seat seat : grid.seats.get(node)) {
      for (Limit limit : limits) {
        if (seat.line().isJudgedBy(limit.reach()) && chords.search(seat.line(), seat.at(), heights, limit)
            && chords.excess > Chords.TINY) {
          return false;
        }
      }
    }
    return true;
  }

  /** Readings over which a chord may lean on a reading, itself not among them. */
  List<Integer> near(int node) {
    List<Integer> near = new ArrayList<>();
    for (LevelGrid.Seat seat : grid.seats.get(node)) {
      double[] at = seat.line().at();
      // An end of an edge between two readings leans on both, so the reading beyond the reach may be touched too.
      double far = reach + Math.max(seat.at() > 0 ? at[seat.at()] - at[seat.at() - 1] : 0,
          seat.at() + 1 < at.length ? at[seat.at() + 1] - at[seat.at()] : 0);
      for (int i = seat.at() - 1; i >= 0 && at[seat.at()] - at[i] <= far; i--) {
        near.add(seat.line().nodes()[i]);
      }
      for (int i = seat.at() + 1; i < at.length && at[i] - at[seat.at()] <= far; i++) {
        near.add(seat.line().nodes()[i]);
      }
    }
    return near;
  }

  /** By how much a height has to rise at least for every limit to be kept, in whole steps; 0 if it keeps them. */
  long missing(int node, double[] heights, long step) {
    long most = 0;
    for (LevelGrid.Seat seat : grid.seats.get(node)) {
      for (Limit limit : limits) {
        if (seat.line().isJudgedBy(limit.reach()) && chords.search(seat.line(), seat.at(), heights, limit)
            && chords.excess > Chords.TINY) {
          double least = (chords.excess / (1 - chords.own) - Chords.TINY) / step;
          most = Math.max(most, (long) Math.ceil(least) * step);
        }
      }
    }
    return most;
  }
}
