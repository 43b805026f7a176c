package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.boards.BoardGoods;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.Beyond;
import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Pipe;
import floorcalc.plan.Room;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class FloorDrawingPropertyTest {
  private static final Arbitrary<Integer> SIDE = Arbitraries.integers().between(150, 12_000);

  @Property(tries = 150)
  void textsKeepApartAndNumbersLieInTheirPieces(@ForAll("jobs") FloorJob job,
      @ForAll("directions") Direction direction, @ForAll Measures measures) {
    FloorPlan plan = SplitRooms.withProfiles(NaiveFloor.plan(job, direction), job.rooms().get(0));
    SvgPage overview = SvgPage.parse(FloorDrawing.ofRoom(job, plan, job.rooms().get(0).name(), measures).toSvg());
    DrawingChecks.textsNeverCollide(overview);
    DrawingChecks.textsLieOnTheSheet(overview);
    for (Bay bay : plan.bays()) {
      FloorDrawing drawing = FloorDrawing.of(job, plan, bay, measures);
      SvgPage page = SvgPage.parse(drawing.toSvg());
      DrawingChecks.textsNeverCollide(page);
      DrawingChecks.textsLieOnTheSheet(page);
      DrawingChecks.numbersLieInTheirPieces(page);
      assertThat(FloorDrawing.of(job, plan, bay, measures).toSvg()).as("same bytes again").isEqualTo(drawing.toSvg());
    }
  }

  @Provide
  Arbitrary<Direction> directions() {
    return Arbitraries.oneOf(Arbitraries.of(0.0, 90.0, 180.0, 270.0, 45.0, 37.5, 0.2, 89.9),
        Arbitraries.doubles().between(0, 359.99)).map(Direction::fromDegrees);
  }

  @Provide
  Arbitrary<FloorJob> jobs() {
    Arbitrary<Integer> width = Arbitraries.integers().between(60, 260);
    Arbitrary<Integer> length = Arbitraries.integers().between(400, 2400);
    return Combinators.combine(rooms(), width, length).as((room, w, l) -> FloorJob.of("Invented house",
        BoardGoods.of(Rooms.mm(l), Rooms.mm(w), Rooms.mm(14), 6)).room(room).build());
  }

  private static Arbitrary<Room> rooms() {
    Arbitrary<Integer> share = Arbitraries.integers().between(20, 80);
    Arbitrary<Integer> skew = Arbitraries.integers().between(-40, 40);
    Arbitrary<Integer> shape = Arbitraries.integers().between(0, 4);
    Arbitrary<Integer> turn = Arbitraries.of(0, 0, 0, 17, 30, 211);
    Arbitrary<String> name = Arbitraries.strings().all().ofMinLength(1).ofMaxLength(30).filter(s -> !s.isBlank());
    return Combinators.combine(SIDE, SIDE, share, share, skew, shape, turn, name).as((w, h, p, q, s, kind, angle,
        text) -> {
      long x = (long) w * p / 100;
      long y = (long) h * q / 100;
      Ring ring = switch (kind) {
        case 0 -> Rooms.ring(0, 0, w, 0, w, h, 0, h);
        case 1 -> Rooms.ring(0, 0, w + s, 0, w, h + s, 0, h);
        case 2 -> Rooms.ring(0, 0, w, 0, w, y, x, y, x, h, 0, h);
        case 3 -> Rooms.ring(0, 0, w, 0, w, h, w - x / 3, h, w - x / 3, y, x / 3, y, x / 3, h, 0, h);
        default -> Rooms.ring(0, 0, w, 0, w + x / 4, y, w, h, x, h + y / 5, 0, h);
      };
      List<Ring> voids = new ArrayList<>();
      if (kind == 0 && w > 2000 && h > 2000) {
        voids.add(Rooms.ring(x, y, x + 300, y, x + 300, y + 250, x, y + 250));
      }
      return furnished(turned(Outline.of(ring, voids), angle), text);
    });
  }

  private static Outline turned(Outline outline, int degrees) {
    Direction direction = Direction.fromDegrees(degrees);
    return Outline.of(direction.toRoom(outline.shell()), outline.voids().stream().map(direction::toRoom).toList());
  }

  /** Adds a door in the middle of the first two walls and a pipe near the first corner. */
  private static Room furnished(Outline outline, String name) {
    List<Door> doors = new ArrayList<>();
    for (int wall = 0; wall < 2; wall++) {
      doors.add(new Door("Door " + (wall + 1), between(outline.shell(), wall, 0.3), between(outline.shell(), wall, 0.7),
          wall == 0 ? name : "", new Beyond("tile", Rooms.mm(-4))));
    }
    Point corner = outline.shell().corners().get(0);
    Pipe pipe = new Pipe(Point.ofNanometres(corner.xNanometres() + 70_000_000, corner.yNanometres() + 60_000_000),
        Rooms.mm(22));
    return Room.of(name, outline).withDoors(doors).withPipes(List.of(pipe));
  }

  private static Point between(Ring ring, int wall, double share) {
    int next = (wall + 1) % ring.size();
    return Point.ofNanometres((long) (ring.x(wall) + share * (ring.x(next) - ring.x(wall))),
        (long) (ring.y(wall) + share * (ring.y(next) - ring.y(wall))));
  }
}
