package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.data.DataRow;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

/** Out of square, out of level, and tapes. */
final class LevelRows {
  private static final String METRES = " m";

  private LevelRows() {}

  /** Each range at its ends and just outside, and a corner just so and a little more. */
  static FileCases angles(String name) {
    FileCases file = new FileCases(name);
    for (DataRow row : file.rows()) {
      String from = row.text("nominal_from_m_exclusive");
      String to = row.text("nominal_to_m_inclusive");
      String limit = row.text("limit_mm");
      Kind kind = Kind.ofStatus(row.text("status")).orElseThrow();
      String id = "over " + from + (to.isEmpty() ? "" : " to " + to) + METRES;
      String most = to.isEmpty() ? "100" : to;
      angle(file, row, id, kind, most, limit);
      angle(file, row, id + ", just over", kind, new BigDecimal(from).add(new BigDecimal("0.000000001")).toPlainString(), limit);
      for (boolean within : new boolean[] {true, false}) {
        file.add(row, id + (within ? ", corner just so" : ", corner a little more"), kind, Question.of("corner-out-of-square")
            .with("source", "DIN 18202").with("wall", most + METRES).with("out", limit + (within ? " mm" : ".000001 mm")),
            Expected.text("verdict", within ? "met" : "not met"));
      }
    }
    return file;
  }

  private static void angle(FileCases file, DataRow row, String id, Kind kind, String metres, String limit) {
    file.add(row, id, kind, Question.of("out-of-square-limit").with("source", "DIN 18202").with("wall", metres + METRES),
        Expected.exactly("millimetres", limit), FileCases.standing(kind));
  }

  static FileCases levels(String name) {
    FileCases file = new FileCases(name);
    for (DataRow row : file.rows()) {
      Kind kind = Kind.ofStatus(row.text("status")).orElseThrow();
      String id = row.text("source") + ", " + row.text("applies_to") + ", " + row.text("unit");
      if (row.text("applies_to").startsWith("stair")) {
        file.leaveOut(row, id, "of how much risers differ the library has sets of common practice");
      } else {
        level(file, row, id, kind, row.text("limit"));
      }
    }
    return file;
  }

  private static void level(FileCases file, DataRow row, String id, Kind kind, String limit) {
    String applies = row.text("applies_to");
    switch (row.text("source")) {
      case "BS 8204" -> datum(file, row, id, kind, "BS 8204", limit, Expected.exactly("millimetres", limit));
      case "NHBC Standards 2020 cl. 9.1.5", "LABC Warranty technical manual 1.4" -> across(file, row, id, kind, limit);
      case "NF DTU 51.1 P1-1 (Dec 2010) cl. 7.3" -> {
        add(file, row, id, kind, row.text("source"), "across the floor", "4 m", "2 m", Expected.exactly("millimetres", limit));
        judged(file, row, id + ", just so", kind, row.text("source"), "met", "1 m", "0", "2", limit);
        judged(file, row, id + ", a little more", kind, row.text("source"), "not met", "1 m", "0", "2", limit + ".000001");
      }
      case "NF DTU 51.1 P1-1 (Dec 2010) cl. 7.2" -> datum(file, row, id, kind, row.text("source"), limit, Expected.exactly("millimetres", limit));
      case "SNiP 3.04.01-87" -> {
        add(file, row, id, kind, row.text("source"), "across the floor", "10 m", "10 m", Expected.exactly("percentOfDistance", limit));
        add(file, row, id + ", of a hall", kind, row.text("source"), "across the floor", "60 m", "60 m", Expected.exactly("millimetres", "50"));
        judged(file, row, id + ", just so", kind, row.text("source"), "met", "2 m", "0", "8", "4");
        judged(file, row, id + ", a little more", kind, row.text("source"), "not met", "2 m", "0", "8.000001", "4");
      }
      case "ACI 117" -> {
        if (applies.startsWith("top surface")) {
          // 3/4 in, printed as 19 mm too.
          datum(file, row, id, kind, "ACI 117, slab on ground", "19.05", Expected.printed("millimetres", limit), Expected.exactly("inches", "0.75"));
        } else {
          add(file, row, id, kind, "ACI 117, formed surfaces", "across the floor", "10 ft", "10 ft", Expected.exactly("percentOfDistance", limit));
          judged(file, row, id + ", just so", kind, "ACI 117, formed surfaces", "met", "5 ft", "0", "0", "9.144");
          judged(file, row, id + ", a little more", kind, "ACI 117, formed surfaces", "not met", "5 ft", "0", "0", "9.144001");
        }
      }
      default -> throw new IllegalStateException(row + " is neither used nor left out");
    }
  }

  /** So much for each metre up to 6 m across, so much in all beyond. */
  private static void across(FileCases file, DataRow row, String id, Kind kind, String limit) {
    String source = row.text("source");
    if (row.text("unit").equals("mm per m")) {
      add(file, row, id, kind, source, "across the floor", "6 m", "1 m", Expected.exactly("millimetres", limit));
      String two = Integer.toString(Integer.parseInt(limit) * 2);
      String four = Integer.toString(Integer.parseInt(limit) * 4);
      judged(file, row, id + ", just so over 4 m", kind, source, "met", "2 m", "0", two, four);
      judged(file, row, id + ", a little more over 4 m", kind, source, "not met", "2 m", "0", two, four + ".000001");
      if (source.startsWith("LABC")) {
        // The source's own example.
        judged(file, row, id + ", a joist of 4 m hangs by 12 mm in its middle", kind, source, "not met", "2 m", "0", "-12", "0");
      }
    } else {
      add(file, row, id, kind, source, "across the floor", "6.000000001 m", "6.000000001 m", Expected.exactly("millimetres", limit));
      judged(file, row, id + ", just so over 8 m", kind, source, "met", "4 m", "0", "2", limit);
      judged(file, row, id + ", a little more over 8 m", kind, source, "not met", "4 m", "0", "2", limit + ".000001");
    }
  }

  private static void add(FileCases file, DataRow row, String id, Kind kind, String source, String measured, String across, String distance,
      Expected... figures) {
    Expected[] all = Arrays.copyOf(figures, figures.length + 1);
    all[figures.length] = FileCases.standing(kind);
    file.add(row, id, kind, Question.of("out-of-level-limit").with("source", source).with("measured", measured).with("across", across)
        .with("distance", distance), all);
  }

  private static void datum(FileCases file, DataRow row, String id, Kind kind, String source, String millimetres, Expected... figures) {
    add(file, row, id, kind, source, "from the level line", "10 m", "10 m", figures);
    for (String sign : new String[] {"", "-"}) {
      for (boolean within : new boolean[] {true, false}) {
        String height = sign + (within ? millimetres : new BigDecimal(millimetres).add(new BigDecimal("0.000001")).toPlainString());
        file.add(row, id + ", " + height + " mm", kind, question(source, "1 m", "0", height, "0").with("levelLine", "0 mm"),
            Expected.text("verdict", within ? "met" : "not met"));
      }
    }
  }

  private static void judged(FileCases file, DataRow row, String id, Kind kind, String source, String verdict, String spacing, String... heights) {
    file.add(row, id, kind, question(source, spacing, heights), Expected.text("verdict", verdict));
  }

  private static Question question(String source, String spacing, String... heights) {
    return Question.of("levels-of-a-floor").with("source", source).with("spacing", spacing)
        .withList("heights", Arrays.stream(heights).map(height -> height + " mm").toList());
  }

  static FileCases tapes(String name) {
    FileCases file = new FileCases(name);
    for (DataRow row : file.rows()) {
      Kind kind = Kind.ofStatus(row.text("status")).orElseThrow();
      String id = row.text("source") + ", " + row.text("item");
      if (kind == Kind.FROM_MEMORY) {
        file.leaveOut(row, id, "from memory");
      } else if (row.text("item").startsWith("metal tape")) {
        String inches = row.text("unit").replaceAll(".*\\((.*) in\\)", "$1");
        for (String feet : List.of(row.text("from_ft").equals("0") ? "1" : row.text("from_ft"), row.text("to_ft"))) {
          file.add(row, id + ", " + feet + " ft", kind, Question.of("tape-tolerance").with("length", feet + " ft"),
              Expected.exactly("millimetres", row.text("value")), Expected.exactly("inches", new BigDecimal(inches.split("/")[0])
                  .divide(new BigDecimal(inches.split("/")[1])).toPlainString()), FileCases.standing(kind));
        }
      } else if (row.text("item").startsWith("reading midway")) {
        for (int number : new int[] {2, 3, 4, 5}) {
          int even = number % 2 == 0 ? number : number + 1;
          file.add(row, id + ", after " + number, kind, Question.of("reading-between-graduations").with("reading", number + ".5 mm")
              .with("graduation", "1 mm"), Expected.exactly("number", Integer.toString(even)));
        }
      } else {
        file.add(row, id, kind, Question.of("precision-of-measuring").with("limit", "3 mm"), Expected.exactly("millimetres", "1"));
      }
    }
    return file;
  }
}
