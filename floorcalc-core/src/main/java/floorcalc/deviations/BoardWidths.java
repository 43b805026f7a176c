package floorcalc.deviations;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * The widths of board that a limit is for.
 *
 * @param over only wider boards, the bound itself not among them; empty if there is no such bound; not null
 * @param upTo boards up to this width, itself among them; empty if there is no such bound; not null
 * @param under only narrower boards, the bound itself not among them; empty if there is no such bound; not null
 * @since 0.1
 */
public record BoardWidths(Optional<Length> over, Optional<Length> upTo, Optional<Length> under) implements Serializable {
  /** Boards of any width. */
  public static final BoardWidths ANY = new BoardWidths(Optional.empty(), Optional.empty(), Optional.empty());

  /** Checks that no part is null. */
  public BoardWidths {
    Objects.requireNonNull(over, "over");
    Objects.requireNonNull(upTo, "upTo");
    Objects.requireNonNull(under, "under");
  }

  /**
   * Returns widths up to a bound.
   *
   * @param bound the widest, itself among them, not null
   * @return the widths, not null
   */
  public static BoardWidths upTo(Length bound) {
    Objects.requireNonNull(bound, "bound");
    return new BoardWidths(Optional.empty(), Optional.of(bound), Optional.empty());
  }

  /**
   * Returns widths under a bound.
   *
   * @param bound just too wide, not null
   * @return the widths, not null
   */
  public static BoardWidths under(Length bound) {
    Objects.requireNonNull(bound, "bound");
    return new BoardWidths(Optional.empty(), Optional.empty(), Optional.of(bound));
  }

  /**
   * Returns widths over a bound.
   *
   * @param bound just too narrow, not null
   * @return the widths, not null
   */
  public static BoardWidths over(Length bound) {
    Objects.requireNonNull(bound, "bound");
    return new BoardWidths(Optional.of(bound), Optional.empty(), Optional.empty());
  }

  /**
   * Returns widths between two bounds.
   *
   * @param over just too narrow, not null
   * @param upTo the widest, itself among them, not null
   * @return the widths, not null
   */
  public static BoardWidths between(Length over, Length upTo) {
    Objects.requireNonNull(over, "over");
    Objects.requireNonNull(upTo, "upTo");
    return new BoardWidths(Optional.of(over), Optional.of(upTo), Optional.empty());
  }

  /**
   * Tells whether a width is among these.
   *
   * @param width the width of a board, not null
   * @return true if it is
   */
  public boolean contains(Length width) {
    Objects.requireNonNull(width, "width");
    return over.filter(bound -> width.compareTo(bound) <= 0).isEmpty() && upTo.filter(bound -> width.compareTo(bound) > 0).isEmpty()
        && under.filter(bound -> width.compareTo(bound) >= 0).isEmpty();
  }

  /**
   * Returns the widths as text.
   *
   * @return for example {@code "over 25 mm up to 140 mm"}, empty for any width; not null
   */
  @Override
  public String toString() {
    return (over.map(bound -> "over " + bound).orElse("") + upTo.map(bound -> " up to " + bound).orElse("")
        + under.map(bound -> " under " + bound).orElse("")).strip();
  }

  private Object writeReplace() {
    return new Form(over.orElse(null), upTo.orElse(null), under.orElse(null));
  }

  /** What is written: an optional part by itself, or null. Reading goes through the constructor and its checks. */
  private record Form(Length over, Length upTo, Length under) implements Serializable {

    private Object readResolve() {
      return new BoardWidths(Optional.ofNullable(over), Optional.ofNullable(upTo), Optional.ofNullable(under));
    }
  }
}
