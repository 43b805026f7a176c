package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataRow;
import java.util.Arrays;
import java.util.List;

/** Grids of levels: how flat they are, and the least filler. */
public final class GridCases extends GatheredTopic {
  private static final String FLATNESS = "grid_flatness_computed.csv";
  private static final String FILLER = "subfloor_filler_computed.csv";

  /** Makes the topic. */
  public GridCases() {}

  @Override
  public String name() {
    return "Grids of levels";
  }

  @Override
  public List<String> files() {
    return List.of(FLATNESS, FILLER);
  }

  @Override
  List<FileCases> gather() {
    return List.of(flatness(), filler());
  }

  private static Question grid(String calculation, DataRow row) {
    List<List<String>> heights = Arrays.stream(row.text("heights_mm").split("; ")).map(line -> List.of(line.split(" "))).toList();
    return Question.of(calculation).with("along", row.text("along_mm") + " mm").with("between", row.text("between_mm") + " mm")
        .withTable("heights", heights).with("span", row.text("span_mm") + " mm").with("allowed", row.text("allowed_mm") + " mm");
  }

  private static Expected gap(String figure, String printed) {
    return printed.equals("none") ? Expected.text(figure, printed) : Expected.exactly(figure, printed);
  }

  private static FileCases flatness() {
    FileCases file = new FileCases(FLATNESS);
    for (DataRow row : file.rows()) {
      file.add(row, row.text("id"), Kind.WORKED_APART, grid("flatness-of-a-grid", row), gap("alongRows", row.text("row_mm")),
          gap("alongColumns", row.text("column_mm")), gap("alongRisingDiagonals", row.text("rising_mm")),
          gap("alongFallingDiagonals", row.text("falling_mm")), Expected.text("outcome", row.text("outcome")));
    }
    return file;
  }

  private static FileCases filler() {
    FileCases file = new FileCases(FILLER);
    for (DataRow row : file.rows()) {
      file.add(row, row.text("id"), Kind.WORKED_APART, grid("least-filler", row).with("grindUpTo", row.text("grind_up_to_mm") + " mm")
          .with("kilogramsPerLitre", "1.7").with("bag", "25"),
          Expected.exactly("litres", row.text("filler_l")), Expected.exactly("leastLitres", row.text("filler_l")),
          Expected.exactly("deepestFilling", row.text("deepest_fill_mm")), Expected.exactly("spotsFilled", row.text("spots_filled")),
          Expected.exactly("kilograms", row.text("filler_kg")), Expected.exactly("bags", row.text("bags")), Expected.exactly("area", row.text("area_m2")),
          Expected.exactly("worstDepthTimesArea", row.text("worst_depth_times_area_l")),
          Expected.printed("meanDepthTimesArea", row.text("mean_depth_times_area_l")), Expected.text("outcome", "met"));
    }
    return file;
  }

  @Override
  List<Remark> moreRemarks() {
    return List.of(new Remark(Remark.Sort.NO_SOURCE, FILLER, "No source prints levels of a floor with what was ground and filled: the floors are made up, and the least "
        + "filler was found by raising what must be raised."));
  }
}
