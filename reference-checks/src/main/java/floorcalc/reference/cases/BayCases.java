package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataRow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Bays: whether a floor can move as one piece, the parts between breaks, the least length of breaks. */
public final class BayCases extends GatheredTopic {
  private static final String FREEDOM = "bay_freedom_computed.csv";
  private static final String PARTS = "bay_parts_computed.csv";
  private static final String SPLITS = "bay_splits_computed.csv";

  /** Makes the topic. */
  public BayCases() {}

  @Override
  public String name() {
    return "Bays";
  }

  @Override
  public List<String> files() {
    return List.of(FREEDOM, PARTS, SPLITS);
  }

  @Override
  List<FileCases> gather() {
    return List.of(freedom(), parts(), splits());
  }

  private static FileCases freedom() {
    FileCases file = new FileCases(FREEDOM);
    for (DataRow row : file.rows()) {
      List<Expected> figures = new ArrayList<>(List.of(Expected.text("free", row.text("free")), Expected.exactly("innerCorners", row.text("inner_corners")),
          Expected.exactly("voids", row.text("voids")), Expected.exactly("beyond", row.text("beyond"))));
      if (!row.isEmpty("deepest_corner_mm")) {
        figures.add(Expected.printed("deepestCorner", row.text("deepest_corner_mm")));
        figures.add(Expected.printed("closing", row.text("closing_mm")));
      }
      if (!row.isEmpty("widest_void_mm")) {
        figures.add(Expected.printed("widestVoid", row.text("widest_void_mm")));
      }
      file.add(row, row.text("room"), Kind.WORKED_APART, Question.of("freedom-of-a-bay").with("outline", row.text("outline_mm"))
          .with("deepestRecess", "500 mm").with("widestVoid", "1000 mm"), figures.toArray(Expected[]::new));
    }
    return file;
  }

  private static FileCases parts() {
    FileCases file = new FileCases(PARTS);
    for (DataRow row : file.rows()) {
      List<List<String>> breaks = Arrays.stream(row.text("breaks_mm").split("; ")).filter(line -> !line.isEmpty())
          .map(line -> List.of(line.split(" "))).toList();
      file.add(row, row.text("id"), Kind.WORKED_APART, Question.of("parts-between-breaks").with("outline", row.text("outline_mm")).withTable("breaks", breaks),
          Expected.exactly("parts", row.text("parts")), Expected.text("areas", row.text("areas_mm2")), Expected.exactly("length", row.text("length_mm")));
    }
    return file;
  }

  private static FileCases splits() {
    FileCases file = new FileCases(SPLITS);
    for (DataRow row : file.rows()) {
      Kind kind = row.text("how").equals("rectangle") ? Kind.CONSTRUCTED : Kind.WORKED_APART;
      file.add(row, row.text("id"), kind, Question.of("least-breaks").with("outline", row.text("outline_mm")).with("deepestRecess", "500 mm")
          .with("widestVoid", "1000 mm").with("longestAlong", "12 m").with("longestAcross", "8 m"),
          Expected.exactly("length", row.text("length_mm")), Expected.text("proven", "yes"));
    }
    return file;
  }

  @Override
  List<Remark> moreRemarks() {
    return List.of(new Remark(Remark.Sort.NO_SOURCE, SPLITS, "No source was found that says where a floor of many corners is best split, nor from which depth of a recess on: "
        + "the limits are common practice, the rooms are made up, and the least lengths were found by trying all bays."));
  }
}
