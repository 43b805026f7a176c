package floorcalc.laying;

import floorcalc.bays.BayParts;
import floorcalc.bays.ExpansionBreak;
import floorcalc.bays.Opening;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.ExpansionGap;
import floorcalc.outline.OutlineCheck;
import floorcalc.outline.OutlineFault;
import floorcalc.plan.FloorJob;
import floorcalc.plan.JobFault;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds what keeps a job from being planned: boards too short, unsound outlines, walls of no thickness, rooms that their gap swallows, floors beyond all bounds.
 *
 * @since 0.1
 */
public final class JobCheck {
  /** The most pieces that a job may need, by a rough count before it is planned. */
  public static final int MOST_PIECES = 3_000_000;
  /** The most rooms of a job. */
  public static final int MOST_ROOMS = 1_000;
  /** The most doors, and the most pipes, of a room. */
  public static final int MOST_DOORS_OR_PIPES = 1_000;
  /** The most openings, and the most breaks that are given, of a room: each may meet each. */
  public static final int MOST_OPENINGS_OR_BREAKS = 200;
  /**
   * The shortest board that is planned: 50 mm. The shortest wood floor elements, fingers of parquet, are about 100 mm long (common
   * practice, no source); what is shorter is a length in another unit.
   */
  public static final Length SHORTEST_BOARD = Length.ofMillimetres(50);

  private JobCheck() {}

  /**
   * Returns the faults of a job.
   *
   * @param job the job, not null
   * @return all faults, room by room; empty if the job can be planned
   */
  public static List<JobFault> faultsOf(FloorJob job) {
    List<JobFault> faults = new ArrayList<>();
    Length gap = job.rules().value(LayingRules.EXPANSION_GAP);
    for (Length length : job.board().lengths()) {
      if (length.compareTo(SHORTEST_BOARD) < 0) {
        faults.add(fault(-1, FaultCode.BOARDS_TOO_SHORT, "the boards have a length of " + length + ", at least " + SHORTEST_BOARD
            + " is needed; check the length and its unit"));
      }
    }
    if (isBeyondCount(job, faults)) {
      return faults; // what has far too many parts is not looked at any closer
    }
    double pieces = 0;
    for (int i = 0; i < job.rooms().size(); i++) {
      Room room = job.rooms().get(i);
      List<OutlineFault> outline = OutlineCheck.faultsOf(room.outline());
      for (OutlineFault fault : outline) {
        faults.add(new JobFault(i, fault.kind().code(), room.name() + ": " + fault.message()));
      }
      List<String> thin = outline.isEmpty() ? ThinWalls.of(room.outline(), gap) : List.of();
      for (String walls : thin) {
        faults.add(fault(i, FaultCode.WALL_TOO_THIN, room.name() + ": " + walls));
      }
      if (outline.isEmpty() && thin.isEmpty()) {
        pieces += roughPieces(job, room);
        if (ExpansionGap.inset(room.outline(), gap).value().laid().isEmpty()) {
          faults.add(fault(i, FaultCode.GAP_LEAVES_NO_FLOOR, room.name() + ": an expansion gap of " + gap
              + " on every side leaves no floor to lay; check the outline and its unit, or give a smaller gap"));
        } else {
          checkBreaks(job, i, faults);
        }
      }
    }
    if (pieces > MOST_PIECES) {
      faults.add(fault(-1, FaultCode.TOO_MANY_PIECES, "the job needs about " + (long) pieces + " pieces of board, at most " + MOST_PIECES
          + " are planned at once; check the sizes and their units, or split the job"));
    }
    return List.copyOf(faults);
  }

  private static boolean isBeyondCount(FloorJob job, List<JobFault> faults) {
    int before = faults.size();
    checkNumber(-1, "the job", job.rooms().size(), "rooms", MOST_ROOMS, faults);
    for (int i = 0; i < job.rooms().size(); i++) {
      Room room = job.rooms().get(i);
      checkNumber(i, room.name(), room.doors().size(), "doors", MOST_DOORS_OR_PIPES, faults);
      checkNumber(i, room.name(), room.pipes().size(), "pipes", MOST_DOORS_OR_PIPES, faults);
      checkNumber(i, room.name(), room.openings().size(), "openings", MOST_OPENINGS_OR_BREAKS, faults);
      checkNumber(i, room.name(), room.breaks().map(List::size).orElse(0), "breaks", MOST_OPENINGS_OR_BREAKS, faults);
    }
    return faults.size() > before;
  }

  private static void checkNumber(int room, String of, int number, String what, int most, List<JobFault> faults) {
    if (number > most) {
      faults.add(fault(room, FaultCode.TOO_MANY_PARTS, of + ": " + number + " " + what + ", at most " + most
          + " are planned at once; leave out those that are not there, or split the job"));
    }
  }

  /** Openings must lie across the floor. Breaks that the job gives must run across the floor, have a gap and leave something to lay. */
  private static void checkBreaks(FloorJob job, int index, List<JobFault> faults) {
    Room room = job.rooms().get(index);
    for (Opening opening : room.openings()) {
      try {
        BayParts.of(room.outline(), List.of(ExpansionBreak.given(opening.from(), opening.to())));
      } catch (IllegalArgumentException e) {
        faults.add(fault(index, FaultCode.OPENING_ASTRAY, room.name() + ": opening '" + opening.name() + "': " + e.getMessage()));
      }
    }
    List<ExpansionBreak> given = room.breaks().orElse(List.of());
    if (given.isEmpty()) {
      return;
    }
    Length width = RoomBreaks.gap(job.rules());
    if (!width.isPositive()) {
      faults.add(fault(index, FaultCode.BREAK_WITHOUT_GAP, room.name()
          + ": the expansion breaks have a gap of 0 mm, since the expansion gap is 0 mm;"
          + " give a breakGap of more than 0 mm"));
      return;
    }
    try {
      BayParts.of(room.outline(), given);
    } catch (IllegalArgumentException e) {
      faults.add(fault(index, FaultCode.BREAKS_DO_NOT_PART, room.name() + ": expansion breaks: " + e.getMessage()));
      return;
    }
    RoomBreaks breaks = RoomBreaks.of(job, room, Direction.ALONG_X);
    if (breaks.bays(ExpansionGap.inset(room.outline(), job.rules().value(LayingRules.EXPANSION_GAP))).isEmpty()) {
      faults.add(fault(index, FaultCode.BREAKS_LEAVE_NO_FLOOR, room.name() + ": expansion breaks of " + width
          + " leave no floor to lay; give fewer or narrower ones"));
    }
  }

  private static JobFault fault(int room, FaultCode code, String message) {
    return new JobFault(room, code.text(), message);
  }

  private static double roughPieces(FloorJob job, Room room) {
    double shortest = job.board().lengths().get(job.board().lengths().size() - 1).toMillimetres();
    double pitch = job.board().laidPitch().toMillimetres();
    double around = room.outline().shell().perimeter().toMillimetres();
    return room.outline().area().toSquareMillimetres() / (shortest * pitch) + around / pitch;
  }
}
