package floorcalc.transitions;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What becomes of the casings of a door where the floor meets them.
 * <p>
 * A casing that can be cut is undercut: the saw runs as high over the bare subfloor as the floor is, and a clearance more, so that
 * the floor runs under it and still moves. A frame that cannot be cut stays whole; the floor keeps its gap to it, and the gap is sealed with
 * something elastic. A fire door and its frame are left alone. Common practice, no source.
 *
 * @param treatment what is done, not null
 * @param height height of the saw cut above the bare subfloor, empty if nothing is cut; not null
 * @since 0.1
 */
public record CasingWork(Treatment treatment, Optional<Length> height) {
  /**
   * What is done at a casing.
   *
   * @since 0.1
   */
  public enum Treatment {
    /** It is cut at the height given. */
    UNDERCUT,
    /** It is left whole; the gap of the floor at it is sealed. */
    SEALED_GAP,
    /** It is left alone until whoever answers for fire safety has said what may be done. */
    ASK_FIRST
  }

  /** What is left between floor and casing where nothing else is stated: 1 mm, common practice, no source. */
  public static final Length CLEARANCE = Length.ofMillimetres(1);

  private static final Length MOST_CLEARANCE = Length.ofMillimetres(20);

  /** Checks that no part is null. */
  public CasingWork {
    Objects.requireNonNull(treatment, "treatment");
    Objects.requireNonNull(height, "height");
  }

  /**
   * Returns what becomes of the casings of a door.
   *
   * @param stack the floor that runs under them, not null
   * @param clearance what is left above it, not null, 0 mm to 20 mm
   * @param casing whether they can be cut, not null; where not stated they are taken as if they could
   * @param fire whether it is a fire door, not null
   * @return the work; for an undercut with the steps {@code stack-height} and {@code undercut-height}; findings {@code fire-door} and
   *     {@code frame-not-cut}; not null
   * @throws IllegalArgumentException if the clearance is out of range
   */
  public static Calculated<CasingWork> of(HeightStack stack, Length clearance, Casing casing, FireRating fire) {
    Objects.requireNonNull(stack, "stack");
    Objects.requireNonNull(casing, "casing");
    Objects.requireNonNull(fire, "fire");
    if (Objects.requireNonNull(clearance, "clearance").isNegative() || clearance.compareTo(MOST_CLEARANCE) > 0) {
      throw new IllegalArgumentException("clearance under a casing must be from 0 mm to " + MOST_CLEARANCE + ", but was "
          + clearance + "; give what is left above the floor");
    }
    if (fire == FireRating.FIRE_DOOR) {
      return Calculated.of(new CasingWork(Treatment.ASK_FIRST, Optional.empty()), List.of(), List.of(fireDoor()));
    }
    if (casing == Casing.CANNOT_BE_CUT) {
      return Calculated.of(new CasingWork(Treatment.SEALED_GAP, Optional.empty()), List.of(), List.of(new Finding(
          "frame-not-cut", Severity.NOTE, "", "the frame cannot be cut: keep the expansion gap to it and seal the gap with something"
              + " elastic that lets the floor move", Source.COMMON_PRACTICE)));
    }
    Length height = stack.total().plus(clearance);
    List<Step> steps = new ArrayList<>(stack.calculated().steps());
    steps.add(new Step("undercut-height", "How high above the bare subfloor is a casing cut"
        + (casing == Casing.NOT_STATED ? ", if it can be?" : "?"), "u = H + c",
        List.of(Term.of("H", "floor", stack.total()), new Term("c", "clearance above it", clearance,
            clearance.equals(CLEARANCE) ? Source.COMMON_PRACTICE : Source.GIVEN)), height, Source.COMMON_PRACTICE));
    return Calculated.of(new CasingWork(Treatment.UNDERCUT, Optional.of(height)), steps);
  }

  static Finding fireDoor() {
    return new Finding("fire-door", Severity.WARNING, "", "a fire door: leave leaf, frame and casings as they are, and ask whoever"
        + " answers for fire safety how the floor may meet them and what gap the leaf must keep", Source.COMMON_PRACTICE);
  }
}
