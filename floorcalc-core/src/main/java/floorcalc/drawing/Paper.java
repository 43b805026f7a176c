package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;

/**
 * A sheet of A4 within its margins (190 mm by 277 mm), upright or lying, with a room on it at a round scale. Maps
 * room coordinates, whole nanometres with y up, to millimetres on paper with y down.
 */
final class Paper {
  static final double SHORT_SIDE = 190;
  static final double LONG_SIDE = 277;
  /** Height of the caption above the drawing. */
  static final double CAPTION = 14;
  /** Room kept beside the floor for numbers and dimension lines. */
  static final double LEFT = 20;
  static final double RIGHT = 14;
  static final double ABOVE = 13;
  static final double BELOW = 17;
  /** The scales of common scale rulers; after the last come its multiples by powers of ten. */
  private static final long[] SCALES = {10, 20, 25, 40, 50, 75, 100, 125, 200, 250, 400, 500, 750};
  /** Room kept below the drawing for scale bar, key and notes: upright has shorter and therefore more lines. */
  private static final double FOOT_UPRIGHT = 46;
  private static final double FOOT_LYING = 37;

  private final boolean upright;
  private final long scale;
  private final long minX;
  private final long maxY;
  private final double left;
  private final double top;
  private final double planWidth;
  private final double planHeight;

  private Paper(boolean upright, long scale, long minX, long maxY, double planWidth, double planHeight) {
    this.upright = upright;
    this.scale = scale;
    this.minX = minX;
    this.maxY = maxY;
    this.planWidth = planWidth;
    this.planHeight = planHeight;
    this.left = LEFT + (width() - LEFT - RIGHT - planWidth) / 2;
    this.top = CAPTION + ABOVE;
  }

  /** Returns the sheet that shows a room largest; upright if both ways come to the same scale. */
  static Paper fit(Outline room) {
    Ring shell = room.shell();
    long minX = Long.MAX_VALUE;
    long minY = Long.MAX_VALUE;
    long maxX = Long.MIN_VALUE;
    long maxY = Long.MIN_VALUE;
    for (int i = 0; i < shell.size(); i++) {
      minX = Math.min(minX, shell.x(i));
      maxX = Math.max(maxX, shell.x(i));
      minY = Math.min(minY, shell.y(i));
      maxY = Math.max(maxY, shell.y(i));
    }
    double width = ((double) maxX - minX) / 1e6;
    double height = ((double) maxY - minY) / 1e6;
    double acrossUpright = SHORT_SIDE - LEFT - RIGHT;
    double downUpright = LONG_SIDE - CAPTION - ABOVE - BELOW - FOOT_UPRIGHT;
    double acrossLying = LONG_SIDE - LEFT - RIGHT;
    double downLying = SHORT_SIDE - CAPTION - ABOVE - BELOW - FOOT_LYING;
    long scaleUpright = scaleFor(StrictMath.max(width / acrossUpright, height / downUpright));
    long scaleLying = scaleFor(StrictMath.max(width / acrossLying, height / downLying));
    boolean upright = scaleUpright <= scaleLying;
    long scale = StrictMath.min(scaleUpright, scaleLying);
    return new Paper(upright, scale, minX, maxY, width / scale, height / scale);
  }

  private static long scaleFor(double least) {
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
    return upright ? SHORT_SIDE : LONG_SIDE;
  }

  double highest() {
    return upright ? LONG_SIDE : SHORT_SIDE;
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
