package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataRow;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** By how much boards, panels and floors swell and shrink: rules, and a trade table that disagrees with the handbook. */
public final class MovementCases extends GatheredTopic {
  private static final String RULES = "wood_movement_rules.csv";
  private static final String PANELS = "panel_movement.csv";
  private static final String EXAMPLES = "wood_worked_examples.csv";
  private static final String COVER_WIDTH = "timber_queensland_cover_width.csv";
  private static final String TRADE_TABLE = "movement_12in_10_to_5_pct.csv";
  private static final String COMPUTED = "width_change_computed.csv";
  static final String HANDBOOK = "Wood Handbook, table 13-5";
  private static final String CHANGE = "change-of-width";
  private static final BigDecimal ONE_64TH = new BigDecimal("0.015625");
  /** The trade table's woods as the handbook has them. */
  private static final Map<String, String> WOODS = Map.ofEntries(Map.entry("Ash", "Ash, white"), Map.entry("Basswood", "Basswood, American"),
      Map.entry("Beech", "Beech, American"), Map.entry("Butternut", "Butternut"), Map.entry("Cherry", "Cherry, black"),
      Map.entry("Hard maple", "Maple, sugar"), Map.entry("Hickory", "Hickory, true"), Map.entry("Pecan", "Hickory, pecan"),
      Map.entry("Oak, red and white, plain-sawn", "Red oak, commercial"), Map.entry("Oak, red and white, quarter-sawn", "Red oak, commercial"),
      Map.entry("Soft maple", "Maple, red"), Map.entry("Walnut", "Walnut, black"), Map.entry("Yellow birch", "Birch, yellow"),
      Map.entry("Yellow-poplar", "Yellow-poplar"));

  /** Makes the topic. */
  public MovementCases() {}

  @Override
  public String name() {
    return "Movement across the grain";
  }

  @Override
  public List<String> files() {
    return List.of(RULES, PANELS, EXAMPLES, COVER_WIDTH, TRADE_TABLE, COMPUTED);
  }

  @Override
  List<FileCases> gather() {
    return List.of(rules(), panels(), MovementExamples.of(EXAMPLES), coverWidths(), tradeTable(), computed());
  }

  /** The change of a width by a coefficient, a share of the width for each per cent. */
  static Question change(String width, String coefficient, String from, String to) {
    return Question.of(CHANGE).with("width", width).with("coefficient", coefficient).with("moistureBefore", from).with("moistureAfter", to);
  }

  /** The change of a width of flat-sawn or quarter-sawn wood. */
  static Question changeOfWood(String width, String table, String wood, String grain, String from, String to) {
    return Question.of(CHANGE).with("width", width).with("table", table).with("wood", wood).with("grain", grain).with("moistureBefore", from)
        .with("moistureAfter", to);
  }

  private static FileCases rules() {
    FileCases file = new FileCases(RULES);
    for (DataRow row : file.rows()) {
      Kind kind = Kind.ofStatus(row.text("status")).orElseThrow();
      file.add(row, row.text("source") + ", " + row.text("applies_to"), kind, Question.of("coefficient-by-rule")
          .with("source", row.text("source")).with("appliesTo", row.text("applies_to")),
          Expected.exactly("percent", row.text("percent_per_1pct_mc")), FileCases.standing(kind));
    }
    return file;
  }

  private static FileCases panels() {
    FileCases file = new FileCases(PANELS);
    for (DataRow row : file.rows()) {
      String product = row.text("product");
      if (product.startsWith("plywood")) {
        file.add(row, product, Kind.QUOTED, Question.of("coefficient-by-rule").with("source", row.text("primary_source_quoted"))
            .with("appliesTo", product), Expected.exactly("share", row.text("value")), FileCases.standing(Kind.QUOTED));
      } else {
        file.leaveOut(row, product + ", " + row.text("quantity"), "the library has no coefficient of MDF");
      }
    }
    return file;
  }

  /** Measured widths: no formula is given. The rates are worked out from them, the air gives the moisture to a whole per cent. */
  private static FileCases coverWidths() {
    FileCases file = new FileCases(COVER_WIDTH);
    for (DataRow row : file.rows()) {
      String moisture = row.text("moisture_content_pct");
      if (!row.isEmpty("change_pct_per_1pct_mc")) {
        String share = row.number("change_pct_per_1pct_mc").movePointLeft(2).toPlainString();
        file.add(row, "board of 80 mm at " + moisture + " %", Kind.WORKED_APART, change("80 mm", share, "11", moisture),
            Expected.printed("newMillimetres", row.text("cover_width_mm")));
      }
      file.add(row, "air of " + row.text("relative_humidity_pct") + " %", Kind.READ, Question.of("equilibrium-moisture-content")
          .with("temperature", "22 °C").with("relativeHumidity", row.text("relative_humidity_pct")),
          Expected.within("percent", moisture, "0.5", "printed to a whole per cent; the sheet states no temperature, 22 °C are taken"));
    }
    return file;
  }

  private static FileCases tradeTable() {
    FileCases file = new FileCases(TRADE_TABLE);
    for (DataRow row : file.rows()) {
      String wood = row.text("species");
      if (!WOODS.containsKey(wood)) {
        file.leaveOut(row, wood + ", 7/64 in", "rift-sawn wood lies between the two figures of the handbook, which has none for it");
        continue;
      }
      String grain = row.text("direction").equals("radial") ? "quarter-sawn" : "flat-sawn";
      Question question = changeOfWood("12 in", HANDBOOK, WOODS.get(wood), grain, "10", "5");
      file.add(row, wood + ", by the handbook", Kind.WORKED_APART, question, Expected.printed("changeInches", row.text("wood_handbook_in")),
          Expected.text("direction", "shrinks"));
      BigDecimal apart = row.number("wood_handbook_in").subtract(row.number("change_in")).abs();
      if (apart.compareTo(ONE_64TH) <= 0) {
        file.add(row, wood, Kind.READ, question, Expected.within("changeInches", row.text("change_in"), ONE_64TH.toPlainString(),
            "printed in whole 64ths of an inch, and from other figures of shrinkage: one 64th"));
      }
    }
    return file;
  }

  private static FileCases computed() {
    FileCases file = new FileCases(COMPUTED);
    for (DataRow row : file.rows()) {
      String from = row.text("moisture_before_pct");
      String to = row.text("moisture_after_pct");
      String width = row.text("width_mm") + " mm";
      Question question = row.text("equation").equals("13-3") ? Question.of("change-of-width-by-shrinkage").with("width", width)
          .with("shrinkage", row.text("shrinkage_pct")).with("shrinkageStart", row.text("shrinkage_start_mc_pct"))
          .with("moistureBefore", from).with("moistureAfter", to) : change(width, row.text("coefficient"), from, to);
      String change = row.text("change_mm");
      String size = change.replace("-", "");
      file.add(row, row.text("equation") + ", " + row.text("about") + ", " + from + " to " + to + " %", Kind.WORKED_APART, question,
          row.text("equation").startsWith("NF") ? Expected.exactly("changeMillimetres", size) : Expected.printed("changeMillimetres", size),
          Expected.text("direction", change.startsWith("-") ? "shrinks" : "swells"));
    }
    return file;
  }

  @Override
  List<Remark> moreRemarks() {
    return List.of(
        new Remark(Remark.Sort.MISPRINT, EXAMPLES, "W15: the new depth is printed as 13.02 in, but the formula printed beside it gives 12.99."),
        new Remark(Remark.Sort.MISPRINT, EXAMPLES, "W07: the movement of ten planks, 0.8856 in, is cut off and not rounded: 0.88."),
        new Remark(Remark.Sort.DISAGREEMENT, EXAMPLES, "W33: the article compares its 8.4 % at 140 °F and 55 % with a tabulated 8.0; table 4-2 has 8.4 "
            + "as recalled, and the equation gives 8.38."),
        new Remark(Remark.Sort.DISAGREEMENT, EXAMPLES, "W27: 0.1248 in follows from the coefficient rounded to 0.0026; with 0.00256 of table 13-5 it is "
            + "0.1229."),
        new Remark(Remark.Sort.DISAGREEMENT, RULES, "Rates of change differ by source: solid wood 0.25 % for each per cent in NF DTU 51.1, hardwood 0.33 "
            + "in NF DTU 51.2, mixed grain 0.22 in a Danish reference, flat-sawn red oak 0.369 in table 13-5. None are averaged."),
        new Remark(Remark.Sort.DISAGREEMENT, COMPUTED, "Equations 13-2 and 13-3 of the handbook are not the same: 1.059 and 1.0675 mm for 100 mm of sugar "
            + "maple from 8 to 11 %. They meet at 10 %."),
        new Remark(Remark.Sort.DISAGREEMENT, TRADE_TABLE, "The trade's changes of 12 in from 10 to 5 % are smaller than the handbook's coefficients give, "
            + "by up to 30 % (hickory 11/64 in for 0.2466 in, oak 11/64 for 0.2214, basswood 10/64 for 0.1980, beech 14/64 for 0.2586), but for "
            + "quarter-sawn oak, where they are larger (7/64 for 0.0948). They seem to rest on shrinkage divided by 30. Only where the two lie "
            + "within one 64th are the trade's figures checked."));
  }
}
