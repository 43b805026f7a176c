package floorcalc.rooms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import floorcalc.FloorPlanner;
import floorcalc.audit.PlanAudit;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.ExpansionGap;
import floorcalc.outline.InscribedCircle;
import floorcalc.outline.LeastWidth;
import floorcalc.outline.OutlineCheck;
import floorcalc.plan.Bay;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.recheck.JobText;
import floorcalc.recheck.Rechecked;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Designed and real rooms: their areas, perimeters and inner areas against published figures; four products in three
 * directions planned in each, audited, and checked once more from their texts by {@link floorcalc.recheck.PlanRecheck},
 * which shares no code with the library.
 * Sources and licences stand at the heads of the files and in ATTRIBUTION beside them.
 */
@Tag("reference")
class RealRoomsTest {

  @TestFactory
  Stream<DynamicNode> roomsWithTheProject() {
    return tests(RealRooms.withTheProject());
  }

  @TestFactory
  Stream<DynamicNode> roomsBesideTheProject() {
    List<RealRoom> rooms = RealRooms.besideTheProject();
    return rooms.isEmpty()
        ? Stream.of(dynamicTest("skipped", () -> assumeFalse(rooms.isEmpty(),
            "the 15 rooms under ODbL are no part of this project; they are tested where a folder shared/reference/geometry "
                + "lies beside it or -D" + RealRooms.FOLDER + " names one")))
        : tests(rooms);
  }

  @Test
  void noRoomIsLost() {
    assertThat(RealRooms.withTheProject()).hasSize(21);
    if (RealRooms.folder().isPresent()) {
      assertThat(RealRooms.besideTheProject()).hasSize(15);
    }
  }

  private static Stream<DynamicNode> tests(List<RealRoom> rooms) {
    AtomicInteger plans = new AtomicInteger();
    DynamicNode all = dynamicTest("every plan was checked a second time",
        () -> assertThat(plans).hasValue(rooms.size() * Product.values().length * 3));
    return Stream.concat(rooms.stream().map(room -> dynamicContainer(room.id(), tests(room, plans))), Stream.of(all));
  }

  private static List<DynamicTest> tests(RealRoom room, AtomicInteger plans) {
    List<DynamicTest> tests = new ArrayList<>();
    tests.add(dynamicTest("area, perimeter, inner areas", () -> figures(room)));
    for (Product product : Product.values()) {
      for (DirectionChoice direction : Product.directions(room)) {
        tests.add(dynamicTest(product + " at " + direction, () -> {
          plan(room, product, direction);
          plans.incrementAndGet();
        }));
      }
    }
    return tests;
  }

  private static void figures(RealRoom room) {
    assertThat(OutlineCheck.faultsOf(room.outline())).isEmpty();
    assertThat(room.outline().size()).isEqualTo(room.corners());
    assertThat(room.outline().area().toSquareMetres()).isCloseTo(room.area(), within(RealRoom.HALF_DIGIT));
    assertThat(room.outline().perimeter().toMillimetres() / 1000)
        .isCloseTo(room.perimeter(), within(RealRoom.HALF_DIGIT));
    for (int i = 0; i < RealRoom.GAPS.size(); i++) {
      ExpansionGap gap = ExpansionGap.inset(room.outline(), Length.ofMillimetres(RealRoom.GAPS.get(i))).value();
      assertThat(gap.laid()).hasSize(1);
      assertThat(gap.laidArea().toSquareMetres()).isCloseTo(room.inner().get(i), within(RealRoom.HALF_DIGIT));
    }
    // Two printed figures are one or two units of the last digit larger than the formula that stands for them.
    assertThat(room.printedInner12()).isCloseTo(room.inner().get(RealRoom.GAPS.indexOf(12)), within(4 * RealRoom.HALF_DIGIT));
    // Printed to four decimals; the radius was found with a tolerance of a hundredth of a millimetre.
    assertThat(InscribedCircle.of(room.outline()).value().radius().toMillimetres() / 1000).isCloseTo(room.radius(), within(0.00006));
    assertThat(LeastWidth.of(room.outline()).value().width().toMillimetres() / 1000).isCloseTo(room.leastWidth(), within(0.00005));
    if (room.convex()) {
      assertThat(IntStream.range(0, room.corners()).mapToDouble(room.outline().shell()::angleDegrees)).allMatch(angle -> angle <= 180);
    }
  }

  private static void plan(RealRoom room, Product product, DirectionChoice direction) {
    FloorJob job = product.in(room, direction);

    Rechecked checked = Rechecked.ofText(JobText.of(job)).assertSound(room + ", " + product + ", " + direction);
    FloorPlan plan = checked.plan();

    assertThat(PlanAudit.of(checked.job(), plan).breaches()).isEmpty();
    double inner = room.inner().get(RealRoom.GAPS.indexOf(product.gap()));
    Area laid = plan.bays().stream().map(Bay::laid).map(outline -> outline.area()).reduce(Area.ZERO, Area::plus);
    // Breaks take at most their gap times their length; where none is needed the inner area is that of the print.
    double breaks = plan.breaks().stream().mapToDouble(line -> line.gap().times(line.line().length()).toSquareMetres()).sum();
    assertThat(laid.toSquareMetres()).isBetween(inner - breaks - RealRoom.HALF_DIGIT, inner + RealRoom.HALF_DIGIT);
    assertThat(plan.ledger().laid().toSquareMetres()).isCloseTo(laid.toSquareMetres(), within(RealRoom.HALF_DIGIT));
    assertThat(plan.ledger().difference()).isEqualTo(Area.ZERO);
    if (direction.equals(DirectionChoice.LONGEST_WALL)) {
      assertThat(FloorPlanner.plan(checked.job())).isEqualTo(plan);
    }
  }
}
