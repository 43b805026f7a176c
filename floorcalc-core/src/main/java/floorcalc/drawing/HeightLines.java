package floorcalc.drawing;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One height of a relief: the part of the floor that is as high or higher, and the lines along which it is just so high. Sides that two triangles
 * share fall out, so that the part is drawn with its outer border alone.
 */
final class HeightLines {
  private final Relief relief;
  private final double height;
  /** From each corner of the border to the next ones. */
  private final Map<Long, Deque<Long>> border = new LinkedHashMap<>();
  /** From each end of a piece of line to the next. */
  private final Map<Long, Long> line = new LinkedHashMap<>();
  private int corners;

  private HeightLines(Relief relief, double height) {
    this.relief = relief;
    this.height = height;
    for (int[] triangle : relief.triangles()) {
      add(triangle);
    }
  }

  /** Returns the lines of a height; of one below everything the border is that of the whole floor. */
  static HeightLines of(Relief relief, double height) {
    return new HeightLines(relief, height);
  }

  private void add(int[] triangle) {
    List<Long> part = new ArrayList<>(4);
    for (int i = 0; i < 3; i++) {
      int p = triangle[i];
      int q = triangle[(i + 1) % 3];
      if (isHigh(p)) {
        part.add((long) p);
      }
      if (isHigh(p) != isHigh(q)) {
        part.add(crossing(p, q));
      }
    }
    for (int i = 0; i < part.size(); i++) {
      long from = part.get(i);
      long to = part.get((i + 1) % part.size());
      if (from >= relief.size() && to >= relief.size()) {
        line.put(from, to);
      }
      side(from, to);
    }
  }

  private void side(long from, long to) {
    Deque<Long> back = border.get(to);
    if (back != null && back.remove(from)) {
      corners--;
      if (back.isEmpty()) {
        border.remove(to);
      }
      return;
    }
    border.computeIfAbsent(from, key -> new ArrayDeque<>()).add(to);
    corners++;
  }

  private boolean isHigh(int vertex) {
    return relief.height(vertex) >= height;
  }

  private long crossing(int p, int q) {
    return relief.size() + (long) Math.min(p, q) * relief.size() + Math.max(p, q);
  }

  private double[] place(long node) {
    if (node < relief.size()) {
      return new double[] {relief.x((int) node), relief.y((int) node)};
    }
    int a = (int) ((node - relief.size()) / relief.size());
    int b = (int) ((node - relief.size()) % relief.size());
    double share = (height - relief.height(a)) / (relief.height(b) - relief.height(a));
    return new double[] {relief.x(a) + share * (relief.x(b) - relief.x(a)), relief.y(a) + share * (relief.y(b) - relief.y(a))};
  }

  /** How many corners the border has. */
  int corners() {
    return corners;
  }

  /** Returns the border as path data, closed rings. */
  String region() {
    StringBuilder d = new StringBuilder();
    Map<Long, Deque<Long>> left = new LinkedHashMap<>();
    border.forEach((from, to) -> left.put(from, new ArrayDeque<>(to)));
    while (!left.isEmpty()) {
      long start = left.keySet().iterator().next();
      List<double[]> ring = new ArrayList<>();
      long at = start;
      do {
        ring.add(place(at));
        Deque<Long> next = left.get(at);
        long to = next.poll();
        if (next.isEmpty()) {
          left.remove(at);
        }
        at = to;
      } while (at != start);
      append(d, ring, "Z");
    }
    return d.toString();
  }

  /** Returns the lines of the height, each as places along it; of a closed one the first comes again at its end. */
  List<List<double[]>> lines() {
    Map<Long, Long> left = new LinkedHashMap<>(line);
    List<Long> starts = new ArrayList<>(line.keySet());
    starts.removeAll(new java.util.HashSet<>(line.values()));
    List<List<double[]>> lines = new ArrayList<>();
    for (long start : starts) {
      lines.add(follow(left, start));
    }
    while (!left.isEmpty()) {
      lines.add(follow(left, left.keySet().iterator().next()));
    }
    return lines;
  }

  private List<double[]> follow(Map<Long, Long> left, long start) {
    List<double[]> places = new ArrayList<>(List.of(place(start)));
    Long at = left.remove(start);
    while (at != null) {
      places.add(place(at));
      at = left.remove(at);
    }
    return places;
  }

  /** Returns lines as path data. */
  static String path(List<List<double[]>> lines) {
    StringBuilder d = new StringBuilder();
    lines.forEach(places -> append(d, places, ""));
    return d.toString();
  }

  /** Leaves out what lies nearer to the last place than a fiftieth of a millimetre, and rings that shrink to less than three places. */
  private static void append(StringBuilder d, List<double[]> places, String end) {
    List<double[]> kept = new ArrayList<>();
    for (double[] place : places) {
      double[] last = kept.isEmpty() ? null : kept.get(kept.size() - 1);
      if (last == null || Math.abs(place[0] - last[0]) >= 0.02 || Math.abs(place[1] - last[1]) >= 0.02) {
        kept.add(place);
      }
    }
    if (kept.size() < (end.isEmpty() ? 2 : 3)) {
      return;
    }
    for (int i = 0; i < kept.size(); i++) {
      d.append(i == 0 ? 'M' : 'L');
      Svg.appendNumber(d, kept.get(i)[0]);
      d.append(' ');
      Svg.appendNumber(d, kept.get(i)[1]);
    }
    d.append(end);
  }
}
