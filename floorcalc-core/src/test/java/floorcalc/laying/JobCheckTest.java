package floorcalc.laying;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.PackContent;
import floorcalc.measure.Length;
import floorcalc.outline.Wkt;
import floorcalc.plan.FloorJob;
import floorcalc.plan.JobFault;
import floorcalc.plan.Room;
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
}
