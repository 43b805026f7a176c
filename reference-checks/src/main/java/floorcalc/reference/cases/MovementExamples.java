package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.data.DataRow;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;

/** Published worked examples on moisture and movement, by their numbers: as printed, and as recomputed apart from this library. */
final class MovementExamples {
  private static final String TRADE_LIST = "Technical Publication A200";
  private static final String DIN = "DIN 68100";
  private static final Map<String, Example> EXAMPLES = new LinkedHashMap<>();

  /**
   * What is asked: of a wood of a table where there is one, else by the coefficient alone. Where a source states the change of moisture and not
   * its ends, ends in the range of its coefficient are taken.
   */
  private record Example(String width, String coefficient, String table, String wood, String from, String to) {
    Question byWood() {
      return wood.isEmpty() ? byCoefficient() : MovementCases.changeOfWood(width, table, wood, "flat-sawn", from, to);
    }

    Question byCoefficient() {
      return MovementCases.change(width, coefficient, from, to);
    }

    String direction() {
      return new BigDecimal(from).compareTo(new BigDecimal(to)) < 0 ? "swells" : "shrinks";
    }
  }

  static {
    for (String id : new String[] {"W01", "W02"}) {
      EXAMPLES.put(id, handbook("232 mm", "0.00245", "white fir", "8", "11"));
    }
    for (String id : new String[] {"W03", "W04"}) {
      EXAMPLES.put(id, handbook("9.15 in", "0.00245", "white fir", "8", "11"));
    }
    EXAMPLES.put("W06", handbook("5 in", "0.00369", "red oak", "6.2", "11"));
    EXAMPLES.put("W07", handbook("50 in", "0.00369", "red oak", "6.2", "11"));
    EXAMPLES.put("W08", handbook("120 in", "0.00369", "red oak", "6.2", "11"));
    EXAMPLES.put("W09", new Example("5 in", "0.00365", TRADE_LIST, "white oak", "6", "9"));
    EXAMPLES.put("W10", new Example("5 in", "0.00129", TRADE_LIST, "mesquite", "6", "9"));
    EXAMPLES.put("W11", new Example("5 in", "0.00369", TRADE_LIST, "red oak", "6", "9"));
    // 8.6 % in all over the 28 % from which the wood shrinks, as a share.
    EXAMPLES.put("W12", plain("2.25 in", new BigDecimal("0.086").divide(BigDecimal.valueOf(28), 22, RoundingMode.HALF_EVEN).toPlainString(),
        "8", "5"));
    EXAMPLES.put("W13", plain("13.25 in", "0.002", "19", "10"));
    EXAMPLES.put("W14", plain("13.25 in", "0.002", "19", "10"));
    EXAMPLES.put("W16", plain("100 cm", "0.0025", "10", "6"));
    EXAMPLES.put("W18", european("0.0041", "Buche"));
    EXAMPLES.put("W19", european("0.0041", "Birke"));
    EXAMPLES.put("W20", european("0.0039", "Fichte"));
    EXAMPLES.put("W21", european("0.0038", "Esche"));
    EXAMPLES.put("W22", european("0.0036", "Eiche"));
    EXAMPLES.put("W23", european("0.0036", "Kiefer"));
    EXAMPLES.put("W24", european("0.0031", "Pappel"));
    EXAMPLES.put("W25", european("0.0029", "Nussbaum"));
    EXAMPLES.put("W26", handbook("600 mm", "0.00431", "American beech", "7", "12"));
    EXAMPLES.put("W27", plain("8 in", "0.0026", "6", "12"));
    EXAMPLES.put("W28", handbook("2.25 in", "0.00365", "white oak", "8", "9"));
    EXAMPLES.put("W29", handbook("2.25 in", "0.00365", "white oak", "8", "12"));
    EXAMPLES.put("W30", handbook("2.25 in", "0.00365", "white oak", "6", "14"));
  }

  private MovementExamples() {}

  private static Example handbook(String width, String coefficient, String wood, String from, String to) {
    return new Example(width, coefficient, MovementCases.HANDBOOK, wood, from, to);
  }

  private static Example european(String coefficient, String wood) {
    return new Example("600 mm", coefficient, DIN, wood, "7", "12");
  }

  private static Example plain(String width, String coefficient, String from, String to) {
    return new Example(width, coefficient, "", "", from, to);
  }

  static FileCases of(String name) {
    FileCases file = new FileCases(name);
    for (DataRow row : file.rows()) {
      String id = row.text("id");
      if (EXAMPLES.containsKey(id)) {
        addChange(file, row, EXAMPLES.get(id));
        continue;
      }
      switch (id) {
        case "W05" -> {
          addMoisture(file, row, id + ", 30 %", "70 °F", "30", "6.2");
          addMoisture(file, row, id + ", 60 %", "70 °F", "60", "11.0");
        }
        case "W17" -> {
          Question joint = Question.of("joint-opening").with("width", "100 cm").with("joints", 4).with("coefficient", "0.0025")
              .with("moistureBefore", "10").with("moistureAfter", "6");
          file.add(row, id, Kind.QUOTED, joint, Expected.printed("millimetres", row.text("published_result")));
        }
        case "W33" -> addMoisture(file, row, id, "140 °F", "55", row.text("published_result"));
        case "W34" -> addMoisture(file, row, id, "70 °F", "40", row.text("published_result"));
        case "W36" -> addCoefficient(file, row, "10.3", "30");
        case "W37" -> addCoefficient(file, row, "4.0", "22");
        case "W15" -> file.leaveOut(row, "W15", "its printed result contradicts its printed formula, which the library does not have");
        case "W31", "W32" -> file.leaveOut(row, id, "measured widths without a formula; they are checked with timber_queensland_cover_width.csv");
        case "W35" -> file.leaveOut(row, id, "the humidity over a salt by its formula: the library has no salts");
        default -> throw new IllegalStateException(row + " is no example that is known");
      }
    }
    return file;
  }

  private static void addChange(FileCases file, DataRow row, Example example) {
    String id = row.text("id");
    String printed = row.text("published_result");
    String recomputed = row.text("recomputed");
    boolean newSize = row.text("topic").startsWith("new ");
    String figure = (newSize ? "new" : "change") + switch (row.text("unit")) {
      case "mm" -> "Millimetres";
      case "cm" -> "Centimetres";
      default -> "Inches";
    };
    Expected published = switch (id) {
      case "W07" -> Expected.between(figure, printed, "0.89", "cut off in print, not rounded");
      case "W08" -> Expected.between(figure, "2", "3", "published as more than 2 in");
      default -> Expected.printed(figure, printed);
    };
    file.add(row, id, Kind.QUOTED, example.byWood(), published, Expected.text("direction", example.direction()));
    BigDecimal margin = new BigDecimal(recomputed).ulp().multiply(new BigDecimal("0.6"));
    file.add(row, id + ", recomputed", Kind.WORKED_APART, example.byCoefficient(), Expected.within(figure, recomputed, margin.toPlainString(),
        "a half in the next digit may be rounded either way, and a change of width is a whole number of nanometres"));
  }

  private static void addMoisture(FileCases file, DataRow row, String id, String temperature, String humidity, String percent) {
    file.add(row, id, Kind.QUOTED, Question.of("equilibrium-moisture-content").with("temperature", temperature).with("relativeHumidity", humidity),
        Expected.printed("percent", percent));
    if (row.text("id").startsWith("W3")) {
      file.add(row, id + ", recomputed", Kind.WORKED_APART, Question.of("equilibrium-moisture-content").with("temperature", temperature)
          .with("relativeHumidity", humidity), Expected.printed("percent", row.text("recomputed")));
    }
  }

  private static void addCoefficient(FileCases file, DataRow row, String shrinkage, String start) {
    Question question = Question.of("coefficient-from-shrinkage").with("shrinkage", shrinkage).with("shrinkageStart", start);
    file.add(row, row.text("id"), Kind.QUOTED, question, Expected.printed("share", row.text("published_result")));
    file.add(row, row.text("id") + ", recomputed", Kind.WORKED_APART, question, Expected.within("share", row.text("recomputed"), "0.000005",
        "the table rounds to five decimals"));
  }
}
