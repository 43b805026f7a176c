package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataRow;
import java.util.Arrays;
import java.util.List;

/** Gaps against the movement of the seasons, and breaks in floors that run through several rooms. */
public final class ContinuousCases extends GatheredTopic {
  private static final String GAPS = "gap_checks_computed.csv";
  private static final String FLOORS = "continuous_floors_computed.csv";

  /** Makes the topic. */
  public ContinuousCases() {}

  @Override
  public String name() {
    return "Floors through several rooms";
  }

  @Override
  public List<String> files() {
    return List.of(GAPS, FLOORS);
  }

  @Override
  List<FileCases> gather() {
    return List.of(gaps(), floors());
  }

  private static List<List<String>> table(DataRow row, String column) {
    return Arrays.stream(row.text(column).split("; ")).filter(line -> !line.isEmpty()).map(line -> List.of(line.split(" "))).toList();
  }

  private static FileCases gaps() {
    FileCases file = new FileCases(GAPS);
    for (DataRow row : file.rows()) {
      String overlap = row.text("least_overlap_mm");
      file.add(row, row.text("id"), Kind.WORKED_APART, Question.of("gaps-in-the-seasons").with("coefficient", row.text("coefficient"))
          .with("moistureAtLaying", row.text("now_pct")).with("driest", row.text("driest_pct")).with("dampest", row.text("dampest_pct"))
          .withTable("points", table(row, "points")),
          Expected.exactly("narrowest", row.text("narrowest_mm")),
          overlap.equals("none") ? Expected.text("leastOverlap", overlap) : Expected.exactly("leastOverlap", overlap),
          Expected.text("wideEnough", row.text("wide_enough")), Expected.text("covered", row.text("covered")));
    }
    return file;
  }

  private static FileCases floors() {
    FileCases file = new FileCases(FLOORS);
    for (DataRow row : file.rows()) {
      file.add(row, row.text("id"), Kind.WORKED_APART, Question.of("breaks-at-openings").withTable("rooms", table(row, "rooms_mm"))
          .withTable("openings", table(row, "openings_mm")).with("coefficient", row.text("coefficient"))
          .with("moistureAtLaying", row.text("now_pct")).with("dampest", row.text("dampest_pct")).with("ruleGap", row.text("rule_gap_mm") + " mm"),
          Expected.text("across", row.text("across_mm")), Expected.text("along", row.text("along_mm")),
          Expected.text("neededAsOne", row.text("needed_as_one_mm")), Expected.text("breaks", row.text("breaks")),
          Expected.text("bays", row.text("bays")), Expected.text("baysAcross", row.text("bays_across_mm")));
    }
    return file;
  }

  @Override
  List<Remark> moreRemarks() {
    return List.of(new Remark(Remark.Sort.NO_SOURCE, FLOORS, "No source prints a floor through several rooms with the openings at which it needs a break: the floors are made "
        + "up, and the openings were found by trying all."));
  }
}
