package floorcalc.laying;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.bays.Opening;
import floorcalc.boards.BoardGoods;
import floorcalc.boards.PackContent;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorJobBuilder;
import floorcalc.plan.JobFault;
import floorcalc.plan.Pipe;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class JobCheckTest {
  private static final Length WIDE = Length.ofMillimetres(60);
  private static final Length THICK = Length.ofMillimetres(10);

  private static List<JobFault> faults(BoardGoods goods) {
    return JobCheck.faultsOf(FloorJob.of("Invented floor", goods)
        .room(Room.of("Den", Wkt.parse("POLYGON ((0 0, 1000 0, 1000 800, 0 800, 0 0))"))).build());
  }

  private static Length mm(String length) {
    return Length.ofMillimetres(length);
  }

  @Test
  void aBoardOfFiftyMillimetresIsPlanned() {
    assertThat(faults(BoardGoods.of(mm("50"), WIDE, THICK, 100))).isEmpty();
  }

  @Test
  void aShorterOneIsALengthInAnotherUnit() {
    assertThat(faults(BoardGoods.of(mm("2.2"), WIDE, THICK, 100)))
        .containsExactly(new JobFault(-1, "boards-too-short",
            "the boards have a length of 2.2 mm, at least 50 mm is needed; check the length and its unit"));
    assertThat(faults(BoardGoods.mixed(List.of(new PackContent(mm("900"), 2), new PackContent(mm("49.9"), 2)), WIDE, THICK)))
        .extracting(JobFault::message)
        .containsExactly("the boards have a length of 49.9 mm, at least 50 mm is needed; check the length and its unit");
  }

  /** A program that hands over a hundred thousand pipes has made a mistake; each of the three bounds is tried on either side. */
  @Test
  void jobsOfFarTooManyPartsAreNotLookedAtCloser() {
    Pipe pipe = new Pipe(Point.ofMillimetres(500, 400), mm("22"));
    assertThat(faults(den().withPipes(Collections.nCopies(1000, pipe)))).isEmpty();
    assertThat(faults(den().withPipes(Collections.nCopies(1001, pipe)))).containsExactly(new JobFault(0, "too-many-parts",
        "Den: 1001 pipes, at most 1000 are planned at once; leave out those that are not there, or split the job"));
    Opening opening = new Opening("Arch", Point.ofMillimetres(500, 0), Point.ofMillimetres(500, 800));
    assertThat(faults(den().withOpenings(Collections.nCopies(200, opening)))).isEmpty();
    assertThat(faults(den().withOpenings(Collections.nCopies(201, opening)))).extracting(JobFault::code).containsExactly("too-many-parts");
    Room[] rooms = new Room[1001];
    for (int i = 0; i < rooms.length; i++) {
      rooms[i] = Room.of("Den " + i, den().outline());
    }
    assertThat(faults(rooms)).containsExactly(new JobFault(-1, "too-many-parts",
        "the job: 1001 rooms, at most 1000 are planned at once; leave out those that are not there, or split the job"));
  }

  /**
   * A slot from the lower wall, 600 mm deep. With a gap of g the floors on its two sides are its width and 2 g apart; more than 20 nm is asked for:
   * 20 nm and no gap are too little, 21 nm are enough, and so are 1 nm and a gap of 10 nm; 1 nm and a gap of 9 nm are 19 nm.
   */
  @Test
  void aSlotWithNothingBetweenItsWallsNeedsAGap() {
    assertThat(faults(slot("500.00002"), "0")).containsExactly(new JobFault(0, "wall-too-thin",
        "Den: walls 2 and 4 stand back to back from (500.00002 mm, 600 mm) to (500.00002 mm, 0 mm) with nothing between, so that an expansion"
            + " gap of 0 mm does not keep the floors on their two sides apart; leave out what is no wall, or give a wider gap"));
    assertThat(faults(slot("500.000021"), "0")).isEmpty();
    assertThat(faults(slot("500.000001"), "0.000009")).extracting(JobFault::code).containsExactly("wall-too-thin");
    assertThat(faults(slot("500.000001"), "0.00001")).isEmpty();
    assertThat(faults(slot("500.000001"), "10")).isEmpty();
  }

  private static Outline slot(String right) {
    return Wkt.parse("POLYGON ((0 0, 500 0, 500 600, " + right + " 600, " + right + " 0, 1000 0, 1000 800, 0 800, 0 0))");
  }

  /**
   * A notch 600 mm deep that comes to a point, w wide at the wall: its sides are 20 nm apart at 600 mm · 0.00002 mm / w from the point.
   * Up to 0.1 mm may be so near: w = 0.12 mm. A void of that shape in the midst of the floor is no other.
   */
  @Test
  void aNotchMayComeToAPoint() {
    assertThat(faults(Wkt.parse("POLYGON ((0 0, 500 0, 500 600, 500.121 0, 1000 0, 1000 800, 0 800, 0 0))"), "0")).isEmpty();
    assertThat(faults(Wkt.parse("POLYGON ((0 0, 500 0, 500 600, 500.119 0, 1000 0, 1000 800, 0 800, 0 0))"), "0"))
        .extracting(JobFault::code).containsExactly("wall-too-thin");
    assertThat(faults(Wkt.parse("POLYGON ((0 0, 1000 0, 1000 800, 0 800, 0 0), (500 100, 500 700, 500.119 100, 500 100))"), "0"))
        .extracting(JobFault::message).singleElement().asString().startsWith("Den: walls 1 and 2 of void 1 stand back to back from ");
  }

  /** The other way about, floor with walls on both sides, is no slot: a spike of floor 1 nm wide, which is not laid. */
  @Test
  void aSpikeOfFloorIsNoSlot() {
    assertThat(faults(Wkt.parse("POLYGON ((0 0, 500 0, 500 -600, 500.000001 0, 1000 0, 1000 800, 0 800, 0 0))"), "0")).isEmpty();
  }

  private static List<JobFault> faults(Outline outline, String gap) {
    return JobCheck.faultsOf(FloorJob.of("Invented floor", BoardGoods.of(mm("900"), WIDE, THICK, 10))
        .rules(RuleSet.COMMON_PRACTICE.forBoard(THICK, WIDE).with(LayingRules.EXPANSION_GAP, mm(gap), Source.GIVEN))
        .room(Room.of("Den", outline)).build());
  }

  private static Room den() {
    return Room.of("Den", Wkt.parse("POLYGON ((0 0, 1000 0, 1000 800, 0 800, 0 0))"));
  }

  private static List<JobFault> faults(Room... rooms) {
    FloorJobBuilder job = FloorJob.of("Invented floor", BoardGoods.of(mm("900"), WIDE, THICK, 10));
    for (Room room : rooms) {
      job.room(room);
    }
    return JobCheck.faultsOf(job.build());
  }
}
