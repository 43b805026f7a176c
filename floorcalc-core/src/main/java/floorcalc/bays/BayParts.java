package floorcalc.bays;

import floorcalc.outline.Line;
import floorcalc.outline.Outline;
import floorcalc.outline.PartedOutline;
import java.util.List;
import java.util.Objects;

/**
 * A room parted at the middle lines of its expansion breaks. Each part less its expansion gap is a bay. Immutable and
 * thread-safe.
 *
 * @since 0.1
 */
public final class BayParts {
  private final Outline room;
  private final List<ExpansionBreak> breaks;
  private final List<Outline> parts;

  private BayParts(Outline room, List<ExpansionBreak> breaks, List<Outline> parts) {
    this.room = room;
    this.breaks = breaks;
    this.parts = parts;
  }

  /**
   * Parts a room.
   *
   * @param room the walls and voids, not null, sound by {@link floorcalc.outline.OutlineCheck}
   * @param breaks its breaks, may be empty, not null; ends within a nanometre of a wall are on it
   * @return the parts, not null
   * @throws IllegalArgumentException if a break leaves the floor, runs along a wall or ends on the open floor
   */
  public static BayParts of(Outline room, List<ExpansionBreak> breaks) {
    List<Line> lines = breaks.stream().map(ExpansionBreak::middle).toList();
    return new BayParts(Objects.requireNonNull(room, "room"), List.copyOf(breaks), PartedOutline.of(room, lines));
  }

  /**
   * Returns the room.
   *
   * @return the outline as it was given, not null
   */
  public Outline room() {
    return room;
  }

  /**
   * Returns the breaks.
   *
   * @return an unmodifiable list in the order given, not null
   */
  public List<ExpansionBreak> breaks() {
    return breaks;
  }

  /**
   * Returns the parts; the room itself if there is no break.
   *
   * @return an unmodifiable list in the order of the parts' lowest corners, of equally low ones the leftmost first; not empty, not
   *     null
   */
  public List<Outline> parts() {
    return parts;
  }
}
