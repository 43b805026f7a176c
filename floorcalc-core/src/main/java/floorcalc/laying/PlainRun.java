package floorcalc.laying;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a run whose walls lie beyond its first and last joint and whose edges between them are level, as nearly all runs are:
 * nothing is rounded and nothing needs to be sawn.
 */
final class PlainRun {
  private final Loop shell;
  private final long[] joints;
  private int toLeft = -1;
  private int toRight = -1;

  private PlainRun(Loop shell, long[] joints) {
    this.shell = shell;
    this.joints = joints;
  }

  /** The pieces from left to right, or none if the run is not plain. */
  static List<Patch> cut(Patch floor, long[] joints) {
    if (joints.length == 0 || !floor.holes().isEmpty()) {
      return List.of();
    }
    PlainRun run = new PlainRun(floor.shell(), joints);
    return run.isPlain() ? run.pieces() : List.of();
  }

  private boolean isPlain() {
    long low = joints[0];
    long high = joints[joints.length - 1];
    int n = shell.size();
    for (int i = 0; i < n; i++) {
      long x = shell.x[i];
      long next = shell.x[i + 1 < n ? i + 1 : 0];
      if (x >= low && x <= high) {
        return false;
      }
      if (x < low != next < low) {
        boolean level = shell.y[i] == shell.y[i + 1 < n ? i + 1 : 0];
        boolean first = x < low ? toRight < 0 : toLeft < 0;
        if (!level || !first) {
          return false;
        }
        if (x < low) {
          toRight = i;
        } else {
          toLeft = i;
        }
      }
    }
    return toRight >= 0 && toLeft >= 0 && shell.y[toLeft] - shell.y[toRight] > RunPieces.MEET;
  }

  private List<Patch> pieces() {
    long bottom = shell.y[toRight];
    long top = shell.y[toLeft];
    List<Patch> pieces = new ArrayList<>(joints.length + 1);
    pieces.add(piece(joints[0], top, bottom, toLeft, toRight));
    for (int i = 1; i < joints.length; i++) {
      long from = joints[i - 1];
      long to = joints[i];
      pieces.add(patch(new long[] {from, to, to, from}, new long[] {bottom, bottom, top, top}));
    }
    pieces.add(piece(joints[joints.length - 1], bottom, top, toRight, toLeft));
    for (Patch piece : pieces) {
      if (FrameBay.isCrumb(piece.shell())) {
        return List.of();
      }
    }
    return pieces;
  }

  /** A piece at a wall: from the joint along one edge to the wall, back along the other. */
  private Patch piece(long joint, long first, long last, int out, int back) {
    int n = shell.size();
    int corners = Math.floorMod(back - out, n);
    long[] x = new long[corners + 2];
    long[] y = new long[corners + 2];
    x[0] = joint;
    y[0] = first;
    for (int i = 1; i <= corners; i++) {
      x[i] = shell.x[(out + i) % n];
      y[i] = shell.y[(out + i) % n];
    }
    x[corners + 1] = joint;
    y[corners + 1] = last;
    return patch(x, y);
  }

  private static Patch patch(long[] x, long[] y) {
    return new Patch(Loop.of(x, y), List.of());
  }
}
