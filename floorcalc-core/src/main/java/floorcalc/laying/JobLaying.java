package floorcalc.laying;

import floorcalc.boards.CuttingPlan;
import floorcalc.boards.PieceWanted;
import floorcalc.boards.Run;
import floorcalc.boards.RunLayout;
import floorcalc.joints.JointPattern;
import floorcalc.outline.Direction;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import java.util.ArrayList;
import java.util.List;

/**
 * A whole job laid: rooms cut into rows, joints found, pieces cut from boards. Of the ways tried the one is kept that
 * breaks fewest rules, then opens fewest boards, then makes fewest H and stair patterns; of equal ones the first, or among
 * fixed patterns the one with fewest pieces.
 */
record JobLaying(FloorJob job, List<RoomLaying> rooms, List<Run> runs, RunLayout joints, List<List<ShapedPiece>> pieces,
    CuttingPlan cutting) {
  private static final int ANCHORS = 12;

  static JobLaying of(FloorJob job) {
    List<String> names = Names.of(job.rooms());
    List<RoomLaying> rooms = new ArrayList<>();
    List<Run> runs = new ArrayList<>();
    int jobRow = 0;
    for (int i = 0; i < job.rooms().size(); i++) {
      Room room = job.rooms().get(i);
      RoomLaying laying = RoomLaying.of(job, room, names.get(i), direction(job, room), jobRow, runs);
      rooms.add(laying);
      jobRow += laying.rowCount();
    }
    if (job.pattern().kind() != JointPattern.Kind.FREE && job.board().pack().size() == 1) {
      return byPattern(job, rooms, runs);
    }
    JobLaying best = null;
    for (RunLayout layout : RunLayout.proposals(runs, job.board(), job.rules(), job.effort())) {
      JobLaying laying = laid(job, rooms, runs, layout);
      best = best == null || laying.compareTo(best) < 0 ? laying : best;
      if (best.joints.breaches() == 0 && best.cutting.boardCount() <= fewest(job, runs)) {
        return best;
      }
    }
    JobLaying byHabit = laid(job, rooms, runs, RunLayout.habit(runs, job.board(), job.rules()));
    return byHabit.compareTo(best) < 0 ? byHabit : best;
  }

  /** The boards that runs of full width take at least, by length. */
  private static long fewest(FloorJob job, List<Run> runs) {
    double length = 0;
    for (Run run : runs) {
      length += run.length().toMillimetres();
    }
    return (long) StrictMath.ceil(length / job.board().longest().toMillimetres() - 1e-6);
  }

  private static Direction direction(FloorJob job, Room room) {
    if (job.direction().fixed().isPresent()) {
      return job.direction().fixed().get();
    }
    if (job.direction().equals(DirectionChoice.LONGEST_WALL)) {
      return Directions.ofLongestWall(room.outline().shell());
    }
    Direction best = null;
    JobLaying bestLaying = null;
    for (Direction direction : Directions.worthTrying(room.outline().shell())) {
      JobLaying laying = of(job.withRooms(List.of(room)).withDirection(DirectionChoice.of(direction)));
      if (bestLaying == null || laying.isBetterThan(bestLaying)) {
        best = direction;
        bestLaying = laying;
      }
    }
    return best;
  }

  private static JobLaying byPattern(FloorJob job, List<RoomLaying> rooms, List<Run> runs) {
    JobLaying best = null;
    long low = runs.isEmpty() ? 0 : runs.get(0).from();
    for (int i = 0; i < ANCHORS; i++) {
      long anchor = low + job.board().longest().toNanometres() / ANCHORS * i;
      JobLaying laying = laid(job, rooms, runs, RunLayout.pattern(runs, job.board(), job.rules(), job.pattern(), anchor));
      if (best == null || laying.isBetterThan(best)) {
        best = laying;
      }
    }
    return best;
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
    return new JobLaying(job, rooms, runs, joints, pieces, CuttingPlan.of(wanted, job.board(), job.rules()));
  }

  /** Less is better: rules broken, packs, H and stair patterns. */
  private int compareTo(JobLaying other) {
    int order = Integer.compare(joints.breaches(), other.joints.breaches());
    order = order == 0 ? Double.compare(packs(), other.packs()) : order;
    return order == 0 ? Integer.compare(joints.patterns(), other.joints.patterns()) : order;
  }

  private boolean isBetterThan(JobLaying other) {
    int order = compareTo(other);
    return order < 0 || order == 0 && cutting.pieces().size() < other.cutting.pieces().size();
  }

  /** Packs opened, as a fraction of the length that runs out first. */
  private double packs() {
    int[] opened = cutting.boardsPerLength();
    double most = 0;
    for (int i = 0; i < opened.length; i++) {
      most = Math.max(most, (double) opened[i] / job.board().pack().get(i).perPack());
    }
    return most;
  }

  List<BayPlan> bays() {
    return rooms.stream().flatMap(room -> room.bays().stream()).toList();
  }
}
