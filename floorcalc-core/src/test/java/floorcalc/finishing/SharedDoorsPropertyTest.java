package floorcalc.finishing;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.Beyond;
import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorJobBuilder;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Profile;
import floorcalc.plan.Room;
import floorcalc.transitions.Fall;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Doors between two rooms, given in both: which room is named first makes no difference but where the profile is written down. */
class SharedDoorsPropertyTest {
  private static final BoardGoods BOARDS = BoardGoods.of(Length.ofMillimetres(2200), Length.ofMillimetres(185),
      Length.ofMillimetres(14), 6);
  /** A plan without breaks; nothing else of it is read. */
  private static final FloorPlan PLAN = FloorPlanner.plan(FloorJob.of("", BOARDS).room(room("Study", 0)).build());

  private static Room room(String name, long y) {
    return Room.of(name, Outline.of(Ring.of(Point.ofMillimetres(0, y), Point.ofMillimetres(4000, y),
        Point.ofMillimetres(4000, y + 1000), Point.ofMillimetres(0, y + 1000))));
  }

  /** One opening: its place along the wall, how much higher the hall is, and its finish. */
  private record Opening(long at, long hallHigherBy, String finish) {}

  @Provide
  Arbitrary<List<Opening>> openings() {
    return Combinators.combine(Arbitraries.longs().between(0, 3), Arbitraries.longs().between(-20, 20),
        Arbitraries.of("same floor", "tile", "step", "fixed edge", "")).as((at, higher, finish) ->
            new Opening(at * 1000, higher, finish)).list().ofMinSize(1).ofMaxSize(4).uniqueElements(Opening::at);
  }

  private static List<Door> doors(List<Opening> openings, String leadsTo, long y, long sign) {
    List<Door> doors = new ArrayList<>();
    for (Opening one : openings) {
      doors.add(new Door(leadsTo + one.at(), Point.ofMillimetres(one.at(), y), Point.ofMillimetres(one.at() + 800, y), leadsTo,
          new Beyond(one.finish(), Length.ofMillimetres(one.hallHigherBy() * sign))));
    }
    return doors;
  }

  private static Transitions of(List<Room> rooms) {
    FloorJobBuilder job = FloorJob.of("", BOARDS);
    rooms.forEach(job::room);
    return Transitions.of(job.build(), PLAN);
  }

  private static Map<String, Fall> falls(Transitions found) {
    Map<String, Fall> falls = new TreeMap<>();
    found.doors().forEach(edge -> falls.put(edge.room() + edge.door().name(), edge.choice().fall()));
    return falls;
  }

  @Property
  void theOrderOfTheRooms(@ForAll("openings") List<Opening> openings) {
    List<Opening> shuffled = new ArrayList<>(openings);
    Collections.reverse(shuffled);
    Room study = room("Study", 0).withDoors(doors(openings, "Hall", 0, 1));
    Room hall = room("Hall", -1100).withDoors(doors(shuffled, "Study", -100, -1));
    Transitions first = of(List.of(study, hall));
    Transitions second = of(List.of(hall, study));
    assertThat(first.profiles()).hasSameSizeAs(openings);
    assertThat(second.profiles()).hasSameSizeAs(openings);
    assertThat(falls(first)).hasSize(2 * openings.size()).isEqualTo(falls(second));
    assertThat(first.profiles()).extracting(Profile::kind)
        .containsExactlyInAnyOrderElementsOf(second.profiles().stream().map(Profile::kind).toList());
    // A step is written down at the upper room, all else at the first.
    for (Opening one : openings) {
      boolean atHall = one.finish().equals("step") && one.hallHigherBy() > 0;
      assertThat(first.profiles()).extracting(Profile::from).contains(Point.ofMillimetres(one.at(), atHall ? -100 : 0));
      assertThat(first.profiles()).filteredOn(profile -> profile.kind().equals("nosing"))
          .hasSize((int) openings.stream().filter(step -> step.finish().equals("step")).count());
    }
  }
}
