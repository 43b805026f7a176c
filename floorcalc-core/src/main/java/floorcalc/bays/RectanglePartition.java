package floorcalc.bays;

import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.List;
import java.util.Objects;

/**
 * The fewest rectangles into which a right-angled room can be parted: {@code n/2 + h − g − 1}, where n is the number of corners (those
 * of the voids included), h the number of voids, and g the greatest number of chords that share no point, a chord being a line
 * along x or y across the floor from one inner corner to another. Immutable and thread-safe.
 * <p>
 * Each inner corner needs a cut, and a chord serves two of them. Chords that share a point are one along x and one along y, so the
 * greatest set of chords that share none is what is left of all of them less a greatest matching between the chords along x
 * and those along y that meet.
 * <p>
 * It is a check on {@link BaySplit}: where no recess, void or run is let pass, every bay is a rectangle, and there are at least so
 * many. Fewest bays and least length of breaks need not go together.
 *
 * @since 0.1
 */
public final class RectanglePartition {
  private static final Source FORMULA = new Source("Graph-theoretic solutions to computational geometry problems", "D. Eppstein", 2009,
      "rectangle partition; formula from memory, checked by an exact cover", Standing.FROM_MEMORY);

  private final int chords;
  private final int disjoint;
  private final int rectangles;

  private RectanglePartition(int chords, int disjoint, int rectangles) {
    this.chords = chords;
    this.disjoint = disjoint;
    this.rectangles = rectangles;
  }

  /**
   * Counts the rectangles.
   *
   * @param room a room whose walls all lie along x or y, not null, sound by {@link floorcalc.outline.OutlineCheck}
   * @return the counts with their working, not null
   * @throws IllegalArgumentException if a wall lies otherwise, with its ends
   */
  public static Calculated<RectanglePartition> of(Outline room) {
    Objects.requireNonNull(room, "room");
    requireRightAngled(room.shell(), "");
    for (int v = 0; v < room.voids().size(); v++) {
      requireRightAngled(room.voids().get(v), "void " + (v + 1) + ", ");
    }
    InnerChords chords = new InnerChords(room);
    int n = chords.corners();
    int h = room.voids().size();
    int all = chords.count();
    int matched = chords.matched();
    int g = all - matched;
    int fewest = n / 2 + h - g - 1;
    List<Step> steps = List.of(
        new Step("disjoint-chords", "How many chords from inner corner to inner corner share no point, at most?", "g = c - m",
            List.of(Term.of("c", "chords along x or y from inner corner to inner corner", all),
                Term.of("m", "pairs of meeting chords, one along x and one along y, each chord in one pair at most", matched)),
            g, FORMULA),
        new Step("fewest-rectangles", "Into how few rectangles can the room be parted?", "r = n / 2 + h - g - 1",
            List.of(Term.of("n", "corners, on straight walls none", n), Term.of("h", "voids", h),
                Term.of("g", "chords that share no point", g)),
            fewest, FORMULA));
    return Calculated.of(new RectanglePartition(all, g, fewest), steps);
  }

  private static void requireRightAngled(Ring ring, String which) {
    for (int i = 0; i < ring.size(); i++) {
      int j = (i + 1) % ring.size();
      if (ring.x(i) != ring.x(j) && ring.y(i) != ring.y(j)) {
        Point from = ring.corners().get(i);
        Point to = ring.corners().get(j);
        throw new IllegalArgumentException(which + "wall " + (i + 1) + " from " + from + " to " + to
            + " lies neither along x nor along y; rectangles are counted in right-angled rooms alone");
      }
    }
  }

  /**
   * Returns how many chords there are.
   *
   * @return the number of lines along x or y from inner corner to inner corner
   */
  public int chords() {
    return chords;
  }

  /**
   * Returns how many chords share no point, at most.
   *
   * @return the number g
   */
  public int disjointChords() {
    return disjoint;
  }

  /**
   * Returns the fewest rectangles.
   *
   * @return the number, at least 1
   */
  public int rectangles() {
    return rectangles;
  }
}
