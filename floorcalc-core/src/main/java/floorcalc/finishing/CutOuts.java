package floorcalc.finishing;

import floorcalc.fittings.BoardPiece;
import floorcalc.fittings.BoardSide;
import floorcalc.fittings.CutOutLimits;
import floorcalc.fittings.GluedPart;
import floorcalc.fittings.HoleCut;
import floorcalc.fittings.HoleInPiece;
import floorcalc.fittings.Notch;
import floorcalc.fittings.PieceNotches;
import floorcalc.fittings.ThinPart;
import floorcalc.fittings.ThinParts;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.Check;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.PieceKind;
import floorcalc.plan.Room;
import floorcalc.plan.Row;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Worked;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What is cut out of the boards of a plan: for every pipe of its rooms the board or boards that it comes through and their cuts, for every
 * piece that is no rectangle its notches, and what would break beside them.
 * <p>
 * A hole is as much wider than its pipe as the expansion gap of the job asks for on both sides, 20 mm with the gap of common practice; if the
 * job has no gap, {@link floorcalc.fittings.PipeAllowance#TWENTY_WIDER 20 mm}. Pieces of a plan are as they were before holes for pipes: holes are
 * added to them here, no board more is needed for them. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class CutOuts {
  /** A piece that differs from its rectangle by no more than this, in square nanometres, is a rectangle: a square millimetre. */
  private static final double CRUMB = 1e12;

  private final List<PieceCut> pieces;
  private final List<PipeCut> pipes;
  private final List<Check> checks;
  private final List<Worked> working;

  private CutOuts(List<PieceCut> pieces, List<PipeCut> pipes, List<Check> checks, List<Worked> working) {
    this.pieces = List.copyOf(pieces);
    this.pipes = List.copyOf(pipes);
    this.checks = List.copyOf(checks);
    this.working = List.copyOf(working);
  }

  /**
   * Works out the cut-outs of a plan, with the limits of common practice on what may break.
   *
   * @param job the job, not null
   * @param plan a plan of it, not null
   * @return the cut-outs, as {@link #of(FloorJob, FloorPlan, CutOutLimits)} gives them; not null
   */
  public static Calculated<CutOuts> of(FloorJob job, FloorPlan plan) {
    return of(job, plan, CutOutLimits.COMMON_PRACTICE);
  }

  /**
   * Works out the cut-outs of a plan.
   *
   * @param job the job, not null
   * @param plan a plan of it, not null
   * @param limits how little wood may be left beside what is cut out, not null
   * @return the cut-outs with the steps of pipes and thin parts, and with a finding {@code pipe-hole} for each pipe, {@code pipe-slot} where
   *     several share one, {@code pipe-joint-helps}, {@code thin-tongue} and {@code thin-bridge}; not null
   */
  public static Calculated<CutOuts> of(FloorJob job, FloorPlan plan, CutOutLimits limits) {
    List<Finding> findings = new ArrayList<>();
    List<Worked> working = new ArrayList<>();
    List<PipeCut> pipes = new ArrayList<>();
    for (Room room : job.rooms()) {
      if (!room.pipes().isEmpty()) {
        Calculated<List<PipeCut>> ofRoom = RoomPipes.of(job, plan, room, limits);
        pipes.addAll(ofRoom.value());
        findings.addAll(ofRoom.findings());
        working.add(new Worked(room.name() + ": pipes", ofRoom.steps()));
      }
    }
    Map<String, List<HoleInPiece>> holes = new TreeMap<>();
    Map<String, List<GluedPart>> glued = new TreeMap<>();
    for (PipeCut pipe : pipes) {
      pipe.cut().parts().forEach(part -> holes.computeIfAbsent(part.piece(), none -> new ArrayList<>()).add(part));
      pipe.cut().glued().ifPresent(part -> glued.computeIfAbsent(part.piece(), none -> new ArrayList<>()).add(part));
    }
    List<PieceCut> pieces = new ArrayList<>();
    for (Bay bay : plan.bays()) {
      List<Step> thinSteps = new ArrayList<>();
      for (Row row : bay.rows()) {
        for (LaidPiece piece : row.pieces()) {
          if (isShaped(piece) || holes.containsKey(piece.piece())) {
            PieceNotches shape = PieceNotches.of(board(bay, piece)).value();
            Calculated<List<ThinPart>> thin = ThinParts.of(shape, limits, atGap(job, bay, row, piece));
            thinSteps.addAll(thin.steps());
            findings.addAll(thin.findings());
            pieces.add(new PieceCut(piece.piece(), bay.bay(), row.row(), shape, thin.value(),
                holes.getOrDefault(piece.piece(), List.of()), glued.getOrDefault(piece.piece(), List.of())));
          }
        }
      }
      if (!thinSteps.isEmpty()) {
        working.add(new Worked(bay.bay() + ": thin parts beside notches", thinSteps));
      }
    }
    List<Step> steps = working.stream().flatMap(part -> part.steps().stream()).toList();
    return Calculated.of(new CutOuts(pieces, pipes, checks(pieces, pipes, limits), working), steps, findings);
  }

  /**
   * Adds the cut-outs of a plan to it: checks {@code holes-for-pipes} and {@code thin-parts}, findings and working.
   *
   * @param job the job, not null
   * @param plan a plan of it, not null
   * @return the plan with more checks, findings and working; not null
   */
  public static FloorPlan added(FloorJob job, FloorPlan plan) {
    Calculated<CutOuts> cut = of(job, plan);
    return plan.with(cut.value().checks(), cut.findings(), cut.value().working());
  }

  private static List<Check> checks(List<PieceCut> pieces, List<PipeCut> pipes, CutOutLimits limits) {
    List<Check> checks = new ArrayList<>();
    if (!pipes.isEmpty()) {
      long slots = pipes.stream().filter(pipe -> pipe.cut().pipes().size() > 1).count();
      long clear = pipes.stream().filter(pipe -> pipe.cut().way() == HoleCut.Way.IN_THE_GAP).count();
      long holes = pipes.size() - clear - slots;
      checks.add(Check.of("holes-for-pipes", "pipes stand free of the boards", holes + (holes == 1 ? " hole, " : " holes, ") + slots
          + (slots == 1 ? " slot, " : " slots, ") + clear + " in the gap", "the expansion gap all round", Outcome.MET, Source.DEFINITION));
    }
    long notched = pieces.stream().filter(CutOuts::isNotched).count();
    if (notched > 0) {
      int thin = pieces.stream().mapToInt(piece -> piece.thin().size()).sum();
      checks.add(Check.of("thin-parts", "no thin part beside a notch that may break", thin == 0 ? "none" : thin + " in " + pieces.stream()
          .filter(piece -> !piece.thin().isEmpty()).count() + " of " + notched + " notched pieces", "none narrower than "
          + limits.leastTongue(), thin == 0 ? Outcome.MET : Outcome.NOT_MET, limits.leastTongueSource()));
    }
    return checks;
  }

  /** Whether a piece has a notch or a hole, not only slants and tapers. */
  private static boolean isNotched(PieceCut piece) {
    return piece.shape().notches().stream().anyMatch(Notch::turnsInwards);
  }

  /** The sides of a piece that are sawn, or those of a first and last row: these face the gap. */
  private static Set<BoardSide> atGap(FloorJob job, Bay bay, Row row, LaidPiece piece) {
    EnumSet<BoardSide> sides = EnumSet.noneOf(BoardSide.class);
    if (row.row() == bay.rows().get(0).row() || piece.from().acrossFrom().isPositive()) {
      sides.add(BoardSide.START_EDGE);
    }
    if (row.row() == bay.rows().get(bay.rows().size() - 1).row() || piece.from().acrossTo().compareTo(job.board().laidPitch()) < 0) {
      sides.add(BoardSide.FAR_EDGE);
    }
    if (piece.kind() == PieceKind.START || piece.kind() == PieceKind.SINGLE) {
      sides.add(BoardSide.START_END);
    }
    if (piece.kind() == PieceKind.END || piece.kind() == PieceKind.SINGLE) {
      sides.add(BoardSide.FAR_END);
    }
    return sides;
  }

  /** The piece in the frame of its bay. */
  static BoardPiece board(Bay bay, LaidPiece piece) {
    return new BoardPiece(piece.piece(), bay.direction().toFrame(piece.outline()),
        piece.holes().stream().map(bay.direction()::toFrame).toList());
  }

  /** Whether a piece is no rectangle. */
  private static boolean isShaped(LaidPiece piece) {
    Ring ring = piece.outline();
    if (ring.size() != 4 || !piece.holes().isEmpty()) {
      return true;
    }
    double twice = 0;
    for (int i = 1; i < 3; i++) {
      twice += (double) (ring.x(i) - ring.x(0)) * (ring.y(i + 1) - ring.y(0)) - (double) (ring.y(i) - ring.y(0)) * (ring.x(i + 1) - ring.x(0));
    }
    double rectangle = (double) piece.from().length().toNanometres() * piece.from().width().toNanometres();
    return Math.abs(rectangle - Math.abs(twice) / 2) > CRUMB;
  }

  /**
   * Returns the pieces out of which more is cut than a rectangle, in laying order.
   *
   * @return an unmodifiable list, not null
   */
  public List<PieceCut> pieces() {
    return pieces;
  }

  /**
   * Returns what is cut out of a piece.
   *
   * @param piece the name of the piece, not null
   * @return its cuts, empty if it is a plain rectangle
   */
  public Optional<PieceCut> of(String piece) {
    Objects.requireNonNull(piece, "piece");
    return pieces.stream().filter(cut -> cut.piece().equals(piece)).findFirst();
  }

  /**
   * Returns what is cut for pipes, room by room.
   *
   * @return an unmodifiable list, not null
   */
  public List<PipeCut> pipes() {
    return pipes;
  }

  /**
   * Returns the checks for a plan: {@code holes-for-pipes} if there are pipes, {@code thin-parts} if there are notches.
   *
   * @return an unmodifiable list, not null
   */
  public List<Check> checks() {
    return checks;
  }

  /**
   * Returns the working, of the pipes room by room and of the thin parts bay by bay.
   *
   * @return an unmodifiable list, not null
   */
  public List<Worked> working() {
    return working;
  }
}
