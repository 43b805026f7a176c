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
import java.util.stream.Collectors;

/**
 * A named set of limits on differences of height between floors, as one source states them. Sources that disagree are sets of
 * their own and are never averaged. The maker of the profile and the local code come before any of them.
 * <p>
 * Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class LevelChangeSet {
  /**
   * What layers use profiles for: a T profile evens out 1/8 in, a reducer does for up to 3/8 in, an edge bevelled 1:2 for up to
   * 1/2 in. No published source was found for these.
   */
  public static final LevelChangeSet COMMON_PRACTICE = new LevelChangeSet("common practice", "profiles between floors of wood",
      PublishedLevelChanges.commonPractice());

  /**
   * ADA and ANSI, as given for tiled floors in 2009: 1/4 in without treatment; up to 1/2 in bevelled no steeper than 1:2; beyond
   * that a ramp no steeper than 1:12, where space is limited 1:10 for a rise of up to 6 in and 1:8 for a rise of up to 3 in.
   */
  public static final LevelChangeSet ADA_ANSI = new LevelChangeSet("ADA and ANSI", "floors that a wheelchair has to pass, US",
      PublishedLevelChanges.adaAnsi());

  /** NF DTU 51.11, clause 9.2: flush with a covering that was laid first, or else a chamfered threshold or a bar. */
  public static final LevelChangeSet NF_DTU_51_11 = new LevelChangeSet("NF DTU 51.11", "floating parquet beside a covering laid first",
      PublishedLevelChanges.dtu());

  private static final List<LevelChangeSet> ALL = List.of(COMMON_PRACTICE, ADA_ANSI, NF_DTU_51_11);

  private final String name;
  private final String about;
  private final List<LevelChangeLimit> limits;

  private LevelChangeSet(String name, String about, List<LevelChangeLimit> limits) {
    this.name = Objects.requireNonNull(name, "name");
    this.about = Objects.requireNonNull(about, "about");
    this.limits = List.copyOf(limits);
  }

  /**
   * Returns a set of the caller's own.
   *
   * @param name its name, not null
   * @param about which floors it is for, not null
   * @param limits the limits from the least difference on, not null, at least one
   * @return the set, not null
   * @throws IllegalArgumentException if there is no limit
   */
  public static LevelChangeSet of(String name, String about, List<LevelChangeLimit> limits) {
    if (limits.isEmpty()) {
      throw new IllegalArgumentException("set '" + name + "' must have at least one limit");
    }
    return new LevelChangeSet(name, about, limits);
  }

  /**
   * Returns all sets, common practice first.
   *
   * @return an unmodifiable list, not null
   */
  public static List<LevelChangeSet> all() {
    return ALL;
  }

  /**
   * Returns the set of a name.
   *
   * @param name the name, as {@link #name()} gives it, not null
   * @return the set, not null
   * @throws IllegalArgumentException if there is no such set; the message lists the names
   */
  public static LevelChangeSet named(String name) {
    Objects.requireNonNull(name, "name");
    return ALL.stream().filter(set -> set.name.equals(name)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no set of level changes '" + name + "'; the sets are: "
            + ALL.stream().map(set -> "'" + set.name + "'").collect(Collectors.joining(", "))));
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
   * Returns which floors the set is for.
   *
   * @return a few words, not null
   */
  public String about() {
    return about;
  }

  /**
   * Returns the limits from the least difference on.
   *
   * @return an unmodifiable list, not null, at least one
   */
  public List<LevelChangeLimit> limits() {
    return limits;
  }

  /**
   * Returns what the set asks for at a difference of height.
   *
   * @param difference the difference, not null
   * @return the verdict with the steps {@code level-change} and, where a slope is named, {@code run-of-slope}; a finding
   *     {@code level-change-beyond-set} where the set is silent, {@code ramp-needed} where it asks for a ramp; not null
   */
  public Calculated<LevelChangeVerdict> judge(HeightDifference difference) {
    Length size = difference.size();
    Optional<LevelChangeLimit> found = limits.stream()
        .filter(one -> one.space() == LevelChangeLimit.Space.ANY && one.covers(size)).findFirst();
    LevelTreatment treatment = found.map(LevelChangeLimit::treatment).orElse(LevelTreatment.NOT_STATED);
    Source source = found.map(LevelChangeLimit::source).orElse(limits.get(0).source());
    List<LevelChangeLimit> steeper = treatment != LevelTreatment.RAMP ? List.of()
        : limits.stream().filter(one -> one.space() == LevelChangeLimit.Space.LIMITED && one.covers(size)).toList();
    Optional<Slope> slope = found.flatMap(LevelChangeLimit::slope);
    LevelChangeVerdict verdict = new LevelChangeVerdict(this, treatment, slope, slope.map(one -> one.runOf(size)), steeper, source);
    List<Step> steps = new ArrayList<>();
    steps.add(new Step("level-change", "How large is the difference of height? " + sentence(treatment, found), "s = abs(d)",
        List.of(Term.of("d", "how much higher it is beyond", difference.beyondHigherBy())), size, source));
    slope.ifPresent(one -> steps.add(run(one, size, source, "at least, at a slope no steeper than " + one)));
    for (LevelChangeLimit limit : steeper) {
      limit.slope().ifPresent(one -> steps.add(run(one, size, limit.source(), "where space does not allow more, at " + one)));
    }
    return Calculated.of(verdict, steps, findings(verdict, size));
  }

  private String sentence(LevelTreatment treatment, Optional<LevelChangeLimit> found) {
    return "By '" + name + "': " + treatment.words() + found.map(one -> one.upTo().map(most -> " for up to " + most).orElse(""))
        .orElse(" beyond " + limits.get(limits.size() - 1).upTo().orElse(Length.ZERO)) + ".";
  }

  private static Step run(Slope slope, Length rise, Source source, String how) {
    return new Step("run-of-slope", "How long is the slope along the floor, " + how + "?", "r = n * s",
        List.of(Term.of("n", "run for a rise of one", slope.run()), Term.of("s", "difference of height", rise)),
        slope.runOf(rise), source);
  }

  private List<Finding> findings(LevelChangeVerdict verdict, Length size) {
    return switch (verdict.treatment()) {
      case RAMP -> List.of(new Finding("ramp-needed", Severity.WARNING, "", "a difference of height of " + size
          + " needs a ramp" + verdict.run().map(run -> " of at least " + run + " (no steeper than " + verdict.slope().orElseThrow()
              + ")").orElse("") + " by '" + name + "'; raise the lower floor or build a ramp", verdict.source()));
      case NOT_STATED -> List.of(new Finding("level-change-beyond-set", Severity.WARNING, "", "on a difference of height of "
          + size + " '" + name + "' says nothing; level the floors, or plan a ramp or a step by the local code",
          verdict.source()));
      default -> List.of();
    };
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
