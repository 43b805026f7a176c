package floorcalc.bays;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleKey;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * Tells whether a bay is free to move as one piece. Immutable and thread-safe.
 * <p>
 * A floor that dries shrinks towards whatever holds it. Where its far end lies beyond something fixed (a wall corner that it bends
 * round, a column it encloses), the floor between the two comes nearer to the fixed thing by the shrinkage of that reach. So a bay
 * is free if
 * <ul>
 * <li>no inner corner of its walls lies deeper inside it than {@link LayingRules#DEEPEST_RECESS}, measured square to the line across the
 * recess: from the last to the first corner of the bay's convex hull on either side;
 * <li>no void inside it is wider than {@link LayingRules#WIDEST_VOID}, by its least width between two parallels.
 * </ul>
 * Both limits are common practice without a source. Their reason: NF DTU 51.11 (2009) clause 8.2 sizes gaps at 1.5 mm per metre of
 * floor. A reach of 500 mm then moves by 0.75 mm and one of 1000 mm by 1.5 mm, which a gap of 8 mm or more covers many times over.
 * A bay without inner corners and voids is always free. Sizes are held against the limits to within a micrometre.
 *
 * @since 0.1
 */
public final class BayFreedom {
  private static final Source RATE_SOURCE = new Source("NF DTU 51.11 P1-1", "AFNOR", 2009, "clause 8.2",
      Standing.READ);

  private final List<Obstacle> obstacles;
  private final List<Obstacle> harmless;

  private BayFreedom(List<Obstacle> obstacles, List<Obstacle> harmless) {
    this.obstacles = List.copyOf(obstacles);
    this.harmless = List.copyOf(harmless);
  }

  /**
   * Judges a bay.
   *
   * @param name its name, for the findings; not null
   * @param bay its outline, as laid or with the gaps, not null, sound by {@link floorcalc.outline.OutlineCheck}
   * @param rules the limits, not null
   * @return what stands in its way, with one step for the size of each inner corner and void and one for what it takes of the gap, and
   *     a finding for each that is beyond its limit; not null
   */
  public static Calculated<BayFreedom> of(String name, Outline bay, LayingRules rules) {
    Objects.requireNonNull(name, "name");
    Length deepest = rules.value(LayingRules.DEEPEST_RECESS);
    Length widest = rules.value(LayingRules.WIDEST_VOID);
    List<Obstacle> beyond = new ArrayList<>();
    List<Obstacle> within = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    for (Obstacle corner : Obstacles.innerCorners(bay, steps)) {
      (corner.isBeyond(deepest) ? beyond : within).add(corner);
    }
    for (Obstacle isle : Obstacles.voids(bay, steps)) {
      (isle.isBeyond(widest) ? beyond : within).add(isle);
    }
    List<Finding> findings = new ArrayList<>();
    beyond.stream().filter(each -> each.kind() == Obstacle.Kind.INNER_CORNER)
        .max(Comparator.comparing(Obstacle::size))
        .ifPresent(worst -> findings.add(corners(name, beyond, worst, rules)));
    beyond.stream().filter(each -> each.kind() == Obstacle.Kind.VOID)
        .forEach(isle -> findings.add(isle(name, isle, rules)));
    return Calculated.of(new BayFreedom(beyond, within), steps, findings);
  }

  /** Tells quickly whether a bay is free. */
  static boolean isFree(RoomShape shape, SplitLimits limits) {
    for (int i = 0; i < shape.size(); i++) {
      if (shape.ring[i] == 0 && shape.recesses[0].isInner(i) && shape.recesses[0].depth(i) > limits.deepest()) {
        return false;
      }
    }
    for (int r = 1; r < shape.recesses.length; r++) {
      if (shape.recesses[r].leastWidth() > limits.widestVoid()) {
        return false;
      }
    }
    return true;
  }

  private static Finding corners(String name, List<Obstacle> beyond, Obstacle worst, LayingRules rules) {
    long count = beyond.stream().filter(each -> each.kind() == Obstacle.Kind.INNER_CORNER).count();
    return new Finding("bay-must-be-split", Severity.SERIOUS, name, name + " bends round " + count
        + (count == 1 ? " inner corner" : " inner corners") + ", the deepest at " + worst.at() + ", "
        + Obstacles.millimetres(worst.size()) + " inside the line across its recess (up to "
        + rules.value(LayingRules.DEEPEST_RECESS) + " needs no break): a floor of this shape cannot move freely; split it with an"
        + " expansion break at the inner " + (count == 1 ? "corner" : "corners"),
        source(rules, LayingRules.DEEPEST_RECESS));
  }

  private static Finding isle(String name, Obstacle isle, LayingRules rules) {
    return new Finding("bay-must-be-split", Severity.SERIOUS, name, name + " lies round a void at " + isle.at() + " that is "
        + Obstacles.millimetres(isle.size()) + " wide by its smaller width (up to " + rules.value(LayingRules.WIDEST_VOID)
        + " needs no break): the floor cannot move freely; split it with expansion breaks from the void to the walls",
        source(rules, LayingRules.WIDEST_VOID));
  }

  private static Source source(LayingRules rules, RuleKey<Length> key) {
    return rules.get(key).source();
  }

  static Step closing(String symbol, String what, Length reach) {
    return new Step("gap-taken-at-" + what, "How much of the gap is taken there when the floor shrinks towards its far end?",
        symbol + " = r * reach, rounded to the nearest nanometre",
        List.of(new Term("r", "shrinkage as a share: 1.5 mm per metre", new BigDecimal("0.0015"), RATE_SOURCE),
            Term.of("reach", "how far the floor reaches beyond it", reach)),
        Obstacles.closing(reach), RATE_SOURCE);
  }

  /**
   * Tells whether the bay can move as one piece.
   *
   * @return true if nothing is beyond its limit
   */
  public boolean isFree() {
    return obstacles.isEmpty();
  }

  /**
   * Returns what hinders the bay.
   *
   * @return the inner corners, then the voids that are beyond their limits, in the order of the outline; unmodifiable, not null
   */
  public List<Obstacle> obstacles() {
    return obstacles;
  }

  /**
   * Returns the fixed things that the gap covers.
   *
   * @return the inner corners, then the voids within their limits, in the order of the outline; unmodifiable, not null
   */
  public List<Obstacle> harmless() {
    return harmless;
  }
}
