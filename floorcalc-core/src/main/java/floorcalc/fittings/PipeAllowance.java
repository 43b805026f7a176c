package floorcalc.fittings;

import floorcalc.measure.Length;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;

/**
 * How much wider than its pipe a hole is bored, so that the floor can move by as much on each side of the pipe. Immutable.
 *
 * @since 0.1
 */
public final class PipeAllowance {
  /** The hole is 20 mm wider than the pipe, 10 mm all round: common, recalled from memory, not seen in a standard. */
  public static final PipeAllowance TWENTY_WIDER = new PipeAllowance("20 mm wider than the pipe", Length.ofMillimetres(10),
      new Source("General laying guidance", "", 0, "holes for pipes", Standing.FROM_MEMORY));

  private static final Length MOST = Length.ofMillimetres(1000);

  private final String name;
  private final Length allRound;
  private final Source source;

  private PipeAllowance(String name, Length allRound, Source source) {
    this.name = name;
    this.allRound = allRound;
    this.source = source;
  }

  /**
   * Returns an allowance of the expansion gap all round: hole = pipe + 2 × gap, as at every other fixed thing. With the gap of
   * {@link floorcalc.rules.RuleSet#NF_DTU_51_11} it is that of NF DTU 51.11, clause 8.2, which names pipes: 0.15 % of the largest
   * dimension, at least 8 mm.
   *
   * @param gap the rule on the expansion gap, not null
   * @return the allowance, not null
   */
  public static PipeAllowance ofGap(RuleValue<Length> gap) {
    return new PipeAllowance("the gap of " + gap.value() + " all round", gap.value(), gap.source());
  }

  /**
   * Returns an allowance of a length all round.
   *
   * @param allRound the clear space on each side of the pipe, not null, not negative
   * @param source where it comes from, not null
   * @return the allowance, not null
   * @throws IllegalArgumentException if the length is negative
   */
  public static PipeAllowance of(Length allRound, Source source) {
    if (allRound.isNegative()) {
      throw new IllegalArgumentException("the space round a pipe must be 0 mm or more, but was " + allRound
          + "; give what is clear on one side of the pipe");
    }
    return new PipeAllowance(allRound + " all round", allRound, Objects.requireNonNull(source, "source"));
  }

  /**
   * Returns what it is called.
   *
   * @return a few words, not null
   */
  public String name() {
    return name;
  }

  /**
   * Returns the clear space on each side of the pipe.
   *
   * @return half of what the hole is wider, not negative
   */
  public Length allRound() {
    return allRound;
  }

  /**
   * Returns where it comes from.
   *
   * @return the source, not null
   */
  public Source source() {
    return source;
  }

  /**
   * Returns how wide the hole for a pipe is.
   *
   * @param diameter the outer diameter of the pipe, with its lagging if that comes through the floor; not null, more than zero, at
   *     most 1 m
   * @return the diameter of the hole with the step {@code hole-diameter}; not null
   * @throws IllegalArgumentException if the diameter is out of range
   */
  public Calculated<Length> hole(Length diameter) {
    requireDiameter(diameter, "diameter of a pipe");
    Length hole = diameter.plus(allRound.multipliedBy(2));
    return Calculated.of(hole, List.of(new Step("hole-diameter", "How wide is the hole?", "D = d + 2 * g",
        List.of(Term.of("d", "outer diameter of the pipe", diameter), new Term("g", "clear space on each side", allRound, source)),
        hole, source)));
  }

  /**
   * Returns by how much a collar round a pipe still lies on the boards when the floor has moved as far as the hole lets it. The pipe
   * then touches the hole on one side, and on the other the hole reaches {@code D − d/2} from the middle of the pipe.
   *
   * @param diameter the outer diameter of the pipe, not null, more than zero, at most 1 m
   * @param collar the outer diameter of the collar, which sits tight on the pipe; not null, more than zero, at most 1 m
   * @return the least overlap, negative if the hole shows; rounded down to a whole nanometre; with the steps {@code hole-diameter} and
   *     {@code collar-overlap}; not null
   * @throws IllegalArgumentException if a diameter is out of range
   */
  public Calculated<Length> collarOverlap(Length diameter, Length collar) {
    Objects.requireNonNull(collar, "collar");
    Calculated<Length> hole = hole(diameter);
    requireDiameter(collar, "diameter of a collar");
    Length overlap = collar.plus(diameter).minus(hole.value().multipliedBy(2)).dividedBy(2, RoundingMode.FLOOR);
    Step step = new Step("collar-overlap", "By how much does the collar cover the boards where the hole is farthest from the pipe?",
        "o = (C + d) / 2 - D, rounded down to a whole nanometre", List.of(Term.of("C", "outer diameter of the collar", collar),
            Term.of("d", "outer diameter of the pipe", diameter), Term.of("D", "diameter of the hole", hole.value())),
        overlap, Source.DEFINITION);
    return Calculated.of(overlap, List.of(hole.steps().get(0), step));
  }

  static void requireDiameter(Length diameter, String what) {
    if (!diameter.isPositive() || diameter.compareTo(MOST) > 0) {
      throw new IllegalArgumentException("the " + what + " must be more than 0 mm and at most " + MOST + ", but was " + diameter
          + "; give the outer diameter");
    }
  }

  /**
   * Returns the allowance in words.
   *
   * @return for example {@code "20 mm wider than the pipe"}, not null
   */
  @Override
  public String toString() {
    return name;
  }
}
