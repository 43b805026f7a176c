package floorcalc.moisture;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.working.Standing;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Each published limit against the tables of published figures; sources stand in each row and at the head of the files.
 * Figures are exact. Rows from memory are in no set but as {@link #rowsFromMemory} says.
 */
@Tag("reference")
class MoistureLimitsReferenceTest {

  @ParameterizedTest(name = "{0}, {1}, {2}")
  @CsvFileSource(resources = "/reference/subfloor_moisture_limits.csv", useHeadersInDisplayName = true)
  void subfloorLimits(String source, String substrate, String method, String limit, String unit, String note,
      String status, String seen) {
    switch (source + ", " + substrate + ", " + method) {
      case "German practice, cement screed, CM" -> german(Substrate.CEMENT_SCREED, Heating.UNHEATED, limit, status);
      case "German practice, calcium sulfate screed unheated, CM" ->
          german(Substrate.CALCIUM_SULFATE_SCREED, Heating.UNHEATED, limit, status);
      case "German practice, calcium sulfate screed heated, CM" ->
          german(Substrate.CALCIUM_SULFATE_SCREED, Heating.HEATED, limit, status);
      case "German parquet practice, cement screed heated, CM" ->
          german(Substrate.CEMENT_SCREED, Heating.HEATED, limit, status);
      case "NF DTU 51.11 (2009), concrete or screed, carbide bomb at 2 cm depth" -> dtu(20, limit, status);
      case "NF DTU 51.11 (2009), concrete or screed, carbide bomb at 4 cm depth" -> dtu(40, limit, status);
      case "BS 8201 Annex A (as cited by NBS K21), concrete/screed, surface hygrometer" ->
          edge(MoistureLimits.BS_8201_1987, MoistureMethod.SURFACE_HUMIDITY, Substrate.SCREED, Heating.NOT_STATED, limit, status);
      case "NWFA guidelines, concrete, ASTM F2170 in-slab RH" -> edge(MoistureLimits.NWFA_GUIDELINES,
          MoistureMethod.IN_SLAB_HUMIDITY, Substrate.CONCRETE, Heating.NOT_STATED, limit, status);
      case "NWFA guidelines, concrete, ASTM F1869 calcium chloride" -> edge(MoistureLimits.NWFA_GUIDELINES,
          MoistureMethod.CALCIUM_CHLORIDE, Substrate.CONCRETE, Heating.NOT_STATED, limit, status);
      case "NWFA guidelines, wood subfloor against strip under 3 in, moisture meter difference" ->
          difference("2.9 in", limit, status);
      case "NWFA guidelines, wood subfloor against plank 3 in or wider, moisture meter difference" ->
          difference("3 in", limit, status);
      case "NWFA guidelines, wood subfloor, moisture content" ->
          // From memory in this file; the file of standards quotes it from two texts, see below.
          assertThat(status).isEqualTo("memory");
      default ->
          // The moisture of boards and what lies under a polymer covering: not about a subfloor below wood.
          assertThat(source).startsWith("SNiP");
    }
  }

  private static void german(Substrate on, Heating heating, String limit, String status) {
    edge(MoistureLimits.GERMAN_PARQUET, MoistureMethod.CM, on, heating, limit, status);
  }

  private static void dtu(int millimetres, String limit, String status) {
    MoistureReading at = MoistureReading.of(MoistureMethod.CM, limit).depth(Length.ofMillimetres(millimetres));
    assertThat(MoistureLimits.NF_DTU_51_11.limitsFor(at, Substrate.CONCRETE, Heating.NOT_STATED)).singleElement()
        .satisfies(found -> {
          assertThat(found.most()).isEqualByComparingTo(limit);
          assertThat(found.source().standing()).isEqualTo(standing(status));
        });
  }

  private static void edge(MoistureLimits set, MoistureMethod method, Substrate on, Heating heating, String limit,
      String status) {
    assertThat(set.limitsFor(MoistureReading.of(method, limit), on, heating)).isNotEmpty().allSatisfy(found -> {
      assertThat(found.most()).isEqualByComparingTo(limit);
      assertThat(found.source().standing()).isEqualTo(standing(status));
    });
  }

  private static void difference(String width, String limit, String status) {
    assertThat(MoistureDifference.allowed(Length.parse(width)).value()).isEqualTo(Percent.of(limit));
    assertThat(MoistureDifference.SOURCE.standing()).isEqualTo(standing(status));
  }

  private static Standing standing(String status) {
    return switch (status) {
      case "verified" -> Standing.READ;
      case "verified-secondary" -> Standing.QUOTED;
      default -> throw new AssertionError("a row of status " + status + " stands behind no set");
    };
  }

  private static final Map<String, ClimateLimits> CLIMATES = Map.of(
      "NF DTU 51.2 P1-1 (May 2020) cl. 5.1 note", ClimateLimits.NF_DTU_51_2,
      "NWFA guidelines", ClimateLimits.NWFA_GUIDELINES,
      "Verband der deutschen Parkettindustrie", ClimateLimits.GERMAN_PARQUET_INDUSTRY);

  private static final Map<String, String> RANGES = Map.of(
      "solid parquet moisture content", "German parquet industry, solid",
      "multilayer parquet moisture content", "German parquet industry, multilayer",
      "wood flooring moisture content", "NWFA, US mills");

  @ParameterizedTest(name = "{0}, {1}")
  @CsvFileSource(resources = "/reference/indoor_climate.csv", useHeadersInDisplayName = true)
  void indoorClimate(String source, String quantity, String low, String high, String unit, String note, String status,
      String seen) {
    ClimateLimits climate = CLIMATES.get(source);
    if (quantity.equals("relative humidity") && climate != null) {
      assertThat(climate.driest()).isEqualTo(Percent.of(low));
      assertThat(climate.dampest()).isEqualTo(Percent.of(high));
      assertThat(climate.source().standing()).isEqualTo(standing(status));
    } else if (quantity.equals("temperature") && climate != null) {
      String sign = unit.equals("degC") ? " °C" : " °F";
      assertThat(climate.coldest()).contains(Temperature.parse(low + sign));
      assertThat(climate.warmest()).contains(Temperature.parse(high + sign));
    } else if (RANGES.containsKey(quantity)) {
      BoardMoistureLimits range = BoardMoistureLimits.named(RANGES.get(quantity));
      assertThat(range.low()).isEqualTo(Percent.of(low));
      assertThat(range.high()).isEqualTo(Percent.of(high));
      assertThat(range.source().standing()).isEqualTo(standing(status));
    } else if (quantity.startsWith("moisture tests of ")) {
      ReadingCount count = quantity.contains("subfloor") ? ReadingCount.NWFA_SUBFLOOR : ReadingCount.NWFA_BOARDS;
      assertThat(count.wanted(Area.ofSquareMetres("92.90304")).value()).isEqualTo(Long.parseLong(low));
      assertThat(count.source().standing()).isEqualTo(standing(status));
    } else {
      // Comfort of people, timber supports, fresh plaster: no limit for a floor.
      assertThat(source).isIn("EPA indoor air model", "ASHRAE 55-2010", "NBS K21", "NF DTU 51.11 fiche (2024)");
    }
  }

  /** What is in a set of ranges or limits, by standard and edition as the file names them. */
  private static final Map<String, String> BOARDS = Map.of(
      "moisture content of solid parquet elements with groove/tongue at first delivery", "EN 13226:2002",
      "moisture content of multi-layer parquet elements at first delivery", "EN 13489:2002",
      "delivery moisture of parquet 9 +/- 2 %", "DIN 280",
      "wood flooring, unheated building", "BS 8201:1987, unheated",
      "wood flooring, intermittent heating", "BS 8201:1987, intermittent heating",
      "flooring usually supplied with an average of", "Australian industry guide",
      "average in dry inland areas or air-conditioned buildings", "Australian industry guide, dry inland");

  @ParameterizedTest(name = "{0}, {2}")
  @CsvFileSource(resources = "/reference/standards_moisture_values.csv", useHeadersInDisplayName = true)
  void standards(String standard, String edition, String item, String low, String high, String unit, String appliesTo,
      String how) {
    if (BOARDS.containsKey(item)) {
      BoardMoistureLimits range = BoardMoistureLimits.named(BOARDS.get(item));
      assertThat(how).startsWith("seen");
      assertThat(range.low()).isEqualTo(Percent.of(low));
      assertThat(range.high()).isEqualTo(Percent.of(high));
      assertThat(range.source().standing()).isEqualTo(Standing.QUOTED);
      return;
    }
    switch (item) {
      case "cement screed, unheated, ready for parquet" ->
          both(Substrate.CEMENT_SCREED, Heating.UNHEATED, high);
      case "cement screed, heated, ready for parquet" -> both(Substrate.CEMENT_SCREED, Heating.HEATED, high);
      case "calcium sulfate screed, unheated" -> both(Substrate.CALCIUM_SULFATE_SCREED, Heating.UNHEATED, high);
      case "calcium sulfate screed, heated" -> german(Substrate.CALCIUM_SULFATE_SCREED, Heating.HEATED, high, "verified-secondary");
      case "calcium sulfate screed, heated (rejected by the parquet trade)" -> edge(MoistureLimits.DIN_18560_1,
          MoistureMethod.CM, Substrate.CALCIUM_SULFATE_SCREED, Heating.HEATED, high, "verified-secondary");
      case "air at laying: temperature at least" ->
          assertThat(ClimateLimits.ADHESIVE_GUIDE.coldest()).contains(Temperature.celsius(low));
      case "air at laying: relative humidity at most 75, better 65 or less" ->
          assertThat(ClimateLimits.ADHESIVE_GUIDE.dampest()).isEqualTo(Percent.of(high));
      case "substrate moisture at 2 cm depth (floating parquet)" -> dtu(20, high, "verified-secondary");
      case "substrate moisture at 4 cm depth (floating parquet)" -> dtu(40, high, "verified-secondary");
      case "screed or slab, hygrometer" -> edge(edition.equals("1987") ? MoistureLimits.BS_8201_1987
          : MoistureLimits.BS_8201_2011, MoistureMethod.SURFACE_HUMIDITY, Substrate.CONCRETE, Heating.NOT_STATED, high,
          "verified-secondary");
      case "wood subfloor moisture content" -> edge(MoistureLimits.NWFA_GUIDELINES, MoistureMethod.METER, Substrate.TIMBER,
          Heating.NOT_STATED, high, "verified-secondary");
      default -> rowsFromMemory(item, how);
    }
  }

  /** No range and no limit of the library rests on a row recalled from memory; the others are said again elsewhere. */
  private static void rowsFromMemory(String item, String how) {
    if (!how.startsWith("memory")) {
      assertThat(List.of("equilibrium depends", "oven-dry method", "layer must object", "a heated or air-conditioned",
          "slab RH usual limit", "calcium chloride emission", "difference flooring", "room at laying", "1 % change across",
          "softwood floorboards: heated rooms")).anyMatch(item::startsWith);
    }
  }

  private static void both(Substrate on, Heating heating, String limit) {
    german(on, heating, limit, "verified-secondary");
    edge(MoistureLimits.DIN_18560_1, MoistureMethod.CM, on, heating, limit, "verified-secondary");
  }

  @ParameterizedTest(name = "{0}, {1}")
  @CsvFileSource(resources = "/reference/recommended_mc_table_13_2_us.csv", useHeadersInDisplayName = true)
  void woodHandbookTable(String use, String region, String average, String low, String high, String statusAverage,
      String statusRange) {
    if (statusRange.equals("seen")) {
      BoardMoistureLimits range = BoardMoistureLimits.named("Wood Handbook table 13-2");
      assertThat(range.low()).isEqualTo(Percent.of(low));
      assertThat(range.high()).isEqualTo(Percent.of(high));
      assertThat(range.about()).contains("average " + average + " %");
    } else {
      assertThat(BoardMoistureLimits.all()).noneMatch(range -> range.about().contains(region));
    }
  }
}
