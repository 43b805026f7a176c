package floorcalc.deviations;

import floorcalc.measure.Length;
import floorcalc.outline.survey.CornerSquareness;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A named set of limits on how far a corner may be out of square, by the length of its wall. Sources that disagree are sets of their own.
 * Immutable and thread-safe.
 * <p>
 * The limit is a length, how far the end of the wall lies off the line square to the other wall, not an angle: see
 * {@link CornerSquareness#out()}. Angles and flatness are checked each for itself. A corner out of its limit is no hindrance to a plank
 * floor, whose rows are then cut to a taper; cabinets and skirtings suffer more.
 *
 * @since 0.1
 */
public final class AngleSet {
  /** DIN 18202, Table 2, as quoted: from 3 mm over half a metre to 30 mm over more than 30 m. */
  public static final AngleSet DIN_18202 = new AngleSet("DIN 18202", "angles of walls and floors in building construction", din());

  private static final List<AngleSet> ALL = List.of(DIN_18202);

  private final String name;
  private final String about;
  private final List<AngleLimit> limits;

  private AngleSet(String name, String about, List<AngleLimit> limits) {
    this.name = Objects.requireNonNull(name, "name");
    this.about = Objects.requireNonNull(about, "about");
    this.limits = List.copyOf(limits);
    if (limits.isEmpty()) {
      throw new IllegalArgumentException("set '" + name + "' must have at least one limit");
    }
  }

  private static List<AngleLimit> din() {
    Source source = new Source("DIN 18202", "DIN", 0, "Table 2, as given on a page on checking flatness and angles", Standing.QUOTED);
    int[] bounds = {0, 500, 1000, 3000, 6000, 15_000, 30_000};
    int[] most = {3, 6, 8, 12, 16, 20, 30};
    List<AngleLimit> limits = new ArrayList<>();
    for (int i = 0; i < most.length; i++) {
      limits.add(new AngleLimit(Length.ofMillimetres(bounds[i]), i + 1 < bounds.length ? Optional.of(Length.ofMillimetres(bounds[i + 1]))
          : Optional.empty(), Length.ofMillimetres(most[i]), source));
    }
    return limits;
  }

  /**
   * Returns a set of the caller's own.
   *
   * @param name its name, not null
   * @param about what it is for, not null
   * @param limits the limits from the shortest walls on, not null, at least one
   * @return the set, not null
   * @throws IllegalArgumentException if there is no limit
   */
  public static AngleSet of(String name, String about, List<AngleLimit> limits) {
    Objects.requireNonNull(limits, "limits");
    return new AngleSet(name, about, limits);
  }

  /**
   * Returns all published sets.
   *
   * @return an unmodifiable list, not null
   */
  public static List<AngleSet> all() {
    return ALL;
  }

  /**
   * Returns the set of a name.
   *
   * @param name the name, as {@link #name()} gives it, not null
   * @return the set, not null
   * @throws IllegalArgumentException if there is no such set; the message lists the names
   */
  public static AngleSet named(String name) {
    Objects.requireNonNull(name, "name");
    return ALL.stream().filter(set -> set.name.equals(name)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no set of limits on angles '" + name + "'; the sets are: "
            + ALL.stream().map(set -> "'" + set.name + "'").collect(Collectors.joining(", "))));
  }

  /**
   * Returns the limit for a wall.
   *
   * @param length the length of the wall, more than zero, not null
   * @return the limit, empty if the set is silent; not null
   */
  public Optional<AngleLimit> limitFor(Length length) {
    return limits.stream().filter(limit -> limit.covers(length)).findFirst();
  }

  /**
   * Holds a corner against the limit for the length of its leaving wall.
   *
   * @param corner the corner, not null
   * @return the judgement {@code out-of-square}, not measured if the set is silent, with the step {@code square-excess} where there is a
   *     limit: what is left of it, negative if the corner is beyond; not null
   */
  public Calculated<Judgement> judge(CornerSquareness corner) {
    Optional<AngleLimit> limit = limitFor(corner.over());
    String check = "corner " + corner.corner() + " square, " + name;
    Length out = corner.out().abs();
    String found = out + " over " + corner.over();
    if (limit.isEmpty()) {
      return Calculated.of(new Judgement("out-of-square", check, "corner " + corner.corner(), found, "none in set '" + name + "' for "
          + corner.over(), Outcome.NOT_MEASURED, limits.get(0).source(), "judge it by a set that has such a limit"), List.of());
    }
    Length most = limit.get().most();
    boolean met = out.compareTo(most) <= 0;
    Step step = new Step("square-excess", "How much of what is allowed is left at corner " + corner.corner() + "?", "e = m - abs(o)",
        List.of(new Term("m", "allowed for walls " + limit.get().walls(), most,
            limit.get().source()), Term.of("o", "how far the wall ends off the square line", corner.out())), most.minus(out),
        limit.get().source());
    return Calculated.of(new Judgement("out-of-square", check, "corner " + corner.corner(), found, limit.get().toString(),
        met ? Outcome.MET : Outcome.NOT_MET, limit.get().source(), met ? "" : "measure the corner again; boards at one of its walls are cut to"
            + " a taper, so choose which wall the rows follow"), List.of(step));
  }

  /**
   * Holds each of several corners against its limit.
   *
   * @param corners the corners, not null
   * @return a judgement for each in order, with their steps; not null
   */
  public Calculated<List<Judgement>> judge(List<CornerSquareness> corners) {
    List<Calculated<Judgement>> each = corners.stream().map(this::judge).toList();
    return Calculated.of(each.stream().map(Calculated::value).toList(), each.stream().flatMap(one -> one.steps().stream()).toList());
  }

  /**
   * Returns the name of the set.
   *
   * @return the name, not null
   */
  public String name() {
    return name;
  }

  /**
   * Returns what the set is for.
   *
   * @return a few words, not null
   */
  public String about() {
    return about;
  }

  /**
   * Returns the limits from the shortest walls on.
   *
   * @return an unmodifiable list, not null, at least one
   */
  public List<AngleLimit> limits() {
    return limits;
  }

  /**
   * Returns the name of the set.
   *
   * @return the name, not null
   */
  @Override
  public String toString() {
    return name;
  }
}
