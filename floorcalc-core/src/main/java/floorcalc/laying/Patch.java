package floorcalc.laying;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A connected piece of floor in the frame of a bay: a shell and the holes in it. */
record Patch(Loop shell, List<Loop> holes) {

  /** Sorts loops into shells with their holes, from left to right, then from low to high. */
  static List<Patch> of(List<Loop> loops) {
    List<Loop> shells = new ArrayList<>();
    List<Loop> holes = new ArrayList<>();
    for (Loop loop : loops) {
      (loop.isHole() ? holes : shells).add(loop);
    }
    shells.sort(Comparator.<Loop>comparingLong(s -> s.minX).thenComparingLong(s -> s.minY)
        .thenComparingLong(s -> s.maxX).thenComparingLong(s -> s.maxY));
    List<Patch> patches = new ArrayList<>(shells.size());
    for (Loop shell : shells) {
      patches.add(new Patch(shell, new ArrayList<>()));
    }
    for (Loop hole : holes) {
      home(hole, patches).holes().add(hole);
    }
    return patches;
  }

  /** The smallest shell around a hole; where several are around its first corner's box, the one that surrounds the corner. */
  private static Patch home(Loop hole, List<Patch> patches) {
    Patch best = null;
    for (Patch patch : patches) {
      Loop shell = patch.shell();
      boolean around = shell.minX <= hole.minX && shell.maxX >= hole.maxX && shell.minY <= hole.minY
          && shell.maxY >= hole.maxY;
      if (around && (best == null || shell.surrounds(hole.x[0], hole.y[0]))) {
        best = patch;
      }
    }
    return best == null ? patches.get(0) : best;
  }

  /** Returns the loops: the shell first. */
  List<Loop> loops() {
    List<Loop> loops = new ArrayList<>(holes.size() + 1);
    loops.add(shell);
    loops.addAll(holes);
    return loops;
  }

  /**
   * Returns the stretches of a line that this patch borders on with more than a corner, as pairs of low and high ends,
   * sorted: {@code [from, to, from, to, …]}.
   */
  long[] contacts(long at, boolean upright) {
    List<long[]> found = new ArrayList<>(2);
    for (Loop loop : loops()) {
      long[] u = upright ? loop.y : loop.x;
      long[] v = upright ? loop.x : loop.y;
      for (int i = 0, n = u.length; i < n; i++) {
        int j = i + 1 < n ? i + 1 : 0;
        if (v[i] == at && v[j] == at && u[i] != u[j]) {
          found.add(new long[] {Math.min(u[i], u[j]), Math.max(u[i], u[j])});
        }
      }
    }
    found.sort(Comparator.comparingLong(c -> c[0]));
    long[] flat = new long[2 * found.size()];
    for (int k = 0; k < found.size(); k++) {
      flat[2 * k] = found.get(k)[0];
      flat[2 * k + 1] = found.get(k)[1];
    }
    return flat;
  }
}
