package floorcalc.deviations;

import floorcalc.boards.Construction;
import floorcalc.measure.Area;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import java.io.Serializable;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A named set of permitted deviations as one source states them, of boards as delivered or of a laid floor. Sources that disagree are sets of
 * their own and are never averaged; the goods' papers and the contract come before any of them. Immutable and thread-safe.
 * <pre>{@code
 * DeviationReadings joints = DeviationReadings.ofWidth(Length.ofMillimetres(90))
 *     .with(Deviation.JOINT, List.of(Length.parse("0.4 mm"), Length.parse("1.9 mm")));
 * DeviationSet.named("NF DTU 51.1").judge(joints).value();   // at most 1.8 mm at 90 mm: not met
 * }</pre>
 *
 * @since 0.1
 */
public final class DeviationSet implements Serializable {
  private static final long serialVersionUID = 1L;

  private final transient String name;
  private final transient String about;
  private final transient Stage stage;
  private final transient List<DeviationLimit> limits;
  private final transient Optional<ReadingNumber> number;
  private final transient Optional<WoodMoisture> moisture;
  private final transient Optional<Construction> construction;

  private DeviationSet(String name, String about, Stage stage, List<DeviationLimit> limits, Optional<ReadingNumber> number,
      Optional<WoodMoisture> moisture, Optional<Construction> construction) {
    this.name = Objects.requireNonNull(name, "name");
    this.about = Objects.requireNonNull(about, "about");
    this.stage = Objects.requireNonNull(stage, "stage");
    this.limits = List.copyOf(limits);
    this.number = number;
    this.moisture = moisture;
    this.construction = construction;
    if (limits.isEmpty()) {
      throw new IllegalArgumentException("set '" + name + "' must have at least one limit");
    }
  }

  /**
   * Returns a set of the caller's own, such as that of the goods' papers.
   *
   * @param name its name, not null
   * @param about what it is for, not null
   * @param stage boards as delivered or the laid floor, not null
   * @param limits the limits, not null, at least one
   * @return the set, not null
   * @throws IllegalArgumentException if there is no limit
   */
  public static DeviationSet of(String name, String about, Stage stage, List<DeviationLimit> limits) {
    Objects.requireNonNull(limits, "limits");
    return new DeviationSet(name, about, stage, limits, Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** The same set with the number of readings that its source asks for. */
  DeviationSet asking(int readings, Area area) {
    return new DeviationSet(name, about, stage, limits, Optional.of(new ReadingNumber(readings, area)), moisture, construction);
  }

  /** The same set, for wood of a moisture content. */
  DeviationSet atMoisture(int low, int high) {
    return new DeviationSet(name, about, stage, limits, number,
        Optional.of(new WoodMoisture(BigDecimal.valueOf(low), BigDecimal.valueOf(high))), construction);
  }

  /** The same set, for boards of one construction. */
  DeviationSet forBoards(Construction made) {
    return new DeviationSet(name, about, stage, limits, number, moisture, Optional.of(made));
  }

  /**
   * Returns all published sets, those of goods first.
   *
   * @return an unmodifiable list, not null
   */
  public static List<DeviationSet> all() {
    return PublishedDeviations.ALL;
  }

  /**
   * Returns the published sets of one stage.
   *
   * @param stage boards as delivered or the laid floor, not null
   * @return an unmodifiable list, not null
   */
  public static List<DeviationSet> all(Stage stage) {
    Objects.requireNonNull(stage, "stage");
    return all().stream().filter(set -> set.stage == stage).toList();
  }

  /**
   * Returns the published sets for a laid floor of boards of a construction, whichever way they are fixed.
   *
   * @param made how the boards are made, not null
   * @return of engineered boards the floating, of solid boards the nailed and the glued floors, and what is for both; unmodifiable, not null
   */
  public static List<DeviationSet> ofLaid(Construction made) {
    List<String> names = switch (made) {
      case ENGINEERED -> List.of("NF DTU 51.11", "German parquet industry", "SNiP 3.04.01");
      case SOLID -> List.of("NF DTU 51.1", "NF DTU 51.2", "German parquet industry");
    };
    return names.stream().map(DeviationSet::named).toList();
  }

  /**
   * Returns the set of a name.
   *
   * @param name the name, as {@link #name()} gives it, not null
   * @return the set, not null
   * @throws IllegalArgumentException if there is no such set; the message lists the names
   */
  public static DeviationSet named(String name) {
    Objects.requireNonNull(name, "name");
    return all().stream().filter(set -> set.name.equals(name)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no set of permitted deviations '" + name + "'; the sets are: "
            + all().stream().map(set -> "'" + set.name + "'").collect(Collectors.joining(", "))));
  }

  /**
   * Judges what was measured, limit by limit.
   * <p>
   * A reading that is just at the limit keeps it. Where a source lets a share of the readings be beyond, that share of their number
   * is rounded down, so of few readings none may be. Of a limit to the mean of several, each run of so many readings in a row
   * counts.
   *
   * @param readings what was measured, not null
   * @return a judgement {@code deviation-…} with the {@linkplain Deviation#code() code} of what deviates, for each limit for boards of the width:
   *     not measured without readings; and one, not measured, for each kind of reading that the set has no limit for. Findings: {@code few-readings} where the
   *     source asks for more of them, {@code measured-at-other-moisture} where it measures drier or damper wood,
   *     {@code set-for-other-boards} where it is for boards of another construction; not null
   */
  public Calculated<List<Judgement>> judge(DeviationReadings readings) {
    return new DeviationJudge(this, Objects.requireNonNull(readings, "readings")).judge();
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
   * Returns when the set is used.
   *
   * @return boards as delivered or the laid floor, not null
   */
  public Stage stage() {
    return stage;
  }

  /**
   * Returns the limits in the order of the source.
   *
   * @return an unmodifiable list, not null, at least one
   */
  public List<DeviationLimit> limits() {
    return limits;
  }

  /**
   * Returns how many readings the source asks for, if it says so.
   *
   * @return the number by area, empty if it is silent; not null
   */
  public Optional<ReadingNumber> number() {
    return number;
  }

  /**
   * Returns the moisture content that the wood has when it is measured, if the source says so.
   *
   * @return the range, empty if it is silent; not null
   */
  public Optional<WoodMoisture> moisture() {
    return moisture;
  }

  /**
   * Returns the construction of the boards that the set is for, if it is for one alone.
   *
   * @return the construction, empty for a set for any boards; not null
   */
  public Optional<Construction> construction() {
    return construction;
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

  @Override
  public boolean equals(Object object) {
    return object instanceof DeviationSet other && parts(this).equals(parts(other));
  }

  @Override
  public int hashCode() {
    return parts(this).hashCode();
  }

  private static List<Object> parts(DeviationSet set) {
    return List.of(set.name, set.about, set.stage, set.limits, set.number, set.moisture, set.construction);
  }

  private Object writeReplace() {
    return new Form(name, about, stage, limits, number.orElse(null), moisture.orElse(null), construction.orElse(null));
  }

  /** A set is written in its form alone. */
  private Object readResolve() {
    throw new IllegalStateException("a set is read in the form in which it was written");
  }

  /** What is written: an optional part by itself, or null. Reading goes through the constructor and its checks. */
  private record Form(String name, String about, Stage stage, List<DeviationLimit> limits, ReadingNumber number, WoodMoisture moisture,
      Construction construction) implements Serializable {

    private Object readResolve() {
      return new DeviationSet(name, about, stage, limits, Optional.ofNullable(number), Optional.ofNullable(moisture),
          Optional.ofNullable(construction));
    }
  }
}
