package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataRow;
import java.math.BigDecimal;
import java.util.List;

/** Rules of plans by source: gaps at walls, the longest floor without a break, end joints, and rows. */
public final class RuleCases extends GatheredTopic {
  private static final String GAPS = "expansion_gaps.csv";
  private static final String RUNS = "maximum_runs.csv";
  private static final String JOINTS = "end_joint_offsets.csv";
  private static final String ROWS = "row_width_rules.csv";
  private static final String PRACTICE = "common practice";
  private static final List<String> GAP_SOURCES = List.of("NF DTU 51.11 P1-1 (Dec 2009) cl. 8.2", "NWFA guidelines ch. 7",
      "Australian practice (BCA/AS 1684)", PRACTICE);
  private static final List<String> RUN_SOURCES = List.of("NF DTU 51.11 P1-1 (Dec 2009) cl. 8.1.3", "Australian practice (BCA/AS 1684)", PRACTICE);
  /** Sources that have rules of the library's sets; none of them has a row width. */
  private static final List<String> WITHOUT_ROW_WIDTH = List.of("NF DTU 51.11 P1-1 (Dec 2009) cl. 8.2", "NWFA guidelines (2008 revision)",
      "NWFA magazine (Dec 2017)", "NWFA technical advisor", "NWFA guidelines ch. 7", "Australian practice (BCA/AS 1684)");
  private static final String FROM_MEMORY = "from memory, and no set of the library rests on it";

  /** Makes the topic. */
  public RuleCases() {}

  @Override
  public String name() {
    return "Rules of plans";
  }

  @Override
  public List<String> files() {
    return List.of(GAPS, RUNS, JOINTS, ROWS);
  }

  @Override
  List<FileCases> gather() {
    return List.of(gaps(), runs(), joints(), rowWidths());
  }

  private static String name(DataRow row) {
    return row.text("source") + ", " + row.text("applies_to");
  }

  private static boolean isRecalled(DataRow row) {
    return row.text("status").startsWith("memory");
  }

  private static FileCases gaps() {
    FileCases file = new FileCases(GAPS);
    for (DataRow row : file.rows()) {
      if (GAP_SOURCES.contains(row.text("source"))) {
        addGaps(file, row);
      } else if (isRecalled(row)) {
        file.leaveOut(row, name(row), FROM_MEMORY);
      } else if (row.text("applies_to").startsWith("particleboard")) {
        file.leaveOut(row, name(row), "sheets below a floor, of which the library lays none");
      } else {
        file.leaveOut(row, name(row), "a range by an undated page alone, of which the library makes no set");
      }
    }
    return file;
  }

  /**
   * In a small room the gap is the least one, as printed; in a larger one the rate by the largest dimension where there is a rate, else the same: at 5,
   * 7 and 12 m of NF DTU 51.11 it is 8 mm (0.0015 * 5 m = 7.5 mm), 10.5 mm and 18 mm.
   */
  private static void addGaps(FileCases file, DataRow row) {
    Kind kind = Kind.ofStatus(row.text("status")).orElseThrow();
    for (int metres : new int[] {2, 4, 5, 6, 7, 8, 10, 12, 14, 16}) {
      BigDecimal least = row.number("minimum_mm");
      BigDecimal share = row.isEmpty("rate_mm_per_m") ? BigDecimal.ZERO : row.number("rate_mm_per_m").multiply(BigDecimal.valueOf(metres));
      file.add(row, name(row) + ", " + metres + " m", metres == 2 ? kind : Kind.WORKED_APART, Question.of("expansion-gap")
          .with("source", row.text("source")).with("boardThickness", "14 mm").with("boardWidth", "185 mm").with("largestDimension", metres + " m"),
          Expected.exactly("millimetres", least.max(share).toPlainString()), FileCases.standing(kind));
    }
  }

  private static FileCases runs() {
    FileCases file = new FileCases(RUNS);
    for (DataRow row : file.rows()) {
      if (RUN_SOURCES.contains(row.text("source"))) {
        Kind kind = Kind.ofStatus(row.text("status")).orElseThrow();
        String way = row.text("dimension").contains("along") ? "along the boards" : "across the boards";
        file.add(row, name(row) + ", " + way, kind, Question.of("longest-floor-without-a-break").with("source", row.text("source")).with("way", way)
            .with("boardThickness", "14 mm").with("boardWidth", "185 mm"), Expected.exactly("metres", row.text("limit_m")),
            FileCases.standing(kind));
      } else {
        file.leaveOut(row, name(row), isRecalled(row) ? FROM_MEMORY : "says which way boards run in long rooms, and sets no limit");
      }
    }
    return file;
  }

  private static FileCases joints() {
    FileCases file = new FileCases(JOINTS);
    for (DataRow row : file.rows()) {
      String least = row.text("minimum_offset_mm").split(" to ")[0];
      switch (row.text("applies_to")) {
        case "strip flooring" -> offsets(file, row, least, "1.5", "2.99");
        case "plank 3 to 5 in wide" -> offsets(file, row, least, "3", "5");
        case "plank wider than 5 in" -> offsets(file, row, least, "5.01", "12");
        case "wide plank, preferred", "plank, preferred" -> widths(file, row);
        case "boards of 15 mm and thicker" -> offset(file, row, ", 15 mm", Kind.COMMON_PRACTICE, "7 in", "15 mm", Expected.exactly("millimetres", least));
        case "boards thinner than 15 mm" -> {
          offset(file, row, ", 10 mm", Kind.COMMON_PRACTICE, "7 in", "10 mm", Expected.exactly("millimetres", least));
          offset(file, row, ", just thinner", Kind.COMMON_PRACTICE, "7 in", "14.999999 mm", Expected.exactly("millimetres", least));
        }
        case "half-bond (coupe de pierre) pattern" -> file.add(row, name(row), Kind.READ,
            Question.of("tolerance-of-end-joints").with("source", row.text("source")), Expected.exactly("inLineMillimetres", "2"),
            Expected.exactly("halfBoardMillimetres", "3"), FileCases.standing(Kind.READ));
        default -> file.leaveOut(row, name(row), isRecalled(row) ? "recalled and doubtful" : "a pattern, which has no figure");
      }
    }
    return file;
  }

  private static void offsets(FileCases file, DataRow row, String least, String... inches) {
    for (String width : inches) {
      offset(file, row, ", " + width + " in", Kind.READ, width + " in", "14 mm", Expected.exactly("millimetres", least));
    }
  }

  /** So many widths of the board; for the widths that the source works out itself, its own figures in inches. */
  private static void widths(FileCases file, DataRow row) {
    int times = row.count("as_multiple_of_width");
    for (int inches : new int[] {4, 6, 12}) {
      boolean printed = row.text("note").contains(inches + " in plank gives") || row.text("note").contains(inches + " in gives");
      offset(file, row, ", " + inches + " in", printed ? Kind.READ : Kind.WORKED_APART, inches + " in", "14 mm",
          Expected.exactly("inches", Integer.toString(inches * times)));
    }
  }

  private static void offset(FileCases file, DataRow row, String id, Kind kind, String width, String thickness, Expected expected) {
    Kind standing = Kind.ofStatus(row.text("status")).orElseThrow();
    file.add(row, name(row) + id, kind, Question.of("joint-offset").with("source", row.text("source")).with("boardWidth", width)
        .with("boardThickness", thickness), expected, FileCases.standing(standing));
  }

  private static FileCases rowWidths() {
    FileCases file = new FileCases(ROWS);
    for (DataRow row : file.rows()) {
      String name = row.text("source") + ", " + row.text("rule");
      if (row.text("source").equals(PRACTICE)) {
        file.add(row, name, Kind.COMMON_PRACTICE, narrowest(PRACTICE), Expected.exactly("millimetres", row.text("value")),
            FileCases.standing(Kind.COMMON_PRACTICE));
        WITHOUT_ROW_WIDTH.forEach(source -> file.add(row, source + " has no figure of its own", Kind.COMMON_PRACTICE, narrowest(source),
            Expected.exactly("millimetres", row.text("value")), FileCases.standing(Kind.COMMON_PRACTICE)));
      } else {
        file.leaveOut(row, name, isRecalled(row) ? "recalled and doubtful" : "has no figure");
      }
    }
    return file;
  }

  private static Question narrowest(String source) {
    return Question.of("narrowest-row").with("source", source).with("boardThickness", "14 mm").with("boardWidth", "185 mm");
  }

  @Override
  List<Remark> moreRemarks() {
    return List.of(
        new Remark(Remark.Sort.NO_SOURCE, ROWS, "No standard and no text of an association fixes the least width of a first or last row: 70 mm is common "
            + "practice, and every set of the library says so."),
        new Remark(Remark.Sort.DISAGREEMENT, GAPS, "The gap at walls is 0.15 % of the largest dimension and at least 8 mm in NF DTU 51.11 (18 mm at 12 m), 1/2 in "
            + "for parquet in NWFA guidelines, 10 mm for strip floors in Australian practice: each for its own kind of floor."),
        new Remark(Remark.Sort.DISAGREEMENT, RUNS, "A floor may be 8 m wide across the boards without a break in NF DTU 51.11 (boards under 20 mm thick) and "
            + "6 m in Australian practice for strip floors."),
        new Remark(Remark.Sort.DISAGREEMENT, JOINTS, "End joints lie 6, 8 or 10 in apart by the width of boards in NWFA guidelines, two or three widths apart by "
            + "NWFA's magazine and technical advisor."),
        new Remark(Remark.Sort.LEFT_OUT, JOINTS, "For plank of 3 to 5 in the source gives 8 to 10 in: the library asks for the least of it."),
        new Remark(Remark.Sort.NO_SOURCE, JOINTS, "500 mm for boards of 15 mm and thicker and 300 mm for thinner ones are common practice."));
  }
}
