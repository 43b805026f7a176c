package floorcalc.movement;

import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * What holds a floor that should be free to move, as found on site. Immutable and thread-safe.
 * <p>
 * A floor that is fixed in one place moves away from there, so the gaps on the far sides must take all of it; fixed in two,
 * it lifts or its joints open. Floors that are glued or nailed down all over are another kind: they are meant to be held.
 *
 * @since 0.1
 */
public final class Pinning implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * What can hold a floor.
   *
   * @since 0.1
   */
  public enum FixedBy {
    /** Adhesive below a floor that should float. */
    GLUE("glue"),
    /** Nails or screws through it. */
    NAILS("nails or screws"),
    /** A kitchen unit or a wardrobe standing on it, or screwed through it. */
    CABINET("a cabinet"),
    /** A kitchen island on it. */
    ISLAND("an island"),
    /** Stone, tiles or a hearth that it touches. */
    STONE("stone or tiles"),
    /** A pipe without room around it. */
    PIPE("a tight pipe"),
    /** A door lining or casing that it touches. */
    DOOR_LINING("a door lining"),
    /** A skirting, bead or profile that presses on it or is fixed to it. */
    TRIM("a trim"),
    /** Filler, mortar or rubbish in the gap. */
    DEBRIS("something in the gap"),
    /** Anything else. */
    OTHER("something");

    private final String words;

    FixedBy(String words) {
      this.words = words;
    }

    /**
     * Returns it in a few words.
     *
     * @return for example {@code "a tight pipe"}, not null
     */
    public String words() {
      return words;
    }
  }

  /**
   * One thing that holds the floor.
   *
   * @param by what it is, not null
   * @param where where it is, not null, may be empty
   * @since 0.1
   */
  public record Fixing(FixedBy by, String where) implements Serializable {
    /** Checks that no part is null. */
    public Fixing {
      Objects.requireNonNull(by, "by");
      Objects.requireNonNull(where, "where");
    }

    /**
     * Returns it as text.
     *
     * @return for example {@code "a tight pipe (by the radiator)"}, not null
     */
    @Override
    public String toString() {
      return where.isEmpty() ? by.words() : by.words() + " (" + where + ")";
    }
  }

  private enum Looked { YES, NO }

  private final Looked looked;
  @SuppressWarnings("serial")
  private final List<Fixing> fixings;

  private Pinning(Looked looked, List<Fixing> fixings) {
    this.looked = looked;
    this.fixings = List.copyOf(fixings);
  }

  /**
   * Returns that nobody looked.
   *
   * @return not known, which is never a pass, not null
   */
  public static Pinning notLookedAt() {
    return new Pinning(Looked.NO, List.of());
  }

  /**
   * Returns what was found by somebody who looked.
   *
   * @param fixings all that holds the floor, empty if nothing does, not null
   * @return the findings, not null
   */
  public static Pinning found(List<Fixing> fixings) {
    Objects.requireNonNull(fixings, "fixings");
    return new Pinning(Looked.YES, fixings);
  }

  /**
   * Returns what holds the floor.
   *
   * @return an unmodifiable list, empty if nothing does or nobody looked, not null
   */
  public List<Fixing> fixings() {
    return fixings;
  }

  /**
   * Judges whether the floor is free.
   *
   * @return the judgement {@code floor-not-pinned}, not null
   */
  public Judgement judge() {
    String found = looked == Looked.NO ? "" : fixings.isEmpty() ? "nothing"
        : fixings.stream().map(Fixing::toString).collect(Collectors.joining(", "));
    Outcome outcome = looked == Looked.NO ? Outcome.NOT_MEASURED : fixings.isEmpty() ? Outcome.MET : Outcome.NOT_MET;
    return new Judgement("floor-not-pinned", "what holds the floor in place", "", found, "nothing holds it", outcome,
        Source.COMMON_PRACTICE, switch (outcome) {
          case MET -> "";
          case NOT_MET -> "set it free, or put an expansion break round it and judge each side from there";
          case NOT_MEASURED -> "look for glue, nails, cabinets, islands, stone, tight pipes, linings and trims that hold"
              + " the floor";
        });
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return looked == Looked.NO ? notLookedAt() : found(fixings);
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Pinning other && parts().equals(other.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  private List<Object> parts() {
    return Arrays.asList(looked, fixings);
  }
}
