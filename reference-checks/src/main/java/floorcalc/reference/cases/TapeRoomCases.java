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

/** Rooms measured by tape: walls and ties adjusted to corners. */
public final class TapeRoomCases implements Topic {
  private static final String OBSERVED = "survey_tape_rooms_constructed_obs.csv";
  private static final String RESULTS = "survey_tape_rooms_constructed_results.csv";

  /** Makes the topic. */
  public TapeRoomCases() {}

  @Override
  public String name() {
    return "Rooms measured by tape";
  }

  @Override
  public List<String> files() {
    return List.of(OBSERVED, RESULTS);
  }

  @Override
  public List<ReferenceCase> cases() {
    List<ReferenceCase> cases = new ArrayList<>();
    DataFile.read(RESULTS).rows().forEach(row -> addRoom(row, cases));
    return cases;
  }

  private static int corner(String point) {
    return Integer.parseInt(point.substring(1)) + 1;
  }

  /** Walls come first, round the room, then ties. */
  private static Question room(String room, int corners) {
    List<String> walls = new ArrayList<>();
    List<List<String>> ties = new ArrayList<>();
    for (DataRow row : DataFile.read(OBSERVED).rows()) {
      if (row.text("room").equals(room)) {
        int from = corner(row.text("from"));
        int to = corner(row.text("to"));
        String length = row.text("measured_mm") + " mm";
        if (walls.size() < corners) {
          if (to != from % corners + 1 || from != walls.size() + 1) {
            throw new IllegalStateException("a wall goes on from the one before: " + row);
          }
          walls.add(length);
        } else {
          ties.add(List.of(Integer.toString(from), Integer.toString(to), length));
        }
      }
    }
    return Question.of("room-from-walls-and-ties").withList("walls", walls).withTable("ties", ties).with("deviation", "1.5 mm");
  }

  private static void addRoom(DataRow row, List<ReferenceCase> cases) {
    String id = row.text("room");
    int corners = row.count("corners");
    Question question = room(id, corners);
    cases.add(new ReferenceCase(id, OBSERVED, Kind.WORKED_APART, question,
        List.of(Expected.exactly("measurements", row.text("observations")), Expected.exactly("redundancy", row.text("redundancy")))));
    List<Expected> expected = new ArrayList<>();
    String[] places = row.text("adjusted_coordinates_mm").split(";");
    String[] first = places[0].split(" ");
    for (int i = 0; i < corners; i++) {
      String[] place = places[i].split(" ");
      expected.add(Expected.printed("corner" + (i + 1) + ".x", less(place[0], first[0])));
      expected.add(Expected.printed("corner" + (i + 1) + ".y", less(place[1], first[1])));
    }
    expected.add(Expected.printed("factor", row.text("s0")));
    expected.add(Expected.within("area", row.text("area_adjusted_mm2"), new BigDecimal("0.05").add(new BigDecimal("0.01")
        .multiply(BigDecimal.valueOf(corners))).toPlainString(), "corners are kept to the nanometre: 0.01 mm² for each"));
    expected.add(Expected.exactly("misfits", "0"));
    cases.add(new ReferenceCase(id, RESULTS, Kind.WORKED_APART, question, expected));
  }

  /** Corner 1 is the origin here. */
  private static String less(String one, String other) {
    return new BigDecimal(one).subtract(new BigDecimal(other)).toPlainString();
  }

  @Override
  public List<Remark> remarks() {
    return List.of(new Remark(Remark.Sort.LEFT_OUT, RESULTS, "The corners and areas of the rooms as they were made up: adjusted ones differ from them by the errors of the "
        + "tape. That the areas lie within three standard deviations is a test of the library's own."));
  }
}
