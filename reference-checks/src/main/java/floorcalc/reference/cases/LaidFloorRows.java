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

/** Joints, lipping, cupping and lines of a laid floor. */
final class LaidFloorRows {
  private static final BigDecimal A_LITTLE = new BigDecimal("0.000001");

  private LaidFloorRows() {}

  static FileCases of(String name) {
    FileCases file = new FileCases(name);
    for (DataRow row : file.rows()) {
      String id = row.text("source") + ", " + row.text("applies_to") + ", " + row.text("quantity");
      Kind kind = Kind.ofStatus(row.text("status")).orElseThrow();
      if (kind == Kind.FROM_MEMORY) {
        file.leaveOut(row, id, "from memory: in no set of the library");
      } else {
        add(file, row, id, kind, row.text("limit"));
      }
    }
    return file;
  }

  private static void add(FileCases file, DataRow row, String id, Kind kind, String limit) {
    String quantity = row.text("quantity");
    switch (quantity) {
      case "lipping between boards" -> length(file, row, id, kind, "lipping", "185 mm", limit);
      case "cupping", "cupping after finishing" -> share(file, row, id, kind, "cupping", limit, "0.5");
      case "offset of corners of two neighbouring panels" -> length(file, row, id, kind, "corner offset", "90 mm", limit);
      case "alignment over 2 m of joint" -> length(file, row, id, kind, "joint alignment", "90 mm", limit);
      case "end joints of every second row in line" -> length(file, row, id, kind, "end joint line", "90 mm", limit);
      case "offset from half length" -> length(file, row, id, kind, "half offset", "90 mm", limit);
      case "joint round panel" -> panel(file, row, id, kind, limit);
      case "share of measurements per room within limits, at least" -> {
        file.add(row, id, kind, question(row, "permitted-deviation", "joint", "100 mm"), Expected.exactly("withinPercent", limit),
            Expected.exactly("noneBeyondTimes", "2"), FileCases.standing(kind));
        // At 100 mm the limit is 2 mm: of 20 joints one may be beyond, and none beyond 4 mm.
        judged(file, row, id + ", 1 of 20", kind, "joint", "100 mm", "met", of(19, "2", 1, "4"));
        judged(file, row, id + ", 2 of 20", kind, "joint", "100 mm", "not met", of(18, "2", 2, "2.000001"));
        judged(file, row, id + ", 1 of 20, more than twice", kind, "joint", "100 mm", "not met", of(19, "2", 1, "4.000001"));
      }
      case "mean joint (five consecutive joints)" -> strips(file, row, id, kind, limit);
      case "joint width over the year regarded as normal" -> length(file, row, id, kind, "joint", "90 mm", limit.split(" to ")[1]);
      case "gap between boards" -> {
        length(file, row, id, kind, "joint", "90 mm", limit);
        number(file, row, id, kind);
      }
      case "joint" -> joint(file, row, id, kind, limit);
      default -> throw new IllegalStateException(row + " is neither used nor left out");
    }
  }

  private static void joint(FileCases file, DataRow row, String id, Kind kind, String limit) {
    if (row.text("unit").startsWith("%")) {
      share(file, row, id, kind, "joint", limit, "2");
      // The boards that the limit is for, from end to end.
      if (row.text("applies_to").contains("25 to 140")) {
        width(file, row, id + ", just over 25 mm", kind, "25.000001 mm", Expected.exactly("percentOfWidth", limit));
        width(file, row, id + ", 140 mm", kind, "140 mm", Expected.exactly("percentOfWidth", limit), Expected.exactly("millimetres", "2"));
      }
    } else if (row.text("applies_to").contains("wider than 140")) {
      width(file, row, id, kind, "140.000001 mm", Expected.exactly("millimetres", limit), FileCases.standing(kind));
      judged(file, row, id + ", just so", kind, "joint", "160 mm", "met", List.of(limit + " mm"));
      judged(file, row, id + ", a little more", kind, "joint", "160 mm", "not met", List.of(limit + ".000001 mm"));
    } else {
      length(file, row, id, kind, "joint", row.text("applies_to").equals("strips on edge") ? "10 mm" : "185 mm", limit);
    }
  }

  private static void width(FileCases file, DataRow row, String id, Kind kind, String width, Expected... figures) {
    file.add(row, id, kind, question(row, "permitted-deviation", "joint", width), figures);
  }

  private static Question question(DataRow row, String calculation, String deviation, String width) {
    return Question.of(calculation).with("source", row.text("source")).with("product", row.text("applies_to")).with("deviation", deviation)
        .with("boardWidth", width);
  }

  private static List<String> of(int number, String value, int others, String other) {
    List<String> all = new ArrayList<>(Collections.nCopies(number, value + " mm"));
    all.addAll(Collections.nCopies(others, other + " mm"));
    return all;
  }

  private static void judged(FileCases file, DataRow row, String id, Kind kind, String deviation, String width, String verdict, List<String> readings) {
    file.add(row, id, kind, question(row, "readings-of-deviations", deviation, width).withList("readings", readings), Expected.text("verdict", verdict));
  }

  /** A limit that is a length. */
  private static void length(FileCases file, DataRow row, String id, Kind kind, String deviation, String width, String limit) {
    file.add(row, id, kind, question(row, "permitted-deviation", deviation, width), Expected.exactly("millimetres", limit),
        Expected.text("percentOfWidth", "none"), FileCases.standing(kind));
    judged(file, row, id + ", just so", kind, deviation, width, "met", List.of(limit + " mm"));
    judged(file, row, id + ", a little more", kind, deviation, width, "not met",
        List.of(new BigDecimal(limit).add(A_LITTLE).toPlainString() + " mm"));
  }

  /** A share of the width, and at most a length: at 80 mm the share holds, at 400 mm the length. */
  private static void share(FileCases file, DataRow row, String id, Kind kind, String deviation, String percent, String most) {
    String share = new BigDecimal(percent).multiply(new BigDecimal("0.8")).toPlainString();
    file.add(row, id, kind, question(row, "permitted-deviation", deviation, "80 mm"), Expected.exactly("percentOfWidth", percent),
        Expected.exactly("atMostMillimetres", most), Expected.exactly("millimetres", share), FileCases.standing(kind));
    judged(file, row, id + ", just so", kind, deviation, "80 mm", "met", List.of(share + " mm"));
    judged(file, row, id + ", a little more", kind, deviation, "80 mm", "not met",
        List.of(new BigDecimal(share).add(A_LITTLE).toPlainString() + " mm"));
    if (!row.text("source").startsWith("NF DTU 51.2")) {
      file.add(row, id + ", wide boards", kind, question(row, "permitted-deviation", deviation, "400 mm"), Expected.exactly("millimetres", most));
    }
    if (row.text("note").contains("referred to 9 %")) {
      file.add(row, id + ", moisture", kind, Question.of("moisture-when-sizes-are-measured").with("source", row.text("source"))
          .with("product", row.text("applies_to")), Expected.exactly("lowPercent", "9"), Expected.exactly("highPercent", "9"));
    }
  }

  /** 0.5 % of a panel of 400 mm is 2 mm. */
  private static void panel(FileCases file, DataRow row, String id, Kind kind, String percent) {
    file.add(row, id, kind, question(row, "permitted-deviation", "panel joint", "90 mm").with("panel", "400 mm"),
        Expected.exactly("percentOfWidth", percent), Expected.exactly("millimetres", "2"), FileCases.standing(kind));
    file.add(row, id + ", just so", kind, question(row, "readings-of-deviations", "panel joint", "90 mm").with("panel", "400 mm")
        .withList("readings", List.of("2 mm")), Expected.text("verdict", "met"));
    file.add(row, id + ", a little more", kind, question(row, "readings-of-deviations", "panel joint", "90 mm").with("panel", "400 mm")
        .withList("readings", List.of("2.000001 mm")), Expected.text("verdict", "not met"));
  }

  /** Strips of 25 mm: the mean of five in a row at most 0.5 mm, one at most 1 mm. */
  private static void strips(FileCases file, DataRow row, String id, Kind kind, String percent) {
    file.add(row, id, kind, question(row, "permitted-deviation", "joint", "25 mm").with("meanOf", "5"), Expected.exactly("percentOfWidth", percent),
        Expected.exactly("millimetres", "0.5"), FileCases.standing(kind));
    file.add(row, id + ", one joint", kind, question(row, "permitted-deviation", "joint", "25 mm").with("meanOf", "1"),
        Expected.exactly("percentOfWidth", "4"), Expected.exactly("millimetres", "1"));
    strip(file, row, id + ", mean just so", kind, "5", "met", "0.2", "0.3", "1", "0.5", "0.5");
    strip(file, row, id + ", mean a little more", kind, "5", "not met", "0.2", "0.3", "1", "0.5", "0.5", "0.21");
    strip(file, row, id + ", one joint a little more", kind, "1", "not met", "0.2", "0.3", "1.000001", "0.4", "0.2");
  }

  private static void strip(FileCases file, DataRow row, String id, Kind kind, String meanOf, String verdict, String... millimetres) {
    file.add(row, id, kind, question(row, "readings-of-deviations", "joint", "25 mm").with("meanOf", meanOf)
        .withList("readings", Arrays.stream(millimetres).map(each -> each + " mm").toList()), Expected.text("verdict", verdict));
  }

  /** 5 for each 50 to 70 square metres: at 70 at least 5 and at most 10. */
  private static void number(FileCases file, DataRow row, String id, Kind kind) {
    for (String[] floor : new String[][] {{"50", "5", "5"}, {"70", "5", "10"}, {"140", "10", "15"}}) {
      file.add(row, id + ", readings on " + floor[0] + " m²", kind, Question.of("readings-asked-for").with("source", row.text("source"))
          .with("product", row.text("applies_to")).with("squareMetres", floor[0]),
          Expected.between("readings", floor[1], floor[2], "5 for each 70 or for each 50 m², whichever is counted"));
    }
  }
}
