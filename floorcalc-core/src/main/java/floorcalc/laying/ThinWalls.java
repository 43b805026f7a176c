package floorcalc.laying;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Walls that stand back to back with next to nothing between them: a slot in the outline, or a void like a sheet of paper. With an
 * expansion gap the floor stays clear of both sides. Without one the floors on both sides would touch, each with an edge that is sawn,
 * and corners rounded to whole nanometres may lie on the wrong side of such a wall.
 */
final class ThinWalls {
  /** The floor on the two sides of a wall must be further apart than this, in nanometres: each edge may be off by some by rounding. */
  static final long LEAST = 20;
  /** Over so much of a wall it may be nearer, in nanometres, as at the tip of a notch. */
  static final long TIP = 100_000;

  private final Ring ring;
  /** How its walls are told from those of other rings. */
  private final String of;
  /** How far apart walls must be, in nanometres. */
  private final double apart;

  private ThinWalls(Ring ring, String of, double apart) {
    this.ring = ring;
    this.of = of;
    this.apart = apart;
  }

  /** Returns a sentence for each ring in which two walls stand too near back to back, the first such pair of it. */
  static List<String> of(Outline outline, Length gap) {
    List<String> found = new ArrayList<>();
    if (gap.toNanometres() > LEAST / 2) {
      return found;
    }
    List<Ring> rings = Stream.concat(Stream.of(outline.shell()), outline.voids().stream()).toList();
    for (int i = 0; i < rings.size(); i++) {
      String pair = new ThinWalls(rings.get(i), i == 0 ? "" : " of void " + i, LEAST - 2.0 * gap.toNanometres()).firstPair();
      if (!pair.isEmpty()) {
        found.add("walls " + pair + " with nothing between, so that an expansion gap of " + gap
            + " does not keep the floors on their two sides apart; leave out what is no wall, or give a wider gap");
      }
    }
    return found;
  }

  private String firstPair() {
    Integer[] order = new Integer[ring.size()];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, Comparator.comparingLong((Integer i) -> Math.min(ring.x(i), ring.x(next(i)))).thenComparing(i -> i));
    int[] active = new int[order.length];
    int size = 0;
    for (int current : order) {
      double from = Math.min(ring.x(current), ring.x(next(current))) - apart;
      double low = Math.min(ring.y(current), ring.y(next(current))) - apart;
      double high = Math.max(ring.y(current), ring.y(next(current))) + apart;
      int kept = 0;
      for (int k = 0; k < size; k++) {
        int other = active[k];
        if (Math.max(ring.x(other), ring.x(next(other))) < from) {
          continue;
        }
        active[kept++] = other;
        if (Math.max(ring.y(other), ring.y(next(other))) >= low && Math.min(ring.y(other), ring.y(next(other))) <= high) {
          int first = Math.min(current, other);
          int second = Math.max(current, other);
          String where = backToBack(first, second);
          if (!where.isEmpty()) {
            return (first + 1) + " and " + (second + 1) + of + " stand back to back " + where;
          }
        }
      }
      active[kept] = current;
      size = kept + 1;
    }
    return "";
  }

  private int next(int corner) {
    return corner + 1 == ring.size() ? 0 : corner + 1;
  }

  /** Cuts the one wall down to what lies close behind the other, on the side where no floor is; empty if that is too short. */
  private String backToBack(int wall, int other) {
    double length = length(wall);
    if (length < TIP || length(other) < TIP) {
      return "";
    }
    double ux = (ring.x(next(wall)) - ring.x(wall)) / length;
    double uy = (ring.y(next(wall)) - ring.y(wall)) / length;
    double fromX = ring.x(other) - ring.x(wall);
    double fromY = ring.y(other) - ring.y(wall);
    double toX = ring.x(next(other)) - ring.x(wall);
    double toY = ring.y(next(other)) - ring.y(wall);
    double[] along = {fromX * ux + fromY * uy, toX * ux + toY * uy};
    double[] behind = {fromX * uy - fromY * ux, toX * uy - toY * ux};
    if (along[1] >= along[0]) {
      return "";
    }
    double[] part = {0, 1};
    cut(part, along, 0, length);
    cut(part, behind, 0, apart);
    if ((part[1] - part[0]) * (along[0] - along[1]) <= TIP) {
      return "";
    }
    return "from " + place(other, part[0]) + " to " + place(other, part[1]);
  }

  /** Narrows a part of a wall, as shares of it, to where a value that runs evenly along it lies between two bounds. */
  private static void cut(double[] part, double[] value, double least, double most) {
    double change = value[1] - value[0];
    if (change == 0) {
      part[1] = value[0] < least || value[0] > most ? part[0] : part[1];
      return;
    }
    double a = (least - value[0]) / change;
    double b = (most - value[0]) / change;
    part[0] = Math.max(part[0], Math.min(a, b));
    part[1] = Math.min(part[1], Math.max(a, b));
  }

  private double length(int wall) {
    double dx = ring.x(next(wall)) - ring.x(wall);
    double dy = ring.y(next(wall)) - ring.y(wall);
    return Math.sqrt(dx * dx + dy * dy);
  }

  private Point place(int wall, double share) {
    return Point.ofNanometres(ring.x(wall) + Math.round((ring.x(next(wall)) - ring.x(wall)) * share),
        ring.y(wall) + Math.round((ring.y(next(wall)) - ring.y(wall)) * share));
  }
}
