package floorcalc.laying;

import floorcalc.boards.Edges;
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
 * A piece that covers a place where its run borders on a row line needs the factory edge there. Where the slanted ends of
 * a run are shorter than the least end piece, and than any board, which may be laid whole, they belong to pieces that reach
 * further in, unless a piece of that run broke the rule. A run that borders on no row line counts by its area.
 */
final class BoundParts {
  /** A stretch for each run, of no length where the run has none. */
  final List<Stretch> stretches = new ArrayList<>();
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
    long[] low = Contacts.within(run.lowContacts(), pieces.from, pieces.to);
    long[] high = Contacts.within(run.highContacts(), pieces.from, pieces.to);
    long[] both = Contacts.shared(low, high);
    if (both.length > 0) {
      stretches.add(pieces.stretch(both, pitch, Edges.BOTH, minimumPiece));
    } else if (low.length > 0) {
      stretches.add(pieces.stretch(low, narrowest(run, pitch), Edges.LOW, minimumPiece));
    } else if (high.length > 0) {
      stretches.add(pieces.stretch(high, narrowest(run, pitch), Edges.HIGH, minimumPiece));
    } else {
      stretches.add(new Stretch(Length.ZERO, pitch, Edges.NONE));
      rest = rest.plus(area);
    }
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

    Stretch stretch(long[] contacts, Length width, Edges edges, long minimumPiece) {
      boolean one = contacts.length == 2;
      boolean tipsAreShort = contacts[0] - from < Math.max(1, minimumPiece)
          && to - contacts[contacts.length - 1] < Math.max(1, minimumPiece);
      long length = one && tipsAreShort ? to - from : Contacts.total(contacts);
      return new Stretch(Length.ofNanometres(length), width, edges);
    }
  }

  /** The width of a run that is a plain rectangle; of any other the least that is sure: next to nothing. */
  private static Length narrowest(FrameRun run, Length pitch) {
    Loop shell = run.floor().shell();
    boolean box = run.floor().holes().isEmpty() && shell.size() == 4;
    for (int i = 0; box && i < 4; i++) {
      int j = (i + 1) % 4;
      box = shell.x[i] == shell.x[j] || shell.y[i] == shell.y[j];
    }
    return box ? Length.ofNanometres(shell.maxY - shell.minY) : Length.ofNanometres(1);
  }
}
