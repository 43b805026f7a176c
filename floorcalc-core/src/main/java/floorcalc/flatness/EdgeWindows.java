package floorcalc.flatness;

import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * An edge laid with its left end at each reading from which it fits. Each rest between two readings is worked out once, however many
 * placements have it: a time of {@code n log n}, and one step for each rest that is told. Used by one thread.
 */
final class EdgeWindows {
  private final HeightProfile profile;
  private final long span;
  private final CoveredHull hull;
  private final DeepestReadings readings;
  /** Numbers of chords by the two readings at their ends; looked up, never walked through. */
  private final Map<Long, Integer> known = new HashMap<>();
  private final List<Window> windows = new ArrayList<>();

  /**
   * A placement.
   *
   * @param rests the numbers of its chords
   * @param held from which to before which of them gravity may choose, one after the other
   * @param lies in how many ways the edge may lie
   */
  private record Window(long start, int[] rests, int from, int to, int lies) {}

  EdgeWindows(HeightProfile profile, long span, StepCount tally) {
    this.profile = profile;
    this.span = span;
    hull = new CoveredHull(profile, span, tally);
    readings = new DeepestReadings(profile, tally);
  }

  List<EdgePlacement> placements() {
    for (int i = 0; i < profile.size() && profile.place(i) <= profile.place(profile.size() - 1) - span; i++) {
      lay(profile.place(i));
    }
    readings.answer();
    List<EdgeRest> rests = readings.chords().stream().map(chord -> chord.found().rest()).toList();
    List<EdgePlacement> placements = new ArrayList<>(windows.size());
    for (Window window : windows) {
      List<EdgeRest> here = new ArrayList<>(window.rests().length);
      for (int number : window.rests()) {
        here.add(rests.get(number));
      }
      placements.add(new EdgePlacement(Length.ofNanometres(window.start()), Length.ofNanometres(span), here,
          here.subList(window.from(), window.to()), window.lies()));
    }
    return placements;
  }

  private void lay(long start) {
    hull.layAt(start);
    int[] rests = new int[hull.corners() - 1];
    for (int k = 0; k < rests.length; k++) {
      rests[k] = number(start, k);
    }
    int edge = hull.atMiddle();
    int first = hull.firstInLine(edge);
    boolean tips = hull.isAtMiddle(edge) && first == edge && edge > 0;
    windows.add(new Window(start, rests, tips ? hull.firstInLine(edge - 1) : first, hull.lastInLine(edge), tips ? 2 : 1));
  }

  /** The number of the chord from a corner to the next. */
  private int number(long start, int corner) {
    boolean inside = corner > 0 && corner + 2 < hull.corners();
    if (!inside) {
      int first = corner == 0 ? hull.firstReading() : hull.reading(corner) + 1;
      int last = corner + 2 == hull.corners() ? hull.lastReading() : hull.reading(corner + 1) - 1;
      return ask(Chord.ofHull(profile, start, hull.x(corner), hull.y(corner), hull.x(corner + 1), hull.y(corner + 1), first, last));
    }
    int left = hull.reading(corner);
    int right = hull.reading(corner + 1);
    return known.computeIfAbsent((long) left * profile.size() + right,
        key -> ask(Chord.between(profile, start, left, right)));
  }

  private int ask(Chord chord) {
    readings.ask(chord);
    return readings.chords().size() - 1;
  }
}
