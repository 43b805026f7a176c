package floorcalc.laying;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.bays.Opening;
import floorcalc.boards.BoardGoods;
import floorcalc.boards.PackContent;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.plan.FloorJob;
import floorcalc.plan.JobFault;
import floorcalc.plan.Pipe;
import floorcalc.plan.Room;
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

  private static Room den() {
    return Room.of("Den", Wkt.parse("POLYGON ((0 0, 1000 0, 1000 800, 0 800, 0 0))"));
  }

  private static List<JobFault> faults(Room... rooms) {
    FloorJob.Builder job = FloorJob.of("Invented floor", BoardGoods.of(mm("900"), WIDE, THICK, 10));
    for (Room room : rooms) {
      job.room(room);
    }
    return JobCheck.faultsOf(job.build());
  }
}
