package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.data.DataRow;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sizes of boards as they are sold and what they may deviate. */
final class GoodsRows {
  private static final Pattern INCHES = Pattern.compile("(\\.\\d{3})");
  private static final Map<String, String> DEVIATIONS = Map.of("width deviation", "width", "match position deviation", "match position",
      "tongue-groove fit", "tongue fit", "lipping between elements at most", "lipping");
  private static final String NARROW = "3.25 in";
  /** Just wider: one nanometre. */
  private static final String WIDE = "82.550001 mm";

  private static final BigDecimal INCH = new BigDecimal("25.4");
  private static final BigDecimal A_LITTLE = new BigDecimal("0.000001");

  private GoodsRows() {}

  static FileCases of(String name) {
    FileCases file = new FileCases(name);
    for (DataRow row : file.rows()) {
      Optional<Kind> kind = Kind.ofStatus(row.text("status"));
      String id = row.text("standard") + ", " + row.text("product") + ", " + row.text("quantity");
      if (row.text("standard").equals("EN 13329")) {
        file.leaveOut(row, id, "laminate, no board of wood, and from memory");
      } else if (kind.isEmpty()) {
        file.leaveOut(row, id, "recalled and doubtful: in no set of the library");
      } else if (row.text("standard").startsWith("NWFA")) {
        american(file, row, id, kind.get());
      } else if (row.text("quantity").startsWith("lipping")) {
        permitted(file, row, id, kind.get(), "185 mm", "lipping", Expected.exactly("millimetres", row.text("value")));
        readings(file, row, id, kind.get(), "185 mm", "lipping", row.text("value") + " mm", "0.200001 mm");
      } else {
        sizes(file, row, id, kind.get());
      }
    }
    return file;
  }

  private static void sizes(FileCases file, DataRow row, String id, Kind kind) {
    String quantity = row.text("quantity");
    String value = row.text("value");
    String size = List.of("thickness", "length", "width", "wear layer").stream().filter(quantity::contains).findFirst()
        .orElse("thickness");
    if (quantity.equals("usual thicknesses")) {
      file.add(row, id, kind, size(row, row.text("product"), "thickness"), Expected.text("usualMillimetres", value), FileCases.standing(kind));
      return;
    }
    if (value.contains("/")) {
      String[] products = row.text("product").split(" / ");
      String[] values = value.split(" / ");
      for (int i = 0; i < products.length; i++) {
        range(file, row, id + ": " + products[i], kind, products[i], size, values[i], "required");
      }
      return;
    }
    String millimetres = row.text("unit").equals("m") ? new BigDecimal(value).movePointRight(3).toPlainString() : value;
    if (value.contains(" to ")) {
      range(file, row, id, kind, row.text("product"), size, value, quantity.contains("usual") ? "usual" : "required");
      return;
    }
    boolean itself = !quantity.endsWith("more than");
    file.add(row, id, kind, size(row, row.text("product"), size), Expected.exactly("leastMillimetres", millimetres),
        Expected.text("leastItself", itself ? "allowed" : "not allowed"), Expected.text("mostMillimetres", "none"), Expected.text("force", "required"),
        FileCases.standing(kind));
    if (!size.equals("wear layer")) {
      board(file, row, id + ", just so", kind, row.text("product"), size, millimetres, itself);
      board(file, row, id + ", a little less", kind, row.text("product"), size, less(millimetres), false);
    }
  }

  private static void range(FileCases file, DataRow row, String id, Kind kind, String product, String size, String value, String force) {
    String[] ends = value.split(" to ");
    file.add(row, id, kind, size(row, product, size), Expected.exactly("leastMillimetres", ends[0]), Expected.exactly("mostMillimetres", ends[1]),
        Expected.text("leastItself", "allowed"), Expected.text("force", force), FileCases.standing(kind));
    board(file, row, id + ", the least", kind, product, size, ends[0], true);
    board(file, row, id + ", the most", kind, product, size, ends[1], true);
    board(file, row, id + ", a little less", kind, product, size, less(ends[0]), false);
    board(file, row, id + ", a little more", kind, product, size, ends[1] + ".000001", false);
  }

  private static String less(String millimetres) {
    return new BigDecimal(millimetres).subtract(new BigDecimal("0.000001")).toPlainString();
  }

  private static Question size(DataRow row, String product, String size) {
    return Question.of("size-of-boards").with("source", row.text("standard")).with("product", product).with("size", size);
  }

  private static void board(FileCases file, DataRow row, String id, Kind kind, String product, String size, String millimetres, boolean met) {
    file.add(row, id, kind, Question.of("board-of-a-size").with("source", row.text("standard")).with("product", product).with("size", size)
        .with("value", millimetres + " mm"), Expected.text("verdict", met ? "met" : "not met"), Expected.exactly("findings", met ? "0" : "1"));
  }

  private static void american(FileCases file, DataRow row, String id, Kind kind) {
    String quantity = row.text("quantity");
    String product = row.text("product");
    String width = product.startsWith("over") ? WIDE : product.startsWith("under 3 in") ? "76.199999 mm" : product.startsWith("up to") ? NARROW : "2.25 in";
    List<String> inches = INCHES.matcher(row.text("unit") + quantity).results().map(found -> "0" + found.group(1)).toList();
    if (quantity.startsWith("moisture content")) {
      String[] ends = row.text("value").split(" to ");
      file.add(row, id, kind, Question.of("moisture-when-sizes-are-measured").with("source", row.text("standard")).with("product", product),
          Expected.exactly("lowPercent", ends[0]), Expected.exactly("highPercent", ends[1]));
    } else if (quantity.startsWith("out of square beyond")) {
      shares(file, row, id, kind, width, row.text("value"), Expected.exactly("inches", inches.get(0)));
      pieces(file, row, id, kind, width, row.text("value"), inches.get(0));
    } else if (quantity.startsWith("out of square")) {
      outOfSquare(file, row, id, kind, width, quantity.contains("per 25.4 mm"), inches);
    } else if (quantity.equals("tongue-groove fit")) {
      String[] ends = row.text("value").split(" to ");
      permitted(file, row, id, kind, width, "tongue fit", Expected.printed("leastMillimetres", ends[0]), Expected.printed("millimetres", ends[1]),
          Expected.exactly("leastInches", inches.get(0)), Expected.exactly("inches", inches.get(1)));
    } else {
      permitted(file, row, id, kind, width, DEVIATIONS.get(quantity), Expected.printed("millimetres", row.text("value")),
          Expected.exactly("inches", inches.get(0)));
      if (quantity.equals("width deviation")) {
        widths(file, row, id, kind, width, inches.get(0));
      }
    }
  }

  /** A board as wide as is just permitted, and one a nanometre wider. */
  private static void widths(FileCases file, DataRow row, String id, Kind kind, String width, String inches) {
    BigDecimal nominal = new BigDecimal(width.split(" ")[0]).multiply(width.endsWith("in") ? INCH : BigDecimal.ONE);
    BigDecimal most = nominal.add(new BigDecimal(inches).multiply(INCH));
    readings(file, row, id, kind, width, "width", most.toPlainString() + " mm", most.add(A_LITTLE).toPlainString() + " mm");
  }

  /** Two shares of the boards with a bound each, "2 % of pieces at 0.79; or 5 % at 0.41"; for wide boards the bounds are for an inch of width. */
  private static void outOfSquare(FileCases file, DataRow row, String id, Kind kind, String width, boolean perInch, List<String> inches) {
    Matcher parts = Pattern.compile("(\\d+) %(?: of pieces)? at ([0-9.]+)").matcher(row.text("value"));
    for (int i = 0; parts.find(); i++) {
      if (perInch) {
        // For each inch of width: as many hundredths of it.
        shares(file, row, id + ", " + parts.group(1) + " %", kind, width, parts.group(1), Expected.exactly("percentOfWidth",
            new BigDecimal(inches.get(i)).movePointRight(2).toPlainString()));
        shares(file, row, id + ", " + parts.group(1) + " %, 4 in wide", kind, "4 in", parts.group(1), Expected.exactly("inches",
            new BigDecimal(inches.get(i)).multiply(BigDecimal.valueOf(4)).toPlainString()),
            Expected.within("millimetres", new BigDecimal(parts.group(2)).multiply(BigDecimal.valueOf(4)).toPlainString(), "0.02",
                "four times half a unit of the last digit printed for one inch"));
      } else {
        shares(file, row, id + ", " + parts.group(1) + " %", kind, width, parts.group(1), Expected.printed("millimetres", parts.group(2)),
            Expected.exactly("inches", inches.get(i)));
        pieces(file, row, id + ", " + parts.group(1) + " %", kind, width, parts.group(1), inches.get(i));
      }
    }
  }

  /** Of a hundred boards so many may be beyond, and no more. */
  private static void pieces(FileCases file, DataRow row, String id, Kind kind, String width, String percent, String inches) {
    String within = new BigDecimal(inches).multiply(INCH).toPlainString() + " mm";
    String beyond = new BigDecimal(inches).multiply(INCH).add(A_LITTLE).toPlainString() + " mm";
    int share = Integer.parseInt(percent);
    for (int more = 0; more <= 1; more++) {
      List<String> boards = new ArrayList<>(Collections.nCopies(100 - share - more, within));
      boards.addAll(Collections.nCopies(share + more, beyond));
      file.add(row, id + ", " + (share + more) + " of 100 beyond", kind, question(row, "readings-of-deviations", width, "out of square")
          .with("beyondPercent", percent).withList("readings", boards), Expected.text("verdict", more == 0 ? "met" : "not met"));
    }
  }

  private static void shares(FileCases file, DataRow row, String id, Kind kind, String width, String percent, Expected... figures) {
    Expected[] all = Arrays.copyOf(figures, figures.length + 2);
    all[figures.length] = Expected.exactly("withinPercent", Integer.toString(100 - Integer.parseInt(percent)));
    all[figures.length + 1] = FileCases.standing(kind);
    file.add(row, id, kind, question(row, "permitted-deviation", width, "out of square").with("beyondPercent", percent), all);
  }

  private static Question question(DataRow row, String calculation, String width, String deviation) {
    return Question.of(calculation).with("source", row.text("standard")).with("product", row.text("product")).with("deviation", deviation)
        .with("boardWidth", width);
  }

  private static void permitted(FileCases file, DataRow row, String id, Kind kind, String width, String deviation, Expected... figures) {
    Expected[] all = Arrays.copyOf(figures, figures.length + 1);
    all[figures.length] = FileCases.standing(kind);
    file.add(row, id, kind, question(row, "permitted-deviation", width, deviation), all);
  }

  private static void readings(FileCases file, DataRow row, String id, Kind kind, String width, String deviation, String within, String beyond) {
    file.add(row, id + ", just so", kind, question(row, "readings-of-deviations", width, deviation).withList("readings", List.of(within)),
        Expected.text("verdict", "met"));
    file.add(row, id + ", a little more", kind, question(row, "readings-of-deviations", width, deviation).withList("readings", List.of(within, beyond)),
        Expected.text("verdict", "not met"));
  }
}
