package floorcalc.laying;

import floorcalc.boards.Stretch;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * What every plan with the same rows must cover, for the bound on boards.
 * <p>
 * A piece that covers a place where its run reaches from line to line takes the whole width of its board. A run that is a
 * plain rectangle is a stretch of its own width. Where the slanted ends of a run are shorter than the least end piece they
 * belong to pieces that reach into the full part, unless a piece of that run broke the rule.
 */
final class BoundParts {
  final List<Stretch> stretches = new ArrayList<>();
  Area rest = Area.ZERO;

  static BoundParts of(JobLaying laying, long minimumPiece) {
    BoundParts parts = new BoundParts();
    Length pitch = laying.job().board().laidPitch();
    List<BayPlan> bays = laying.bays();
    for (int i = 0; i < bays.size(); i++) {
      java.util.BitSet broken = new java.util.BitSet();
      for (ShapedPiece piece : laying.pieces().get(i)) {
        if (piece.length() < minimumPiece) {
          broken.set(piece.run().index());
        }
      }
      for (FrameRow row : bays.get(i).bay().rows()) {
        for (FrameRun run : row.runs()) {
          parts.add(run, pitch, broken.get(run.index()) ? 0 : minimumPiece);
        }
      }
    }
    return parts;
  }

  private void add(FrameRun run, Length pitch, long minimumPiece) {
    Loop shell = run.floor().shell();
    long[] full = Contacts.shared(run.lowContacts(), run.highContacts());
    if (full.length > 0) {
      long length = Contacts.total(full);
      boolean oneStretch = full.length == 2;
      boolean tipsAreShort = full[0] - run.from() < minimumPiece && run.to() - full[full.length - 1] < minimumPiece;
      stretches.add(new Stretch(Length.ofNanometres(oneStretch && tipsAreShort ? run.to() - run.from() : length), pitch));
    } else if (run.floor().holes().isEmpty() && shell.size() == 4 && isBox(shell)) {
      stretches.add(new Stretch(Length.ofNanometres(run.to() - run.from()),
          Length.ofNanometres(shell.maxY - shell.minY)));
    } else {
      BigInteger twice = BigInteger.ZERO;
      for (Loop loop : run.floor().loops()) {
        twice = twice.add(loop.twiceArea());
      }
      rest = rest.plus(Area.ofHalfSquareNanometres(twice));
    }
  }

  private static boolean isBox(Loop shell) {
    for (int i = 0; i < 4; i++) {
      int j = (i + 1) % 4;
      if (shell.x[i] != shell.x[j] && shell.y[i] != shell.y[j]) {
        return false;
      }
    }
    return true;
  }
}
