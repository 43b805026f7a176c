package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.ReferenceCase;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataFile;
import floorcalc.reference.data.DataRow;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Walks round a plot or a room that must close: the compass rule, balanced angles. */
public final class TraverseCases implements Topic {
  private static final String COURSES = "survey_traverse_courses.csv";
  private static final String SUMMARY = "survey_traverse_summary.csv";
  private static final String ANGLES = "survey_angle_balance.csv";
  /** The figures of a course and the beginning of their columns. */
  private static final String[][] FIGURES = {{"latitude", "lat"}, {"departure", "dep"}, {"adjustedLatitude", "adj_lat"},
      {"adjustedDeparture", "adj_dep"}, {"adjustedLength", "adj_len"}};
  private static final String AZIMUTH = "azimuth";

  /** Makes the topic. */
  public TraverseCases() {}

  @Override
  public String name() {
    return "Walks that must close";
  }

  @Override
  public List<String> files() {
    return List.of(COURSES, SUMMARY, ANGLES);
  }

  @Override
  public List<ReferenceCase> cases() {
    List<ReferenceCase> cases = new ArrayList<>();
    for (DataRow row : DataFile.read(SUMMARY).rows()) {
      addCourses(row.text("id"), cases);
      addSummary(row, cases);
    }
    addAngles(cases);
    return cases;
  }

  private static List<DataRow> rows(String file, String id) {
    return DataFile.read(file).rows().stream().filter(row -> row.text("id").equals(id)).toList();
  }

  private static Question question(String id) {
    List<DataRow> rows = rows(COURSES, id);
    return Question.of("traverse-by-compass-rule").withTable("courses", rows.stream().map(row -> List.of(row.text("azimuth_deg"), row.text("length")))
        .toList()).with("north", rows.get(0).text("N_from")).with("east", rows.get(0).text("E_from"));
  }

  private static void addCourses(String id, List<ReferenceCase> cases) {
    List<DataRow> rows = rows(COURSES, id);
    List<Expected> published = new ArrayList<>();
    List<Expected> again = new ArrayList<>();
    for (DataRow row : rows) {
      String course = row.text("course");
      for (String[] figure : FIGURES) {
        again.add(Expected.printed(figure[0] + course, row.text(figure[1] + "_recomputed")));
        String column = figure[1] + "_published";
        if (!row.isEmpty(column) && !isMisprint(id, course, figure[0])) {
          published.add(published(id, figure[0] + course, padded(row.text(column), rows, column)));
        }
      }
      again.add(Expected.printed("north" + course, row.text("N_from")));
      again.add(Expected.printed("east" + course, row.text("E_from")));
    }
    cases.add(new ReferenceCase(id, COURSES, Kind.READ, question(id), published));
    cases.add(new ReferenceCase(id + ", worked again", COURSES, Kind.WORKED_APART, question(id), again));
  }

  /** The adjusted length of course 3 of T1 is printed 276.479 for 276.497. */
  private static boolean isMisprint(String id, String course, String figure) {
    return id.equals("T1") && course.equals("3") && figure.equals("adjustedLength");
  }

  /** A number with as many decimals as its column has anywhere: the table drops noughts at the end. */
  private static String padded(String printed, List<DataRow> rows, String column) {
    int decimals = rows.stream().filter(row -> !row.isEmpty(column)).mapToInt(row -> row.number(column).scale()).max().orElseThrow();
    return new BigDecimal(printed).setScale(decimals).toPlainString();
  }

  private static Expected published(String id, String figure, String printed) {
    if (id.equals("T1")) {
      return figure.startsWith("adjustedLength") ? Expected.within(figure, printed, "0.0012", "taken from latitudes and departures that are rounded")
          : Expected.within(figure, printed, "0.00065", "the source is off by up to 0.0006");
    }
    if (id.equals("T3")) {
      return Expected.within(figure, printed, "0.01", "the source works with hundredths of a foot and is off by up to 0.0096");
    }
    return id.equals("T5") && figure.startsWith("adjusted") ? Expected.within(figure, printed, "0.0006", "taken from latitudes and departures that are rounded")
        : Expected.printed(figure, printed);
  }

  private static void addSummary(DataRow row, List<ReferenceCase> cases) {
    String id = row.text("id");
    List<Expected> published = new ArrayList<>();
    for (String[] figure : new String[][] {{"latitudeError", "misclosure_lat_published"}, {"departureError", "misclosure_dep_published"}}) {
      if (!row.isEmpty(figure[1])) {
        BigDecimal margin = row.number(figure[1]).ulp().divide(BigDecimal.valueOf(2)).multiply(row.number("courses"));
        published.add(Expected.within(figure[0], row.text(figure[1]), margin.toPlainString(), "a sum of rounded figures, half a unit for each course"));
      }
    }
    if (!row.isEmpty("precision_published")) {
      published.add(ratio(row.text("precision_published").substring(2)));
    }
    if (id.equals("T6")) {
      published.add(Expected.printed("closingError", "0.045"));
    }
    // T3 has its area from memory.
    if (id.equals("T1")) {
      published.add(Expected.within("area", row.text("area_published"), "0.05", "printed as half of a double area with one decimal"));
    } else if (id.equals("T4")) {
      published.add(Expected.printed("area", row.text("area_published")));
    }
    cases.add(new ReferenceCase(id, SUMMARY, Kind.READ, question(id), published));
    int ratio = row.count("relative_precision_N");
    cases.add(new ReferenceCase(id + ", worked again", SUMMARY, Kind.WORKED_APART, question(id), List.of(
        Expected.exactly("perimeter", row.text("perimeter")), Expected.printed("latitudeError", row.text("misclosure_lat")),
        Expected.printed("departureError", row.text("misclosure_dep")), Expected.printed("closingError", row.text("linear_misclosure")),
        Expected.between("ratio", Integer.toString(ratio - 1), Integer.toString(ratio), "cut off or rounded to a whole number"),
        Expected.printed("area", row.text("area_recomputed")), Expected.text("closesToOneIn2000", ratio < 2000 ? "no" : "yes"))));
  }

  /** Sources print 15200 or 1/2771 as they like, from figures rounded before. */
  private static Expected ratio(String printed) {
    BigDecimal number = new BigDecimal(printed);
    BigDecimal margin = number.stripTrailingZeros().ulp().max(new BigDecimal(25));
    return Expected.within("ratio", printed, margin.toPlainString(), "rounded freely, from a closing error that is rounded");
  }

  /** Six angles of a hexagon with a reflex corner, 18 seconds too much: 3 off each, and the azimuths that follow. */
  private static void addAngles(List<ReferenceCase> cases) {
    List<DataRow> rows = rows(ANGLES, "B1");
    Question balance = Question.of("balanced-angles").withList("angles", column(rows, "observed_dms"));
    List<Expected> published = new ArrayList<>();
    List<Expected> again = new ArrayList<>();
    List<Expected> azimuths = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      published.add(Expected.text("angle" + (i + 1), rows.get(i).text("adjusted_published_dms")));
      again.add(Expected.text("angle" + (i + 1), rows.get(i).text("adjusted_recomputed_dms")));
      azimuths.add(Expected.text(AZIMUTH + (i + 1), rows.get(i).text("azimuth_from_station_dms")));
    }
    published.add(Expected.text("misclosure", "0-00-18"));
    cases.add(new ReferenceCase("B1", ANGLES, Kind.READ, balance, published));
    cases.add(new ReferenceCase("B1, worked again", ANGLES, Kind.WORKED_APART, balance, again));
    Question walk = Question.of("traverse-by-angles").with("firstAzimuth", rows.get(0).text("azimuth_from_station_dms"))
        .withList("angles", column(rows, "adjusted_published_dms")).withList("lengths", column(rows(COURSES, "T7"), "length"));
    cases.add(new ReferenceCase("B1, its azimuths", ANGLES, Kind.READ, walk, azimuths));
    // T7 goes by the same azimuths, given to eight decimals of a degree.
    cases.add(new ReferenceCase("B1, its closing error", ANGLES, Kind.WORKED_APART, walk,
        List.of(Expected.within("closingError", rows(SUMMARY, "T7").get(0).text("linear_misclosure"), "0.00015",
            "worked from azimuths in decimals of a degree, and rounded to the fourth decimal"))));
  }

  private static List<String> column(List<DataRow> rows, String column) {
    return rows.stream().map(row -> row.text(column)).toList();
  }

  @Override
  public List<Remark> remarks() {
    return List.of(
        new Remark(Remark.Sort.MISPRINT, COURSES, "The adjusted length of course 3 of T1 is printed 276.479; the latitude and departure beside it give 276.497: two "
            + "digits changed places."),
        new Remark(Remark.Sort.DISAGREEMENT, SUMMARY, "T1 takes adjusted lengths from rounded latitudes and departures, T3 works in hundredths of a foot, T5 sums rounded "
            + "latitudes: their margins are wider, and stand beside the figures. Closing errors and ratios of all are printed from rounded figures."),
        new Remark(Remark.Sort.LEFT_OUT, SUMMARY, "The area of T3, 272600 square feet, is from memory. Azimuths that the source of T7 prints are those "
            + "of the balanced angles."));
  }
}
