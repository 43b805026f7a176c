package floorcalc.drawing;

import floorcalc.levels.Levels;
import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.List;

/** Round heights between the lowest and the highest reading, few enough to be told apart by their tones. */
final class HeightBands {
  private static final int MOST_BANDS = 8;
  /** Corners of all borders together, so that no drawing grows without bound. */
  private static final int MOST_CORNERS = 30_000;
  private static final int DARKEST = 0x9c;
  private static final int LIGHTEST = 0xff;
  private static final long[] METRIC = {100_000, 200_000, 500_000};
  /** Sixty-fourths of an inch up to half an inch, then 1, 2 and 5 inches with more noughts. */
  private static final long INCH = 25_400_000;
  private static final int[] PARTS = {64, 32, 16, 8, 4, 2};

  private final Length step;
  private final List<HeightLines> lines = new ArrayList<>();
  private final List<Length> heights = new ArrayList<>();

  private HeightBands(Length step) {
    this.step = step;
  }

  static HeightBands of(Relief relief, Levels levels, Measures measures) {
    long low = levels.lowest().height().toNanometres();
    long high = levels.highest().height().toNanometres();
    for (int i = 0;; i++) {
      Length step = Length.ofNanometres(step(measures, i));
      long first = Math.floorDiv(low, step.toNanometres()) + 1;
      long last = Math.floorDiv(high - 1, step.toNanometres());
      if (last - first + 2 > MOST_BANDS) {
        continue;
      }
      HeightBands bands = new HeightBands(step);
      for (long k = first; k <= last; k++) {
        bands.heights.add(step.multipliedBy(k));
        bands.lines.add(HeightLines.of(relief, (double) k * step.toNanometres()));
      }
      if (bands.lines.size() <= 1 || bands.lines.stream().mapToInt(HeightLines::corners).sum() <= MOST_CORNERS) {
        return bands;
      }
    }
  }

  private static long step(Measures measures, int i) {
    if (measures == Measures.FEET_AND_INCHES && i < PARTS.length) {
      return INCH / PARTS[i];
    }
    boolean metric = measures == Measures.MILLIMETRES;
    int further = metric ? i : i - PARTS.length;
    long step = metric ? METRIC[further % 3] : INCH * new int[] {1, 2, 5}[further % 3];
    for (int noughts = further / 3; noughts > 0; noughts--) {
      step *= 10;
    }
    return step;
  }

  Length step() {
    return step;
  }

  /** The heights that part the bands, lowest first. */
  List<Length> heights() {
    return heights;
  }

  HeightLines lines(int height) {
    return lines.get(height);
  }

  /** The tone of a band, the lowest band darkest, from 0 to the number of heights. */
  String tone(int band) {
    int steps = heights.size();
    int grey = steps == 0 ? LIGHTEST : DARKEST + (LIGHTEST - DARKEST) * band / steps;
    String hex = Integer.toHexString(grey);
    return "#" + hex + hex + hex;
  }
}
