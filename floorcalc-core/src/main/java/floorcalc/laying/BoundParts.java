package floorcalc.laying;

import floorcalc.boards.Edges;
import floorcalc.boards.Run;
import floorcalc.boards.Stretch;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

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
      BitSet broken = new BitSet();
      for (ShapedPiece piece : laying.pieces().get(i)) {
        if (piece.length() < least) {
          broken.set(piece.run().index());
        }
      }
      for (FrameRow row : bays.get(i).bay().rows()) {
        for (FrameRun run : row.runs()) {
          parts.runs.add(laying.runs().get(run.index()));
          parts.add(run, pitch, broken.get(run.index()) ? 0 : least);
        }
      }
    }
    return parts;
  }

  private void add(FrameRun run, Length pitch, long minimumPiece) {
    BigInteger twice = BigInteger.ZERO;
    for (Loop loop : run.floor().loops()) {
      twice = twice.add(loop.twiceArea());
    }
    Area area = Area.ofHalfSquareNanometres(twice);
    floor = floor.plus(area);
    long[] both = Contacts.shared(run.lowContacts(), run.highContacts());
    if (both.length > 0) {
      stretches.add(stretch(run, both, pitch, Edges.BOTH, minimumPiece));
    } else if (run.lowContacts().length > 0) {
      stretches.add(stretch(run, run.lowContacts(), narrowest(run, pitch), Edges.LOW, minimumPiece));
    } else if (run.highContacts().length > 0) {
      stretches.add(stretch(run, run.highContacts(), narrowest(run, pitch), Edges.HIGH, minimumPiece));
    } else {
      stretches.add(new Stretch(Length.ZERO, pitch, Edges.NONE));
      rest = rest.plus(area);
    }
  }

  private static Stretch stretch(FrameRun run, long[] contacts, Length width, Edges edges, long minimumPiece) {
    boolean one = contacts.length == 2;
    boolean tipsAreShort = contacts[0] - run.from() < Math.max(1, minimumPiece)
        && run.to() - contacts[contacts.length - 1] < Math.max(1, minimumPiece);
    long length = one && tipsAreShort ? run.to() - run.from() : Contacts.total(contacts);
    return new Stretch(Length.ofNanometres(length), width, edges);
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
