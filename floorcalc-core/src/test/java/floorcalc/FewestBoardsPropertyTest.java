package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.RandomJobs.Case;
import floorcalc.outline.Wkt;
import floorcalc.plan.Bay;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorJobBuilder;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.rows.RowWay;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AddLifecycleHook;

/** Rows chosen for fewest boards never take more boards, nor break more rules, than rows that begin as needed. */
@AddLifecycleHook(MoreTries.class)
class FewestBoardsPropertyTest {
  @Provide
  Arbitrary<Case> alongAxes() {
    return RandomJobs.alongAxes();
  }

  @Provide
  Arbitrary<Case> any() {
    return RandomJobs.any();
  }

  private static FloorJob with(FloorJob job, DirectionChoice direction, RowWay way, List<Room> rooms) {
    FloorJobBuilder builder = FloorJob.of(job.title(), job.board()).rules(job.rules()).direction(direction)
        .offcuts(job.offcuts()).pattern(job.pattern()).rowWay(way);
    rooms.forEach(builder::room);
    return builder.build();
  }

  private static void holds(FloorPlan chosen, FloorPlan asNeeded, FloorJob job) {
    assertThat(chosen.compromises().size()).isLessThanOrEqualTo(asNeeded.compromises().size());
    if (job.board().pack().size() == 1) {
      assertThat(chosen.order().boardsUsed()).isLessThanOrEqualTo(asNeeded.order().boardsUsed());
    } else {
      assertThat(chosen.order().packs()).isLessThanOrEqualTo(asNeeded.order().packs());
    }
  }

  @Property(tries = 25)
  void alongAGivenDirection(@ForAll("alongAxes") Case any) {
    FloorJob job = any.job();
    holds(FloorPlanner.plan(with(job, job.direction(), RowWay.FEWEST_BOARDS, job.rooms())),
        FloorPlanner.plan(with(job, job.direction(), RowWay.AS_NEEDED, job.rooms())), job);
  }

  @Property(tries = 15)
  void alongTheDirectionThatItChose(@ForAll("any") Case any) {
    FloorJob job = any.job();
    FloorPlan chosen = FloorPlanner.plan(with(job, DirectionChoice.FEWEST_BOARDS, RowWay.AS_NEEDED, job.rooms()));
    Bay bay = chosen.bays().get(0);
    holds(chosen, FloorPlanner.plan(with(job, DirectionChoice.of(bay.direction()), RowWay.AS_NEEDED, job.rooms())), job);
  }

  @Property(tries = 10)
  void overSeveralRooms(@ForAll("alongAxes") Case any) {
    FloorJob job = any.job();
    List<Room> rooms = List.of(job.rooms().get(0), Room.of("Workroom",
        Wkt.parse("POLYGON ((0 0, 1000 0, 1000 100, 6000 100, 6000 2100, 0 2100, 0 0))")));
    holds(FloorPlanner.plan(with(job, job.direction(), RowWay.FEWEST_BOARDS, rooms)),
        FloorPlanner.plan(with(job, job.direction(), RowWay.AS_NEEDED, rooms)), job);
  }
}
