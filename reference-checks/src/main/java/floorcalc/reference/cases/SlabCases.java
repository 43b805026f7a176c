package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.ReferenceCase;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataFile;
import floorcalc.reference.data.DataRow;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** A slab that was measured along six lines: F-numbers, straightedges, chords, lines of best fit. */
public final class SlabCases implements Topic {
  private static final String HEIGHTS = "e1155_slac_elevations.csv";
  private static final String CURVATURES = "e1155_slac_q.csv";
  private static final String NUMBERS = "e1155_slac_fnumbers_computed.csv";
  private static final String PLACEMENTS = "slac_straightedge_placements_computed.csv";
  private static final String GREATEST = "slac_straightedge_computed.csv";
  private static final String CHORDS = "slac_chord_deviation_computed.csv";
  private static final String FIT = "slac_line_fit_computed.csv";
  private static final String SPACING = "300 mm";
  private static final String RECONSTRUCTED = "5";
  private static final String F_NUMBERS = "f-numbers-of-line";
  private static final String TO_THE_NANOMETRE = "means and deviations are kept to the nanometre, and so is the figure that is printed";

  /** Makes the topic. */
  public SlabCases() {}

  @Override
  public String name() {
    return "A measured slab";
  }

  @Override
  public List<String> files() {
    return List.of(HEIGHTS, CURVATURES, NUMBERS, PLACEMENTS, GREATEST, CHORDS, FIT);
  }

  @Override
  public List<ReferenceCase> cases() {
    List<ReferenceCase> cases = new ArrayList<>();
    for (String line : List.of("0", "1", "2", "3", "4", RECONSTRUCTED)) {
      addHeights(line, cases);
      addCurvatures(line, cases);
    }
    addShare(cases);
    DataFile.read(NUMBERS).rows().forEach(row -> addNumbers(row, cases));
    DataFile.read(PLACEMENTS).rows().forEach(row -> addPlacement(row, cases));
    DataFile.read(GREATEST).rows().forEach(row -> addGreatest(row, cases));
    DataFile.read(CHORDS).rows().forEach(row -> addChord(row, cases));
    DataFile.read(FIT).rows().forEach(row -> cases.add(new ReferenceCase(line(row.text("line")), FIT, Kind.WORKED_APART,
        Question.of("line-of-best-fit").withTable("profile", profile(row.text("line"))), List.of(
            Expected.within("slope", row.text("slope_mm_per_m"), "0.000001", "both round to the sixth decimal"),
            Expected.printed("highestAbove", row.text("max_residual_mm")), Expected.printed("deepestBelow", row.text("min_residual_mm")),
            Expected.exactly("rangeOfHeights", row.text("height_range_mm"))))));
    return cases;
  }

  private static String line(String number) {
    return "line " + number + (number.equals(RECONSTRUCTED) ? " (heights reconstructed)" : "");
  }

  private static List<DataRow> rows(String file, String line) {
    return DataFile.read(file).rows().stream().filter(row -> row.text("line").equals(line)).toList();
  }

  private static List<String> heights(String line) {
    return rows(HEIGHTS, line).stream().map(row -> row.text("elevation_mm") + " mm").toList();
  }

  private static List<List<String>> profile(String line) {
    return rows(HEIGHTS, line).stream().map(row -> List.of(row.text("distance_mm") + " mm", row.text("elevation_mm") + " mm")).toList();
  }

  private static Question numbers(String line) {
    return Question.of(F_NUMBERS).with("spacing", SPACING).withList("heights", heights(line));
  }

  /** Heights are the inputs of all other files; what follows from them alone is how many curvatures and differences they give. */
  private static void addHeights(String line, List<ReferenceCase> cases) {
    int readings = heights(line).size();
    cases.add(new ReferenceCase(line(line), HEIGHTS, Kind.CONSTRUCTED, numbers(line), List.of(
        Expected.exactly("curvatures", Integer.toString(readings - 2)), Expected.exactly("differences", Integer.toString(readings - 10)))));
  }

  private static void addCurvatures(String line, List<ReferenceCase> cases) {
    List<DataRow> rows = rows(CURVATURES, line);
    List<Expected> published = rows.stream().map(row -> Expected.within("q" + row.text("i"), row.text("q_published_mm"), "0.0025",
        "the heights are rounded to 0.001 mm, and a curvature takes four of them")).toList();
    // The heights of line 5 were reconstructed from its curvatures.
    cases.add(new ReferenceCase(line(line), CURVATURES, line.equals(RECONSTRUCTED) ? Kind.CONSTRUCTED : Kind.READ, numbers(line), published));
    cases.add(new ReferenceCase(line(line) + ", worked again", CURVATURES, Kind.WORKED_APART, numbers(line),
        rows.stream().map(row -> Expected.exactly("q" + row.text("i"), row.text("q_from_elevations_mm"))).toList()));
  }

  /** The 62 published curvatures by size: the 59th is 2.667 mm, and 62 times 0.95 is 58.9. No class of TR34 allows as much. */
  private static void addShare(List<ReferenceCase> cases) {
    List<String> sizes = DataFile.read(CURVATURES).rows().stream().filter(row -> !row.text("line").equals(RECONSTRUCTED))
        .map(row -> row.number("q_published_mm").abs()).sorted().map(size -> size.toPlainString()).toList();
    List<List<String>> lines = IntStream.range(0, 5).mapToObj(line -> heights(Integer.toString(line))).toList();
    for (String name : List.of("FM1", "FM2", "FM3", "FM4")) {
      cases.add(new ReferenceCase("lines 0 to 4, class " + name, CURVATURES, Kind.WORKED_APART, Question.of("free-movement-flatness")
          .with("class", name).with("spacing", SPACING).withTable("lines", lines), List.of(Expected.exactly("values", "62"),
              Expected.within("keptBy95Percent", sizes.get(58), "0.0025", "the heights are rounded to 0.001 mm, and a curvature takes four of them"),
              Expected.text("isMet", "no"))));
    }
  }

  private static void addNumbers(DataRow row, List<ReferenceCase> cases) {
    String line = row.text("line");
    if (line.equals("0-1")) {
      cases.add(new ReferenceCase("lines " + line, NUMBERS, Kind.WORKED_APART, Question.of("f-number-of-lines-together")
          .withList("numbers", List.of("28.8406", "20.4443")).withList("values", List.of("12", "13")),
          List.of(Expected.printed("number", row.text("FF")), Expected.exactly("values", row.text("n_q")))));
      return;
    }
    List<Expected> expected = new ArrayList<>();
    Question question;
    if (line.contains("-")) {
      question = Question.of("f-numbers-of-section").with("spacing", SPACING).withTable("lines",
          IntStream.rangeClosed(0, Integer.parseInt(line.substring(2))).mapToObj(one -> heights(Integer.toString(one))).toList());
    } else {
      question = numbers(line);
      for (String[] figure : new String[][] {{"meanCurvature", "mean_q_mm"}, {"deviationOfCurvatures", "sd_q_mm"},
          {"meanDifference", "mean_z_mm"}, {"deviationOfDifferences", "sd_z_mm"}}) {
        expected.add(Expected.within(figure[0], row.text(figure[1]), "0.000001", TO_THE_NANOMETRE));
      }
    }
    String before = "means and deviations are rounded to the nanometre before the division";
    expected.addAll(List.of(Expected.exactly("curvatures", row.text("n_q")), Expected.within("ff", row.text("FF"), "0.00011", before),
        Expected.exactly("differences", row.text("n_z")), Expected.within("fl", row.text("FL"), "0.00011", before)));
    cases.add(new ReferenceCase(line.contains("-") ? "lines " + line : line(line), NUMBERS, Kind.WORKED_APART, question, expected));
  }

  private static void addPlacement(DataRow row, List<ReferenceCase> cases) {
    String line = row.text("line");
    String start = rows(HEIGHTS, line).get(row.count("start_point")).text("distance_mm");
    cases.add(new ReferenceCase(String.join(", ", line(line), row.text("straightedge_mm") + " mm", "from point " + row.text("start_point")), PLACEMENTS,
        Kind.WORKED_APART, Question.of("straightedge-at-place").with("edge", row.text("straightedge_mm") + " mm").with("start", start + " mm")
            .withTable("profile", profile(line)), List.of(Expected.exactly("leftSupport", row.text("support_left_mm")),
                Expected.exactly("rightSupport", row.text("support_right_mm")), Expected.printed("gap", row.text("gravity_gap_mm")),
                Expected.text("tips", row.text("rocks")), Expected.printed("worstGap", row.text("hull_gap_mm")))));
  }

  private static void addGreatest(DataRow row, List<ReferenceCase> cases) {
    String line = row.text("line");
    String start = rows(HEIGHTS, line).get(row.count("start_point")).text("distance_mm");
    cases.add(new ReferenceCase(line(line) + ", " + row.text("straightedge_mm") + " mm", GREATEST, Kind.WORKED_APART,
        Question.of("straightedge-at-every-reading").with("edge", row.text("straightedge_mm") + " mm").withTable("profile", profile(line)),
        List.of(Expected.printed("gap", row.text("gravity_gap_mm")), Expected.exactly("start", start),
            Expected.exactly("leftSupport", row.text("support_left_mm")), Expected.exactly("rightSupport", row.text("support_right_mm")),
            Expected.printed("worstGap", row.text("hull_gap_mm")))));
  }

  private static void addChord(DataRow row, List<ReferenceCase> cases) {
    cases.add(new ReferenceCase(line(row.text("line")) + ", " + row.text("chord_mm") + " mm", CHORDS, Kind.WORKED_APART,
        Question.of("deviations-from-chord").with("chord", row.text("chord_mm") + " mm").withTable("profile", profile(row.text("line"))),
        List.of(Expected.exactly("places", row.text("count")), Expected.exactly("highest", row.text("max_dev_mm")),
            Expected.exactly("lowest", row.text("min_dev_mm")), Expected.printed("rootMeanSquare", row.text("rms_mm")))));
  }

  @Override
  public List<Remark> remarks() {
    return List.of(
        new Remark(Remark.Sort.LEFT_OUT, NUMBERS, "Columns with constants 115.8 and 317.2, recalled for the metric standard and doubtful. The equations of FF, FL and "
            + "of lines together are themselves from memory: these rows show that they are worked rightly, not that they are the standard's."),
        new Remark(Remark.Sort.LEFT_OUT, HEIGHTS, "The heights of line 5 were reconstructed from its curvatures, which it therefore gives back by construction; "
            + "it stands as extra data."),
        new Remark(Remark.Sort.LEFT_OUT, FIT, "How much the last reading of a line is above its first: the difference of two inputs."),
        new Remark(Remark.Sort.NO_SOURCE, NUMBERS, "No printed FF or FL of this slab could be read."));
  }
}
