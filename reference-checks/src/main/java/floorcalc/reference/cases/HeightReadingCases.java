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
import java.util.stream.IntStream;

/** How heights are read along a line: spacing and number of readings, and tilts turned into heights. */
public final class HeightReadingCases implements Topic {
  private static final String RULES = "e1155_rules.csv";
  private static final String TILTS = "moody_profile_from_tilts.csv";
  private static final String ACCEPTED = "accepted";
  private static final String YES = "yes";
  private static final String NO = "no";
  private static final String METRIC = "300";

  /** Makes the topic. */
  public HeightReadingCases() {}

  @Override
  public String name() {
    return "Reading heights along a line";
  }

  @Override
  public List<String> files() {
    return List.of(RULES, TILTS);
  }

  @Override
  public List<ReferenceCase> cases() {
    List<ReferenceCase> cases = new ArrayList<>();
    addSampling(cases);
    addBases(cases);
    addTilts(cases);
    return cases;
  }

  private static DataRow rule(String item) {
    return DataFile.read(RULES).rows().stream().filter(row -> row.text("item").equals(item)).findFirst().orElseThrow();
  }

  private static Question readings(String spacing, int number) {
    return Question.of("readings-for-f-numbers").with("spacing", spacing + " mm").with("readings", number);
  }

  /** Every 12 in, in the metric edition every 300 mm; at least 12 readings. */
  private static void addSampling(List<ReferenceCase> cases) {
    DataRow interval = rule("reading interval along a line");
    DataRow least = rule("minimum reading points per line n_j");
    int number = least.count("value");
    String spacing = interval.text("value");
    Kind kind = Kind.ofStatus(interval.text("status")).orElseThrow();
    for (String each : List.of(spacing, METRIC)) {
      cases.add(new ReferenceCase(interval.text("item") + ", " + each + " mm", RULES, kind, readings(each, number),
          List.of(Expected.text(ACCEPTED, YES), Expected.exactly("curvatures", Integer.toString(number - 2)),
              Expected.exactly("differences", Integer.toString(number - 10)))));
    }
    cases.add(new ReferenceCase(interval.text("item") + ", 305 mm", RULES, kind, readings("305", number), List.of(Expected.text(ACCEPTED, NO))));
    cases.add(new ReferenceCase(least.text("item"), RULES, kind, readings(spacing, number), List.of(Expected.text(ACCEPTED, YES))));
    cases.add(new ReferenceCase(least.text("item") + ", one fewer", RULES, kind, readings(spacing, number - 1), List.of(Expected.text(ACCEPTED, NO))));
  }

  private static Question line(IntStream millimetres) {
    return Question.of("f-numbers-of-line").with("spacing", rule("reading interval along a line").text("value") + " mm")
        .withList("heights", millimetres.mapToObj(height -> height + " mm").toList());
  }

  private static ReferenceCase definition(DataRow row, String what, Question question, List<Expected> expected) {
    return new ReferenceCase(row.text("item") + ", " + what, RULES, Kind.CONSTRUCTED, question, expected);
  }

  /**
   * Of heights i² mm each d(i) is 2 i - 1 and each q(i) is 2; z(10) is 100, z(11) is 121 - 1. Such a line is the parabola (x / spacing)², of which a
   * second difference over a base b is (b / spacing)² / 2. A line that rises by 1 mm a spacing has z = base / spacing.
   */
  private static void addBases(List<ReferenceCase> cases) {
    BigDecimal spacing = rule("reading interval along a line").number("value");
    Question squares = line(IntStream.range(0, 12).map(i -> i * i));
    List<Expected> twos = IntStream.range(2, 12).mapToObj(i -> Expected.exactly("q" + i, "2")).toList();
    cases.add(definition(rule("d_i"), "q of heights i² mm is a difference of such", squares, twos));
    cases.add(definition(rule("q_i"), "heights i² mm", squares, twos));
    cases.add(definition(rule("z_i"), "heights i² mm", squares, List.of(Expected.exactly("z10", "100"), Expected.exactly("z11", "120"))));
    DataRow flatness = rule("flatness base: two successive intervals");
    BigDecimal spans = flatness.number("value").divide(spacing);
    cases.add(definition(flatness, "a parabola", squares,
        List.of(Expected.exactly("q7", spans.multiply(spans).divide(BigDecimal.valueOf(2)).toPlainString()))));
    DataRow levelness = rule("levelness base");
    cases.add(definition(levelness, "a slope of 1 mm a spacing", line(IntStream.range(0, 12)),
        List.of(Expected.exactly("z10", levelness.number("value").divide(spacing).toPlainString()))));
  }

  /** Every printed digit of the worksheet; the heights at the ends by hand, -3.6 · 101.6 mm · 4.8481e-6 = -0.0017732 mm. */
  private static void addTilts(List<ReferenceCase> cases) {
    List<DataRow> stations = DataFile.read(TILTS).rows();
    Question question = Question.of("heights-from-tilts").with("step", "4 in")
        .withList("tilts", stations.stream().skip(1).map(row -> row.text("reading_arcsec")).toList());
    List<Expected> printed = new ArrayList<>();
    List<Expected> again = new ArrayList<>();
    for (DataRow row : stations) {
      String station = row.text("station");
      printed.add(Expected.exactly("sum" + station, row.text("cumulative_arcsec")));
      printed.add(Expected.printed("levelled" + station, tenths(row.text("profile_arcsec"))));
      again.add(Expected.printed("levelled" + station, row.text("profile_recomputed_arcsec")));
    }
    cases.add(new ReferenceCase("worksheet 1, as printed", TILTS, Kind.QUOTED, question, printed));
    cases.add(new ReferenceCase("worksheet 1, worked again", TILTS, Kind.WORKED_APART, question, again));
    cases.add(new ReferenceCase("worksheet 1, heights", TILTS, Kind.WORKED_APART, question, List.of(
        Expected.within("height0", "-0.0017732", "0.0000005", "an answer to the nanometre"), Expected.exactly("height10", "0"),
        Expected.within("height20", "-0.0017732", "0.0000005", "an answer to the nanometre"), Expected.exactly("length", "2032"))));
  }

  /** A nought is printed without its decimal. */
  private static String tenths(String printed) {
    return printed.contains(".") ? printed : printed + ".0";
  }

  @Override
  public List<Remark> remarks() {
    return List.of(
        new Remark(Remark.Sort.LEFT_OUT, RULES, "Where lines and sections of a slab lie: shortest measurement line; no part of a line nearer to a boundary, wall, joint or "
            + "penetration than; parallel lines not nearer than; test section side at least; test section area at least; section narrower than this: "
            + "lines at 45 degrees to longest joint, not corner to corner; measure after slab finishing within; total line length (m) at least area (m2) "
            + "divided by; construction joints. The library works numbers out of readings and lays out no lines."),
        new Remark(Remark.Sort.LEFT_OUT, RULES, "minimum number of z readings Nmin: recalled and doubtful."),
        new Remark(Remark.Sort.DISAGREEMENT, RULES, "The least area of a section is 30 m2 in one text, 12 m2 in another, and a slab of 20.53 m2 passed."),
        new Remark(Remark.Sort.LEFT_OUT, TILTS, "Columns of displacements and corrections, from which sums and profile follow: the sums and the profile are "
            + "asked for."));
  }
}
