package floorcalc.bays;

import floorcalc.outline.Containment;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToLongFunction;

/** The lines along x or y of a right-angled room from inner corner to inner corner, and how many of them meet in pairs. */
final class InnerChords {
  private record Chord(Point from, Point to) {
    boolean meets(Chord upright) {
      return from.xNanometres() <= upright.from.xNanometres() && upright.from.xNanometres() <= to.xNanometres()
          && upright.from.yNanometres() <= from.yNanometres() && from.yNanometres() <= upright.to.yNanometres();
    }
  }

  private final Outline room;
  private final List<Ring> rings = new ArrayList<>();
  private final List<Point> inner = new ArrayList<>();
  private final List<Chord> level;
  private final List<Chord> upright;
  private int corners;

  InnerChords(Outline room) {
    this.room = room;
    rings.add(room.shell());
    rings.addAll(room.voids());
    rings.forEach(this::collect);
    level = chords(Point::yNanometres, Point::xNanometres);
    upright = chords(Point::xNanometres, Point::yNanometres);
  }

  int corners() {
    return corners;
  }

  int count() {
    return level.size() + upright.size();
  }

  private void collect(Ring ring) {
    int n = ring.size();
    for (int i = 0; i < n; i++) {
      int before = (i + n - 1) % n;
      int after = (i + 1) % n;
      int turn = Long.signum(ring.x(i) - ring.x(before)) * Long.signum(ring.y(after) - ring.y(i))
          - Long.signum(ring.y(i) - ring.y(before)) * Long.signum(ring.x(after) - ring.x(i));
      corners += turn == 0 ? 0 : 1;
      if (turn < 0) {
        inner.add(ring.corners().get(i));
      }
    }
  }

  /** The chords between inner corners that follow each other on one line. */
  private List<Chord> chords(ToLongFunction<Point> line, ToLongFunction<Point> onLine) {
    List<Point> sorted = inner.stream().sorted(Comparator.comparingLong(line).thenComparingLong(onLine)).toList();
    List<Chord> chords = new ArrayList<>();
    for (int k = 0; k + 1 < sorted.size(); k++) {
      Chord chord = new Chord(sorted.get(k), sorted.get(k + 1));
      if (line.applyAsLong(chord.from) == line.applyAsLong(chord.to) && isOnFloor(chord)) {
        chords.add(chord);
      }
    }
    return chords;
  }

  private boolean isOnFloor(Chord chord) {
    Point middle = Point.ofNanometres(chord.from.xNanometres() + (chord.to.xNanometres() - chord.from.xNanometres()) / 2,
        chord.from.yNanometres() + (chord.to.yNanometres() - chord.from.yNanometres()) / 2);
    return room.locate(middle) == Containment.INSIDE && rings.stream().noneMatch(ring -> crosses(ring, chord));
  }

  /** Tells whether a wall of a ring passes through a chord. */
  private static boolean crosses(Ring ring, Chord chord) {
    for (int i = 0; i < ring.size(); i++) {
      int j = (i + 1) % ring.size();
      boolean acrossX = isBetween(ring.x(i), chord.from.xNanometres(), chord.to.xNanometres())
          && isBetween(chord.from.yNanometres(), ring.y(i), ring.y(j));
      boolean acrossY = isBetween(ring.y(i), chord.from.yNanometres(), chord.to.yNanometres())
          && isBetween(chord.from.xNanometres(), ring.x(i), ring.x(j));
      if (acrossX || acrossY) {
        return true;
      }
    }
    return false;
  }

  private static boolean isBetween(long value, long a, long b) {
    return Math.min(a, b) < value && value < Math.max(a, b);
  }

  /** The most pairs of a level and an upright chord that meet, no chord in two pairs: found by augmenting paths. */
  int matched() {
    int[] partner = new int[upright.size()];
    Arrays.fill(partner, -1);
    int matched = 0;
    for (int i = 0; i < level.size(); i++) {
      matched += augment(i, partner, new boolean[upright.size()]) ? 1 : 0;
    }
    return matched;
  }

  private boolean augment(int i, int[] partner, boolean[] tried) {
    for (int j = 0; j < partner.length; j++) {
      if (!tried[j] && level.get(i).meets(upright.get(j))) {
        tried[j] = true;
        if (partner[j] < 0 || augment(partner[j], partner, tried)) {
          partner[j] = i;
          return true;
        }
      }
    }
    return false;
  }
}
