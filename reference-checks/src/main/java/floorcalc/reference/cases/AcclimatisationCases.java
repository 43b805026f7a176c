package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataRow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Whether boards have come to terms with the room that they lie in. */
public final class AcclimatisationCases extends GatheredTopic {
  private static final String FILE = "acclimatisation_computed.csv";

  /** Makes the topic. */
  public AcclimatisationCases() {}

  @Override
  public String name() {
    return "Boards and room";
  }

  @Override
  public List<String> files() {
    return List.of(FILE);
  }

  @Override
  List<FileCases> gather() {
    FileCases file = new FileCases(FILE);
    for (DataRow row : file.rows()) {
      Question asked = Question.of("acclimatisation").withList("boards",
          Arrays.stream(row.text("boards_pct").split(" ")).filter(reading -> !reading.isEmpty()).toList());
      if (!row.isEmpty("packs")) {
        asked = asked.with("packs", row.text("packs"));
      }
      if (!row.isEmpty("days")) {
        asked = asked.with("days", row.text("days"));
      }
      if (!row.isEmpty("celsius")) {
        asked = asked.with("temperature", row.text("celsius") + " °C").with("relativeHumidity", row.text("humidity_pct"));
      }
      List<Expected> figures = new ArrayList<>(List.of(Expected.text("packsClosed", row.text("packs_closed")),
          Expected.text("daysInRoom", row.text("days_in_room")), Expected.text("agreement", row.text("agreement"))));
      if (!row.isEmpty("mean_pct")) {
        figures.add(Expected.exactly("mean", row.text("mean_pct")));
      }
      file.add(row, row.text("id"), Kind.WORKED_APART, asked, figures.toArray(Expected[]::new));
    }
    return List.of(file);
  }

  @Override
  List<Remark> moreRemarks() {
    return List.of(new Remark(Remark.Sort.NO_SOURCE, FILE, "No source prints readings of boards and room with what follows from them; the readings are made up."));
  }
}
