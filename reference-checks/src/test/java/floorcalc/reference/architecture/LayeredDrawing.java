package floorcalc.reference.architecture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/** Draws a graph in layers, the ground at the bottom: a line runs from each box down to those that it knows. */
final class LayeredDrawing {
  private static final double BOX = 40;
  private static final double LAYER = 84;
  private static final double SPACE = 22;
  private static final double MARGIN = 24;
  private static final int SWEEPS = 24;

  /** A box, or a place where a line passes a layer. */
  private static final class Spot {
    final String name;
    final double width;
    final List<Spot> up = new ArrayList<>();
    final List<Spot> down = new ArrayList<>();
    double x;

    Spot(String name, double width) {
      this.name = name;
      this.width = width;
    }
  }

  private final List<List<Spot>> layers = new ArrayList<>();
  private final Map<String, Spot> boxes = new TreeMap<>();
  private final Function<String, String> notes;

  private LayeredDrawing(PackageGraph graph, Function<String, String> notes) {
    this.notes = notes;
    for (String name : graph.names()) {
      double width = 20 + Math.max(8.0 * name.length(), 6.2 * notes.apply(name).length());
      boxes.put(name, new Spot(name, width));
      layer(graph.height(name)).add(boxes.get(name));
    }
    for (String name : graph.names()) {
      graph.knownBy(name).forEach(other -> join(boxes.get(name), graph.height(name), boxes.get(other), graph.height(other)));
    }
    for (int i = 0; i < SWEEPS; i++) {
      order(i % 2 == 0);
    }
    layers.forEach(LayeredDrawing::placeEvenly);
    for (int i = 0; i < SWEEPS; i++) {
      place(i % 2 == 0);
    }
  }

  /** The drawing as SVG; a note stands below the name of a box. */
  static String svg(PackageGraph graph, Function<String, String> notes, String title) {
    return new LayeredDrawing(graph, notes).write(title);
  }

  private List<Spot> layer(int height) {
    while (layers.size() <= height) {
      layers.add(new ArrayList<>());
    }
    return layers.get(height);
  }

  private void join(Spot upper, int from, Spot lower, int to) {
    Spot above = upper;
    for (int height = from - 1; height > to; height--) {
      Spot passing = new Spot("", 6);
      layer(height).add(passing);
      link(above, passing);
      above = passing;
    }
    link(above, lower);
  }

  private static void link(Spot above, Spot below) {
    above.down.add(below);
    below.up.add(above);
  }

  /** Sorts each layer by the middle of what its spots are joined to in the layer before, so that few lines cross. */
  private void order(boolean upwards) {
    for (int i = 1; i < layers.size(); i++) {
      List<Spot> before = layers.get(upwards ? i - 1 : layers.size() - i);
      List<Spot> sorted = layers.get(upwards ? i : layers.size() - 1 - i);
      for (int k = 0; k < before.size(); k++) {
        before.get(k).x = k + 0.5 - before.size() / 2.0;
      }
      for (int k = 0; k < sorted.size(); k++) {
        sorted.get(k).x = k + 0.5 - sorted.size() / 2.0;
      }
      Map<Spot, Double> middle = new IdentityHashMap<>();
      sorted.forEach(spot -> middle.put(spot, mean(upwards ? spot.down : spot.up, spot.x)));
      sorted.sort(Comparator.comparingDouble(middle::get));
    }
  }

  private static double mean(List<Spot> others, double otherwise) {
    return others.stream().mapToDouble(other -> other.x).average().orElse(otherwise);
  }

  private static void placeEvenly(List<Spot> layer) {
    double width = layer.stream().mapToDouble(spot -> spot.width + SPACE).sum();
    double x = -width / 2;
    for (Spot spot : layer) {
      spot.x = x + (spot.width + SPACE) / 2;
      x += spot.width + SPACE;
    }
  }

  /** Moves the spots of each layer towards what they are joined to, without changing their order. */
  private void place(boolean upwards) {
    for (int i = 0; i < layers.size(); i++) {
      List<Spot> layer = layers.get(upwards ? i : layers.size() - 1 - i);
      double[] wish = new double[layer.size()];
      for (int k = 0; k < wish.length; k++) {
        Spot spot = layer.get(k);
        List<Spot> others = new ArrayList<>(spot.up);
        others.addAll(spot.down);
        wish[k] = mean(others, spot.x);
      }
      double[] fromLeft = wish.clone();
      double[] fromRight = wish.clone();
      for (int k = 1; k < wish.length; k++) {
        fromLeft[k] = Math.max(wish[k], fromLeft[k - 1] + apart(layer, k));
        int j = wish.length - 1 - k;
        fromRight[j] = Math.min(wish[j], fromRight[j + 1] - apart(layer, j + 1));
      }
      for (int k = 0; k < wish.length; k++) {
        layer.get(k).x = (fromLeft[k] + fromRight[k]) / 2;
      }
    }
  }

  private static double apart(List<Spot> layer, int k) {
    return (layer.get(k - 1).width + layer.get(k).width) / 2 + SPACE;
  }

  private String write(String title) {
    double left = all().mapToDouble(spot -> spot.x - spot.width / 2).min().orElseThrow() - MARGIN;
    double right = all().mapToDouble(spot -> spot.x + spot.width / 2).max().orElseThrow() + MARGIN;
    double height = layers.size() * LAYER - (LAYER - BOX) + 2 * MARGIN;
    StringBuilder svg = new StringBuilder();
    svg.append(String.format(Locale.ROOT, "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" width=\"%.0f\" height=\"%.0f\""
        + " role=\"img\" font-family=\"sans-serif\" text-anchor=\"middle\">\n", right - left, height, right - left, height));
    svg.append("<title>").append(title).append("</title>\n<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n");
    svg.append("<g fill=\"none\" stroke=\"#7a7268\" stroke-width=\"1.3\">\n");
    for (int i = layers.size() - 1; i > 0; i--) {
      double from = top(i) + BOX;
      for (Spot spot : layers.get(i)) {
        for (Spot below : spot.down) {
          double start = spot.name.isEmpty() ? from - BOX : from;
          svg.append(String.format(Locale.ROOT, "<path d=\"M%.1f %.1fL%.1f %.1fC%.1f %.1f %.1f %.1f %.1f %.1f\"/>\n", spot.x - left, start,
              spot.x - left, from, spot.x - left, from + 24, below.x - left, top(i - 1) - 24, below.x - left, top(i - 1)));
        }
      }
    }
    svg.append("</g>\n");
    for (int i = layers.size() - 1; i >= 0; i--) {
      for (Spot spot : layers.get(i)) {
        if (!spot.name.isEmpty()) {
          box(svg, spot, left, top(i));
        }
      }
    }
    return svg.append("</svg>\n").toString();
  }

  private void box(StringBuilder svg, Spot spot, double left, double top) {
    String note = notes.apply(spot.name);
    svg.append(String.format(Locale.ROOT, "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.0f\" rx=\"4\" fill=\"#f4efe6\""
        + " stroke=\"#3b3630\"/>\n", spot.x - left - spot.width / 2, top, spot.width, BOX));
    svg.append(String.format(Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" font-size=\"14\" fill=\"#1c1915\">%s</text>\n",
        spot.x - left, top + (note.isEmpty() ? 25 : 18), spot.name));
    if (!note.isEmpty()) {
      svg.append(String.format(Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" font-size=\"11\" fill=\"#4d463d\">%s</text>\n",
          spot.x - left, top + 33, note));
    }
  }

  private double top(int height) {
    return MARGIN + (layers.size() - 1 - height) * LAYER;
  }

  private Stream<Spot> all() {
    return layers.stream().flatMap(List::stream);
  }
}
