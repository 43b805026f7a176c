package floorcalc.laying;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a floor along many parallel lines by halving: the cost grows with the corners that are there, not with lines times
 * corners. Where a side crosses the lines is worked out first, so that no side is rounded more than once.
 */
final class Strips {
  private Strips() {}

  /** Cuts along level lines, given in rising order; the first strip lies below the first line. */
  static List<List<Loop>> level(List<Loop> floor, long[] lines) {
    return cut(floor, lines, false);
  }

  /** Cuts along upright lines, given in rising order; the first strip lies left of the first line. */
  static List<List<Loop>> upright(List<Loop> floor, long[] lines) {
    return cut(floor, lines, true);
  }

  private static List<List<Loop>> cut(List<Loop> floor, long[] lines, boolean upright) {
    List<List<Loop>> strips = new ArrayList<>(lines.length + 1);
    List<Loop> prepared = floor.stream().map(loop -> Saw.withCrossings(loop, lines, upright)).toList();
    halve(prepared, lines, 0, lines.length, upright, strips);
    return strips;
  }

  private static void halve(List<Loop> floor, long[] lines, int from, int to, boolean upright, List<List<Loop>> strips) {
    if (from == to) {
      strips.add(floor);
      return;
    }
    int middle = (from + to) >>> 1;
    Saw.Parts parts = upright ? Saw.upright(floor, lines[middle]) : Saw.level(floor, lines[middle]);
    halve(parts.low(), lines, from, middle, upright, strips);
    halve(parts.high(), lines, middle + 1, to, upright, strips);
  }
}
