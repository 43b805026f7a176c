package floorcalc.examples.job;

import floorcalc.plan.Check;
import floorcalc.plan.Verdict;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads the {@code site} of a room: readings of air, moisture and heights. This version checks their shape and judges
 * none of them; each one comes out as a check that says so, so that no reading is lost and none passes for judged.
 */
final class SiteReader {
  private static final List<String> FIELDS = List.of("air", "seasons", "subfloorMoisture", "boardMoisture",
      "daysInRoom", "packsClosed", "heated", "flatness", "lines", "heights", "straightedge");
  private static final List<String> CLIMATE = List.of("temperature", "relativeHumidity");
  private static final Pattern TEMPERATURE = Pattern.compile("[-\u2212]?[0-9]{1,3}(\\.[0-9]{1,3})? ?(°C|°F)");
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
  private static final BigDecimal MOST_DAYS = BigDecimal.valueOf(3650);
  private static final Map<String, String> METHODS = new LinkedHashMap<>();

  static {
    for (String method : List.of("CM", "in-slab RH", "calcium chloride", "wood meter")) {
      METHODS.put(method, method);
    }
  }

  private final String room;
  private final List<Check> checks = new ArrayList<>();

  private SiteReader(String room) {
    this.room = room;
  }

  /** The readings as checks that were not judged, and what was not measured likewise. */
  static List<Check> read(Optional<Value> site, String room) {
    SiteReader reader = new SiteReader(room);
    site.flatMap(value -> value.object("readings taken in the room", FIELDS)).ifPresent(reader::readings);
    reader.missing();
    return reader.checks;
  }

  private void readings(Fields site) {
    site.optional("air").flatMap(SiteReader::climate).ifPresent(found -> note("indoor air", found));
    site.optional("seasons").flatMap(value -> value.object("the driest and the dampest season",
        List.of("driest", "dampest"))).ifPresent(this::seasons);
    moistures(site);
    site.optional("daysInRoom").flatMap(days -> days.number(BigDecimal.ZERO, MOST_DAYS))
        .ifPresent(days -> note("days of the packs in the room", days.toPlainString()));
    site.optional("packsClosed").flatMap(Value::trueOrFalse)
        .ifPresent(closed -> note("packs in the room", closed ? "closed" : "opened"));
    site.optional("heated").flatMap(Value::trueOrFalse)
        .ifPresent(heated -> note("floor heating", heated ? "heated" : "not heated"));
    Optional<String> set = site.optionalText("flatness");
    long heights = HeightReader.lines(site) + HeightReader.heights(site) + HeightReader.straightedge(site);
    if (heights > 0 || set.isPresent()) {
      note("flatness of the subfloor", counted(heights, "reading") + set.map(name -> ", for " + name).orElse(""));
    }
  }

  private void seasons(Fields seasons) {
    for (String season : List.of("driest", "dampest")) {
      seasons.required(season, "an object with temperature and relativeHumidity").flatMap(SiteReader::climate)
          .ifPresent(found -> note("indoor air, " + season + " season", found));
    }
  }

  private void moistures(Fields site) {
    List<String> subfloor = new ArrayList<>();
    site.optional("subfloorMoisture").ifPresent(list -> {
      for (Value item : list.items("readings", 0, JobLimits.READINGS)) {
        item.object("a moisture reading", List.of("method", "value", "at")).flatMap(SiteReader::moisture)
            .ifPresent(subfloor::add);
      }
    });
    if (!subfloor.isEmpty()) {
      note("moisture of the subfloor", listed(subfloor));
    }
    List<String> boards = new ArrayList<>();
    site.optional("boardMoisture").ifPresent(list -> {
      for (Value item : list.items("numbers in %", 0, JobLimits.READINGS)) {
        item.number(BigDecimal.ZERO, HUNDRED).ifPresent(number -> boards.add(number.toPlainString() + " %"));
      }
    });
    if (!boards.isEmpty()) {
      note("moisture of the boards", listed(boards));
    }
  }

  private static Optional<String> moisture(Fields reading) {
    Optional<String> method = reading.required("method", Words.oneOf(METHODS.keySet()))
        .flatMap(value -> value.choice(METHODS));
    Optional<BigDecimal> found = reading.required("value", "a number from 0 to 100")
        .flatMap(value -> value.number(BigDecimal.ZERO, HUNDRED));
    reading.optional("at").flatMap(RingReader::point);
    return method.isPresent() && found.isPresent()
        ? Optional.of(found.get().toPlainString() + " (" + method.get() + ")") : Optional.empty();
  }

  private static Optional<String> climate(Value value) {
    Optional<Fields> fields = value.object("temperature and relativeHumidity", CLIMATE);
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    String allowed = "a text with a number and °C or °F such as \"21 °C\"";
    Optional<String> temperature = fields.get().required("temperature", allowed)
        .flatMap(typed -> temperature(typed, allowed));
    Optional<BigDecimal> humidity = fields.get().required("relativeHumidity", "a number from 0 to 100")
        .flatMap(typed -> typed.number(BigDecimal.ZERO, HUNDRED));
    return temperature.isPresent() && humidity.isPresent()
        ? Optional.of(temperature.get() + ", " + humidity.get().toPlainString() + " % relative humidity")
        : Optional.empty();
  }

  private static Optional<String> temperature(Value typed, String allowed) {
    Optional<String> text = typed.asText().filter(found -> TEMPERATURE.matcher(found).matches());
    return text.isPresent() ? text : typed.refuse(allowed);
  }

  /** A floor is not fit for laying because nobody looked: what was not measured stands there as well. */
  private void missing() {
    for (String reading : List.of("indoor air", "moisture of the subfloor", "moisture of the boards",
        "flatness of the subfloor")) {
      if (checks.stream().noneMatch(check -> check.check().startsWith(reading + " in "))) {
        checks.add(check(reading, "", "not measured; measure it before laying and hold it against the maker's limits"));
      }
    }
  }

  private void note(String reading, String found) {
    checks.add(check(reading, found, "not judged by this version; hold it against the maker's limits"));
  }

  private Check check(String reading, String found, String limit) {
    return new Check(reading + " in " + room, found, limit, Verdict.NOT_MEASURED, Source.COMMON_PRACTICE);
  }

  private static String listed(List<String> found) {
    return found.size() <= 6 ? String.join(", ", found)
        : String.join(", ", found.subList(0, 6)) + " and " + (found.size() - 6) + " more";
  }

  private static String counted(long count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }
}
