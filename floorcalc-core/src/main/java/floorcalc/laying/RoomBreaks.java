package floorcalc.laying;

import floorcalc.bays.BayParts;
import floorcalc.bays.BaySplit;
import floorcalc.bays.ExpansionBreak;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.BreakGap;
import floorcalc.outline.Containment;
import floorcalc.outline.Direction;
import floorcalc.outline.ExpansionGap;
import floorcalc.outline.Line;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import floorcalc.plan.RoomBreak;
import floorcalc.rules.LayingRules;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Where a room is split when its boards run one way: as the job says, or as few breaks as it needs to move freely.
 *
 * @param lines the breaks
 * @param overNoFloor the lines that part the room where no floor lies, so that no break is needed: the gaps along the walls meet there
 * @param gap the width of each, in all
 * @param steps how they were found
 * @param findings what was noticed
 */
record RoomBreaks(List<ExpansionBreak> lines, List<ExpansionBreak> overNoFloor, Length gap, List<Step> steps, List<Finding> findings) {
  /** Floor is looked for so far about the middle of a break in all: what its whole gap would take beside it is not parted by it. */
  private static final Length MIDDLE = Length.ofMillimetres(1);
  /** What rounding may take off a floor: a square millimetre is no floor. */
  private static final Area NO_FLOOR = Area.ofSquareMillimetres(1);

  static RoomBreaks of(FloorJob job, Room room, Direction boards) {
    Length gap = gap(job.rules());
    if (room.breaks().isPresent() || !gap.isPositive()) {
      return new RoomBreaks(room.breaks().orElse(List.of()), List.of(), gap, List.of(), List.of());
    }
    Calculated<BaySplit> split = BaySplit.of(room.outline(), boards, room.openings(), job.rules());
    // What keeps a bay from moving is said of the bays as they are laid, by their names in the plan.
    return new RoomBreaks(split.value().breaks(), List.of(), gap, split.steps(), split.findings().stream()
        .filter(finding -> !finding.code().equals("bay-must-be-split")).toList());
  }

  /**
   * The breaks that were found, less those that part no floor: walls so near to each other that their gaps meet leave none to part, or none on one side.
   * Breaks that the job gives stay as they are.
   */
  RoomBreaks onFloor(Calculated<ExpansionGap> floor, String room) {
    List<ExpansionBreak> over = lines.stream().filter(line -> isGiven(line) || liesOnFloor(floor.value(), line)).toList();
    RoomBreaks onFloor = new RoomBreaks(over, lines.stream().filter(line -> !over.contains(line)).toList(), gap, steps, findings);
    RoomBreaks parting = onFloor.betweenBays(floor);
    List<Finding> all = new ArrayList<>(findings);
    lines.stream().filter(line -> !parting.lines.contains(line)).forEach(line -> all.add(new Finding("break-parts-no-floor", Severity.NOTE, room,
        "the break from " + line.from() + " to " + line.to() + " is left out: the gaps along the walls meet there, and no floor lies "
            + (over.contains(line) ? "on one side of it" : "between"), Source.DEFINITION)));
    return new RoomBreaks(parting.lines, parting.overNoFloor, gap, steps, all);
  }

  /** Without the breaks that have floor on one side only: the floor stays whole there. */
  private RoomBreaks betweenBays(Calculated<ExpansionGap> floor) {
    List<Outline> bays = bays(floor);
    if (parts(floor.value().room()).stream().allMatch(part -> bays.stream().anyMatch(bay -> liesIn(part, bay)))) {
      return this;
    }
    RoomBreaks kept = this;
    for (ExpansionBreak line : lines) {
      RoomBreaks without = new RoomBreaks(kept.lines.stream().filter(each -> !each.equals(line)).toList(), overNoFloor, gap, steps, findings);
      kept = !isGiven(line) && without.bays(floor).size() >= kept.bays(floor).size() ? without : kept;
    }
    return kept;
  }

  /** Tells whether a bay is a part of the room less its gaps. */
  static boolean liesIn(Outline part, Outline bay) {
    return part.locate(Point.ofNanometres(bay.shell().x(0), bay.shell().y(0))) != Containment.OUTSIDE;
  }

  private static boolean isGiven(ExpansionBreak line) {
    return line.reason() == ExpansionBreak.Reason.GIVEN;
  }

  private boolean liesOnFloor(ExpansionGap floor, ExpansionBreak line) {
    Area rest = BreakGap.taken(floor, List.of(line.middle()), MIDDLE.min(gap)).stream().map(Outline::area).reduce(Area.ZERO, Area::plus);
    return floor.laidArea().minus(rest).compareTo(NO_FLOOR) > 0;
  }

  /** The gap of a break: its own, or an expansion gap on either side of its middle. */
  static Length gap(LayingRules rules) {
    Length own = rules.value(LayingRules.BREAK_GAP);
    return own.isZero() ? rules.value(LayingRules.EXPANSION_GAP).multipliedBy(2) : own;
  }

  /** The floor of the room less its gaps, bay by bay. */
  List<Outline> bays(Calculated<ExpansionGap> floor) {
    List<Line> middle = lines.stream().map(ExpansionBreak::middle).toList();
    return lines.isEmpty() ? floor.value().laid() : BreakGap.taken(floor.value(), middle, gap);
  }

  /** The parts of the room from wall to wall, also where the line between them needs no break. */
  List<Outline> parts(Outline room) {
    return BayParts.of(room, Stream.concat(lines.stream(), overNoFloor.stream()).toList()).parts();
  }

  List<RoomBreak> in(Room room) {
    return lines.stream().map(line -> new RoomBreak(room.name(), line, gap)).toList();
  }
}
