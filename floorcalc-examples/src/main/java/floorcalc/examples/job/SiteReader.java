package floorcalc.examples.job;

import floorcalc.flatness.ToleranceSet;
import floorcalc.moisture.AirClimate;
import floorcalc.moisture.Heating;
import floorcalc.moisture.MoistureMethod;
import floorcalc.moisture.MoistureReading;
import floorcalc.moisture.Percent;
import floorcalc.moisture.Temperature;
import floorcalc.outline.Point;
import floorcalc.site.SiteReadings;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads the {@code site} of a room: readings of air, moisture and heights. */
final class SiteReader {
  private static final List<String> FIELDS = List.of("air", "seasons", "subfloorMoisture", "boardMoisture",
      "daysInRoom", "packsClosed", "heated", "flatness", "lines", "heights", "straightedge");
  private static final List<String> CLIMATE = List.of("temperature", "relativeHumidity");
  private static final Pattern TEMPERATURE = Pattern.compile("[-\u2212]?[0-9]{1,3}(\\.[0-9]{1,3})? ?(°C|°F)");
  private static final Temperature COLDEST = Temperature.celsius("-20");
  private static final Temperature WARMEST = Temperature.celsius("100");
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
  private static final BigDecimal MOST_DAYS = BigDecimal.valueOf(3650);
  private static final BigDecimal DAMPEST_BOARD = BigDecimal.valueOf(30);
  private static final Map<String, Method> METHODS = new LinkedHashMap<>();

  /** A method with the readings that are possible with it, in its unit. */
  private record Method(MoistureMethod method, int least, int most) {}

  static {
    METHODS.put("CM", new Method(MoistureMethod.CM, 0, 20));
    METHODS.put("in-slab RH", new Method(MoistureMethod.IN_SLAB_HUMIDITY, 5, 100));
    METHODS.put("calcium chloride", new Method(MoistureMethod.CALCIUM_CHLORIDE, 0, 60));
    METHODS.put("wood meter", new Method(MoistureMethod.METER, 0, 100));
  }

  private SiteReader() {
  }

  /** What was read; of no meaning if there were mistakes. */
  static SiteReadings read(Optional<Value> site) {
    return site.flatMap(value -> value.object("readings taken in the room", FIELDS)).map(SiteReader::readings)
        .orElse(SiteReadings.NONE);
  }

  private static SiteReadings readings(Fields site) {
    SiteReadings read = SiteReadings.NONE;
    read = site.optional("air").flatMap(SiteReader::climate).map(read::withAir).orElse(read);
    read = seasons(site, read);
    read = read.withSubfloorMoisture(subfloor(site)).withBoardMoisture(boards(site));
    read = site.optional("daysInRoom").flatMap(days -> days.number(BigDecimal.ZERO, MOST_DAYS))
        .map(read::withDaysInRoom).orElse(read);
    Optional<Boolean> closed = site.optional("packsClosed").flatMap(Value::trueOrFalse);
    if (closed.isPresent()) {
      read = closed.get() ? read.withPacksClosed() : read.withPacksOpened();
    }
    Optional<Boolean> heated = site.optional("heated").flatMap(Value::trueOrFalse);
    if (heated.isPresent()) {
      read = read.withHeating(heated.get() ? Heating.HEATED : Heating.UNHEATED);
    }
    read = site.optional("flatness").flatMap(SiteReader::toleranceSet).map(read::withFlatness).orElse(read);
    return read.withLines(HeightReader.lines(site)).withHeights(HeightReader.heights(site))
        .withStraightedge(HeightReader.straightedge(site));
  }

  private static SiteReadings seasons(Fields site, SiteReadings read) {
    Optional<Fields> seasons = site.optional("seasons")
        .flatMap(value -> value.object("the driest and the dampest season", List.of("driest", "dampest")));
    if (seasons.isEmpty()) {
      return read;
    }
    String allowed = "an object with temperature and relativeHumidity";
    Optional<AirClimate> driest = seasons.get().required("driest", allowed).flatMap(SiteReader::climate);
    Optional<AirClimate> dampest = seasons.get().required("dampest", allowed).flatMap(SiteReader::climate);
    return driest.isPresent() && dampest.isPresent() ? read.withSeasons(driest.get(), dampest.get()) : read;
  }

  private static List<MoistureReading> subfloor(Fields site) {
    List<MoistureReading> readings = new ArrayList<>();
    site.optional("subfloorMoisture").ifPresent(list -> {
      for (Value item : list.items("readings", 0, JobLimits.READINGS)) {
        item.object("a moisture reading", List.of("method", "value", "at")).flatMap(SiteReader::moisture)
            .ifPresent(readings::add);
      }
    });
    return readings;
  }

  private static Optional<MoistureReading> moisture(Fields reading) {
    Optional<Method> method = reading.required("method", Words.oneOf(METHODS.keySet()))
        .flatMap(value -> value.choice(METHODS));
    Optional<BigDecimal> found = reading.required("value", "a number from 0 to 100")
        .flatMap(value -> method.isPresent() ? number(value, method.get()) : value.number(BigDecimal.ZERO, HUNDRED));
    Optional<Point> at = reading.optional("at").flatMap(RingReader::point);
    if (method.isEmpty() || found.isEmpty()) {
      return Optional.empty();
    }
    MoistureReading read = MoistureReading.of(method.get().method(), found.get());
    return Optional.of(at.map(read::at).orElse(read));
  }

  private static Optional<BigDecimal> number(Value value, Method method) {
    return value.number(BigDecimal.valueOf(method.least()), BigDecimal.valueOf(method.most()),
        ", in " + method.method().unit());
  }

  private static List<Percent> boards(Fields site) {
    List<Percent> readings = new ArrayList<>();
    site.optional("boardMoisture").ifPresent(list -> {
      for (Value item : list.items("numbers in %", 0, JobLimits.READINGS)) {
        item.number(BigDecimal.ZERO, DAMPEST_BOARD, ", in % by a meter set to the wood")
            .ifPresent(number -> readings.add(Percent.of(number)));
      }
    });
    return readings;
  }

  private static Optional<AirClimate> climate(Value value) {
    Optional<Fields> fields = value.object("temperature and relativeHumidity", CLIMATE);
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    String allowed = "a text with a number and °C or °F such as \"21 °C\"";
    Optional<Temperature> temperature = fields.get().required("temperature", allowed)
        .flatMap(typed -> temperature(typed, allowed));
    Optional<BigDecimal> humidity = fields.get().required("relativeHumidity", "a number from 0 to 100")
        .flatMap(typed -> typed.number(BigDecimal.ZERO, HUNDRED));
    return temperature.isPresent() && humidity.isPresent()
        ? Optional.of(AirClimate.of(temperature.get(), Percent.of(humidity.get()))) : Optional.empty();
  }

  private static Optional<Temperature> temperature(Value typed, String allowed) {
    Optional<String> text = typed.asText().filter(found -> TEMPERATURE.matcher(found).matches());
    if (text.isEmpty()) {
      return typed.refuse(allowed);
    }
    try {
      Temperature read = Temperature.parse(text.get());
      if (read.compareTo(COLDEST) >= 0 && read.compareTo(WARMEST) <= 0) {
        return Optional.of(read);
      }
    } catch (IllegalArgumentException beyond) {
      // colder or warmer than any temperature of the library: said below
    }
    return typed.refuse("from -20 °C to 100 °C (-4 °F to 212 °F); check the scale");
  }

  private static Optional<ToleranceSet> toleranceSet(Value typed) {
    Map<String, ToleranceSet> sets = new LinkedHashMap<>();
    ToleranceSet.all().forEach(set -> sets.put(set.name(), set));
    Optional<String> text = typed.asText();
    if (text.isPresent() && sets.containsKey(text.get())) {
      return Optional.of(sets.get(text.get()));
    }
    return typed.refuse("the name of a tolerance set such as \"common practice\" or \"DIN 18202 line 3\""
        + text.map(name -> Words.hint(name, sets.keySet())).orElse("") + " (site --sets lists all " + sets.size() + ")");
  }
}
