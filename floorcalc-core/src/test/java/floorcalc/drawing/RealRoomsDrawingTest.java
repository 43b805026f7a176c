package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.boards.BoardGoods;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Wkt;
import floorcalc.plan.Bay;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Draws the plans of real rooms; the sources of their outlines stand in reference/rooms_cc_by.csv. */
class RealRoomsDrawingTest {
  private static final double[] DIRECTIONS = {0, 90, 37.5};

  record Outlined(String id, String wkt) {
    @Override
    public String toString() {
      return id;
    }
  }

  static Stream<Outlined> rooms() throws IOException {
    List<Outlined> rooms = new ArrayList<>();
    try (BufferedReader lines = new BufferedReader(new InputStreamReader(
        RealRoomsDrawingTest.class.getResourceAsStream("/reference/rooms_cc_by.csv"), StandardCharsets.UTF_8))) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        if (line.contains("\"POLYGON")) {
          String wkt = line.substring(line.indexOf('"')).replace("\"", "");
          rooms.add(new Outlined(line.substring(0, line.indexOf(',')), wkt));
        }
      }
    }
    assertThat(rooms).hasSize(21);
    return rooms.stream();
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void textsKeepApartAndNumbersLieInTheirPieces(Outlined outlined) {
    Outline outline = Wkt.parse(outlined.wkt(), Wkt.Unit.METRES);
    for (int i = 0; i < DIRECTIONS.length; i++) {
      BoardGoods board = i == 1 ? BoardGoods.of(Rooms.mm(900), Rooms.mm(90), Rooms.mm(14), 6)
          : BoardGoods.of(Rooms.mm(2200), Rooms.mm(185), Rooms.mm(14), 6);
      FloorJob job = FloorJob.of("Real rooms", board).room(Room.of(outlined.id(), outline))
          .direction(DirectionChoice.of(Direction.fromDegrees(DIRECTIONS[i]))).build();
      FloorPlan plan = FloorPlanner.plan(job);
      for (Bay bay : plan.bays()) {
        SvgPage page = SvgPage.parse(FloorDrawing.of(job, plan, bay).toSvg());
        DrawingChecks.textsNeverCollide(page);
        DrawingChecks.textsLieOnTheSheet(page);
        DrawingChecks.numbersLieInTheirPieces(page);
        if (i != 1) {
          assertThat(page.boardNumbers()).as("numbered pieces of broad boards").isNotEmpty();
        }
      }
    }
  }
}
