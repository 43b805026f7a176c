package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * A sheet that fits A4 and US Letter within their margins (184 mm by 250 mm), upright or lying, with a room on it at a
 * round scale. Maps
 * room coordinates, whole nanometres with y up, to millimetres on paper with y down.
 */
final class Paper {
  static final double SHORT_SIDE = 184;
  static final double LONG_SIDE = 250;
  /** Height of the caption above the drawing. */
  static final double CAPTION = 14;
  /** Room kept beside the floor for numbers and dimension lines. */
  static final double LEFT = 20;
  static final double RIGHT = 14;
  static final double ABOVE = 13;
  static final double BELOW = 17;
  /** Round scales, near enough to each other that no sheet is left half empty; then 1, 2 and 5 with more noughts. */
  private static final long[] SCALES =
      {10, 15, 20, 25, 30, 40, 50, 60, 75, 100, 125, 150, 200, 250, 300, 400, 500, 750};
  /** Room kept below the drawing for scale bar, key and notes: little first, more if that is not enough. */
  private static final double[] FEET_UPRIGHT = {28, 46};
  private static final double[] FEET_LYING = {22, 37};

  private final double width;
  private final double highest;
  private final long scale;
  private final long minX;
  private final long maxY;
  private final double left;
  private final double top;
  private final double planWidth;
  private final double planHeight;

  private Paper(boolean upright, long scale, long minX, long maxY, double planWidth, double planHeight) {
    this(upright ? SHORT_SIDE : LONG_SIDE, upright ? LONG_SIDE : SHORT_SIDE, scale, minX, maxY, planWidth, planHeight);
  }

  private Paper(double width, double highest, long scale, long minX, long maxY, double planWidth, double planHeight) {
    this.width = width;
    this.highest = highest;
    this.scale = scale;
    this.minX = minX;
    this.maxY = maxY;
    this.planWidth = planWidth;
    this.planHeight = planHeight;
    this.left = LEFT + (width - LEFT - RIGHT - planWidth) / 2;
    this.top = CAPTION + ABOVE;
  }

  /**
   * Returns the sheets that show a room largest, with little room for notes and then with more, each upright if both
   * ways come to the same scale.
   */
  static List<Paper> fit(Outline room) {
    return fit(List.of(room.shell()));
  }

  /** Returns the sheets that show several rings in one frame largest, likewise. */
  static List<Paper> fit(List<Ring> shells) {
    return on(shells, (minX, maxY, width, height) -> {
      List<Paper> papers = new ArrayList<>();
      for (int i = 0; i < FEET_UPRIGHT.length; i++) {
        long upright = scaleFor(SHORT_SIDE, LONG_SIDE - FEET_UPRIGHT[i], width, height);
        long lying = scaleFor(LONG_SIDE, SHORT_SIDE - FEET_LYING[i], width, height);
        long scale = Math.min(upright, lying);
        papers.add(new Paper(upright <= lying, scale, minX, maxY, width / scale, height / scale));
      }
      return papers;
    });
  }

  /** Returns a sheet as large as a room needs at the smallest round scale at which a length is so long on paper. */
  static Paper roll(Ring shell, Length length, double onPaper) {
    long scale = SCALES[0];
    for (long round : SCALES) {
      if (length.toNanometres() / 1e6 / round >= onPaper) {
        scale = round;
      }
    }
    long chosen = scale;
    return on(List.of(shell), (minX, maxY, width, height) -> new Paper(width / chosen + LEFT + RIGHT,
        CAPTION + ABOVE + height / chosen + BELOW, chosen, minX, maxY, width / chosen, height / chosen));
  }

  /**
   * Returns an upright sheet for what is no plan and finds its own places on it.
   *
   * @param footTop the y below which scale bar, key and notes stand
   */
  static Paper figure(long scale, double footTop) {
    return new Paper(SHORT_SIDE, LONG_SIDE, scale, 0, 0, SHORT_SIDE - LEFT - RIGHT, footTop - CAPTION - ABOVE - BELOW);
  }

  private interface Layout<T> {
    T of(long minX, long maxY, double width, double height);
  }

  private static <T> T on(List<Ring> shells, Layout<T> layout) {
    long minX = Long.MAX_VALUE;
    long minY = Long.MAX_VALUE;
    long maxX = Long.MIN_VALUE;
    long maxY = Long.MIN_VALUE;
    for (Ring shell : shells) {
      for (int i = 0; i < shell.size(); i++) {
        minX = Math.min(minX, shell.x(i));
        maxX = Math.max(maxX, shell.x(i));
        minY = Math.min(minY, shell.y(i));
        maxY = Math.max(maxY, shell.y(i));
      }
    }
    return layout.of(minX, maxY, ((double) maxX - minX) / 1e6, ((double) maxY - minY) / 1e6);
  }

  /** Returns the largest round scale at which a room fits beside numbers and dimension lines. */
  private static long scaleFor(double across, double down, double width, double height) {
    return scaleFor(Math.max(width / (across - LEFT - RIGHT), height / (down - CAPTION - ABOVE - BELOW)));
  }

  /** Returns the smallest round scale at or above a ratio. */
  static long scaleFor(double least) {
    for (long scale : SCALES) {
      if (scale >= least) {
        return scale;
      }
    }
    for (long ten = 10;; ten *= 10) {
      for (long scale : new long[] {100, 200, 500}) {
        if (scale * ten >= least) {
          return scale * ten;
        }
      }
    }
  }

  double x(long nanometres) {
    return left + ((double) nanometres - minX) / 1e6 / scale;
  }

  double y(long nanometres) {
    return top + ((double) maxY - nanometres) / 1e6 / scale;
  }

  /** Returns how long a length is on paper. */
  double of(Length length) {
    return length.toNanometres() / 1e6 / scale;
  }

  /** Returns how many millimetres of floor a length on paper stands for. */
  double floor(double onPaper) {
    return onPaper * scale;
  }

  long scale() {
    return scale;
  }

  double width() {
    return width;
  }

  double highest() {
    return highest;
  }

  double planLeft() {
    return left;
  }

  double planTop() {
    return top;
  }

  double planRight() {
    return left + planWidth;
  }

  double planBottom() {
    return top + planHeight;
  }

  /** Returns the y below which scale bar, key and notes stand. */
  double footTop() {
    return planBottom() + BELOW;
  }

  /** Tells whether a box lies in the part of the sheet kept for the drawing. */
  boolean shows(Box box) {
    return box.within(0.5, CAPTION, width() - 0.5, footTop());
  }
}
