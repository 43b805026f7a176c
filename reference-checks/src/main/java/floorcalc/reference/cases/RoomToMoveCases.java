package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataRow;
import java.util.List;

/** Which gap a floor needs for its movement, and how wide it is at a slanted wall. */
public final class RoomToMoveCases extends GatheredTopic {
  private static final String FLOORS = "floor_movement_computed.csv";
  private static final String ANGLES = "wall_angle_computed.csv";

  /** Makes the topic. */
  public RoomToMoveCases() {}

  @Override
  public String name() {
    return "Room to move";
  }

  @Override
  public List<String> files() {
    return List.of(FLOORS, ANGLES);
  }

  @Override
  List<FileCases> gather() {
    return List.of(floors(), angles());
  }

  private static FileCases floors() {
    FileCases file = new FileCases(FLOORS);
    for (DataRow row : file.rows()) {
      String greatest = row.text("greatest_width_mm");
      file.add(row, row.text("about") + ", held " + row.text("stays_put"), Kind.WORKED_APART, Question.of("room-to-move").with("width", row.text("floor"))
          .with("coefficient", row.text("coefficient")).with("moistureAtLaying", row.text("moisture_at_laying_pct"))
          .with("dampest", row.text("dampest_pct")).with("ruleGap", row.text("rule_gap_mm") + " mm").with("staysPut", row.text("stays_put")),
          Expected.exactly("swellingMillimetres", row.text("swelling_mm")), Expected.exactly("neededMillimetres", row.text("gap_needed_mm")),
          Expected.exactly("gapMillimetres", row.text("gap_to_leave_mm")),
          greatest.isEmpty() ? Expected.text("greatestWidthMillimetres", "none") : Expected.printed("greatestWidthMillimetres", greatest),
          Expected.exactly("bays", row.text("bays")));
    }
    return file;
  }

  private static FileCases angles() {
    FileCases file = new FileCases(ANGLES);
    for (DataRow row : file.rows()) {
      String angle = row.text("angle_deg");
      file.add(row, row.text("square_mm") + " mm at " + angle + " degrees, along the board", Kind.WORKED_APART, Question.of("gap-along-board").with("wallAngle", angle)
          .with("gapSquareToWall", row.text("square_mm") + " mm"), Expected.printed("millimetres", row.text("along_mm")));
      // The length along the board is rounded in the file to a ten-thousandth of a millimetre.
      file.add(row, row.text("square_mm") + " mm at " + angle + " degrees, square to the wall", Kind.WORKED_APART, Question.of("gap-square-to-wall").with("wallAngle", angle)
          .with("gapAlongBoard", row.text("along_mm") + " mm"), Expected.within("millimetres", row.text("square_mm"), "0.0001",
          "the length along the board is rounded to four decimals"));
    }
    return file;
  }

  @Override
  List<Remark> moreRemarks() {
    return List.of(new Remark(Remark.Sort.NO_SOURCE, FLOORS, "No source prints an example of the gap that a floor needs for its movement; the figures are "
        + "worked out by hand from published examples of the movement and from rules of gaps."));
  }
}
