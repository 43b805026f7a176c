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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Areas, gaps, rectangles, widest circles and least widths of rooms. */
public final class RoomCases implements Topic {
  private static final String OFFSETS = "offset_area_formulas.csv";
  private static final String RECTANGLES = "rectilinear_partition.csv";
  private static final String ROOMS = "rooms_cc_by.csv";
  private static final String ROOM_FIGURES = "rooms_expected.csv";
  private static final String CIRCLES = "inscribed_circle.csv";
  private static final String LAKES = "inscribed_circle_published.wkt";
  /** Its area is printed a digit too large. */
  private static final String ROUNDED_UP = "MSD_48475_3";
  private static final String METRES = "m";
  private static final String CIRCLE = "widest-circle";
  private static final Pattern NUMBER = Pattern.compile("-?[0-9.]+");
  private static final String NANOMETRES = "corners lie on whole nanometres, and each may move by one";
  private static final String CENTRE = "centre and radius lie on whole nanometres";
  private static final String LEFT_BY_FLOATING_POINT = "a sum of cotangents in floating point, printed to twelve digits; corners lie on whole nanometres";

  /** Makes the topic. */
  public RoomCases() {}

  @Override
  public String name() {
    return "Rooms and what the gap leaves of them";
  }

  @Override
  public List<String> files() {
    return List.of(OFFSETS, RECTANGLES, ROOMS, ROOM_FIGURES, CIRCLES, LAKES);
  }

  @Override
  public List<ReferenceCase> cases() {
    List<ReferenceCase> cases = new ArrayList<>();
    DataFile.read(OFFSETS).rows().forEach(row -> addOffset(row, cases));
    DataFile.read(RECTANGLES).rows().forEach(row -> addRectangles(row, cases));
    Map<String, String> outlines = new LinkedHashMap<>();
    for (DataRow row : DataFile.read(ROOMS).rows()) {
      outlines.put(row.text("id"), row.text("wkt_m"));
      List<Expected> size = new ArrayList<>(List.of(Expected.exactly("corners", row.text("n_vertices")),
          Expected.printed("perimeter", row.text("perimeter_m"))));
      if (!row.text("id").equals(ROUNDED_UP)) {
        size.add(Expected.printed("area", row.text("area_m2")));
      }
      cases.add(new ReferenceCase(row.text("id"), ROOMS, Kind.WORKED_APART, about("room-size", row.text("wkt_m")), size));
    }
    DataFile.read(ROOM_FIGURES).rows().forEach(row -> addRoom(row, outlines.get(row.text("id")), cases));
    DataFile.read(CIRCLES).rows().forEach(row -> addCircle(row, cases));
    DataFile.read(LAKES).lines().forEach(line -> addLake(line, cases));
    return cases;
  }

  private static Question about(String calculation, String outline) {
    return Question.of(calculation).with("outline", outline).with("unit", METRES);
  }

  private static void addOffset(DataRow row, List<ReferenceCase> cases) {
    String outline = row.text("wkt");
    String gap = row.number("d").movePointRight(3).stripTrailingZeros().toPlainString() + " mm";
    String id = row.text("shape") + " with a gap of " + gap;
    boolean whole = isRightAngled(outline);
    int walls = corners(outline);
    cases.add(new ReferenceCase(id + ", the room itself", OFFSETS, Kind.WORKED_APART, about("room-size", outline), List.of(
        whole ? Expected.exactly("area", row.text("area")) : beside("area", row.text("area"), BigDecimal.valueOf(walls, 9)),
        whole ? Expected.exactly("perimeter", row.text("perimeter")) : beside("perimeter", row.text("perimeter"), BigDecimal.valueOf(walls, 9)))));
    cases.add(new ReferenceCase(id, OFFSETS, Kind.WORKED_APART, about("laid-area", outline).with("gap", gap), List.of(
        area("area", row, whole), area("areaByFormula", row, whole), Expected.exactly("pieces", "1"),
        whole ? Expected.exactly("perimeter", row.text("inner_perimeter_mitre"))
            : beside("perimeter", row.text("inner_perimeter_mitre"), BigDecimal.valueOf(4L * walls, 9)),
        Expected.within("cornerSum", row.text("sum_cot_mitre"), "0.00000001", LEFT_BY_FLOATING_POINT))));
  }

  private static Expected area(String figure, DataRow row, boolean whole) {
    return whole ? Expected.exactly(figure, row.text("inner_area_mitre"))
        : beside(figure, row.text("inner_area_mitre"), row.number("perimeter").movePointLeft(9));
  }

  /** A figure within half of its last digit and what moving the corners to whole nanometres can do. */
  private static Expected beside(String figure, String printed, BigDecimal more) {
    BigDecimal half = new BigDecimal(printed).ulp().divide(BigDecimal.valueOf(2));
    return Expected.within(figure, printed, half.add(more).toPlainString(), NANOMETRES);
  }

  private static void addRectangles(DataRow row, List<ReferenceCase> cases) {
    cases.add(new ReferenceCase(row.text("shape"), RECTANGLES, Kind.WORKED_APART, about("fewest-rectangles", row.text("wkt")), List.of(
        Expected.exactly("corners", row.text("n_vertices")), Expected.exactly("voids", row.text("holes")),
        Expected.exactly("reflexCorners", row.text("reflex_vertices")), Expected.exactly("chords", row.text("chords")),
        Expected.exactly("chordsDrawn", row.text("g")), Expected.exactly("rectangles", row.text("min_rectangles")))));
  }

  private static void addRoom(DataRow row, String outline, List<ReferenceCase> cases) {
    String id = row.text("id");
    List<Expected> size = List.of(Expected.exactly("corners", row.text("n_vertices")), Expected.printed("area", row.text("area_m2")),
        Expected.printed("perimeter", row.text("perimeter_m")), Expected.text("convex", row.text("convex").equals("true") ? "yes" : "no"));
    cases.add(new ReferenceCase(id + ", size", ROOM_FIGURES, Kind.WORKED_APART, about("room-size", outline), size));
    for (String gap : List.of("8", "12")) {
      cases.add(new ReferenceCase(id + " with a gap of " + gap + " mm", ROOM_FIGURES, Kind.WORKED_APART,
          about("laid-area", outline).with("gap", gap + " mm"),
          List.of(Expected.printed("area", row.text("inner_area_gap_" + gap + "mm_mitre")), Expected.exactly("pieces", "1"))));
    }
    cases.add(new ReferenceCase(id + ", widest circle", ROOM_FIGURES, Kind.WORKED_APART, about(CIRCLE, outline), List.of(
        Expected.within("radius", row.text("inscribed_radius_m"), "0.00006", "found with a tolerance of 0.00001 m, then rounded to 0.0001 m"))));
    cases.add(new ReferenceCase(id + ", least width", ROOM_FIGURES, Kind.WORKED_APART, about("least-width", outline),
        List.of(Expected.printed("width", row.text("min_width_m")))));
    cases.add(new ReferenceCase(id + ", skirting", ROOM_FIGURES, Kind.WORKED_APART, about("skirting-net-length", outline),
        List.of(Expected.printed("length", row.text("perimeter_m")))));
    cases.add(new ReferenceCase(id + ", underlay", ROOM_FIGURES, Kind.WORKED_APART, about("underlay-net-area", outline),
        List.of(Expected.printed("area", row.text("area_m2")))));
  }

  private static void addCircle(DataRow row, List<ReferenceCase> cases) {
    List<Expected> expected = new ArrayList<>(List.of(toTheNanometre("radius", row.text("radius"))));
    if (!row.isEmpty("cx")) {
      expected.add(toTheNanometre("centreX", row.text("cx")));
      expected.add(toTheNanometre("centreY", row.text("cy")));
    }
    cases.add(new ReferenceCase(row.text("shape"), CIRCLES, Kind.CONSTRUCTED, about(CIRCLE, row.text("wkt")), expected));
  }

  private static Expected toTheNanometre(String figure, String printed) {
    return Expected.within(figure, printed, "0.000000002", CENTRE);
  }

  /** The outlines have no unit: millimetres stand for it. */
  private static void addLake(String line, List<ReferenceCase> cases) {
    String name = line.substring(0, line.indexOf(';'));
    Question question = Question.of(CIRCLE).with("outline", line.substring(line.indexOf(';') + 1)).with("unit", "mm");
    DataFile file = DataFile.read(LAKES);
    Matcher published = Pattern.compile(name + ", precision (\\d+): centre \\((\\S+), (\\S+)\\), distance ([0-9.]*[0-9])").matcher(file.head("note"));
    while (published.find()) {
      String precision = published.group(1);
      String distance = published.group(4);
      cases.add(new ReferenceCase(name + " with a precision of " + precision, LAKES, Kind.READ, question, List.of(
          Expected.between("radius", distance, new BigDecimal(distance).add(new BigDecimal(precision)).toPlainString(),
              "the published search ends when no place can be farther by more than its precision"))));
    }
    Matcher apart = Pattern.compile((name.equals("water1") ? "" : "and ") + "(\\S+) at \\((\\S+), (\\S+)\\)").matcher(file.head("note"));
    if (!apart.find()) {
      throw new IllegalArgumentException(LAKES + " has no figure worked out apart for " + name);
    }
    cases.add(new ReferenceCase(name + ", worked out apart", LAKES, Kind.WORKED_APART, question, List.of(
        Expected.within("radius", apart.group(1), "0.000105", "found with a tolerance of 0.0001"),
        Expected.within("centreX", apart.group(2), "0.001", "where the shore is almost as far, the tolerance moves the place by more than the distance"),
        Expected.within("centreY", apart.group(3), "0.001", "where the shore is almost as far, the tolerance moves the place by more than the distance"))));
  }

  /** Whether each wall of an outline lies along x or along y. */
  private static boolean isRightAngled(String outline) {
    for (String ring : outline.substring(outline.indexOf('(') + 1).split("\\)")) {
      List<String> numbers = NUMBER.matcher(ring).results().map(found -> found.group()).toList();
      for (int i = 2; i + 1 < numbers.size(); i += 2) {
        if (!numbers.get(i).equals(numbers.get(i - 2)) && !numbers.get(i + 1).equals(numbers.get(i - 1))) {
          return false;
        }
      }
    }
    return true;
  }

  /** The corners of an outline; each ring repeats its first. */
  private static int corners(String outline) {
    int commas = (int) outline.chars().filter(c -> c == ',').count();
    int rings = (int) outline.chars().filter(c -> c == '(').count() - 1;
    return commas - (rings - 1);
  }

  @Override
  public List<Remark> remarks() {
    return List.of(
        new Remark(Remark.Sort.MISPRINT, ROOMS, "The area of MSD_48475_3 is printed as 6.6957; its corners give 6.695645, as rooms_expected.csv has it."),
        new Remark(Remark.Sort.LEFT_OUT, OFFSETS, "Columns sum_round and inner_area_round, the area left where reflex corners are rounded: a floor is sawn "
            + "straight, and the library has no such gap."),
        new Remark(Remark.Sort.LEFT_OUT, CIRCLES, "The centre of frame_6x5_hole: four places are equally good."),
        new Remark(Remark.Sort.LEFT_OUT, ROOM_FIGURES, "Fifteen rooms of indoor maps, whose licence (ODbL) keeps them out of this project; a test of the library "
            + "reads them where their file lies beside it. Of these, two figures for a gap of 12 mm (OSM_94551317 and OSM_94551428) are one or two units "
            + "of the last digit too large: the program that worked them out leaves out corners nearer to each other than a twentieth of the gap. "
            + "A - P d + d^2 times the sum of cotangents, worked to 50 digits from the printed corners, gives 46.124048334 and 81.083142328. "
            + "And one radius (OSM_94551457, 0.8936) is too small: the room is a corridor 1.78806 m wide, and a circle of 0.89403 lies in it."),
        new Remark(Remark.Sort.LEFT_OUT, LAKES, "The published centres: with a precision of 1 or 50 they are near the best place, not at it."),
        new Remark(Remark.Sort.DISAGREEMENT, OFFSETS, "Frame and L_with_column print a sum of 1.3e-15 for one that is 0: what floating point left."),
        new Remark(Remark.Sort.DISAGREEMENT, LAKES, "Rings touch, which is no sound room; the widest circle of such an outline is still well defined."));
  }
}
