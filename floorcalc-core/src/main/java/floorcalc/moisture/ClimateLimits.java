package floorcalc.moisture;

import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A named range for the air of a room, at laying and afterwards: relative humidity and, where the source has one,
 * temperature. Both ends are allowed. Sources that disagree are sets of their own. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class ClimateLimits implements Serializable {
  private static final long serialVersionUID = 1L;

  /** What many layers do: 45 % to 60 % relative humidity. Common practice, no source. */
  public static final ClimateLimits COMMON_PRACTICE = of("common practice", "45", "60", null, null,
      Source.COMMON_PRACTICE);

  /** NF DTU 51.2 (2020), clause 5.1, note: a heated or air-conditioned room, 40 % to 60 %, 15 °C to 25 °C. */
  public static final ClimateLimits NF_DTU_51_2 = of("NF DTU 51.2", "40", "60", Temperature.celsius("15"),
      Temperature.celsius("25"), new Source("NF DTU 51.2 P1-1", "AFNOR", 2020, "clause 5.1, note", Standing.READ));

  /** NWFA guidelines: 30 % to 50 %, 60 °F to 80 °F. */
  public static final ClimateLimits NWFA_GUIDELINES = of("NWFA guidelines", "30", "50", Temperature.fahrenheit("60"),
      Temperature.fahrenheit("80"), new Source("Local flavors", "NWFA", 2017, "magazine, June 2017", Standing.READ));

  /** Association of the German parquet industry, as quoted: 50 % to 60 % as a yearly mean, 20 °C to 22 °C. */
  public static final ClimateLimits GERMAN_PARQUET_INDUSTRY = of("German parquet industry", "50", "60",
      Temperature.celsius("20"), Temperature.celsius("22"), new Source("Raumklima und Holzfeuchte",
          "Verband der deutschen Parkettindustrie", 0, "yearly mean", Standing.QUOTED));

  /** A German guide for adhesive work, 2004, as quoted: at laying not above 75 %, not below 18 °C. */
  public static final ClimateLimits ADHESIVE_GUIDE = of("German adhesive guide", "0", "75", Temperature.celsius("18"),
      null, new Source("Adhesive-trade guide quoted for DIN 18356 work", "", 2004, "air at laying", Standing.QUOTED));

  private static final List<ClimateLimits> ALL = List.of(COMMON_PRACTICE, NF_DTU_51_2, NWFA_GUIDELINES,
      GERMAN_PARQUET_INDUSTRY, ADHESIVE_GUIDE);
  private static final String NOT_MEASURED = "measure the air in the room, with the heating as it will be in use";

  private final String name;
  private final transient Percent driest;
  private final transient Percent dampest;
  private final transient Temperature coldest;
  private final transient Temperature warmest;
  private final transient Source source;

  private ClimateLimits(String name, Percent driest, Percent dampest, Temperature coldest, Temperature warmest,
      Source source) {
    this.name = name;
    this.driest = driest;
    this.dampest = dampest;
    this.coldest = coldest;
    this.warmest = warmest;
    this.source = source;
  }

  private static ClimateLimits of(String name, String driest, String dampest, Temperature coldest, Temperature warmest,
      Source source) {
    return new ClimateLimits(name, Percent.of(driest), Percent.of(dampest), coldest, warmest, source);
  }

  /**
   * Returns all sets, common practice first.
   *
   * @return an unmodifiable list, not null
   */
  public static List<ClimateLimits> all() {
    return ALL;
  }

  /**
   * Returns the set of a name.
   *
   * @param name the name, as {@link #name()} gives it, not null
   * @return the set, not null
   * @throws IllegalArgumentException if there is no such set; the message lists the names
   */
  public static ClimateLimits named(String name) {
    Objects.requireNonNull(name, "name");
    return ALL.stream().filter(set -> set.name.equals(name)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no set of limits for the air '" + name
            + "'; the sets are: " + ALL.stream().map(set -> "'" + set.name + "'").collect(Collectors.joining(", "))));
  }

  /**
   * Judges the air of a room.
   *
   * @param air what was measured, not null
   * @param where the room or the season, for the judgement, not null, may be empty
   * @return the judgement {@code air-humidity}, and {@code air-temperature} if the set has one; not null
   */
  public List<Judgement> judge(AirClimate air, String where) {
    Objects.requireNonNull(air, "air");
    Percent humidity = air.relativeHumidity();
    List<Judgement> judgements = new ArrayList<>();
    boolean damp = humidity.compareTo(dampest) > 0;
    boolean dry = humidity.compareTo(driest) < 0;
    judgements.add(new Judgement("air-humidity", "relative humidity of the air", where, humidity.toString(),
        humidityRange(), damp || dry ? Outcome.NOT_MET : Outcome.MET, source,
        damp ? "air and heat the room, and wait with laying until boards and room agree"
            : dry ? "damp the air, and wait with laying until boards and room agree" : ""));
    temperatureRange().ifPresent(range -> {
      boolean cold = coldest != null && air.temperature().compareTo(coldest) < 0;
      boolean warm = warmest != null && air.temperature().compareTo(warmest) > 0;
      judgements.add(new Judgement("air-temperature", "temperature of the air", where, air.temperature().toString(),
          range, cold || warm ? Outcome.NOT_MET : Outcome.MET, source,
          cold ? "heat the room as it will be in use" : warm ? "cool the room as it will be in use" : ""));
    });
    return List.copyOf(judgements);
  }

  /**
   * Returns the judgements for a room whose air was not measured.
   *
   * @param where the room or the season, not null, may be empty
   * @return the judgements of {@link #judge}, none of them met; not null
   */
  public List<Judgement> notMeasured(String where) {
    List<Judgement> judgements = new ArrayList<>();
    judgements.add(new Judgement("air-humidity", "relative humidity of the air", where, "", humidityRange(),
        Outcome.NOT_MEASURED, source, NOT_MEASURED));
    temperatureRange().ifPresent(range -> judgements.add(new Judgement("air-temperature", "temperature of the air",
        where, "", range, Outcome.NOT_MEASURED, source, NOT_MEASURED)));
    return List.copyOf(judgements);
  }

  private String humidityRange() {
    return driest.equals(Percent.ZERO) ? "at most " + dampest : driest + " to " + dampest;
  }

  private Optional<String> temperatureRange() {
    if (coldest == null) {
      return Optional.empty();
    }
    return Optional.of(warmest == null ? "at least " + coldest : coldest + " to " + warmest);
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
   * Returns the lowest relative humidity that is allowed.
   *
   * @return 0 % if there is none, not null
   */
  public Percent driest() {
    return driest;
  }

  /**
   * Returns the highest relative humidity that is allowed.
   *
   * @return the humidity, not null
   */
  public Percent dampest() {
    return dampest;
  }

  /**
   * Returns the lowest temperature that is allowed.
   *
   * @return the temperature, empty if the source has none, not null
   */
  public Optional<Temperature> coldest() {
    return Optional.ofNullable(coldest);
  }

  /**
   * Returns the highest temperature that is allowed.
   *
   * @return the temperature, empty if the source has none, not null
   */
  public Optional<Temperature> warmest() {
    return Optional.ofNullable(warmest);
  }

  /**
   * Returns whose limits they are.
   *
   * @return the source, not null
   */
  public Source source() {
    return source;
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
    return named(name);
  }
}
