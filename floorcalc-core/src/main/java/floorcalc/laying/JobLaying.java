package floorcalc.laying;

import floorcalc.bays.ThroughBreaks;
import floorcalc.boards.CuttingPlan;
import floorcalc.boards.PieceWanted;
import floorcalc.boards.Run;
import floorcalc.boards.RunLayout;
import floorcalc.boards.SearchEffort;
import floorcalc.joints.JointPattern;
import floorcalc.materials.PackOrder;
import floorcalc.measure.Length;
import floorcalc.plan.FloorJob;
import floorcalc.rules.LayingRules;
import floorcalc.working.Calculated;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A whole job laid: rooms cut into rows, joints found, pieces cut from boards. Of the ways tried the one is kept that
 * breaks fewest rules, then takes fewest packs and of these fewest boards, then makes the nicer floor: fewest H and stair patterns, the larger smallest
 * offset, fewest cuts, the longest leftover; of equal ones the first, or among fixed patterns the one with fewest pieces.
 */
record JobLaying(FloorJob job, List<RoomLaying> rooms, List<Run> runs, RunLayout joints, List<List<ShapedPiece>> pieces,
    CuttingPlan cutting) {
  private static final int ANCHORS = 12;
  /** Boards laid in all while places of a fixed pattern are tried: on a floor of more than 25 000 boards fewer places are. */
  private static final long BOARDS_TRIED = 300_000;
  /** The same for the quick search, which first rows and directions are tried with: from ten thousand boards on. */
  private static final long BOARDS_TRIED_QUICKLY = 120_000;

  static JobLaying of(FloorJob job) {
    return FewestBoards.isAsked(job) ? new FewestBoards(job).best() : of(job, directions(job));
  }

  private static List<RoomRows> directions(FloorJob job) {
    return job.rooms().stream().map(room -> RoomRows.byWay(job, room, job.direction().fixed()
        .orElseGet(() -> Directions.ofLongestWall(room.outline().shell())))).toList();
  }

  /** Lays a job whose rows are settled, those of each room. */
  static JobLaying of(FloorJob job, List<RoomRows> rows) {
    List<String> names = Names.of(job.rooms());
    List<RoomLaying> rooms = new ArrayList<>();
    List<Run> runs = new ArrayList<>();
    int jobRow = 0;
    for (int i = 0; i < job.rooms().size(); i++) {
      RoomLaying laying = RoomLaying.of(job, job.rooms().get(i), names.get(i), rows.get(i), jobRow, runs);
      rooms.add(laying);
      jobRow += laying.rowCount();
    }
    if (isByPattern(job)) {
      return byPattern(job, rooms, runs);
    }
    JobLaying best = null;
    for (RunLayout layout : RunLayout.proposals(runs, job.board(), job.rules(), job.effort())) {
      JobLaying laying = laid(job, rooms, runs, layout);
      best = best == null || laying.compareTo(best) < 0 ? laying : best;
      if (best.joints.breaches() == 0 && best.cutting.boardCount() <= fewest(job, runs)) {
        return best.pairedAnew();
      }
    }
    JobLaying byHabit = laid(job, rooms, runs, RunLayout.habit(runs, job.board(), job.rules()));
    return (byHabit.compareTo(best) < 0 ? byHabit : best).pairedAnew();
  }

  /** The boards that runs of full width take at least, by length. */
  private static long fewest(FloorJob job, List<Run> runs) {
    double length = 0;
    for (Run run : runs) {
      length += run.length().toMillimetres();
    }
    return (long) StrictMath.ceil(length / job.board().longest().toMillimetres() - 1e-6);
  }

  private static boolean isByPattern(FloorJob job) {
    return job.pattern().kind() != JointPattern.Kind.FREE && job.board().pack().size() == 1;
  }

  /** Pieces laid until this was found: those of the floor, once for each place of a fixed pattern that was tried. */
  long piecesLaid() {
    return pieces.stream().mapToLong(List::size).sum() * (isByPattern(job) ? anchors(job, runs) : 1);
  }

  private static int anchors(FloorJob job, List<Run> runs) {
    long boards = job.effort() == SearchEffort.QUICK ? BOARDS_TRIED_QUICKLY : BOARDS_TRIED;
    return (int) Math.max(1, Math.min(ANCHORS, boards / Math.max(1, fewest(job, runs))));
  }

  private static JobLaying byPattern(FloorJob job, List<RoomLaying> rooms, List<Run> runs) {
    JobLaying best = null;
    int[] lines = patternRows(job, rooms, runs);
    long low = runs.isEmpty() ? 0 : runs.get(0).from();
    int anchors = anchors(job, runs);
    for (int i = 0; i < anchors; i++) {
      long anchor = low + job.board().longest().toNanometres() / ANCHORS * i;
      JobLaying laying = laid(job, rooms, runs, RunLayout.pattern(runs, job.board(), job.rules(), job.pattern(), anchor, lines));
      if (best == null || laying.isBetterThan(best)) {
        best = laying;
      }
    }
    return best.pairedAnew();
  }

  /** The row of the pattern that each run is in: with one start line, rows in line through a break are one. */
  private static int[] patternRows(FloorJob job, List<RoomLaying> rooms, List<Run> runs) {
    int[] lines = runs.stream().mapToInt(Run::row).toArray();
    for (RoomLaying room : rooms) {
      List<FrameRow> rows = room.bays().stream().flatMap(plan -> plan.bay().rows().stream()).toList();
      if (job.throughBreaks() == ThroughBreaks.ONE_START_LINE && !rows.isEmpty()) {
        long low = rows.stream().mapToLong(FrameRow::low).min().orElseThrow();
        for (FrameRow row : rows) {
          int line = rows.get(0).jobRow() + (int) ((row.low() - low) / job.board().laidPitch().toNanometres());
          row.runs().forEach(run -> lines[run.index()] = line);
        }
      }
    }
    return lines;
  }

  private static JobLaying laid(FloorJob job, List<RoomLaying> rooms, List<Run> runs, RunLayout joints) {
    List<List<ShapedPiece>> pieces = new ArrayList<>();
    List<PieceWanted> wanted = new ArrayList<>();
    for (RoomLaying room : rooms) {
      for (BayPlan plan : room.bays()) {
        List<ShapedPiece> ofBay = plan.bay().pieces(joints::jointsOf);
        pieces.add(ofBay);
        ofBay.forEach(piece -> wanted.add(piece.wanted()));
      }
    }
    return new JobLaying(job, rooms, runs, joints, pieces, CuttingPlan.fewestBoards(wanted, job.board(), job.rules()));
  }

  /** Less is better: rules broken, packs, boards, then what makes the nicer floor. As many boards of one length are as many packs. */
  private int compareTo(JobLaying other) {
    int order = Integer.compare(joints.breaches(), other.joints.breaches());
    order = order == 0 && job.board().pack().size() > 1 ? Integer.compare(packs(), other.packs()) : order;
    order = order == 0 ? Integer.compare(cutting.boardCount(), other.cutting.boardCount()) : order;
    return order == 0 ? Figures.of(pairedAnew()).compareNiceness(Figures.of(other.pairedAnew())) : order;
  }

  /** With fewer cuts and a longer leftover where that takes no board more; only what is kept or held against another needs it. */
  private JobLaying pairedAnew() {
    return new JobLaying(job, rooms, runs, joints, pieces, cutting.pairedAnew(job.board(), job.rules()));
  }

  boolean isBetterThan(JobLaying other) {
    int order = compareTo(other);
    return order < 0 || order == 0 && cutting.pieces().size() < other.cutting.pieces().size();
  }

  /** Whole packs to order, for the spare boards too. */
  int packs() {
    return order().value().packs();
  }

  Calculated<PackOrder> order() {
    int[] opened = cutting.boardsPerLength();
    Map<Length, Integer> used = new LinkedHashMap<>();
    for (int i = 0; i < opened.length; i++) {
      used.put(job.board().lengths().get(i), opened[i]);
    }
    return PackOrder.of(job.board(), used, job.rules().get(LayingRules.SPARE_SHARE));
  }

  List<BayPlan> bays() {
    return rooms.stream().flatMap(room -> room.bays().stream()).toList();
  }
}
