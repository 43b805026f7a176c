package floorcalc.flatness;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A named set of limits of flatness as one source states them, for one kind of floor, at one or several spans.
 * <p>
 * Tolerances are made for floors of a kind: {@link #floor()} says which. Sources that disagree are sets of their own and
 * are never averaged. The maker's instructions for the boards come before any of them. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class ToleranceSet implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * What many layers ask of a floor before wood boards are laid on it: 3 mm under 8 ft, 2 mm under 4 ft, 1 mm under 10 in.
   * No published source was found for these three together.
   */
  public static final ToleranceSet COMMON_PRACTICE = new ToleranceSet("common practice",
      "subfloor under wood boards", EdgeMethod.SPAN, List.of(
          SpanLimit.of(Length.ofInches(96, 0, 1), Length.ofMillimetres(3), Source.COMMON_PRACTICE),
          SpanLimit.of(Length.ofInches(48, 0, 1), Length.ofMillimetres(2), Source.COMMON_PRACTICE),
          SpanLimit.of(Length.ofInches(10, 0, 1), Length.ofMillimetres(1), Source.COMMON_PRACTICE)), null);

  private final String name;
  private final String floor;
  private final EdgeMethod method;
  @SuppressWarnings("serial")
  private final List<SpanLimit> limits;
  private final transient DistanceTable table;

  private ToleranceSet(String name, String floor, EdgeMethod method, List<SpanLimit> limits, DistanceTable table) {
    this.name = Objects.requireNonNull(name, "name");
    this.floor = Objects.requireNonNull(floor, "floor");
    this.method = method;
    this.limits = List.copyOf(limits);
    this.table = table;
    if (limits.isEmpty()) {
      throw new IllegalArgumentException("tolerance set '" + name + "' must have at least one limit");
    }
  }

  static ToleranceSet published(String name, String floor, EdgeMethod method, List<SpanLimit> limits) {
    return new ToleranceSet(name, floor, method, limits, null);
  }

  static ToleranceSet byDistance(String name, String floor, DistanceTable table) {
    return new ToleranceSet(name, floor, EdgeMethod.CONTACT_DISTANCE, table.limits(), table);
  }

  /**
   * Returns a set of the caller's own.
   *
   * @param name its name, not null
   * @param floor which floor it is for, not null
   * @param limits the limits, not null, at least one
   * @return the set, not null
   * @throws IllegalArgumentException if there is no limit
   */
  public static ToleranceSet of(String name, String floor, List<SpanLimit> limits) {
    Objects.requireNonNull(limits, "limits");
    return new ToleranceSet(name, floor, EdgeMethod.SPAN, limits, null);
  }

  /**
   * Returns all sets, common practice first.
   *
   * @return an unmodifiable list, not null
   */
  public static List<ToleranceSet> all() {
    return PublishedTolerances.ALL;
  }

  /**
   * Returns the set of a name.
   *
   * @param name the name, as {@link #name()} gives it, not null
   * @return the set, not null
   * @throws IllegalArgumentException if there is no such set; the message lists the names
   */
  public static ToleranceSet named(String name) {
    Objects.requireNonNull(name, "name");
    return all().stream().filter(set -> set.name.equals(name)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no tolerance set '" + name + "'; the sets are: "
            + all().stream().map(set -> "'" + set.name + "'").collect(Collectors.joining(", "))));
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
   * Returns which floor the set is for, and its conditions.
   *
   * @return a few words, not null
   */
  public String floor() {
    return floor;
  }

  /**
   * Returns how the limits are measured.
   *
   * @return the method, not null
   */
  public EdgeMethod method() {
    return method;
  }

  /**
   * Returns the limits, each with its source, in the order of the source. Of a set by contact distance these are the limits at
   * the tabulated distances; {@link #gapAllowed} interpolates.
   *
   * @return an unmodifiable list, not null, at least one
   */
  public List<SpanLimit> limits() {
    return limits;
  }

  /**
   * Returns the gap allowed at a span, for all placements. A set by contact distance interpolates: on the straight line between two
   * tabulated distances, to the nearest whole millimetre, a half up; beyond the last distance the last limit holds.
   * Every other set is silent on spans that it does not name.
   *
   * @param span the span or contact distance, not null
   * @return the gap, empty if the set is silent; not null
   */
  public Optional<Length> gapAllowed(Length span) {
    Objects.requireNonNull(span, "span");
    if (table != null) {
      return table.limitAt(span).map(SpanLimit::gap);
    }
    return limits.stream().filter(limit -> limit.isForAll() && limit.span().equals(span)).map(SpanLimit::gap).findFirst();
  }

  /**
   * Judges a profile, at each span of the set. A set by contact distance is judged under edges of 1 m, 2 m, 4 m, 10 m and 15 m, each rest by the
   * distance of its contacts.
   * <p>
   * A span that the profile is too short for is not measured, nor is one for which readings lie farther apart than half the span,
   * unless its limit is broken already (own rule). Where a limit allows for a share of the placements, the edge is laid with its left end at each
   * reading; else over every place.
   *
   * @param profile the floor, not null
   * @param rule which two points the edge rests on, not null
   * @return a judgement for each span with its working, and the doubts about the readings; not null
   */
  public Calculated<List<SpanCheck>> judge(HeightProfile profile, RestRule rule) {
    return ProfileJudge.judge(this, Objects.requireNonNull(profile, "profile"), Objects.requireNonNull(rule, "rule"));
  }

  /**
   * Judges gaps that were read by hand: at each span of the set the readings taken under an edge of just that span. A set by
   * contact distance judges each reading at its own distance.
   *
   * @param readings the gaps read, not null
   * @return a judgement for each span with its working; readings at spans on which the set is silent are findings
   *     {@code span-without-limit}; not null
   */
  public Calculated<List<SpanCheck>> judge(List<GapReading> readings) {
    Objects.requireNonNull(readings, "readings");
    return ReadingJudge.judge(this, List.copyOf(readings));
  }

  /** The table of a set by contact distance, or null. */
  DistanceTable table() {
    return table;
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

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    List<SpanLimit> read = List.copyOf(limits);
    return all().stream().filter(set -> set.name.equals(name) && set.floor.equals(floor) && set.method == method && set.limits.equals(read))
        .findFirst().orElseGet(() -> {
          if (method != EdgeMethod.SPAN) {
            throw new IllegalArgumentException("tolerance set '" + name + "' is none of those published, so it must be judged by spans");
          }
          return of(name, floor, read);
        });
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof ToleranceSet other && parts().equals(other.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  private List<Object> parts() {
    return Arrays.asList(name, floor, method, limits);
  }
}
