package floorcalc.drawing;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** Advance widths of two sans-serif faces, in em: what a viewer may really set. The sources stand in the file. */
final class Widths {
  static final Map<Integer, double[]> FACES = read();

  private Widths() {
  }

  private static Map<Integer, double[]> read() {
    Map<Integer, double[]> widths = new TreeMap<>();
    try (BufferedReader lines = new BufferedReader(new InputStreamReader(
        Widths.class.getResourceAsStream("/drawing/advance_widths.csv"), StandardCharsets.UTF_8))) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        if (!line.startsWith("#")) {
          String[] cells = line.split(",");
          widths.put(Integer.parseInt(cells[0], 16),
              new double[] {Integer.parseInt(cells[1]) / 1000.0, Integer.parseInt(cells[2]) / 1000.0});
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return widths;
  }

  /** Returns the width of a text in the wider of the two faces; a character that neither has counts one em. */
  static double of(String text) {
    return Math.max(of(text, 0), of(text, 1));
  }

  private static double of(String text, int face) {
    return text.codePoints().mapToDouble(c -> FACES.containsKey(c) ? FACES.get(c)[face] : 1.0).sum();
  }
}
