package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataRow;
import java.util.List;
import java.util.Map;

/** How dry a subfloor has to be, how damp boards may be, and what air a floor of wood wants, by source. */
public final class MoistureLimitCases extends GatheredTopic {
  private static final String SUBFLOORS = "subfloor_moisture_limits.csv";
  private static final String CLIMATE = "indoor_climate.csv";
  static final String STANDARDS = "standards_moisture_values.csv";
  private static final String HANDBOOK = "recommended_mc_table_13_2_us.csv";
  private static final String EMISSION = "calcium_chloride_computed.csv";
  private static final String NWFA = "NWFA guidelines";

  /** What a reading is taken of, as a question asks it: subfloor, heating, and the depth where the source has one. */
  private record Place(String substrate, String heating, String depth) {}

  private static final Map<String, Place> PLACES = Map.of(
      "cement screed", new Place("cement screed", "not heated", ""),
      "cement screed heated", new Place("cement screed", "heated", ""),
      "calcium sulfate screed unheated", new Place("calcium sulfate screed", "not heated", ""),
      "calcium sulfate screed heated", new Place("calcium sulfate screed", "heated", ""),
      "carbide bomb at 2 cm depth", new Place("concrete", "not stated", "2 cm"),
      "carbide bomb at 4 cm depth", new Place("concrete", "not stated", "4 cm"),
      "concrete/screed", new Place("screed, binder not stated", "not stated", ""),
      "concrete", new Place("concrete", "not stated", ""),
      "concrete or screed", new Place("concrete or screed", "not stated", ""));

  /** Makes the topic. */
  public MoistureLimitCases() {}

  @Override
  public String name() {
    return "Limits of moisture and climate";
  }

  @Override
  public List<String> files() {
    return List.of(SUBFLOORS, CLIMATE, STANDARDS, HANDBOOK, EMISSION);
  }

  @Override
  List<FileCases> gather() {
    return List.of(subfloors(), climate(), MoistureStandards.of(STANDARDS), handbook(), emission());
  }

  static Question subfloor(String source, String method, String substrate, String heating) {
    return Question.of("most-moisture-of-subfloor").with("source", source).with("method", method).with("substrate", substrate)
        .with("heating", heating);
  }

  private static FileCases subfloors() {
    FileCases file = new FileCases(SUBFLOORS);
    for (DataRow row : file.rows()) {
      String source = row.text("source");
      String substrate = row.text("substrate");
      String name = source + ", " + substrate + ", " + row.text("method");
      if (row.text("method").equals("moisture meter difference")) {
        addDifference(file, row, name);
      } else if (row.text("status").equals("memory")) {
        file.leaveOut(row, name, "from memory in this file; the file of standards has the same figure as quoted by two texts");
      } else if (source.startsWith("SNiP")) {
        file.leaveOut(row, name, "the moisture of boards at laying and of screeds under polymer coverings: no limit of a subfloor below wood");
      } else {
        Kind kind = Kind.ofStatus(row.text("status")).orElseThrow();
        Place place = PLACES.containsKey(row.text("method")) ? PLACES.get(row.text("method")) : PLACES.get(substrate);
        Question question = subfloor(source, method(row.text("method")), place.substrate(), place.heating());
        file.add(row, name, kind, place.depth().isEmpty() ? question : question.with("depth", place.depth()),
            Expected.exactly("most", row.text("limit")), FileCases.standing(kind));
      }
    }
    return file;
  }

  private static String method(String words) {
    return words.startsWith("carbide") ? "CM" : words.contains("F2170") ? "in-slab RH" : words.contains("F1869") ? "calcium chloride" : words;
  }

  /** By the width on either side of 3 in; and by the example that the source prints, a subfloor at 10 %, with what lies just beyond it. */
  private static void addDifference(FileCases file, DataRow row, String name) {
    boolean strip = row.text("substrate").contains("strip under 3 in");
    String width = strip ? "2.9 in" : "3 in";
    int points = row.count("limit");
    file.add(row, name, Kind.READ, difference(width), Expected.exactly("points", row.text("limit")), FileCases.standing(Kind.READ));
    Kind kind = strip ? Kind.READ : Kind.WORKED_APART;
    addVerdict(file, row, kind, width, Integer.toString(10 - points), "met");
    addVerdict(file, row, kind, width, Integer.toString(10 + points), "met");
    addVerdict(file, row, Kind.WORKED_APART, width, 9 - points + ".9", "not met");
    addVerdict(file, row, Kind.WORKED_APART, width, 10 + points + ".1", "not met");
  }

  static Question difference(String width) {
    return Question.of("difference-of-boards-and-subfloor").with("boardWidth", width);
  }

  private static void addVerdict(FileCases file, DataRow row, Kind kind, String width, String boards, String verdict) {
    file.add(row, "subfloor 10 %, boards " + boards + " %, " + width, kind, Question.of("boards-against-wood-subfloor").with("boardWidth", width)
        .with("boardMoisture", boards).with("subfloorMoisture", "10"), Expected.text("verdict", verdict));
  }

  private static FileCases climate() {
    FileCases file = new FileCases(CLIMATE);
    for (DataRow row : file.rows()) {
      String source = row.text("source");
      String quantity = row.text("quantity");
      String name = source + ", " + quantity;
      switch (source) {
        case "EPA indoor air model", "ASHRAE 55-2010" -> file.leaveOut(row, name, "for the comfort of people, no limit for a floor");
        case "NBS K21" -> file.leaveOut(row, name, "timber below a floor, of which the library has no limit");
        case "NF DTU 51.11 fiche (2024)" -> file.leaveOut(row, name, "fresh walls and plaster, of which the library has no limit");
        default -> addClimate(file, row, name);
      }
    }
    return file;
  }

  private static void addClimate(FileCases file, DataRow row, String name) {
    Kind kind = Kind.ofStatus(row.text("status")).orElseThrow();
    String low = row.text("low");
    String high = row.text("high");
    Question air = air(row.text("source"));
    switch (row.text("quantity")) {
      case "relative humidity" -> file.add(row, name, kind, air, Expected.exactly("driestPercent", low),
          Expected.exactly("dampestPercent", high), FileCases.standing(kind));
      case "temperature" -> {
        String scale = row.text("unit").equals("degC") ? "Celsius" : "Fahrenheit";
        file.add(row, name, kind, air, Expected.exactly("coldest" + scale, low), Expected.exactly("warmest" + scale, high),
            FileCases.standing(kind));
      }
      case "solid parquet moisture content" -> file.add(row, name, kind, boards(row.text("source"), "solid parquet"),
          Expected.exactly("lowPercent", low), Expected.exactly("highPercent", high), FileCases.standing(kind));
      case "multilayer parquet moisture content" -> file.add(row, name, kind, boards(row.text("source"), "multilayer parquet"),
          Expected.exactly("lowPercent", low), Expected.exactly("highPercent", high), FileCases.standing(kind));
      case "wood flooring moisture content" -> file.add(row, name, kind, boards("NWFA", "wood flooring from US mills"),
          Expected.exactly("lowPercent", low), Expected.exactly("highPercent", high), FileCases.standing(kind));
      case "days of closed packs in the room" -> {
        acclimatised(file, row, name, kind, low, "closed", "9.3", "packs", "met");
        acclimatised(file, row, name + ", days", kind, low, "closed", "9.3", "days", "met");
        acclimatised(file, row, name + ", a little less", kind, "2.9", "closed", "9.3", "days", "not met");
        acclimatised(file, row, name + ", opened", kind, high, "opened", "9.3", "packs", "not met");
        acclimatised(file, row, name + ", but the boards are too damp", kind, high, "closed", "12", "days", "not met");
      }
      case "boards and room apart" -> {
        // Air of 20 °C and 50 % asks for 9.27 %.
        acclimatised(file, row, name + ", damper", kind, "4", "closed", "11.2", "agreement", "met");
        acclimatised(file, row, name + ", drier", kind, "4", "closed", "7.3", "agreement", "met");
        acclimatised(file, row, name + ", too damp", kind, "4", "closed", "11.3", "agreement", "not met");
        acclimatised(file, row, name + ", too dry", kind, "4", "closed", "7.2", "agreement", "not met");
      }
      default -> {
        // So many for 1000 square feet, a floor of 40 ft by 25 ft; a hair more asks for one more, as the number is rounded up.
        String of = row.text("quantity").contains("subfloor") ? "subfloor" : "boards";
        Question count = Question.of("number-of-moisture-readings").with("source", "NWFA").with("of", of).with("width", "25 ft");
        file.add(row, name, kind, count.with("length", "40 ft"), Expected.exactly("readings", low), FileCases.standing(kind));
        file.add(row, name + ", a little more", Kind.WORKED_APART, count.with("length", "40.01 ft"),
            Expected.exactly("readings", Integer.toString(row.count("low") + 1)));
      }
    }
  }

  private static void acclimatised(FileCases file, DataRow row, String id, Kind kind, String days, String packs, String boards, String figure,
      String verdict) {
    file.add(row, id, kind, Question.of("acclimatised").with("daysInRoom", days).with("packs", packs).with("boardMoisture", boards)
        .with("temperature", "20 °C").with("relativeHumidity", "50"), Expected.text(figure, verdict));
  }

  static Question air(String source) {
    return Question.of("air-for-wood-floors").with("source", source);
  }

  static Question boards(String source, String boards) {
    return Question.of("moisture-of-boards").with("source", source).with("boards", boards);
  }

  private static FileCases handbook() {
    FileCases file = new FileCases(HANDBOOK);
    for (DataRow row : file.rows()) {
      if (row.text("status_range").equals("seen")) {
        Kind kind = Kind.QUOTED;
        file.add(row, row.text("use") + ", " + row.text("region"), kind, boards("Wood Handbook, table 13-2", "interior, most areas of the US"),
            Expected.exactly("lowPercent", row.text("single_pieces_low_pct")), Expected.exactly("highPercent", row.text("single_pieces_high_pct")),
            Expected.exactly("averagePercent", row.text("average_pct")), FileCases.standing(kind));
      } else {
        file.leaveOut(row, row.text("use").split(":")[0] + ", " + row.text("region"), "the range is from memory, and the library has none for it");
      }
    }
    return file;
  }

  private static FileCases emission() {
    FileCases file = new FileCases(EMISSION);
    for (DataRow row : file.rows()) {
      String grams = row.text("grams_per_m2_24h");
      file.add(row, grams + " g", Kind.WORKED_APART, Question.of("calcium-chloride-in-pounds").with("grams", grams),
          Expected.printed("pounds", row.text("pounds_per_1000_ft2_24h")));
    }
    return file;
  }

  @Override
  List<Remark> moreRemarks() {
    return List.of(
        new Remark(Remark.Sort.DISAGREEMENT, STANDARDS, "Heated calcium sulfate screed may have 0.5 CM-% in DIN 18560-1:2015, table 8, and 0.3 in TKB data "
            + "sheet 16 and German trade practice, which rejects the other figure: two sets, never mixed."),
        new Remark(Remark.Sort.DISAGREEMENT, STANDARDS, "A hygrometer on a screed may show 75 % in BS 8201:1987 and 65 % in the edition of 2011, by one "
            + "text alone; a project specification still cites 75 %."),
        new Remark(Remark.Sort.DISAGREEMENT, STANDARDS, "Multilayer parquet is delivered at 5 to 9 % in EN 13489:2002 and at 6 to 10 % by the German parquet "
            + "industry."),
        new Remark(Remark.Sort.DISAGREEMENT, CLIMATE, "The air that floors of wood want: 40 to 60 % in NF DTU 51.2, 30 to 50 % in NWFA guidelines, 50 to 60 % "
            + "as a yearly mean by the German parquet industry, 45 to 60 % in common practice."),
        new Remark(Remark.Sort.NO_SOURCE, SUBFLOORS, "That concrete or screed be not above 4 % by meter: common practice. A meter's scale is its maker's, and "
            + "no standard gives a figure for it."));
  }
}
