package floorcalc.moisture;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.math.BigDecimal;
import java.util.List;

/** What each source says on subfloors, one method a source. Nothing here is mixed from two sources. */
final class PublishedLimits {
  /** The only figure for wood by meter that a set has: a reading above it passes on no wood. */
  static final BigDecimal WOOD_BY_METER = BigDecimal.valueOf(12);

  private PublishedLimits() {
  }

  static List<MoistureLimit> commonPractice() {
    return List.of(any(MoistureMethod.METER, Substrate.MINERAL, "4", Source.COMMON_PRACTICE));
  }

  /** @param heatedSulfate the figure that the trade and the standard disagree on */
  static List<MoistureLimit> german(String heatedSulfate) {
    Source trade = new Source("TKB data sheet 16 and German trade texts on screeds ready for parquet", "", 2016, "",
        Standing.QUOTED);
    Source standard = new Source("DIN 18560-1", "DIN", 2015, "", Standing.QUOTED);
    Source source = heatedSulfate.equals("0.3") ? trade : standard;
    return List.of(cm(Substrate.CEMENT_SCREED, Heating.UNHEATED, "2.0", source),
        cm(Substrate.CEMENT_SCREED, Heating.HEATED, "1.8", source),
        cm(Substrate.CALCIUM_SULFATE_SCREED, Heating.UNHEATED, "0.5", source),
        cm(Substrate.CALCIUM_SULFATE_SCREED, Heating.HEATED, heatedSulfate, source));
  }

  static List<MoistureLimit> dtu() {
    Source source = new Source("NF DTU 51.11 P1-1", "AFNOR", 2009, "carbide bomb, concrete or screed", Standing.QUOTED);
    return List.of(any(MoistureMethod.CM, Substrate.MINERAL, "3", source).at(Length.ofMillimetres(20)),
        any(MoistureMethod.CM, Substrate.MINERAL, "4.5", source).at(Length.ofMillimetres(40)));
  }

  static List<MoistureLimit> british(String humidity, int year) {
    Source source = new Source("BS 8201", "BSI", year, year == 1987 ? "hygrometer, drying aids off 4 days before"
        : "Annex A, hygrometer, by one text alone", Standing.QUOTED);
    return List.of(any(MoistureMethod.SURFACE_HUMIDITY, Substrate.MINERAL, humidity, source));
  }

  static List<MoistureLimit> nwfa() {
    Source concrete = new Source("Vapor barriers", "NWFA", 2017, "magazine, June 2017; above it always a vapour retarder",
        Standing.READ);
    Source wood = new Source("Installation guidelines", "NWFA", 0, "wood subfloors, 12 %", Standing.QUOTED);
    return List.of(any(MoistureMethod.IN_SLAB_HUMIDITY, Substrate.CONCRETE, "75", concrete),
        any(MoistureMethod.CALCIUM_CHLORIDE, Substrate.CONCRETE, "3", concrete),
        wood(Substrate.TIMBER, wood), wood(Substrate.SHEET, wood));
  }

  private static MoistureLimit wood(Substrate on, Source source) {
    return MoistureLimit.of(MoistureMethod.METER, on, Heating.NOT_STATED, WOOD_BY_METER, source);
  }

  private static MoistureLimit cm(Substrate on, Heating heating, String most, Source source) {
    return MoistureLimit.of(MoistureMethod.CM, on, heating, new BigDecimal(most), source);
  }

  private static MoistureLimit any(MoistureMethod method, Substrate on, String most, Source source) {
    return MoistureLimit.of(method, on, Heating.NOT_STATED, new BigDecimal(most), source);
  }
}
