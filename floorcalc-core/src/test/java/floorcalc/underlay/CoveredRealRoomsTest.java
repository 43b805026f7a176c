package floorcalc.underlay;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.outline.Containment;
import floorcalc.outline.Direction;
import floorcalc.outline.Extent;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.working.Calculated;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Real rooms under strips: every place is covered, and the working adds up; net areas and lengths are checked in the reference suite. Sources and
 * licences stand at the head of {@code reference/rooms_cc_by.csv}.
 */
class CoveredRealRoomsTest {
  private static List<String> lines(String name) {
    try (BufferedReader reader = new BufferedReader(new InputStreamReader(
        CoveredRealRoomsTest.class.getResourceAsStream("/reference/" + name), StandardCharsets.UTF_8))) {
      return reader.lines().filter(line -> !line.startsWith("#")).skip(1).toList();
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  @TestFactory
  List<DynamicTest> rooms() {
    Map<String, Outline> outlines = new LinkedHashMap<>();
    for (String row : lines("rooms_cc_by.csv")) {
      outlines.put(row.substring(0, row.indexOf(',')),
          Wkt.parse(row.substring(row.indexOf('"') + 1, row.lastIndexOf('"')), Wkt.Unit.METRES));
    }
    assertThat(outlines).hasSize(21);
    return outlines.entrySet().stream().map(room -> DynamicTest.dynamicTest(room.getKey(), () -> check(room.getKey(), room.getValue())))
        .toList();
  }

  private static void check(String name, Outline room) {
    RollGoods film = RollGoods.barrier("film", Length.ofMillimetres(1500), Length.ofMillimetres(20_000), Lap.NBS_K21)
        .withUpturn(Length.ofMillimetres(50));
    Calculated<RollOrder> calculated = RollOrder.of(film, List.of(CoveredRoom.bothWays(name, room, Direction.fromDegrees(37.5))));
    RollOrder order = calculated.value();
    assertStepsHold(calculated);
    assertThat(order.netArea()).isEqualTo(room.area());
    assertThat(order.rollsAtLeast()).isLessThanOrEqualTo(order.rolls());
    // the area of the rolls bounds their number as well
    assertThat(order.rolls()).isGreaterThanOrEqualTo((int) Math.ceil(room.area().toSquareMetres() / 30));
    StripLayout layout = order.layouts().get(0);
    Outline inFrame = layout.direction().toFrame(room);
    Extent extent = inFrame.extent();
    for (int i = 0; i <= 40; i++) {
      for (int j = 0; j <= 40; j++) {
        Point place = Point.ofNanometres(extent.low().xNanometres() + extent.width().toNanometres() * i / 40,
            extent.low().yNanometres() + extent.height().toNanometres() * j / 40);
        assertThat(inFrame.locate(place) == Containment.OUTSIDE || layout.strips().stream().anyMatch(strip -> covers(strip, place)))
            .as("%s at %s", name, place).isTrue();
      }
    }
  }

  private static boolean covers(RollStrip strip, Point place) {
    return strip.alongFrom().compareTo(place.x()) <= 0 && place.x().compareTo(strip.alongTo()) <= 0
        && strip.acrossFrom().compareTo(place.y()) <= 0 && place.y().compareTo(strip.acrossTo()) <= 0;
  }
}
