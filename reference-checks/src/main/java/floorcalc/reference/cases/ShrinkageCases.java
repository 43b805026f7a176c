package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataFile;
import floorcalc.reference.data.DataRow;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** How much woods shrink from green to oven-dry, and how much their width changes for each per cent of moisture. */
public final class ShrinkageCases extends GatheredTopic {
  private static final String COEFFICIENTS = "dimensional_change_table_13_5.csv";
  private static final String DOMESTIC = "shrinkage_table_4_3_domestic.csv";
  private static final String IMPORTED = "shrinkage_table_4_4_imported.csv";
  private static final String TRADE_LIST = "dimensional_change_trade_list_a200.csv";
  private static final String EUROPEAN = "differential_shrinkage_european.csv";
  private static final String PARTIAL = "partial_shrinkage_computed.csv";

  private static final String TABLE_13_5 = MovementCases.HANDBOOK;
  private static final String A200 = "Technical Publication A200";
  private static final String DIN = "DIN 68100";
  private static final String COEFFICIENT = "coefficient-of-wood";
  private static final String SYCAMORE = "Sycamore, American";
  /** The woods whose coefficients the trade list warns of. */
  private static final List<String> MOVE_MORE = List.of("Australian cypress", "Brazilian cherry (jatoba)", "Merbau", "Wenge");

  /** Makes the topic. */
  public ShrinkageCases() {}

  @Override
  public String name() {
    return "Shrinkage of woods and coefficients of movement";
  }

  @Override
  public List<String> files() {
    return List.of(COEFFICIENTS, DOMESTIC, IMPORTED, TRADE_LIST, EUROPEAN, PARTIAL);
  }

  @Override
  List<FileCases> gather() {
    return List.of(coefficients(), domestic(), imported(), tradeList(), european(), partial());
  }

  private static Question coefficient(String table, String wood) {
    return Question.of(COEFFICIENT).with("table", table).with("wood", wood);
  }

  private static void countWoods(FileCases file, String table) {
    file.addForAll("all rows", Kind.QUOTED, Question.of("number-of-woods").with("table", table),
        Expected.exactly("woods", Integer.toString(file.rows().size())));
  }

  private static FileCases coefficients() {
    FileCases file = new FileCases(COEFFICIENTS);
    for (DataRow row : file.rows()) {
      String wood = row.text("species");
      file.add(row, wood, Kind.QUOTED, coefficient(TABLE_13_5, wood), Expected.exactly("radialShare", row.text("c_radial_per_pct")),
          Expected.exactly("tangentialShare", row.text("c_tangential_per_pct")),
          Expected.text("warning", row.text("status").contains("doubtful") ? "doubtful" : "none"), FileCases.standing(Kind.QUOTED));
      fromShrinkage(file, row, wood + ", radial, by formula", "implied_S_radial_pct", row.text("c_radial_per_pct"));
      // 8.4 / (100 * 30 - 8.4 * 20) = 8.4 / 2832 = 0.0029661, printed as 0.00296.
      fromShrinkage(file, row, wood + ", tangential, by formula", "implied_S_tangential_pct",
          wood.equals(SYCAMORE) ? "0.00297" : row.text("c_tangential_per_pct"));
    }
    countWoods(file, TABLE_13_5);
    return file;
  }

  private static void fromShrinkage(FileCases file, DataRow row, String id, String column, String share) {
    file.add(row, id, Kind.WORKED_APART, Question.of("coefficient-from-shrinkage").with("shrinkage", row.text(column))
        .with("shrinkageStart", row.text("shrinkage_start_mc_pct")), Expected.printed("share", share));
  }

  private static FileCases domestic() {
    FileCases file = new FileCases(DOMESTIC);
    Map<String, DataRow> printed = DataFile.read(COEFFICIENTS).rows().stream()
        .collect(Collectors.toMap(row -> row.text("species"), row -> row));
    for (DataRow row : file.rows()) {
      String wood = row.text("species");
      Kind kind = row.text("status").equals("memory") ? Kind.FROM_MEMORY : Kind.QUOTED;
      shrinkage(file, row, wood, kind, "Wood Handbook, table 4-3", wood);
      if (row.text("check_table_13_5").equals("agrees")) {
        DataRow there = printed.get(nameInTable13(wood));
        file.add(row, wood + ", as in table 13-5", kind,
            Question.of("coefficient-from-shrinkage-of-wood").with("table", "Wood Handbook, table 4-3").with("wood", wood),
            Expected.printed("radialShare", there.text("c_radial_per_pct")),
            Expected.printed("tangentialShare", there.text("c_tangential_per_pct")));
      }
    }
    return file;
  }

  /** The same wood under the name that it has in table 13-5. */
  private static String nameInTable13(String wood) {
    return wood.replace("eastern redcedar", "eastern red").replace("western redcedar", "western red")
        .replace("young growth", "second growth").replace("Oak, white, live", "White oak, live")
        .replace("Oak, white, overcup", "White oak, overcup");
  }

  private static FileCases imported() {
    FileCases file = new FileCases(IMPORTED);
    for (DataRow row : file.rows()) {
      String wood = row.text("species");
      shrinkage(file, row, wood, Kind.QUOTED, "Wood Handbook, table 4-4", wood);
      String botanical = row.text("botanical_name");
      if (!botanical.endsWith("spp.")) {
        shrinkage(file, row, wood + ", by its botanical name", Kind.QUOTED, "Wood Handbook, table 4-4", botanical);
      }
    }
    int woods = file.rows().size() + DataFile.read(DOMESTIC).rows().size();
    file.addForAll("all rows of tables 4-3 and 4-4", Kind.QUOTED,
        Question.of("number-of-woods").with("table", "Wood Handbook, tables 4-3 and 4-4"), Expected.exactly("woods", Integer.toString(woods)));
    return file;
  }

  private static void shrinkage(FileCases file, DataRow row, String id, Kind kind, String table, String wood) {
    file.add(row, id, kind, Question.of("shrinkage-of-wood").with("table", table).with("wood", wood),
        Expected.exactly("radialPercent", row.text("radial_pct")),
        row.isEmpty("tangential_pct") ? Expected.text("tangentialPercent", "none")
            : Expected.exactly("tangentialPercent", row.text("tangential_pct")),
        Expected.exactly("volumetricPercent", row.text("volumetric_pct")), FileCases.standing(kind));
  }

  private static FileCases tradeList() {
    FileCases file = new FileCases(TRADE_LIST);
    for (DataRow row : file.rows()) {
      String wood = row.text("species");
      file.add(row, wood, Kind.QUOTED, coefficient(A200, wood), Expected.text("radialShare", "none"),
          Expected.exactly("tangentialShare", row.text("c_tangential_per_pct")),
          Expected.text("warning", MOVE_MORE.contains(wood) ? "moves more in practice" : "none"), FileCases.standing(Kind.QUOTED));
    }
    countWoods(file, A200);
    return file;
  }

  private static FileCases european() {
    FileCases file = new FileCases(EUROPEAN);
    for (DataRow row : file.rows()) {
      String english = row.text("species_en");
      for (String wood : List.of(row.text("species_de"), english)) {
        String id = wood.equals(english) ? english + ", by its English name" : wood;
        file.add(row, id, Kind.QUOTED, coefficient(DIN, wood), Expected.exactly("radialPercent", larger(row.text("q_radial_pct_per_pct"))),
            Expected.exactly("tangentialPercent", larger(row.text("q_tangential_pct_per_pct"))),
            Expected.text("warning", english.equals("wenge") ? "doubtful" : "none"), FileCases.standing(Kind.QUOTED));
      }
    }
    countWoods(file, DIN);
    return file;
  }

  /** The larger end of a range. */
  private static String larger(String range) {
    return range.substring(range.indexOf('-') + 1);
  }

  private static FileCases partial() {
    FileCases file = new FileCases(PARTIAL);
    for (DataRow row : file.rows()) {
      file.add(row, row.text("species") + " at " + row.text("moisture_content_pct") + " %", Kind.WORKED_APART,
          Question.of("shrinkage-down-to").with("shrinkage", row.text("shrinkage_pct"))
              .with("shrinkageStart", row.text("shrinkage_start_mc_pct")).with("moistureContent", row.text("moisture_content_pct")),
          Expected.printed("percent", row.text("shrunk_pct")));
    }
    return file;
  }

  @Override
  List<Remark> moreRemarks() {
    return List.of(
        new Remark(Remark.Sort.MISPRINT, COEFFICIENTS, "Sycamore, American, tangential is 0.00296 in print and 0.00297 by the formula from which "
            + "the other 255 coefficients follow. The library has the printed figure in its table and the other by its formula."),
        new Remark(Remark.Sort.DISAGREEMENT, COEFFICIENTS, "Grand fir has the figures of white fir in the one text that was read, and does not follow "
            + "from its shrinkage in table 4-3: the library marks it doubtful."),
        new Remark(Remark.Sort.DISAGREEMENT, COEFFICIENTS, "Oak stands as commercial groups in table 13-5 (0.00369 red, 0.00365 white); single species "
            + "in table 4-3 give other coefficients, northern red oak 8.6 % and so 0.00304."),
        new Remark(Remark.Sort.DISAGREEMENT, IMPORTED, "Coefficients of imported woods in table 13-5 rest on older shrinkage than that of table 4-4: teak "
            + "2.2 and 4.0 % there, 2.5 and 5.8 % here; iroko 3.3 and 4.4 %, 2.8 and 3.8 %. The two tables are kept apart."),
        new Remark(Remark.Sort.MISPRINT, IMPORTED, "The copy that was read gives azobe, an African wood, as American. The figures are as printed."),
        new Remark(Remark.Sort.DISAGREEMENT, TRADE_LIST, "Two reprints differ in three rows: merbau 0.00158 and 0.00153, teak 0.00186 and 0.00185, red "
            + "oak 0.00369 and 0.00365. The first reprint is used."),
        new Remark(Remark.Sort.DISAGREEMENT, TRADE_LIST, "The list itself says that Australian cypress, Brazilian cherry, merbau and wenge move more in "
            + "practice than its figures: the library says so beside them."),
        new Remark(Remark.Sort.MISPRINT, EUROPEAN, "Wenge, tangential, is 0.34 % for each per cent in print, but the two shrinkages printed beside it give "
            + "0.40: one of the three is wrong, and the library marks the wood doubtful."),
        new Remark(Remark.Sort.LEFT_OUT, EUROPEAN, "Shrinkage from fibre saturation to 12 and to 17 %: the library has the coefficients alone. Of the "
            + "four ranges it takes the larger end, so that no movement is understated."),
        new Remark(Remark.Sort.DISAGREEMENT, EUROPEAN, "Teak moves by 0.26 % tangentially in DIN 68100 and by 0.186 % in table 13-5, iroko by 0.28 % and "
            + "by 0.205 %: sources that disagree are kept apart."));
  }
}
