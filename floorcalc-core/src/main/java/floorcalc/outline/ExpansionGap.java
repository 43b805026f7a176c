package floorcalc.outline;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The expansion gap of a room: what is left to lay when the floor stays a gap away from every wall and every void, how
 * long the gap is and what area it takes.
 * <p>
 * Each wall is moved inward by the gap, and the moved walls meet at mitred corners, as the strips of a mitred skirting do. The
 * floor may come out in one piece, in several (a neck of the room is narrower than twice the gap) or not at all: all are
 * answers. While no wall is swallowed, area(d) = A − P·d + d²·Σ cot(θ/2), θ the angle of the floor at each corner; reflex
 * corners enter with a negative cotangent.
 * <p>
 * Each corner of the laid area is the true corner, rounded to the nearest nanometre along x and y: within one nanometre
 * for rooms of up to 200 m. At a reflex corner of more than 348.5 degrees (the tip of a needle) the mitre is cut off square ten
 * gaps from the corner. Floor no more than a micrometre wide, pieces and necks, counts as swallowed. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class ExpansionGap {
  /** Nanometres. */
  private static final long MOST_MORE = 31;

  private final Outline room;
  private final Length gap;
  private final List<Outline> laid;

  private ExpansionGap(Outline room, Length gap, List<Outline> laid) {
    this.room = room;
    this.gap = gap;
    this.laid = laid;
  }

  /**
   * Takes the expansion gap off a room.
   *
   * @param room the walls and voids, not null, sound by {@link OutlineCheck}
   * @param gap the gap at everything fixed, not null, not negative; with zero the whole room is laid
   * @return the gap with its working; findings say whether it splits or swallows the floor; not null
   * @throws IllegalArgumentException if the gap is negative or the outline is not sound
   */
  public static Calculated<ExpansionGap> inset(Outline room, Length gap) {
    Objects.requireNonNull(room, "room");
    Objects.requireNonNull(gap, "gap");
    if (gap.isNegative()) {
      throw new IllegalArgumentException("the expansion gap must be 0 mm or more, but was " + gap);
    }
    List<OutlineFault> faults = OutlineCheck.faultsOf(room);
    if (!faults.isEmpty()) {
      throw new IllegalArgumentException("the outline is not sound: "
          + faults.stream().map(OutlineFault::message).collect(Collectors.joining(" | ")));
    }
    List<Mitres> rings = room.rings().stream().map(Mitres::new).toList();
    Optional<Outline> whole = whole(room, rings, gap.toNanometres());
    List<Outline> open = whole.map(List::of).orElseGet(() -> pieces(room, rings, gap.toNanometres()));
    List<Outline> laid = Necks.closed(open);
    ExpansionGap result = new ExpansionGap(room, gap, laid);
    List<Finding> findings = whole.isPresent() && laid == open ? List.of() : GapFindings.of(room, gap, laid);
    return Calculated.of(result, GapWorking.steps(result, rings), findings);
  }

  /** Returns the floor if the gap does no more than move every wall. */
  private static Optional<Outline> whole(Outline room, List<Mitres> rings, long gap) {
    return gap == 0 ? Optional.of(room) : isWide(room, gap)
        ? MovedWalls.inset(rings, gap).filter(laid -> OutlineCheck.isApart(laid.rings())) : Optional.empty();
  }

  private static List<Outline> pieces(Outline room, List<Mitres> rings, long gap) {
    if (!isWide(room, gap)) {
      return List.of();
    }
    // Where walls lie within nanometres of each other, corners rounded to whole ones may come nearer than the gap: then a trifle more is taken off.
    for (long more = 0; more <= MOST_MORE; more = 2 * more + 1) {
      List<Outline> pieces = Spurs.cutOff(StripsTaken.inset(rings, gap + more));
      if (Clearance.isKept(room.rings(), pieces, gap)) {
        return pieces;
      }
    }
    throw new IllegalStateException("a floor came nearer to a wall than its gap of " + gap + " nm: " + Wkt.write(room));
  }

  /** Tells whether the room is more than two gaps wide and high, so that the gap alone need not swallow it. */
  private static boolean isWide(Outline room, long gap) {
    Extent extent = room.extent();
    return gap < Math.min(extent.width().toNanometres(), extent.height().toNanometres()) - gap;
  }

  /**
   * Returns the room the gap was taken off.
   *
   * @return the room, not null
   */
  public Outline room() {
    return room;
  }

  /**
   * Returns the gap.
   *
   * @return the gap, not negative
   */
  public Length gap() {
    return gap;
  }

  /**
   * Returns the pieces of floor that are left to lay: none if the gap swallows the room, several if it splits it.
   * <p>
   * One piece that keeps every wall has its corners in the room's order, starting at the room's first corner. Otherwise
   * each ring starts at its lowest corner, of equally low ones the leftmost; pieces, and voids within a piece, are
   * ordered by that corner, lower first, then from the left.
   *
   * @return an unmodifiable list, not null
   */
  public List<Outline> laid() {
    return laid;
  }

  /**
   * Returns the length of all walls and voids that the gap runs along, measured on the walls: each wall rounded to the
   * nearest nanometre, then added.
   *
   * @return the perimeter, not null
   */
  public Length perimeter() {
    return room.perimeter();
  }

  /**
   * Returns the area left to lay, exactly by the corners of the pieces.
   *
   * @return the area, not negative
   */
  public Area laidArea() {
    return laid.stream().map(Outline::area).reduce(Area.ZERO, Area::plus);
  }

  /**
   * Returns the area that the gap takes: the room less what is laid.
   *
   * @return the area, not negative
   */
  public Area areaTaken() {
    return room.area().minus(laidArea());
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof ExpansionGap other && room.equals(other.room) && gap.equals(other.gap);
  }

  @Override
  public int hashCode() {
    return room.hashCode() * 31 + gap.hashCode();
  }

  /**
   * Returns the gap as text.
   *
   * @return for example {@code "a gap of 10 mm leaves 1 piece of 19.8204 m²"}, not null
   */
  @Override
  public String toString() {
    return "a gap of " + gap + " leaves " + laid.size() + (laid.size() == 1 ? " piece of " : " pieces of ") + laidArea();
  }
}
