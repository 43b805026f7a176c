package floorcalc.moisture;

import floorcalc.working.Source;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A named set of limits for the moisture of a subfloor below wood, as one source states them. Sources that disagree are
 * sets of their own and are never mixed. Immutable and thread-safe.
 * <p>
 * The adhesive's and the boards' makers come first: {@link #with(MoistureLimit)} adds their figure.
 *
 * @since 0.1
 */
public final class MoistureLimits implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * What many layers do: concrete or screed not above 4 % by meter. Common practice, no source. It says nothing on wood,
   * which no room dries so far.
   */
  public static final MoistureLimits COMMON_PRACTICE = new MoistureLimits("common practice",
      "not above 4 % by meter; no published source", PublishedLimits.commonPractice(), null);

  /**
   * German parquet practice, as quoted by trade texts and by TKB data sheet 16 (2016): CM-% 2.0 on cement screed, 1.8
   * heated; 0.5 on calcium sulfate screed, 0.3 heated.
   */
  public static final MoistureLimits GERMAN_PARQUET = new MoistureLimits("German parquet practice",
      "CM limits for screeds, heated and not", PublishedLimits.german("0.3"), null);

  /** DIN 18560-1:2015 as quoted: as German parquet practice, but 0.5 on heated calcium sulfate screed. */
  public static final MoistureLimits DIN_18560_1 = new MoistureLimits("DIN 18560-1:2015",
      "CM limits for screeds; 0.5 on heated calcium sulfate, which the parquet trade rejects",
      PublishedLimits.german("0.5"), null);

  /** NF DTU 51.11 (2009), floating multilayer parquet, as quoted: 3 % at a depth of 2 cm, 4.5 % at 4 cm, carbide. */
  public static final MoistureLimits NF_DTU_51_11 = new MoistureLimits("NF DTU 51.11",
      "carbide limits for concrete and screed at two depths", PublishedLimits.dtu(), null);

  /** BS 8201:1987 as quoted: surface hygrometer not above 75 %, drying aids off for 4 days. */
  public static final MoistureLimits BS_8201_1987 = new MoistureLimits("BS 8201:1987",
      "surface hygrometer on concrete and screed, 75 %", PublishedLimits.british("75", 1987), null);

  /** BS 8201:2011, Annex A, as quoted by one text: surface hygrometer not above 65 %. */
  public static final MoistureLimits BS_8201_2011 = new MoistureLimits("BS 8201:2011",
      "surface hygrometer on concrete and screed, 65 %", PublishedLimits.british("65", 2011), null);

  /**
   * NWFA guidelines: concrete in-slab 75 % RH, calcium chloride 3 lb/(1000 ft2 24 h), above which a vapour retarder is
   * always asked for; wood subfloors 12 %; 20 readings for each 1000 square feet.
   */
  public static final MoistureLimits NWFA_GUIDELINES = new MoistureLimits("NWFA guidelines",
      "in-slab humidity, calcium chloride, wood subfloors; a number of readings", PublishedLimits.nwfa(),
      ReadingCount.NWFA_SUBFLOOR);

  private static final List<MoistureLimits> ALL = List.of(COMMON_PRACTICE, GERMAN_PARQUET, DIN_18560_1, NF_DTU_51_11,
      BS_8201_1987, BS_8201_2011, NWFA_GUIDELINES);

  private final String name;
  private final String about;
  @SuppressWarnings("serial")
  private final List<MoistureLimit> limits;
  private final ReadingCount count;

  private MoistureLimits(String name, String about, List<MoistureLimit> limits, ReadingCount count) {
    this.name = name;
    this.about = about;
    this.limits = List.copyOf(limits);
    this.count = count;
  }

  /**
   * Returns all sets, common practice first.
   *
   * @return an unmodifiable list, not null
   */
  public static List<MoistureLimits> all() {
    return ALL;
  }

  /**
   * Returns the set of a name.
   *
   * @param name the name, as {@link #name()} gives it, not null
   * @return the set, not null
   * @throws IllegalArgumentException if there is no such set; the message lists the names
   */
  public static MoistureLimits named(String name) {
    Objects.requireNonNull(name, "name");
    return ALL.stream().filter(set -> set.name.equals(name)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no set of moisture limits '" + name
            + "'; the sets are: " + ALL.stream().map(set -> "'" + set.name + "'").collect(Collectors.joining(", "))));
  }

  /**
   * Returns the sets that have a limit for a method on a subfloor, heated or not.
   *
   * @param method the method, not null
   * @param substrate the subfloor, not null
   * @return an unmodifiable list in the order of {@link #all()}, perhaps empty, not null
   */
  public static List<MoistureLimits> forMethod(MoistureMethod method, Substrate substrate) {
    Objects.requireNonNull(substrate, "substrate");
    MoistureReading any = MoistureReading.of(method, method.most());
    return ALL.stream().filter(set -> !set.limitsFor(any, substrate, Heating.NOT_STATED).isEmpty()).toList();
  }

  /**
   * Returns a copy with one limit more. Where it may apply it replaces all limits of this set for the same method.
   *
   * @param limit the limit of a maker or of the contract, not null
   * @return the new set, of the same name with {@code ", amended"} behind it, not null
   */
  public MoistureLimits with(MoistureLimit limit) {
    List<MoistureLimit> others = new ArrayList<>(limits);
    others.removeIf(other -> other.method() == limit.method()
        && limit.substrate().candidates().containsAll(other.substrate().candidates())
        && limit.heating().candidates().containsAll(other.heating().candidates()));
    others.add(limit);
    return new MoistureLimits(name.endsWith(", amended") ? name : name + ", amended", about, others, count);
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
   * Returns what the set has limits for.
   *
   * @return a few words, not null
   */
  public String about() {
    return about;
  }

  /**
   * Returns the limits of the set.
   *
   * @return an unmodifiable list, not null
   */
  public List<MoistureLimit> limits() {
    return limits;
  }

  /**
   * Returns how many readings the set asks for, if it says so.
   *
   * @return the number by area, may be empty, not null
   */
  public Optional<ReadingCount> count() {
    return Optional.ofNullable(count);
  }

  List<MoistureLimit> limitsFor(MoistureReading reading, Substrate substrate, Heating heating) {
    return limits.stream().filter(limit -> limit.mayApply(reading, substrate, heating)).toList();
  }

  /** The source of the set, for what it has no limit for. */
  Source source() {
    return limits.get(0).source();
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
    MoistureLimits read = new MoistureLimits(Objects.requireNonNull(name, "name"), Objects.requireNonNull(about, "about"), limits, count);
    if (read.limits.isEmpty()) {
      throw new IllegalArgumentException("set '" + name + "' must have at least one limit");
    }
    return ALL.stream().filter(read::equals).findFirst().orElse(read);
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof MoistureLimits other && parts().equals(other.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  private List<Object> parts() {
    return Arrays.asList(name, about, limits, count);
  }
}
