package floorcalc.examples;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.audit.PlanAudit;
import floorcalc.drawing.FloorDrawing;
import floorcalc.drawing.Measures;
import floorcalc.examples.job.JobFile;
import floorcalc.examples.job.Tape;
import floorcalc.outline.Ring;
import floorcalc.plan.Door;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The demo scenario: invented rooms in Gullhaven. */
class DemoTest {
  @Test
  void jobsKeepToTheSchemaAndSayThatTheyAreInvented() throws IOException {
    assertThat(Demo.names()).containsExactly(Demo.FLAT, Demo.HOUSE, Demo.LOFT, Demo.PARLOUR);
    for (String name : Demo.names()) {
      assertThat(Docs.faultsOfJob(Demo.bytes(name))).isEmpty();
      assertThat(Demo.job(name).job().title()).endsWith("(invented)");
    }
  }

  @Test
  void plansAreCleanByTheAudit() throws IOException {
    for (String name : Demo.names()) {
      assertThat(PlanAudit.of(Demo.job(name).job(), Demo.plan(name)).breaches()).as(name).isEmpty();
    }
  }

  @Test
  void studyIsOutOfSquare() throws IOException {
    Room study = Demo.job(Demo.HOUSE).job().rooms().get(0);
    // the far wall rises by 15 mm over 4195 mm, so the first and the last row cannot be of one width throughout
    assertThat(study.outline().shell().corners().get(2).y()).isNotEqualTo(study.outline().shell().corners().get(3).y());
  }

  @Test
  void livingRoomIsSplitAtItsInnerCorner() throws IOException {
    FloorPlan plan = Demo.plan(Demo.HOUSE);
    assertThat(plan.bays()).map(Bay::bay).containsExactly("study-1", "living-room-1", "living-room-2");
    assertThat(plan.breaks()).singleElement().satisfies(line -> assertThat(line.room()).isEqualTo("Living room"));
    assertThat(plan.findings()).noneMatch(finding -> finding.code().equals("bay-must-be-split"));
  }

  @Test
  void loftIsMeasuredInFeetAndInches() throws IOException {
    assertThat(Demo.job(Demo.LOFT).tape()).isEqualTo(Tape.FEET_AND_INCHES);
    assertThat(Demo.job(Demo.HOUSE).tape()).isEqualTo(Tape.METRIC);
  }

  /** The floor beyond each inner door is the floor of the room it leads to, and both rooms name the door alike. */
  @Test
  void roomsOfTheFlatLeadToEachOther() throws IOException {
    List<Room> rooms = Demo.job(Demo.FLAT).job().rooms();
    assertThat(rooms.stream().map(Room::name)).containsExactly("Living room", "Hall", "Bedroom", "Kitchen");
    Room hall = rooms.get(1);
    assertThat(hall.doors()).hasSize(4);
    for (Door door : hall.doors()) {
      rooms.stream().filter(room -> room.name().equals(door.leadsTo())).forEach(room -> {
        Door back = room.doors().stream().filter(other -> other.name().equals(door.name())).findFirst().orElseThrow();
        assertThat(back.leadsTo()).isEqualTo("Hall");
        // walls of 110 mm to 131 mm stand between the two faces of an opening, measured to a few millimetres in the bedroom
        double dx = door.from().x().plus(door.to().x()).minus(back.from().x()).minus(back.to().x()).toMillimetres() / 2;
        double dy = door.from().y().plus(door.to().y()).minus(back.from().y()).minus(back.to().y()).toMillimetres() / 2;
        assertThat(Math.sqrt(dx * dx + dy * dy)).as(door.name()).isBetween(110.0, 131.0);
        assertThat(door.beyond().finish()).isEqualTo("same floor");
        assertThat(back.beyond().higherBy()).isEqualTo(door.beyond().higherBy().negated());
      });
    }
    assertThat(FloorDrawing.ofAllRooms(Demo.job(Demo.FLAT).job(), Demo.plan(Demo.FLAT), Measures.MILLIMETRES)).isPresent();
  }

  @Test
  void bedroomOfTheFlatIsSurveyedInFeetAndInchesAndOutOfSquare() throws IOException {
    JobFile flat = Demo.job(Demo.FLAT);
    assertThat(flat.tape()).isEqualTo(Tape.METRIC);
    assertThat(flat.inFeet()).containsExactly("Bedroom");
    assertThat(flat.tapeOf("Bedroom")).isEqualTo(Tape.FEET_AND_INCHES);
    assertThat(flat.tapeOf("Hall")).isEqualTo(Tape.METRIC);
    Ring bedroom = flat.job().rooms().get(2).outline().shell();
    // the far wall rises by about 19 mm over 4.2 m: its ends are read 3549 mm and 3530 mm from the near wall
    assertThat(bedroom.corners().get(3).y().minus(bedroom.corners().get(2).y()).toMillimetres()).isBetween(14.0, 24.0);
  }
}
