package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.data.DataRow;
import java.util.Map;

/** Moisture figures of standards and trade guidelines, row by row. Rows from memory are left out. */
final class MoistureStandards {
  /** Items that are ranges for boards, with the words by which a question asks for them. */
  private static final Map<String, String[]> BOARDS = Map.of(
      "moisture content of solid parquet elements with groove/tongue at first delivery", new String[] {"EN 13226:2002", "solid parquet"},
      "moisture content of multi-layer parquet elements at first delivery", new String[] {"EN 13489:2002", "multilayer parquet"},
      "delivery moisture of parquet 9 +/- 2 %", new String[] {"DIN 280", "parquet"},
      "wood flooring, unheated building", new String[] {"BS 8201:1987", "unheated building"},
      "wood flooring, intermittent heating", new String[] {"BS 8201:1987", "intermittent heating"},
      "flooring usually supplied with an average of", new String[] {"Australian industry guide", "as supplied"},
      "average in dry inland areas or air-conditioned buildings", new String[] {"Australian industry guide", "dry inland or air-conditioned"});

  private static final String NO_LIMIT = "no limit that the library has: ";

  private MoistureStandards() {}

  static FileCases of(String name) {
    FileCases file = new FileCases(name);
    for (DataRow row : file.rows()) {
      String item = row.text("item");
      String id = row.text("standard") + ", " + row.text("edition") + ", " + item;
      String[] boards = BOARDS.getOrDefault(item, new String[0]);
      if (row.text("how_known").startsWith("memory")) {
        file.leaveOut(row, row.text("standard") + ", " + item, "from memory, and no set of the library rests on it");
      } else if (boards.length > 0) {
        file.add(row, id, Kind.QUOTED, MoistureLimitCases.boards(boards[0], boards[1]), Expected.exactly("lowPercent", row.text("low")),
            Expected.exactly("highPercent", row.text("high")), FileCases.standing(Kind.QUOTED));
      } else {
        add(file, row, id, item);
      }
    }
    return file;
  }

  private static void add(FileCases file, DataRow row, String id, String item) {
    switch (item) {
      case "cement screed, unheated, ready for parquet" -> german(file, row, id, "cement screed", "not heated");
      case "cement screed, heated, ready for parquet" -> german(file, row, id, "cement screed", "heated");
      case "calcium sulfate screed, unheated" -> german(file, row, id, "calcium sulfate screed", "not heated");
      case "calcium sulfate screed, heated" -> most(file, row, id, "TKB data sheet 16", "CM", "calcium sulfate screed", "heated");
      case "calcium sulfate screed, heated (rejected by the parquet trade)" -> most(file, row, id, "DIN 18560-1:2015", "CM",
          "calcium sulfate screed", "heated");
      case "air at laying: temperature at least" -> file.add(row, id, Kind.QUOTED, MoistureLimitCases.air("adhesive-trade guide, 2004"),
          Expected.exactly("coldestCelsius", row.text("low")), Expected.text("warmestCelsius", "none"), FileCases.standing(Kind.QUOTED));
      case "air at laying: relative humidity at most 75, better 65 or less" -> file.add(row, id, Kind.QUOTED,
          MoistureLimitCases.air("adhesive-trade guide, 2004"), Expected.exactly("dampestPercent", row.text("high")),
          FileCases.standing(Kind.QUOTED));
      case "substrate moisture at 2 cm depth (floating parquet)" -> depth(file, row, id, "2 cm");
      case "substrate moisture at 4 cm depth (floating parquet)" -> depth(file, row, id, "4 cm");
      case "screed or slab, hygrometer" -> most(file, row, id, row.text("edition").equals("1987") ? "BS 8201:1987" : "BS 8201:2011",
          "surface hygrometer", "concrete", "not stated");
      case "wood subfloor moisture content" -> {
        most(file, row, id, "NWFA guidelines", "meter", "timber", "not stated");
        most(file, row, id + ", sheets", "NWFA guidelines", "meter", "wood-based sheets", "not stated");
      }
      default -> saidAgain(file, row, id, item);
    }
  }

  /** What the library takes from another text, which this one confirms. How that text is known is another row's figure. */
  private static void saidAgain(FileCases file, DataRow row, String id, String item) {
    String high = row.text("high");
    switch (item) {
      case "a heated or air-conditioned room usually has RH 40-60 % and 15-25 degC" -> file.add(row, id, Kind.QUOTED,
          MoistureLimitCases.air("NF DTU 51.2 P1-1 (May 2020) cl. 5.1 note"), Expected.exactly("driestPercent", row.text("low")),
          Expected.exactly("dampestPercent", high), Expected.exactly("coldestCelsius", "15"), Expected.exactly("warmestCelsius", "25"));
      case "slab RH usual limit for wood floors (adhesive maker's figure governs)" -> file.add(row, id, Kind.QUOTED,
          MoistureLimitCases.subfloor("NWFA guidelines", "in-slab RH", "concrete", "not stated"), Expected.exactly("most", high));
      case "calcium chloride emission usual limit for wood floors" -> file.add(row, id, Kind.QUOTED,
          MoistureLimitCases.subfloor("NWFA guidelines", "calcium chloride", "concrete", "not stated"), Expected.exactly("most", high));
      case "difference flooring to wood subfloor, strip under 3 in" -> file.add(row, id, Kind.QUOTED, MoistureLimitCases.difference("2.25 in"),
          Expected.exactly("points", high));
      case "difference flooring to wood subfloor, plank 3 in and wider" -> file.add(row, id, Kind.QUOTED, MoistureLimitCases.difference("5 in"),
          Expected.exactly("points", high));
      case "room at laying and in service: temperature" -> file.add(row, id, Kind.QUOTED, MoistureLimitCases.air("NWFA guidelines"),
          Expected.exactly("coldestFahrenheit", row.text("low")), Expected.exactly("warmestFahrenheit", high));
      case "room at laying and in service: relative humidity" -> file.add(row, id, Kind.QUOTED, MoistureLimitCases.air("NWFA guidelines"),
          Expected.exactly("driestPercent", row.text("low")), Expected.exactly("dampestPercent", high));
      default -> leaveOut(file, row, item);
    }
  }

  private static void leaveOut(FileCases file, DataRow row, String item) {
    String name = row.text("standard") + ", " + item;
    if (item.startsWith("equilibrium depends")) {
      file.leaveOut(row, name, NO_LIMIT + "a reporter's conclusion for a whole region");
    } else if (item.startsWith("oven-dry method") || item.startsWith("layer must object")) {
      file.leaveOut(row, name, NO_LIMIT + "a method or a duty without a figure of moisture");
    } else if (item.startsWith("1 % change across")) {
      file.leaveOut(row, name, NO_LIMIT + "a rule of thumb");
    } else {
      throw new IllegalStateException(row + " is neither used nor left out");
    }
  }

  /** The screeds on which the standard and the trade agree are asked for under both names. */
  private static void german(FileCases file, DataRow row, String id, String substrate, String heating) {
    most(file, row, id, "DIN 18560-1:2015", "CM", substrate, heating);
    most(file, row, id + ", by the trade", "TKB data sheet 16", "CM", substrate, heating);
  }

  private static void depth(FileCases file, DataRow row, String id, String depth) {
    Question question = MoistureLimitCases.subfloor("NF DTU 51.11 (2009)", "CM", "concrete or screed", "not stated").with("depth", depth);
    file.add(row, id, Kind.QUOTED, question, Expected.exactly("most", row.text("high")), FileCases.standing(Kind.QUOTED));
  }

  private static void most(FileCases file, DataRow row, String id, String source, String method, String substrate, String heating) {
    file.add(row, id, Kind.QUOTED, MoistureLimitCases.subfloor(source, method, substrate, heating), Expected.exactly("most", row.text("high")),
        FileCases.standing(Kind.QUOTED));
  }
}
