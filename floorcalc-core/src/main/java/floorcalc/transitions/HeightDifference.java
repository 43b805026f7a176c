package floorcalc.transitions;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.List;
import java.util.Objects;

/**
 * How much higher the floor beyond an edge is than this floor, both finished.
 *
 * @param beyondHigherBy the height beyond less the height here, negative if it is lower beyond; not null
 * @since 0.1
 */
public record HeightDifference(Length beyondHigherBy) {
  /** Checks that no part is null. */
  public HeightDifference {
    Objects.requireNonNull(beyondHigherBy, "beyondHigherBy");
  }

  /** Two floors of one height. */
  public static final HeightDifference NONE = new HeightDifference(Length.ZERO);

  /**
   * Returns the difference of two floors from their layers.
   *
   * @param here this floor, not null
   * @param beyond the floor beyond, not null
   * @return the difference with the steps {@code stack-here}, {@code stack-beyond} and {@code height-difference}; not null
   */
  public static Calculated<HeightDifference> between(HeightStack here, HeightStack beyond) {
    HeightDifference difference = new HeightDifference(beyond.top().minus(here.top()));
    Step step = new Step("height-difference", "How much higher is the floor beyond?", "d = S2 + H2 - S1 - H1",
        List.of(Term.of("S2", "subfloor beyond", beyond.subfloor()), Term.of("H2", "floor on it", beyond.total()),
            Term.of("S1", "subfloor here", here.subfloor()), Term.of("H1", "floor on it", here.total())),
        difference.beyondHigherBy, Source.DEFINITION);
    return Calculated.of(difference, List.of(here.step("stack-here", "How high does this floor stand above its subfloor?", "t"),
        beyond.step("stack-beyond", "How high does the floor beyond stand above its subfloor?", "b"), step));
  }

  /**
   * Returns the difference to something whose height above the bare subfloor of this floor was measured: a hearth, tiles, a sill.
   *
   * @param here this floor, not null
   * @param aboveSubfloor how high what is beyond stands above the bare subfloor here, negative if below it; not null
   * @return the difference with the steps {@code stack-here} and {@code height-difference}; not null
   */
  public static Calculated<HeightDifference> toHeight(HeightStack here, Length aboveSubfloor) {
    HeightDifference difference = new HeightDifference(aboveSubfloor.minus(here.total()));
    Step step = new Step("height-difference", "How much higher is what lies beyond?", "d = A - H",
        List.of(Term.of("A", "its height above the bare subfloor", aboveSubfloor), Term.of("H", "this floor", here.total())),
        difference.beyondHigherBy, Source.DEFINITION);
    return Calculated.of(difference, List.of(here.step("stack-here", "How high does this floor stand above its subfloor?", "t"),
        step));
  }

  /**
   * Returns the difference as it is seen from beyond.
   *
   * @return the negated difference, not null
   */
  public HeightDifference fromBeyond() {
    return new HeightDifference(beyondHigherBy.negated());
  }

  /**
   * Returns the size of the difference.
   *
   * @return without its sign, not null
   */
  public Length size() {
    return beyondHigherBy.abs();
  }

  /**
   * Returns which way it falls.
   *
   * @return the fall, not null
   */
  public Fall fall() {
    return beyondHigherBy.isZero() ? Fall.LEVEL : beyondHigherBy.isNegative() ? Fall.TO_BEYOND : Fall.TO_HERE;
  }

  /**
   * Returns the difference in words.
   *
   * @return such as {@code "4 mm lower beyond"}, not null
   */
  @Override
  public String toString() {
    return switch (fall()) {
      case LEVEL -> "level";
      case TO_BEYOND -> size() + " lower beyond";
      case TO_HERE -> size() + " higher beyond";
    };
  }
}
