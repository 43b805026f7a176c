package floorcalc.bays;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.rules.LayingRules;
import floorcalc.working.Calculated;
import java.util.List;
import java.util.Objects;

/**
 * Where a room is split so that each bay is free to move and no longer or wider than it may be, with the least length of profiles.
 * Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class BaySplit {
  private final Outline room;
  private final List<ExpansionBreak> breaks;
  private final List<Outline> parts;
  private final Length length;
  private final boolean provenLeast;

  BaySplit(BayParts parts, boolean provenLeast) {
    this.room = parts.room();
    this.breaks = parts.breaks();
    this.parts = parts.parts();
    this.length = breaks.stream().map(ExpansionBreak::length).reduce(Length.ZERO, Length::plus);
    this.provenLeast = provenLeast;
  }

  /**
   * Splits a room.
   *
   * @param room its walls and voids, not null, sound by {@link floorcalc.outline.OutlineCheck}
   * @param boards the way the boards run, not null
   * @param openings the doorways inside the outline, may be empty, not null
   * @param rules the limits, not null
   * @return the breaks with their working, not null
   * @throws IllegalArgumentException if an opening does not lie across the floor from wall to wall, with what to do
   */
  public static Calculated<BaySplit> of(Outline room, Direction boards, List<Opening> openings, LayingRules rules) {
    Objects.requireNonNull(room, "room");
    Objects.requireNonNull(boards, "boards");
    Objects.requireNonNull(rules, "rules");
    return new SplitSearch(room, boards, List.copyOf(openings), rules).run();
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
   * @return an unmodifiable list, by their lower ends from below, of equally low ones from the left; empty if none is needed; not null
   */
  public List<ExpansionBreak> breaks() {
    return breaks;
  }

  /**
   * Returns the parts of the room between the breaks; the room itself if there is none.
   *
   * @return an unmodifiable list in the order of {@link BayParts#parts()}, not null
   */
  public List<Outline> parts() {
    return parts;
  }

  /**
   * Returns the length of all breaks, which is that of the profiles over them.
   *
   * @return the sum of the breaks' lengths, not negative
   */
  public Length length() {
    return length;
  }

  /**
   * Tells whether no other choice among the lines tried has less length.
   *
   * @return true if the search was carried through
   */
  public boolean isProvenLeast() {
    return provenLeast;
  }
}
