package floorcalc.transitions;

import floorcalc.measure.Length;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import java.util.Objects;
import java.util.Optional;

/**
 * How large a space at the leaf of a door may be.
 *
 * @param space which space, not null
 * @param least the least, itself included, empty for none; not null
 * @param most the greatest, itself included, empty for none; not null
 * @param source whose limit it is, not null
 * @since 0.1
 */
public record DoorLimit(DoorSpace space, Optional<Length> least, Optional<Length> most, Source source) {
  /** Checks that no part is null. */
  public DoorLimit {
    Objects.requireNonNull(space, "space");
    Objects.requireNonNull(least, "least");
    Objects.requireNonNull(most, "most");
    Objects.requireNonNull(source, "source");
  }

  /**
   * Returns by how much a space falls short of the least. At the bottom of a leaf it is what would have to come off.
   *
   * @param found the space as it is, not null
   * @return the shortfall, 0 mm if it suffices; not null
   */
  public Length lacking(Length found) {
    Objects.requireNonNull(found, "found");
    return least.map(one -> one.minus(found).max(Length.ZERO)).orElse(Length.ZERO);
  }

  /**
   * Holds a space against this limit.
   *
   * @param set the name of the set that the limit is of, not null
   * @param found the space as it is, not null
   * @param fire whether it is a fire door, of which nothing is ever cut; not null
   * @return the judgement, with the code {@code door-leaf-clearance}; not null
   */
  public Judgement judge(String set, Length found, FireRating fire) {
    Objects.requireNonNull(set, "set");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(fire, "fire");
    boolean tooSmall = lacking(found).isPositive();
    boolean tooLarge = most.isPresent() && found.compareTo(most.get()) > 0;
    return new Judgement("door-leaf-clearance", space.words() + ", by '" + set + "'", "", found.toString(), words(),
        tooSmall || tooLarge ? Outcome.NOT_MET : Outcome.MET, source,
        tooSmall ? tooSmall(lacking(found), fire) : tooLarge ? "wider than usual: draught, light and sound pass; nothing is cut" : "");
  }

  private String tooSmall(Length lacking, FireRating fire) {
    if (fire == FireRating.FIRE_DOOR) {
      return "leave the door as it is; ask whoever answers for fire safety before the floor is laid";
    }
    if (space == DoorSpace.AT_HEAD_OR_JAMB) {
      return "hang the leaf anew";
    }
    return lacking + " would have to come off the leaf; first make sure that it is no fire door and that its maker allows as much"
        + (fire == FireRating.NO_FIRE_DOOR ? "" : " (whether it is a fire door was not stated)");
  }

  private String words() {
    if (least.isPresent() && most.isPresent()) {
      return "from " + least.get() + " to " + most.get();
    }
    return least.map(one -> "at least " + one).orElseGet(() -> most.map(one -> "at most " + one).orElse("none"));
  }
}
