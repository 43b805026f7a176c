package floorcalc.deviations;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import java.util.Objects;
import java.util.Optional;

/**
 * What one source says on one size of a board: at least, more than, at most.
 *
 * @param size which size, not null
 * @param least the smallest size, itself allowed unless {@code moreThan}; empty if there is none; not null
 * @param moreThan true if the smallest size itself is not allowed
 * @param most the greatest size, itself allowed; empty if there is none; not null
 * @param force whether the standard asks for it or calls it usual, not null
 * @param source whose limit it is, not null
 * @since 0.1
 */
public record SizeLimit(BoardSize size, Optional<Length> least, boolean moreThan, Optional<Length> most, Force force,
    Source source) {

  /**
   * How much a size weighs.
   *
   * @since 0.1
   */
  public enum Force {
    /** The standard is for boards of these sizes. */
    REQUIRED,
    /** Boards to the standard are usually of these sizes; others are not against it. */
    USUAL
  }

  /**
   * Checks every part.
   *
   * @throws IllegalArgumentException if there is no bound, or the bounds are the wrong way round
   */
  public SizeLimit {
    Objects.requireNonNull(size, "size");
    Objects.requireNonNull(force, "force");
    Objects.requireNonNull(source, "source");
    if (least.isEmpty() && most.isEmpty()) {
      throw new IllegalArgumentException("a limit of the " + size.words() + " must have a least or a greatest size");
    }
    if (least.isPresent() && most.isPresent() && least.get().compareTo(most.get()) > 0) {
      throw new IllegalArgumentException("the least " + size.words() + ", " + least.get() + ", is above the greatest, " + most.get()
          + "; give the lesser one first");
    }
  }

  /**
   * Returns a least size.
   *
   * @param size which size, not null
   * @param least the smallest size, itself allowed, not null
   * @param source whose limit it is, not null
   * @return the limit, not null
   */
  public static SizeLimit atLeast(BoardSize size, Length least, Source source) {
    Objects.requireNonNull(least, "least");
    return new SizeLimit(size, Optional.of(least), false, Optional.empty(), Force.REQUIRED, source);
  }

  /**
   * Returns a size to exceed.
   *
   * @param size which size, not null
   * @param bound the size that is just not allowed, not null
   * @param source whose limit it is, not null
   * @return the limit, not null
   */
  public static SizeLimit moreThan(BoardSize size, Length bound, Source source) {
    Objects.requireNonNull(bound, "bound");
    return new SizeLimit(size, Optional.of(bound), true, Optional.empty(), Force.REQUIRED, source);
  }

  /**
   * Returns a range of sizes.
   *
   * @param size which size, not null
   * @param least the smallest size, itself allowed, not null
   * @param most the greatest size, itself allowed, not null
   * @param source whose limit it is, not null
   * @return the limit, not null
   */
  public static SizeLimit between(BoardSize size, Length least, Length most, Source source) {
    Objects.requireNonNull(least, "least");
    Objects.requireNonNull(most, "most");
    return new SizeLimit(size, Optional.of(least), false, Optional.of(most), Force.REQUIRED, source);
  }

  /**
   * Returns the same limit as what is usual, not asked for.
   *
   * @return the limit, not null
   */
  public SizeLimit usual() {
    return new SizeLimit(size, least, moreThan, most, Force.USUAL, source);
  }

  /**
   * Tells whether a size is within the limit.
   *
   * @param value the size, not null
   * @return true if it is
   */
  public boolean allows(Length value) {
    Objects.requireNonNull(value, "value");
    boolean enough = least.isEmpty() || value.compareTo(least.get()) > (moreThan ? 0 : -1);
    return enough && (most.isEmpty() || value.compareTo(most.get()) <= 0);
  }

  /**
   * Returns the limit as text.
   *
   * @return for example {@code "more than 250 mm"} or {@code "usually 18 mm to 34 mm"}, not null
   */
  @Override
  public String toString() {
    String bounds = least.isPresent() && most.isPresent() && !moreThan ? least.get() + " to " + most.get()
        : least.map(bound -> (moreThan ? "more than " : "at least ") + bound).orElse("")
            + (least.isPresent() && most.isPresent() ? " and " : "") + most.map(bound -> "at most " + bound).orElse("");
    return (force == Force.USUAL ? "usually " : "") + bounds;
  }
}
