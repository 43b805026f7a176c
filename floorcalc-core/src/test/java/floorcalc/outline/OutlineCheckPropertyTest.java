package floorcalc.outline;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.outline.OutlineFault.Kind;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;

/** The outline check against the general validity check of JTS, on a coarse grid where walls meet in every way. */
class OutlineCheckPropertyTest {
  private static final GeometryFactory FACTORY = new GeometryFactory();
  /** Meetings at single places: a valid polygon of the OGC may have some of these, a room may not. */
  private static final Set<Kind> SINGLE_PLACES =
      Set.of(Kind.WALLS_TOUCH, Kind.VOID_TOUCHES_OUTLINE, Kind.VOIDS_TOUCH, Kind.WALL_WITHOUT_LENGTH);

  @Provide
  Arbitrary<Ring> tangles() {
    return rings(0, 6, 3, 9);
  }

  @Provide
  Arbitrary<Outline> withVoids() {
    Ring shell = Ring.ofNanometres(new long[] {0, 12, 12, 0}, new long[] {0, 0, 12, 12});
    return rings(-1, 13, 3, 5).list().ofMinSize(1).ofMaxSize(3).map(voids -> Outline.of(shell, voids));
  }

  private static Arbitrary<Ring> rings(int low, int high, int fewest, int most) {
    Arbitrary<Integer> place = Arbitraries.integers().between(low, high);
    return Combinators.combine(place, place).as((x, y) -> Point.ofNanometres(x, y)).list().ofMinSize(fewest)
        .ofMaxSize(most).map(Ring::of);
  }

  @Property(tries = 20_000, edgeCases = EdgeCasesMode.NONE)
  void agreesOnOneRing(@ForAll("tangles") Ring ring) {
    agrees(ring, List.of());
  }

  @Property(tries = 20_000, edgeCases = EdgeCasesMode.NONE)
  void agreesOnVoids(@ForAll("withVoids") Outline outline) {
    agrees(outline.shell(), outline.voids());
  }

  private static void agrees(Ring shell, List<Ring> voids) {
    List<Kind> kinds = OutlineCheck.faultsOf(shell, voids).stream().map(OutlineFault::kind).toList();
    boolean valid = FACTORY.createPolygon(line(shell), voids.stream().map(OutlineCheckPropertyTest::line)
        .toArray(LinearRing[]::new)).isValid();
    if (kinds.isEmpty()) {
      assertThat(valid).isTrue();
    } else if (!SINGLE_PLACES.containsAll(kinds)) {
      assertThat(valid).as("%s", kinds).isFalse();
    }
  }

  private static LinearRing line(Ring ring) {
    Coordinate[] places = new Coordinate[ring.size() + 1];
    for (int i = 0; i <= ring.size(); i++) {
      places[i] = new Coordinate(ring.x(i % ring.size()), ring.y(i % ring.size()));
    }
    return FACTORY.createLinearRing(places);
  }

  @Property(tries = 2_000)
  void theQuickTestAgreesWithTheList(@ForAll("tangles") Ring ring) {
    Assume.that(ring.corners().stream().distinct().count() > 1);
    List<Kind> kinds = OutlineCheck.faultsOf(ring, List.of()).stream().map(OutlineFault::kind)
        .filter(kind -> kind != Kind.WALL_WITHOUT_LENGTH).toList();
    assertThat(OutlineCheck.isApart(List.of(ring))).isEqualTo(kinds.isEmpty());
  }

  @Property(tries = 2_000)
  void faultsAreTheSameFromAnotherCornerAndTheOtherWayRound(@ForAll("tangles") Ring ring) {
    int faults = OutlineCheck.faultsOf(ring, List.of()).size();
    assertThat(OutlineCheck.faultsOf(ring.startingAt(ring.size() - 1), List.of())).hasSize(faults);
    assertThat(OutlineCheck.faultsOf(ring.reversed(), List.of())).hasSize(faults);
    assertThat(OutlineCheck.faultsOf(ring.mirrored(), List.of())).hasSize(faults);
  }

  @Property(tries = 500)
  void theRoomsOfTheOtherPropertiesAreSound(@ForAll("rooms") Outline room) {
    assertThat(OutlineCheck.faultsOf(room)).isEmpty();
  }

  @Provide
  Arbitrary<Outline> rooms() {
    return RandomRooms.all();
  }
}
