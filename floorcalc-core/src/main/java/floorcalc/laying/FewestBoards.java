package floorcalc.laying;

import floorcalc.bays.ThroughBreaks;
import floorcalc.boards.SearchEffort;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import floorcalc.rows.RowWay;
import floorcalc.rows.StartLine;
import floorcalc.rules.LayingRules;
import java.util.ArrayList;
import java.util.List;

/**
 * Chooses how the boards of each room run and where its rows begin, so that the floor takes the fewest boards.
 * <p>
 * Each room is laid alone along each direction worth trying, from each first row worth trying (see
 * {@link StartLine#worthTrying}), with the quick search. The best few are laid again with the effort that the job asks for,
 * beside the first row that the job's way gives; last, the whole job is laid with the chosen rows and with those, and the
 * better of the two is kept. So a row is only moved from where the way puts it if no more rules are broken and no more boards
 * are taken; where as many are taken, the wider narrowest strip counts.
 */
final class FewestBoards {
  private static final int FINISHED = 3;
  private static final int SHOWN = 8;

  private final FloorJob job;
  private final boolean choosesRows;

  FewestBoards(FloorJob job) {
    this.job = job;
    this.choosesRows = choosesRows(job);
  }

  static boolean isAsked(FloorJob job) {
    return job.direction().equals(DirectionChoice.FEWEST_BOARDS) || choosesRows(job);
  }

  private static boolean choosesRows(FloorJob job) {
    return job.rowWay() == RowWay.FEWEST_BOARDS
        || job.rowWay() == RowWay.AS_NEEDED && job.direction().equals(DirectionChoice.FEWEST_BOARDS);
  }

  /** A way laid out in full, and what came of it. */
  private record Laid(RowsTried tried, JobLaying laying) {
    static Laid of(FloorJob job, List<RoomRows> rows) {
      JobLaying laying = JobLaying.of(job, rows);
      return new Laid(RowsTried.of(rows, laying), laying);
    }

    Laid orFewer(Laid other) {
      return other.tried.beats(tried) ? other : this;
    }
  }

  JobLaying best() {
    List<RoomRows> chosen = new ArrayList<>();
    for (Room room : job.rooms()) {
      chosen.add(ofRoom(room));
    }
    List<RoomRows> byWay = chosen.stream().map(RoomRows::byWay).toList();
    Laid best = Laid.of(job, byWay);
    return chosen.equals(byWay) ? best.laying : best.orFewer(Laid.of(job, chosen)).laying;
  }

  /** The best rows found for a room alone. */
  private RoomRows ofRoom(Room room) {
    FloorJob alone = job.withRooms(List.of(room));
    FloorJob quick = alone.withEffort(SearchEffort.QUICK);
    List<RowsTried> tried = new ArrayList<>();
    List<RowsTried> byWay = new ArrayList<>();
    for (Direction direction : directions(room)) {
      Laid laid = Laid.of(quick, List.of(RoomRows.byWay(job, room, direction)));
      byWay.add(laid.tried);
      tried.add(laid.tried);
      if (choosesRows) {
        tried.addAll(lines(quick, laid));
      }
    }
    if (tried.size() == 1) {
      return byWay.get(0).rows().get(0);
    }
    List<RowsTried> ranked = tried.stream().sorted(RowsTried.BEST_FIRST).limit(SHOWN).toList();
    List<RowsTried> finished = new ArrayList<>();
    Laid best = null;
    for (RowsTried first : byWay) {
      Laid bestAlong = null;
      for (RowsTried worth : ranked.subList(0, Math.min(FINISHED, ranked.size()))) {
        if (worth.isAlong(first)) {
          bestAlong = bestAlong == null ? finish(alone, first.rows(), finished) : bestAlong;
          bestAlong = worth.equals(first) ? bestAlong : bestAlong.orFewer(finish(alone, worth.rows(), finished));
        }
      }
      boolean better = bestAlong != null && (best == null || bestAlong.laying.isBetterThan(best.laying));
      best = better ? bestAlong : best;
    }
    return best.tried.rows().get(0).because(RowsTried.comparison(ranked, finished, best.tried));
  }

  private static Laid finish(FloorJob alone, List<RoomRows> rows, List<RowsTried> finished) {
    Laid laid = Laid.of(alone, rows);
    finished.add(laid.tried);
    return laid;
  }

  /** Tries first rows, bay by bay; only ways that break no more rules than the first. */
  private static List<RowsTried> lines(FloorJob quick, Laid first) {
    List<RowsTried> tried = new ArrayList<>();
    List<BayPlan> bays = first.laying.bays();
    RowsTried best = first.tried;
    int moved = quick.throughBreaks() == ThroughBreaks.ONE_START_LINE ? 1 : bays.size();
    LinesTried limit = LinesTried.of(first.laying.rooms().get(0).rowCount(), moved, first.laying.piecesLaid());
    for (int bay = 0; bay < limit.bays(); bay++) {
      Frame frame = bays.get(bay).bay().frame();
      List<Length> worth = StartLine.worthTrying(MeasuredStops.of(first.laying.rooms().get(0).room(), frame),
          Length.ofNanometres(frame.low()),
          quick.board().laidPitch(), quick.rules().value(LayingRules.MINIMUM_ROW_WIDTH));
      RowsTried before = best;
      for (Length line : worth.subList(0, Math.min(limit.lines(), worth.size()))) {
        if (line.equals(before.firstRows().get(bay))) {
          continue;
        }
        RowsTried next = Laid.of(quick, List.of(before.rows().get(0).with(before.firstRows(), bay, line))).tried;
        if (next.breaks() <= first.tried.breaks()) {
          tried.add(next);
          best = next.beats(best) ? next : best;
        }
      }
    }
    return tried;
  }

  private List<Direction> directions(Room room) {
    var shell = room.outline().shell();
    return job.direction().fixed().map(List::of).orElseGet(() -> job.direction().equals(DirectionChoice.FEWEST_BOARDS)
        ? Directions.worthTrying(shell) : List.of(Directions.ofLongestWall(shell)));
  }
}
