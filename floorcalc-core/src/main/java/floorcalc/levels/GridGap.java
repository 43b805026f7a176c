package floorcalc.levels;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import java.util.Objects;

/**
 * The greatest gap, measured against what is allowed, that an edge finds over a grid of levels in one direction.
 *
 * @param way which way the edge lies, not null
 * @param line the number of the row, column or diagonal, counted from 1 along y, along x or from the first corner; 1 or more
 * @param span how long the edge is, not null
 * @param lowSpot the reading with the gap over it, not null
 * @param from where the edge rests on one side; not null
 * @param to where it rests on the other side; not null
 * @param gap how deep the floor lies below the edge, to the nearest nanometre; negative if every reading stands above the chords over
 *     it; not null
 * @param allowed the gap allowed, not null
 * @since 0.1
 */
public record GridGap(LineWay way, int line, Length span, Point lowSpot, Point from, Point to, Length gap, Length allowed) {
  /** Checks that no part is null. */
  public GridGap {
    Objects.requireNonNull(way, "way");
    Objects.requireNonNull(span, "span");
    Objects.requireNonNull(lowSpot, "lowSpot");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(gap, "gap");
    Objects.requireNonNull(allowed, "allowed");
  }

  /**
   * Tells whether the gap is allowed.
   *
   * @return true if it is no greater than allowed
   */
  public boolean isAllowed() {
    return gap.compareTo(allowed) <= 0;
  }

  /**
   * Returns one line.
   *
   * @return for example {@code "4 mm under 2000 mm along row 3, at x = 1000 mm, y = 500 mm"}, not null
   */
  @Override
  public String toString() {
    return gap + " under " + span + " along " + way.words() + " " + line + ", at x = " + lowSpot.x() + ", y = "
        + lowSpot.y();
  }
}
