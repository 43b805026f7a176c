package floorcalc.finishing;

import floorcalc.fittings.HoleCut;
import java.util.Objects;

/**
 * How the boards of a bay are cut for a pipe of its room, or for several in one slot.
 *
 * @param room the name of the room, not null
 * @param bay the name of the bay whose boards are cut; empty if the pipe stands clear of all laid boards; not null
 * @param cut the hole, its places measured in the frame of the bay; not null
 * @since 0.1
 */
public record PipeCut(String room, String bay, HoleCut cut) {
  /** Checks that no part is null. */
  public PipeCut {
    Objects.requireNonNull(room, "room");
    Objects.requireNonNull(bay, "bay");
    Objects.requireNonNull(cut, "cut");
  }
}
