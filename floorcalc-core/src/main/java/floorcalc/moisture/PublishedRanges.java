package floorcalc.moisture;

import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.util.List;

/** What each source says on the moisture content of boards. Nothing here is mixed from two sources. */
final class PublishedRanges {
  static final List<BoardMoistureLimits> ALL = List.of(
      BoardMoistureLimits.of("EN 13226:2002", "solid parquet with groove and tongue, as delivered", "7", "11",
          quoted("EN 13226", "CEN", 2002, "clause 5.3")),
      BoardMoistureLimits.of("EN 13489:2002", "multilayer parquet, as delivered", "5", "9",
          quoted("EN 13489", "CEN", 2002, "")),
      BoardMoistureLimits.of("DIN 280", "parquet, as delivered, 9 % plus or minus 2; withdrawn", "7", "11",
          quoted("DIN 280", "DIN", 0, "parts 1 to 4")),
      BoardMoistureLimits.of("German parquet industry, solid", "solid parquet, 9 % plus or minus 2", "7", "11",
          germanIndustry()),
      BoardMoistureLimits.of("German parquet industry, multilayer", "multilayer parquet, 8 % plus or minus 2", "6", "10",
          germanIndustry()),
      BoardMoistureLimits.of("NWFA, US mills", "boards as milled, for 30 % to 50 % and 60 °F to 80 °F", "6", "9",
          new Source("Acclimation", "NWFA", 2019, "magazine, 26 February 2019", Standing.READ)),
      BoardMoistureLimits.of("Wood Handbook table 13-2", "interior, most of the United States, average 8 %", "6", "10",
          quoted("Wood Handbook, FPL-GTR-282", "USDA Forest Products Laboratory", 2021, "table 13-2")),
      BoardMoistureLimits.of("BS 8201:1987, unheated", "wood flooring in an unheated building", "15", "19",
          quoted("BS 8201", "BSI", 1987, "")),
      BoardMoistureLimits.of("BS 8201:1987, intermittent heating", "wood flooring, intermittent heating", "10", "14",
          quoted("BS 8201", "BSI", 1987, "")),
      BoardMoistureLimits.of("Australian industry guide", "average as supplied", "10", "12.5", australian()),
      BoardMoistureLimits.of("Australian industry guide, dry inland", "average, dry inland or air-conditioned", "7", "12",
          australian()));

  private PublishedRanges() {
  }

  private static Source quoted(String title, String publisher, int year, String locator) {
    return new Source(title, publisher, year, locator, Standing.QUOTED);
  }

  private static Source germanIndustry() {
    return quoted("Raumklima und Holzfeuchte", "Verband der deutschen Parkettindustrie", 0, "");
  }

  private static Source australian() {
    return quoted("Australian industry guide on timber flooring", "", 2009, "");
  }
}
