package floorcalc.finishing;

import floorcalc.fittings.BoardPiece;
import floorcalc.fittings.CutOutLimits;
import floorcalc.fittings.HoleCut;
import floorcalc.fittings.PipeAllowance;
import floorcalc.fittings.PipeAt;
import floorcalc.fittings.PipeHoles;
import floorcalc.measure.Length;
import floorcalc.outline.Extent;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Pipe;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Step;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The holes for the pipes of a room in the boards of its bays. */
final class RoomPipes {
  private RoomPipes() {}

  static PipeAllowance allowance(FloorJob job) {
    RuleValue<Length> gap = job.rules().get(LayingRules.EXPANSION_GAP);
    return gap.value().isZero() ? PipeAllowance.TWENTY_WIDER : PipeAllowance.ofGap(gap);
  }

  static Calculated<List<PipeCut>> of(FloorJob job, FloorPlan plan, Room room, CutOutLimits limits) {
    PipeAllowance allowance = allowance(job);
    List<PipeCut> cuts = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    Set<String> cut = new HashSet<>();
    for (Bay bay : plan.bays()) {
      if (bay.room().equals(room.name())) {
        List<PipeAt> pipes = inFrame(bay, room);
        List<BoardPiece> pieces = pieces(pipes, bay, allowance, job.board().coverWidth());
        Calculated<List<HoleCut>> holes = PipeHoles.of(touching(pipes, pieces, allowance), pieces, allowance, limits);
        List<HoleCut> made = holes.value().stream().filter(hole -> hole.way() != HoleCut.Way.IN_THE_GAP).toList();
        made.forEach(hole -> cuts.add(new PipeCut(room.name(), bay.bay(), hole)));
        made.forEach(hole -> hole.pipes().forEach(pipe -> cut.add(pipe.name())));
        steps.addAll(holes.steps());
        JointAtPipe joint = new JointAtPipe(job.rules(), bay);
        List<String> helps = made.stream().filter(hole -> hole.glued().isPresent() && joint.keepsRules(hole)).map(HoleCut::name).toList();
        holes.findings().stream().filter(f -> !f.code().equals("pipe-joint-helps") || helps.contains(f.where())).forEach(findings::add);
      }
    }
    List<PipeAt> clear = named(room).stream().filter(pipe -> !cut.contains(pipe.name())).toList();
    for (PipeAt pipe : clear) {
      Calculated<List<HoleCut>> free = PipeHoles.of(List.of(pipe), List.of(), allowance, limits);
      cuts.add(new PipeCut(room.name(), "", free.value().get(0)));
      steps.addAll(free.steps());
      findings.addAll(free.findings());
    }
    return Calculated.of(List.copyOf(cuts), steps, findings.stream()
        .map(f -> new Finding(f.code(), f.severity(), room.name() + ", " + f.where(), f.message(), f.source())).toList());
  }

  /** The pipes in room coordinates, named by their number. */
  private static List<PipeAt> named(Room room) {
    List<PipeAt> pipes = new ArrayList<>();
    for (Pipe pipe : room.pipes()) {
      pipes.add(new PipeAt("pipe " + (pipes.size() + 1), pipe.at(), pipe.diameter()));
    }
    return pipes;
  }

  private static List<PipeAt> inFrame(Bay bay, Room room) {
    return named(room).stream().map(pipe -> {
      Ring at = bay.direction().toFrame(Ring.of(pipe.at()));
      return new PipeAt(pipe.name(), Point.ofNanometres(at.x(0), at.y(0)), pipe.diameter());
    }).toList();
  }

  /** The pipes whose holes touch a piece. */
  private static List<PipeAt> touching(List<PipeAt> pipes, List<BoardPiece> pieces, PipeAllowance allowance) {
    return pipes.stream().filter(pipe -> PipeHoles.of(List.of(pipe), pieces, allowance, CutOutLimits.COMMON_PRACTICE).value().get(0).way()
        != HoleCut.Way.IN_THE_GAP).toList();
  }

  /** The pieces of a bay within a hole and a board's width of any pipe. */
  private static List<BoardPiece> pieces(List<PipeAt> pipes, Bay bay, PipeAllowance allowance, Length width) {
    return bay.rows().stream().flatMap(row -> row.pieces().stream()).map(piece -> CutOuts.board(bay, piece))
        .filter(piece -> pipes.stream().anyMatch(pipe -> isNear(piece, pipe, allowance.hole(pipe.diameter()).value().plus(width)))).toList();
  }

  private static boolean isNear(BoardPiece piece, PipeAt pipe, Length within) {
    Extent extent = piece.outline().extent();
    long reach = within.toNanometres();
    return extent.low().xNanometres() - reach < pipe.at().xNanometres() && extent.high().xNanometres() + reach > pipe.at().xNanometres()
        && extent.low().yNanometres() - reach < pipe.at().yNanometres() && extent.high().yNanometres() + reach > pipe.at().yNanometres();
  }
}
