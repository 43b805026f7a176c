package floorcalc.laying;

import floorcalc.boards.Run;
import floorcalc.boards.Stretch;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What every plan with the same rows must cover, for the bound on boards.
 * <p>
 * A piece that covers a place where its run borders on a row line needs the factory edge there; see {@link RunStretches}. No
 * piece of a plan that keeps the rules is shorter than the least end piece, or than any board, which may be laid whole; where
 * a piece of a run broke the rule, nothing is built on that. A run that borders on no row line counts by its area.
 */
final class BoundParts {
  /** The stretches of each run. */
  final List<List<Stretch>> stretches = new ArrayList<>();
  final List<Run> runs = new ArrayList<>();
  Area rest = Area.ZERO;
  /** The whole floor. */
  Area floor = Area.ZERO;

  static BoundParts of(JobLaying laying, long minimumPiece) {
    BoundParts parts = new BoundParts();
    Length pitch = laying.job().board().laidPitch();
    List<Length> boards = laying.job().board().lengths();
    long least = Math.min(minimumPiece, boards.get(boards.size() - 1).toNanometres());
    List<BayPlan> bays = laying.bays();
    for (int i = 0; i < bays.size(); i++) {
      Map<FrameRun, Covered> covered = new LinkedHashMap<>();
      for (ShapedPiece piece : laying.pieces().get(i)) {
        covered.computeIfAbsent(piece.run(), run -> new Covered()).add(piece, least);
      }
      covered.forEach((run, pieces) -> parts.add(run, laying.runs().get(run.index()), pieces, pitch, least));
    }
    return parts;
  }

  private void add(FrameRun run, Run whole, Covered pieces, Length pitch, long least) {
    boolean all = pieces.from == whole.from() && pieces.to == whole.to();
    runs.add(all ? whole : Run.of(whole.row(), pieces.from, pieces.to));
    Area area = Area.ofHalfSquareNanometres(pieces.twiceArea);
    floor = floor.plus(area);
    long minimumPiece = pieces.hasShort ? 0 : least;
    List<Stretch> found = new RunStretches(run, pieces.from, pieces.to, minimumPiece, pitch).all();
    stretches.add(found);
    rest = found.isEmpty() ? rest.plus(area) : rest;
  }

  /** What the pieces of a run cover: a tip too small to saw is left out. */
  private static final class Covered {
    private long from = Long.MAX_VALUE;
    private long to = Long.MIN_VALUE;
    private BigInteger twiceArea = BigInteger.ZERO;
    private boolean hasShort;

    void add(ShapedPiece piece, long least) {
      from = Math.min(from, piece.floor().shell().minX);
      to = Math.max(to, piece.floor().shell().maxX);
      hasShort |= piece.length() < least;
      for (Loop loop : piece.floor().loops()) {
        twiceArea = twiceArea.add(loop.twiceArea());
      }
    }
  }
}
